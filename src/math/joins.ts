/** Strips joined end to end into one long strip, for binding and borders. */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { covers } from "./rounding";
import type { Show } from "./show";
import type { Inches } from "./units";
import { step } from "./working";

/** How two strips are joined: end to end, or crossed at right angles and sewn at 45°. */
export const JOINS = ["straight", "diagonal"] as const;
export type Join = (typeof JOINS)[number];

/**
 * Length that every join costs.
 *
 * A straight join costs its two seam allowances. For a diagonal one the two ends cross in a square as wide as the strip, and
 * the seam runs from corner to corner: along the middle of the strip half a width is lost on either side of it.
 *
 * @param join how the strips are joined
 * @param stripWidth width of the strip as cut, inches
 * @param seam seam allowance of a straight join, inches
 * @returns inches
 */
export function joinLoss(join: Join, stripWidth: Inches, seam = USUAL.seam): Inches {
  return join === "straight" ? ((2 * seam) as Inches) : stripWidth;
}

/**
 * Strips that, joined end to end, reach a length: n strips give n × strip − (n − 1) × loss.
 *
 * @param length length to reach, inches
 * @param stripLength length of one strip, which is the usable width of the fabric, inches
 * @param loss length that every join costs, inches
 * @returns strips, at least 1
 * @throws Problem "bad input" where a join costs a whole strip
 */
export function joinedStrips(length: Inches, stripLength: Inches, loss: Inches): number {
  requirePositive("length", length);
  requirePositive("width of the fabric", stripLength);
  requireNotNegative("loss at a join", loss);
  requireJoinable(stripLength, loss);
  const strips = stripsReaching(length, stripLength, loss);
  requireCount("strips", strips);
  step((show) => joinedText(show, { strips, length }, stripLength, loss));
  return strips;
}

/** Strips joined into one row, and the length they are to reach, inches. */
export interface JoinedRow {
  strips: number;
  length: number;
}

/** `8 × 42 in − 7 joins × 2 1/2 in = 318 1/2 in, 290 in needed`. */
export function joinedText(show: Show, { strips, length }: JoinedRow, stripLength: Inches, loss: Inches): string {
  const joins = strips - 1;
  const lost = joins > 0 ? ` − ${counted(joins, "join")} × ${show.length(loss)}` : "";
  const reached = show.length(strips * stripLength - joins * loss);
  return `${strips} × ${show.length(stripLength)}${lost} = ${reached}, ${show.length(length)} needed`;
}

/** The bare count of `joinedStrips`, for those who try many lengths. */
export function stripsReaching(length: number, stripLength: Inches, loss: Inches): number {
  return Math.max(1, covers(stripLength - loss, length - loss));
}

export function requireJoinable(stripLength: Inches, loss: Inches): void {
  if (loss < stripLength) return;
  throw new Problem(
    "bad input",
    (show) => `every join costs ${show.length(loss)}, all of a strip of ${show.length(stripLength)}`,
  );
}
