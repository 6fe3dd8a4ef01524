/** The open workbook of the spreadsheet program. The only place that calls Excel.run. */
import { areaOf } from "./pages";
import { supports, whyProgramCannot } from "./program";
import {
  type CellValue,
  type DrawnPicture,
  isErrorCode,
  type Replaced,
  type SelectedCell,
  type Sheet,
  type SheetPage,
  SheetProblem,
  type Task,
} from "./sheet";
import { workbookFile } from "./workbookFile";

/** Tables that formulas fill are known to the program from this version on. */
const SPILL_VERSION = "1.12";

export class WorkbookSheet implements Sheet {
  whyNot(task: Task): string | undefined {
    return whyProgramCannot(task);
  }

  selected(): Promise<SelectedCell | undefined> {
    return run(async (context) => {
      const cell = context.workbook.getSelectedRange().getCell(0, 0);
      cell.load("address,formulas,text");
      cell.worksheet.load("name");
      const home = supports("ExcelApi", SPILL_VERSION) ? cell.getSpillParentOrNullObject() : undefined;
      home?.load("address,formulas,isNullObject");
      await context.sync();
      const name = plainAddress(cell.address);
      const filled = home && !home.isNullObject ? home : undefined;
      return {
        name,
        page: cell.worksheet.name,
        formula: formulaIn((filled ?? cell).formulas),
        home: filled ? plainAddress(filled.address) : name,
        shown: cell.text[0][0],
      };
    });
  }

  onChange(listener: () => void): void {
    if (!supports("ExcelApi", "1.7")) return;
    const heard = () => {
      listener();
      return Promise.resolve();
    };
    void run(async (context) => {
      context.workbook.onSelectionChanged.add(heard);
      if (supports("ExcelApi", "1.9")) {
        context.workbook.worksheets.onChanged.add(heard);
        // Colors of cells are seen in pictures.
        context.workbook.worksheets.onFormatChanged.add(heard);
      }
      if (supports("ExcelApi", "1.8")) context.workbook.worksheets.onCalculated.add(heard);
      await context.sync();
    }).catch((thrown: unknown) => {
      console.warn(thrown);
    });
  }

  selectedRange(): Promise<string> {
    return run(async (context) => {
      const range = context.workbook.getSelectedRange();
      range.load("address");
      await context.sync();
      return plainAddress(range.address);
    });
  }

  values(reference: string, page: string): Promise<CellValue[][]> {
    return run(async (context) => {
      const range = await this.find(context, reference, page);
      range.load("values,valueTypes");
      await context.sync();
      return readValues(range);
    });
  }

  fills(reference: string, page: string): Promise<(string | null)[][]> {
    return run(async (context) => {
      const range = await this.find(context, reference, page);
      const cells = range.getCellProperties({ format: { fill: { color: true, pattern: true } } });
      await context.sync();
      return cells.value.map((line) => line.map(({ format }) => colorOf(format?.fill)));
    });
  }

  writeText({ cell, page }: { cell: string; page: string }, text: string): Promise<void> {
    return run(async (context) => {
      const range = context.workbook.worksheets.getItem(page).getRange(cell);
      if (supports("ExcelApi", SPILL_VERSION)) {
        const home = range.getSpillParentOrNullObject();
        home.load("address,isNullObject");
        await context.sync();
        if (!home.isNullObject) {
          throw new SheetProblem(`${cell} is part of the table that starts in ${plainAddress(home.address)}.`);
        }
      }
      range.values = [[asText(text)]];
      await context.sync();
    });
  }

  /** The sign before decimals, as the program writes it; a point where it does not tell. */
  async decimalSeparator(): Promise<string> {
    if (!supports("ExcelApi", "1.11")) return ".";
    return run(async (context) => {
      const { application } = context.workbook;
      application.load("decimalSeparator");
      await context.sync();
      return application.decimalSeparator;
    });
  }

