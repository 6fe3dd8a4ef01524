/** The formulas of a file: those that were filled down are written out in each cell, and what tables fill is theirs. */
import type { Cell, Worksheet } from "@cj-tech-master/excelts";
import type { IRange } from "@univerjs/core";
import { cellPlace } from "../address";
import { type Filled, filledFrom, fromFile } from "./formulas";

export class TooLarge extends Error {}

/** A full sheet of ordinary formulas takes half as much. */
const MOST_EFFORT = 200_000_000;

/** What the formulas of all sheets come to. */
export class FileFormulas {
  /** Whether a formula cannot be told from the file, so that only its value is there. */
  isOneMissing = false;
  private effort = 0;

  /** A formula as it is typed. Reading it takes the longer the more apostrophes are in it. */
  read(stored: string): string {
    this.spend(stored.length * (3 + stored.split("'").length));
    return fromFile(stored);
  }

  /** A formula as it reads in a cell into which it was filled. */
  fill({ formula, filled }: First, cell: string): string {
    this.spend(4 * formula.length + 200 * filled.references);
    return filled.into(cell);
  }

  private spend(effort: number): void {
    this.effort += effort;
    if (this.effort > MOST_EFFORT) throw new TooLarge();
  }
}

/** What was filled from a cell into others. */
interface First {
  formula: string;
  filled: Filled;
}

/** The formulas of one sheet, whose cells are read row by row, from the left. */
export class SheetFormulas {
  /** For each column, the last row that a table from above or from the left fills. */
  private readonly filled = new Map<number, number>();
  /** By the names of their cells. */
  private readonly firsts = new Map<string, First>();

  /** @param columns how many columns are read at most */
  constructor(
    private readonly page: Worksheet,
    private readonly file: FileFormulas,
    private readonly columns: number,
  ) {}

  /** The formula of a cell as it is typed; undefined where there is none. */
  of(cell: Cell): string | undefined {
    const { value } = cell;
    if (value && typeof value === "object") {
      // The first of filled-down cells has a range too, of cells with formulas of their own.
      const { shareType, ref } = value as { shareType?: string; ref?: string };
      if (shareType === "array" && ref) this.fill(cell, rangeOf(ref));
      if ("formula" in value && value.formula) return this.file.read(value.formula);
      const first = "sharedFormula" in value ? this.first(value.sharedFormula) : undefined;
      if (first) return this.file.fill(first, cell.address);
    }
    // The reader has an empty formula where the file says no more than that there is one.
    this.file.isOneMissing ||= cell.formula !== undefined;
    return undefined;
  }

  /** Whether the cell shows part of a table whose formula stands in another one. */
  isFilled({ row, col }: Cell): boolean {
    return row - 1 <= (this.filled.get(col - 1) ?? -1);
  }

  private fill({ row, col }: Cell, { startRow, startColumn, endRow, endColumn }: IRange): void {
    if (startRow !== row - 1 || startColumn !== col - 1) return;
    for (let column = startColumn; column <= Math.min(endColumn, this.columns - 1); column++)
      this.filled.set(column, Math.max(endRow, this.filled.get(column) ?? -1));
  }

  /** What was filled from the cell of a name; undefined where no formula stands there. */
  private first(name: string): First | undefined {
    const known = this.firsts.get(name);
    if (known) return known;
    const stored = this.page.findCell(name)?.formula;
    if (!stored) return undefined;
    const formula = this.file.read(stored);
    const first = { formula, filled: filledFrom(name, formula) };
    this.firsts.set(name, first);
    return first;
  }
}

export function rangeOf(text: string): IRange {
  const [first, last = first] = text.split(":").map((cell) => cellPlace(cell.replace(/\$/g, "")));
  return { startRow: first.row, startColumn: first.column, endRow: last.row, endColumn: last.column };
}
