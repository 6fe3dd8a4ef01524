/** Borders: their sizes, the lengths to cut, and pieced units that fit a side. */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { atMost, covers, difference, nearestCount, roundNearestTo, roundUpTo, same } from "./rounding";
import type { Show } from "./show";
import type { Inches, Size } from "./units";
import { step } from "./working";

/**
 * How the corners are made. "butted": the sides first, then top and bottom across their ends. "mitered": a diagonal seam.
 * "cornerstones": a square at each corner.
 */
export const CORNERS = ["butted", "mitered", "cornerstones"] as const;
export type Corner = (typeof CORNERS)[number];

/** Seams by which a mitered side is cut longer than the finished outside: two for itself, two for the diagonal seams. */
const MITER_SEAMS = 4;

/**
 * Finished size of a quilt with a border of the same width all round.
 *
 * @param width finished width inside the border, inches
 * @param length finished length inside the border, inches
 * @param border finished width of the border, or of several borders together, inches
 */
export function borderSize(width: Inches, length: Inches, border: Inches): Size {
  requireInside(width, length, border);
  const size = { width: (width + 2 * border) as Inches, length: (length + 2 * border) as Inches };
  step((show) => `${show.length(width)} + 2 × ${show.length(border)} = ${show.length(size.width)}`);
  step((show) => `${show.length(length)} + 2 × ${show.length(border)} = ${show.length(size.length)}`);
  return size;
}

export interface CornerOptions {
  corner?: Corner;
  /** what a mitered side is longer than the finished outside of the border, seams included, inches; four seams if left out */
  insurance?: Inches;
  seam?: Inches;
}

/** Border pieces that are cut alike. Lengths in inches. */
export interface BorderPiece {
  piece: "sides" | "top and bottom" | "cornerstones";
  /** Width to cut. */
  width: Inches;
  /** Length to cut. */
  length: Inches;
  count: number;
}

/**
 * The pieces of a border in sewing order.
 *
 * Butted: sides as long as the quilt, then top and bottom over the sides, too. Mitered: every piece as long as the outside,
 * and the insurance; at the finished edge the diagonal seam reaches √2 seams further than the corner, so two seams at either
 * end are enough. Cornerstones: every piece as long as its side of the quilt.
 *
 * @param width finished width inside the border, inches
 * @param length finished length inside the border, inches
 * @param border finished width of the border, inches
 * @throws Problem "bad input" where a length is out of range, or the insurance is too little for the seams
 */
export function borderLengths(
  width: Inches,
  length: Inches,
  border: Inches,
  options: CornerOptions = {},
): BorderPiece[] {
  const { corner = "butted", seam = USUAL.seam } = options;
  requireInside(width, length, border);
  requireNotNegative("seam", seam);
  const outside = borderSize(width, length, border);
  const cut = (finished: number): Inches => (finished + 2 * seam) as Inches;
  const strip = cut(border);
  const [sides, topAndBottom] =
    corner === "butted"
      ? [cut(length), cut(outside.width)]
      : corner === "cornerstones"
        ? [cut(length), cut(width)]
        : miteredLengths(outside, seam, options.insurance);
  step((show) => `${corner}: sides ${show.length(sides)}, top and bottom ${show.length(topAndBottom)}`);
  const pieces: BorderPiece[] = [
    { piece: "sides", width: strip, length: sides, count: 2 },
    { piece: "top and bottom", width: strip, length: topAndBottom, count: 2 },
  ];
  if (corner === "cornerstones") pieces.push({ piece: "cornerstones", width: strip, length: strip, count: 4 });
  return pieces;
}

function miteredLengths(outside: Size, seam: Inches, insurance = (MITER_SEAMS * seam) as Inches): [Inches, Inches] {
  requireNotNegative("insurance", insurance);
  const least = 2 * Math.SQRT2 * seam;
  if (insurance < least) {
    throw new Problem(
      "bad input",
      (show) =>
        `insurance of ${show.length(insurance)} does not reach for the seams; give ${show.length(least)} or more`,
    );
  }
  return [(outside.length + insurance) as Inches, (outside.width + insurance) as Inches];
}

/** One length from three measurements of the same way across a quilt. */
export interface MeasuredLength {
  /** Length to cut both borders to, inches. */
  length: Inches;
  /** Largest measurement less the smallest, inches. */
  spread: Inches;
  /** Whether the quilt is further out of square than the border can ease in. */
  outOfSquare: boolean;
}

/**
 * Length to cut a border, from the quilt measured along one edge, through the middle and along the other edge, raw edge to
 * raw edge: the mean of the three.
 *
 * @param measured the three measurements, inches
 * @param mark ruler mark to round up to, inches; 0 leaves the mean exact
 * @param most largest spread of the measurements before the quilt counts as out of square, inches
 */
export function borderMeasured(
  measured: readonly [Inches, Inches, Inches],
  mark = USUAL.mark,
  most = USUAL.spread,
): MeasuredLength {
  measured.forEach((length, index) => {
    requirePositive(`measurement ${index + 1}`, length);
  });
  requireNotNegative("mark", mark);
  requireNotNegative("spread", most);
  const mean = measured.reduce((sum, length) => sum + length, 0) / measured.length;
  const length = roundUpTo(mark, mean);
  const spread = (Math.max(...measured) - Math.min(...measured)) as Inches;
  step(
    (show) =>
      `(${measured.map((one) => show.length(one)).join(" + ")}) ÷ 3 = ${show.length(mean)}, cut ${show.length(length)}`,
  );
  step((show) => `the measurements differ by ${show.length(spread)}`);
  return { length, spread, outOfSquare: !atMost(spread, most) };
}

