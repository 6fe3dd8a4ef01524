/** From the cut size back: what a patch or a unit measures once it is sewn. */
import { USUAL } from "./conventions";
import { Problem, requireNotNegative, requirePositive } from "./problem";
import { difference, TOLERANCE } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** How the size of a sewn patch follows from the size that was cut. */
interface Rule {
  words: string;
  size: (cut: number, seam: number) => number;
}

/**
 * Ways to make a unit, and what its unfinished side measures.
 *
 * A seam along one diagonal takes 2 seams out of the other, which is √2 seams of the side; an hourglass unit has a seam
 * along both.
 */
const UNITS = {
  "half square": {
    words: "cut square less √2 seams",
    size: (cut, seam) => cut - Math.SQRT2 * seam,
  },
  "half square four": {
    words: "cut square less 2 seams, divided by √2",
    size: (cut, seam) => (cut - 2 * seam) / Math.SQRT2,
  },
  "half square eight": {
    words: "half of the cut square less √2 seams",
    size: (cut, seam) => cut / 2 - Math.SQRT2 * seam,
  },
  hourglass: {
    words: "cut square less 2√2 seams",
    size: (cut, seam) => cut - 2 * Math.SQRT2 * seam,
  },
  "hourglass from half squares": {
    words: "half-square unit less √2 seams",
    size: (cut, seam) => cut - Math.SQRT2 * seam,
  },
  geese: {
    words: "large square less 2√2 seams, the width of the unit",
    size: (cut, seam) => cut - 2 * Math.SQRT2 * seam,
  },
  "square in square": {
    words: "center square less 2 seams, times √2, and 2 seams",
    size: (cut, seam) => (cut - 2 * seam) * Math.SQRT2 + 2 * seam,
  },
  tube: {
    words: "strip less a seam, times √2",
    size: (cut, seam) => Math.SQRT2 * (cut - seam),
  },
} as const satisfies Record<string, Rule>;

/** Patches that are no units, and what their finished side measures. */
const PATCHES = {
  square: {
    words: "cut square less 2 seams",
    size: (cut, seam) => cut - 2 * seam,
  },
  corner: {
    words: "cut square less 2 seams",
    size: (cut, seam) => cut - 2 * seam,
  },
  "quarter square": {
    words: "cut square less 2 × (1 + √2) seams, the long edge",
    size: (cut, seam) => cut - 2 * (1 + Math.SQRT2) * seam,
  },
  triangle: {
    words: "cut height less 3 seams, times 2 ÷ √3",
    size: (cut, seam) => ((cut - 3 * seam) * 2) / Math.sqrt(3),
  },
  diamond: {
    words: "strip less 2 seams, times √2",
    size: (cut, seam) => (cut - 2 * seam) * Math.SQRT2,
  },
  hexagon: {
    words: "flat to flat less 2 seams, divided by √3",
    size: (cut, seam) => (cut - 2 * seam) / Math.sqrt(3),
  },
} as const satisfies Record<string, Rule>;

export type UnitWay = keyof typeof UNITS;
export type CutShape = keyof typeof PATCHES | UnitWay;

/** Ways to make a unit, in the order in which they are offered. */
export const UNIT_WAYS = Object.keys(UNITS) as UnitWay[];

/** Shapes whose finished size follows from one cut size, in the order in which they are offered. */
export const CUT_SHAPES = [...Object.keys(PATCHES), ...UNIT_WAYS] as CutShape[];

/**
 * Unfinished size that a unit really has once it is sewn, before it is trimmed.
 *
 * @param cut size cut: of the squares, of the half-square unit, or the width of the strips of a tube, inches
 * @param how how the unit is made
 * @param seam seam allowance, inches
 * @returns unfinished side, inches, exact
 * @throws Problem "bad input" where a length is out of range; "no answer" where the seams take all of it
 */
export function unitMade(cut: Inches, how: UnitWay, seam = USUAL.seam): Inches {
  const made = unfinished(cut, how, seam);
  requireLeft(cut, how, made - 2 * seam);
  return made;
}

/**
 * What a unit has to spare over the size it is to be trimmed to.
 *
 * @param cut size cut, as for `unitMade`, inches
 * @param trim unfinished size to trim to, inches
 * @param how how the unit is made
 * @param seam seam allowance, inches
 * @returns what is trimmed off, inches; below 0 the unit is too small by so much
 * @throws Problem "bad input" where a length is out of range
 */
export function cutCheck(cut: Inches, trim: Inches, how: UnitWay, seam = USUAL.seam): Inches {
  requirePositive("trim", trim);
  const spare = difference(unfinished(cut, how, seam), trim);
  step((show) =>
    spare < 0
      ? `impossible: ${show.length(-1 * spare)} too small to trim to ${show.length(trim)}`
      : `${show.length(spare)} to spare over ${show.length(trim)}`,
  );
  return spare;
}

/**
 * Finished side of a patch, or of a unit, from the size that is cut.
 *
 * @param cut size cut, inches; of a triangle, a diamond (45°) and a hexagon the width of the strip they are cut from
 * @param shape what is cut
 * @param seam seam allowance, inches
 * @returns finished side, inches, exact
 * @throws Problem "bad input" where a length is out of range; "no answer" where the seams take all of it
 */
export function finishedSize(cut: Inches, shape: CutShape = "square", seam = USUAL.seam): Inches {
  const finished = isUnit(shape) ? unfinished(cut, shape, seam) - 2 * seam : apply(PATCHES[shape], cut, seam);
  requireLeft(cut, shape, finished);
  if (isUnit(shape)) step((show) => `less 2 seams: ${show.length(finished)} finished`);
  return finished as Inches;
}

function isUnit(shape: CutShape): shape is UnitWay {
  return shape in UNITS;
}

function unfinished(cut: Inches, how: UnitWay, seam: Inches): Inches {
  return apply(UNITS[how], cut, seam) as Inches;
}

function apply(rule: Rule, cut: Inches, seam: Inches): number {
  requirePositive("cut size", cut);
  requireNotNegative("seam", seam);
  const size = rule.size(cut, seam);
  step(
    (show) => `${rule.words}: from ${show.length(cut)} with a seam of ${show.length(seam)} it is ${show.length(size)}`,
  );
  return size;
}

function requireLeft(cut: Inches, shape: CutShape, finished: number): void {
  if (finished > TOLERANCE) return;
  throw new Problem("no answer", (show) => `${shape} cut ${show.length(cut)}: the seams take all of it`);
}
