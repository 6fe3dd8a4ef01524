import { fillStrips } from "./greedy";
import { Column, Model } from "./model";
import { Goal, Search } from "./search";

/** How much worse a repaired plan may get at first, as a share of the cost of an average strip. */
const FIRST_PATIENCE = 0.016;

/** Rounds of repair in all, and without a better plan. */
const ROUNDS = 2000;
const IDLE_ROUNDS = 250;

/**
 * Improves the best plan by taking a few strips apart and cutting their patches anew, again and again. Slightly worse
 * plans are let pass at first, ever fewer later, so that the search does not stop at the first dead end.
 *
 * @param worth what a patch of each kind is worth
 * @param enough a plan of this cost ends the search
 */
export function repairPlan(search: Search, goal: Goal, worth: Float64Array, enough: number): void {
  const { model, random, work } = search;
  const strips: Column[] = search.best.layers.flatMap(({ column, times }) => Array<Column>(times).fill(column));
  const costOf = (columns: readonly Column[]) => columns.reduce((sum, column) => sum + goal.cost[column.level], 0);
  const lengthOf = (columns: readonly Column[]) => columns.reduce((sum, { level }) => sum + model.heights[level], 0);
  let cost = costOf(strips);
  let length = lengthOf(strips);
  let least = cost;
  let sinceBetter = 0;
  const patience = (FIRST_PATIENCE * cost) / Math.max(8, strips.length);
  const remaining = new Int32Array(model.kindCount);
  const values = new Float64Array(model.kindCount);
  for (let round = 0; round < ROUNDS && sinceBetter < IDLE_ROUNDS && goal.reached() > enough && !work.spent; round++) {
    sinceBetter++;
    const picked = pickStrips(model, strips, random);
    const old = picked.map((index) => strips[index]);
    remaining.fill(0);
    for (const { kinds, counts } of old) kinds.forEach((kind, i) => (remaining[kind] += counts[i]));
    const noise = random() * 0.5;
    const source = round % 3 === 2 ? model.area : worth;
    for (let kind = 0; kind < values.length; kind++) values[kind] = source[kind] * (1 + (random() - 0.5) * noise);

    const oldCost = costOf(old);
    const allowed = oldCost - Math.log(random() + 1e-9) * patience * (1 - round / ROUNDS);
    const layers = fillStrips(search, remaining, {
      valuesAt: () => values,
      cost: goal.cost,
      limit: allowed + 1e-6,
      lowestOnly: goal.lowestOnly,
      atLeast: goal.floor,
    });
    if (!layers) continue;
    const renewed = layers.flatMap(({ column, times }) => Array<Column>(times).fill(column));
    const newCost = costOf(renewed);
    const newLength = length - lengthOf(old) + lengthOf(renewed);
    if (newLength > goal.longest() || (newCost === oldCost && newLength > length)) continue;

    picked.sort((a, b) => b - a);
    for (const index of picked) {
      strips[index] = strips[strips.length - 1];
      strips.pop();
    }
    strips.push(...renewed);
    cost += newCost - oldCost;
    length = newLength;
    if (cost < least) {
      least = cost;
      sinceBetter = 0;
      if (cost < goal.reached()) search.offer(strips.map((column) => ({ column, times: 1 })));
    }
  }
}

/** Two to five strips, wasteful ones rather than others, mostly of about the same height. */
function pickStrips(model: Model, strips: readonly Column[], random: () => number): number[] {
  const count = Math.min(strips.length, 2 + Math.floor(random() * 4));
  /** The most wasteful of three. */
  const wasteful = () => {
    const three = [0, 1, 2].map(() => Math.floor(random() * strips.length));
    return three.reduce((a, b) => (wasteOf(model, strips[b]) > wasteOf(model, strips[a]) ? b : a));
  };
  const first = wasteful();
  const picked = [first];
  for (let attempt = 0; attempt < 50 && picked.length < count; attempt++) {
    const other = wasteful();
    const near = Math.abs(strips[other].level - strips[first].level) <= 2;
    if (!picked.includes(other) && (near || random() > 0.5)) picked.push(other);
  }
  return picked;
}

/** Area of a strip that becomes no patch. */
function wasteOf(model: Model, { level, kinds, counts }: Column): number {
  let area = model.heights[level] * model.clothWidth;
  for (let i = 0; i < kinds.length; i++) area -= model.area[kinds[i]] * counts[i];
  return area;
}
