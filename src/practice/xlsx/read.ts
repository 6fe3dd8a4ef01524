/** Reads an .xlsx file into a workbook for the grid, or says in a sentence why it cannot be read. */
import { type Cell, dateToExcel, Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { BooleanNumber, CellValueType, type ICellData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import { COLUMNS, ROWS, workbookOf } from "../workbook";
import { keptNames } from "./names";
import { DAMAGED, openPackage } from "./package";
import { FileFormulas, rangeOf, SheetFormulas, TooLarge } from "./sheetFormulas";
import { fromCharacters, fromPoints } from "./sizes";
import { styleFromFile } from "./styles";

export type ReadFile =
  | { refusal: string }
  | {
      workbook: Partial<IWorkbookData>;
      /** What the file holds and the grid has nothing for, in words. */
      leftOut: string[];
    };

const MOST_CELLS = 200_000;
const MOST_COLUMNS = 1_000;
const MOST_ROWS = 100_000;

const TOO_LARGE = "the file is too large for the practice sheet.";

export async function readXlsx(bytes: Uint8Array): Promise<ReadFile> {
  const opened = openPackage(bytes);
  if ("refusal" in opened) return opened;
  try {
    const file = new Workbook();
    await file.xlsx.load(opened.bytes);
    if (file.worksheets.length === 0) return { refusal: "the file holds no sheet with cells." };
    const formulas = new FileFormulas();
    const workbook = workbookOf(
      "Opened file",
      file.worksheets.map((page) => readSheet(page, new SheetFormulas(page, formulas, MOST_COLUMNS))),
    );
    return {
      workbook: { ...workbook, resources: keptNames(file.definedNames.model) },
      leftOut: [...opened.leftOut, ...(formulas.isOneMissing ? ["some formulas (their values stay)"] : [])],
    };
  } catch (thrown) {
    return { refusal: thrown instanceof TooLarge ? TOO_LARGE : DAMAGED };
  }
}

function readSheet(page: Worksheet, formulas: SheetFormulas): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let count = 0;
  let [lastRow, lastColumn] = [0, 0];
  // Not with eachRow, which passes over rows that only have a look.
  for (let r = 0; r < page.rowCount; r++) {
    const row = page.findRow(r + 1);
    for (let c = 0; c < (row?.cellCount ?? 0); c++) {
      const cell = row?.findCell(c + 1);
      const data = cell && readCell(cell, formulas);
      if (!data) continue;
      const isEmpty = !("v" in data || "f" in data);
      const beyond = r >= MOST_ROWS || c >= MOST_COLUMNS || count >= (isEmpty ? MOST_CELLS / 2 : MOST_CELLS);
      if (beyond && isEmpty) continue;
      if (beyond) throw new TooLarge();
      count++;
      (cellData[r] ??= {})[c] = data;
      lastRow = Math.max(lastRow, r);
      lastColumn = Math.max(lastColumn, c);
    }
  }
  const view = (page.views as Worksheet["views"] | undefined)?.at(0);
  return {
    name: page.name,
    cellData,
    hidden: page.state === "visible" ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    rowCount: Math.max(ROWS, lastRow + 100),
    columnCount: Math.max(COLUMNS, lastColumn + 10),
    showGridlines: view?.showGridLines === false ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    mergeData: (page.model.mergeCells ?? []).map((range) => rangeOf(range)),
    ...defaultSizes(page),
    ...readSizes(page, lastRow, lastColumn),
    ...(view?.state === "frozen" ? { freeze: freeze(view.xSplit ?? 0, view.ySplit ?? 0) } : {}),
  };
}

function defaultSizes({ properties }: Worksheet): Partial<IWorksheetData> {
  const { defaultRowHeight, defaultColWidth } = properties;
  return {
    ...(defaultRowHeight ? { defaultRowHeight: fromPoints(defaultRowHeight) } : {}),
    ...(defaultColWidth ? { defaultColumnWidth: fromCharacters(defaultColWidth) } : {}),
  };
}

function readSizes(page: Worksheet, lastRow: number, lastColumn: number): Partial<IWorksheetData> {
  const columnData: IWorksheetData["columnData"] = {};
  const rowData: IWorksheetData["rowData"] = {};
  for (let column = 0; column <= lastColumn; column++) {
    const { width, hidden } = page.getColumn(column + 1);
    if (width) columnData[column] = { w: fromCharacters(width) };
    if (hidden) columnData[column] = { ...columnData[column], hd: BooleanNumber.TRUE };
  }
  for (let row = 0; row <= lastRow; row++) {
    const { height, hidden } = page.findRow(row + 1) ?? {};
    if (height) rowData[row] = { h: fromPoints(height) };
    if (hidden) rowData[row] = { ...rowData[row], hd: BooleanNumber.TRUE };
  }
  return { columnData, rowData };
}

function freeze(xSplit: number, ySplit: number): IWorksheetData["freeze"] {
  return { xSplit, ySplit, startColumn: xSplit > 0 ? xSplit : -1, startRow: ySplit > 0 ? ySplit : -1 };
}

function readCell(cell: Cell, formulas: SheetFormulas): ICellData | undefined {
  const s = styleFromFile(cell.style);
  const look = s ? { s } : {};
  if (cell.isMerged && cell.master !== cell) return s && look;
  const f = formulas.of(cell);
  if (f === undefined && formulas.isFilled(cell)) return s && look;
  const plain = plainValue(resultOf(cell));
  if (f !== undefined) return { ...look, f, ...plain };
  return plain || s ? { ...look, ...plain } : undefined;
}

/** What the cell shows, by its formula or without one. */
function resultOf({ value }: Cell): Cell["value"] {
  return value && typeof value === "object" && "result" in value ? value.result : value;
}

function plainValue(value: Cell["value"]): Pick<ICellData, "v" | "t"> | undefined {
  if (value === null || value === undefined || value === "") return undefined;
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === "string") return { v: value, t: CellValueType.STRING };
  if (value instanceof Date) return { v: dateToExcel(value, false), t: CellValueType.NUMBER };
  if ("error" in value) return { v: value.error, t: CellValueType.STRING };
  if ("richText" in value && value.richText)
    return { v: value.richText.map(({ text }) => text).join(""), t: CellValueType.STRING };
  if ("text" in value) return { v: value.text, t: CellValueType.STRING };
  if ("checkbox" in value) return { v: value.checkbox ? 1 : 0, t: CellValueType.BOOLEAN };
  return undefined;
}
