import fc from "fast-check";
import { UNIT_WAYS } from "../../src/math/sewn";
import { Problem } from "../../src/math/problem";
import { type Inches, inches, type System } from "../../src/math/units";
import { backingPicture } from "../../src/pictures/backing";
import { bedPicture } from "../../src/pictures/beds";
import { biasSquarePicture, diagonalJoinPicture } from "../../src/pictures/binding";
import { borderFitPicture, borderLengthsPicture, borderMeasuredPicture } from "../../src/pictures/borders";
import * as patches from "../../src/pictures/patches";
import { settingTrianglePicture, topPicture } from "../../src/pictures/settings";
import * as shapes from "../../src/pictures/shapes";
import { stripPatchesPicture, stripSetPicture, stripTrianglesPicture } from "../../src/pictures/strips";
import { tubePicture, tubeUnitsPicture } from "../../src/pictures/tubes";
import { readPicture } from "./reading";

interface Arguments {
  a: Inches;
  b: Inches;
  c: Inches;
  count: number;
  system: System;
  seam: Inches;
}

const anyLength = fc
  .oneof(fc.constantFrom(0, -1, NaN, Infinity, 1e-9, 1e9, 0.25), fc.double({ min: 0.05, max: 150, noNaN: true }))
  .map(inches);

const anyArguments: fc.Arbitrary<Arguments> = fc.record({
  a: anyLength,
  b: anyLength,
  c: anyLength,
  count: fc.oneof(fc.constantFrom(0, -1, 2.5, NaN, 1e6), fc.integer({ min: 1, max: 12 })),
  system: fc.constantFrom("in", "cm"),
  seam: fc.constantFrom(0, 0.25, 0.3, 2).map(inches),
});

/** Pictures as they are asked for with any sizes at all. */
const PICTURES: Record<string, (given: Arguments) => string | undefined> = {
  square: ({ a, ...options }) => patches.squarePicture(a, options),
  "half square": ({ a, count, ...options }) => patches.halfSquarePicture(a, count % 2 === 0 ? 4 : 1, options),
  "quarter square": ({ a, ...options }) => patches.quarterSquarePicture(a, options),
  corner: ({ a, ...options }) => patches.cornerPicture(a, options),
  geese: ({ a, count, ...options }) => patches.geesePicture(a, "four at once", options, count),
  "square in square": ({ a, ...options }) => patches.squareInSquarePicture(a, options),
  "unit made": ({ a, count, ...options }) => {
    return patches.unitMadePicture(a, UNIT_WAYS[count] ?? "half square", options);
  },
  "half rectangle": ({ a, b, ...options }) => shapes.halfRectanglePicture(a, b, options),
  triangle: ({ a, b, ...options }) => shapes.trianglePicture(a, b, options),
  diamond: ({ a, b, ...options }) => shapes.diamondPicture(a, b, options),
  hexagon: ({ a, ...options }) => shapes.hexagonPicture(a, options),
  star: ({ a, count, ...options }) => shapes.starPicture(a, Math.min(count, 12), options),
  template: ({ a, b, c, ...options }) => shapes.templatePicture([corner(a, b), corner(b, c), corner(c, a)], options),
  "strip patches": ({ a, b, ...options }) => stripPatchesPicture(a, { ...options, squaring: b }),
  "strip triangles": ({ a, b, c, ...options }) => stripTrianglesPicture(a, b, { ...options, width: c }),
  "strip set": ({ a, b, c, ...options }) => stripSetPicture([a, b], { ...options, segment: c }),
  tube: ({ a, b, c, count, system }) => tubePicture([{ trim: a, count }], { stripWidth: b, seam: c }, { system }),
  "tube units": ({ a, b, c, system }) => tubeUnitsPicture(a, b, { stripWidth: c }, system),
  top: ({ a, b, count, system }) => {
    return topPicture(count, count, a, { sashing: b, setting: "on point", edge: "sashed", system });
  },
  "side triangle": ({ a, ...options }) => settingTrianglePicture("side triangle", a, options),
  "border lengths": ({ a, b, c, ...options }) => borderLengthsPicture(a, b, c, { ...options, corner: "mitered" }),
  "border measured": ({ a, b, c, ...options }) => borderMeasuredPicture([a, b, c], options),
  "border fit": ({ a, b, c, ...options }) => borderFitPicture(a, b, c, options),
  backing: ({ a, b, c, system }) => backingPicture(a, b, { fabricWidth: c, system }),
  "diagonal join": ({ a, ...options }) => diagonalJoinPicture(a, options),
  "bias square": ({ a, b, ...options }) => biasSquarePicture(a, b, options),
  bed: ({ a, b, c, system }) => bedPicture({ width: a, length: b }, { drop: c, system }),
};

function corner(x: Inches, y: Inches) {
  return { x, y };
}

describe("any sizes give a whole picture or a sentence", () => {
  test.each(Object.entries(PICTURES))("%s", (_name, draw) => {
    fc.assert(
      fc.property(anyArguments, (given) => {
        let svg: string | undefined;
        try {
          svg = draw(given);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(Problem);
        }
        if (svg !== undefined) readPicture(svg);
      }),
      { numRuns: 30 },
    );
  });
});
