import { checkPlan, planCuts } from "../../src/math/cutplan";
import { Model } from "../../src/math/cutplan/model";
import { solve } from "../../src/math/cutplan/solve";
import { benchmark, Instance, instances, LevelOptimum, listOf, read } from "./data";

const byName = new Map(instances("level-instances.json").map((instance) => [instance.name, instance]));
const rows = read<{ rows: LevelOptimum[] }>("level-optima.json").rows;
const kindsIn = (row: LevelOptimum) => byName.get(row.name)!.items.length;
const titleOf = ({ name, mode, trim }: LevelOptimum) => `${name}, ${mode}, ${trim ? "trimming" : "no trimming"}`;

describe("level packing instances of the literature", () => {
  const small = rows.filter((row) => kindsIn(row) <= 32);
  // Cloth 3000 wide: its tables are ten times as large as any quilt's.
  const budgetOf = ({ name }: LevelOptimum) => (name === "gcut13" ? 1000e6 : 40e6);

  test("there are 229 with up to 32 kinds", () => {
    expect(small).toHaveLength(229);
  });

  test("the plan equals the optimum, and no bound is above it", () => {
    const differing: string[] = [];
    for (const row of small) {
      const { width, kinds } = benchmark(row, byName.get(row.name)!);
      const { plan, lengthBound } = solve(new Model(width, kinds, row.trim), { budget: budgetOf(row) });
      expect(plan.length).toBeGreaterThanOrEqual(row.lb);
      expect(lengthBound).toBeLessThanOrEqual(row.best);
      if (plan.length !== row.best) differing.push(titleOf(row));
    }
    expect(differing).toEqual([]);
  });
});

describe("lists of 40 to 60 kinds", () => {
  const middling = rows.filter((row) => kindsIn(row) >= 40 && kindsIn(row) <= 60);
  const seeds = process.env.FULL_CHECKS ? [1, 2, 3, 4, 5, 6] : [1, 2];
  const budgets = process.env.FULL_CHECKS ? [2e6, 10e6, 40e6, 150e6] : [3e6, 20e6];

  test("no bound is above any plan, whatever the seed and the budget", () => {
    expect(middling.length).toBeGreaterThanOrEqual(20);
    for (const row of middling) {
      const { width, kinds } = benchmark(row, byName.get(row.name)!);
      let shortest = row.best;
      let highestBound = row.optimal ? row.best : row.lb;
      for (const seed of seeds) {
        for (const budget of budgets) {
          for (const settledFrom of [undefined, (length: number) => Math.floor((length - 1) / 9) * 9 + 1]) {
            const { plan, lengthBound } = solve(new Model(width, kinds, row.trim), { budget, seed, settledFrom });
            shortest = Math.min(shortest, plan.length);
            highestBound = Math.max(highestBound, lengthBound);
          }
        }
      }
      expect([row.name, highestBound]).toEqual([row.name, Math.min(highestBound, shortest)]);
    }
  }, 600_000);
});

describe("patchwork lists", () => {
  interface Earlier {
    readonly name: string;
    readonly trim: boolean;
    readonly best: number;
    readonly bound: number;
  }
  const earlier = read<Earlier[]>("quilts20-results.json");
  const units = (instance: Instance) => (instance.unit === "1/16 in" ? 16 : 8);

  test.each([
    { trimming: true, least: 18 },
    { trimming: false, least: 19 },
  ])("the twenty realistic lists, $least proved least ($trimming)", ({ trimming, least }) => {
    let proved = 0;
    let excess = 0;
    const lists = instances("quilts20.json");
    for (const instance of lists) {
      const list = listOf(instance.items, instance.rot);
      const cloth = { width: instance.W, trimming };
      const plan = planCuts(list, cloth);
      expect(checkPlan(plan, list, cloth)).toEqual([]);
      const known = earlier.find(({ name, trim }) => name === instance.name && trim === trimming)!;
      expect(plan.length).toBeGreaterThanOrEqual(known.bound * units(instance));
      expect(plan.lengthBound).toBeLessThanOrEqual(known.best * units(instance));
      if (plan.lengthProved) proved++;
      excess = Math.max(excess, plan.length / (known.best * units(instance)));
    }
    expect(lists).toHaveLength(20);
    expect(proved).toBeGreaterThanOrEqual(least);
    expect(excess).toBeLessThan(1.002);
  });

  test("of sixty random lists, the amount to buy is mostly proved least, and every bound is near", () => {
    let proved = 0;
    for (const instance of instances("quilts-random60.json")) {
      const list = listOf(instance.items, instance.rot);
      const cloth = { width: instance.W, buyingStep: 36 };
      const plan = planCuts(list, cloth);
      expect(checkPlan(plan, list, cloth)).toEqual([]);
      if (plan.toBuyProved) proved++;
      expect(plan.length / plan.lengthBound).toBeLessThan(1.01);
    }
    expect(proved).toBeGreaterThanOrEqual(51);
  });
});
