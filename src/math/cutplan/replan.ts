import { Column, Layer, Model } from "./model";
import { Goal, Search } from "./search";
import { Work } from "./work";

/** Strips taken out of the plan at once, and the steps spent on planning their patches anew. */
const STRIPS = 18;
const STEPS = 2e6;

/**
 * Improves the best plan by planning a part of it anew: the strips that waste most, and some others by chance, become a
 * small list of their own, which is solved like a whole one.
 *
 * @param improve improves the best plan of a small search, within its budget
 * @param enough a plan of this length ends the search
 */
export function replanParts(
  search: Search,
  goal: Goal,
  worth: Float64Array,
  enough: number,
  improve: (part: Search) => void,
): void {
  const { work } = search;
  while (!work.spent && goal.reached() > enough) {
    const { chosen, others } = chooseStrips(search, worth);
    const part = new PartOfPlan(search, chosen);
    improve(part.search);
    work.done += part.search.work.done;
    if (part.search.best.length < part.length) search.offer([...others, ...part.layers()]);
  }
}

/** The most wasteful strips, with a good deal of chance. */
function chooseStrips({ model, best, random }: Search, worth: Float64Array): { chosen: Layer[]; others: Layer[] } {
  const strips = best.layers.flatMap(({ column, times }) => Array<Column>(times).fill(column));
  const ranked = strips.map((column) => {
    let waste = model.heights[column.level];
    for (let i = 0; i < column.kinds.length; i++) waste -= worth[column.kinds[i]] * column.counts[i];
    return { layer: { column, times: 1 }, rank: 3 * Math.min(3, waste) + 3 * random() };
  });
  ranked.sort((a, b) => b.rank - a.rank);
  const layers = ranked.map(({ layer }) => layer);
  return { chosen: layers.slice(0, STRIPS), others: layers.slice(STRIPS) };
}

/** Some strips of a plan as a search of their own. */
class PartOfPlan {
  readonly search: Search;
  /** length of the part before it is planned anew */
  readonly length: number;
  /** kinds of the whole that the part holds */
  private readonly kinds: readonly number[];

  constructor(
    private readonly whole: Search,
    layers: readonly Layer[],
  ) {
    const { model, work, random, pool } = whole;
    const counts = new Int32Array(model.kindCount);
    for (const { column, times } of layers) {
      column.kinds.forEach((kind, i) => (counts[kind] += times * column.counts[i]));
    }
    this.kinds = [...counts.keys()].filter((kind) => counts[kind] > 0);
    const kinds = this.kinds.map((kind) => ({ ...model.kinds[kind], count: counts[kind] }));
    const part = new Model(model.clothWidth, kinds, model.trimming, { loose: true });
    this.search = new Search(part, new Work(Math.min(STEPS, work.left)), Math.floor(random() * 2 ** 31));
    this.search.offer(layers.map(({ column, times }) => ({ column: this.toPart(column), times })));
    this.length = this.search.best.length;
    for (const { column } of this.search.best.layers) this.search.pool.add(column);
    for (const column of pool.columns) {
      if (column.kinds.every((kind, i) => column.counts[i] <= counts[kind])) this.search.pool.add(this.toPart(column));
    }
    work.done += 10 * pool.columns.length;
  }

  /** The part's best plan in the words of the whole. */
  layers(): Layer[] {
    const heights = this.search.model.heights;
    return this.search.best.layers.map(({ column, times }) => {
      const level = this.whole.model.heights.indexOf(heights[column.level]);
      const kinds = column.kinds.map((kind) => this.kinds[kind]);
      return { column: { level, kinds, counts: column.counts }, times };
    });
  }

  private toPart({ level, kinds, counts }: Column): Column {
    const height = this.whole.model.heights[level];
    return {
      level: this.search.model.heights.indexOf(height),
      kinds: kinds.map((kind) => this.kinds.indexOf(kind)),
      counts,
    };
  }
}
