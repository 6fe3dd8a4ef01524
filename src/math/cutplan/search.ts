import { Master } from "./master";
import { clipped, Column, columnKey, Layer, lowered, Model } from "./model";
import { Pool } from "./pool";
import { Pricing } from "./pricing";
import { Relaxed, relax } from "./relaxation";
import { randomSource, Work } from "./work";
import { CountRow } from "./rows";

/** A whole plan: every patch once. */
export interface Plan {
  readonly layers: readonly Layer[];
  readonly length: number;
  readonly strips: number;
  readonly trims: number;
}

/** What is to be made least. */
export interface Goal {
  /** cost of a strip of each level */
  readonly cost: Float64Array;
  readonly rows: readonly CountRow[];
  /** cost of the best plan so far */
  readonly reached: () => number;
  /** plans of this cost and above are of no interest: the best plan's own cost, or a cost that would not buy less */
  readonly cutoff: () => number;
  /** every plan's cost is a multiple of this */
  readonly step: number;
  /** the least possible cost that is not below a bound */
  readonly roundUp: (bound: number) => number;
  /** what a patch of each kind costs at least in any plan, once the first linear program has told */
  floor?: Float64Array;
  /** whether strips are best opened as low as possible, for the length is limited */
  readonly lowestOnly: boolean;
  /** the longest plan that is allowed */
  readonly longest: () => number;
}

/** What all parts of the search share: the problem, the budget, the strips found so far and the best plan so far. */
export class Search {
  readonly pricing: Pricing;
  readonly random: () => number;
  readonly pool = new Pool();
  private bestPlan: Plan | undefined;

  constructor(
    readonly model: Model,
    readonly work: Work,
    seed: number,
  ) {
    this.pricing = new Pricing(model, work);
    this.random = randomSource(seed);
  }

  get best(): Plan {
    if (!this.bestPlan) throw new Error("no plan yet");
    return this.bestPlan;
  }

  /**
   * Takes strips that cut every patch at least once, leaves out what is cut too often, and keeps the plan if it is the
   * best so far.
   */
  offer(layers: readonly Layer[]): void {
    const plan = exactPlan(this.model, layers);
    if (!this.bestPlan || isBetter(plan, this.bestPlan)) this.bestPlan = plan;
  }

  /** Solves a master over all strips there are, as far as the goal needs. */
  relax(master: Master, goal: Goal, cutoff = goal.cutoff()): Relaxed {
    const stop = { roundUp: goal.roundUp, cutoff };
    return relax(master, this.pool, this.pricing, this.work, { cost: goal.cost, limit: goal.cutoff() }, stop);
  }

  /** Solves what strips set aside have left of a master, over strips that cut no more patches than remain. */
  relaxFitting(master: Master, goal: Goal, cutoff: number): Relaxed {
    const { model, pricing, pool, work } = this;
    const pricer = {
      best: pricing.best,
      price: (values: Float64Array, threshold: Float64Array, demand: Int32Array) =>
        pricing.price(values, threshold, demand).map((column) => clipped(model, column, demand) ?? column),
    };
    return relax(master, pool, pricer, work, { cost: goal.cost, limit: cutoff }, { roundUp: goal.roundUp, cutoff });
  }

  /** Solves a master for a cost of its own, among the plans of interest. */
  relaxAmong(master: Master, goal: Goal): Relaxed {
    return relax(master, this.pool, this.pricing, this.work, { cost: goal.cost, limit: goal.cutoff() }, undefined);
  }
}

/** Shorter; if equal, fewer strips; if equal, fewer trims; if equal, fewer kinds of strip. */
function isBetter(a: Plan, b: Plan): boolean {
  if (a.length !== b.length) return a.length < b.length;
  if (a.strips !== b.strips) return a.strips < b.strips;
  if (a.trims !== b.trims) return a.trims < b.trims;
  return a.layers.length < b.layers.length;
}

function exactPlan(model: Model, layers: readonly Layer[]): Plan {
  const remaining = model.demand.slice();
  const exact = new Map<string, { column: Column; times: number }>();
  const cut = (column: Column, times: number) => {
    column.kinds.forEach((kind, i) => (remaining[kind] -= times * column.counts[i]));
    const low = lowered(model, column);
    const key = columnKey(low);
    const same = exact.get(key);
    if (same) same.times += times;
    else exact.set(key, { column: low, times });
  };
  for (const { column, times } of layers) {
    const whole = Math.min(times, ...column.kinds.map((kind, i) => Math.floor(remaining[kind] / column.counts[i])));
    if (whole > 0) cut(column, whole);
    for (let left = times - whole; left > 0; left--) {
      const rest = clipped(model, column, remaining);
      if (!rest) break;
      cut(rest, 1);
    }
  }
  if (remaining.some((count) => count > 0)) throw new Error("the plan leaves patches uncut");
  const plan = [...exact.values()];
  return {
    layers: plan,
    length: sum(plan, ({ column, times }) => model.heights[column.level] * times),
    strips: sum(plan, ({ times }) => times),
    trims: sum(plan, ({ column, times }) => trimsOf(model, column) * times),
  };
}

/** Patches of a strip that are lower than the strip. */
export function trimsOf(model: Model, column: Column): number {
  let trims = 0;
  column.kinds.forEach((kind, i) => {
    if (!reachesFullHeight(model, column.level, kind)) trims += column.counts[i];
  });
  return trims;
}

/** Whether a kind, placed the narrowest way, is as high as a strip of this level. */
export function reachesFullHeight(model: Model, level: number, kind: number): boolean {
  return model.ownLevels[kind].includes(level);
}

function sum<T>(items: readonly T[], value: (item: T) => number): number {
  return items.reduce((total, item) => total + value(item), 0);
}
