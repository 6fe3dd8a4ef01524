import { fillStrips } from "./greedy";
import { Master } from "./master";
import { Column, Layer } from "./model";
import { dualWorth, FRACTION } from "./rounded";
import { Goal, Search } from "./search";

/**
 * A plan from a fractional solution, strip by strip: whole times are set aside, the strip nearest to a whole number is
 * rounded up, and the linear program is solved again for what remains, until nothing does.
 *
 * @param noise how far chance may prefer another strip than the nearest, 0 for not at all
 */
export function dive(search: Search, goal: Goal, start: Master, noise: number): void {
  const { model, random, work } = search;
  const master = start.with([]);
  const layers: Layer[] = [];
  const remaining = model.demand.slice();
  let cost = 0;
  const cut = (column: Column, times: number) => {
    master.fix(column, times);
    layers.push({ column, times });
    cost += goal.cost[column.level] * times;
    column.kinds.forEach((kind, i) => (remaining[kind] = Math.max(0, remaining[kind] - times * column.counts[i])));
  };
  while (!work.spent) {
    let nearest: Column | undefined;
    let best = -Infinity;
    for (const { column, times } of master.solution()) {
      const whole = Math.floor(times + FRACTION);
      if (whole > 0) cut(column, whole);
      const fraction = times - whole;
      const rank = fraction + noise * random();
      if (fraction > FRACTION && rank > best) {
        best = rank;
        nearest = column;
      }
    }
    if (nearest) cut(nearest, 1);
    if (remaining.every((count) => count === 0)) {
      search.offer(layers);
      return;
    }
    const cutoff = goal.cutoff() - cost;
    if (cutoff <= 0) return;
    const { ending } = search.relax(master, goal, cutoff);
    if (ending !== "solved" || master.value > cutoff - goal.step + FRACTION) break;
  }
  const values = dualWorth(search, master);
  const rest = fillStrips(search, remaining, {
    valuesAt: () => values,
    cost: goal.cost,
    limit: goal.reached() - goal.step - cost + FRACTION,
    lowestOnly: goal.lowestOnly,
    atLeast: goal.floor,
  });
  if (rest) search.offer([...layers, ...rest]);
}
