import fc from "fast-check";
import Fraction from "fraction.js";
import { parseLength } from "../../src/math/length";
import { Problem } from "../../src/math/problem";
import { fractionText } from "../../src/math/show";

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
