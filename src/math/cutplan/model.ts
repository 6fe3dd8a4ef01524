import { commonDivisor } from "./work";

/** A kind of patch: equal rectangles. */
export interface Kind {
  readonly width: number;
  readonly height: number;
  readonly count: number;
  readonly mayTurn: boolean;
}

/** A way to lay a patch: its side across the cloth, and its side along it. */
export interface Placement {
  readonly across: number;
  readonly along: number;
}

/** A kind may take `width` of the strip in strips of level `from` up to, but not including, level `until`. */
export interface Span {
  readonly kind: number;
  readonly width: number;
  readonly from: number;
  readonly until: number;
}

/** One strip: its level, and how many of which kinds. Kinds ascend; counts are at least 1. */
export interface Column {
  readonly level: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

/** The same strip, cut several times. */
export interface Layer {
  readonly column: Column;
  readonly times: number;
}

export interface ModelOptions {
  /** the highest strip that can be cut (default: any) */
  readonly highest?: number;
}

/**
 * The cutting problem by strip heights ("levels").
 *
 * Some patch always reaches the full height of a strip, or the strip could be lower. So the only heights worth cutting
 * are the heights (and, turned, the widths) of patches. In a strip of given height a kind is placed the narrowest way
 * that fits, so turning needs no choice of its own: it only makes a kind narrower from some level on.
 */
export class Model {
  readonly kindCount: number;
  readonly demand: Int32Array;
  /** strip heights, ascending */
  readonly heights: readonly number[];
  readonly levelCount: number;
  /** width of the cloth, counted in the common divisor of all widths */
  readonly room: number;
  /** lowest level each kind can be cut from */
  readonly lowest: Int32Array;
  readonly area: Float64Array;
  readonly spans: readonly Span[];
  /** the spans that begin at each level: patches that reach the full height of such a strip */
  readonly opening: readonly (readonly number[])[];
  /** for each kind, the levels whose full height it can reach */
  readonly ownLevels: readonly (readonly number[])[];
  /** common divisor of the strip heights: every length is a multiple of it */
  readonly heightStep: number;
  private readonly widths: Int32Array;
  private readonly ways: readonly Placement[][];

  constructor(
    readonly clothWidth: number,
    readonly kinds: readonly Kind[],
    readonly trimming: boolean,
    { highest = Infinity }: ModelOptions = {},
  ) {
    this.kindCount = kinds.length;
    this.demand = Int32Array.from(kinds, (kind) => kind.count);
    this.area = Float64Array.from(kinds, (kind) => kind.width * kind.height);
    const ways = (this.ways = kinds.map((kind) => placements(kind, clothWidth, highest)));
    this.heights = [...new Set(ways.flat().map((way) => way.along))].sort((a, b) => a - b);
    this.levelCount = this.heights.length;
    this.heightStep = this.heights.reduce(commonDivisor, 0);
    const divisor = ways.flat().reduce((common, way) => commonDivisor(common, way.across), 0);
    this.room = Math.floor(clothWidth / divisor);

    this.widths = new Int32Array(this.levelCount * this.kindCount);
    this.lowest = new Int32Array(this.kindCount).fill(this.levelCount);
    for (let level = this.levelCount - 1; level >= 0; level--) {
      const height = this.heights[level];
      for (let kind = 0; kind < this.kindCount; kind++) {
        const fitting = ways[kind].filter((way) => (trimming ? way.along <= height : way.along === height));
        if (fitting.length === 0) continue;
        this.widths[level * this.kindCount + kind] = Math.min(...fitting.map((way) => way.across)) / divisor;
        this.lowest[kind] = level;
      }
    }
    this.spans = this.findSpans();
    const opening: number[][] = Array.from({ length: this.levelCount }, () => []);
    const ownLevels: number[][] = kinds.map(() => []);
    this.spans.forEach((span, index) => {
      opening[span.from].push(index);
      ownLevels[span.kind].push(span.from);
    });
    this.opening = opening;
    this.ownLevels = ownLevels;
  }

  /** Width that a kind takes in a strip of this level, 0 where it cannot be cut from it. */
  widthIn(level: number, kind: number): number {
    return this.widths[level * this.kindCount + kind];
  }

  /** How a kind lies in a strip of this level. */
  placementIn(level: number, kind: number): Placement {
    const fitting = this.ways[kind].filter(({ along }) => along <= this.heights[level]);
    return fitting.reduce((narrowest, way) => (way.across < narrowest.across ? way : narrowest));
  }

  /**
   * Once a kind can lie narrower, its wider way is of no more use. It need not be taken out of the running, though, where
   * the patches suffice to fill a strip the narrower way: then the wider way is never better. That keeps pricing quick.
   */
  private findSpans(): Span[] {
    const spans: Span[] = [];
    for (let kind = 0; kind < this.kindCount; kind++) {
      const narrowest = this.widthIn(this.levelCount - 1, kind);
      const suffice = (this.demand[kind] + 1) * narrowest > this.room;
      let from = this.lowest[kind];
      while (from < this.levelCount) {
        const width = this.widthIn(from, kind);
        let next = from + 1;
        while (next < this.levelCount && this.widthIn(next, kind) === width) next++;
        const stays = this.trimming && suffice && next < this.levelCount;
        if (width > 0) spans.push({ kind, width, from, until: stays ? this.levelCount : next });
        from = next;
      }
    }
    return spans.sort((a, b) => a.from - b.from);
  }
}

/** The ways a kind can lie on the cloth. */
function placements({ width, height, mayTurn }: Kind, clothWidth: number, highest: number): Placement[] {
  const ways = [{ across: width, along: height }];
  if (mayTurn && width !== height) ways.push({ across: height, along: width });
  return ways.filter(({ across, along }) => across <= clothWidth && along <= highest);
}

/** A column from counts by kind. */
export function columnOf(level: number, counts: ArrayLike<number>): Column {
  const kinds: number[] = [];
  const taken: number[] = [];
  for (let kind = 0; kind < counts.length; kind++) {
    if (counts[kind] > 0) {
      kinds.push(kind);
      taken.push(counts[kind]);
    }
  }
  return { level, kinds, counts: taken };
}

/** The same text for the same column. */
export function columnKey(column: Column): string {
  return `${column.level}:${column.kinds.join()}:${column.counts.join()}`;
}

/** The column in the lowest strip that holds its patches. */
export function lowered(model: Model, column: Column): Column {
  for (let level = 0; level < column.level; level++) {
    let width = 0;
    for (let i = 0; i < column.kinds.length && width <= model.room; i++) {
      const each = model.widthIn(level, column.kinds[i]);
      width += each > 0 ? each * column.counts[i] : Infinity;
    }
    if (width <= model.room) return { level, kinds: column.kinds, counts: column.counts };
  }
  return column;
}

/** The column with no more patches than remain, lowered; undefined when none remain. */
export function clipped(model: Model, column: Column, remaining: Int32Array): Column | undefined {
  if (column.kinds.every((kind, i) => column.counts[i] <= remaining[kind])) return column;
  const kinds: number[] = [];
  const counts: number[] = [];
  for (let i = 0; i < column.kinds.length; i++) {
    const count = Math.min(column.counts[i], remaining[column.kinds[i]]);
    if (count > 0) {
      kinds.push(column.kinds[i]);
      counts.push(count);
    }
  }
  return kinds.length === 0 ? undefined : lowered(model, { level: column.level, kinds, counts });
}
