/** Turns parts of a picture by writing their cells. */
import { Problem } from "../math/problem";
import { asSentence } from "./answer";
import { areaOf, cellName } from "./pages";
import { type CellValue, type Sheet, SheetProblem } from "./sheet";
import type { Spot } from "./spots";

/** The cell in which a range starts; row and column from 0. */
export interface Origin {
  page: string;
  row: number;
  column: number;
}

/**
 * Where a range starts whose cells can be written; undefined for what names no such range.
 *
 * @param reference an argument as it stands in the formula, such as B2:D5
 * @param page where the formula stands
 */
export function originOf(reference: string, page: string): Origin | undefined {
  // Whole columns are handed over only as far as they are filled.
  if (!/\d$/.test(reference)) return undefined;
  try {
    const area = areaOf(reference, page);
    return { page: area.page, row: area.top, column: area.left };
  } catch (thrown) {
    if (thrown instanceof SheetProblem) return undefined;
    throw thrown;
  }
}

/** Writes the cells of one range, one after the other. */
export class Turning {
  /** What was written here since the picture was drawn, by cell. */
  private readonly written = new Map<string, string>();
  private last: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly sheet: Sheet,
    private readonly origin: Origin,
  ) {}

  /**
   * Turns a part by one more step.
   *
   * @returns what was done, as a sentence
   * @throws SheetProblem with the reason why not
   */
  turn(spot: Spot): Promise<string> {
    const turned = this.last.then(() => this.turnNow(spot));
    this.last = turned.catch(() => undefined);
    return turned;
  }

  private async turnNow(spot: Spot): Promise<string> {
    const cell = cellName(this.origin.row + spot.row, this.origin.column + spot.column);
    const { page, value, formula } = await this.read(spot);
    if (formula !== "") throw new SheetProblem(`${cell} holds a formula, which is not written over.`);
    const text = value === null ? "" : String(value).trim();
    if (text !== (this.written.get(cell) ?? spot.text)) {
      throw new SheetProblem(`${cell} has changed in the meantime and stays as it is.`);
    }
    const next = turnedText(spot, text);
    await this.sheet.writeText({ cell, page }, next);
    this.written.set(cell, next);
    return `${cell} now holds “${next}”.`;
  }

  /** What the cell holds at this moment. */
  private async read(spot: Spot): Promise<{ page: string; value: CellValue; formula: string }> {
    const { origin } = this;
    const page = (await this.sheet.pages()).find(({ name }) => name.toLowerCase() === origin.page.toLowerCase());
    if (!page) throw new SheetProblem(`The page “${origin.page}” cannot be read.`);
    const [row, column] = [origin.row + spot.row - page.row, origin.column + spot.column - page.column];
    const value = itemAt(page.values, row, column) ?? null;
    return { page: page.name, value, formula: itemAt(page.formulas, row, column) ?? "" };
  }
}

function turnedText(spot: Spot, text: string): string {
  try {
    return spot.turned(text);
  } catch (thrown) {
    throw thrown instanceof Problem ? new SheetProblem(asSentence(thrown.message)) : thrown;
  }
}

/** What stands in a place of a table, or undefined beyond its edges. */
function itemAt<T>(table: readonly T[][], row: number, column: number): T | undefined {
  return (table[row] as T[] | undefined)?.[column];
}
