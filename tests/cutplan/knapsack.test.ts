import highsLoader, { type Highs } from "highs";
import { Column, columnKey, columnOf, Model } from "../../src/math/cutplan/model";
import { Pricing } from "../../src/math/cutplan/pricing";
import { solve } from "../../src/math/cutplan/solve";
import { Work } from "../../src/math/cutplan/work";
import { Instance, kindsOf, read } from "./data";

/**
 * Published optima of the two-stage knapsack: which patches of most profit can be cut from one sheet in strips. It has the
 * same strips as a cutting plan, so the strips of the model, priced exactly, must give the published values.
 */
interface Knapsack extends Instance {
  readonly orientation: "Horizontal" | "Vertical";
  readonly best: number;
}

const LARGEST = process.env.FULL_CHECKS ? Infinity : 25;

/** The sheet as cloth: first cuts along its width, so that strips run across. */
function sheetOf({ W, H, items, orientation }: Knapsack) {
  const profits = items.map((item) => item[3]);
  const kinds = kindsOf(items, false);
  if (orientation === "Horizontal") return { width: W, height: H, kinds, profits };
  const turned = kinds.map((kind) => ({ ...kind, width: kind.height, height: kind.width }));
  return { width: H, height: W, kinds: turned, profits };
}

interface Linear {
  readonly value: number;
  /** what a patch of each kind and a unit of the sheet's height are worth */
  readonly worth: Float64Array;
  readonly heightPrice: number;
}

/** The most profit over some strips; a strip may cut more patches than count. */
class SheetProgram {
  readonly strips: Column[] = [];
  private readonly known = new Set<string>();

  constructor(
    private readonly highs: Highs,
    private readonly model: Model,
    private readonly height: number,
    private readonly profits: readonly number[],
  ) {}

  add(strips: readonly Column[]): number {
    const fresh = strips.filter((strip) => !this.known.has(columnKey(strip)));
    for (const strip of fresh) this.known.add(columnKey(strip));
    this.strips.push(...fresh);
    return fresh.length;
  }

  linear(): Linear {
    const { Rows, ObjectiveValue } = this.solve(false);
    const duals = new Map(Rows.flatMap((row) => ("Dual" in row ? [[row.Name, Math.abs(row.Dual)]] : [])));
    const worth = Float64Array.from(this.profits, (_, kind) => duals.get(`c${kind}`) ?? 0);
    return { value: ObjectiveValue, worth, heightPrice: duals.get("h") ?? 0 };
  }

  /** Patches of each kind on the sheet, and what they are worth. */
  whole(): { profit: number; counts: number[] } {
    const { Columns, ObjectiveValue } = this.solve(true);
    const valueOf = (name: string) => {
      const column = Columns[name];
      return "Primal" in column ? Math.round(column.Primal) : 0;
    };
    return { profit: Math.round(ObjectiveValue), counts: this.profits.map((_, kind) => valueOf(`y${kind}`)) };
  }

  private solve(integer: boolean) {
    const { strips, model, profits, height } = this;
    const { demand, heights } = model;
    const cuts: string[] = profits.map((_, kind) => ` c${kind}: y${kind}`);
    strips.forEach((strip, i) => {
      strip.kinds.forEach((kind, n) => (cuts[kind] += ` - ${strip.counts[n]} x${i}`));
    });
    const names = [...strips.map((_, i) => `x${i}`), ...profits.map((_, kind) => `y${kind}`)];
    return this.highs.solve(
      `Maximize\n obj: ${profits.map((profit, kind) => `${profit} y${kind}`).join(" + ")}\nSubject To\n` +
        ` h: ${strips.map(({ level }, i) => `${heights[level]} x${i}`).join(" + ")} <= ${height}\n` +
        `${cuts.map((cut) => `${cut} <= 0`).join("\n")}\nBounds\n` +
        `${profits.map((_, kind) => ` y${kind} <= ${demand[kind]}`).join("\n")}\n` +
        `${integer ? `General\n ${names.join(" ")}\n` : ""}End`,
      { mip_rel_gap: 0 },
    );
  }
}

/** Every strip without room for another patch that loses at most so much, worth what the linear program says. */
function stripsLosing(model: Model, { worth, heightPrice }: Linear, most: number): Column[] {
  const found: Column[] = [];
  for (let level = 0; level < model.levelCount; level++) {
    const kinds = [...worth.keys()].filter((kind) => model.widthIn(level, kind) > 0);
    const density = (kind: number) => worth[kind] / model.widthIn(level, kind);
    kinds.sort((a, b) => density(b) - density(a));
    const least = model.heights[level] * heightPrice - most - 1e-6;
    const counts = new Int32Array(model.kindCount);
    const choose = (index: number, room: number, value: number): void => {
      if (index === kinds.length) {
        const full = kinds.every((kind) => counts[kind] === model.demand[kind] || model.widthIn(level, kind) > room);
        if (full && value >= least) found.push(columnOf(level, counts));
        return;
      }
      const kind = kinds[index];
      if (value + room * density(kind) < least) return;
      const width = model.widthIn(level, kind);
      for (let count = Math.min(model.demand[kind], Math.floor(room / width)); count >= 0; count--) {
        counts[kind] = count;
        choose(index + 1, room - count * width, value + count * worth[kind]);
      }
      counts[kind] = 0;
    };
    choose(0, model.room, 0);
  }
  return found;
}

/**
 * The most profit that strips can cut from a sheet: strips are priced until none improves the linear program, then every
 * strip joins that could be part of a better selection than the one at hand.
 */
function bestProfit(highs: Highs, { width, height, kinds, profits }: ReturnType<typeof sheetOf>) {
  const model = new Model(width, kinds, true, { highest: height });
  const pricing = new Pricing(model, new Work(Infinity));
  const program = new SheetProgram(highs, model, height, profits);
  program.add(pricing.price(Float64Array.from(profits), new Float64Array(model.levelCount), model.demand));
  let linear = program.linear();
  const threshold = () => Float64Array.from(model.heights, (high) => high * linear.heightPrice + 1e-6);
  while (program.add(pricing.price(linear.worth, threshold(), model.demand)) > 0) linear = program.linear();
  program.add(stripsLosing(model, linear, linear.value - program.whole().profit));
  return { bound: linear.value, ...program.whole() };
}

test("strips of the model give the published optima of the two-stage knapsack", async () => {
  const highs = await highsLoader();
  const all = read<{ instances: Knapsack[] }>("knap2.json").instances;
  const chosen = all.filter(({ items }) => items.length <= LARGEST);
  expect(chosen.length).toBeGreaterThanOrEqual(10);
  for (const instance of chosen) {
    const sheet = sheetOf(instance);
    const { bound, profit, counts } = bestProfit(highs, sheet);
    expect([instance.name, instance.orientation, profit]).toEqual([instance.name, instance.orientation, instance.best]);
    expect(bound).toBeGreaterThanOrEqual(instance.best - 1e-6);
    // The planner cuts the chosen patches from the sheet's own height.
    const kinds = sheet.kinds.flatMap((kind, k) => (counts[k] > 0 ? [{ ...kind, count: counts[k] }] : []));
    const { plan } = solve(new Model(sheet.width, kinds, true), { budget: 40e6 });
    expect(plan.length).toBeLessThanOrEqual(sheet.height);
  }
}, 300_000);
