import fc from "fast-check";
import { BEDS, bedSize, mattressSize, usualDrop } from "../../src/math/beds";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

describe("bedSize", () => {
  test("laid on the bed, the quilt hangs down by the drop on each side and at the foot", () => {
    fc.assert(
      fc.property(fc.constantFrom(...BEDS), lengths(0, 30), lengths(0, 20), (bed, drop, tuck) => {
        const mattress = mattressSize(bed);
        const quilt = bedSize(mattress, drop, tuck);
        expect((quilt.width - mattress.width) / 2).toBeCloseTo(drop, 9);
        expect(quilt.length - tuck - mattress.length).toBeCloseTo(drop, 9);
      }),
    );
  });

  test("beds are longer than wide; only a crib has no usual drop", () => {
    for (const bed of BEDS) {
      const { width, length } = mattressSize(bed);
      expect(width).toBeLessThan(length);
      expect(usualDrop(bed)).toBe(inches(bed === "crib" ? 0 : 12));
    }
  });
});
