/** The sheet added to a class copy: which cells hold values that do not change any more, and what could not be turned. */
import { type KeptSpot, nameOf, reason, type Report } from "./report";
import { encoded } from "./xml";

/** Name of the sheet, unless the workbook has one of that name. */
export const LIST_NAME = "Class copy";

/** Text of one cell is no longer than this. */
const LONGEST_TEXT = 32_000;

/** @param schema address that elements of cells are named after */
export function listSheet({ turned, values, left }: Report, schema: string): string {
  const rows: string[][] = [
    ["Class copy"],
    [`${turned.length} formulas work in any spreadsheet program. Those listed below do not.`],
    [],
    ...section("These hold a value that does not change when other cells do:", values),
    ...section("These could not be turned:", left),
  ];
  const xml = rows.map((cells, index) => rowXml(index + 1, cells)).join("");
  const widths = [24, 100, 60]
    .map((width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`)
    .join("");
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    `<worksheet xmlns="${schema}"><cols>${widths}</cols><sheetData>${xml}</sheetData></worksheet>`
  );
}

function section(title: string, spots: readonly KeptSpot[]): string[][] {
  if (spots.length === 0) return [];
  const lines = spots.map((spot) => [nameOf(spot), reason(spot), spot.was]);
  return [[title], ["Where", "Why", "What stood there"], ...lines, []];
}

function rowXml(row: number, cells: readonly string[]): string {
  const texts = cells.map((text, index) => {
    const shown = encoded(text.slice(0, LONGEST_TEXT));
    return `<c r="${"ABC"[index]}${row}" t="inlineStr"><is><t xml:space="preserve">${shown}</t></is></c>`;
  });
  return `<row r="${row}">${texts.join("")}</row>`;
}
