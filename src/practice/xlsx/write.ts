/** Writes the open sheet to an .xlsx file, as the spreadsheet program with the add-in stores it. */
import { type CellErrorValue, type CellValueInput, Workbook, type Worksheet } from "@cj-tech-master/excelts";
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IColumnData,
  type IRange,
  type IRowData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  type Nullable,
} from "@univerjs/core";
import { cellName } from "../address";
import { textOf } from "../cells";
import type { Content } from "../content";
import { isErrorCode } from "../errors";
import { definedNames } from "./names";
import { callsQuilt, toFile } from "./formulas";
import { namesInFile, renamedSheets, withSheetsRenamed } from "./sheetNames";
import { styleToFile } from "./styles";
import { toCharacters, toPoints } from "./sizes";

export async function writeXlsx({ workbook, spilled, tables }: Content): Promise<Uint8Array<ArrayBuffer>> {
  const file = new Workbook();
  const names = namesOf(workbook);
  const pageNames = namesInFile(names);
  const renamed = renamedIn({ workbook });
  for (const [index, id] of workbook.sheetOrder.entries()) {
    const sheet = workbook.sheets[id];
    const page = file.addWorksheet(pageNames[index], {
      ...(sheet.hidden === BooleanNumber.TRUE ? { state: "hidden" } : {}),
      views: [view(sheet)],
      pageSetup: { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    });
    writeSizes(page, sheet);
    for (const [row, column, cell] of cellsOf(spilled[id])) {
      if (!sheet.cellData?.[row]?.[column]?.f) page.getCell(row + 1, column + 1).value = plainValue(cell);
    }
    for (const [row, column, cell] of cellsOf(sheet.cellData)) {
      const target = page.getCell(row + 1, column + 1);
      const value = cell.f ? formulaValue(cell, row, column, tables[id]?.[row]?.[column], renamed) : plainValue(cell);
      if (value !== null) target.value = value;
      target.style = styleToFile(styleOf(cell, workbook) ?? {});
    }
    for (const merged of sheet.mergeData ?? []) {
      page.mergeCells(merged.startRow + 1, merged.startColumn + 1, merged.endRow + 1, merged.endColumn + 1);
    }
  }
  file.definedNames.model = definedNames(workbook, renamed);
  return new Uint8Array(await file.xlsx.writeBuffer());
}

/** The names of the sheets in their order. */
/** The sheets that get another name in the file, each with that. */
export function renamedIn({ workbook }: Pick<Content, "workbook">): Map<string, string> {
  return renamedSheets(namesOf(workbook));
}

function namesOf({ sheetOrder, sheets }: IWorkbookData): string[] {
  return sheetOrder.map((id) => sheets[id].name ?? id);
}

function view(sheet: Partial<IWorksheetData>): Worksheet["views"][number] {
  const showGridLines = sheet.showGridlines !== BooleanNumber.FALSE;
  const { xSplit = 0, ySplit = 0 } = sheet.freeze ?? {};
  if (xSplit <= 0 && ySplit <= 0) return { state: "normal", showGridLines };
  return { state: "frozen", xSplit: Math.max(xSplit, 0), ySplit: Math.max(ySplit, 0), showGridLines };
}

function writeSizes(page: Worksheet, sheet: Partial<IWorksheetData>): void {
  if (sheet.defaultRowHeight) page.properties.defaultRowHeight = toPoints(sheet.defaultRowHeight);
  if (sheet.defaultColumnWidth) page.properties.defaultColWidth = toCharacters(sheet.defaultColumnWidth);
  for (const [column, { w, hd }] of Object.entries((sheet.columnData ?? {}) as Record<string, Partial<IColumnData>>)) {
    if (w) page.getColumn(Number(column) + 1).width = toCharacters(w);
    if (hd === BooleanNumber.TRUE) page.getColumn(Number(column) + 1).hidden = true;
  }
  for (const [row, { h, hd }] of Object.entries((sheet.rowData ?? {}) as Record<string, Partial<IRowData>>)) {
    if (h) page.getRow(Number(row) + 1).height = toPoints(h);
    if (hd === BooleanNumber.TRUE) page.getRow(Number(row) + 1).hidden = true;
  }
}

function* cellsOf(
  cells: Nullable<Record<number, Record<number, Nullable<ICellData>>>>,
): Generator<[number, number, ICellData]> {
  for (const [row, line] of Object.entries(cells ?? {})) {
    for (const [column, cell] of Object.entries(line)) if (cell) yield [Number(row), Number(column), cell];
  }
}

function styleOf(cell: ICellData, workbook: IWorkbookData): Nullable<IStyleData> {
  return typeof cell.s === "string" ? workbook.styles[cell.s] : cell.s;
}

function plainValue(cell: ICellData): string | number | boolean | CellErrorValue | null {
  const value = textOf(cell) ?? cell.v ?? null;
  if (cell.t === CellValueType.BOOLEAN) return Boolean(value);
  if (isErrorCode(value)) return { error: inFiles(value) };
  return value;
}

function formulaValue(
  cell: ICellData,
  row: number,
  column: number,
  table: Nullable<IRange>,
  renamed: ReadonlyMap<string, string>,
): CellValueInput {
  const typed = withSheetsRenamed(cell.f ?? "", renamed);
  const formula = toFile(typed);
  const result = plainValue({ ...cell, p: null }) ?? undefined;
  if (!table && !callsQuilt(typed)) return { formula, result };
  const last = table ? cellName(table.endRow, table.endColumn) : cellName(row, column);
  const ref = `${cellName(row, column)}:${last}`;
  return { formula, result, shareType: "array", ref: table ? ref : cellName(row, column), isDynamicArray: true };
}

/** Errors that files know; the rest are the engine's own. */
const FILE_ERRORS = ["#N/A", "#REF!", "#NAME?", "#DIV/0!", "#NULL!", "#VALUE!", "#NUM!"] as const;

function inFiles(code: string): CellErrorValue["error"] {
  return FILE_ERRORS.find((known) => known === code) ?? "#VALUE!";
}
