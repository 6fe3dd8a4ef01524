/**
 * Templates: a patch of any shape with straight sides. Every side moves outward by the seam, and neighboring sides are
 * lengthened or shortened until they meet (mitred corners).
 */
import { USUAL } from "./conventions";
import { Problem, requireNotNegative } from "./problem";
import { same, TOLERANCE } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** A corner of a shape drawn on paper, measured from any point to the right and upward; may be below 0. */
export interface Corner {
  x: Inches;
  y: Inches;
}

interface Side {
  from: Corner;
  to: Corner;
  length: number;
  /** Direction from corner to corner, of length 1. */
  along: { x: number; y: number };
}

/** More corners than this are a curve, and every two sides are compared. */
const MOST_CORNERS = 200;

/** Below this angle, in degrees, the tip of a seam allowance would be longer than 38 seams. */
const SHARPEST = 3;

/**
 * Corners of the cut shape, from the corners of the finished shape.
 *
 * @param corners corners in order round the shape, in either direction; the last is joined to the first
 * @param seam seam allowance, inches
 * @returns the cut corners, in the same order
 * @throws Problem "bad input" where the corners make no shape that can be sewn; "no answer" where the seam allowance does
 * not fit into a notch of the shape
 */
export function cutTemplate(corners: readonly Corner[], seam = USUAL.seam): Corner[] {
  requireNotNegative("seam", seam);
  const sides = readSides(corners);
  requireSimple(sides);
  // Twice the area, above 0 where the corners run counterclockwise.
  const area = corners.reduce((sum, a, index) => sum + cross(a, corners[(index + 1) % corners.length]), 0);
  const outward = area > 0 ? seam : -1 * seam;
  const cut = sides.map((side, index) => {
    const before = sides.at(index - 1)!;
    requireNotTooSharp(before, side, index);
    return mitre(before, side, outward);
  });
  requireRoom(sides, cut, seam);
  step((show) => `every side moves outward by ${show.length(seam)}; neighboring sides meet in a mitre`);
  return cut;
}

/** Where the two sides at a corner meet after both have moved to the right of their direction by `distance`. */
function mitre(before: Side, after: Side, distance: number): Corner {
  const stretch = distance / (1 + dot(before.along, after.along));
  const { x, y } = after.from;
  return {
    x: withoutDust(x + stretch * (before.along.y + after.along.y)),
    y: withoutDust(y - stretch * (before.along.x + after.along.x)),
  };
}

function readSides(corners: readonly Corner[]): Side[] {
  if (corners.length < 3) {
    throw new Problem("bad input", `corners: a shape has 3 or more, not ${corners.length}; one corner in each row`);
  }
  if (corners.length > MOST_CORNERS) {
    throw new Problem("bad input", `corners: at most ${MOST_CORNERS} can be used, not ${corners.length}`);
  }
  return corners.map((from, index) => {
    const next = (index + 1) % corners.length;
    const side = sideBetween(from, corners[next]);
    if (side.length > TOLERANCE) return side;
    const again = next === 0 ? "; the shape closes by itself, leave the last row out" : "; leave one out";
    throw new Problem("bad input", `corners ${index + 1} and ${next + 1} are the same point${again}`);
  });
}

function sideBetween(from: Corner, to: Corner): Side {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(x, y);
  return { from, to, length, along: { x: x / length, y: y / length } };
}

/** Refuses shapes whose sides cross, touch or lie on one another. */
function requireSimple(sides: readonly Side[]): void {
  const [first] = sides as [Side];
  if (sides.every((side) => distanceFrom(first, side.to) === 0)) {
    throw new Problem("bad input", "corners all lie on one line; a shape needs an area");
  }
  const meeting = meetingSides(sides);
  if (meeting) {
    const [one, other] = meeting.map((index) => `${index + 1}–${((index + 1) % sides.length) + 1}`);
    throw new Problem(
      "bad input",
      `corners: side ${one} and side ${other} cross or touch; list the corners in order round the shape`,
    );
  }
}

