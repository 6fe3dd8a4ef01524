import fc from "fast-check";
import { seamLength, threadLength } from "../../src/math/thread";
import { inches } from "../../src/math/units";
import { lengths, seams } from "./arbitraries";

const counts = fc.integer({ min: 1, max: 40 });

describe("seamLength", () => {
  test("agrees with sewing patch to patch and row to row", () => {
    fc.assert(
      fc.property(counts, counts, lengths(0.5, 15), seams, (across, down, patch, seam) => {
        const cut = patch + 2 * seam;
        let sewn = 0;
        for (let row = 0; row < down; row++) {
          let rowWidth = cut;
          for (let joined = 1; joined < across; joined++) {
            sewn += cut;
            rowWidth += cut - 2 * seam;
          }
          if (row > 0) sewn += rowWidth;
        }
        expect(seamLength(across, down, patch, seam)).toBeCloseTo(sewn, 6);
      }),
    );
  });

  test("without allowances it is the lines inside the grid, the same when the quilt is turned", () => {
    fc.assert(
      fc.property(counts, counts, lengths(0.5, 15), (across, down, patch) => {
        const lines = seamLength(across, down, patch, inches(0));
        const edges = 2 * across * down * patch - (across + down) * patch;
        expect(lines).toBeCloseTo(edges, 6);
        expect(seamLength(down, across, patch, inches(0))).toBeCloseTo(lines, 6);
      }),
    );
  });
});

describe("threadLength", () => {
  test("two seams take the thread of both, and never less thread than seam", () => {
    fc.assert(
      fc.property(lengths(0, 5000), lengths(0, 5000), (first, second) => {
        const both = threadLength(inches(first + second));
        expect(both).toBeCloseTo(threadLength(first) + threadLength(second), 6);
        expect(both).toBeGreaterThanOrEqual(first + second);
      }),
    );
  });
});
