/** Ruler marks: lengths rounded to what a ruler shows. */
import { USUAL } from "./conventions";
import { requireNotNegative } from "./problem";
import { roundDownTo, roundNearestTo, roundUpTo } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** Which mark is taken for a length between two marks. */
export const MARK_WAYS = ["up", "down", "nearest"] as const;
export type MarkWay = (typeof MARK_WAYS)[number];

const ROUND: Readonly<Record<MarkWay, (mark: Inches, length: number) => Inches>> = {
  up: roundUpTo,
  down: roundDownTo,
  nearest: roundNearestTo,
};

/**
 * A length on a ruler mark. A length on a mark already stays as it is; the nearest of two marks equally near is the upper.
 *
 * @param length length to round, inches
 * @param mark distance between two marks, inches; 0 leaves the length exact
 * @param way whether the next mark, the one before or the nearest is taken
 * @returns the rounded length, inches
 * @throws Problem "bad input" where a length is below 0
 */
export function lengthMark(length: Inches, mark = USUAL.mark, way: MarkWay = "up"): Inches {
  requireNotNegative("length", length);
  requireNotNegative("mark", mark);
  const rounded = ROUND[way](mark, length);
  step((show) => {
    const marks = mark > 0 ? ` to marks ${show.length(mark)} apart, ${way}` : ", not rounded";
    return `${show.length(length)}${marks}: ${show.length(rounded)}`;
  });
  return rounded;
}
