/** A sheet in memory for tests of the pane: cells by name on one page, worked out by the pane's own reading of formulas. */
import { isAnswered } from "../../src/pane/answer";
import { readCalls } from "../../src/pane/calls";
import { cellName, valuesIn } from "../../src/pane/pages";
import type { CellValue, DrawnPicture, Replaced, SelectedCell, Sheet, SheetPage, Task } from "../../src/pane/sheet";

export type Content = string | number;

const PAGE = "Plan";

export class MemorySheet implements Sheet {
  readonly pictures: DrawnPicture[] = [];
  /** Fill colors by the name of the cell. */
  readonly colors: Record<string, string> = {};
  private readonly listeners: (() => void)[] = [];
  private selection = "A1";

  /** @param cells by name, such as B5; formulas with their equals sign */
  constructor(
    readonly cells: Record<string, Content>,
    private readonly refused: Partial<Record<Task, string>> = {},
  ) {}

  whyNot(task: Task): string | undefined {
    return this.refused[task];
  }

  /** Selects a cell or a range, as a maker would. */
  select(range: string): void {
    this.selection = range;
    this.changed();
  }

  type(cell: string, content: Content): void {
    this.cells[cell] = content;
    this.changed();
  }

  async selected(): Promise<SelectedCell> {
    const name = this.selection.replace(/:.*/, "");
    const content = this.cells[name];
    const formula = isFormula(content) ? content : "";
    const [[value]] = await this.values(name, PAGE);
    return { name, page: PAGE, formula, home: name, shown: value === null ? "" : String(value) };
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  selectedRange(): Promise<string> {
    return Promise.resolve(this.selection);
  }

  async values(reference: string, page: string): Promise<CellValue[][]> {
    return valuesIn(await this.pages(), reference, page);
  }

  async fills(reference: string, page: string): Promise<(string | null)[][]> {
    const [sheet] = await this.pages();
    const values = sheet.values.map((line, row) =>
      line.map((_, column) => (this.colors[cellName(row, column)] as string | undefined) ?? null),
    );
    return valuesIn([{ ...sheet, values }], reference, page) as (string | null)[][];
  }

  writeText({ cell }: { cell: string }, text: string): Promise<void> {
    this.type(cell, text);
    return Promise.resolve();
  }

  insertFormula(formula: string, at?: { cell: string }): Promise<string> {
    const cell = at?.cell ?? this.selection.replace(/:.*/, "");
    this.type(cell, formula);
    return Promise.resolve(cell);
  }

  insertPicture(picture: DrawnPicture): Promise<void> {
    this.pictures.push(picture);
    return Promise.resolve();
  }

  async replaceByValues(): Promise<Replaced> {
    const names = valueNames(this.selection).filter((name) => isFormula(this.cells[name]));
    const before = Object.fromEntries(names.map((name) => [name, this.cells[name]]));
    for (const name of names) this.cells[name] = (await this.values(name, PAGE))[0][0] as Content;
    this.changed();
    return {
      range: this.selection,
      formulas: names.length,
      undo: () => {
        Object.assign(this.cells, before);
        this.changed();
        return Promise.resolve();
      },
    };
  }

  async pages(): Promise<SheetPage[]> {
    const [rows, columns] = [60, 12];
    const values: CellValue[][] = [];
    const formulas: string[][] = [];
    const page = { name: PAGE, row: 0, column: 0, values, formulas };
    for (let row = 0; row < rows; row += 1) {
      values.push(Array.from({ length: columns }, () => null));
      formulas.push(Array.from({ length: columns }, () => ""));
      for (let column = 0; column < columns; column += 1) {
        const content = this.cells[cellName(row, column)] as Content | undefined;
        if (isFormula(content)) formulas[row][column] = content;
        values[row][column] = content ?? null;
      }
    }
    for (const [row, line] of formulas.entries()) {
      for (const [column, formula] of line.entries()) {
        if (formula !== "") values[row][column] = await this.workOut(formula, page);
      }
    }
    return [page];
  }

  workbookName(): Promise<string> {
    return Promise.resolve("Harbor lights throw");
  }

  file(): Promise<Uint8Array<ArrayBuffer>> {
    return Promise.resolve(new Uint8Array([80, 75, 3, 4]));
  }

  /** What a cell shows; formulas read only cells above them. */
  private async workOut(formula: string, page: SheetPage): Promise<CellValue> {
    const calls = await readCalls(formula, (reference) => Promise.resolve(valuesIn([page], reference, PAGE)));
    const call = typeof calls === "string" ? undefined : calls.at(-1);
    if (!call) return null;
    if (!isAnswered(call.outcome)) return call.outcome.code;
    const { value } = call.outcome;
    return Array.isArray(value) ? value[0][0] : value;
  }

  private changed(): void {
    for (const listener of this.listeners) listener();
  }
}

function isFormula(content: Content | undefined): content is string {
  return typeof content === "string" && content.startsWith("=");
}

/** The names of the cells of a range in one column. */
function valueNames(range: string): string[] {
  const [first, last = first] = range.split(":");
  const column = first.replace(/\d+/, "");
  const [from, to] = [first, last].map((name) => Number(name.replace(/\D+/, "")));
  return Array.from({ length: to - from + 1 }, (_, index) => `${column}${from + index}`);
}
