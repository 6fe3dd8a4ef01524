/** A roll of strips used first: which patches come from it, and what is left for yardage. */
import { countAlong, requireStripLength } from "./bundles";
import { USUAL } from "./conventions";
import { marksFor, marksIn } from "./counting";
import { type CutList, planCuts } from "./cutplan";
import type { ListedPatch } from "./plans";
import { requireCount, requirePositive } from "./problem";
import { covers, fits, same } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** How many patches of one row come from the strips, and how many do not. */
export interface SplitPatch {
  patch: ListedPatch;
  fromStrips: number;
  fromYardage: number;
}

export interface StripsFirst {
  rows: SplitPatch[];
  stripsUsed: number;
  stripsLeft: number;
}

/**
 * Cuts as much of a list as strips of one width allow, in the order of the list. A patch comes from a strip where one of its
 * sides is the strip's width (its height, if it may not be turned) and the other is no longer than the strip.
 *
 * @param list patches; those that the maker wants from the strips first stand first
 * @param strips strips at hand
 * @param stripWidth width of each strip, inches
 * @param length usable length of each strip, inches
 */
export function stripsFirst(
  list: readonly ListedPatch[],
  strips: number,
  stripWidth: Inches,
  length = USUAL.fabricWidth,
): StripsFirst {
  requireCount("strips", strips);
  requirePositive("strip width", stripWidth);
  requireStripLength("strip length", length);
  const counting = countAlong(list.flatMap((patch) => lengthOnStrip(patch, stripWidth) ?? []));
  const strip = marksIn(counting, length);
  const taken: CutList[number][] = [];
  let stripsUsed = 0;
  const stripsFor = (count: number, along: number) =>
    planCuts([...taken, patchOnStrip(along, count)], { width: strip }).length;
  const rows = list.map((patch): SplitPatch => {
    const along = lengthOnStrip(patch, stripWidth);
    const marks = along === undefined ? Infinity : marksFor(counting, along);
    let fromStrips = 0;
    if (marks <= strip) {
      // Whole strips that are left yield so many; all that is left of all strips, were it in one piece, no more than so many.
      const least = fits(marks, strip) * (strips - stripsUsed);
      const room = taken.reduce((left, { width, count }) => left - width * count, strips * strip);
      const limit = Math.min(patch.count, fits(marks, room));
      fromStrips = most(Math.min(least, limit), limit, (count) => stripsFor(count, marks) <= strips);
    }
    if (fromStrips > 0) {
      const onFreshStrips = stripsUsed + covers(fits(marks, strip), fromStrips);
      stripsUsed = Math.min(onFreshStrips, stripsFor(fromStrips, marks));
      taken.push(patchOnStrip(marks, fromStrips));
    }
    step(() => `${patch.label}: ${fromStrips} from strips, ${patch.count - fromStrips} from yardage`);
    return { patch, fromStrips, fromYardage: patch.count - fromStrips };
  });
  return { rows, stripsUsed, stripsLeft: strips - stripsUsed };
}

/** A patch along a strip; all strips are equally high, so the planner's length counts them. */
function patchOnStrip(along: number, count: number): CutList[number] {
  return { label: "", width: along, height: 1, count, mayTurn: false };
}

/** The side of a patch that lies along the strip, or undefined where no side is the strip's width. */
function lengthOnStrip({ width, height, grain }: ListedPatch, stripWidth: Inches): Inches | undefined {
  if (same(height, stripWidth)) return width;
  return same(width, stripWidth) && grain === "any" ? height : undefined;
}

/** The largest count from `least`, which is possible, to `limit`, where every smaller one is possible too. */
function most(least: number, limit: number, possible: (count: number) => boolean): number {
  if (least === limit || possible(limit)) return limit;
  let beyond = limit;
  while (beyond - least > 1) {
    const middle = least + Math.trunc((beyond - least) / 2);
    if (possible(middle)) least = middle;
    else beyond = middle;
  }
  return least;
}
