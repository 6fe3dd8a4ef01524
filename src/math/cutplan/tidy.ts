import { fillStrips } from "./greedy";
import { Column, columnKey, Model } from "./model";
import { Search, trimsOf } from "./search";

/** Strips taken apart at once, at most. */
const MOST_PICKED = 16;

/**
 * Makes the best plan easier to cut, at the same length and with no more strips: fewer patches to trim, then fewer kinds
 * of strip. A few strips at a time are taken apart and cut anew, patches of the strip's own height first.
 */
export function tidyPlan(search: Search): void {
  const { model, random, work } = search;
  const strips = search.best.layers.flatMap(({ column, times }) => Array<Column>(times).fill(column));
  const times = new Map<string, number>();
  for (const column of strips) times.set(columnKey(column), (times.get(columnKey(column)) ?? 0) + 1);
  const cost = Float64Array.from(model.heights);
  const remaining = new Int32Array(model.kindCount);
  while (!work.spent && strips.length > 1) {
    const picked = pickStrips(strips, random);
    const old = picked.map((index) => strips[index]);
    remaining.fill(0);
    for (const { kinds, counts } of old) kinds.forEach((kind, i) => (remaining[kind] += counts[i]));
    const chance = model.area.map((area) => area * (0.7 + 0.6 * random()));
    const valuesAt = (level: number) =>
      chance.map((value, kind) => (model.ownLevels[kind].includes(level) ? 2 * value : value));
    const length = old.reduce((sum, { level }) => sum + model.heights[level], 0);
    work.done += 1000 + 20 * strips.length;
    const layers = fillStrips(search, remaining, { valuesAt, cost, limit: length + 1 });
    const renewed = layers?.flatMap((layer) => Array<Column>(layer.times).fill(layer.column));
    if (!renewed || renewed.length > old.length) continue;
    const trims = trimsIn(model, renewed) - trimsIn(model, old);
    if (trims > 0) continue;
    const kinds = addAll(times, old, -1) + addAll(times, renewed, 1);
    if (trims === 0 && kinds > 0) {
      addAll(times, renewed, -1);
      addAll(times, old, 1);
      continue;
    }
    picked.sort((a, b) => b - a).forEach((index) => strips.splice(index, 1));
    strips.push(...renewed);
  }
  search.offer(strips.map((column) => ({ column, times: 1 })));
}

/** Two to four strips; every other time with all strips of the same kinds, for these may become one kind. */
function pickStrips(strips: readonly Column[], random: () => number): number[] {
  const count = Math.min(strips.length, 2 + Math.floor(random() * 3));
  const picked = new Set<number>();
  while (picked.size < count) picked.add(Math.floor(random() * strips.length));
  if (random() < 0.5) {
    const kinds = new Set([...picked].map((index) => columnKey(strips[index])));
    strips.forEach((column, index) => {
      if (picked.size < MOST_PICKED && kinds.has(columnKey(column))) picked.add(index);
    });
  }
  return [...picked];
}

function trimsIn(model: Model, columns: readonly Column[]): number {
  return columns.reduce((sum, column) => sum + trimsOf(model, column), 0);
}

/** Counts strips in (1) or out (-1), and returns how many kinds of strip there are more. */
function addAll(times: Map<string, number>, columns: readonly Column[], sign: 1 | -1): number {
  let kinds = 0;
  for (const column of columns) {
    const key = columnKey(column);
    const before = times.get(key) ?? 0;
    times.set(key, before + sign);
    if (before === 0) kinds++;
    else if (before + sign === 0) kinds--;
  }
  return kinds;
}
