/** Strips cut across the fabric, from selvage to selvage, and the patches cut from them. */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { fabric, isHalfWidth, squared } from "./fabric";
import { type Inches } from "./units";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { atMost, covers, fits } from "./rounding";
import { assume, step } from "./working";

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
  const usable = usableLength("width", width, squaring);
  if (!atMost(patch, usable)) {
    throw new Problem(
      "no answer",
      (show) =>
        `patch is ${show.length(patch)}, wider than the ${show.length(usable)} of usable fabric; ` +
        `cut it along the length or join strips`,
    );
  }
  const patches = fits(patch, usable);
  step((show) => `${show.length(usable)} ÷ ${show.length(patch)}, rounded down: ${patches} a strip`);
  return patches;
}

/**
 * Triangles that one strip yields, cut head to tail: the first takes a whole base, every further one half a base.
 *
 * @param height height of the triangle as cut, which is the width of the strip, inches
 * @param base base of the triangle as cut, inches; left out for equal sides
 * @param width usable width of the fabric, inches
 * @param squaring length lost where the end of the strip is squared, inches
 * @returns whole triangles
 * @throws Problem "no answer" where the base is longer than the strip
 */
export function stripTriangles(
  height: Inches,
  base = equalSide(height),
  width = USUAL.fabricWidth,
  squaring = 0 as Inches,
): number {
  requirePositive("height", height);
  requirePositive("base", base);
  const usable = usableLength("width", width, squaring);
  if (!atMost(base, usable)) {
    throw new Problem(
      "no answer",
      (show) =>
        `the base of the triangle is ${show.length(base)}, wider than the ${show.length(usable)} of usable fabric; ` +
        `cut the strip along the length`,
    );
  }
  const triangles = 1 + fits(base / 2, usable - base);
  step(
    (show) =>
      `the first takes ${show.length(base)} of ${show.length(usable)}, every further one ${show.length(base / 2)}: ` +
      `${triangles} a strip`,
  );
  return triangles;
}

/** Side of a triangle with three equal sides and the given height. */
function equalSide(height: Inches): Inches {
  return ((2 * height) / Math.sqrt(3)) as Inches;
}

/**
 * Strips to cut for a number of patches: 63 patches of 9½ in, 4 to a strip, take 16.
 *
 * @param count how many patches
 * @param patch side of the patch along the strip, inches
 * @param width usable width of the fabric, inches
 * @param squaring length lost where the end of each strip is squared, inches
 * @returns strips, rounded up
 * @throws Problem "no answer" where the patch is longer than the strip
 */
export function stripsNeeded(count: number, patch: Inches, width = USUAL.fabricWidth, squaring = 0 as Inches): number {
  requireCount("count", count);
  const perStrip = stripPatches(patch, width, squaring);
  if (isHalfWidth(width)) {
    assume((show) => `strips of ${show.length(width)}, as from fat quarters; fabric measured folded is twice as wide`);
  }
  const strips = covers(perStrip, count);
  step(() => `${count} ÷ ${perStrip} a strip, rounded up: ${strips}`);
  return strips;
}

/**
 * Whole strips that an amount of fabric yields: 1 yd makes fourteen of 2½ in.
 *
 * @param length length of the fabric, inches
 * @param stripWidth width to cut each strip, inches
 * @param squaring length lost once where the end of the fabric is squared, inches
 * @returns strips, rounded down; 0 where the fabric is too short
 */
export function stripsFrom(length: Inches, stripWidth: Inches, squaring = 0 as Inches): number {
  requireNotNegative("fabric", length);
  requirePositive("strip width", stripWidth);
  requireNotNegative("squaring", squaring);
  const usable = squared(length, squaring);
  const strips = fits(stripWidth, usable);
  requireCount("strips", strips);
  step((show) => `${show.length(usable)} ÷ ${show.length(stripWidth)}, rounded down: ${strips}`);
  return strips;
}

/**
 * Strip sets to sew for a number of segments cut across them.
 *
 * @param segments how many segments
 * @param segment width to cut each segment, inches
 * @param length length of a strip set, inches
 * @param squaring length lost where the end of each set is squared, inches
 * @returns strip sets, rounded up
 * @throws Problem "no answer" where a segment is longer than the set
 */
export function stripSets(
  segments: number,
  segment: Inches,
  length = USUAL.fabricWidth,
  squaring = 0 as Inches,
): number {
  requireCount("segments", segments);
  requirePositive("segment", segment);
  const usable = usableLength("length", length, squaring);
  if (!atMost(segment, usable)) {
    throw new Problem(
      "no answer",
      (show) => `segment is ${show.length(segment)}, longer than the ${show.length(usable)} of a strip set`,
    );
  }
  const perSet = fits(segment, usable);
  const sets = covers(perSet, segments);
  step((show) => `${show.length(usable)} ÷ ${show.length(segment)}, rounded down: ${perSet} a set`);
  step(() => `${segments} ÷ ${perSet} a set, rounded up: ${sets}`);
  return sets;
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
  step((show) => `${counted(strips, "strip")} × ${show.length(stripWidth)}${plus(show.length(squaring), squaring)}`);
  return fabric(length, shopStep);
}

function plus(text: string, value: number): string {
  return value === 0 ? "" : ` + ${text} to square up`;
}

/** What squaring the end leaves of a strip or a strip set. */
function usableLength(name: string, length: Inches, squaring: Inches): number {
  requirePositive(name, length);
  requireNotNegative("squaring", squaring);
  if (length <= squaring) throw new Problem("bad input", "squaring leaves nothing of the strip");
  return squared(length, squaring);
}
