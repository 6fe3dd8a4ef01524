import fc from "fast-check";
import { covers, fits, nearestCount, roundDownTo, roundUpTo, TOLERANCE } from "../../src/math/rounding";
import { decimalText } from "../../src/math/show";

/** Lengths that binary numbers do not hold exactly. */
const tenths = fc.integer({ min: 1, max: 5000 }).map((count) => count / 10);

describe("what fits exactly, fits", () => {
  test("from one piece to ten million", () => {
    fc.assert(
      fc.property(tenths, fc.integer({ min: 1, max: 10_000_000 }), (each, count) => {
        const whole = each * count;
        expect([fits(each, whole), covers(each, whole), nearestCount(each, whole)]).toEqual([count, count, count]);
        expect(roundUpTo(each, whole)).toBe(whole);
        expect(roundDownTo(each, whole)).toBe(whole);
      }),
    );
  });

  test("a length that many sums made may miss by less than the tolerance, and by no more", () => {
    for (const count of [1, 3, 1000]) {
      expect(fits(1, count - TOLERANCE / 2)).toBe(count);
      expect(covers(1, count + TOLERANCE / 2)).toBe(count);
      expect(fits(1, count - 2 * TOLERANCE)).toBe(count - 1);
      expect(covers(1, count + 2 * TOLERANCE)).toBe(count + 1);
    }
  });
});

test("a number that rounds to nothing has no sign", () => {
  expect([decimalText(-0.00001), decimalText(-0), decimalText(-0.0001)]).toEqual(["0", "0", "-0.0001"]);
});
