/** Amounts of fabric as a shop sells them. */
import { USUAL } from "./conventions";
import { type Inches } from "./units";
import { Problem, requireNotNegative, requirePositive } from "./problem";
import { roundUpTo } from "./rounding";
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

/** Widths that are most likely half of a usual one: fabric lies folded on the bolt. */
const FOLDED = { least: 20, most: 23 };

/**
 * Refuses a usable width that is none, or that was most likely measured on folded fabric.
 *
 * @param width usable width of the fabric, inches
 */
export function requireFabricWidth(width: Inches): void {
  requirePositive("fabric width", width);
  if (width >= FOLDED.least && width <= FOLDED.most) {
    throw new Problem(
      "bad input",
      (show) =>
        `fabric width ${show.length(width)}: measured folded? Give the width of the opened fabric, ` +
        show.length(2 * width),
    );
  }
}
