/** Formulas of a file before they are turned: shared ones written out, and those that fill areas by themselves. */
import { tokenize } from "@borgar/fx/xlsx";
import { type Call, isOperator, type Part, partsOf, significant } from "../syntax";
import { mentionsQuilt } from "../translate";
import { type Area, cellName, columnName, columnNumber, LAST_ROW, type Place, placeOf } from "./places";
import type { FormulaCell } from "./sheet";

/** A formula as it reads in its own cell. */
export function ownFormula({ formula, sharedFrom, row, column }: FormulaCell): string {
  if (!sharedFrom) return formula;
  return tokenize(formula, { mergeRefs: false })
    .map(({ type, value }) => {
      if (!/^range(?:_beam|_ternary)?$/.test(type)) return value;
      return value.replace(PIECE, (...found) => moved(found, row - sharedFrom.row, column - sharedFrom.column));
    })
    .join("");
}

/** One cell, column or row of a reference: dollar sign and letters of the column, dollar sign and number of the row. */
const PIECE = /(?:(\$?)([A-Z]{1,3}))?(?:(\$?)(\d{1,7}))?/gi;

/** A piece of a reference as it reads that many rows further down and columns further right. */
function moved(found: unknown[], down: number, across: number): string {
  const [piece, fixedColumn, letters, fixedRow, digits] = found as (string | undefined)[];
  const column = letters && (fixedColumn ? letters : columnName(columnNumber(letters) + across));
  const row = digits && (fixedRow ? digits : String(Number(digits) + down));
  if (column === "" || Number(row) < 1 || Number(row) > LAST_ROW) return "#REF!";
  return piece ? `${fixedColumn ?? ""}${column ?? ""}${fixedRow ?? ""}${row ?? ""}` : "";
}

/** The area that the cell of a table fills; the sheet's name is in lower case. */
export type AreaOf = (sheet: string, place: Place) => Area | undefined;

const SPILLED = /_xlfn\.ANCHORARRAY\(\s*((?:'(?:[^']|'')*'|[^'"()!,\s]+)!)?(\$?[A-Z]{1,3}\$?\d{1,7})\s*\)/gi;

/** Whether a formula reads whatever another formula fills. */
export function readsSpilled(formula: string): boolean {
  return /ANCHORARRAY/i.test(formula);
}

/** The formula with `B5#` written as the cells that the table in B5 fills now, where that table is one of ours. */
export function withAreas(formula: string, sheet: string, areaOfTable: AreaOf): string {
  return outsideText(formula, (text) =>
    text.replace(SPILLED, (whole, on: string | undefined, first: string) => {
      const place = placeOf(first);
      const area = place && areaOfTable(on === undefined ? sheet.toLowerCase() : sheetNamed(on), place);
      return area ? `${on ?? ""}${first}:${likewise(first, area.last)}` : whole;
    }),
  );
}

/** Changes a formula outside of the texts in quotes. */
function outsideText(formula: string, change: (text: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((piece, index) => (index % 2 === 0 ? change(piece) : piece))
    .join("");
}

function sheetNamed(reference: string): string {
  const name = reference.slice(0, -1);
  return (name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name).toLowerCase();
}

/** The name of a place with the dollar signs of another. */
function likewise(model: string, place: Place): string {
  const [, letters, digits] = /^([A-Z]+)(\d+)$/.exec(cellName(place))!;
  const signs = /^(\$?)[A-Z]+(\$?)/i.exec(model)!;
  return `${signs[1]}${letters}${signs[2]}${digits}`;
}

/** Functions that make one value of a range, wherever they stand. */
const OF_RANGES =
  /^(?:SUM|PRODUCT|SUMPRODUCT|COUNT|COUNTA|COUNTBLANK|COUNTIFS?|SUMIFS?|AVERAGE|AVERAGEIFS?|MAX|MIN|MEDIAN|LARGE|SMALL|AND|OR|INDEX|MATCH|[VH]LOOKUP|LOOKUP|ROWS?|COLUMNS?|CONCATENATE|NPV|RANK)$/i;

/**
 * Whether a formula works with several cells at once outside of our calls, so that it means something else in a cell that
 * takes one value.
 */
export function worksWithSeveral(formula: string, rangeNames: ReadonlySet<string>): boolean {
  const parts = partsOf(formula);
  return !parts || listWorks(parts);

  function listWorks(list: readonly Part[]): boolean {
    return list.some((part) => {
      if (part.kind === "call") return callWorks(part);
      if (part.kind === "group") return part.open === "{" || listWorks(part.parts);
      return isRange(part);
    });
  }

  function callWorks(call: Call): boolean {
    const takesRanges = OF_RANGES.test(call.name) || mentionsQuilt(call.name);
    return call.given.some((given) => {
      const list = significant(given);
      const isRangeAlone = list.length === 1 && isRange(list[0]);
      return !(takesRanges && isRangeAlone) && listWorks(given);
    });
  }

  function isRange(part: Part): boolean {
    if (part.kind !== "leaf") return false;
    if (isOperator(part, ":", "#")) return true;
    if (part.type === "structured") return !/@|#This Row/i.test(part.text);
    if (rangeNames.has(part.text.toLowerCase())) return true;
    return part.type.startsWith("range_beam") || (part.type === "range" && part.text.replace(/^.*!/, "").includes(":"));
  }
}
