import fc from "fast-check";
import {
  cutGeese,
  cutHalfSquare,
  cutQuarterSquare,
  cutSquare,
  cutSquareInSquare,
  GEESE_METHODS,
  MADE_AT_ONCE,
} from "../../src/math/patches";
import { atMost } from "../../src/math/rounding";
import { inches } from "../../src/math/units";
import { lengths, seams } from "./arbitraries";
import { cutOutline, expectClose, extent, points } from "./outline";

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

describe("cutQuarterSquare", () => {
  test("a quarter of the cut square is the finished triangle with all sides moved outward by the seam", () => {
    fc.assert(
      fc.property(lengths(0.5, 30), lengths(0.0625, 1), (finished, seam) => {
        const outline = cutOutline(points([0, 0], [finished, 0], [finished / 2, finished / 2]), seam);
        expectClose(cutQuarterSquare(finished, seam, EXACT), extent(outline).width);
      }),
    );
  });

  test("its triangles are those of a half-square, cut with their long edge on the grain", () => {
    fc.assert(
      fc.property(lengths(0.5, 30), seams, (leg, seam) => {
        const longEdge = inches(leg * Math.SQRT2);
        const cut = cutQuarterSquare(longEdge, seam, EXACT);
        expect(cut).toBeCloseTo(cutHalfSquare(leg, 1, seam, EXACT) * Math.SQRT2, 9);
      }),
    );
  });
});

describe("cutGeese", () => {
  test("the finished triangles fill the units", () => {
    fc.assert(
      fc.property(lengths(1, 20), fc.constantFrom("four at once" as const, "triangles" as const), (width, method) => {
        const [large, small, unit] = cutGeese(width, method, undefined, EXACT) as [Row, Row, Row];
        const goose = (large.finished * large.finished) / 4;
        const corner = small.finished ** 2 / 2;
        expect(goose + 2 * corner).toBeCloseTo((unit.finished * width) / 2, 9);
      }),
    );
  });

  test("enough is cut for the units wanted, and no set too many", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.constantFrom(...GEESE_METHODS), (units, method) => {
        const rows = cutGeese(inches(4), method, undefined, undefined, units);
        const made = rows.at(-1)!.count;
        expect(made).toBeGreaterThanOrEqual(units);
        expect(made).toBeLessThan(units + 4);
        const [large, small] = rows as [Row, Row];
        if (method === "triangles") expect([large.count * 4 >= made, small.count * 2]).toEqual([true, made * 2]);
        if (method === "four at once") expect([large.count * 4, small.count]).toEqual([made, made]);
        if (method === "corners") expect([large.count, small.count]).toEqual([made, made * 2]);
      }),
    );
  });

  test("what is trimmed after sewing is rounded up to the usual mark, what is sewn as cut is not", () => {
    const sizes = (method?: (typeof GEESE_METHODS)[number]) => cutGeese(inches(4.2), method).map(({ width }) => width);
    expect(sizes().slice(0, 2)).toEqual([5.5, 3]);
    expect(sizes("four at once")).toEqual(sizes());
    expect(sizes("triangles").slice(0, 2)).toEqual([5.5, 3]);
    expect(sizes("corners").slice(0, 2)).toEqual([4.7, 2.6]);
  });

  test("sewn across the corners: what is cut away, with the corner that stays, was the square", () => {
    fc.assert(
      fc.property(lengths(1, 20), seams, (width, seam) => {
        const [, square, waste] = cutGeese(width, "corners", seam) as [Row, Row, Row];
        // Along the diagonal of the square: half of it, less a seam, is the height of the triangle cut away.
        expect(waste.width / Math.SQRT2).toBeCloseTo(square.width / Math.SQRT2 - seam, 9);
        if (waste.finished > 0) {
          expect(cutHalfSquare(waste.finished, 1, seam, EXACT)).toBeCloseTo(waste.width, 9);
        }
      }),
    );
  });
});

describe("cutSquareInSquare", () => {
  test("the finished patches fill the unit", () => {
    fc.assert(
      fc.property(lengths(1, 30), (finished) => {
        const [center, corner] = cutSquareInSquare(finished, undefined, EXACT) as [Row, Row];
        expect(center.finished ** 2 + corner.count * corner.finished ** 2).toBeCloseTo(finished ** 2, 6);
      }),
    );
  });
});

type Row = ReturnType<typeof cutGeese>[number];
