import { Column, Layer } from "./model";
import { firstFitLayers, ownStripLayers } from "./plain";
import { Search } from "./search";

/** How strips are filled. */
export interface Filling {
  /** what a patch of each kind is worth in a strip of a level */
  readonly valuesAt: (level: number) => Float64Array;
  /** cost of a strip of each level */
  readonly cost: Float64Array;
  /** strips that cost this much in all are of no use */
  readonly limit: number;
  /** opens each strip as low as possible, even where a kind could open a higher one */
  readonly lowestOnly?: boolean;
  /** what a patch of each kind costs at least, whatever the strips */
  readonly atLeast?: Float64Array;
}

/**
 * Fills strips one after the other: the kind that needs the highest strip opens one, the rest of the strip is filled as
 * valuably as possible, and the strip is cut as often as the remaining counts allow.
 *
 * A kind that may turn can open strips of two heights; the height that yields more value per cost is taken.
 *
 * @returns undefined as soon as the limit is out of reach
 */
export function fillStrips(
  search: Search,
  demand: Int32Array,
  { valuesAt, cost, limit, lowestOnly, atLeast }: Filling,
): Layer[] | undefined {
  const { model, pricing } = search;
  const remaining = demand.slice();
  const layers: Layer[] = [];
  let spent = 0;
  if (atLeast) for (let kind = 0; kind < remaining.length; kind++) spent += remaining[kind] * atLeast[kind];
  for (;;) {
    if (spent >= limit) return undefined;
    const kind = hardestKind(search, remaining);
    if (kind === undefined) return layers;
    let best: Column | undefined;
    let bestYield = -Infinity;
    for (const level of lowestOnly ? [model.lowest[kind]] : model.ownLevels[kind]) {
      const values = valuesAt(level);
      const column = pricing.fill(level, values, remaining, kind);
      const worth = column.kinds.reduce((sum, k, i) => sum + values[k] * column.counts[i], 0) / cost[level];
      if (worth > bestYield * (1 + 1e-9)) {
        best = column;
        bestYield = worth;
      }
    }
    const column = best!;
    const times = Math.min(...column.kinds.map((k, i) => Math.floor(remaining[k] / column.counts[i])));
    for (let i = 0; i < column.kinds.length; i++) {
      const count = times * column.counts[i];
      remaining[column.kinds[i]] -= count;
      if (atLeast) spent -= count * atLeast[column.kinds[i]];
    }
    layers.push({ column, times });
    spent += cost[column.level] * times;
    search.work.done += 500;
  }
}

/** The remaining kind that needs the highest strip; among equals the widest. */
export function hardestKind(search: Search, remaining: Int32Array): number | undefined {
  const { model } = search;
  let hardest: number | undefined;
  let level = -1;
  let width = 0;
  for (let kind = 0; kind < model.kindCount; kind++) {
    if (remaining[kind] <= 0) continue;
    const lowest = model.lowest[kind];
    const wide = model.widthIn(lowest, kind);
    if (lowest > level || (lowest === level && wide > width)) {
      hardest = kind;
      level = lowest;
      width = wide;
    }
  }
  return hardest;
}

/** First plans, the plain ones among them, and the strips that the search starts from. */
export function startSearch(search: Search): void {
  const { model } = search;
  const cost = Float64Array.from(model.heights);
  const area = () => model.area;
  const lowestWidth = Float64Array.from(model.area, (_, kind) => model.widthIn(model.lowest[kind], kind));
  const widthHere = (level: number) => Float64Array.from(model.area, (_, kind) => model.widthIn(level, kind));
  search.offer(firstFitLayers(model));
  search.offer(ownStripLayers(model));
  for (const valuesAt of [area, () => lowestWidth, widthHere]) {
    const layers = fillStrips(search, model.demand, { valuesAt, cost, limit: Infinity })!;
    search.offer(layers);
    for (const { column } of layers) search.pool.add(column);
  }
  for (let kind = 0; kind < model.kindCount; kind++) search.pool.add(aloneStrip(search, kind));
}

/** The strip of one kind only that costs least per patch. */
function aloneStrip({ model }: Search, kind: number): Column {
  let best: Column | undefined;
  let least = Infinity;
  for (const level of model.ownLevels[kind]) {
    const count = Math.min(model.demand[kind], Math.floor(model.room / model.widthIn(level, kind)));
    if (model.heights[level] / count < least) {
      least = model.heights[level] / count;
      best = { level, kinds: [kind], counts: [count] };
    }
  }
  return best!;
}
