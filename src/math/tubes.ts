/**
 * Tubes: two strips sewn together along both long edges, cut into half-square units by 45° cuts.
 *
 * Laid flat, a tube is as high as its strips are wide, w, with a seam line at s from either edge. A unit of trim size t is a
 * right isosceles triangle whose long side, t√2, lies on one seam line; opened, that seam is the diagonal of the unit. Its
 * tip stands h = t/√2 above the seam line and must stay within the tube: h ≤ w − s. (A tip that passes the far seam line
 * takes a few stitches along, which are picked out.)
 *
 * Units lie head to tail, on one seam line and the other in turn. Two neighbors on one seam line need h₁ + h₂ from middle to
 * middle where the dog ears are clipped, since the seam allowance then tapers below the line; with straight cuts through
 * the allowance each ear adds s. Between a unit and the next one on the other line, both cuts run the same way, and the
 * middles may come as close as h₁ + h₂ − (w − 2s), clipped or not.
 */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { Problem, requireCount, requirePositive, requireNotNegative } from "./problem";
import { atMost, fits } from "./rounding";
import { type Inches } from "./units";
import { step } from "./working";

/** Whether the seam allowance is cut back at both ends of a unit's long side, or cut straight through. */
export const EARS = ["clipped", "unclipped"] as const;
export type Ears = (typeof EARS)[number];

/** What a tube is sewn from, and how it is cut. */
export interface Tube {
  /** width to cut each of the two strips, inches */
  stripWidth: Inches;
  /** seam allowance, inches */
  seam?: Inches;
  ears?: Ears;
}

/** Units of one trim size. */
export interface TubeUnits {
  /** unfinished side to which the units are trimmed, inches */
  trim: Inches;
  count: number;
}

/** Where one unit lies in the tube; lengths along the tube, from its squared end. */
export interface TubeCut {
  trim: Inches;
  /** the seam line that its long side lies on */
  seamLine: "lower" | "upper";
  /** where the cuts reach the seam line, and where the tip stands, inches */
  from: Inches;
  middle: Inches;
  to: Inches;
  /** corners of the cut unit, in order round it: along the tube, and up from its lower edge, inches */
  outline: [along: number, up: number][];
}

/**
 * Units of one trim size that a length of tube gives.
 *
 * @param length length of the tube, inches
 * @param trim unfinished side of the unit, inches
 * @returns whole units; 0 where the tube is too short
 * @throws Problem "no answer" where the strips are too narrow for the unit
 */
export function tubeUnits(length: Inches, trim: Inches, tube: Tube): number {
  requirePositive("length", length);
  const shape = unitShape(trim, tube);
  tellTip(shape);
  const room = length - 2 * shape.reach;
  const shift = Math.max(0, headToTail(shape, shape, tube));
  const units = atMost(0, room) ? unitsWithin(room, shift, 2 * shape.reach) : 0;
  requireCount("the number of units", units);
  step(
    (show) =>
      `from middle to middle at least ${show.length(shift)} head to tail, ${show.length(2 * shape.reach)} on one side`,
  );
  step((show) => `${show.length(length)} of tube: ${counted(units, "unit")}`);
  return units;
}

/** Units whose middles lie within a length: `shift` apart in turn, and `pair` apart on one side. */
function unitsWithin(room: number, shift: number, pair: number): number {
  if (2 * shift >= pair) return 1 + fits(shift, room);
  const pairs = fits(pair, room);
  return 1 + 2 * pairs + (atMost(shift, room - pairs * pair) ? 1 : 0);
}

/**
 * Length of tube that units of several sizes take, laid out as `tubeLayout` lays them.
 *
 * @returns length to the last cut, inches; 0 for no units
 */
export function tubeLength(list: readonly TubeUnits[], tube: Tube): Inches {
  let length = 0;
  let units = 0;
  for (const { reach, middle } of places(list, tube)) {
    length = Math.max(length, middle + reach);
    units += 1;
  }
  step((show) => `${counted(units, "unit")}, largest first, head to tail: ${show.length(length)} of tube`);
  return length as Inches;
}

/**
 * Every cut of a tube, for drawing: the largest size first, sizes kept together, each unit on the seam line where it ends
 * sooner and as close to its neighbors as the geometry allows.
 *
 * Other orders can be a little shorter (small units fit into the corners at both ends); none is easier to cut.
 */
