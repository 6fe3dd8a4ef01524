import { areaD, FillRule, intersectD, unionD } from "@countertype/clipper2-ts";
import fc from "fast-check";
import { atMost } from "../../src/math/rounding";
import { EARS, tubeLayout, tubeLength, type Tube, type TubeUnits, tubeUnits } from "../../src/math/tubes";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

/** Tubes, and the trim sizes that they can give. */
const tubes = fc
  .record({ stripWidth: lengths(1.25, 8), seam: lengths(0.125, 0.5), ears: fc.constantFrom(...EARS) })
  .filter(({ stripWidth, seam }) => stripWidth > 3 * seam);

function trimFor({ stripWidth, seam = inches(0.25) }: Tube): fc.Arbitrary<TubeUnits["trim"]> {
  const most = Math.SQRT2 * (stripWidth - seam);
  return fc.double({ min: 0.001, max: 1, noNaN: true }).map((part) => inches(2 * seam + part * (most - 2 * seam)));
}

const singles = tubes.chain((tube) => fc.record({ tube: fc.constant(tube), trim: trimFor(tube) }));

const lists = tubes.chain((tube) =>
  fc.record({
    tube: fc.constant(tube),
    list: fc.array(fc.record({ trim: trimFor(tube), count: fc.integer({ min: 0, max: 6 }) }), {
      minLength: 1,
      maxLength: 3,
    }),
  }),
);

describe("tubeLayout", () => {
  test("no two cut units overlap, and none leaves the tube", () => {
    fc.assert(
      fc.property(lists, ({ tube, list }) => {
        const cuts = tubeLayout(list, tube);
        const length = tubeLength(list, tube);
        const shapes = cuts.map(({ outline }) => outline.map(([x, y]) => ({ x, y })));
        const areas = shapes.map((shape) => Math.abs(areaD(shape)));
        const covered = unionD(shapes, [], FillRule.NonZero, 6).reduce((sum, path) => sum + areaD(path), 0);
        expect(covered).toBeCloseTo(
          areas.reduce((sum, area) => sum + area, 0),
          3,
        );
        for (const { x, y } of shapes.flat()) {
          expect(atMost(0, x) && atMost(x, length) && atMost(0, y) && atMost(y, tube.stripWidth)).toBe(true);
        }
      }),
    );
  });

  test("every unit, opened along its seam line, covers the square that it is trimmed to", () => {
    fc.assert(
      fc.property(singles, ({ tube, trim }) => {
        const [cut] = tubeLayout([{ trim, count: 1 }], tube);
        const above = cut.outline.map(([x, y]) => ({ x, y }));
        const half = [
          { x: cut.from, y: tube.seam },
          { x: cut.middle, y: tube.seam + trim / Math.SQRT2 },
          { x: cut.to, y: tube.seam },
        ];
        const inside = intersectD([above], [half], FillRule.NonZero, 6).reduce((sum, path) => sum + areaD(path), 0);
        expect(2 * Math.abs(inside)).toBeCloseTo(trim * trim, 3);
        expect(Math.hypot(cut.middle - cut.from, trim / Math.SQRT2)).toBeCloseTo(trim, 9);
      }),
    );
  });

  test("two straight cuts meet in a right angle; clipped, two corners as long as a seam are missing", () => {
    fc.assert(
      fc.property(singles, ({ tube, trim }) => {
        const reach = trim / Math.SQRT2 + tube.seam;
        const [clipped, unclipped] = EARS.map((ears) => {
          const [{ outline }] = tubeLayout([{ trim, count: 1 }], { ...tube, ears });
          return Math.abs(areaD(outline.map(([x, y]) => ({ x, y }))));
        });
        expect(unclipped).toBeCloseTo(reach ** 2, 9);
        expect(clipped).toBeCloseTo(reach ** 2 - 2 * tube.seam ** 2, 9);
      }),
    );
  });

  test("counts every unit of the list, the largest first", () => {
    fc.assert(
      fc.property(lists, ({ tube, list }) => {
        const trims = tubeLayout(list, tube).map(({ trim }) => trim);
        const wanted = list.flatMap(({ trim, count }) => Array<number>(count).fill(trim));
        expect(trims).toEqual(wanted.sort((a, b) => b - a));
      }),
    );
  });
});

describe("tubeLength", () => {
  test("is never below what the two seam lines must hold, nor above the units end to end", () => {
    fc.assert(
      fc.property(lists, ({ tube, list }) => {
        const ear = tube.ears === "clipped" ? 0 : tube.seam;
        const bases = list.reduce((sum, { trim, count }) => sum + count * (Math.SQRT2 * trim + 2 * ear), 0);
        const length = tubeLength(list, tube);
        expect(atMost(bases / 2, length)).toBe(true);
        expect(length).toBeLessThanOrEqual(bases + 1e-6);
      }),
    );
  });

  test("for a few units of one size, no choice of seam lines is shorter", () => {
    fc.assert(
      fc.property(singles, fc.integer({ min: 1, max: 7 }), ({ tube, trim }, count) => {
        const best = shortestOfAll(trim / Math.SQRT2, count, tube);
        expect(tubeLength([{ trim, count }], tube)).toBeCloseTo(best, 6);
      }),
    );
  });

  test("straight cuts through the allowance never take less than clipped ears", () => {
    fc.assert(
      fc.property(singles, fc.integer({ min: 1, max: 30 }), ({ tube, trim }, count) => {
        const list = [{ trim, count }];
        const [clipped, unclipped] = EARS.map((ears) => tubeLength(list, { ...tube, ears }));
        expect(atMost(clipped, unclipped)).toBe(true);
      }),
    );
  });
});

describe("tubeUnits", () => {
  test("is the most units whose layout fits the length", () => {
    fc.assert(
      fc.property(singles, lengths(1, 60), ({ tube, trim }, length) => {
        const units = tubeUnits(length, trim, tube);
        expect(atMost(tubeLength([{ trim, count: units }], tube), length)).toBe(true);
        expect(atMost(tubeLength([{ trim, count: units + 1 }], tube), length - 1e-8)).toBe(false);
      }),
    );
  });

  test("the length that a number of units takes gives that number", () => {
    fc.assert(
      fc.property(singles, fc.integer({ min: 1, max: 60 }), ({ tube, trim }, count) => {
        const length = tubeLength([{ trim, count }], tube);
        expect(tubeUnits(length, trim, tube)).toBeGreaterThanOrEqual(count);
      }),
    );
  });
});

/** The shortest layout of a few equal units, by trying either seam line for every one of them. */
function shortestOfAll(height: number, count: number, { stripWidth, seam = inches(0.25), ears }: Tube): number {
  const reach = ears === "unclipped" ? height + seam : height;
  const turned = 2 * (height + seam) - stripWidth;
  let best = Infinity;
  for (let lines = 0; lines < 2 ** count; lines += 1) {
    const middles: number[] = [];
    for (let unit = 0; unit < count; unit += 1) {
      const line = (lines >> unit) & 1;
      const least = middles.map((middle, other) => middle + (((lines >> other) & 1) === line ? 2 * reach : turned));
      middles.push(Math.max(reach, ...least));
    }
    best = Math.min(best, Math.max(...middles) + reach);
  }
  return best;
}
