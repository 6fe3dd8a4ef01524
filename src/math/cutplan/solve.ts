import { branchOnCounts } from "./branching";
import { dive } from "./dive";
import { startSearch } from "./greedy";
import { Master } from "./master";
import { Model } from "./model";
import { repairPlan } from "./repair";
import { dualWorth, roundSolution } from "./rounded";
import { Goal, Plan, Search } from "./search";
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
  /** from the length of a plan, the least length that would still be no better (default: the length itself) */
  readonly settledFrom?: (length: number) => number;
  readonly seed?: number;
}

/** Plans strips for all patches: least length first, then fewest strips. */
export function solve(
  model: Model,
  { budget, settledFrom = (length) => length, seed = 12345 }: SolveOptions,
): Solution {
  const work = new Work(budget);
  const search = new Search(model, work, seed);
  startSearch(search);
  const lengthBound = work.within(budget * 0.8, () =>
    minimize(search, lengthGoal(search, settledFrom), areaBound(model)),
  );
  const stripBound = minimize(search, stripGoal(search), 1);
  return { plan: search.best, lengthBound, stripBound, work: work.done };
}

/** Length of cloth that the patches would cover without any waste, rounded up. */
function areaBound(model: Model): number {
  let area = 0;
  for (let kind = 0; kind < model.kindCount; kind++) area += model.area[kind] * model.demand[kind];
  return Math.ceil(area / model.clothWidth);
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
    longest: () => Infinity,
  };
}

function stripGoal(search: Search): Goal {
  const { model } = search;
  const { length } = search.best;
  return {
    cost: new Float64Array(model.levelCount).fill(1),
    rows: [{ weight: Float64Array.from(model.heights), bound: length, sense: "at most" }],
    reached: () => search.best.strips,
    cutoff: () => search.best.strips,
    step: 1,
    roundUp: (bound) => Math.max(0, Math.ceil(bound - 1e-6)),
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

/** Improves the best plan for one goal, and returns a bound: no plan costs less (up to the cutoff). */
function minimize(search: Search, goal: Goal, knownBound: number): number {
  const { model, pool, work } = search;
  const penalty = 200 * Math.max(...goal.cost) + goal.reached();
  const root = Master.start(pool, goal.cost, model.demand, goal.rows, penalty, work);
  const { ending, bound: dualBound } = search.relax(root, goal, Infinity);
  const bound = Math.max(goal.roundUp(knownBound), goal.roundUp(dualBound));
  const settled = () => goal.cutoff() <= bound || work.spent;
  if (ending !== "solved" || settled()) return Math.min(bound, goal.cutoff());
  roundSolution(search, goal, root, 12, bound);
  if (!settled()) {
    work.within(work.left * 0.08, () => {
      repairPlan(search, goal, dualWorth(search, root), bound, 2000, 250);
    });
  }
  if (!settled()) dive(search, goal, root, 0);
  if (settled()) return Math.min(bound, goal.cutoff());
  return branchOnCounts(search, goal, root, bound);
}
