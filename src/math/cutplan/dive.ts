import { Master } from "./master";
import { Column, Layer } from "./model";
import { FRACTION } from "./rounded";
import { Goal, Search } from "./search";

/**
 * A plan from a fractional solution, strip by strip: whole times are set aside, the strip nearest to a whole number is
 * rounded up, and the linear program is solved again for what remains, until nothing does. Only strips that cut no more
 * than what remains are allowed, or the program would count on strips of which only a part is of use.
 *
 * @param noise how far chance may prefer another strip than the nearest, 0 for not at all
 */
export function dive(search: Search, goal: Goal, start: Master, noise: number): void {
  const { random, work } = search;
  const master = start.with([]);
  const layers: Layer[] = [];
  let cost = 0;
  const fitting = ({ kinds, counts }: Column) =>
    kinds.reduce((least, kind, i) => Math.min(least, Math.floor(master.needs[kind] / counts[i])), Infinity);
  const cut = (column: Column, times: number) => {
    master.fix(column, times);
    layers.push({ column, times });
    cost += goal.cost[column.level] * times;
  };
  while (!work.spent) {
    let nearest: Column | undefined;
    let best = -Infinity;
    for (const { column, times } of master.solution()) {
      const whole = Math.min(Math.floor(times + FRACTION), fitting(column));
      if (whole > 0) cut(column, whole);
      const fraction = times - whole;
      const rank = fraction + noise * random();
      if (fraction > FRACTION && rank > best) {
        best = rank;
        nearest = column;
      }
    }
    if (nearest && fitting(nearest) > 0) cut(nearest, 1);
    if (master.isAllCut) {
      search.offer(layers);
      return;
    }
    const cutoff = goal.cutoff() - cost;
    if (cutoff <= 0) return;
    master.allowOnlyFitting();
    const { ending } = search.relaxFitting(master, goal, cutoff);
    if (ending !== "solved" || master.value > cutoff - goal.step + FRACTION) return;
  }
}
