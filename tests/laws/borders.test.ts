import fc from "fast-check";
import { BORDER_WAYS, borderFabric, borderStrips } from "../../src/math/borderFabric";
import { JOINS } from "../../src/math/joins";
import {
  borderFit,
  borderGap,
  borderLengths,
  borderMeasured,
  borderSize,
  borderUnits,
  CORNERS,
  onMark,
} from "../../src/math/borders";
import { Problem } from "../../src/math/problem";
import { atMost, TOLERANCE } from "../../src/math/rounding";
import { type Inches, inches, toInches } from "../../src/math/units";
import { lengths, seams } from "./arbitraries";

const sides = lengths(10, 110);
const borders = lengths(1, 14);
const fabricWidths = lengths(30, 60);

/** Every order of some lengths. */
function orders(all: readonly number[]): number[][] {
  if (all.length === 0) return [[]];
  return all.flatMap((first, index) =>
    orders(all.filter((_, other) => other !== index)).map((rest) => [first, ...rest]),
  );
}

/** Fewest strips by cutting: in every order, each side from what is left of the row so far or from a new strip. */
function fewestByCutting(cuts: readonly number[], width: number, lost: number): number {
  let fewest = Infinity;
  for (const order of orders(cuts)) {
    for (let fresh = 0; fresh < 2 ** order.length; fresh++) {
      let [strips, left] = [0, 0];
      order.forEach((cut, index) => {
        if ((fresh >> index) & 1) left = 0;
        if (left <= TOLERANCE) [strips, left] = [strips + 1, width];
        while (left < cut - TOLERANCE) [strips, left] = [strips + 1, left + width - lost];
        left -= cut;
      });
      fewest = Math.min(fewest, strips);
    }
  }
  return fewest;
}

describe("borderLengths", () => {
  test("butted or with cornerstones, the sewn pieces cover the border and nothing twice", () => {
    fc.assert(
      fc.property(
        sides,
        sides,
        borders,
        seams,
        fc.constantFrom("butted" as const, "cornerstones" as const),
        (width, length, border, seam, corner) => {
          const pieces = borderLengths(width, length, border, { corner, seam });
          const area = pieces.reduce(
            (sum, piece) => sum + piece.count * (piece.width - 2 * seam) * (piece.length - 2 * seam),
            0,
          );
          const outside = borderSize(width, length, border);
          expect(area).toBeCloseTo(outside.width * outside.length - width * length, 6);
        },
      ),
    );
  });

  test("mitered, a strip reaches past the diagonal seam and its allowance at the finished edge", () => {
    fc.assert(
      fc.property(sides, sides, borders, seams, (width, length, border, seam) => {
        const [down, across] = borderLengths(width, length, border, { corner: "mitered", seam });
        // The diagonal seam leaves the corner of the quilt at 45°; its allowance is a line a seam beyond it.
        const beyondCorner = border + seam / Math.cos(Math.PI / 4);
        expect(atMost(length + 2 * beyondCorner, down.length)).toBe(true);
        expect(atMost(width + 2 * beyondCorner, across.length)).toBe(true);
      }),
    );
  });
});

describe("borderStrips", () => {
  test("agrees with cutting the sides in every order", () => {
    fc.assert(
      fc.property(
        sides,
        sides,
        borders,
        fabricWidths,
        fc.constantFrom(...CORNERS),
        fc.constantFrom(...JOINS),
        seams,
        (width, length, border, fabricWidth, corner, join, seam) => {
          const cuts = borderLengths(width, length, border, { corner, seam }).filter(
            (row) => row.piece !== "cornerstones",
          );
          const lost = (join === "diagonal" ? border : 0) + 2 * seam;
          const all = cuts.flatMap((row) => [row.length, row.length]);
          const strips = borderStrips(width, length, border, { fabricWidth, corner, join, seam });
          expect(strips).toBe(fewestByCutting(all, fabricWidth, lost));
        },
      ),
      { numRuns: 60 },
    );
  });

  test("four sides that are just a strip long take four strips", () => {
    fc.assert(
      fc.property(fabricWidths, borders, fc.constantFrom(...JOINS), (fabricWidth, border, join) => {
        const side = inches(fabricWidth - 0.5);
        expect(borderStrips(side, side, border, { fabricWidth, corner: "cornerstones", join })).toBe(4);
      }),
    );
  });
});

describe("borderFabric", () => {
  test("the best is the less of the two ways, and holds the area of the border", () => {
    fc.assert(
      fc.property(sides, sides, borders, fabricWidths, (width, length, border, fabricWidth) => {
        const [best, across, along] = BORDER_WAYS.map((way) =>
          borderFabric(width, length, border, way, undefined, { fabricWidth }),
        );
        expect(best).toBe(Math.min(across, along));
        const area = borderLengths(width, length, border).reduce((sum, row) => sum + 2 * row.width * row.length, 0);
        expect(atMost(area, best * fabricWidth + 1e-6)).toBe(true);
      }),
    );
  });
});

describe("borderUnits and borderGap", () => {
  test("the units cover the side, one unit fewer does not", () => {
    fc.assert(
      fc.property(sides, lengths(0.5, 15), (side, unit) => {
        const units = borderUnits(side, unit);
        expect(atMost(side, units * unit)).toBe(true);
        expect(atMost(side, (units - 1) * unit)).toBe(false);
        expect(borderGap(side, unit)).toBeCloseTo(Math.max(0, units * unit - side), 9);
      }),
    );
  });
});

