import fc from "fast-check";
import { fabric } from "../../src/math/fabric";
import { Problem } from "../../src/math/problem";
import { atMost, TOLERANCE } from "../../src/math/rounding";
import { type Inches, inches, toInches } from "../../src/math/units";
import { GRAINS, patchFabric, piecesFrom } from "../../src/math/yardage";
import { lengths } from "./arbitraries";

const fabricWidths = fc.oneof(lengths(30, 60), lengths(100, 120));
const patches = fc.record({ width: lengths(0.75, 28), height: lengths(0.75, 28) });

/** How far down the fabric a number of patches reach, laid one by one: across while one fits, then down a row. */
function laidOneByOne(count: number, across: number, along: number, fabricWidth: number): number {
  let [reached, used] = [0, Infinity];
  for (let patch = 0; patch < count; patch += 1) {
    if (used + across > fabricWidth + TOLERANCE) {
      reached += along;
      used = 0;
    }
    used += across;
  }
  return reached;
}

/** How many patches can be laid one by one before the fabric ends. */
function countedOneByOne(length: number, across: number, along: number, fabricWidth: number): number {
  let count = 0;
  while (laidOneByOne(count + 1, across, along, fabricWidth) <= length + TOLERANCE) count += 1;
  return count;
}

describe("patchFabric", () => {
  test("agrees with patches laid one by one, the better way round", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        patches,
        fabricWidths,
        fc.constantFrom(...GRAINS),
        lengths(0, 3),
        (count, { width, height }, fabricWidth, grain, squaring) => {
          const upright = laidOneByOne(count, width, height, fabricWidth);
          const turned = grain === "any" ? laidOneByOne(count, height, width, fabricWidth) : Infinity;
          const amount = patchFabric(count, width, height, { fabricWidth, grain, squaring });
          expect(amount).toBeCloseTo(fabric(inches(Math.min(upright, turned) + squaring)), 9);
        },
      ),
    );
  });

  test("never takes less than the area asks for, nor more for fewer patches", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), patches, fabricWidths, (count, { width, height }, fabricWidth) => {
        const amount = patchFabric(count, width, height, { fabricWidth });
        expect(atMost(count * width * height, amount * fabricWidth + 1e-6)).toBe(true);
        expect(patchFabric(count - 1, width, height, { fabricWidth })).toBeLessThanOrEqual(amount);
      }),
    );
  });

  test("a turned list of measures buys the same, unless the print is upright", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), patches, fabricWidths, (count, { width, height }, fabricWidth) => {
        const amount = patchFabric(count, width, height, { fabricWidth });
        expect(patchFabric(count, height, width, { fabricWidth })).toBe(amount);
        expect(patchFabric(count, width, height, { fabricWidth, grain: "upright" })).toBeGreaterThanOrEqual(amount);
      }),
    );
  });

  test("a patch longer than the fabric is wide lies along it; one wider both ways is refused", () => {
    fc.assert(
      fc.property(lengths(43, 90), lengths(1, 90), (long, other) => {
        const cut = () => patchFabric(1, long, other);
        if (other <= 42) expect(cut()).toBe(fabric(long));
        else expect(cut).toThrow(Problem);
      }),
    );
  });
});

describe("piecesFrom", () => {
  test("agrees with patches laid one by one, the better way round", () => {
    fc.assert(
      fc.property(
        lengths(0, 40),
        fc.record({ width: lengths(2, 28), height: lengths(2, 28) }),
        fabricWidths,
        fc.constantFrom(...GRAINS),
        lengths(0, 3),
        (length, { width, height }, fabricWidth, grain, squaring) => {
          const usable = length - squaring;
          const upright = countedOneByOne(usable, width, height, fabricWidth);
          const turned = grain === "any" ? countedOneByOne(usable, height, width, fabricWidth) : 0;
          expect(piecesFrom(length, width, height, { fabricWidth, grain, squaring })).toBe(Math.max(upright, turned));
        },
      ),
    );
  });

  test("the amount bought for a number of patches yields them", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), patches, fabricWidths, (count, { width, height }, fabricWidth) => {
        const bought = patchFabric(count, width, height, { fabricWidth });
        expect(piecesFrom(bought, width, height, { fabricWidth })).toBeGreaterThanOrEqual(count);
      }),
    );
  });

  test("half a fabric width is a fat quarter up to 20 in of length, and questioned beyond", () => {
    fc.assert(
      fc.property(lengths(1, 60), lengths(20, 23), (length, fabricWidth) => {
        const cut = (): number => piecesFrom(length, inches(2), inches(2), { fabricWidth });
        if (atMost(length, 20)) expect(cut()).toBeGreaterThanOrEqual(0);
        else expect(cut).toThrow("measured folded?");
      }),
    );
  });

  test("quarter yards for 400 squares of 3 in: 10, and 15 where each loses half an inch to squaring", () => {
    const quarter: Inches = toInches(1 / 4, "yd");
    const quarters = (squaring: number) => {
      let [pieces, bought] = [0, 0];
      for (; pieces < 400; bought += 1) {
        pieces += piecesFrom(quarter, inches(3), inches(3), { squaring: inches(squaring) });
      }
      return bought;
    };
    expect([quarters(0), quarters(0.5)]).toEqual([10, 15]);
  });
});
