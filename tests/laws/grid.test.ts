import fc from "fast-check";
import { gridPatch } from "../../src/math/grid";
import { Problem } from "../../src/math/problem";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

const HALF = inches(1 / 2);
const QUARTER_SEAM = inches(1 / 4);
const EIGHTH = inches(1 / 8);

describe("gridPatch", () => {
  const blocks = lengths(4, 24);
  const divisions = fc.integer({ min: 1, max: 9 });

  test("patches cut at the mark and sewn together miss the block by what it says", () => {
    fc.assert(
      fc.property(blocks, divisions, (block, across) => {
        const patch = gridPatch(block, across);
        let sewn = 0;
        for (let seam = 0; seam < across; seam += 1) sewn += patch.atMark - 2 * QUARTER_SEAM;
        expect(sewn - block).toBeCloseTo(patch.addsUpTo, 9);
        // Each patch is at most half a mark off.
        expect(Math.abs(patch.addsUpTo)).toBeLessThanOrEqual((across * EIGHTH) / 2 + 1e-9);
      }),
    );
  });

  test("the clean blocks lie on both sides of the block and are clean themselves", () => {
    fc.assert(
      fc.property(blocks, divisions, (block, across) => {
        const { smallerBlock, largerBlock } = gridPatch(block, across);
        expect(largerBlock).toBeGreaterThanOrEqual(block - 1e-9);
        for (const clean of [smallerBlock, largerBlock]) {
          if (clean === undefined) continue;
          expect(gridPatch(clean, across).addsUpTo).toBe(0);
          expect(Math.abs(clean - block)).toBeLessThanOrEqual(across * HALF);
        }
        // Only below half an inch a patch is there no smaller block.
        if (smallerBlock === undefined) expect(block / across).toBeLessThan(HALF);
        else expect(smallerBlock).toBeLessThanOrEqual(block + 1e-9);
      }),
    );
  });

  test("any numbers give a patch or a Problem", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e7, noNaN: true }),
        fc.integer({ min: 1, max: 1_000_000 }),
        lengths(0, 2),
        fc.oneof(fc.constant(0), fc.double({ min: 1e-3, max: 10, noNaN: true })),
        (block, across, seam, mark) => {
          try {
            const patch = gridPatch(inches(block), across, HALF, seam, inches(mark));
            expect(Object.values(patch).every((value) => value === undefined || Number.isFinite(value))).toBe(true);
          } catch (thrown) {
            expect(thrown).toBeInstanceOf(Problem);
          }
        },
      ),
    );
  });
});
