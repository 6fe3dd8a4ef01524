import fc from "fast-check";
import { borderGap, borderUnits } from "../../src/math/borders";
import { fabric } from "../../src/math/fabric";
import { atMost, covers, fits, roundDownTo, roundUpTo, TOLERANCE } from "../../src/math/rounding";
import { stripFabric, stripPatches } from "../../src/math/strips";
import { inches } from "../../src/math/units";
import { lengths, widths } from "./arbitraries";

describe("stripPatches", () => {
  test("agrees with cutting one patch after another", () => {
    fc.assert(
      fc.property(lengths(0.5, 15), widths, lengths(0, 2), (patch, width, squaring) => {
        fc.pre(patch <= width - squaring);
        let [patches, left] = [0, width - squaring];
        while (left >= patch - TOLERANCE) {
          left -= patch;
          patches += 1;
        }
        expect(stripPatches(patch, width, squaring)).toBe(patches);
      }),
    );
  });

  test("whole patches that fill the strip exactly all count, whatever the binary fractions", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), lengths(0.1, 12), (count, patch) => {
        expect(stripPatches(patch, inches(count * patch))).toBe(count);
        expect(covers(patch, count * patch)).toBe(count);
        expect(fits(patch, count * patch)).toBe(count);
      }),
    );
  });
});

describe("stripFabric", () => {
  test("is enough for the strips and less than a step more", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), lengths(1, 12), lengths(0, 4), (strips, width, squaring) => {
        const needed = strips * width + squaring;
        const amount = stripFabric(strips, width, undefined, squaring);
        expect(atMost(needed, amount)).toBe(true);
        expect(amount - needed).toBeLessThan(4.5);
        expect(amount).toBe(fabric(inches(needed)));
      }),
    );
  });
});

describe("borderUnits and borderGap", () => {
  test("the units cover the side, one unit fewer does not", () => {
    fc.assert(
      fc.property(lengths(1, 130), lengths(0.5, 15), (side, unit) => {
        const units = borderUnits(side, unit);
        expect(atMost(side, units * unit)).toBe(true);
        expect(atMost(side, (units - 1) * unit)).toBe(false);
        expect(borderGap(side, unit)).toBeCloseTo(Math.max(0, units * unit - side), 9);
      }),
    );
  });
});

describe("rounding", () => {
  test("up and down enclose the value, within a step", () => {
    fc.assert(
      fc.property(lengths(0, 200), fc.constantFrom(1 / 16, 1 / 8, 1 / 4, 4.5, 100 / 2.54 / 10), (value, step) => {
        const [down, up] = [roundDownTo(inches(step), value), roundUpTo(inches(step), value)];
        expect(atMost(down, value)).toBe(true);
        expect(atMost(value, up)).toBe(true);
        expect(up - down).toBeLessThan(step + 1e-6);
        expect(roundUpTo(inches(step), up)).toBeCloseTo(up, 9);
        expect(roundDownTo(inches(step), down)).toBeCloseTo(down, 9);
      }),
    );
  });
});
