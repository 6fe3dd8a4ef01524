/** Batting: the layer between top and backing, off the roll or in a package. */
import { USUAL } from "./conventions";
import { Problem, requireNotNegative, requirePositive } from "./problem";
import { atMost } from "./rounding";
import { type Inches, inches } from "./units";
import { step } from "./working";

/** A packaged size of batting. */
export interface Pack {
  name: string;
  width: Inches;
  length: Inches;
}

/** A pack that covers a quilt, and how it lies. */
export interface ChosenPack extends Pack {
  /** Whether its width must lie along the length of the quilt. */
  turned: boolean;
}

/** Common practice: packaged sizes as sold under these names. Makers differ by a few inches; look at the package. */
export const PACKS: readonly Pack[] = [
  pack("crib", 45, 60),
  pack("throw", 60, 60),
  pack("twin", 72, 90),
  pack("full", 81, 96),
  pack("queen", 90, 108),
  pack("king", 120, 120),
];

/**
 * Size of the batting for a quilt, exact.
 *
 * @param width finished width of the quilt, inches
 * @param length finished length of the quilt, inches
 * @param margin extra on each of the four sides, inches
 * @returns width and length, inches
 */
export function battingSize(width: Inches, length: Inches, margin = USUAL.margin): [Inches, Inches] {
  requirePositive("width", width);
  requirePositive("length", length);
  requireNotNegative("margin", margin);
  const size: [Inches, Inches] = [inches(width + 2 * margin), inches(length + 2 * margin)];
  step((show) => `batting with ${show.length(margin)} on each side: ${show.length(size[0])} × ${show.length(size[1])}`);
  return size;
}

/**
 * The smallest pack, by area, that covers the batting of a quilt in one piece, turned if need be; of equals, the first listed.
 *
 * @param width finished width of the quilt, inches
 * @param length finished length of the quilt, inches
 * @param margin extra on each of the four sides, inches
 * @param packs sizes to choose from
 * @throws Problem "no answer" where none is large enough
 */
export function battingPack(width: Inches, length: Inches, margin = USUAL.margin, packs = PACKS): ChosenPack {
  if (packs.length === 0) throw new Problem("bad input", "packs must list at least one size");
  const [wide, long] = battingSize(width, length, margin);
  const covering = packs.flatMap((candidate) => {
    requirePositive("width of a pack", candidate.width);
    requirePositive("length of a pack", candidate.length);
    if (atMost(wide, candidate.width) && atMost(long, candidate.length)) return [{ ...candidate, turned: false }];
    if (atMost(wide, candidate.length) && atMost(long, candidate.width)) return [{ ...candidate, turned: true }];
    return [];
  });
  if (covering.length === 0) throw noneCovers(wide, long, packs);
  const chosen = covering.reduce((least, other) => (atMost(area(least), area(other)) ? least : other));
  step((show) => `smallest pack that covers it: ${packText(chosen, show)}${chosen.turned ? ", turned" : ""}`);
  return chosen;
}

function noneCovers(wide: Inches, long: Inches, packs: readonly Pack[]): Problem {
  const largest = packs.reduce((most, other) => (area(other) > area(most) ? other : most));
  return new Problem(
    "no answer",
    (show) =>
      `no pack covers ${show.length(wide)} × ${show.length(long)}; the largest is ${packText(largest, show)}: ` +
      `join two, or buy batting off the roll`,
  );
}

function packText({ name, width, length }: Pack, show: { length(inches: number): string }): string {
  return `${name === "" ? "" : `${name}, `}${show.length(width)} × ${show.length(length)}`;
}

function area({ width, length }: Pack): number {
  return width * length;
}

function pack(name: string, width: number, length: number): Pack {
  return { name, width: inches(width), length: inches(length) };
}
