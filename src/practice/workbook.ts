/** Workbooks as the grid takes them. */
import type { IWorkbookData, IWorksheetData } from "@univerjs/core";

/** A sheet has room for what is added later: a formula that reads beyond its edge fails. */
export const ROWS = 1000;
export const COLUMNS = 50;

let engines = 0;

/**
 * An id for a workbook in an engine. Engines in one page or process share what they know of formulas by this id: with the
 * same one, a formula would be worked out with the cells of the other workbook.
 */
export function freshId(): string {
  return `book ${++engines}`;
}

export function workbookOf(name: string, sheets: Partial<IWorksheetData>[]): Partial<IWorkbookData> {
  const withIds = sheets.map((sheet, index) => ({
    rowCount: ROWS,
    columnCount: COLUMNS,
    ...sheet,
    id: `sheet${index}`,
  }));
  return {
    id: "book",
    name,
    sheetOrder: withIds.map(({ id }) => id),
    sheets: Object.fromEntries(withIds.map((sheet) => [sheet.id, sheet])),
  };
}

export function emptyWorkbook(): Partial<IWorkbookData> {
  return workbookOf("New sheet", [{ name: "Sheet1" }]);
}
