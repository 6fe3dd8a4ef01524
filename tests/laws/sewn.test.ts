import fc from "fast-check";
import { cutGeese, cutHalfSquare, cutQuarterSquare, cutSquare, cutSquareInSquare } from "../../src/math/patches";
import { cutCheck, type CutShape, finishedSize, UNIT_WAYS, unitMade, type UnitWay } from "../../src/math/sewn";
import { cutDiamond, cutHexagon, cutTriangle } from "../../src/math/shapes";
import { type Inches, inches } from "../../src/math/units";
import { withWorking } from "../../src/math/working";
import { lengths, seams } from "./arbitraries";

const EXACT = inches(0);

/** The size to cut for a finished size, by the functions that lead the other way. */
const CUT: Readonly<Record<CutShape, (finished: Inches, seam: Inches) => Inches>> = {
  square: (finished, seam) => cutSquare(finished, seam),
  corner: (finished, seam) => cutSquare(finished, seam),
  "quarter square": (finished, seam) => cutQuarterSquare(finished, seam, EXACT),
  triangle: (finished, seam) => cutTriangle(finished, undefined, seam).height,
  diamond: (finished, seam) => cutDiamond(finished, 45, seam).strip,
  hexagon: (finished, seam) => cutHexagon(finished, seam).flatToFlat,
  "half square": (finished, seam) => cutHalfSquare(finished, 2, seam, EXACT),
  "half square four": (finished, seam) => cutHalfSquare(finished, 4, seam, EXACT),
  "half square eight": (finished, seam) => cutHalfSquare(finished, 8, seam, EXACT),
  hourglass: (finished, seam) => cutQuarterSquare(finished, seam, EXACT),
  geese: (finished, seam) => cutGeese(finished, "four at once", seam, EXACT)[0].width,
  "square in square": (finished, seam) => cutSquareInSquare(finished, seam, EXACT)[0].width,
  // A half-square unit one seam across the corner larger than the hourglass unit.
  "hourglass from half squares": (finished, seam) => inches(finished + 2 * seam + Math.SQRT2 * seam),
  // The unit stands on its long side in the tube: half of the long side high, and a seam above it.
  tube: (finished, seam) => inches((finished + 2 * seam) / Math.SQRT2 + seam),
};

const shapes = Object.keys(CUT) as CutShape[];

describe("finishedSize", () => {
  test.each(shapes)("%s: undoes the cut size", (shape) => {
    fc.assert(
      fc.property(lengths(0.5, 30), seams, (finished, seam) => {
        expect(finishedSize(CUT[shape](finished, seam), shape, seam)).toBeCloseTo(finished, 9);
      }),
    );
  });
});

describe("unitMade", () => {
  test.each(UNIT_WAYS)("%s: is the finished size and two seams", (how) => {
    fc.assert(
      fc.property(lengths(0.5, 30), seams, (finished, seam) => {
        expect(unitMade(CUT[how](finished, seam), how, seam)).toBeCloseTo(finished + 2 * seam, 9);
      }),
    );
  });

  test("an hourglass unit is the same in one go and by way of half-square units", () => {
    fc.assert(
      fc.property(lengths(6, 30), seams, (cut, seam) => {
        const halfSquare = unitMade(cut, "half square", seam);
        const twice = unitMade(halfSquare, "hourglass from half squares", seam);
        expect(twice).toBeCloseTo(unitMade(cut, "hourglass", seam), 9);
      }),
    );
  });

  test("four at once: the diagonal of the square inside the seams is two sides of the unit", () => {
    fc.assert(
      fc.property(lengths(5, 30), seams, (cut, seam) => {
        const inside = cut - 2 * seam;
        expect(2 * unitMade(cut, "half square four", seam)).toBeCloseTo(Math.hypot(inside, inside), 9);
      }),
    );
  });

  test("tube: laid out, the right angle of the unit just touches the far edge of the strips", () => {
    fc.assert(
      fc.property(lengths(3, 30), seams, (strip, seam) => {
        const side = unitMade(strip, "tube", seam);
        const longSide = Math.hypot(side, side);
        expect(Math.sqrt(side ** 2 - (longSide / 2) ** 2)).toBeCloseTo(strip - seam, 9);
      }),
    );
  });
});

describe("cutCheck", () => {
  test("what comes out just as large as it is trimmed is not too small", () => {
    const { answer, steps } = withWorking(() => cutCheck(inches(4), inches(2), "half square eight", EXACT));
    expect([answer, steps.at(-1)]).toEqual([0, "0 in to spare over 2 in"]);
  });

  test("is 0 at the unit's own size, and moves with the cut and against the trim", () => {
    const hows = fc.constantFrom<UnitWay>(...UNIT_WAYS);
    fc.assert(
      fc.property(lengths(8, 30), seams, hows, lengths(0.125, 2), (cut, seam, how, more) => {
        const made = unitMade(cut, how, seam);
        expect(cutCheck(cut, made, how, seam)).toBeCloseTo(0, 9);
        expect(cutCheck(cut, inches(made + more), how, seam)).toBeCloseTo(-1 * more, 9);
        expect(cutCheck(inches(cut + more), made, how, seam)).toBeGreaterThan(0);
      }),
    );
  });
});
