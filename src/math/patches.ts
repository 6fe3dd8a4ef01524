/**
 * Patches: from the finished size in the quilt to the size to cut.
 *
 * A shape that has an inscribed circle of radius r grows by the factor (r + seam) / r when every side moves outward by the
 * seam (school geometry); the formulas below are that rule worked out.
 */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { type PatchToCut, requireSizes, upToMark } from "./cut";
import { requireCount } from "./problem";
import { covers } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** How many half-square units are sewn from one pair of squares. */
export const MADE_AT_ONCE = [1, 2, 4, 8] as const;
export type MadeAtOnce = (typeof MADE_AT_ONCE)[number];

/** What a seam adds to the short side of a right isosceles triangle: 1 + cot 22.5° seams. */
const HALF_SQUARE_SEAMS = 2 + Math.SQRT2;

/** What a seam adds to the long edge of a right isosceles triangle: √2 times what it adds to the short side. */
const QUARTER_SQUARE_SEAMS = 2 * (1 + Math.SQRT2);

/**
 * How flying geese are made. "four at once": two small squares are sewn to opposite corners of a large one, along both sides
 * of the diagonal, cut apart, and a third and fourth added. "triangles": all patches are cut as triangles. "corners": two
 * squares are sewn across the corners of a rectangle and flipped.
 */
export const GEESE_METHODS = ["four at once", "triangles", "corners"] as const;
export type GeeseMethod = (typeof GEESE_METHODS)[number];

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
  requireSizes({ "finished size": finished }, seam, mark);
  const exact = finished + 2 * seam;
  step((show) => `${show.length(finished)} + 2 × ${show.length(seam)} = ${show.length(exact)}`);
  return upToMark(mark, exact);
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
  requireSizes({ "finished size": finished }, seam, mark);
  return upToMark(mark, exactHalfSquare(finished, madeAtOnce, seam));
}

/**
 * Side of the square to cut twice, corner to corner, for four triangles whose long edge lies on the straight grain; also of
 * the squares for hourglass units, two of which make two units.
 *
 * @param finished long edge of the sewn triangle, or side of the sewn hourglass unit, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; the units are trimmed after sewing
 * @returns side of the square to cut, inches
 * @throws Problem "bad input" where a length is out of range
 */
export function cutQuarterSquare(finished: Inches, seam = USUAL.seam, mark = USUAL.mark): Inches {
  requireSizes({ "finished size": finished }, seam, mark);
  const exact = finished + QUARTER_SQUARE_SEAMS * seam;
  step((show) => `${show.length(finished)} + 4.8284 × ${show.length(seam)} = ${show.length(exact)}`);
  return upToMark(mark, exact);
}

/**
 * Side of the square to sew across the corner of a patch and flip.
 *
 * @param finished leg of the sewn corner triangle, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves the size exact
 * @returns side of the square to cut, inches
 * @throws Problem "bad input" where a length is out of range
 */
export function cutCorner(finished: Inches, seam = USUAL.seam, mark = 0 as Inches): Inches {
  return cutSquare(finished, seam, mark);
}

/**
 * What to cut for flying geese, which are twice as wide as high.
 *
 * @param width finished width of one unit, inches
 * @param method how they are made
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves sizes exact
 * @param units units wanted; whole sets are cut
 * @returns the patches, then the unit with its size to trim to
 * @throws Problem "bad input" where a length or the count is out of range
 */
export function cutGeese(
  width: Inches,
  method: GeeseMethod = "four at once",
  seam = USUAL.seam,
  mark = method === "corners" ? (0 as Inches) : USUAL.mark,
  units = 4,
): PatchToCut[] {
  requireSizes({ width }, seam, mark);
  requireCount("units", units, 1);
  const height = (width / 2) as Inches;
  const unit = (count: number): PatchToCut => ({
    patch: "unit made",
    finished: width,
    width: (width + 2 * seam) as Inches,
    length: (height + 2 * seam) as Inches,
    count,
    how: "trim to this size",
  });
  if (method === "corners") {
    const square = cutCorner(height, seam, mark);
    const goose: PatchToCut = {
      patch: "rectangle",
      finished: width,
      width: cutSquare(width, seam, mark),
      length: square,
      count: units,
      how: "one for each unit",
    };
    const corner = squares("square", height, square, 2 * units, "sew across two corners, trim and flip");
    return [goose, corner, cornerWaste(square, seam, 4 * units), unit(units)];
  }
  const large = cutQuarterSquare(width, seam, mark);
  const small = cutHalfSquare(height, 1, seam, mark);
  const sets = covers(4, units);
  step(() => `a large square makes 4 units: ${counted(units, "unit")} ${units === 1 ? "takes" : "take"} ${sets}`);
  if (method === "triangles") {
    return [
      squares("large square", width, large, sets, "cut twice, corner to corner"),
      squares("small square", height, small, units, "cut once, corner to corner"),
      unit(units),
    ];
  }
  return [
    squares("large square", width, large, sets, "one for four units"),
    squares("small square", height, small, 4 * sets, "sew to the corners on both sides of the diagonal"),
    unit(4 * sets),
  ];
}

/**
 * What to cut for one square-in-square unit: a square on point with four triangles round it.
 *
 * @param finished side of the sewn unit, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; the unit is trimmed after sewing
 * @returns the patches, then the unit with its size to trim to
 * @throws Problem "bad input" where a length is out of range
 */
export function cutSquareInSquare(finished: Inches, seam = USUAL.seam, mark = USUAL.mark): PatchToCut[] {
  const center = (finished / Math.SQRT2) as Inches;
  const leg = (finished / 2) as Inches;
  step((show) => `the center square finishes ${show.length(finished)} ÷ √2 = ${show.length(center)}`);
  return [
    squares("center square", center, cutSquare(center, seam, mark), 1, "stands on point"),
    squares("corner square", leg, cutHalfSquare(leg, 1, seam, mark), 2, "cut once, corner to corner"),
    squares("unit made", finished, cutSquare(finished, seam), 1, "trim to this size"),
  ];
}

/** A row of squares in a list of what to cut. */
function squares(patch: string, finished: Inches, side: Inches, count: number, how: string): PatchToCut {
  return { patch, finished, width: side, length: side, count, how };
}

/** The triangles cut off where a square is sewn across a corner and flipped; a pair of them makes a half-square unit. */
function cornerWaste(square: Inches, seam: Inches, count: number): PatchToCut {
  const leg = (square - Math.SQRT2 * seam) as Inches;
  const finished = Math.max(0, leg - HALF_SQUARE_SEAMS * seam) as Inches;
  step((show) => `waste triangle: ${show.length(square)} − √2 × ${show.length(seam)} = ${show.length(leg)}`);
  if (finished > 0) {
    step((show) => `it finishes ${show.length(leg)} − 3.4142 × ${show.length(seam)} = ${show.length(finished)}`);
  }
  const how = finished > 0 ? "cut away; a pair makes a half-square unit" : "cut away; too small to sew";
  return squares("waste triangle", finished, leg, count, how);
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
