/** Formulas outside of cells: names, drop-down lists and other checks of input, conditional formats, columns of tables. */
import { partsOf } from "../syntax";
import { mentionsQuilt, translate, type Turned } from "../translate";
import { isError, type Value, type WorkOut } from "./answers";
import { areaOf } from "./places";
import type { KeptSpot } from "./report";
import type { Outcome } from "./turn";
import { attributesOf, Changes, decoded, encoded, type Tag, tagsOf } from "./xml";

/** What the elements that hold formulas are called by a maker. */
const HOLDERS: ReadonlyMap<string, string> = new Map([
  ["cfRule", "a conditional format"],
  ["dataValidation", "a check of input"],
  ["tableColumn", "a column of a table"],
  ["cfvo", "a conditional format"],
]);

/** Elements that hold a formula. The formulas of cells, in an element f of a cell, are turned elsewhere. */
const FORMULAS = ["formula", "formula1", "formula2", "calculatedColumnFormula", "totalsRowFormula", "f"];

/** A formula in a part outside of cells. */
interface Found {
  formula: string;
  start: number;
  end: number;
  place: string;
}

/** Turns the formulas of a part that stand outside of cells; what cannot be turned is listed and stays as it is. */
export function turnOthers(
  xml: string,
  sheet: string | undefined,
  rangeNames: ReadonlySet<string>,
  outcome: Outcome,
): string {
  const changes = new Changes(xml);
  for (const { formula, start, end, place } of formulasOf(xml)) {
    const turned = translate(formula, rangeNames);
    const spot = { place, ...(sheet !== undefined && { sheet }) };
    if (turned.left.length > 0) outcome.left.push(kept(spot, formula, turned));
    else if (turned.turned.length > 0) {
      changes.replace(start, end, encoded(turned.formula));
      outcome.turned.push({ ...spot, functions: turned.turned, was: formula, now: turned.formula });
    }
  }
  return changes.made();
}

function formulasOf(xml: string): Found[] {
  const found: Found[] = [];
  const holders: string[] = [];
  let open: Tag | undefined;
  for (const tag of tagsOf(xml)) {
    if (tag.kind === "open") holders.push(tag.name);
    if (tag.kind === "close") holders.pop();
    if (!FORMULAS.includes(tag.name)) continue;
    if (tag.kind === "open") open = tag;
    const [place] = holders.flatMap((name) => HOLDERS.get(name) ?? []).slice(-1) as [string?];
    if (tag.kind !== "close" || !open || place === undefined || holders.includes("sheetData")) continue;
    const formula = decoded(xml.slice(open.end, tag.start)).trim();
    if (mentionsQuilt(formula)) found.push({ formula, start: open.end, end: tag.start, place });
  }
  return found;
}

/** A name that the workbook gives to a range or a formula. */
export interface DefinedName {
  readonly name: string;
  readonly formula: string;
  readonly start: number;
  readonly end: number;
}

export function definedNames(workbook: string): DefinedName[] {
  const names: DefinedName[] = [];
  let open: Tag | undefined;
  for (const tag of tagsOf(workbook)) {
    if (tag.name !== "definedName") continue;
    if (tag.kind === "open") open = tag;
    else if (tag.kind === "close" && open) {
      const name = attributesOf(workbook, open).get("name") ?? "";
      names.push({ name, formula: decoded(workbook.slice(open.end, tag.start)), start: open.end, end: tag.start });
    }
  }
  return names;
}

/** The names, in lower case, that stand for more than one cell, as far as they tell. */
export function rangeNamesOf(names: readonly DefinedName[]): Set<string> {
  return new Set(names.filter(({ formula }) => mayBeSeveral(formula)).map(({ name }) => name.toLowerCase()));
}

function mayBeSeveral(formula: string): boolean {
  const reference = /^(?:'(?:[^']|'')*'!|[^'"()!,\s]+!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)$/i.exec(formula);
  if (!reference) return /[:{]|OFFSET|INDIRECT|INDEX|FILTER|ANCHORARRAY/i.test(formula);
  const area = areaOf(reference[1]);
  return !area || area.first.row !== area.last.row || area.first.column !== area.last.column;
}

/** Turns the names of a workbook: into plain formulas, or into the value that they have now. */
export async function turnNames(
  workbook: string,
  firstSheet: string,
  rangeNames: ReadonlySet<string>,
  workOut: WorkOut,
  outcome: Outcome,
): Promise<string> {
  const changes = new Changes(workbook);
  for (const { name, formula, start, end } of definedNames(workbook)) {
    if (!mentionsQuilt(formula)) continue;
    const turned = translate(formula, rangeNames);
    const spot = { place: `the name ${name}` };
    if (turned.left.length === 0 && !turned.table) {
      if (turned.turned.length === 0) continue;
      changes.replace(start, end, encoded(turned.formula));
      outcome.turned.push({ ...spot, functions: turned.turned, was: formula, now: turned.formula });
      continue;
    }
    const constant = await constantOf(formula, firstSheet, workOut);
    if (constant === undefined) outcome.left.push(kept(spot, formula, turned));
    else {
      changes.replace(start, end, encoded(constant));
      outcome.values.push(kept(spot, formula, turned));
    }
  }
  return changes.made();
}

/** What a name comes to, as it is typed into a formula; undefined where that depends on the cell that uses the name. */
async function constantOf(formula: string, sheet: string, workOut: WorkOut): Promise<string | undefined> {
  if (!partsOf(formula) || /(?<![$A-Z\d_.])[A-Z]{1,3}\$?\d|\$[A-Z]{1,3}\d|LAMBDA/i.test(formula)) return undefined;
  const [answer] = await workOut([{ sheet, cell: "A1", formula: `=${formula}`, isTwin: false }]);
  if (!answer || answer.flat().some(isError)) return undefined;
  const typed = answer.map((line) => line.map(typedText));
  const isOne = typed.length === 1 && typed[0].length === 1;
  return isOne ? typed[0][0] : `{${typed.map((line) => line.join(",")).join(";")}}`;
}

function typedText(value: Value): string {
  if (typeof value === "string") return `"${value.replaceAll('"', '""')}"`;
  return isError(value) ? value.error : String(value).toUpperCase();
}

function kept(spot: { place: string; sheet?: string }, was: string, { left, turned }: Turned): KeptSpot {
  const why = left.length > 0 ? [...new Set(left.map((each) => each.why))].join("; ") : "it is a table";
  return { ...spot, functions: [...turned, ...left.map(({ id }) => id)], was, why };
}
