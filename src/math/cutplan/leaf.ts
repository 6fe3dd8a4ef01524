import { columnOf, Column } from "./model";
import { Search } from "./search";

export type Packing =
  /** found, and offered as a plan */
  | "found"
  /** no way of packing exists */
  | "impossible"
  /** the limits ended the search */
  | "undecided";

/** How far the exact packing goes before it gives up. */
export interface PackingLimits {
  /** strips opened in all */
  readonly nodes: number;
  /** fillings of one strip */
  readonly fillings: number;
}

/**
 * Packs all patches into a given number of strips of each level, by trying everything: the patch that is hardest to
 * place goes first, into each level that can hold it, with every filling of its strip that leaves no room for more.
 *
 * @param counts strips of each level
 * @param worth fillings worth more are tried first
 */
export function packInto(search: Search, counts: Int32Array, worth: Float64Array, limits: PackingLimits): Packing {
  const packer = new Packer(search, counts.slice(), worth, limits);
  if (packer.pack()) {
    search.offer(packer.used.map((column) => ({ column, times: 1 })));
    return "found";
  }
  return packer.gaveUp ? "undecided" : "impossible";
}

class Packer {
  readonly used: Column[] = [];
  gaveUp = false;
  private nodes = 0;
  private readonly remaining: Int32Array;
  /** kinds, hardest to place first */
  private readonly order: readonly number[];
  private readonly narrowest: Float64Array;
  /** states from which there is no way on */
  private readonly deadEnds = new Set<string>();

  constructor(
    private readonly search: Search,
    private readonly counts: Int32Array,
    private readonly worth: Float64Array,
    private readonly limits: PackingLimits,
  ) {
    const { model } = search;
    this.remaining = model.demand.slice();
    this.narrowest = new Float64Array(model.kindCount).fill(Infinity);
    for (const { kind, width } of model.spans) this.narrowest[kind] = Math.min(this.narrowest[kind], width);
    this.order = [...model.demand.keys()].sort(
      (a, b) =>
        model.lowest[b] - model.lowest[a] || model.widthIn(model.lowest[b], b) - model.widthIn(model.lowest[a], a),
    );
  }

  pack(): boolean {
    const { remaining, counts } = this;
    const { model, work } = this.search;
    this.nodes++;
    if (this.isExhausted()) return false;
    work.done += 1500 + model.kindCount * 40;
    const first = this.order.find((kind) => remaining[kind] > 0);
    if (first === undefined) return true;
    if (!this.mayFit()) return false;
    const state = `${counts.join()}|${remaining.join()}`;
    if (this.deadEnds.has(state)) return false;
    for (let level = 0; level < model.levelCount; level++) {
      if (counts[level] === 0 || model.widthIn(level, first) === 0) continue;
      for (const column of this.fillings(level, first)) {
        column.kinds.forEach((kind, i) => (remaining[kind] -= column.counts[i]));
        counts[level]--;
        this.used.push(column);
        if (this.pack()) return true;
        this.used.pop();
        counts[level]++;
        column.kinds.forEach((kind, i) => (remaining[kind] += column.counts[i]));
        if (this.isExhausted()) return false;
      }
    }
    this.deadEnds.add(state);
    return false;
  }

  private isExhausted(): boolean {
    const exhausted = this.nodes > this.limits.nodes || this.search.work.spent;
    if (exhausted) this.gaveUp = true;
    return exhausted;
  }

  /** Whether the widths alone leave hope: from each level up, patches against strips. */
  private mayFit(): boolean {
    const { model } = this.search;
    const need = new Float64Array(model.levelCount);
    this.remaining.forEach((count, kind) => (need[model.lowest[kind]] += count * this.narrowest[kind]));
    let needed = 0;
    let given = 0;
    for (let level = model.levelCount - 1; level >= 0; level--) {
      needed += need[level];
      given += this.counts[level] * model.room;
      if (model.trimming && needed > given) return false;
    }
    return needed <= given;
  }

  /** Every filling of one strip that holds `first` and has no room for another patch, most valuable first. */
  private fillings(level: number, first: number): Column[] {
    const { model, work } = this.search;
    const { remaining, limits, worth } = this;
    const kinds = [
      first,
      ...this.order.filter((kind) => kind !== first && remaining[kind] > 0 && model.widthIn(level, kind) > 0),
    ];
    const counts = new Int32Array(model.kindCount);
    const found: { column: Column; value: number }[] = [];
    let tried = 0;
    const choose = (index: number, room: number, value: number): void => {
      if (index === kinds.length) {
        tried++;
        if (kinds.some((kind) => counts[kind] < remaining[kind] && model.widthIn(level, kind) <= room)) return;
        found.push({ column: columnOf(level, counts), value });
        return;
      }
      const kind = kinds[index];
      const width = model.widthIn(level, kind);
      const least = index === 0 ? 1 : 0;
      for (let count = Math.min(remaining[kind], Math.floor(room / width)); count >= least; count--) {
        counts[kind] = count;
        choose(index + 1, room - count * width, value + count * worth[kind]);
        if (found.length >= limits.fillings || tried > 20 * limits.fillings) {
          this.gaveUp = true;
          break;
        }
      }
      counts[kind] = 0;
    };
    choose(0, model.room, 0);
    work.done += found.length * 400 + tried * 20;
    return found.sort((a, b) => b.value - a.value).map(({ column }) => column);
  }
}
