/** Binding: straight strips round the edge of a quilt, and bias strips from one square. */
import { USUAL } from "./conventions";
import { upToMark } from "./cut";
import { requireFabricWidth } from "./fabric";
import { type Join, joinedStrips, joinLoss } from "./joins";
import { Problem, requireNotNegative, requirePositive } from "./problem";
import { atMost } from "./rounding";
import { stripFabric } from "./strips";
import { type Inches, inches } from "./units";
import { step } from "./working";

/** The edge of a quilt: four straight sides, or one round (an oval where width and length differ). */
export const EDGES = ["straight", "round"] as const;
export type Edge = (typeof EDGES)[number];

/** What the strips of a binding are cut from and how they are joined. */
export interface BindingOptions {
  /** width to cut the strips, inches */
  strip?: Inches;
  /** usable width of the fabric, inches */
  fabricWidth?: Inches;
  /** extra to join the two ends, inches */
  tail?: Inches;
  join?: Join;
  /** seam allowance of a straight join, inches */
  seam?: Inches;
}

/**
 * Length of binding: once round the quilt, and the tail.
 *
 * @param width finished width of the quilt, inches
 * @param length finished length of the quilt, inches
 * @param tail extra to join the two ends, inches
 * @param edge straight sides, or round, which needs bias binding
 * @returns inches
 */
export function bindingLength(
  width: Inches,
  length: Inches,
  tail = USUAL.bindingTail,
  edge: Edge = "straight",
): Inches {
  requirePositive("width", width);
  requirePositive("length", length);
  requireNotNegative("tail", tail);
  const around = edge === "round" ? roundOval(width, length) : 2 * (width + length);
  const binding = (around + tail) as Inches;
  step(
    (show) =>
      `${show.length(around)} round the ${edge} edge + ${show.length(tail)} to join the ends = ${show.length(binding)}`,
  );
  return binding;
}

/**
 * Strips across the fabric that, joined, bind a quilt.
 *
 * @param width finished width of the quilt, inches
 * @param length finished length of the quilt, inches
 * @returns strips
 * @throws Problem "bad input" where a join would cost a whole strip
 */
export function bindingStrips(width: Inches, length: Inches, options: BindingOptions = {}): number {
  const { strip = USUAL.bindingStrip, fabricWidth = USUAL.fabricWidth, join = "diagonal" } = options;
  requirePositive("strip", strip);
  requirePositive("fabric width", fabricWidth);
  requireNotNegative("seam", options.seam ?? 0);
  const binding = bindingLength(width, length, options.tail);
  return joinedStrips(binding, fabricWidth, joinLoss(join, strip, options.seam));
}

/**
 * Amount of fabric for the strips that bind a quilt.
 *
 * @param width finished width of the quilt, inches
 * @param length finished length of the quilt, inches
 * @param shopStep step in which the shop cuts, inches
 * @param squaring length lost once where the end of the fabric is squared, inches
 * @returns length to buy, inches
 */
export function bindingFabric(
  width: Inches,
  length: Inches,
  options: BindingOptions = {},
  shopStep = USUAL.shopStep,
  squaring = inches(0),
): Inches {
  requireFabricWidth(options.fabricWidth ?? USUAL.fabricWidth);
  return stripFabric(bindingStrips(width, length, options), options.strip ?? USUAL.bindingStrip, shopStep, squaring);
}

/**
 * Side of the square from which one continuous bias strip is cut.
 *
 * The square is halved corner to corner, sewn into a slant and then into a tube: two seams, one each way, leave
 * (side − 2 × seam)² of cloth, which is length × strip. The two slanting edges of a square lie side / √2 apart, so that a
 * strip needs a side of at least strip × √2.
 *
 * @param length length of bias strip needed, inches
 * @param strip width of the strip as cut, inches
 * @param seam seam allowance of the two seams, inches
 * @param mark step to round the side up to, inches; 0 for the exact side
 * @returns side of the square, inches
 */
export function biasSquare(length: Inches, strip: Inches, seam = USUAL.seam, mark = inches(1)): Inches {
  requirePositive("length", length);
  requirePositive("strip", strip);
  requireNotNegative("seam", seam);
  requireNotNegative("mark", mark);
  const ofArea = Math.sqrt(length * strip);
  const sewn = Math.max(ofArea, strip * Math.SQRT2);
  step((show) => `√(${show.length(length)} × ${show.length(strip)}) = ${show.length(ofArea)}`);
  if (sewn > ofArea) step((show) => `one strip needs √2 × ${show.length(strip)} = ${show.length(sewn)}`);
  const side = sewn + 2 * seam;
  if (seam > 0) step((show) => `${show.length(sewn)} + 2 × ${show.length(seam)} in seams = ${show.length(side)}`);
  return upToMark(mark, side);
}

/**
 * Length of the bias strip that a square yields.
 *
 * @param square side of the square, inches
 * @param strip width of the strip as cut, inches
 * @param seam seam allowance of the two seams, inches; 0 counts the whole cloth, as published tables do
 * @returns inches
 * @throws Problem "no answer" where the square is too small for one strip
 */
export function biasLength(square: Inches, strip: Inches, seam = inches(0)): Inches {
  requirePositive("square", square);
  requirePositive("strip", strip);
  requireNotNegative("seam", seam);
  const sewn = square - 2 * seam;
  if (!atMost(strip * Math.SQRT2, sewn)) {
    const least = strip * Math.SQRT2 + 2 * seam;
    throw new Problem(
      "no answer",
      (show) =>
        `a square of ${show.length(square)} is too small for a bias strip of ${show.length(strip)}; ` +
        `it must be at least ${show.length(least)}`,
    );
  }
  const length = (sewn ** 2 / strip) as Inches;
  step(
    (show) => `(${show.length(square)} − ${show.length(2 * seam)})² ÷ ${show.length(strip)} = ${show.length(length)}`,
  );
  return length;
}

/** Circumference of an oval, a circle included, by Ramanujan's second approximation (Modular Equations, 1914). */
function roundOval(width: Inches, length: Inches): number {
  const h = ((width - length) / (width + length)) ** 2;
  return (Math.PI / 2) * (width + length) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}
