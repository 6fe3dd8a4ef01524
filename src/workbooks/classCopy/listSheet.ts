/** The sheet added to a class copy: which cells hold values that do not change any more, and what could not be turned. */
import { type KeptSpot, nameOf, reason, type Report } from "./report";
import { encoded } from "./xml";

/** Name of the sheet, unless the workbook has one of that name. */
export const LIST_NAME = "Class copy";

/** Widths of the columns, and how much of a formula is shown: the maker has the workbook that it stands in. */
const WIDTHS = [20, 88, 42];
const LONGEST_FORMULA = 44;

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
  const columns = WIDTHS.map((width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`);
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    `<worksheet xmlns="${schema}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><cols>${columns.join("")}</cols>` +
    `<sheetData>${xml}</sheetData><pageSetup orientation="landscape" fitToHeight="0"/></worksheet>`
  );
}

function section(title: string, spots: readonly KeptSpot[]): string[][] {
  if (spots.length === 0) return [];
  const lines = spots.map((spot) => [nameOf(spot), reason(spot), shortened(spot.was)]);
  return [[title], ["Where", "Why", "What stood there"], ...lines, []];
}

/** The start of a formula, as the maker reads it. */
function shortened(stored: string): string {
  const formula = stored.replace(/_xldudf_QUILT_/gi, "QUILT.");
  return formula.length > LONGEST_FORMULA ? `${formula.slice(0, LONGEST_FORMULA)}…` : formula;
}

function rowXml(row: number, cells: readonly string[]): string {
  const texts = cells.map((text, index) => {
    const shown = encoded(text);
    return `<c r="${"ABC"[index]}${row}" t="inlineStr"><is><t xml:space="preserve">${shown}</t></is></c>`;
  });
  return `<row r="${row}">${texts.join("")}</row>`;
}