  /** A rectangle of cells, whole columns as far as they are filled, a spilled table, or a name. */
  private async find(context: Excel.RequestContext, reference: string, page: string): Promise<Excel.Range> {
    const named = /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(reference) && !/^[A-Z]{1,3}\d+$/i.test(reference);
    if (named) return this.findNamed(context, reference, page);
    const area = areaOf(reference, page);
    const sheet = context.workbook.worksheets.getItemOrNullObject(area.page);
    sheet.load("isNullObject");
    await context.sync();
    if (sheet.isNullObject) throw new SheetProblem(`There is no page “${area.page}”`);
    const cells = reference.replace(/^.*!/, "").replace(/#$/, "");
    if (area.spilled) {
      const table = sheet.getRange(cells).getSpillingToRangeOrNullObject();
      return found(context, table, `No formula in ${cells} fills a table`);
    }
    const range = sheet.getRange(cells);
    if (/\d/.test(cells)) return range;
    const filled = range.getUsedRangeOrNullObject(true);
    filled.load("isNullObject");
    await context.sync();
    // The first cells count even where they are empty: INDEX and tables go by their places.
    return filled.isNullObject ? range.getRow(0) : filled.getBoundingRect(range.getRow(0));
  }

  /** The cells of a name: one of the page goes before one of the workbook. */
  private async findNamed(context: Excel.RequestContext, name: string, page: string): Promise<Excel.Range> {
    const { workbook } = context;
    const homes = supports("ExcelApi", "1.4") ? [workbook.worksheets.getItem(page), workbook] : [workbook];
    const items = homes.map(({ names }) => names.getItemOrNullObject(name));
    for (const item of items) item.load("isNullObject");
    await context.sync();
    const item = items.find(({ isNullObject }) => !isNullObject);
    if (!item) throw new SheetProblem(`Nothing in this workbook is called “${name}”`);
    return found(context, item.getRangeOrNullObject(), `“${name}” is no name of cells`);
  }

  insertFormula(formula: string, at?: { cell: string; page: string }): Promise<string> {
    return run(async (context) => {
      const cell = at
        ? context.workbook.worksheets.getItem(at.page).getRange(at.cell)
        : context.workbook.getSelectedRange().getCell(0, 0);
      cell.formulas = [[formula]];
      cell.load("address");
      await context.sync();
      return plainAddress(cell.address);
    });
  }

  insertPicture({ title, description, png, width, height }: DrawnPicture): Promise<void> {
    return run(async (context) => {
      const beside = context.workbook.getSelectedRange().getCell(0, 0).getOffsetRange(0, 1);
      beside.load("left,top");
      await context.sync();
      const shape = beside.worksheet.shapes.addImage(png);
      // Points, of which 72 are 96 pixels.
      Object.assign(shape, { left: beside.left, top: beside.top, width: width * 0.75, height: height * 0.75 });
      Object.assign(shape, { lockAspectRatio: true, altTextTitle: title, altTextDescription: description });
      await context.sync();
    });
  }

  replaceByValues(): Promise<Replaced> {
    return run(async (context) => {
      const selection = context.workbook.getSelectedRange();
      selection.load("address,values,formulas,rowIndex,columnIndex");
      selection.worksheet.load("name");
      await context.sync();
      const page = selection.worksheet.name;
      const homes = selection.formulas.flatMap((line, row) =>
        line.flatMap((formula, column) =>
          isFormula(formula) ? [{ formula: String(formula), cell: selection.getCell(row, column) }] : [],
        ),
      );
      const spills = supports("ExcelApi", SPILL_VERSION)
        ? homes.map(({ cell }) => cell.getSpillingToRangeOrNullObject())
        : [];
      for (const { cell } of homes) cell.load("address,values");
      for (const spill of spills) spill.load("address,values,isNullObject");
      await context.sync();
      const kept = homes.map(({ formula, cell }, index) => {
        const spill = spills.at(index);
        const range = spill && !spill.isNullObject ? spill : cell;
        return { formula, cell: plainAddress(cell.address), range: plainAddress(range.address), values: range.values };
      });
      const sheet = context.workbook.worksheets.getItem(page);
      for (const { range, values } of kept) sheet.getRange(range).values = values.map((line) => line.map(asValue));
      await context.sync();
      return {
        range: plainAddress(selection.address),
        formulas: kept.length,
        undo: () =>
          run(async (later) => {
            const back = later.workbook.worksheets.getItem(page);
            for (const { range } of kept) back.getRange(range).clear("Contents");
            for (const { cell, formula } of kept) back.getRange(cell).formulas = [[formula]];
            await later.sync();
          }),
      };
    });
  }

  pages(): Promise<SheetPage[]> {
    return run(async (context) => {
      const sheets = context.workbook.worksheets;
      sheets.load("items/name,items/visibility");
      await context.sync();
      const used = sheets.items
        .filter(({ visibility }) => visibility === "Visible")
        .map((sheet) => ({ name: sheet.name, range: sheet.getUsedRangeOrNullObject(true) }));
      for (const { range } of used) range.load("values,valueTypes,formulas,rowIndex,columnIndex,isNullObject");
      await context.sync();
      return used
        .filter(({ range }) => !range.isNullObject)
        .map(({ name, range }) => ({
          name,
          row: range.rowIndex,
          column: range.columnIndex,
          values: readValues(range),
          formulas: range.formulas.map((line) => line.map((formula) => (isFormula(formula) ? String(formula) : ""))),
        }));
    });
  }

  workbookName(): Promise<string> {
    return run(async (context) => {
      context.workbook.load("name");
      await context.sync();
      return context.workbook.name.replace(/\.xls[xmb]?$/i, "");
    });
  }

  file(): Promise<Uint8Array<ArrayBuffer>> {
    return workbookFile();
  }
}

/** Runs a batch; what the program refuses becomes a sentence. */
async function run<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run(batch);
  } catch (thrown) {
    if (thrown instanceof SheetProblem) throw thrown;
    console.warn(thrown);
    const code = (thrown as { code?: string }).code ?? "";
    throw new SheetProblem(
      REFUSALS.get(code) ?? "The spreadsheet program did not do that. Leave the cell you are typing in, and try again.",
    );
  }
}

