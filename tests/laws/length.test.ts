import fc from "fast-check";
import Fraction from "fraction.js";
import { beforeWashing } from "../../src/math/fabric";
import { parseLength } from "../../src/math/length";
import { lengthMark } from "../../src/math/marks";
import { Problem } from "../../src/math/problem";
import { atMost, same } from "../../src/math/rounding";
import { fractionText } from "../../src/math/show";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

const DENOMINATORS = [2, 3, 4, 8, 16, 32];

describe("fractionText", () => {
  test("writes the nearest part, reduced, as fraction.js does", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), fc.constantFrom(...DENOMINATORS), (parts, denominator) => {
        expect(fractionText(parts / denominator, denominator)).toBe(new Fraction(parts, denominator).toFraction(true));
      }),
    );
  });

  test("reads back as a length within half a part", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 999, noNaN: true }),
        fc.constantFrom(...DENOMINATORS),
        (value, denominator) => {
          const back = parseLength(fractionText(value, denominator), "in");
          expect(Math.abs(back - value)).toBeLessThanOrEqual(0.5 / denominator + 1e-9);
        },
      ),
    );
  });
});

describe("parseLength", () => {
  test("refuses nothing at all, too long a text, and a bare number before a part with a unit", () => {
    for (const text of ["", "  ", "2.5".padStart(61, "0")]) {
      expect(() => parseLength(text, "in")).toThrow("cannot read a length");
    }
    expect(parseLength("2.5".padStart(60, "0"), "in")).toBe(2.5);
    expect(() => parseLength("1 9 in", "yd")).toThrow("cannot read a length in “1 9 in”");
    expect(parseLength("1 yd 9 in", "yd")).toBe(45);
  });

  test("reads the same mixed number however it is written", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 900 }),
        fc.constantFrom(2, 4, 8, 16),
        fc.nat({ max: 15 }),
        (whole, under, nat) => {
          const over = nat % under;
          const value = whole + over / under;
          for (const text of [
            `${whole} ${over}/${under}`,
            `${whole}-${over}/${under}`,
            `${whole}\u00a0${over}⁄${under}"`,
            `  ${whole}  ${over} / ${under}  in`,
            `${value} inches`,
            `${value * 25.4} mm`,
          ]) {
            expect(parseLength(text, "in")).toBeCloseTo(value, 9);
          }
        },
      ),
    );
  });

  test("any text gives a length or a Problem with a sentence", () => {
    const hostile = fc.oneof(
      fc.string({ maxLength: 80 }),
      fc.string({ unit: fc.constantFrom(...Array.from("0123456789 ½⅛/⁄.-,'\"xinmcyd¹₂")) }),
    );
    fc.assert(
      fc.property(hostile, (text) => {
        try {
          const length = parseLength(text, "in");
          expect(Number.isFinite(length) && length >= 0).toBe(true);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(Problem);
          expect((thrown as Problem).message.length).toBeGreaterThan(10);
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe("lengthMark", () => {
  test("down, the length and up are in order, on marks, less than a mark apart; the nearest is one of the two", () => {
    fc.assert(
      fc.property(lengths(0, 200), fc.constantFrom(1 / 16, 1 / 8, 1 / 4, 1 / 10 / 2.54), (length, step) => {
        const mark = inches(step);
        const [down, up] = [lengthMark(length, mark, "down"), lengthMark(length, mark, "up")];
        expect(atMost(down, length) && atMost(length, up)).toBe(true);
        expect(up - down).toBeLessThan(mark + 1e-9);
        for (const rounded of [down, up]) expect(lengthMark(rounded, mark, "nearest")).toBeCloseTo(rounded, 9);
        const nearest = lengthMark(length, mark, "nearest");
        expect(Math.abs(nearest - length)).toBeLessThanOrEqual(mark / 2 + 1e-9);
        expect(same(nearest, down) || same(nearest, up)).toBe(true);
      }),
    );
  });
});

describe("beforeWashing", () => {
  test("washed, it has the wanted length", () => {
    fc.assert(
      fc.property(lengths(0, 400), fc.double({ min: 0, max: 0.5, noNaN: true }), (wanted, shrinkage) => {
        const before = beforeWashing(wanted, shrinkage);
        expect(before - before * shrinkage).toBeCloseTo(wanted, 9);
      }),
    );
  });
});
