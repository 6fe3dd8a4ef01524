import { hardestKind } from "./greedy";
import { Column, columnOf, lowered } from "./model";
import { Goal, Search } from "./search";

/** Strips taken apart at once. */
const FEWEST = 6;
const MOST = 12;
/** How often patches are looked at before a group of strips is given up. */
const TRIES = 100;
/** Fillings of one strip that are followed up. */
const BREADTH = 2;
/** Steps of the search for these fillings, for each height. */
const GLANCES = 400;
/** How far chance may prefer a filling to a better one, and the loss that counts as large: shares of an average strip. */
const CHANCE = 0.01;
const LARGE_LOSS = 0.08;
/** Values of patches below this are binary dust. */
const DUST = 1e-9;

/** A filled strip, and its loss: what it costs above the worth of its patches. */
interface Filling {
  readonly column: Column;
  readonly loss: number;
  readonly rank: number;
}

/**
 * Shortens the best plan by taking some of its strips apart and cutting their patches anew, again and again. Every other
 * time a grouping of the same length will do, so that the search does not stay where it is.
 *
 * @param worth what a patch of each kind costs at least in any plan: the dual values of the first linear program
 * @param enough a plan of this length ends the search
 */
export function regroupStrips(search: Search, goal: Goal, worth: Float64Array, enough: number): void {
  const { model, random, work } = search;
  const average = search.best.length / search.best.strips;
  const regrouping = new Regrouping(search, worth, CHANCE * average);
  const lengthOf = (columns: readonly Column[]) => columns.reduce((sum, { level }) => sum + model.heights[level], 0);
  const lossOf = (column: Column) =>
    column.kinds.reduce((loss, kind, i) => loss - worth[kind] * column.counts[i], model.heights[column.level]);
  const patches = new Int32Array(model.kindCount);
  let strips = search.best.layers.flatMap(({ column, times }) => Array<Column>(times).fill(column));
  while (goal.reached() > enough && goal.cutoff() > enough && !work.spent) {
    const size = FEWEST + Math.floor(random() * (MOST - FEWEST + 1));
    const ranked = strips
      .map((column) => ({ column, rank: Math.min(1, lossOf(column) / (LARGE_LOSS * average)) + random() }))
      .sort((a, b) => b.rank - a.rank)
      .map(({ column }) => column);
    work.done += 40 * strips.length;
    const taken = ranked.slice(0, size);
    patches.fill(0);
    for (const { kinds, counts } of taken) kinds.forEach((kind, i) => (patches[kind] += counts[i]));
    const length = lengthOf(taken);
    const grouped = regrouping.group(patches, random() < 0.5 ? length : length - model.heightStep);
    if (!grouped) continue;
    const renewed = grouped.map((column) => lowered(model, column));
    strips = [...ranked.slice(size), ...renewed];
    if (lengthOf(renewed) < length) search.offer(strips.map((column) => ({ column, times: 1 })));
  }
}

/** Cuts a few patches from strips of a given length in all, by following up the best fillings of strip after strip. */
class Regrouping {
  private used: Column[] = [];
  private tries = 0;
  private readonly need: Int32Array;
  /** states that led nowhere, by a number made from the patches left, with the loss that was still allowed */
  private readonly deadEnds = new Map<number, number>();
  private readonly codes: Float64Array;
  private readonly counts: Int32Array;

  constructor(
    private readonly search: Search,
    private readonly worth: Float64Array,
    private readonly chance: number,
  ) {
    this.need = new Int32Array(worth.length);
    this.counts = new Int32Array(worth.length);
    this.codes = worth.map(() => Math.floor(search.random() * 2 ** 40));
  }

  /** Strips for all patches of at most this length in all; undefined when none were found. */
  group(patches: Int32Array, length: number): Column[] | undefined {
    this.need.set(patches);
    this.used = [];
    this.tries = 0;
    this.deadEnds.clear();
    const spare = patches.reduce((left, count, kind) => left - count * this.worth[kind], length);
    return spare > -DUST && this.cutRest(length, spare) ? this.used : undefined;
  }

