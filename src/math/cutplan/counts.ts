import { Master } from "./master";
import { Model } from "./model";
import { Goal, Search } from "./search";
import { CountRow } from "./rows";

/**
 * How many strips of which height: the numbers that branching works on.
 *
 * With trimming, count k is the number of strips of level k or higher; without, the number of strips of level k.
 * Conditions on them leave the pricing as it is, for they only shift the cost of a level; and they close most of the gap
 * between fractional and whole plans, for the heights are few and their counts must be whole.
 */
export function countWeights(model: Model, level: number): Float64Array {
  const weight = new Float64Array(model.levelCount);
  weight.fill(1, level, model.trimming ? model.levelCount : level + 1);
  return weight;
}

/** The counts of a fractional solution. */
export function countsOf(model: Model, master: Master): Float64Array {
  const counts = new Float64Array(model.levelCount);
  for (const { column, times } of master.solution()) counts[column.level] += times;
  if (model.trimming) for (let level = model.levelCount - 2; level >= 0; level--) counts[level] += counts[level + 1];
  return counts;
}

/** Strips of each level, from whole counts. */
export function stripsByLevel(model: Model, counts: ArrayLike<number>): Int32Array {
  const strips = Int32Array.from(counts, Math.round);
  if (model.trimming) for (let level = 0; level < model.levelCount - 1; level++) strips[level] -= strips[level + 1];
  return strips;
}

/** Least and most strips of each count in any plan of interest. */
export interface CountLimits {
  readonly least: Float64Array;
  readonly most: Float64Array;
}

export function noLimits(model: Model): CountLimits {
  return {
    least: new Float64Array(model.levelCount),
    most: new Float64Array(model.levelCount).fill(Infinity),
  };
}

/**
 * Narrows each count down: the least and the most of it over all fractional plans below the cutoff. Each is a dual bound
 * of its own, with the count as cost and the cost as a row.
 *
 * @returns false when no plan below the cutoff exists
 */
export function narrowCounts(search: Search, goal: Goal, root: Master, limits: CountLimits): boolean {
  const { model, work } = search;
  const below = goal.cutoff() - goal.step;
  const master = root.with([{ weight: goal.cost.slice(), bound: below, sense: "at most" }]);
  const first = search.relax(master, goal);
  if (first.ending === "cut off") return false;
  if (first.ending !== "solved") return true;
  for (let level = model.levelCount - 1; level >= 0; level--) {
    const weight = countWeights(model, level);
    for (const sign of [1, -1]) {
      master.cost = weight.map((value) => value * sign);
      const { ending, bound } = search.relaxAmong(master, goal);
      if (ending !== "solved" || work.spent) return true;
      if (sign > 0) limits.least[level] = Math.max(limits.least[level], Math.ceil(bound - 1e-6));
      else limits.most[level] = Math.min(limits.most[level], Math.floor(-bound + 1e-6));
    }
  }
  return true;
}

/** The row that says: this count is at least / at most so many. */
export function countRow(model: Model, level: number, sense: CountRow["sense"], bound: number): CountRow {
  return { weight: countWeights(model, level), bound, sense };
}
