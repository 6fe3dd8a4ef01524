import { branchOnCounts } from "./branching";
import { dive } from "./dive";
import { startSearch } from "./greedy";
import { Master } from "./master";
import { Model } from "./model";
import { repairPlan } from "./repair";
import { replanParts } from "./replan";
import { dualWorth, roundSolution } from "./rounded";
import { Goal, Plan, Search } from "./search";
import { tidyPlan } from "./tidy";
import { Work } from "./work";

export interface Solution {
  readonly plan: Plan;
  /** no plan is shorter */
  readonly lengthBound: number;
  /** no plan of this length has fewer strips */
  readonly stripBound: number;
  readonly work: number;
}

export interface SolveOptions {
  readonly budget: number;
  /**
   * From the length of a plan, the least length that would still be no better. After a first search for the least length,
   * only shorter plans are looked for. By default every shorter plan is better.
   */
  readonly settledFrom?: (length: number) => number;
  readonly seed?: number;
}

/** Share of the budget for the length; the rest goes to the number of strips. */
const LENGTH_SHARE = 0.9;
/** Steps for fewer trims and fewer kinds of strip, in the end. */
const TIDYING = 2e6;
/** Share of the budget for the length itself, where it is only the amount to buy that counts. */
const FIRST_SHARE = 0.15;
/** Plans made from the first fractional solution. */
const ROUNDINGS = 12;
/** Of the budget for a goal: the share for repairing the first plans. */
const REPAIR_SHARE = 0.08;
/** Of the budget for the length: the share for planning parts anew, once branching has done what it can. */
const REPLAN_SHARE = 0.35;

/** Plans strips for all patches: least length first, then fewest strips. */
export function solve(model: Model, { budget, settledFrom, seed = 12345 }: SolveOptions): Solution {
  const work = new Work(budget + TIDYING);
  const search = new Search(model, work, seed);
  startSearch(search);
  const length = (settled: (length: number) => number, steps: number, bound: number) =>
    work.within(steps, () => minimize(search, lengthGoal(search, settled), bound));
  let lengthBound = length(ownLength, budget * (settledFrom ? FIRST_SHARE : LENGTH_SHARE), areaBound(model));
  if (settledFrom && lengthBound < settledFrom(search.best.length)) {
    lengthBound = length(settledFrom, budget * LENGTH_SHARE - work.done, lengthBound);
  }
  const stripBound = work.within(Math.min(budget * (1 - LENGTH_SHARE), budget - work.done), () =>
    minimize(search, stripGoal(search), widthBound(model)),
  );
  work.within(TIDYING, () => {
    tidyPlan(search);
  });
  return { plan: search.best, lengthBound, stripBound, work: work.done };
}

/** Length of cloth that the patches would cover without any waste, rounded up. */
function areaBound(model: Model): number {
  let area = 0;
  for (let kind = 0; kind < model.kindCount; kind++) area += model.area[kind] * model.demand[kind];
  return Math.ceil(area / model.clothWidth);
}

/** Strips that the patches would fill without any waste of width. */
function widthBound(model: Model): number {
  let width = 0;
  for (let kind = 0; kind < model.kindCount; kind++) {
    width += model.widthIn(model.ownLevels[kind][model.ownLevels[kind].length - 1], kind) * model.demand[kind];
  }
  return Math.ceil(width / model.room);
}

function lengthGoal(search: Search, settledFrom: (length: number) => number): Goal {
  const { model } = search;
  const reached = () => search.best.length;
  return {
    cost: Float64Array.from(model.heights),
    rows: [],
    reached,
    cutoff: () => settledFrom(reached()),
    step: model.heightStep,
    roundUp: totalsOf(model.heights, model.heightStep, search.best.length),
    lowestOnly: false,
    longest: () => Infinity,
  };
}

function stripGoal(search: Search): Goal {
  const { model } = search;
  const { length } = search.best;
  // A shorter plan that turns up may have more strips; the search has then already passed over plans of fewer.
  let fewest = search.best.strips;
  const reached = () => (fewest = Math.min(fewest, search.best.strips));
  return {
    cost: new Float64Array(model.levelCount).fill(1),
    rows: [{ weight: Float64Array.from(model.heights), bound: length, sense: "at most" }],
    reached,
    cutoff: reached,
    step: 1,
    roundUp: (bound) => Math.max(0, Math.ceil(bound - 1e-6)),
    lowestOnly: true,
    longest: () => length,
  };
}

/** Rounds a bound up to the next total of strip heights. */
function totalsOf(heights: readonly number[], step: number, longest: number): (bound: number) => number {
  const size = Math.ceil(longest / step) + 1;
  const possible = new Uint8Array(size + 1);
  possible[0] = 1;
  for (const height of heights) {
    for (let total = height / step; total <= size; total++) if (possible[total - height / step]) possible[total] = 1;
  }
  return (bound) => {
    if (bound === -Infinity) return 0;
    let total = Math.max(0, Math.ceil((bound - 1e-6) / step));
    while (total < size && !possible[total]) total++;
    return total * step;
  };
}

/**
 * Improves the best plan for one goal, and returns a bound: no plan costs less. Bounds found on the way only speak of
 * plans below the cutoff, so it is never above the cutoff, except where the known bound is.
 */
function minimize(search: Search, goal: Goal, knownBound: number): number {
  const { work } = search;
  const { root, bound: rootBound, solved } = improve(search, goal, knownBound);
  let bound = rootBound;
  const settled = () => goal.cutoff() <= bound || work.spent;
  if (solved && !settled()) {
    const share = goal.floor ? 1 - REPLAN_SHARE : 1;
    bound = work.within(work.left * share, () => branchOnCounts(search, goal, root, rootBound));
  }
  if (solved && !settled() && goal.floor) {
    replanParts(search, goal, goal.floor, bound, improvePart);
  }
  return Math.max(goal.roundUp(knownBound), Math.min(bound, goal.cutoff()));
}

/** Improves a part of a plan as far as it goes without branching. */
function improvePart(part: Search): void {
  improve(part, lengthGoal(part, ownLength), 0);
}

/** Every shorter plan is better. */
function ownLength(length: number): number {
  return length;
}

/** The root: solves the linear program without branching, and makes whole plans from it. */
function improve(search: Search, goal: Goal, knownBound: number): { root: Master; bound: number; solved: boolean } {
  const { model, pool, work } = search;
  const penalty = 200 * Math.max(...goal.cost) + goal.reached();
  const root = Master.start(pool, goal.cost, model.demand, goal.rows, penalty, work);
  const { ending, bound: dualBound } = search.relax(root, goal);
  const bound = Math.max(goal.roundUp(knownBound), goal.roundUp(dualBound));
  const settled = () => goal.cutoff() <= bound || work.spent;
  const solved = ending === "solved";
  if (!solved || settled()) return { root, bound, solved };
  const worth = dualWorth(search, root);
  if (goal.rows.length === 0) goal.floor = worth;
  roundSolution(search, goal, root, ROUNDINGS, bound);
  if (!settled()) {
    work.within(work.left * REPAIR_SHARE, () => {
      repairPlan(search, goal, worth, bound);
    });
  }
  if (!settled()) dive(search, goal, root, 0);
  return { root, bound, solved };
}
