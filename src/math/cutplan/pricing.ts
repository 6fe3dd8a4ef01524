import { Column, Model, columnOf } from "./model";
import { Pricer } from "./relaxation";
import { Work } from "./work";

/** Part of the range of levels, halved again and again (a segment tree). */
interface LevelRange {
  readonly from: number;
  readonly until: number;
  /** spans alive on all of this range that no larger range holds */
  readonly spans: number[];
  readonly halves: [LevelRange, LevelRange] | undefined;
}

/** Values below this are nothing: a patch that is worth so little is left out. */
const WORTHLESS = 1e-12;

/**
 * The best strip of every height at once, given what a patch of each kind is worth. This is exact, for every level:
 * bounds rest on it.
 *
 * For one level it is a knapsack with bounded counts: patches into the width of the cloth. The levels share most of
 * their patches, so the tables are built along a tree over the levels: a span of levels on which a kind keeps its width
 * is entered once for each of the few ranges that make it up. A strip must hold a patch of its full height, so the last
 * step adds the patches that open the level, at least one of them.
 *
 * All sums are exact when the values are multiples of a power of two and not too large.
 */
export class Pricing implements Pricer {
  /** best value of a strip of each level, set by `price`; -Infinity where no strip is possible */
  readonly best: Float64Array;
  private readonly root: LevelRange;
  private readonly isChain: boolean;
  private readonly tables: Float64Array[] = [];
  /** the spans entered on the way to the current level, and how many of each were taken for every width */
  private readonly entered: number[] = [];
  private readonly taken: Uint16Array[] = [];
  private readonly openers: number[] = [];
  private lastTaken = 0;
  private beforeTaken = 0;
  private alreadyOpen = false;
  private readonly withOpener: Float64Array;
  private readonly beside: Float64Array;
  private readonly besideTaken: Uint16Array;
  private readonly openerTaken: Uint16Array[] = [];
  private readonly firstOpener: Uint8Array[] = [];
  private readonly counts: Int32Array;

  constructor(
    private readonly model: Model,
    private readonly work: Work,
  ) {
    const size = model.room + 1;
    this.best = new Float64Array(model.levelCount);
    this.withOpener = new Float64Array(size);
    this.beside = new Float64Array(size);
    this.besideTaken = new Uint16Array(size);
    this.counts = new Int32Array(model.kindCount);
    this.root = rangeOf(0, model.levelCount);
    this.isChain = model.spans.every(({ until }) => until === model.levelCount);
    model.spans.forEach((span, index) => {
      enter(this.root, index, span.from + 1, span.until);
    });
  }

  /**
   * Finds the best strip of every level, and returns those worth more than `threshold` of their level.
   *
   * @param values what a patch of each kind is worth, not negative
   * @param demand most patches of each kind in one strip
   */
  price(values: Float64Array, threshold: Float64Array, demand: Int32Array): Column[] {
    const found: Column[] = [];
    const visit = (range: LevelRange, table: Float64Array, depth: number, entered: number): void => {
      let own = table;
      for (const index of range.spans) {
        const span = this.model.spans[index];
        if (values[span.kind] <= WORTHLESS || demand[span.kind] === 0) continue;
        if (own === table) {
          own = this.table(++depth);
          own.set(table);
        }
        this.add(own, this.takenBy(entered), span.width, values[span.kind], demand[span.kind]);
        this.entered[entered++] = index;
      }
      if (range.halves) {
        visit(range.halves[0], own, depth, entered);
        visit(range.halves[1], own, depth, entered);
      } else {
        const level = range.from;
        this.best[level] = this.bestWithOpener(own, level, values, demand);
        if (this.best[level] > threshold[level]) found.push(this.readColumn(level, entered));
      }
    };
    const first = this.table(0).fill(0);
    if (this.isChain) this.priceAlong(first, values, threshold, demand, found);
    else visit(this.root, first, 0, 0);
    return found;
  }