/**
 * Whole units, such as piano keys, that cover one side of a quilt.
 *
 * @param side finished length of the side, inches
 * @param unit finished length that one unit takes along the side, inches
 * @returns units, rounded up; `borderGap` tells what they overhang
 */
export function borderUnits(side: Inches, unit: Inches): number {
  requirePositive("side", side);
  requirePositive("unit", unit);
  const units = covers(unit, side);
  requireCount("units", units);
  step((show) => `${show.length(side)} ÷ ${show.length(unit)}, rounded up: ${counted(units, "unit")}`);
  return units;
}

/**
 * What the whole units that cover a side overhang: 46 in of 4 in units overhang by 2 in.
 *
 * @param side finished length of the side, inches
 * @param unit finished length that one unit takes along the side, inches
 * @returns overhang, inches; 0 where the units fit exactly
 */
export function borderGap(side: Inches, unit: Inches): Inches {
  const units = borderUnits(side, unit);
  const gap = difference((units * unit) as Inches, side);
  step((show) => `${units} × ${show.length(unit)} − ${show.length(side)} = ${show.length(gap)}`);
  return gap;
}

/** How a pieced border fits one way across a quilt. Lengths in inches. */
export interface FittedSide {
  /** Units along either edge. */
  units: number;
  /** Finished length of the units. */
  covered: Inches;
  /** Finished width of the two plain strips that bring the quilt to that length; 0 where none is needed. */
  spacer: Inches;
  /** What the units are longer than the quilt (below 0: shorter), where that is no more than a ruler mark and is eased in. */
  eased: Inches;
}

export interface FitOptions {
  /** finished depth of the border, inches; units are square if left out */
  depth?: Inches;
  /** narrowest spacer, finished, inches; 0 for none where the units fit */
  leastSpacer?: Inches;
  /** ruler mark, inches; a difference of no more is eased in; 0 for none */
  mark?: Inches;
}

/** A pieced border fitted to a quilt. */
export interface BorderFit {
  /** Along top and bottom; its spacers are sewn to the sides. */
  across: FittedSide;
  /** Along the sides; its spacers are sewn to top and bottom. */
  down: FittedSide;
  /** Units in all, with one at each corner. */
  units: number;
  outside: Size;
}

/**
 * Fits a border of whole units round a quilt: plain strips, the spacers, bring the quilt to a whole number of units each
 * way. A corner unit is as wide as the border is deep.
 *
 * @param width finished width inside the border, inches
 * @param length finished length inside the border, inches
 * @param unit finished length that one unit takes along the side, inches
 * @throws Problem "bad input" where a length is out of range
 */
export function borderFit(width: Inches, length: Inches, unit: Inches, options: FitOptions = {}): BorderFit {
  const { depth = unit, leastSpacer = 0 as Inches, mark = USUAL.mark } = options;
  requirePositive("width", width);
  requirePositive("length", length);
  requirePositive("unit", unit);
  requirePositive("depth", depth);
  requireNotNegative("least spacer", leastSpacer);
  requireNotNegative("mark", mark);
  const across = fitSide(width, unit, leastSpacer, mark);
  const down = fitSide(length, unit, leastSpacer, mark);
  const units = 2 * across.units + 2 * down.units + 4;
  requireCount("units", units);
  step(() => `2 × ${across.units} + 2 × ${down.units} + 4 at the corners = ${units} units`);
  const outside = borderSize(across.covered, down.covered, depth);
  return { across, down, units, outside };
}

function fitSide(side: Inches, unit: Inches, leastSpacer: Inches, mark: Inches): FittedSide {
  const nearest = nearestCount(unit, side);
  const off = difference((nearest * unit) as Inches, side);
  const fitted = leastSpacer === 0 && nearest > 0 && atMost(Math.abs(off), mark);
  const units = fitted ? nearest : covers(unit, side + 2 * leastSpacer);
  const covered = (units * unit) as Inches;
  const spacer = (fitted ? 0 : (covered - side) / 2) as Inches;
  const eased = fitted ? off : (0 as Inches);
  step((show) => {
    const gap = fitted ? easedText(show, eased) : `spacers finish ${show.length(spacer)}`;
    return `${counted(units, "unit")} × ${show.length(unit)} = ${show.length(covered)} on ${show.length(side)}: ${gap}`;
  });
  return { units, covered, spacer, eased };
}

/** How units that need no spacers fit: `1/8 in longer, eased in`, where they are longer than the quilt. */
export function easedText(show: Show, eased: Inches): string {
  if (eased === 0) return "they fit";
  return `${show.length(Math.abs(eased))} ${eased > 0 ? "longer" : "shorter"}, eased in`;
}

/** Whether a size can be read off a ruler with this distance between its marks; any size can where that is 0. */
export function onMark(size: Inches, mark: Inches): boolean {
  return same(size, roundNearestTo(mark, size));
}

function requireInside(width: Inches, length: Inches, border: Inches): void {
  requirePositive("width", width);
  requirePositive("length", length);
  requirePositive("border", border);
}
