/** Writes a planning workbook as an .xlsx file, its answers in place, as the spreadsheet program with the add-in stores it. */
import { type Borders, type Style, Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { referAddIn } from "./addIn";
import {
  type Book,
  type Entry,
  type Evaluate,
  isFormula,
  nameOf,
  place,
  roomOf,
  type Sheet,
  type WorkedSheet,
} from "./book";
import { inFile, isRuled, METRIC_PATTERN, patternOf, quiltCalls } from "./formats";
import { FONT, INK, LINE, type Look, LOOKS, SIZE, type StyleName } from "./look";
import { isMetric } from "./shared";

/** Letter; on A4 the same margins leave a page narrower by 6 mm and longer by 18 mm, for which the sheets have room. */
const PAPER = 1;
const MARGIN = 0.5;
const ROW_HEIGHT = 15;

/** Test squares in pixels of 1/96 in, as drawings count. */
const INCH = 96;
const MILLIMETERS_25 = (25 / 25.4) * INCH;

/** The fine line below the rows of tables. */
const FINE = { style: "hair" as const, color: { argb: argb(LINE) } };

export async function writeBook(book: Book, evaluate: Evaluate): Promise<Uint8Array<ArrayBuffer>> {
  const worked = await evaluate(book);
  const file = new Workbook();
  file.title = book.title;
  file.description = book.description;
  for (const sheet of book.sheets) writeSheet(file, book, sheet, worked[sheet.name]);
  const names = new Set(
    book.sheets.flatMap(({ entries }) =>
      entries.flatMap(({ content }) => (isFormula(content) ? quiltCalls(content) : [])),
    ),
  );
  return referAddIn(new Uint8Array(await file.xlsx.writeBuffer()), [...names].sort());
}

function writeSheet(file: Workbook, book: Book, sheet: Sheet, worked: WorkedSheet): void {
  const { rows = 0, columns = 0 } = sheet.frozen ?? {};
  const page = file.addWorksheet(sheet.name, {
    properties: { defaultRowHeight: ROW_HEIGHT },
    views: [
      sheet.frozen
        ? { state: "frozen", xSplit: columns, ySplit: rows, showGridLines: false }
        : { state: "normal", showGridLines: false },
    ],
  });
  sheet.widths.forEach((width, index) => (page.getColumn(index + 1).width = width));
  for (const [row, height] of Object.entries(sheet.heights ?? {})) page.getRow(Number(row)).height = height;
  for (const entry of sheet.entries) {
    for (const { cell, style, format } of roomOf(entry)) {
      page.getCell(cell).style = styleOf(style, format);
      if (cell in worked.values && cell !== entry.cell) page.getCell(cell).value = worked.values[cell];
    }
  }
  for (const entry of sheet.entries) writeCell(page, entry, worked);
  readMetric(page, book, sheet);
  ruleFilledRows(page, sheet);
  setUpPage(page, sheet);
  if (sheet.testSquares) drawTestSquares(page, sheet.testSquares);
}

function writeCell(page: Worksheet, entry: Entry, worked: WorkedSheet): void {
  const { cell, content, choices } = entry;
  const target = page.getCell(cell);
  if (!entry.room) target.style = styleOf(entry.style, entry.format);
  if (choices) {
    const list = typeof choices === "string" ? choices : `"${choices.join(",")}"`;
    target.dataValidation = { type: "list", allowBlank: true, formulae: [list], showErrorMessage: false };
  }
  if (content === undefined) return;
  if (!isFormula(content)) target.value = content;
  else if (quiltCalls(content).length === 0) target.value = { formula: content.slice(1), result: worked.values[cell] };
  else {
    target.value = {
      formula: inFile(content),
      result: worked.values[cell],
      shareType: "array",
      ref: worked.tables[cell] ?? cell,
      isDynamicArray: true,
    };
  }
}

function styleOf(name: StyleName, format: Entry["format"]): Partial<Style> {
  const look: Look = LOOKS[name];
  const line = { style: "thin" as const, color: { argb: argb(LINE) } };
  const border: Partial<Borders> =
    look.border === "box"
      ? { top: line, right: line, bottom: line, left: line }
      : look.border === "below"
        ? { bottom: line }
        : {};
  const pattern = patternOf(format);
  return {
    font: { name: FONT, size: look.size ?? SIZE, bold: look.bold ?? false, color: { argb: argb(look.color ?? INK) } },
    border,
    alignment: {
      vertical: "middle",
      ...(look.align ? { horizontal: look.align } : {}),
      ...(look.wrap ? { wrapText: true } : {}),
      ...(look.indent ? { indent: 1 } : {}),
    },
    protection: { locked: !look.unlocked },
    ...(look.fill ? { fill: { type: "pattern", pattern: "solid", fgColor: { argb: argb(look.fill) } } } : {}),
    ...(pattern ? { numFmt: pattern } : {}),
  };
}

function argb(color: string): string {
  return `FF${color.slice(1).toUpperCase()}`;
}

/** Where the workbook is set to centimeters, lengths read as decimals. */
function readMetric(page: Worksheet, book: Book, sheet: Sheet): void {
  const cells = sheet.entries.flatMap((entry) => [
    ...(isRuled(entry.format) ? [entry.cell] : []),
    ...roomOf(entry)
      .filter(({ format }) => isRuled(format))
      .map(({ cell }) => cell),
  ]);
  if (cells.length === 0) return;
  page.addConditionalFormatting({
    ref: cells.join(" "),
    rules: [{ type: "expression", formulae: [isMetric(book.units)], style: { numFmt: METRIC_PATTERN } }],
  });
}

/** A fine line below each row of a table that is filled; on paper, free rows are just white. */
function ruleFilledRows(page: Worksheet, sheet: Sheet): void {
  const rule = (cells: readonly string[], filled: string) => {
    page.addConditionalFormatting({
      ref: `${cells[0]}:${cells[cells.length - 1]}`,
      rules: [{ type: "expression", formulae: [`${filled}<>""`], style: { border: { bottom: FINE } } }],
    });
  };
  const isRuled = (style: StyleName) => "border" in LOOKS[style] && LOOKS[style].border === "hair";
  for (const entry of sheet.entries) {
    const cells = roomOf(entry).filter(({ style }) => isRuled(style));
    if (cells.length > 0)
      rule(
        cells.map(({ cell }) => cell),
        `$${cells[0].cell}`,
      );
  }
  const beside = sheet.entries.filter(({ style, room }) => !room && isRuled(style)).map(({ cell }) => cell);
  if (beside.length > 0) rule(beside, beside[0]);
}

function setUpPage(page: Worksheet, sheet: Sheet): void {
  const ends = sheet.entries.map(({ cell, room }) => place(cell).row + (room?.rows ?? 1));
  const lastRow = sheet.lastRow ?? Math.max(...ends);
  const scaled = sheet.print !== "true size";
  Object.assign(page.pageSetup, {
    paperSize: PAPER,
    orientation: sheet.landscape ? "landscape" : "portrait",
    margins: { left: MARGIN, right: MARGIN, top: MARGIN, bottom: 0.6, header: 0.3, footer: 0.3 },
    printArea: `A1:${nameOf(lastRow - 1, sheet.widths.length - 1)}`,
    horizontalCentered: false,
    ...(scaled ? { fitToPage: true, fitToWidth: 1, fitToHeight: sheet.print === "one page" ? 1 : 0 } : { scale: 100 }),
    ...(sheet.repeat ? { printTitlesRow: sheet.repeat } : {}),
  });
  page.headerFooter.oddFooter = `&L&8&F, ${sheet.name}&R&8Page &P of &N`;
  for (const row of sheet.breaks ?? []) page.getRow(row).addPageBreak();
}

/** Squares to measure on paper before anything on the page is used as a pattern. */
function drawTestSquares(page: Worksheet, [inch, millimeters]: readonly [string, string]): void {
  const draw = (cell: string, text: string, side: number) => {
    const { row, column } = place(cell);
    page.addShape({
      name: `Test square, ${text}`,
      text,
      lineColor: "000000",
      lineWidth: 1,
      range: { tl: { col: column, row }, ext: { width: side, height: side } },
    });
  };
  draw(inch, "1 in", INCH);
  draw(millimeters, "25 mm", MILLIMETERS_25);
}