  /** @param spare the loss that all strips to come may have */
  private cutRest(length: number, spare: number): boolean {
    const { model, work } = this.search;
    const { need, used } = this;
    work.done += 200 + 6 * model.kindCount;
    const hardest = hardestKind(this.search, need);
    if (hardest === undefined) return true;
    if (++this.tries > TRIES || work.spent || model.heights[model.lowest[hardest]] > length) return false;
    const single = this.singleStrip(model.lowest[hardest], length);
    if (single) {
      used.push(single);
      return true;
    }
    let code = 0;
    for (let kind = 0; kind < need.length; kind++) code += need[kind] * this.codes[kind];
    if (spare <= (this.deadEnds.get(code) ?? -Infinity)) return false;
    for (const { column, loss } of this.fillings(hardest, length, spare)) {
      column.kinds.forEach((kind, i) => (need[kind] -= column.counts[i]));
      used.push(column);
      if (this.cutRest(length - model.heights[column.level], spare - loss)) return true;
      used.pop();
      column.kinds.forEach((kind, i) => (need[kind] += column.counts[i]));
      if (this.tries > TRIES) return false;
    }
    this.deadEnds.set(code, spare);
    return false;
  }

  /** The lowest strip that holds all patches left, if one does. */
  private singleStrip(lowest: number, length: number): Column | undefined {
    const { model } = this.search;
    for (let level = lowest; level < model.levelCount && model.heights[level] <= length; level++) {
      let width = 0;
      for (let kind = 0; kind < this.need.length && width <= model.room; kind++) {
        if (this.need[kind] > 0) width += this.need[kind] * (model.widthIn(level, kind) || Infinity);
      }
      if (width <= model.room) return columnOf(level, this.need);
    }
    return undefined;
  }

  /** The best fillings of a strip that holds a patch of kind `hardest`, of every height that comes into question. */
  private fillings(hardest: number, length: number, spare: number): Filling[] {
    const { model } = this.search;
    const found: Filling[] = [];
    for (let level = model.lowest[hardest]; level < model.levelCount && model.heights[level] <= length; level++) {
      const opened = model.opening[level].some((span) => this.need[model.spans[span].kind] > 0);
      if (opened && model.widthIn(level, hardest) > 0) this.fillLevel(level, hardest, spare, found);
    }
    return found;
  }

  private fillLevel(level: number, hardest: number, spare: number, found: Filling[]): void {
    const { model, work, random } = this.search;
    const { need, worth, counts } = this;
    const width = (kind: number) => model.widthIn(level, kind);
    const others: number[] = [];
    for (let kind = 0; kind < need.length; kind++) {
      if (kind !== hardest && need[kind] > 0 && width(kind) > 0) others.push(kind);
    }
    others.sort((a, b) => worth[b] / width(b) - worth[a] / width(a));
    const widths = others.map(width);
    const density = others.map((kind, i) => worth[kind] / widths[i]);
    const height = model.heights[level];
    let glances = 0;
    const add = (value: number) => {
      const loss = height - value;
      const rank = loss + this.chance * random();
      if (rank >= this.worst(found, spare)) return;
      if (found.length === BREADTH) found.pop();
      found.push({ column: columnOf(level, counts), loss, rank });
      found.sort((a, b) => a.rank - b.rank);
    };
    const choose = (index: number, room: number, value: number): void => {
      if (++glances > GLANCES) return;
      // As if patches could be cut through: no filling is worth more.
      let most = value;
      for (let i = index, left = room; i < others.length && left > 0; i++) {
        const filled = Math.min(need[others[i]] * widths[i], left);
        most += filled * density[i];
        left -= filled;
      }
      if (height - most > this.worst(found, spare)) return;
      if (index === others.length) {
        add(value);
        return;
      }
      const kind = others[index];
      const fitting = Math.min(need[kind], Math.floor(room / widths[index]));
      const least = density[index] < DUST ? fitting : 0;
      for (let count = fitting; count >= least; count--) {
        counts[kind] = count;
        choose(index + 1, room - count * widths[index], value + count * worth[kind]);
      }
      counts[kind] = 0;
    };
    const fitting = Math.min(need[hardest], Math.floor(model.room / width(hardest)));
    for (let count = fitting; count >= 1; count--) {
      counts[hardest] = count;
      choose(0, model.room - count * width(hardest), count * worth[hardest]);
    }
    counts[hardest] = 0;
    work.done += 20 * glances + 20 * others.length;
  }

  /** A filling must lose less than this to be of use. */
  private worst(found: readonly Filling[], spare: number): number {
    return found.length < BREADTH ? spare + DUST : Math.min(spare + DUST, found[BREADTH - 1].rank);
  }
}
