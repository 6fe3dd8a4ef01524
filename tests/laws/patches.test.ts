import fc from "fast-check";
import { cutHalfSquare, cutSquare, MADE_AT_ONCE } from "../../src/math/patches";
import { atMost } from "../../src/math/rounding";
import { inches } from "../../src/math/units";
import { lengths, seams } from "./arbitraries";

const EXACT = inches(0);
const MARK = inches(1 / 8);

describe("cutSquare", () => {
  test("sewn with its seams, finishes at the size asked for", () => {
    fc.assert(
      fc.property(lengths(0.25, 60), seams, (finished, seam) => {
        expect(cutSquare(finished, seam) - 2 * seam).toBeCloseTo(finished, 9);
      }),
    );
  });

  test("at a mark is never below the exact size, and less than a mark above it", () => {
    fc.assert(
      fc.property(lengths(0.25, 60), seams, (finished, seam) => {
        const exact = cutSquare(finished, seam);
        const marked = cutSquare(finished, seam, MARK);
        expect(atMost(exact, marked)).toBe(true);
        expect(marked - exact).toBeLessThan(MARK);
      }),
    );
  });
});

describe("cutHalfSquare", () => {
  test("one or two at once: the cut triangle, its sides moved inward by the seam, has the finished leg", () => {
    fc.assert(
      fc.property(lengths(0.5, 30), seams, (finished, seam) => {
        const cut = cutHalfSquare(finished, 2, seam, EXACT);
        // The incenter keeps its place; the inradius of a right isosceles triangle is leg / (2 + √2).
        const inradius = cut / (2 + Math.SQRT2);
        expect((cut * (inradius - seam)) / inradius).toBeCloseTo(finished, 9);
      }),
    );
  });

  test("four at once: a quarter of the sewn square, cut on both diagonals, is the unfinished unit", () => {
    fc.assert(
      fc.property(lengths(0.5, 30), seams, (finished, seam) => {
        const insideTheSeams = cutHalfSquare(finished, 4, seam, EXACT) - 2 * seam;
        const halfDiagonal = Math.hypot(insideTheSeams, insideTheSeams) / 2;
        expect(halfDiagonal).toBeCloseTo(finished + 2 * seam, 9);
      }),
    );
  });

  test("eight at once: a quarter of the pair is a pair for two at once", () => {
    fc.assert(
      fc.property(lengths(0.5, 30), seams, (finished, seam) => {
        const pair = cutHalfSquare(finished, 2, seam, EXACT);
        expect(cutHalfSquare(finished, 8, seam, EXACT) / 2).toBeCloseTo(pair, 9);
      }),
    );
  });

  test("grows with the finished size and is never too small at a mark", () => {
    fc.assert(
      fc.property(lengths(0.5, 30), lengths(0.125, 3), fc.constantFrom(...MADE_AT_ONCE), (finished, more, atOnce) => {
        const exact = cutHalfSquare(finished, atOnce, undefined, EXACT);
        expect(cutHalfSquare(inches(finished + more), atOnce, undefined, EXACT)).toBeGreaterThan(exact);
        expect(atMost(exact, cutHalfSquare(finished, atOnce))).toBe(true);
      }),
    );
  });
});
