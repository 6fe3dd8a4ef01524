/** The limits of the numbers of strips, which branching trusts. */
import { narrowCounts, noLimits } from "../../src/math/cutplan/counts";
import { startSearch } from "../../src/math/cutplan/greedy";
import { Master } from "../../src/math/cutplan/master";
import { Model } from "../../src/math/cutplan/model";
import { Goal, Search } from "../../src/math/cutplan/search";
import { solve } from "../../src/math/cutplan/solve";
import { Work } from "../../src/math/cutplan/work";
import { dice } from "./data";

test("a plan that is still of interest is within the limits", () => {
  const roll = dice(7);
  let narrowed = 0;
  for (let round = 0; round < 150; round++) {
    const side = () => 4 + roll(20);
    const kinds = Array.from({ length: 2 + roll(4) }, () => ({
      width: side(),
      height: side(),
      count: 1 + roll(12),
      mayTurn: roll(2) === 0,
    }));
    const model = new Model(40 + roll(20), kinds, roll(3) > 0);
    const { plan } = solve(model, { budget: 2e6 });

    const work = new Work(1e8);
    const search = new Search(model, work, 1);
    startSearch(search);
    const goal: Goal = {
      cost: Float64Array.from(model.heights),
      rows: [],
      reached: () => search.best.length,
      cutoff: () => plan.length + model.heightStep,
      step: model.heightStep,
      roundUp: (bound) => Math.max(0, Math.ceil((bound - 1e-6) / model.heightStep) * model.heightStep),
      lowestOnly: false,
      longest: () => Infinity,
    };
    const root = Master.start(search.pool, goal.cost, model.demand, [], 200 * search.best.length, work);
    search.relax(root, goal);
    const limits = noLimits(model);
    expect(narrowCounts(search, goal, root, limits)).toBe(true);

    const counts = new Float64Array(model.levelCount);
    for (const { column, times } of plan.layers) counts[column.level] += times;
    if (model.trimming) for (let level = model.levelCount - 2; level >= 0; level--) counts[level] += counts[level + 1];
    counts.forEach((count, level) => {
      expect(limits.least[level]).toBeLessThanOrEqual(count);
      expect(limits.most[level]).toBeGreaterThanOrEqual(count);
      if (limits.most[level] === count || limits.least[level] === count) narrowed++;
    });
  }
  // The limits say something: often a plan lies right on them.
  expect(narrowed).toBeGreaterThan(100);
});
