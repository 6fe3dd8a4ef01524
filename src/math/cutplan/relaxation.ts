import { Master } from "./master";
import { Pool } from "./pool";
import { Column } from "./model";
import { Work } from "./work";
import { reducedLevelCosts } from "./rows";

/** Columns must save at least this much to be worth adding. */
const WORTH_ADDING = 1e-7;
/** A shortfall above this means that the solution does not cut everything. */
const SHORT = 1e-6;
/** The penalty for patches not cut is raised until it is this high; then the program counts as stuck. */
const HIGHEST_PENALTY = 2e7;
/** Bits of a number that hold whole values exactly, one kept in reserve. */
const EXACT_BITS = 52;
/** Dual values that need a coarser grain than this give no bound. */
const COARSEST_GRAIN = 1 / 64;

/** Finds the best columns for given values; exactly, for bounds rest on it. */
export interface Pricer {
  /** best value of a column of each level, after `price` */
  readonly best: Float64Array;
  /** the best column of each level that is worth more than the level's threshold */
  price(values: Float64Array, threshold: Float64Array, demand: Int32Array): Column[];
}

/** What is known about the plans of interest: the strips of such a plan cost at most `limit` in all. */
export interface Reach {
  /** per level, above zero */
  readonly cost: ArrayLike<number>;
  readonly limit: number;
}

export type Ending =
  /** no column improves the solution, or the bound has reached the solution */
  | "solved"
  /** the bound has reached the cutoff */
  | "cut off"
  | "out of budget"
  /** patches stay uncut and no column helps, yet the bound does not show that no solution exists */
  | "stuck";

export interface Relaxed {
  readonly ending: Ending;
  /** no plan of interest costs less; -Infinity when nothing is known */
  readonly bound: number;
}

/** When to stop: `roundUp` gives the least cost of a plan that is not below a bound, `cutoff` is a cost of no interest. */
export interface Stop {
  readonly roundUp: (bound: number) => number;
  readonly cutoff: number;
}

/**
 * Column generation: solves the linear program over all strips there are, by adding those that the dual values call for.
 *
 * The bound never rests on the linear program's own result, which carries the dust of many pivots. It is computed afresh
 * from the dual values alone, rounded down to multiples of a power of two so that every sum is exact: for any values of
 * the patches and any prices of the count rows, no plan costs less than
 *   sum of value × demand + sum of price × bound of its row - what the best strips earn above their cost.
 */
export function relax(
  master: Master,
  pool: Pool,
  pricing: Pricer,
  work: Work,
  reach: Reach,
  stop: Stop | undefined,
): Relaxed {
  const dual = new DualBound(master, pricing, reach);
  let bound = -Infinity;
  for (;;) {
    if (!master.optimize()) return { ending: "out of budget", bound };
    const { found, value } = dual.evaluate();
    bound = Math.max(bound, value);
    if (stop && stop.roundUp(bound) >= stop.cutoff) return { ending: "cut off", bound };
    let added = 0;
    for (const column of found) if (pool.add(column)) added++;
    const { shortfall } = master;
    if (added === 0) {
      if (shortfall <= SHORT) return { ending: "solved", bound };
      if (master.penalty >= HIGHEST_PENALTY) return { ending: "stuck", bound };
      master.penalty *= 30;
    } else if (stop && shortfall < WORTH_ADDING && stop.roundUp(bound) >= stop.roundUp(master.value - 1e-4)) {
      return { ending: "solved", bound };
    }
    if (work.spent) return { ending: "out of budget", bound };
  }
}

/** Prices the dual values of a master and turns them into a bound that holds for every plan of interest. */
class DualBound {
  private readonly values: Float64Array;
  private readonly prices: Float64Array;
  private readonly threshold: Float64Array;
  private readonly demand: Int32Array;

  constructor(
    private readonly master: Master,
    private readonly pricing: Pricer,
    private readonly reach: Reach,
  ) {
    this.values = new Float64Array(master.kindCount);
    this.prices = new Float64Array(master.rowCount);
    this.threshold = new Float64Array(master.cost.length);
    this.demand = Int32Array.from(this.values, (_, kind) => Math.max(0, master.needs[kind]));
  }

  evaluate() {
    const { master, values, prices, threshold, reach } = this;
    const { kindCount, countRows, duals, needs } = master;
    const grain = this.grain();
    for (let row = 0; row < prices.length; row++) {
      const onGrain = Math.floor(duals[row] / grain) * grain;
      const atMost = row >= kindCount && countRows[row - kindCount].sense === "at most";
      // A price of the wrong sign would not give a bound.
      prices[row] = atMost ? Math.min(0, onGrain) : Math.max(0, onGrain);
    }
    values.set(prices.subarray(0, kindCount));
    const costs = reducedLevelCosts(master.cost, countRows, prices, kindCount);
    for (let level = 0; level < threshold.length; level++) threshold[level] = costs[level] + WORTH_ADDING;
    const found = this.pricing.price(values, threshold, this.demand);

    let value = 0;
    for (let row = 0; row < prices.length; row++) value += prices[row] * needs[row];
    // Strips earn at most this above their cost, per cost of reach.
    let earning = 0;
    for (let level = 0; level < costs.length; level++) {
      earning = Math.max(earning, (this.pricing.best[level] - costs[level]) / reach.cost[level]);
    }
    if (earning > 0) value -= earning * (1 + 1e-12) * reach.limit;
    return { found, value: grain > COARSEST_GRAIN ? -Infinity : value };
  }

  /** The finest power of two of which all sums stay exact. */
  private grain(): number {
    const { needs, duals } = this.master;
    let size = 1;
    for (let row = 0; row < needs.length; row++) size += Math.abs(duals[row]) * (1 + Math.abs(needs[row]));
    return 2 ** -Math.min(24, EXACT_BITS - Math.ceil(Math.log2(size)));
  }
}
