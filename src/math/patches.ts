/**
 * Patches: from the finished size in the quilt to the size to cut.
 *
 * A shape that has an inscribed circle of radius r grows by the factor (r + seam) / r when every side moves outward by the
 * seam (school geometry); the formulas below are that rule worked out.
 */
import { USUAL } from "./conventions";
import { type Inches } from "./units";
import { requireNotNegative, requirePositive } from "./problem";
import { roundUpTo } from "./rounding";
import { step } from "./working";

/** How many half-square units are sewn from one pair of squares. */
export const MADE_AT_ONCE = [1, 2, 4, 8] as const;
export type MadeAtOnce = (typeof MADE_AT_ONCE)[number];

/** What a seam adds to the short side of a right isosceles triangle: 1 + cot 22.5° seams. */
const HALF_SQUARE_SEAMS = 2 + Math.SQRT2;

/**
 * Side to cut for a square patch, or either side of a rectangle.
 *
 * @param finished side of the sewn patch, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves the size exact, since rounding adds up across a block
 * @returns side to cut, inches
 * @throws Problem "bad input" where a length is out of range
 */
export function cutSquare(finished: Inches, seam = USUAL.seam, mark = 0 as Inches): Inches {
  requireSizes(finished, seam, mark);
  const exact = finished + 2 * seam;
  step((show) => `${show.length(finished)} + 2 × ${show.length(seam)} = ${show.length(exact)}`);
  return toMark(mark, exact);
}

/**
 * Side of the squares to cut for half-square units.
 *
 * One or two at once: a square cut once corner to corner, or two squares sewn on both sides of a diagonal.
 * Four at once: two squares sewn together all round, then cut on both diagonals; the outer edges lie on the bias.
 * Eight at once: two squares sewn on both sides of both diagonals; each quarter gives two units.
 *
 * @param finished side of the sewn unit, inches
 * @param madeAtOnce units that one pair of squares makes; 1 is a triangle cut on its own
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; the units are trimmed after sewing
 * @returns side of the squares to cut, inches
 * @throws Problem "bad input" where a length is out of range
 */
export function cutHalfSquare(
  finished: Inches,
  madeAtOnce: MadeAtOnce = 2,
  seam = USUAL.seam,
  mark = USUAL.mark,
): Inches {
  requireSizes(finished, seam, mark);
  return toMark(mark, exactHalfSquare(finished, madeAtOnce, seam));
}

function exactHalfSquare(finished: Inches, madeAtOnce: MadeAtOnce, seam: Inches): number {
  if (madeAtOnce === 4) {
    const exact = Math.SQRT2 * (finished + 2 * seam) + 2 * seam;
    step(
      (show) =>
        `√2 × (${show.length(finished)} + 2 × ${show.length(seam)}) + 2 × ${show.length(seam)} = ${show.length(exact)}`,
    );
    return exact;
  }
  const pair = finished + HALF_SQUARE_SEAMS * seam;
  step((show) => `${show.length(finished)} + 3.4142 × ${show.length(seam)} = ${show.length(pair)}`);
  if (madeAtOnce !== 8) return pair;
  step((show) => `eight at once take twice that: ${show.length(2 * pair)}`);
  return 2 * pair;
}

function requireSizes(finished: Inches, seam: Inches, mark: Inches): void {
  requirePositive("finished size", finished);
  requireNotNegative("seam", seam);
  requireNotNegative("mark", mark);
}

function toMark(mark: Inches, exact: number): Inches {
  const cut = roundUpTo(mark, exact);
  if (mark > 0) step((show) => `up to the next ruler mark of ${show.length(mark)}: cut ${show.length(cut)}`);
  return cut;
}
