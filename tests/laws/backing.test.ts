import fc from "fast-check";
import { type BackingWay, backingWays, bestBacking } from "../../src/math/backing";
import { atMost, TOLERANCE } from "../../src/math/rounding";
import { inches } from "../../src/math/units";
import { withWorking } from "../../src/math/working";
import { lengths } from "./arbitraries";

const fabricWidth = fc.oneof(lengths(30, 60), lengths(100, 120));

/** Panels and length by adding one panel after another, as on the floor of the workroom. */
function laidOut(covered: number, cut: number, width: number, seam: number, repeat: number) {
  let [panels, sewn, length] = [1, width, cut];
  while (sewn < covered - TOLERANCE) {
    panels += 1;
    sewn += width - 2 * seam;
    let start = 0;
    while (start < cut - TOLERANCE) start += repeat === 0 ? cut : repeat;
    length += start;
  }
  return { panels, length };
}

describe("backingWays", () => {
  test("tells of whole repeats only where the print has one and panels are joined", () => {
    const told = (width: number, repeat?: number) =>
      withWorking(() => backingWays(inches(width), inches(70), repeat === undefined ? {} : { repeat: inches(repeat) }))
        .steps.join("\n")
        .includes("whole repeats of");
    expect([told(70), told(70, 0), told(70, 24), told(30, 24)]).toEqual([false, false, true, true]);
  });

  const options = fc.record({
    fabricWidth,
    margin: lengths(0, 8),
    panelSeam: lengths(0, 1),
    repeat: fc.oneof(fc.constant(inches(0)), lengths(2, 30)),
  });

  test("agrees with panels laid out one after another", () => {
    fc.assert(
      fc.property(lengths(10, 130), lengths(10, 130), options, (width, length, option) => {
        const [along, across] = backingWays(width, length, option);
        const [wide, long] = [width + 2 * option.margin, length + 2 * option.margin];
        const { fabricWidth: cloth, panelSeam, repeat } = option;
        for (const [way, covered, cut] of [
          [along, wide, long],
          [across, long, wide],
        ] as const) {
          const expected = laidOut(covered, cut, cloth, panelSeam, repeat);
          expect(way.panels).toBe(expected.panels);
          expect(way.length).toBeCloseTo(expected.length, 6);
          expect(atMost(0, way.spareWidth)).toBe(true);
          expect(atMost(way.length, way.amount)).toBe(true);
        }
      }),
    );
  });

  test("where it says a little too narrow, cloth wider by that much saves a panel, and by less does not", () => {
    fc.assert(
      fc.property(lengths(30, 130), lengths(30, 130), options, (width, length, option) => {
        backingWays(width, length, option).forEach((way, index) => {
          if (way.tooNarrow === undefined) return;
          expect(way.tooNarrow).toBeGreaterThan(0);
          expect(way.tooNarrow).toBeLessThanOrEqual(8 + TOLERANCE);
          // Panels share what is lacking; a thousandth of an inch either way decides.
          const each = way.tooNarrow / (way.panels - 1);
          const panelsWith = (more: number) =>
            backingWays(width, length, { ...option, fabricWidth: inches(option.fabricWidth + more) })[index].panels;
          expect(panelsWith(each + 0.001)).toBe(way.panels - 1);
          if (each > 0.001) expect(panelsWith(each - 0.001)).toBe(way.panels);
        });
      }),
    );
  });

  test("the best is no more than either way, nor less than the area asks for", () => {
    fc.assert(
      fc.property(lengths(10, 130), lengths(10, 130), options, (width, length, option) => {
        const ways = backingWays(width, length, option);
        const best = bestBacking(ways);
        for (const way of ways) expect(best.amount).toBeLessThanOrEqual(way.amount);
        const area = (width + 2 * option.margin) * (length + 2 * option.margin);
        expect(best.amount * option.fabricWidth).toBeGreaterThanOrEqual(area - 1e-6);
      }),
    );
  });
});

describe("bestBacking", () => {
  const way = (lies: BackingWay["lies"], amount: number, panels: number, length: number): BackingWay => ({
    lies,
    panels,
    cutLength: inches(length / panels),
    length: inches(length),
    amount: inches(amount),
    spareWidth: inches(0),
  });

  test.each([
    ["the way that takes less to buy", way("along", 180, 2, 170), way("across", 175.5, 3, 171), "across"],
    ["of equals the one with fewer panels", way("along", 180, 3, 170), way("across", 180, 2, 176), "across"],
    ["then the one with less length", way("along", 180, 2, 178), way("across", 180, 2, 176), "across"],
    ["then seams up and down", way("along", 180, 2, 176), way("across", 180, 2, 176), "along"],
  ])("takes %s", (_rule, along, across, lies) => {
    expect(bestBacking([along, across]).lies).toBe(lies);
  });

  test("never turns an upright print, however much more the other way takes", () => {
    const ways = backingWays(inches(66), inches(77), { fabricWidth: inches(108), print: "upright" });
    expect(ways.map(({ refused }) => refused)).toEqual([undefined, "upright print"]);
    expect(bestBacking(ways).lies).toBe("along");
  });
});

test("one panel lacks no other, even under a doll's quilt", () => {
  for (const side of [2, 9]) {
    const ways = backingWays(inches(side), inches(side), { margin: inches(0) });
    expect(ways.map(({ panels, tooNarrow }) => [panels, tooNarrow])).toEqual([
      [1, undefined],
      [1, undefined],
    ]);
  }
});
