/** Strips cut across the fabric, from selvage to selvage, and the patches cut from them. */
import { USUAL } from "./conventions";
import { fabric } from "./fabric";
import { type Inches } from "./units";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { atMost, fits } from "./rounding";
import { step } from "./working";

/**
 * Patches that one strip yields.
 *
 * @param patch side of the patch along the strip, inches
 * @param width usable width of the fabric, inches
 * @param squaring length lost where the end of the strip is squared, inches
 * @returns whole patches
 * @throws Problem "no answer" where the patch is longer than the strip
 */
export function stripPatches(patch: Inches, width = USUAL.fabricWidth, squaring = 0 as Inches): number {
  requirePositive("patch", patch);
  requirePositive("width", width);
  requireNotNegative("squaring", squaring);
  const usable = width - squaring;
  if (usable <= 0) throw new Problem("bad input", "squaring leaves nothing of the strip");
  if (!atMost(patch, usable)) throw tooWide(patch, usable);
  const patches = fits(patch, usable);
  step((show) => `${show.length(usable)} ÷ ${show.length(patch)}, rounded down: ${patches} a strip`);
  return patches;
}

/**
 * Amount of fabric for a number of strips.
 *
 * @param strips how many strips
 * @param stripWidth width to cut each, inches
 * @param shopStep step in which the shop cuts, inches
 * @param squaring length lost once where the end of the fabric is squared, inches; none where no strip is cut
 * @returns length to buy, inches
 */
export function stripFabric(
  strips: number,
  stripWidth: Inches,
  shopStep = USUAL.shopStep,
  squaring = 0 as Inches,
): Inches {
  requireCount("strips", strips);
  requirePositive("strip width", stripWidth);
  requireNotNegative("squaring", squaring);
  if (strips === 0) return 0 as Inches;
  const length = (strips * stripWidth + squaring) as Inches;
  step((show) => `${strips} strips × ${show.length(stripWidth)}${plus(show.length(squaring), squaring)}`);
  return fabric(length, shopStep);
}

function plus(text: string, value: number): string {
  return value === 0 ? "" : ` + ${text} to square up`;
}

/** The refusal of a patch that is longer than the strip, with both ways out. */
function tooWide(patch: number, usable: number): Problem {
  return new Problem(
    "no answer",
    (show) =>
      `patch is ${show.length(patch)}, wider than the ${show.length(usable)} of usable fabric; ` +
      `cut it along the length or join strips`,
  );
}
