/** Pre-cut bundles: equal strips, and the patches wanted from them. */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { type Counting, countingMark, marksFor, marksIn } from "./counting";
import { planCuts } from "./cutplan";
import { squared } from "./fabric";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { atMost } from "./rounding";
import { type Inches, inches } from "./units";
import { step } from "./working";

/** Patches of one size that a bundle is to give. */
export interface BundlePatch {
  /** side along the strip, inches */
  patch: Inches;
  /** side across the strip, inches */
  height: Inches;
  count: number;
}

/** The strips of a bundle. */
export interface Bundle {
  strips: number;
  /** inches */
  stripWidth: Inches;
  /** usable length of a strip, which is the usable width of the fabric it was cut from, inches */
  width?: Inches;
  /** length lost where the end of each strip is squared, inches */
  squaring?: Inches;
}

/** Lengths that lie on no mark are counted up to the next of these: no cutter sees the difference. */
const FINE_MARK = inches(1 / 1200);

/** Longer strips are cut from no fabric, and longer lists only make the planner slow. */
const LONGEST_STRIP = 150;
const MOST_KINDS = 40;
const MOST_PATCHES = 5000;

/**
 * Strips that a bundle has to spare for a list of patches: 336 patches of 4½ in, 8 to a strip, leave 40 strips 2 short.
 *
 * What one size leaves of a strip goes to the other sizes, by the plan that takes fewest strips.
 *
 * @returns spare strips; below 0 the strips that are missing
 * @throws Problem "bad input" where a measure is out of range; "no answer" where a patch does not come out of a strip
 */
export function bundleSpare(list: readonly BundlePatch[], bundle: Bundle): number {
  requireCount("strips", bundle.strips);
  const needed = bundleStrips(list, bundle);
  step(() => `${bundle.strips} − ${counted(needed, "strip")} = ${bundle.strips - needed}`);
  return bundle.strips - needed;
}

/** Fewest strips that give every patch of a list. */
function bundleStrips(
  list: readonly BundlePatch[],
  { stripWidth, width = USUAL.fabricWidth, squaring = 0 as Inches }: Bundle,
): number {
  requirePositive("strip width", stripWidth);
  requireStripLength("width", width);
  requireNotNegative("squaring", squaring);
  if (width <= squaring) throw new Problem("bad input", "squaring leaves nothing of the strip");
  const usable = squared(width, squaring);
  if (list.length === 0) throw new Problem("bad input", "the list is empty");
  for (const row of list) requireFits(row, stripWidth, usable);
  const wanted = list.filter(({ count }) => count > 0);
  const patches = wanted.reduce((sum, { count }) => sum + count, 0);
  if (patches === 0) return 0;
  if (wanted.length > MOST_KINDS || patches > MOST_PATCHES) {
    throw new Problem(
      "bad input",
      `the list has ${patches} patches in ${wanted.length} rows; ` +
        `at most ${MOST_PATCHES} in ${MOST_KINDS} rows are planned at once`,
    );
  }
  const counting = countAlong(wanted.map(({ patch }) => patch));
  const plan = planCuts(
    wanted.map(({ patch, count }) => ({
      label: "",
      width: marksFor(counting, patch),
      height: 1,
      count,
      mayTurn: false,
    })),
    { width: marksIn(counting, usable) },
  );
  for (const { times, pieces } of plan.strips) {
    step(
      (show) =>
        `${times} × ${pieces.map(({ count, across }) => `${count} of ${show.length(across * counting.mark)}`).join(", ")}`,
    );
  }
  if (!plan.stripsProved) step(() => `${counted(plan.stripCount, "strip")}; ${plan.stripBound} at the very least`);
  return plan.stripCount;
}

/** Refuses a strip that is no length, or longer than any. */
export function requireStripLength(name: string, length: Inches): void {
  requirePositive(name, length);
  if (length <= LONGEST_STRIP) return;
  throw new Problem("bad input", (show) => `${name} is more than ${show.length(LONGEST_STRIP)}; no strip is that long`);
}

/** How to count patches along a strip, so that as many as fill it to a hair's breadth fit it. */
export function countAlong(patches: readonly Inches[]): Counting {
  return countingMark(patches, FINE_MARK);
}

function requireFits({ patch, height, count }: BundlePatch, stripWidth: Inches, usable: number): void {
  requirePositive("patch", patch);
  requirePositive("height", height);
  requireCount("count", count);
  if (!atMost(height, stripWidth)) {
    throw new Problem(
      "no answer",
      (show) => `patch is ${show.length(height)} high; the strips are ${show.length(stripWidth)} wide`,
    );
  }
  if (!atMost(patch, usable)) {
    throw new Problem(
      "no answer",
      (show) => `patch is ${show.length(patch)}, longer than the ${show.length(usable)} of a strip; join strips`,
    );
  }
}
