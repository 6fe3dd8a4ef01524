/** Fabric for one kind of patch, cut in rows across the fabric, and patches out of an amount of fabric. */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { fabric, isHalfWidth, requireFabricWidth, squared } from "./fabric";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { atMost, covers, fits } from "./rounding";
import { type Inches } from "./units";
import { assume, step } from "./working";

/** Whether a patch may be turned a quarter: an upright one keeps its height along the selvage. */
export const GRAINS = ["any", "upright"] as const;
export type Grain = (typeof GRAINS)[number];

/** What the patches are cut from, and how. */
export interface PatchOptions {
  /** usable width of the fabric, inches */
  fabricWidth?: Inches;
  grain?: Grain;
  /** length lost once where the end of the fabric is squared, inches */
  squaring?: Inches;
}

/** One way round for a patch: all patches lie the same way, in rows across the fabric. */
interface Lay {
  /** side across the fabric, inches */
  across: Inches;
  /** side along the fabric, which is the width of the strip to cut, inches */
  along: Inches;
  /** patches side by side */
  perRow: number;
}

/** A piece no longer than this, and as wide as half the fabric, is a fat quarter; longer, the fabric was measured folded. */
const LONGEST_FAT_QUARTER = 20;

/**
 * Amount to buy for one kind of patch, all lying the way round that takes least.
 *
 * Rounded three times, each in the safe direction: patches in a row down, rows up, and the amount up to the shop's step.
 *
 * @param count how many patches
 * @param width width of the patch as cut, inches; across the fabric where the grain is upright
 * @param height height of the patch as cut, inches
 * @param options what the patches are cut from
 * @param shopStep step in which the shop cuts, inches
 * @returns length to buy, inches; 0 for no patches
 * @throws Problem "no answer" where the patch is wider than the fabric every way it may lie
 */
export function patchFabric(
  count: number,
  width: Inches,
  height: Inches,
  options: PatchOptions = {},
  shopStep = USUAL.shopStep,
): Inches {
  const { fabricWidth = USUAL.fabricWidth, squaring = 0 as Inches } = options;
  requireCount("count", count);
  requireFabricWidth(fabricWidth);
  requireNotNegative("squaring", squaring);
  const ways = lays(width, height, fabricWidth, options.grain).map((lay) => {
    const rows = covers(lay.perRow, count);
    return { lay, rows, length: rows * lay.along };
  });
  if (count === 0) return 0 as Inches;
  const { lay, rows, length } = ways.reduce((best, way) => (atMost(best.length, way.length) ? best : way));
  tellLay(lay, fabricWidth);
  step((show) => `${count} ÷ ${lay.perRow}, rounded up: ${rows} × ${show.length(lay.along)} = ${show.length(length)}`);
  if (squaring > 0) step((show) => `and ${show.length(squaring)} to square the end`);
  const amount = fabric((length + squaring) as Inches, shopStep);
  step((show) => `spare: ${show.length(amount - length - squaring)}`);
  return amount;
}

/**
 * Patches of one kind that an amount of fabric, or a piece such as a fat quarter, yields, all lying the same way.
 *
 * This is the plain grid of rows: some patches turned among the others can now and then yield more.
 *
 * @param length length of the fabric, inches
 * @param width width of the patch as cut, inches; across the fabric where the grain is upright
 * @param height height of the patch as cut, inches
 * @param options what the patches are cut from
 * @returns whole patches; 0 where the fabric is too short
 * @throws Problem "no answer" where the patch is wider than the fabric every way it may lie
 */
export function piecesFrom(length: Inches, width: Inches, height: Inches, options: PatchOptions = {}): number {
  const { fabricWidth = USUAL.fabricWidth, squaring = 0 as Inches } = options;
  requireNotNegative("fabric", length);
  requireNotNegative("squaring", squaring);
  if (isHalfWidth(fabricWidth) && atMost(length, LONGEST_FAT_QUARTER)) {
    assume((show) => `a piece of ${show.length(length)} × ${show.length(fabricWidth)}, such as a fat quarter`);
  } else {
    requireFabricWidth(fabricWidth);
  }
  const usable = squared(length, squaring);
  const ways = lays(width, height, fabricWidth, options.grain).map((lay) => {
    const rows = fits(lay.along, usable);
    return { lay, rows, pieces: rows * lay.perRow };
  });
  const { lay, rows, pieces } = ways.reduce((best, way) => (way.pieces > best.pieces ? way : best));
  requireCount("the number of patches", pieces);
  tellLay(lay, fabricWidth);
  step(
    (show) =>
      `${show.length(usable)} ÷ ${show.length(lay.along)}, rounded down: ` +
      `${counted(rows, "row")}, ${counted(pieces, "patch", "patches")}`,
  );
  return pieces;
}

/** The ways round that a patch may lie and fits across the fabric; as given first. */
function lays(width: Inches, height: Inches, fabricWidth: Inches, grain: Grain = "any"): Lay[] {
  requirePositive("width", width);
  requirePositive("height", height);
  const upright = { across: width, along: height };
  const ways = grain === "upright" ? [upright] : [upright, { across: height, along: width }];
  const fitting = ways.filter((way) => atMost(way.across, fabricWidth));
  if (fitting.length === 0) throw tooWide(width, height, fabricWidth);
  return fitting.map((way) => ({ ...way, perRow: fits(way.across, fabricWidth) }));
}

/** The refusal of a patch that is wider than the fabric, with the ways out. */
function tooWide(width: Inches, height: Inches, fabricWidth: Inches): Problem {
  // Only a patch that must stay upright is refused although its height goes across the fabric.
  const turnable = atMost(height, fabricWidth);
  return new Problem("no answer", (show) =>
    turnable
      ? `patch is ${show.length(width)} wide and to stay upright, wider than the ${show.length(fabricWidth)} of usable ` +
        `fabric; cut it along the length (grain "any") or join strips`
      : `patch of ${show.length(width)} × ${show.length(height)} is wider than the ${show.length(fabricWidth)} of usable ` +
        `fabric; take wider fabric or join strips`,
  );
}

function tellLay({ across, along, perRow }: Lay, fabricWidth: Inches): void {
  if (!atMost(along, fabricWidth)) {
    step((show) => `${show.length(along)} is longer than the fabric is wide: cut along the length, or join strips`);
  }
  step((show) => `${show.length(fabricWidth)} ÷ ${show.length(across)}, rounded down: ${perRow} side by side`);
}
