/**
 * The door between cells and mathematics. A cell may hold a number, text, TRUE or FALSE, or nothing; an argument may be left
 * out. Here, and nowhere else, these become lengths, counts and choices, and problems become cell errors.
 */
import { CONVENTIONS, type Conventions } from "../src/math/conventions";
import { afterMinus, dateSentence, parseLength } from "../src/math/length";
import { Problem, requireCount } from "../src/math/problem";
import { nearestCount, same } from "../src/math/rounding";
import { decimalText, percentText, type Show } from "../src/math/show";
import { fabricUnit, fromInches, type Inches, inches, type System, toInches, type Unit } from "../src/math/units";
import { assume, tellIn } from "../src/math/working";
import { rectangle, tidy } from "./shown";
import { list, named, quote, readNumber, scalar, within } from "./typed";

/** What a spreadsheet hands over for one cell, or for an argument that was left out. */
export type Cell = unknown;

export type Value = number | string | boolean;

/** One value, or the rows of a table. */
export type Answer = Value | Value[][];

type Tell<T> = (show: Show, value: T) => string;

const lengthText: Tell<Inches> = (show, value) => show.length(value);
const fabricText: Tell<Inches> = (show, value) => show.fabric(value);
const plainText: Tell<unknown> = (_, value) => String(value);

/** Thrown where a cell that must be filled is still empty and the answer is to stay empty with it. */
class StaysEmpty extends Error {}

/** A number without a unit above this is no patch, border or quilt. */
const LONGEST_BARE = 1000;
const LONGEST = 10_000_000;

/** A patch, strip or seam below this is a slip of the keyboard. Inches. */
const SHORTEST = 1 / 1000;

/** How far a typed step may miss an even part: 0.33333333 is a third, 0.333 is not. Inches. */
const STEP_DUST = 1e-5;

/** A shop cuts no finer than this part of a yard (metre). */
const MOST_PARTS = 100;

/**
 * Runs one worksheet function: gives it a door in the maker's units, tidies what it answers and turns a Problem into the
 * cell error that can show its sentence. Anything else that is thrown is a bug and passes through.
 */
export function answer(units: Cell, ask: (door: Door) => Answer): any {
  let system: System = "in";
  try {
    system = readSystem(units);
    const result = ask(new Door(system));
    return Array.isArray(result) ? rectangle(result) : tidy(result);
  } catch (thrown) {
    if (thrown instanceof StaysEmpty) return "";
    if (!(thrown instanceof Problem)) throw thrown;
    const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
    // eslint-disable-next-line @typescript-eslint/only-throw-error -- the host's own error class
    throw new CustomFunctions.Error(thrown.kind === "bad input" ? invalidValue : notAvailable, thrown.sentence(system));
  }
}

/** Reads the cells of one call, all in the same units. Every reader takes the argument's name, for its sentence. */
export class Door {
  readonly conventions: Conventions;

  constructor(readonly system: System) {
    this.conventions = CONVENTIONS[system];
    tellIn(system);
  }

  /** A length above 0. Left out or empty, it is the usual one; without a usual one that is refused. */
  length(name: string, cell: Cell, usual?: Inches): Inches {
    const length = this.lengthOrZero(name, cell, usual);
    if (length === 0) throw new Problem("bad input", `${name} must be more than 0 (an empty cell can count as 0)`);
    return length;
  }

  /** A length that may be 0, such as a seam, a margin or a loss. */
  lengthOrZero(name: string, cell: Cell, usual?: Inches): Inches {
    const length = this.anyLength(name, cell, usual);
    if (length > 0 && length < SHORTEST) {
      throw new Problem(
        "bad input",
        (show) => `${name} is less than ${show.length(SHORTEST)}, too little to cut or sew`,
      );
    }
    return length;
  }

  /** The seam allowance. */
  seam(cell: Cell, usual = this.conventions.seam): Inches {
    return this.lengthOrZero("seam", cell, usual);
  }

  /** The ruler mark to which a size is rounded; 0 leaves it exact. */
  mark(cell: Cell, usual = this.conventions.mark): Inches {
    return this.lengthOrZero("mark", cell, usual);
  }

  /** What squaring an end loses. */
  squaring(cell: Cell): Inches {
    return this.lengthOrZero("squaring", cell, inches(0));
  }

