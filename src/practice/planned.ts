/** A planning workbook as the grid takes it. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import { type Book, type Entry, isFormula, roomOf, type Sheet } from "../workbooks/book";
import { LINE, type Look, LOOKS, type StyleName } from "../workbooks/look";
import { patternOf } from "../workbooks/formats";
import { workbooks } from "../workbooks";
import { cellPlace } from "./address";
import { freshSheet } from "./opened";
import { workbookOf } from "./workbook";
import { fromCharacters, fromPoints } from "./xlsx/sizes";

const ALIGN = { left: HorizontalAlign.LEFT, right: HorizontalAlign.RIGHT, center: HorizontalAlign.CENTER };

/** Every planning workbook, to start from in the first cell that is there to be changed. */
export const plannedWorkbooks = workbooks.map(({ title, description, build }) => ({
  title,
  about: description,
  sheet: () => {
    const book = build();
    const begin = book.sheets[0].entries.find(({ style }) => style === "input")?.cell;
    return freshSheet(title, plannedWorkbook(book), begin);
  },
}));

export function plannedWorkbook(book: Book): Partial<IWorkbookData> {
  return workbookOf(
    book.title,
    book.sheets.map((sheet) => worksheet(sheet)),
  );
}

function worksheet(sheet: Sheet): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const rooms = new Map<string, IStyleData>();
  const put = (cell: string, data: ICellData) => {
    const { row, column } = cellPlace(cell);
    (cellData[row] ??= {})[column] = data;
  };
  for (const entry of sheet.entries) {
    for (const { cell, style, format } of roomOf(entry)) {
      rooms.set(cell, styleData(style, format));
      put(cell, { s: rooms.get(cell) });
    }
  }
  for (const entry of sheet.entries) {
    put(entry.cell, { ...contentOf(entry), s: rooms.get(entry.cell) ?? styleData(entry.style, entry.format) });
  }
  const { rows = 0, columns = 0 } = sheet.frozen ?? {};
  return {
    name: sheet.name,
    cellData,
    showGridlines: BooleanNumber.FALSE,
    columnData: Object.fromEntries(sheet.widths.map((width, index) => [index, { w: fromCharacters(width) }])),
    rowData: Object.fromEntries(
      Object.entries(sheet.heights ?? {}).map(([row, height]) => [Number(row) - 1, { h: fromPoints(height) }]),
    ),
    defaultRowHeight: 20,
    ...(sheet.frozen
      ? { freeze: { xSplit: columns, ySplit: rows, startRow: rows || -1, startColumn: columns || -1 } }
      : {}),
  };
}

function contentOf({ content }: Entry): ICellData {
  if (content === undefined) return {};
  return isFormula(content) ? { f: content } : { v: content };
}

function styleData(name: StyleName, format: Entry["format"]): IStyleData {
  const look: Look = LOOKS[name];
  const line = { s: BorderStyleTypes.THIN, cl: { rgb: LINE } };
  const pattern = patternOf(format);
  return {
    fs: look.size ?? 10,
    vt: VerticalAlign.MIDDLE,
    ...(look.bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(look.color ? { cl: { rgb: look.color } } : {}),
    ...(look.fill ? { bg: { rgb: look.fill } } : {}),
    ...(look.border === "box" ? { bd: { t: line, r: line, b: line, l: line } } : {}),
    ...(look.border === "below" ? { bd: { b: line } } : {}),
    ...(look.border === "hair" ? { bd: { b: { ...line, s: BorderStyleTypes.HAIR } } } : {}),
    ...(look.indent ? { pd: { l: 7 } } : {}),
    ...(look.align ? { ht: ALIGN[look.align] } : {}),
    ...(look.wrap ? { tb: WrapStrategy.WRAP } : {}),
    ...(pattern ? { n: { pattern } } : {}),
  };
}