describe("borderFit", () => {
  const options = fc.record({
    depth: lengths(1, 10),
    leastSpacer: fc.oneof(fc.constant(inches(0)), lengths(0.25, 5)),
    mark: fc.constantFrom(inches(0), inches(1 / 8), inches(1 / 16)),
  });

  test("quilt, spacers and easing make up the units; one unit fewer would be too few", () => {
    fc.assert(
      fc.property(sides, sides, lengths(1, 12), options, (width, length, unit, option) => {
        const fit = borderFit(width, length, unit, option);
        for (const [side, fitted] of [
          [width, fit.across],
          [length, fit.down],
        ] as const) {
          expect(side + 2 * fitted.spacer + fitted.eased).toBeCloseTo(fitted.units * unit, 6);
          expect(Math.abs(fitted.eased)).toBeLessThanOrEqual(option.mark);
          expect(fitted.eased === 0 || fitted.spacer === 0).toBe(true);
          expect(atMost(option.leastSpacer, fitted.spacer)).toBe(true);
          expect((fitted.units - 1) * unit).toBeLessThan(side + 2 * option.leastSpacer + 1e-6);
        }
      }),
    );
  });

  test("units set round the quilt one after another are as many, and reach the outside", () => {
    fc.assert(
      fc.property(sides, sides, lengths(1, 12), options, (width, length, unit, option) => {
        const fit = borderFit(width, length, unit, option);
        let units = 0;
        for (const [edge, covered] of [
          [fit.outside.width, fit.across.covered],
          [fit.outside.length, fit.down.covered],
        ] as const) {
          let place = option.depth;
          for (; place < edge - option.depth - TOLERANCE; place = inches(place + unit)) units += 2;
          expect(place + option.depth).toBeCloseTo(edge, 6);
          expect(place - option.depth).toBeCloseTo(covered, 6);
        }
        expect(fit.units).toBe(units + 4);
      }),
    );
  });

  test("a side that misses whole units by a mark is eased, by more is not; no side goes without a unit", () => {
    const fitted = (side: number) => borderFit(inches(side), inches(48), inches(6), { mark: inches(1 / 8) }).across;
    expect(fitted(48 - 1 / 8)).toMatchObject({ units: 8, eased: 1 / 8, spacer: 0 });
    expect(fitted(48 - 3 / 16)).toMatchObject({ units: 8, eased: 0, spacer: 3 / 32 });
    expect(fitted(1 / 16)).toMatchObject({ units: 1, eased: 0 });
  });

  test("a mark of difference is eased in whatever the side", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 40 }), fc.constantFrom(-0.1, 0.1), (units, off) => {
        const unit = toInches(10, "cm");
        const fit = borderFit(toInches(10 * units + off, "cm"), unit, unit, { mark: toInches(0.1, "cm") });
        expect(fit.across.units).toBe(units);
        expect(fit.across.spacer).toBe(0);
      }),
    );
  });

  test("a spacer at a mark is told from one between marks", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (eighths) => {
        expect(onMark(inches(eighths / 8), inches(1 / 8))).toBe(true);
        expect(onMark(inches(eighths / 8 + 1 / 16), inches(1 / 8))).toBe(false);
      }),
    );
  });
});

describe("borderMeasured", () => {
  test("half an inch of difference passes, more does not", () => {
    const outOfSquare = (most: number) =>
      borderMeasured([60, 60.25, most].map(inches) as [Inches, Inches, Inches]).outOfSquare;
    expect([60.5, 60.5625, 61].map(outOfSquare)).toEqual([false, true, true]);
  });

  test("lies between the measurements, whatever their order", () => {
    fc.assert(
      fc.property(sides, sides, sides, (first, second, third) => {
        const measured = borderMeasured([first, second, third]);
        const [least, most] = [Math.min(first, second, third), Math.max(first, second, third)];
        expect(atMost(least, measured.length)).toBe(true);
        expect(measured.length).toBeLessThan(most + 1 / 8);
        expect(measured.spread).toBeCloseTo(most - least, 9);
        expect(measured.outOfSquare).toBe(most - least > 1 / 2 + TOLERANCE);
        expect(borderMeasured([third, first, second]).length).toBeCloseTo(measured.length, 9);
      }),
    );
  });
});

test("units that fit exactly leave no gap", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 5, max: 99 }), (units, tenths) => {
      expect(borderGap(inches((units * tenths) / 10), inches(tenths / 10))).toBe(0);
    }),
  );
});

test("any border whatever gives numbers or a Problem", () => {
  const wild = fc
    .oneof(fc.constantFrom(0, -1, 0.5, 1e-12, NaN, Infinity), fc.double({ min: 1e-9, max: 1e7 }))
    .map(inches);
  fc.assert(
    fc.property(wild, wild, wild, wild, wild, (width, length, border, fabricWidth, seam) => {
      for (const ask of [
        () => borderLengths(width, length, border, { seam, corner: "mitered" }),
        () => borderStrips(width, length, border, { fabricWidth, seam }),
        () => borderFabric(width, length, border, "best", undefined, { fabricWidth, seam, join: "diagonal" }),
        () => borderFit(width, length, border, { depth: fabricWidth, leastSpacer: seam }),
        () => borderMeasured([width, length, border], seam),
        () => borderUnits(width, border),
      ]) {
        try {
          expect(JSON.stringify(ask())).not.toMatch(/null|NaN|Infinity/);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(Problem);
        }
      }
    }),
  );
});
