/** Pages of cells for tests of what the pane reads from a plan. */
import type { CellValue, SheetPage } from "../../src/pane/sheet";
import { cellPlace } from "../../src/practice/address";

/** A formula and what its cell shows. */
export type Worked = [formula: string, shows: CellValue];

export function pageOf(name: string, cells: Record<string, CellValue | Worked>): SheetPage {
  const places = Object.entries(cells).map(([cell, content]) => ({ ...cellPlace(cell), content }));
  const rows = Math.max(...places.map(({ row }) => row)) + 1;
  const columns = Math.max(...places.map(({ column }) => column)) + 2;
  const values = Array.from({ length: rows }, () => Array.from({ length: columns }, (): CellValue => null));
  const formulas = values.map((line) => line.map(() => ""));
  for (const { row, column, content } of places) {
    const isWorked = Array.isArray(content);
    values[row][column] = isWorked ? content[1] : content;
    if (isWorked) formulas[row][column] = content[0];
  }
  return { name, row: 0, column: 0, values, formulas };
}