  /** Prices level after level with one table, for no kind ever leaves the running. */
  private priceAlong(
    table: Float64Array,
    values: Float64Array,
    threshold: Float64Array,
    demand: Int32Array,
    found: Column[],
  ): void {
    let entered = 0;
    for (let level = 0; level < this.model.levelCount; level++) {
      this.best[level] = this.bestWithOpener(table, level, values, demand);
      if (this.best[level] > threshold[level]) found.push(this.readColumn(level, entered));
      for (const index of this.model.opening[level]) {
        const span = this.model.spans[index];
        if (values[span.kind] <= WORTHLESS || demand[span.kind] === 0) continue;
        this.add(table, this.takenBy(entered), span.width, values[span.kind], demand[span.kind]);
        this.entered[entered++] = index;
      }
    }
  }

  /**
   * The best filling of one strip of a level, at least one patch of kind `first` included.
   *
   * @param remaining most patches of each kind
   */
  fill(level: number, values: Float64Array, remaining: Int32Array, first: number): Column {
    const { model } = this;
    const table = this.table(0);
    const room = model.room - model.widthIn(level, first);
    let entered = 0;
    table.fill(0);
    for (let kind = 0; kind < model.kindCount; kind++) {
      const width = model.widthIn(level, kind);
      const most = kind === first ? remaining[kind] - 1 : remaining[kind];
      if (width === 0 || width > room || most <= 0 || values[kind] <= 0) continue;
      this.add(table, this.takenBy(entered), width, values[kind], most);
      this.entered[entered++] = kind;
    }
    const counts = this.counts.fill(0);
    let width = room;
    for (let i = entered - 1; i >= 0; i--) {
      const kind = this.entered[i];
      counts[kind] = this.taken[i][width];
      width -= counts[kind] * model.widthIn(level, kind);
    }
    counts[first]++;
    return columnOf(level, counts);
  }

  /**
   * Enters up to `most` patches into a knapsack table, in place; `taken` tells how many were used for each width.
   */
  private add(table: Float64Array, taken: Uint16Array, width: number, value: number, most: number): void {
    const room = this.model.room;
    if (most * width + width > room) {
      // More than fit: each patch may follow on any number before.
      taken.fill(0, 0, Math.min(width, room + 1));
      this.work.done += room;
      for (let at = width; at <= room; at++) {
        const sum = table[at - width] + value;
        if (sum > table[at]) {
          table[at] = sum;
          taken[at] = taken[at - width] + 1;
        } else taken[at] = 0;
      }
      return;
    }
    taken.fill(0);
    // Parcels of 1, 2, 4 ... patches and a last one for the rest make every number up to `most`.
    for (let parcel = 1, left = most; left > 0; left -= parcel, parcel = Math.min(2 * parcel, left)) {
      const across = parcel * width;
      const worth = parcel * value;
      this.work.done += room;
      for (let at = room; at >= across; at--) {
        const sum = table[at - across] + worth;
        if (sum > table[at]) {
          table[at] = sum;
          taken[at] = taken[at - across] + parcel;
        }
      }
    }
  }

  /**
   * Best value of a strip that holds a patch of the level's full height, given the table of all other patches.
   *
   * The last two kinds of such patches are simply tried in all numbers; kinds before them, which are rare, get tables.
   */
  private bestWithOpener(table: Float64Array, level: number, values: Float64Array, demand: Int32Array): number {
    const { openers } = this;
    openers.length = 0;
    for (const index of this.model.opening[level]) if (demand[this.model.spans[index].kind] > 0) openers.push(index);
    if (openers.length === 0) return -Infinity;
    this.withOpener.fill(-Infinity);
    for (let n = 0; n < openers.length - 2; n++) this.addOpener(table, n, values, demand);
    return this.tryLastTwo(table, values, demand);
  }

