/**
 * Shapes other than squares: from the finished size in the quilt to the size to cut.
 *
 * Each of them has an inscribed circle; with its radius r, every length grows by the factor (r + seam) / r when all sides
 * move outward by the seam (school geometry).
 */
import { USUAL } from "./conventions";
import { type PatchToCut, requireSizes, upToMark } from "./cut";
import { cutQuarterSquare, cutSquare } from "./patches";
import { Problem, requireCount } from "./problem";
import type { Inches } from "./units";
import { step } from "./working";

/** Angles at the tip of a diamond, degrees. */
export const DIAMOND_ANGLES = { least: 1, most: 179, usual: 45 };

const EXACT = 0 as Inches;

/**
 * Short sides of the right triangle to cut for half of a rectangle.
 *
 * @param width finished width of the rectangle, inches
 * @param height finished height of the rectangle, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves sizes exact
 * @throws Problem "bad input" where a length is out of range
 */
export function cutHalfRectangle(
  width: Inches,
  height: Inches,
  seam = USUAL.seam,
  mark = EXACT,
): { width: Inches; height: Inches } {
  requireSizes({ width, height }, seam, mark);
  const grown = growth(rightInradius(width, height), seam, mark);
  return { width: grown(width), height: grown(height) };
}

/** Short sides with which half of a rectangle finishes, from the size it is cut: the circle is smaller by a seam. */
export function halfRectangleSewn(
  cut: { width: Inches; height: Inches },
  seam: Inches,
): { width: Inches; height: Inches } {
  const inradius = rightInradius(cut.width, cut.height);
  const sewn = (side: Inches): Inches => ((side * (inradius - seam)) / inradius) as Inches;
  return { width: sewn(cut.width), height: sewn(cut.height) };
}

/** Radius of the circle inscribed in a right triangle, from its short sides. */
function rightInradius(width: Inches, height: Inches): number {
  return (width * height) / (width + height + Math.hypot(width, height));
}

/**
 * Base and height to cut for a triangle with two equal sides.
 *
 * @param base finished base, inches
 * @param height finished height, inches; left out, the triangle has three equal sides
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves sizes exact
 * @throws Problem "bad input" where a length is out of range
 */
export function cutTriangle(
  base: Inches,
  height = equalHeight(base),
  seam = USUAL.seam,
  mark = EXACT,
): { base: Inches; height: Inches } {
  requireSizes({ base, height }, seam, mark);
  const grown = growth((base * height) / (base + 2 * Math.hypot(base / 2, height)), seam, mark);
  return { base: grown(base), height: grown(height) };
}

/** Height of a triangle with three equal sides. */
function equalHeight(base: Inches): Inches {
  const height = (base * Math.sqrt(0.75)) as Inches;
  step((show) => `height where all sides are equal: √3 ÷ 2 × ${show.length(base)} = ${show.length(height)}`);
  return height;
}

/**
 * Strip to cut for diamonds, and the distance between the cuts, measured along the edge of the strip.
 *
 * @param side finished side, inches
 * @param angle angle at one tip, degrees; the other tip makes up 180
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves sizes exact
 * @throws Problem "bad input" where a length or the angle is out of range
 */
export function cutDiamond(
  side: Inches,
  angle = DIAMOND_ANGLES.usual,
  seam = USUAL.seam,
  mark = EXACT,
): { strip: Inches; along: Inches } {
  requireSizes({ side }, seam, mark);
  if (!(angle >= DIAMOND_ANGLES.least && angle <= DIAMOND_ANGLES.most)) {
    throw new Problem("bad input", `angle must be from 1 to 179 degrees, not ${angle}`);
  }
  const sine = Math.sin((angle * Math.PI) / 180);
  const [strip, along] = [side * sine + 2 * seam, side + (2 * seam) / sine];
  step(
    (show) =>
      `strip ${show.length(side)} × sin ${angle}° + 2 × ${show.length(seam)} = ${show.length(strip)}; ` +
      `along its edge ${show.length(side)} + 2 × ${show.length(seam)} ÷ sin ${angle}° = ${show.length(along)}`,
  );
  return { strip: upToMark(mark, strip), along: upToMark(mark, along) };
}