const REFUSALS: ReadonlyMap<string, string> = new Map([
  ["AccessDenied", "This sheet is protected. Take the protection off first, or select a cell that is open."],
  ["InvalidSelection", "Select cells first, not a picture or a chart."],
  ["InvalidReference", "These cells cannot be found in the workbook."],
]);

/** A range that may not be there. */
async function found(context: Excel.RequestContext, range: Excel.Range, otherwise: string): Promise<Excel.Range> {
  range.load("isNullObject");
  await context.sync();
  if (range.isNullObject) throw new SheetProblem(otherwise);
  return range;
}

/** Without the page: Sheet1!$B$5 is B5. */
function plainAddress(address: string): string {
  return address.replace(/^.*!/, "").replaceAll("$", "");
}

function isFormula(content: unknown): boolean {
  return typeof content === "string" && content.startsWith("=");
}

function formulaIn(formulas: unknown[][]): string {
  const content = formulas[0][0];
  return isFormula(content) ? String(content) : "";
}

/** An empty pattern is no fill, though the program then calls its color white; so does an older one that tells no pattern. */
function colorOf(fill: Excel.CellPropertiesFill | undefined): string | null {
  const { color = "", pattern } = fill ?? {};
  if (color === "" || pattern === "None") return null;
  return !pattern && color.toUpperCase() === "#FFFFFF" ? null : color.toLowerCase();
}

/** Behind an apostrophe the program keeps as text what it would otherwise take for a date or a formula, such as 1/2. */
function asText(text: string): string {
  return /\d|^[=+\-@']|^(?:true|false)$/i.test(text) ? `'${text}` : text;
}

/** What a formula showed, to be written in its place. */
function asValue(value: unknown): unknown {
  return typeof value === "string" && !isErrorCode(value) ? asText(value) : value;
}

/** An empty text, which only a formula gives, is no empty cell. */
function readValues({ values, valueTypes }: Excel.Range): CellValue[][] {
  return values.map((line, row) =>
    line.map((value, column) => ((valueTypes[row][column] as string) === "Empty" ? null : (value as CellValue))),
  );
}