export function tubeLayout(list: readonly TubeUnits[], tube: Tube): TubeCut[] {
  return Array.from(places(list, tube), (place) => {
    const { trim, height, lower, middle } = place;
    return {
      trim,
      seamLine: lower ? "lower" : "upper",
      from: (middle - height) as Inches,
      middle: middle as Inches,
      to: (middle + height) as Inches,
      outline: outline(place, tube),
    };
  });
}

/** Far more than any strip gives; more would keep a spreadsheet waiting. */
const MOST_LAID_OUT = 10_000;

/** A unit as the tube sees it. */
interface UnitShape {
  trim: Inches;
  /** of its tip above its seam line, which is half its long side */
  height: number;
  /** what it takes on its own side of the tube, from its middle */
  reach: number;
}

interface Place extends UnitShape {
  lower: boolean;
  middle: number;
}

/** Places one unit after another. */
function* places(list: readonly TubeUnits[], tube: Tube): Generator<Place> {
  if (list.length === 0) throw new Problem("bad input", "the list is empty");
  for (const { count } of list) requireCount("count", count);
  const units = list.reduce((sum, { count }) => sum + count, 0);
  if (units > MOST_LAID_OUT) {
    throw new Problem("bad input", `the list has ${units} units; at most ${MOST_LAID_OUT} are laid out at once`);
  }
  const largestFirst = [...list].sort((a, b) => b.trim - a.trim);
  let last: Place | undefined;
  let lastOpposite: Place | undefined;
  for (const { trim, count } of largestFirst) {
    const shape = unitShape(trim, tube);
    if (count > 0) tellTip(shape);
    for (let unit = 0; unit < count; unit += 1) {
      const opposite = nextTo(shape, lastOpposite, last, tube);
      const beside = nextTo(shape, last, lastOpposite, tube);
      const turns = atMost(opposite, beside);
      const place: Place = {
        ...shape,
        lower: last === undefined || last.lower !== turns,
        middle: turns ? opposite : beside,
      };
      if (turns) lastOpposite = last;
      last = place;
      yield place;
    }
  }
}

/** How soon the middle of a unit can come after the last unit on its own seam line and the last one on the other. */
function nextTo(shape: UnitShape, same: Place | undefined, other: Place | undefined, tube: Tube): number {
  return Math.max(
    shape.reach,
    same === undefined ? 0 : same.middle + same.reach + shape.reach,
    other === undefined ? 0 : other.middle + headToTail(other, shape, tube),
  );
}

/** How close the middles of two units on different seam lines may come; below 0, one fits above the other. */
function headToTail(a: UnitShape, b: UnitShape, { stripWidth, seam = USUAL.seam }: Tube): number {
  return a.height + b.height - (stripWidth - 2 * seam);
}

function unitShape(trim: Inches, { stripWidth, seam = USUAL.seam, ears = "clipped" }: Tube): UnitShape {
  const largest = largestUnit(stripWidth, seam);
  requirePositive("trim size", trim);
  if (trim <= 2 * seam) throw new Problem("bad input", "trim size must be more than two seams");
  const height = trim / Math.SQRT2;
  if (!atMost(trim, largest)) {
    throw new Problem(
      "no answer",
      (show) =>
        `strips of ${show.length(stripWidth)} give units up to ${show.length(largest)}; ` +
        `for ${show.length(trim)} cut them at least ${show.length(height + seam)} wide`,
    );
  }
  return { trim, height, reach: ears === "clipped" ? height : height + seam };
}

function tellTip({ trim, height }: UnitShape): void {
  step((show) => `${show.length(trim)} ÷ √2: the tip stands ${show.length(height)} above its seam line`);
}

/** Largest trim size that a tube gives: strips of 2½ in give 3.182 in. */
function largestUnit(stripWidth: Inches, seam: Inches): number {
  requirePositive("strip width", stripWidth);
  requireNotNegative("seam", seam);
  if (stripWidth <= 2 * seam) throw new Problem("bad input", "strip width must be more than two seams");
  return Math.SQRT2 * (stripWidth - seam);
}

/** Corners of a cut unit, with the seam allowance below its long side. */
function outline(
  { height, reach, lower, middle }: Place,
  { stripWidth, seam = USUAL.seam, ears }: Tube,
): TubeCut["outline"] {
  const line = lower ? seam : stripWidth - seam;
  const tip = lower ? line + height : line - height;
  const edge = lower ? 0 : stripWidth;
  if (ears === "unclipped") {
    return [
      [middle - reach, edge],
      [middle, tip],
      [middle + reach, edge],
    ];
  }
  return [
    [middle - height, line],
    [middle, tip],
    [middle + height, line],
    [middle + height - seam, edge],
    [middle - height + seam, edge],
  ];
}