/** The first two sides that meet elsewhere than in the corner between neighbors. */
function meetingSides(sides: readonly Side[]): [number, number] | undefined {
  for (let one = 0; one < sides.length; one += 1) {
    for (let other = one + 1; other < sides.length; other += 1) {
      const [a, b] = [sides[one], sides[other]];
      const next = other === one + 1;
      const previous = one === 0 && other === sides.length - 1;
      const met = next ? foldsBack(a, b) : previous ? foldsBack(b, a) : meet(a, b);
      if (met) return [one, other];
    }
  }
  return undefined;
}

/** Whether a side runs back on the one before it. */
function foldsBack(before: Side, after: Side): boolean {
  return dot(before.along, after.along) < 0 && distanceFrom(before, after.to) === 0;
}

/**
 * Whether two sides cross, or one begins on the other. Where one only ends on the other, the side that follows it begins
 * there, and is found instead.
 */
function meet(a: Side, b: Side): boolean {
  const [aFrom, aTo] = [distanceFrom(b, a.from), distanceFrom(b, a.to)];
  const [bFrom, bTo] = [distanceFrom(a, b.from), distanceFrom(a, b.to)];
  if (aFrom * aTo < 0 && bFrom * bTo < 0) return true;
  return (aFrom === 0 && isBeside(b, a.from)) || (bFrom === 0 && isBeside(a, b.from));
}

/** Distance of a point from the line of a side, above 0 on the left; 0 within the tolerance. */
function distanceFrom(side: Side, point: Corner): number {
  return withoutDust(cross(side.along, between(side.from, point)));
}

/** Whether a point on the line of a side lies between its ends. */
function isBeside(side: Side, point: Corner): boolean {
  const along = dot(side.along, between(side.from, point));
  return along >= -TOLERANCE && along <= side.length + TOLERANCE;
}

function requireNotTooSharp(before: Side, after: Side, index: number): void {
  const turn = (Math.abs(Math.atan2(cross(before.along, after.along), dot(before.along, after.along))) * 180) / Math.PI;
  if (180 - turn < SHARPEST) {
    throw new Problem(
      "bad input",
      `corner ${index + 1} is sharper than ${SHARPEST} degrees; no seam allowance can be cut to such a tip`,
    );
  }
}

/** Refuses a cut shape that runs into itself: in a narrow notch the allowances of two sides need the same fabric. */
function requireRoom(sides: readonly Side[], cut: readonly Corner[], seam: Inches): void {
  const cutSides = cut.map((from, index) => sideBetween(from, cut[(index + 1) % cut.length]));
  const turned = cutSides.findIndex((side, index) => side.length <= TOLERANCE || !sameWay(side, sides[index]));
  const [narrow] = turned >= 0 ? [turned] : (meetingSides(cutSides) ?? [-1]);
  if (narrow < 0) return;
  throw new Problem(
    "no answer",
    (show) =>
      `a seam of ${show.length(seam)} does not fit into the notch at side ${narrow + 1}–${((narrow + 1) % cut.length) + 1}; ` +
      "make the notch wider, or split the shape into pieces",
  );
}

function sameWay(a: Side, b: Side): boolean {
  return dot(a.along, b.along) > 0;
}

function between(from: Corner, to: Corner): { x: number; y: number } {
  return { x: to.x - from.x, y: to.y - from.y };
}

function dot(a: { x: number; y: number }, b: { x: number; y: number }): number {
  return a.x * b.x + a.y * b.y;
}

function cross(a: { x: number; y: number }, b: { x: number; y: number }): number {
  return a.x * b.y - a.y * b.x;
}

/** A coordinate that misses 0 by binary dust only, as 0. */
function withoutDust(value: number): Inches {
  return (same(value, 0) ? 0 : value) as Inches;
}
