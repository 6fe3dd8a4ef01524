/** Names given to ranges and formulas: the grid keeps them beside the cells. */
import type { DefinedNameModel } from "@cj-tech-master/excelts";
import type { IResources, IWorkbookData } from "@univerjs/core";
import { fromFile, toFile } from "./formulas";

/** Under this name the grid keeps names of ranges. */
const RESOURCE = "SHEET_DEFINED_NAME_PLUGIN";

interface KeptName {
  id: string;
  name: string;
  formulaOrRefString: string;
}

const RANGE = /^(?:'(?:[^']|'')+'|[^'!:()+*,"]+)!\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?$/i;

export function definedNames(workbook: IWorkbookData): DefinedNameModel[] {
  const kept = workbook.resources?.find(({ name }) => name === RESOURCE)?.data;
  const names = Object.values(JSON.parse(kept || "{}") as Record<string, KeptName>);
  return names.map(({ name, formulaOrRefString }) => {
    const text = formulaOrRefString.replace(/^=/, "");
    return RANGE.test(text)
      ? { name, ranges: [text], kind: "reference" }
      : { name, ranges: [], formulaExpression: toFile(`=${text}`), kind: "formula" };
  });
}

export function keptNames(names: DefinedNameModel[]): IResources {
  const kept = names
    .filter(({ name, kind, hidden }) => kind !== "opaque" && !hidden && !name.startsWith("_xlnm."))
    .flatMap(({ name, ranges, formulaExpression }, index): KeptName[] => {
      const text = formulaExpression ? fromFile(formulaExpression) : ranges.length === 1 ? ranges[0] : "";
      return text ? [{ id: `name${index}`, name, formulaOrRefString: text }] : [];
    });
  if (kept.length === 0) return [];
  return [{ name: RESOURCE, data: JSON.stringify(Object.fromEntries(kept.map((name) => [name.id, name]))) }];
}
