import { fillStrips } from "./greedy";
import { Master } from "./master";
import { Layer } from "./model";
import { Goal, Search } from "./search";

/** Fractions below this are binary dust. */
export const FRACTION = 1e-6;

/**
 * Plans from a fractional solution: whole times are kept, some of the fractional strips are rounded up (the first try
 * none, then the larger halves, then at random), and the rest is filled greedily, worth what the dual values say.
 *
 * @param enough a plan of this cost ends the tries
 */
export function roundSolution(search: Search, goal: Goal, master: Master, tries: number, enough: number): void {
  const { model, random, work } = search;
  const solution = master.solution();
  const worth = dualWorth(search, master);
  for (let attempt = 0; attempt < tries; attempt++) {
    const remaining = model.demand.slice();
    const layers: Layer[] = [];
    let cost = 0;
    const cut = (column: Layer["column"], times: number) => {
      layers.push({ column, times });
      cost += goal.cost[column.level] * times;
      column.kinds.forEach((kind, i) => (remaining[kind] -= times * column.counts[i]));
    };
    const fractions: { column: Layer["column"]; rank: number }[] = [];
    for (const { column, times } of solution) {
      const whole = Math.floor(times + FRACTION);
      if (whole > 0) cut(column, whole);
      const fraction = times - whole;
      if (fraction > FRACTION) fractions.push({ column, rank: fraction + (attempt > 1 ? (random() - 0.5) * 0.8 : 0) });
    }
    if (attempt > 0) {
      const least = attempt === 1 ? 0.5 : random();
      fractions.sort((a, b) => b.rank - a.rank);
      for (const { column, rank } of fractions) {
        if (rank < least) break;
        if (column.kinds.every((kind, i) => column.counts[i] <= remaining[kind])) cut(column, 1);
      }
    }
    for (let kind = 0; kind < remaining.length; kind++) remaining[kind] = Math.max(0, remaining[kind]);
    const values = worth.map((value) => value * (attempt > 2 ? 1 + (random() - 0.5) * 0.3 : 1));
    const rest = fillStrips(search, remaining, {
      valuesAt: () => values,
      cost: goal.cost,
      limit: goal.reached() - goal.step - cost + FRACTION,
      lowestOnly: goal.lowestOnly,
      atLeast: goal.floor,
    });
    if (rest) search.offer([...layers, ...rest]);
    if (goal.reached() <= enough || work.spent) return;
  }
}

/** What the dual values say a patch of each kind is worth; a trifle where they say nothing, so that gaps are filled. */
export function dualWorth({ model }: Search, master: Master): Float64Array {
  return model.area.map((area, kind) => (master.duals[kind] > 1e-9 ? master.duals[kind] : 1e-9 * area));
}
