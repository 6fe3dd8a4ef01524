import { columnOf, Kind, Model } from "../../src/math/cutplan/model";
import { Pricing } from "../../src/math/cutplan/pricing";
import { Work } from "../../src/math/cutplan/work";
import { dice } from "./data";

/** The best value of a strip of a level, by trying every filling. */
function bestByTrial(model: Model, level: number, values: Float64Array): number {
  let best = -Infinity;
  const place = (kind: number, room: number, value: number, opened: boolean): void => {
    if (kind === model.kindCount) {
      if (opened) best = Math.max(best, value);
      return;
    }
    const width = model.widthIn(level, kind);
    const opens = model.ownLevels[kind].includes(level);
    for (let count = 0; count <= model.demand[kind] && count * width <= room; count++) {
      place(kind + 1, room - count * width, value + count * values[kind], opened || (opens && count > 0));
      if (width === 0) break;
    }
  };
  place(0, model.room, 0, false);
  return best;
}

function randomKinds(roll: (below: number) => number, most: number): Kind[] {
  return Array.from({ length: 1 + roll(most) }, () => ({
    width: 1 + roll(12),
    height: 1 + roll(12),
    count: 1 + roll(5),
    mayTurn: roll(2) === 1,
  }));
}

describe("Pricing", () => {
  test("finds the best strip of every height, as trying everything does", () => {
    const roll = dice(7);
    let prices = 0;
    for (let round = 0; round < 400; round++) {
      const width = 12 + roll(14);
      const model = new Model(width, randomKinds(roll, 5), roll(3) > 0);
      const pricing = new Pricing(model, new Work(Infinity));
      const values = Float64Array.from(model.kinds, () => roll(4) * roll(16));
      const columns = pricing.price(values, new Float64Array(model.levelCount).fill(-1), model.demand);
      for (let level = 0; level < model.levelCount; level++) {
        expect(pricing.best[level]).toBe(bestByTrial(model, level, values));
        prices++;
      }
      for (const { level, kinds, counts } of columns) {
        const width = kinds.reduce((sum, kind, i) => sum + model.widthIn(level, kind) * counts[i], 0);
        const value = kinds.reduce((sum, kind, i) => sum + values[kind] * counts[i], 0);
        expect(width).toBeLessThanOrEqual(model.room);
        expect(value).toBe(pricing.best[level]);
        expect(kinds.every((kind, i) => counts[i] <= model.demand[kind])).toBe(true);
        expect(kinds.some((kind) => model.ownLevels[kind].includes(level))).toBe(true);
      }
    }
    expect(prices).toBeGreaterThan(1400);
  });
});

test("columnOf lists the kinds that are there", () => {
  expect(columnOf(2, [0, 3, 0, 1])).toEqual({ level: 2, kinds: [1, 3], counts: [3, 1] });
});
