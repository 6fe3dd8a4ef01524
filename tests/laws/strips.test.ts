import fc from "fast-check";
import { fabric } from "../../src/math/fabric";
import { atMost, covers, fits, roundDownTo, roundUpTo, TOLERANCE } from "../../src/math/rounding";
import { stripFabric, stripPatches, stripSets, stripsFrom, stripsNeeded, stripTriangles } from "../../src/math/strips";
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

describe("stripTriangles", () => {
  test("agrees with setting one triangle after another, half a base along", () => {
    fc.assert(
      fc.property(lengths(1, 12), lengths(1, 14), widths, lengths(0, 1), (height, base, width, squaring) => {
        fc.pre(base <= width - squaring);
        let [triangles, end] = [0, Number(base)];
        while (end <= width - squaring + TOLERANCE) {
          triangles += 1;
          end += base / 2;
        }
        expect(stripTriangles(height, base, width, squaring)).toBe(triangles);
      }),
    );
  });

  test("without a base all three sides are equal", () => {
    fc.assert(
      fc.property(lengths(1, 12), widths, (height, width) => {
        const side = inches(height / Math.sin(Math.PI / 3));
        fc.pre(side <= width);
        expect(stripTriangles(height, undefined, width)).toBe(stripTriangles(height, side, width));
      }),
    );
  });
});

describe("stripsNeeded and stripSets", () => {
  test("the strips hold the patches, one strip fewer does not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), lengths(0.5, 15), widths, (count, patch, width) => {
        const strips = stripsNeeded(count, patch, width);
        const perStrip = stripPatches(patch, width);
        expect(strips * perStrip).toBeGreaterThanOrEqual(count);
        expect((strips - 1) * perStrip).toBeLessThan(count);
        expect(stripSets(count, patch, width)).toBe(strips);
      }),
    );
  });
});

describe("stripsFrom", () => {
  test("agrees with cutting one strip after another", () => {
    fc.assert(
      fc.property(lengths(0, 200), lengths(1, 12), lengths(0, 3), (length, stripWidth, squaring) => {
        let [strips, left] = [0, length - squaring];
        while (left >= stripWidth - TOLERANCE) {
          left -= stripWidth;
          strips += 1;
        }
        expect(stripsFrom(length, stripWidth, squaring)).toBe(strips);
      }),
    );
  });

  test("the amount bought for a number of strips yields them", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), lengths(1, 12), lengths(0, 3), (strips, stripWidth, squaring) => {
        const bought = stripFabric(strips, stripWidth, undefined, squaring);
        expect(stripsFrom(bought, stripWidth, squaring)).toBeGreaterThanOrEqual(strips);
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