  private tryLastTwo(table: Float64Array, values: Float64Array, demand: Int32Array): number {
    const { openers, withOpener } = this;
    const { spans, room } = this.model;
    const last = spans[openers[openers.length - 1]];
    const before = openers.length > 1 ? spans[openers[openers.length - 2]] : undefined;
    const lastMost = Math.min(demand[last.kind], Math.floor(room / last.width));
    const beforeMost = before ? Math.min(demand[before.kind], Math.floor(room / before.width)) : 0;
    const lastValue = values[last.kind];
    let best = -Infinity;
    this.work.done += (lastMost + 1) * (beforeMost + 1);
    for (let i = 0; i <= beforeMost; i++) {
      let at = room - i * (before?.width ?? 0);
      let value = i > 0 ? i * values[before!.kind] : 0;
      for (let j = 0; j <= lastMost && at >= 0; j++, at -= last.width, value += lastValue) {
        const opened = withOpener[at] > table[at] || i + j === 0;
        const sum = value + (opened ? withOpener[at] : table[at]);
        if (sum > best) {
          best = sum;
          this.lastTaken = j;
          this.beforeTaken = i;
          this.alreadyOpen = opened;
        }
      }
    }
    return best;
  }

  /** Enters an opening kind into the table of strips that hold an opening patch. */
  private addOpener(table: Float64Array, n: number, values: Float64Array, demand: Int32Array): void {
    const { withOpener, beside, besideTaken } = this;
    const room = this.model.room;
    const { kind, width } = this.model.spans[this.openers[n]];
    const value = values[kind];
    const taken = (this.openerTaken[n] ??= new Uint16Array(room + 1));
    const isFirst = (this.firstOpener[n] ??= new Uint8Array(room + 1));
    // This kind joins strips that an earlier opener has already opened ...
    if (n > 0 && value > WORTHLESS) this.add(withOpener, taken, width, value, demand[kind]);
    else taken.fill(0);
    // ... or opens the strip itself.
    beside.set(table);
    if (demand[kind] > 1 && value > WORTHLESS) this.add(beside, besideTaken, width, value, demand[kind] - 1);
    else besideTaken.fill(0);
    isFirst.fill(0);
    for (let at = room; at >= width; at--) {
      const sum = beside[at - width] + value;
      if (sum > withOpener[at]) {
        withOpener[at] = sum;
        taken[at] = besideTaken[at - width] + 1;
        isFirst[at] = 1;
      }
    }
    this.work.done += room;
  }

  private readColumn(level: number, entered: number): Column {
    const { openers } = this;
    const { spans, room } = this.model;
    const counts = this.counts.fill(0);
    let at = room;
    const take = (index: number, taken: number) => {
      counts[spans[index].kind] += taken;
      at -= taken * spans[index].width;
    };
    take(openers[openers.length - 1], this.lastTaken);
    if (openers.length > 1) take(openers[openers.length - 2], this.beforeTaken);
    for (let n = openers.length - 3, open = this.alreadyOpen; n >= 0 && open; n--) {
      open = this.firstOpener[n][at] === 0;
      take(openers[n], this.openerTaken[n][at]);
    }
    for (let i = entered - 1; i >= 0; i--) take(this.entered[i], this.taken[i][at]);
    return columnOf(level, counts);
  }

  private table(depth: number): Float64Array {
    return (this.tables[depth] ??= new Float64Array(this.model.room + 1));
  }

  private takenBy(step: number): Uint16Array {
    return (this.taken[step] ??= new Uint16Array(this.model.room + 1));
  }
}

function rangeOf(from: number, until: number): LevelRange {
  const middle = (from + until) >> 1;
  const halves: [LevelRange, LevelRange] | undefined =
    until - from > 1 ? [rangeOf(from, middle), rangeOf(middle, until)] : undefined;
  return { from, until, spans: [], halves };
}

/** Enters a span of levels into the largest ranges that it covers. */
function enter(range: LevelRange, index: number, from: number, until: number): void {
  if (from >= until || until <= range.from || range.until <= from) return;
  if (from <= range.from && range.until <= until) range.spans.push(index);
  else
    range.halves?.forEach((half) => {
      enter(half, index, from, until);
    });
}