/**
 * Size to cut for a hexagon with six equal sides: from flat side to flat side, and along a side.
 *
 * @param side finished side, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves sizes exact
 * @throws Problem "bad input" where a length is out of range
 */
export function cutHexagon(side: Inches, seam = USUAL.seam, mark = EXACT): { flatToFlat: Inches; side: Inches } {
  requireSizes({ side }, seam, mark);
  const [flatToFlat, cutSide] = [side * Math.sqrt(3) + 2 * seam, side + (2 * seam) / Math.sqrt(3)];
  step(
    (show) =>
      `flat to flat √3 × ${show.length(side)} + 2 × ${show.length(seam)} = ${show.length(flatToFlat)}; ` +
      `side ${show.length(side)} + 2 × ${show.length(seam)} ÷ √3 = ${show.length(cutSide)}`,
  );
  return { flatToFlat: upToMark(mark, flatToFlat), side: upToMark(mark, cutSide) };
}

/**
 * What to cut for an eight-point star in a square block: eight points of 45° that meet in the center, a square in each
 * corner and a triangle in the middle of each side. A point may be pieced from rows of smaller diamonds.
 *
 * @param block finished side of the block, inches
 * @param rows rows of diamonds in each point, as many diamonds in each row
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves sizes exact
 * @returns the patches, then the block
 * @throws Problem "bad input" where a length or the count is out of range
 */
export function cutStar(block: Inches, rows = 1, seam = USUAL.seam, mark = EXACT): PatchToCut[] {
  requireSizes({ block }, seam, mark);
  requireCount("rows", rows, 1);
  const diamonds = 8 * rows * rows;
  requireCount("number of diamonds", diamonds);
  // Along one side of the block lie a corner square, a triangle and a corner square: side × (1 + √2 + 1).
  const point = (block / (2 + Math.SQRT2)) as Inches;
  step((show) => `a point has sides of ${show.length(block)} ÷ (2 + √2) = ${show.length(point)}`);
  const side = (point / rows) as Inches;
  const longEdge = (point * Math.SQRT2) as Inches;
  const diamond = cutDiamond(side, DIAMOND_ANGLES.usual, seam, mark);
  const corner = cutSquare(point, seam, mark);
  const triangle = cutQuarterSquare(longEdge, seam, mark);
  const cutBlock = cutSquare(block, seam);
  return [
    {
      patch: "diamond",
      finished: side,
      width: diamond.strip,
      length: diamond.along,
      count: diamonds,
      how:
        rows === 1
          ? "strip of the cut width; cut at 45°, the cut length along the edge"
          : `cut at 45° from strips; each point is ${rows} rows of ${rows}`,
    },
    { patch: "corner square", finished: point, width: corner, length: corner, count: 4, how: "one in each corner" },
    {
      patch: "side square",
      finished: longEdge,
      width: triangle,
      length: triangle,
      count: 1,
      how: "cut twice, corner to corner, for four side triangles",
    },
    { patch: "block made", finished: block, width: cutBlock, length: cutBlock, count: 1, how: "unfinished size" },
  ];
}

/** What every length of a shape with an inscribed circle grows to. */
function growth(inradius: number, seam: Inches, mark: Inches): (length: Inches) => Inches {
  const factor = (inradius + seam) / inradius;
  step(
    (show) =>
      `the inscribed circle has a radius of ${show.length(inradius)}; with a seam of ${show.length(seam)} all lengths ` +
      `grow by the factor ${factor.toFixed(6)}`,
  );
  return (length) => {
    const exact = length * factor;
    step((show) => `${show.length(length)} × ${factor.toFixed(6)} = ${show.length(exact)}`);
    return upToMark(mark, exact);
  };
}
