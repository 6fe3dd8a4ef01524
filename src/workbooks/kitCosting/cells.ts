/** Cells of the kit costing that several of its sheets read. */
import { callsIn } from "../book";

export const U = "Kit!$B$6";
export const q = callsIn(U);

/** Rows of fabrics. */
export const FIRST = 22;
export const LAST = 31;
export const ROWS = Array.from({ length: LAST - FIRST + 1 }, (_, index) => FIRST + index);

export const GENEROSITY = "Kit!$B$8";

/** Money as it is paid; a hair more, for halves that decimals miss. */
export function cents(amount: string): string {
  return `ROUND(${amount}+0.000001,2)`;
}
