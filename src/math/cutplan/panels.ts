import { Problem } from "../problem";
import { Master } from "./master";
import { clipped, Column, columnKey, Layer, Model } from "./model";
import { checkPatches, nameOf, Part } from "./parts";
import { stripOf } from "./plan";
import { Pool } from "./pool";
import { Pricing } from "./pricing";
import { Pricer, relax } from "./relaxation";
import { Cloth, CutList, Strip } from "./types";
import { randomSource, Work } from "./work";

/** A panel of cloth, such as a fat quarter: across the cloth, and along it. */
export interface PanelSize {
  readonly width: number;
  readonly height: number;
}

/** Panels that are cut alike. */
export interface Panel {
  readonly times: number;
  /**
   * "across": strips run across the panel, as in a length of cloth. "along": they run along it; then `across` of a piece
   * is measured along its strip as well, and `turned` still means: against the grain of its row.
   */
  readonly way: "across" | "along";
  /** highest first */
  readonly strips: readonly Strip[];
}

export interface PanelPlan {
  readonly panels: readonly Panel[];
  readonly panelCount: number;
  /** no plan takes fewer panels */
  readonly panelBound: number;
  readonly proved: boolean;
}

const BUDGET = 30e6;

/**
 * The fewest panels of one size for a cutting list. Each panel is cut in strips, across or along, and the strips in
 * patches; a patch may be turned unless its row forbids it, and trimmed if the cloth allows it.
 *
 * @throws Problem "bad input" for rows that make no sense, "no answer" for a patch that no panel holds; both name the row
 */
export function planPanels(list: CutList, size: PanelSize, options: Omit<Cloth, "width"> = {}): PanelPlan {
  checkPatches(list);
  const parts = list.map((patch, row): Part => {
    checkHolds(list, row, size, options);
    const { label, width, height, count, mayTurn } = patch;
    return { row, label, width, height, count, mayTurn, turned: false };
  });
  return new PanelSearch(parts, size, options.trimming ?? true, new Work(options.budget ?? BUDGET)).run();
}

function checkHolds(list: CutList, row: number, size: PanelSize, { show = String }: Omit<Cloth, "width">): void {
  const { width, height, mayTurn } = list[row];
  const holds = (across: number, along: number) => across <= size.width && along <= size.height;
  if (holds(width, height) || (mayTurn && holds(height, width))) return;
  throw new Problem(
    "no answer",
    `${nameOf(list[row], row)}: ${show(width)} by ${show(height)} does not fit a panel of ` +
      `${show(size.width)} by ${show(size.height)}`,
  );
}

/** One way of cutting panels: the cloth seen so that strips run across it. */
interface Way {
  readonly name: Panel["way"];
  readonly model: Model;
  readonly parts: readonly Part[];
  readonly pricing: Pricing;
  /** how much strip height a panel holds */
  readonly depth: number;
}

/** A panel's strips, each of a column of its way's model. */
interface Cutting {
  readonly way: number;
  readonly strips: readonly Column[];
}

class PanelSearch implements Pricer {
  /** best value of a panel, by way */
  readonly best = new Float64Array(2);
  private readonly ways: readonly Way[];
  private readonly pool = new Pool();
  /** how the panels of the pool are cut, by column key */
  private readonly cuttings = new Map<string, Cutting>();
  private readonly demand: Int32Array;
  private bestPlan: { cutting: Cutting; times: number }[] | undefined;

  constructor(
    parts: readonly Part[],
    size: PanelSize,
    trimming: boolean,
    private readonly work: Work,
  ) {
    this.demand = Int32Array.from(parts, ({ count }) => count);
    const other = parts.map((part) => ({ ...part, width: part.height, height: part.width }));
    const wayOf = (name: Panel["way"], kinds: readonly Part[], width: number, depth: number): Way => {
      const model = new Model(width, kinds, trimming, { highest: depth });
      return { name, model, parts: kinds, pricing: new Pricing(model, work), depth };
    };
    this.ways = [wayOf("across", parts, size.width, size.height), wayOf("along", other, size.height, size.width)];
  }

  run(): PanelPlan {
    const { work, demand } = this;
    const area = this.ways[0].model.area;
    this.cutOneByOne([], area);
    const cost = new Float64Array(2).fill(1);
    for (const { cutting } of this.bestPlan!) this.pool.add(this.panelColumn(cutting));
    const master = Master.start(this.pool, cost, demand, [], 200 + this.count, work);
    const stop = { roundUp: (bound: number) => Math.max(1, Math.ceil(bound - 1e-6)), cutoff: this.count };
    const relaxed = work.within(work.left / 2, () =>
      relax(master, this.pool, this, work, { cost, limit: this.count }, stop),
    );
    const bound = Math.min(this.count, Math.max(this.areaBound(), stop.roundUp(relaxed.bound)));
    this.improve(master, bound);
    return { panels: this.describe(), panelCount: this.count, panelBound: bound, proved: this.count === bound };
  }

  /** The most valuable panel of each way, for the linear program. */
  price(values: Float64Array, threshold: Float64Array, demand: Int32Array): Column[] {
    return this.ways.flatMap((_, way) => {
      const { strips, value } = this.fillPanel(way, this.ways[way].depth, values, demand);
      this.best[way] = value;
      return value > threshold[way] ? [this.panelColumn({ way, strips })] : [];
    });
  }

  private get count(): number {
    return this.bestPlan!.reduce((sum, { times }) => sum + times, 0);
  }