  /** The usable width of the fabric, or what is as long by its nature, such as a strip across it. */
  fabricWidth(name: string, cell: Cell): Inches {
    return this.length(name, cell, this.conventions.fabricWidth);
  }

  /** A length that may be longer than anything on a quilt, such as all strips end to end. */
  longLength(name: string, cell: Cell, usual?: Inches): Inches {
    return this.optional(name, cell, usual, lengthText, () => this.readLength(name, cell, this.system, LONGEST));
  }

  /** A length that may be below 0, such as a shortfall that another cell worked out. */
  signedLength(name: string, cell: Cell): Inches {
    return signed(cell, (size) => this.longLength(name, size));
  }

  /** A place on a drawing, measured from any point: may be below 0. */
  place(name: string, cell: Cell): Inches {
    return signed(cell, (size) => this.anyLength(name, size));
  }

  /** An amount of fabric: a bare number is yards (metres). May be 0. */
  fabric(name: string, cell: Cell, usual?: Inches): Inches {
    return this.optional(name, cell, usual, fabricText, () =>
      this.readLength(name, cell, fabricUnit(this.system), LONGEST_BARE),
    );
  }

  /** The step in which a shop cuts: an even part of a yard (metre), or whole ones in text with their unit. */
  shopStep(cell: Cell): Inches {
    const step = this.fabric("step", cell, this.conventions.shopStep);
    const unit = fabricUnit(this.system);
    const whole = toInches(1, unit);
    const parts = nearestCount(step, whole);
    const wholes = nearestCount(whole, step);
    const slip = step > whole + STEP_DUST && !/[a-z'"]/i.test(String(cell));
    const even = step < whole ? whole / parts : wholes * whole;
    if (slip || step < whole / MOST_PARTS || Math.abs(even - step) > STEP_DUST) {
      const examples = this.system === "in" ? "1/8, 1/4, 1/3, 1/2 or 1 yard" : "0.05, 0.1, 0.25, 0.5 or 1 meter";
      throw new Problem("bad input", `step must be an even part of a yard or meter: ${examples}`);
    }
    return inches(even);
  }

  /** A whole number from `least` to a million. */
  count(name: string, cell: Cell, usual?: number, least = 0): number {
    return this.optional(name, cell, usual, plainText, () => {
      const value = readNumber(name, cell);
      requireCount(name, value, least);
      return value;
    });
  }

  /** A count for a planning sheet whose row is not filled in yet: where the cell is empty, the answer stays empty. */
  countOrEmpty(name: string, cell: Cell): number {
    if (isEmpty(cell)) throw new StaysEmpty();
    return this.count(name, cell);
  }

  /** One of a few numbers. */
  oneOf<N extends number>(name: string, cell: Cell, choices: readonly N[], usual?: N): N {
    return this.optional(name, cell, usual, plainText, () => {
      const value = readNumber(name, cell);
      const found = choices.find((choice) => choice === value);
      if (found === undefined) {
        throw new Problem("bad input", `${name} must be one of ${choices.join(", ")}, not ${value}`);
      }
      return found;
    });
  }

  /** A plain number, such as a price, an angle or a rate, from `least` to `most`. */
  number(name: string, cell: Cell, limits: { usual?: number; least?: number; most?: number } = {}): number {
    const { usual, least = 0, most = LONGEST } = limits;
    return this.optional(name, cell, usual, plainText, () => {
      const value = readNumber(name, cell);
      if (value < least || value > most) {
        throw new Problem("bad input", `${name} must be from ${least} to ${most}, not ${value}`);
      }
      return value;
    });
  }

  /**
   * A rate: 0.45, or 45%. A bare number above `largest`, such as 45 for 4500 %, most likely lacks its percent sign: it is
   * refused, not guessed at.
   */
  rate(name: string, cell: Cell, largest = 1): number {
    const rate = this.number(name, cell);
    if (rate > largest && !String(cell).includes("%")) {
      throw new Problem(
        "bad input",
        `${name} ${rate} would be ${percentText(rate)}; for ${rate} percent write ${rate}% or ${decimalText(rate / 100, 6)}`,
      );
    }
    return rate;
  }

  /** One of a few words. */
  choice<C extends string>(name: string, cell: Cell, choices: readonly C[], usual?: C): C {
    return this.optional(name, cell, usual, plainText, () => {
      const word = String(cell).trim().toLowerCase().replace(/\s+/g, " ");
      const found = choices.find((choice) => choice === word);
      if (found === undefined) {
        throw new Problem("bad input", `${name} must be one of ${list(choices)}, not ${quote(cell)}`);
      }
      return found;
    });
  }

  /** TRUE or FALSE. */
  flag(name: string, cell: Cell, usual: boolean): boolean {
    return this.optional(name, cell, usual, plainText, () => {
      const flag = readFlag(cell);
      if (flag === undefined) throw new Problem("bad input", `${name} must be TRUE or FALSE, not ${quote(cell)}`);
      return flag;
    });
  }

  /** Any text; a number counts as its text. */
  text(name: string, cell: Cell, usual?: string): string {
    return this.optional(name, cell, usual, plainText, () => String(scalar(name, cell)).trim());
  }

  /** A length, in the maker's units, as a cell shows it. */
  showsLength(length: number): number {
    return fromInches(length, this.system);
  }

  /** An amount of fabric, in yards (metres), as a cell shows it. */
  showsFabric(length: number): number {
    return fromInches(length, fabricUnit(this.system));
  }

  private anyLength(name: string, cell: Cell, usual?: Inches): Inches {
    return this.optional(name, cell, usual, lengthText, () => this.readLength(name, cell, this.system, LONGEST_BARE));
  }

  /** Reads a cell, or takes the usual value where there is none, and says so in the working. */
  private optional<T>(name: string, cell: Cell, usual: T | undefined, tell: Tell<T>, read: () => T): T {
    if (!isEmpty(cell)) return read();
    if (usual === undefined) throw new Problem("bad input", `${name} is missing`);
    assume((show) => `${name}: ${tell(show, usual)}, as usual where none is given`);
    return usual;
  }

  private readLength(name: string, cell: Cell, bareUnit: Unit, most: number): Inches {
    const value = scalar(name, cell);
    if (typeof value === "boolean") throw new Problem("bad input", `${name} must be a length, not ${quote(value)}`);
    if (typeof value === "string")
      return within(
        name,
        named(name, () => parseLength(value, bareUnit)),
        LONGEST,
      );
    if (same(value, 0)) return inches(0);
    if (value < 0) throw new Problem("bad input", `${name} must be 0 or more, not ${value}`);
    if (value > most) throw new Problem("bad input", `${name}: ${dateSentence(value)}`);
    return toInches(value, bareUnit);
  }
}

/** Reads the size of a length, and gives it the sign before it. */
function signed(cell: Cell, read: (size: Cell) => Inches): Inches {
  if (typeof cell === "number" && cell < 0) return inches(-1 * read(-cell));
  const size = typeof cell === "string" ? afterMinus(cell) : undefined;
  return size === undefined ? read(cell) : inches(-1 * read(size));
}

/** Whether a cell holds nothing, or an argument was left out. */
export function isEmpty(cell: Cell): boolean {
  return cell === undefined || cell === null || (typeof cell === "string" && cell.trim() === "");
}

/** A row of a range with its number, for sentences. */
export interface Row {
  /** 1 for the first row of the range. */
  number: number;
  cells: Cell[];
}

/** The rows of a range that hold anything. A single cell counts as a range of one. */
export function filledRows(range: Cell): Row[] {
  const rows = (Array.isArray(range) ? range : [[range]]) as Cell[][];
  return rows
    .map((cells, index) => ({ number: index + 1, cells: Array.isArray(cells) ? cells : [cells] }))
    .filter((row) => !row.cells.every(isEmpty));
}

/** TRUE or FALSE, by any word that is taken for it. */
export function readFlag(cell: Cell): boolean | undefined {
  const word = String(cell).trim().toLowerCase();
  if (["true", "yes", "1"].includes(word)) return true;
  return ["false", "no", "0"].includes(word) ? false : undefined;
}

/** Which units the word in a cell names; inches where it is empty. @throws Problem where it names none */
export function readSystem(units: Cell): System {
  if (isEmpty(units)) return "in";
  const word = String(units).trim().toLowerCase();
  if (["in", "inch", "inches"].includes(word)) return "in";
  if (["cm", "centimeter", "centimeters", "centimetre", "centimetres"].includes(word)) return "cm";
  throw new Problem("bad input", `units must be "in" or "cm", not ${quote(units)}`);
}
