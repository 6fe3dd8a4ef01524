/** Amounts of fabric as a shop sells them. */
import { USUAL } from "./conventions";
import { type Inches } from "./units";
import { Problem, requireNotNegative, requirePositive } from "./problem";
import { roundUpTo } from "./rounding";
import { decimalText } from "./show";
import { step } from "./working";

/**
 * Amount to buy for a length of fabric, up to the shop's next step: 152 in is 4 1/4 yd.
 *
 * @param length length of fabric needed, inches
 * @param shopStep step in which the shop cuts, inches
 * @returns length to buy, inches
 */
export function fabric(length: Inches, shopStep = USUAL.shopStep): Inches {
  requireNotNegative("length", length);
  const amount = roundUpTo(shopStep, length);
  step((show) => `${show.length(length)} of fabric; in steps of ${show.fabric(shopStep)} buy ${show.fabric(amount)}`);
  return amount;
}

/**
 * Length to make, or to buy, so that it has the wanted length after washing: 90 in at 5 % is 94.7368 in, since the 5 % are
 * lost of what is washed.
 *
 * @param length length wanted after washing, inches
 * @param shrinkage part of the length before washing that is lost, such as 0.05
 * @returns length before washing, inches, exact
 * @throws Problem "bad input" where the shrinkage is not from 0 to below 1
 */
export function beforeWashing(length: Inches, shrinkage: number): Inches {
  requireNotNegative("length", length);
  requireNotNegative("shrinkage", shrinkage);
  if (shrinkage >= 1) {
    throw new Problem(
      "bad input",
      `shrinkage ${shrinkage}: write a percentage such as 5%, or a part of 1 such as 0.05`,
    );
  }
  const before = (length / (1 - shrinkage)) as Inches;
  step((show) => `${show.length(length)} ÷ (1 − ${decimalText(shrinkage)}) = ${show.length(before)}`);
  return before;
}

/** What squaring an end leaves of a length, inches. */
export function squared(length: Inches, squaring: Inches): Inches {
  const left = Math.max(0, length - squaring) as Inches;
  if (squaring > 0 && left > 0) {
    step((show) => `${show.length(length)} − ${show.length(squaring)} to square up = ${show.length(left)}`);
  }
  return left;
}

/** Widths that are most likely half of a usual one: fabric lies folded on the bolt. */
const FOLDED = { least: 20, most: 23 };

/** Whether a width is half of a usual one: a fat quarter, or fabric measured folded. */
export function isHalfWidth(width: Inches): boolean {
  return width >= FOLDED.least && width <= FOLDED.most;
}

/**
 * Refuses a usable width that is none, or that was most likely measured on folded fabric.
 *
 * @param width usable width of the fabric, inches
 */
export function requireFabricWidth(width: Inches): void {
  requirePositive("fabric width", width);
  if (isHalfWidth(width)) {
    throw new Problem(
      "bad input",
      (show) =>
        `fabric width ${show.length(width)}: measured folded? Give the width of the opened fabric, ` +
        show.length(2 * width),
    );
  }
}