  private areaBound(): number {
    const { model, depth } = this.ways[0];
    const area = this.demand.reduce((sum, count, kind) => sum + count * model.area[kind], 0);
    return Math.ceil(area / (model.clothWidth * depth));
  }

  /** Tries plans from the fractional solution and from its values, until one meets the bound or the budget ends. */
  private improve(master: Master, bound: number): void {
    const random = randomSource(12345);
    const { area } = this.ways[0].model;
    const worth = area.map((size, kind) => Math.max(master.duals[kind], 1e-9 * size));
    const whole = master.solution().flatMap(({ column, times }) => {
      const cutting = this.cuttings.get(columnKey(column))!;
      return times >= 1 - 1e-6 ? [{ cutting, times: Math.floor(times + 1e-6) }] : [];
    });
    for (let attempt = 0; attempt < 40 && this.count > bound && !this.work.spent; attempt++) {
      const noise = attempt < 2 ? 0 : 0.4;
      const values = worth.map((value) => value * (1 + noise * (random() - 0.5)));
      this.cutOneByOne(attempt % 2 === 0 ? [] : whole, values);
    }
  }

  /** A plan: some panels given, then the most valuable panel for what remains, again and again. */
  private cutOneByOne(given: readonly { cutting: Cutting; times: number }[], values: Float64Array): void {
    const remaining = this.demand.slice();
    const plan: { cutting: Cutting; times: number }[] = [];
    let count = 0;
    const cut = (cutting: Cutting, most: number) => {
      const counts = countsOf(cutting, remaining.length);
      const times = counts.reduce(
        (fit, n, kind) => (n > 0 ? Math.min(fit, Math.floor(remaining[kind] / n)) : fit),
        most,
      );
      if (times === 0) return;
      for (let kind = 0; kind < counts.length; kind++) remaining[kind] -= times * counts[kind];
      plan.push({ cutting, times });
      count += times;
    };
    for (const { cutting, times } of given) cut(cutting, times);
    while (remaining.some((left) => left > 0)) {
      if (this.bestPlan && (count + 1 >= this.count || this.work.spent)) return;
      const choices = this.ways.map((_, way) => this.fillPanelExactly(way, values, remaining));
      cut(choices[0].value >= choices[1].value ? choices[0].cutting : choices[1].cutting, Infinity);
    }
    if (!this.bestPlan || count < this.count) this.bestPlan = plan;
  }

  /** The most valuable panel if each strip on its own keeps to the demand: strips of a bounded height in all. */
  private fillPanel(
    way: number,
    depth: number,
    values: Float64Array,
    demand: Int32Array,
  ): { strips: Column[]; value: number } {
    const { model, pricing } = this.ways[way];
    const anyStrip = new Float64Array(model.levelCount).fill(0);
    const columns = pricing.price(values, anyStrip, demand);
    const value = new Float64Array(depth + 1);
    const last: (Column | undefined)[] = Array<undefined>(depth + 1).fill(undefined);
    for (let height = 1; height <= depth; height++) {
      value[height] = value[height - 1];
      for (const column of columns) {
        const rest = height - model.heights[column.level];
        if (rest < 0 || value[rest] + pricing.best[column.level] <= value[height]) continue;
        value[height] = value[rest] + pricing.best[column.level];
        last[height] = column;
      }
    }
    const strips: Column[] = [];
    for (let height = depth; height > 0;) {
      const column = last[height];
      if (!column) height--;
      else {
        strips.push(column);
        height -= model.heights[column.level];
      }
    }
    return { strips, value: value[depth] };
  }

  /** A valuable panel that keeps to what remains: strip by strip, the rest of the panel planned anew each time. */
  private fillPanelExactly(way: number, values: Float64Array, remaining: Int32Array) {
    const { model, depth } = this.ways[way];
    const left = remaining.slice();
    const strips: Column[] = [];
    let room = depth;
    let value = 0;
    for (;;) {
      const plan = this.fillPanel(way, room, values, left).strips;
      if (plan.length === 0) return { cutting: { way, strips }, value };
      // Pricing may take more of a kind that can lie both ways than is left of it.
      const highest = clipped(
        model,
        plan.reduce((a, b) => (b.level > a.level ? b : a)),
        left,
      )!;
      strips.push(highest);
      room -= model.heights[highest.level];
      highest.kinds.forEach((kind, i) => {
        left[kind] -= highest.counts[i];
        value += highest.counts[i] * values[kind];
      });
    }
  }

  private panelColumn(cutting: Cutting): Column {
    const counts = countsOf(cutting, this.demand.length);
    const kinds = [...counts.keys()].filter((kind) => counts[kind] > 0);
    const column = { level: cutting.way, kinds, counts: kinds.map((kind) => counts[kind]) };
    this.cuttings.set(columnKey(column), cutting);
    return column;
  }

  private describe(): Panel[] {
    return this.bestPlan!.map(({ cutting, times }): Panel => {
      const { name, model, parts } = this.ways[cutting.way];
      const layers = new Map<string, Layer>();
      for (const column of cutting.strips) {
        const key = columnKey(column);
        layers.set(key, { column, times: (layers.get(key)?.times ?? 0) + 1 });
      }
      const strips = [...layers.values()].map((layer) => stripOf(model, layer, parts));
      strips.sort((a, b) => b.height - a.height || b.times - a.times || b.used - a.used);
      return { times, way: name, strips };
    });
  }
}

function countsOf({ strips }: Cutting, kindCount: number): Int32Array {
  const counts = new Int32Array(kindCount);
  for (const { kinds, counts: taken } of strips) kinds.forEach((kind, i) => (counts[kind] += taken[i]));
  return counts;
}
