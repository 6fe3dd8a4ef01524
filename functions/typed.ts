/** What is typed in a cell, read or refused, and told in a sentence. */
import { Problem } from "../src/math/problem";
import type { Inches } from "../src/math/units";
import type { Cell, Value } from "./cells";

/** A number, a text, TRUE or FALSE: anything else that a host hands over is refused. */
export function scalar(name: string, cell: Cell): Value {
  if (Array.isArray(cell)) throw new Problem("bad input", `${name} must be one cell, not a range`);
  if (typeof cell === "string" || typeof cell === "boolean") return cell;
  if (typeof cell === "number" && Number.isFinite(cell)) return cell;
  throw new Problem("bad input", `${name} is not a number or text; look at the cell it comes from`);
}

/** Puts the argument's name before the sentence of a Problem. */
export function named<T>(name: string, read: () => T): T {
  try {
    return read();
  } catch (thrown) {
    throw thrown instanceof Problem ? new Problem(thrown.kind, `${name}: ${thrown.message}`) : thrown;
  }
}

/** Refuses a length beyond all that is cut or sewn. */
export function within(name: string, length: Inches, most: number): Inches {
  if (length > most) throw new Problem("bad input", `${name} is longer than anything that can be cut or sewn`);
  return length;
}

/** A cell in a sentence. A host can hand over things that are no value at all. */
export function quote(cell: Cell): string {
  if (Array.isArray(cell)) return "a range";
  const readable = typeof cell === "string" || typeof cell === "boolean" || Number.isFinite(cell);
  if (!readable) return "what stands there";
  const text = typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
  return `“${text.length > 30 ? `${text.slice(0, 30)}…` : text}”`;
}

/** A word to choose as it is spelled in the United States. */
export function respelled(cell: Cell): Cell {
  return typeof cell === "string" ? cell.replace(/^\s*mitred\s*$/i, "mitered") : cell;
}

/** Words to choose from. */
export function list(choices: readonly string[]): string {
  return choices.map((choice) => `"${choice}"`).join(", ");
}

/** A number, or a text that is one; 45% is 0.45. */
export function readNumber(name: string, cell: Cell): number {
  const value = scalar(name, cell);
  if (typeof value === "number") return value;
  if (typeof value === "string" && /^-?(\d+\.?\d*|\.\d+)\s*%?$/.test(value.trim())) {
    return value.includes("%") ? parseFloat(value) / 100 : Number(value);
  }
  throw new Problem("bad input", `${name} must be a number, not ${quote(value)}`);
}
