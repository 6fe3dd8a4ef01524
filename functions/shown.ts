/** What a cell shows: numbers without binary dust, tables without holes. */
import { Problem } from "../src/math/problem";
import type { Value } from "./cells";

/** What is left of a difference of equal numbers. */
const DUST = 1e-9;

/** Undoes the binary dust of converting units, and stops a number that is none before it reaches a cell. */
export function tidy(value: Value): Value {
  if (typeof value !== "number") return value;
  if (!Number.isFinite(value)) throw new Problem("no answer", "the numbers are too large to work with");
  return Math.abs(value) < DUST ? 0 : Number(value.toPrecision(13));
}

/** Cells in the longest row. A range may have more rows than a call can have arguments. */
export function widthOf(rows: readonly (readonly unknown[])[]): number {
  return rows.reduce((most, row) => Math.max(most, row.length), 0);
}

/** Every row as long as the longest, padded with empty text: a hole would reach the cell as a null. */
export function rectangle(rows: Value[][]): Value[][] {
  const width = widthOf(rows);
  return rows.map((row) => Array.from({ length: width }, (_, column) => tidy(row[column] ?? "")));
}
