/** The packing of given strips, which the bounds trust when it says that there is none. */
import { packInto, type PackingLimits } from "../../src/math/cutplan/leaf";
import { type Kind, Model } from "../../src/math/cutplan/model";
import { Search } from "../../src/math/cutplan/search";
import { Work } from "../../src/math/cutplan/work";
import { dice } from "./data";

const PLENTY: PackingLimits = { nodes: 1e6, fillings: 1e6 };

/** Whether patches go into strips of these heights, by putting each into every strip either way. */
function fits(clothWidth: number, kinds: readonly Kind[], trimming: boolean, heights: readonly number[]): boolean {
  const pieces = kinds.flatMap((kind) => Array<Kind>(kind.count).fill(kind));
  const room = heights.map(() => clothWidth);
  const place = (index: number): boolean => {
    if (index === pieces.length) return true;
    const { width, height, mayTurn } = pieces[index];
    const ways = mayTurn
      ? [
          [width, height],
          [height, width],
        ]
      : [[width, height]];
    return heights.some((high, strip) =>
      ways.some(([across, along]) => {
        if (across > room[strip] || (trimming ? along > high : along !== high)) return false;
        room[strip] -= across;
        const rest = place(index + 1);
        room[strip] += across;
        return rest;
      }),
    );
  };
  return place(0);
}

test("finds a packing where there is one, and with little patience never says that there is none", () => {
  const roll = dice(11);
  const said = { found: 0, impossible: 0, undecided: 0 };
  for (let round = 0; round < 400; round++) {
    const clothWidth = 10 + roll(10);
    const trimming = roll(3) > 0;
    const kinds = Array.from({ length: 1 + roll(4) }, () => ({
      width: 2 + roll(8),
      height: 2 + roll(6),
      count: 1 + roll(3),
      mayTurn: roll(2) === 0,
    }));
    const model = new Model(clothWidth, kinds, trimming);
    const counts = Int32Array.from(model.heights, () => roll(3));
    const heights = model.heights.flatMap((height, level) => Array<number>(counts[level]).fill(height));
    const worth = Float64Array.from(model.area, (area) => area * (1 + roll(3)));
    const answer = (limits: PackingLimits) => {
      const search = new Search(model, new Work(1e9), 1);
      const [strips, demand] = [counts.slice(), model.demand.slice()];
      const packing = packInto(search, strips, worth, limits);
      expect([strips, model.demand]).toEqual([counts, demand]);
      if (packing === "found") {
        const used = new Int32Array(counts.length);
        for (const { column, times } of search.best.layers) used[column.level] += times;
        // Strips whose patches are all lower become lower, and some may stay unused.
        const [given, taken] = [counts, used].map((all) => all.reduce((sum, count) => sum + count, 0));
        expect(taken).toBeLessThanOrEqual(given);
        expect(search.best.length).toBeLessThanOrEqual(heights.reduce((sum, height) => sum + height, 0));
      }
      return packing;
    };
    const possible = fits(clothWidth, kinds, trimming, heights);
    expect(answer(PLENTY)).toBe(possible ? "found" : "impossible");
    for (const limits of [
      { nodes: 2, fillings: 1e6 },
      { nodes: 1e6, fillings: 1 },
      { nodes: 1 + roll(8), fillings: 1 + roll(3) },
    ]) {
      const packing = answer(limits);
      said[packing]++;
      if (packing === "found") expect(possible).toBe(true);
      if (packing === "impossible") expect(possible).toBe(false);
    }
  }
  expect(Math.min(said.found, said.impossible, said.undecided)).toBeGreaterThan(50);
});
