/** Names given to ranges and formulas: the grid keeps them beside the cells. */
import type { DefinedNameModel } from "@cj-tech-master/excelts";
import type { IResources, IWorkbookData } from "@univerjs/core";
import { fromFile, toFile } from "./formulas";
import { withSheetsRenamed } from "./sheetNames";

/** Under this name the grid keeps names of ranges. */
const RESOURCE = "SHEET_DEFINED_NAME_PLUGIN";

interface KeptName {
  id: string;
  name: string;
  formulaOrRefString: string;
}

/** A sheet without apostrophes, at the start. The grid does without them where a file may not. */
const BARE_SHEET = /^([^'!"():,;+*&=<>^/-]+)(?=!)/;

/** @param renamed sheets that have another name in the file */
export function definedNames(workbook: IWorkbookData, renamed: ReadonlyMap<string, string>): DefinedNameModel[] {
  const kept = workbook.resources?.find(({ name }) => name === RESOURCE)?.data;
  const names = Object.values(JSON.parse(kept || "{}") as Record<string, KeptName>);
  // Ranges too are given as formulas: as such they stand in the file as they are.
  return names.map(({ name, formulaOrRefString }) => {
    const text = withSheetsRenamed(formulaOrRefString.replace(/^=/, ""), renamed);
    return { name, ranges: [], formulaExpression: toFile(`=${text.replace(BARE_SHEET, "'$1'")}`), kind: "formula" };
  });
}

export function keptNames(names: DefinedNameModel[]): IResources {
  const kept = names
    .filter(({ name, kind, hidden }) => kind !== "opaque" && !hidden && !name.startsWith("_xlnm."))
    .flatMap(({ name, ranges, formulaExpression }, index): KeptName[] => {
      const text = formulaExpression ? fromFile(formulaExpression) : ranges.length === 1 ? rangeText(ranges[0]) : "";
      return text ? [{ id: `name${index}`, name, formulaOrRefString: text }] : [];
    });
  if (kept.length === 0) return [];
  return [{ name: RESOURCE, data: JSON.stringify(Object.fromEntries(kept.map((name) => [name.id, name]))) }];
}

/** The reader doubles the apostrophes in the names of sheets, which are double in the file. */
function rangeText(range: string): string {
  return range.replaceAll("''''", "''");
}
