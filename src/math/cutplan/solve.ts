import { branchOnCounts } from "./branching";
import { dive } from "./dive";
import { startSearch } from "./greedy";
import { Master } from "./master";
import { Model } from "./model";
import { regroupStrips } from "./regroup";
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
const LENGTH_SHARE = 0.95;
/** Steps for fewer trims and fewer kinds of strip, in the end. */
const TIDYING = 1.5e6;
/** Share of the budget for the length itself, where it is only the amount to buy that counts. */
const FIRST_SHARE = 0.2;
/** Plans made from the first fractional solution. */
const ROUNDINGS = 4;
const DIVES = 6;
/** How far chance may lead a dive away from the strips nearest to a whole number. */
const NOISE = 0.5;
/** Of the budget for the length: the share for regrouping strips before branching. */
const REGROUP_SHARE = 0.3;
/** Of what is left then: the share for branching. */
const BRANCH_SHARE = 0.8;

/** Plans strips for all patches: least length first, then fewest strips. */
export function solve(model: Model, { budget, settledFrom, seed = 12345 }: SolveOptions): Solution {
  const work = new Work(budget + TIDYING);
  const search = new Search(model, work, seed);
  startSearch(search);
  const lengthBound = leastLength(search, budget * LENGTH_SHARE, settledFrom);
  const left = Math.min(budget * (1 - LENGTH_SHARE), budget - work.done);
  const stripBound = work.within(left, () => fewestStrips(search));
  work.within(TIDYING, () => {
    tidyPlan(search);
  });
  return { plan: search.best, lengthBound, stripBound, work: work.done };
}

/** Shortens the plan as far as the steps reach, and returns a bound: no plan is shorter. */
function leastLength(search: Search, steps: number, settledFrom: ((length: number) => number) | undefined): number {
  const { work, model } = search;
  const goal = lengthGoal(search, ownLength);
  const start = work.within(steps, () => startGoal(search, goal, areaBound(model)));
  let { bound } = start;
  const refine = (towards: Goal, until: number) => {
    work.within(until - work.done, () => {
      bound = shorten(search, towards, { ...start, bound });
    });
  };
  refine(goal, settledFrom ? steps * FIRST_SHARE : steps);
  if (settledFrom && bound < settledFrom(search.best.length)) refine(lengthGoal(search, settledFrom), steps);
  return bound;
}

/** The same for the number of strips of a plan that is no longer. */
function fewestStrips(search: Search): number {
  const goal = stripGoal(search);
  const start = startGoal(search, goal, widthBound(search.model));
  return start.solved && goal.cutoff() > start.bound && !search.work.spent
    ? Math.max(start.bound, branchOnCounts(search, goal, start.root, start.bound))
    : Math.min(start.bound, goal.cutoff());
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

/** Every shorter plan is better. */
function ownLength(length: number): number {
  return length;
}

/** Where the search for a goal starts from. */
interface Start {
  readonly root: Master;
  /** no plan costs less */
  readonly bound: number;
  readonly solved: boolean;
}

/** Solves the linear program without branching, and makes whole plans from it. */
function startGoal(search: Search, goal: Goal, knownBound: number): Start {
  const { model, pool, work } = search;
  const penalty = 200 * Math.max(...goal.cost) + goal.reached();
  const root = Master.start(pool, goal.cost, model.demand, goal.rows, penalty, work);
  const { ending, bound: dualBound } = search.relax(root, goal);
  const bound = Math.max(goal.roundUp(knownBound), goal.roundUp(dualBound));
  const solved = ending === "solved";
  const settled = () => goal.cutoff() <= bound || work.spent;
  if (!solved || settled()) return { root, bound, solved };
  if (goal.rows.length === 0) goal.floor = dualWorth(search, root);
  roundSolution(search, goal, root, ROUNDINGS, bound);
  for (let i = 0; i < DIVES && !settled(); i++) dive(search, goal, root, i > 0 ? NOISE : 0);
  return { root, bound, solved };
}

/**
 * Shortens the best plan and raises its bound in turns. Bounds found on the way only speak of plans below the cutoff, so
 * they are never above the cutoff, except where the known bound is.
 */
function shorten(search: Search, goal: Goal, { root, bound, solved }: Start): number {
  const { work } = search;
  let proved = bound;
  const worth = (goal.floor ??= dualWorth(search, root));
  const settled = () => !solved || goal.cutoff() <= proved || work.spent;
  const regroup = (share: number) => {
    if (settled()) return;
    work.within(work.left * share, () => {
      regroupStrips(search, goal, worth, proved);
    });
  };
  regroup(REGROUP_SHARE);
  if (!settled()) {
    const branch = () => branchOnCounts(search, goal, root, bound);
    proved = Math.max(proved, work.within(work.left * BRANCH_SHARE, branch));
  }
  regroup(1);
  return Math.max(bound, Math.min(proved, goal.cutoff()));
}
