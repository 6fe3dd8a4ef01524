/** Reading lengths from a range of any shape. */
import type { Inches } from "../src/math/units";
import { type Cell, type Door, filledRows, isEmpty } from "./cells";

/** The lengths of a range in reading order; empty cells are passed over. Sentences name them by their place: "patch 3". */
export function readLengths(door: Door, name: string, range: Cell): Inches[] {
  return filledRows(range)
    .flatMap(({ cells }) => cells.filter((cell) => !isEmpty(cell)))
    .map((cell, index) => door.length(`${name} ${index + 1}`, cell));
}
