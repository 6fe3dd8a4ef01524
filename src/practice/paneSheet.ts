/** The open practice sheet, as the pane beside it reads and changes it. */
import { CellValueType, type ICellData } from "@univerjs/core";
import {
  type CellValue,
  type Replaced,
  type SelectedCell,
  type Sheet,
  type SheetPage,
  SheetProblem,
  type Task,
} from "../pane/sheet";
import { cellName } from "./address";
import type { Place } from "./calculator";
import { textOf } from "./cells";
import { hexColor } from "./colors";
import type { Content, OpenEngine } from "./content";
import { cellToChange, type Matrix, OpenBook } from "./openBook";

/** The sheet that is open on the page. */
export interface OpenSheet {
  engine: OpenEngine;
  content: () => Content;
  name: string;
  /** Whether it may be changed here; another tab may be working on it. */
  mine: boolean;
}

const NO_PICTURES =
  "The practice sheet holds no pictures: save this one, and put it into the saved file with your spreadsheet program.";

export class PaneSheet implements Sheet {
  private readonly listeners: (() => void)[] = [];

  /** @param open the sheet that is open now; none while one is being opened */
  constructor(private readonly open: () => OpenSheet | undefined) {}

  whyNot(task: Task): string | undefined {
    return task === "picture" ? NO_PICTURES : undefined;
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  /** Another sheet was opened, the selection moved, or what cells show may have changed. */
  changed(): void {
    for (const listener of this.listeners) listener();
  }

  selected(): Promise<SelectedCell | undefined> {
    return answer(() => {
      const book = this.open() && this.book();
      const range = book?.selection.at(-1);
      if (!book || !range) return undefined;
      const [[place]] = book.places(book.activeSheet, range);
      const { formula, home } = book.cells.source(place) ?? { formula: "", home: place };
      return {
        name: nameOf(place),
        page: book.activeSheet.getName(),
        formula,
        home: nameOf(home),
        shown: book.cells.shown(place),
      };
    });
  }

  selectedRange(): Promise<string> {
    return answer(() => {
      const book = this.book();
      return book.rangeName(selectionOf(book).at(-1)!);
    });
  }

  values(reference: string, page: string): Promise<CellValue[][]> {
    return answer(() => {
      const book = this.book();
      return each(book.placesOf(reference, page), (place) => valueOf(book.cells.at(place)));
    });
  }

  fills(reference: string, page: string): Promise<(string | null)[][]> {
    return answer(() => {
      const book = this.book();
      return each(book.placesOf(reference, page), (place) => hexColor(book.cells.fill(place)) ?? null);
    });
  }

  async writeText({ cell, page }: { cell: string; page: string }, text: string): Promise<void> {
    const book = this.bookToChange();
    const content = text.startsWith("=") ? { f: text } : { v: text };
    await book.change(book.sheetCalled(page), cellToChange(cell, { ...EMPTY, ...content }));
  }

  async insertFormula(formula: string, at?: { cell: string; page: string }): Promise<string> {
    const book = this.bookToChange();
    const sheet = at ? book.sheetCalled(at.page) : book.activeSheet;
    const cell = at?.cell ?? nameOf(book.places(sheet, selectionOf(book).at(-1)!)[0][0]);
    await book.change(sheet, cellToChange(cell, { ...EMPTY, f: formula }));
    return cell;
  }

  insertPicture(): Promise<void> {
    return Promise.reject(new SheetProblem(NO_PICTURES));
  }

  async replaceByValues(): Promise<Replaced> {
    const book = this.bookToChange();
    await book.rest();
    const sheet = book.activeSheet;
    const ranges = selectionOf(book);
    const values: Matrix = {};
    const before: Matrix = {};
    let formulas = 0;
    for (const home of ranges.flatMap((range) => book.places(sheet, range).flat())) {
      const formula = book.cells.formula(home);
      if (!formula) continue;
      formulas += 1;
      const table = book.cells.table(home);
      for (const place of table ? book.places(sheet, table).flat() : [home]) {
        const { v, t } = book.cells.at(place);
        put(values, place, { ...EMPTY, v, t });
        put(before, place, EMPTY);
      }
      put(before, home, { ...EMPTY, f: formula });
    }
    if (formulas > 0) await book.change(sheet, values);
    return {
      range: ranges.map((range) => book.rangeName(range)).join(", "),
      formulas,
      undo: async () => {
        await this.bookToChange(book.id).change(sheet, before);
      },
    };
  }

  pages(): Promise<SheetPage[]> {
    return answer(() => {
      const book = this.book();
      return book.sheets.map((sheet) => {
        const places = book.places(sheet, book.filled(sheet));
        return {
          name: sheet.getName(),
          row: 0,
          column: 0,
          values: each(places, (place) => valueOf(book.cells.at(place))),
          formulas: each(places, (place) => book.cells.formula(place)),
        };
      });
    });
  }

  workbookName(): Promise<string> {
    return answer(() => this.opened().name);
  }

  async file(): Promise<Uint8Array<ArrayBuffer>> {
    const { writeXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/write");
    return writeXlsx(this.opened().content());
  }

  /** A copy for students, worked out by the engine that shows the sheet. */
  async copyForClass(): Promise<{ bytes: Uint8Array<ArrayBuffer>; report: string }> {
    const { copyForClass } = await import(/* webpackChunkName: "class-copy" */ "./classCopy");
    const { content, engine } = this.opened();
    return copyForClass(content(), engine);
  }

  private opened(): OpenSheet {
    const open = this.open();
    if (!open) throw new SheetProblem("The sheet is still being opened.");
    return open;
  }

  private book(): OpenBook {
    return new OpenBook(this.opened().engine);
  }

  /** @param id of the workbook that must still be the open one */
  private bookToChange(id?: string): OpenBook {
    if (!this.opened().mine) throw new SheetProblem("Another tab works on this sheet: press “Work on it here” first.");
    const book = this.book();
    if (id && id !== book.id) throw new SheetProblem("Another sheet is open now.");
    return book;
  }
}

/** A cell without content; how it looks stays as it is. */
const EMPTY: ICellData = { v: null, t: null, f: null, si: null, p: null };

/** What a call gives, or throws, as a promise. */
function answer<T>(call: () => T): Promise<T> {
  return Promise.resolve().then(call);
}

function each<T>(places: Place[][], read: (place: Place) => T): T[][] {
  return places.map((row) => row.map(read));
}

function selectionOf({ selection }: OpenBook) {
  if (selection.length === 0) throw new SheetProblem("Select cells of the sheet first.");
  return selection;
}

function nameOf({ row, column }: Place): string {
  return cellName(row, column);
}

function put(matrix: Matrix, { row, column }: Place, data: ICellData): void {
  (matrix[row] ??= {})[column] = data;
}

function valueOf(cell: ICellData): CellValue {
  const value = textOf(cell) ?? cell.v ?? "";
  // What a formula leaves empty is a text without letters.
  if (value === "") return cell.f || cell.si ? "" : null;
  if (cell.t === CellValueType.BOOLEAN) return Boolean(value);
  return cell.t === CellValueType.NUMBER ? Number(value) : value;
}
