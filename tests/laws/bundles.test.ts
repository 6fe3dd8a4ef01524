import fc from "fast-check";
import { type BundlePatch, bundleSpare } from "../../src/math/bundles";
import { TOLERANCE } from "../../src/math/rounding";
import { stripsNeeded } from "../../src/math/strips";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

const STRIP = inches(2.5);

function rows(patches: readonly { patch: number; count: number }[]): BundlePatch[] {
  return patches.map(({ patch, count }) => ({ patch: inches(patch), height: STRIP, count }));
}

/** Fewest strips for a handful of patches, by trying every strip for every patch. */
function fewestStrips(patches: readonly number[], width: number): number {
  let best = patches.length;
  const place = (index: number, left: readonly number[]): void => {
    if (left.length >= best) return;
    if (index === patches.length) {
      best = left.length;
      return;
    }
    const patch = patches[index];
    left.forEach((room, strip) => {
      if (patch <= room + TOLERANCE) {
        place(
          index + 1,
          left.map((other, at) => (at === strip ? other - patch : other)),
        );
      }
    });
    place(index + 1, [...left, width - patch]);
  };
  place(0, []);
  return best;
}

describe("bundleSpare", () => {
  test("agrees with trying every strip for every patch", () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ patch: lengths(4, 30), count: fc.integer({ min: 1, max: 3 }) }), {
          minLength: 1,
          maxLength: 3,
        }),
        lengths(30, 44),
        (wanted, width) => {
          // Both routes on sixteenths: the planner counts in whole numbers.
          const onMarks = wanted.map(({ patch, count }) => ({ patch: Math.ceil(patch * 16) / 16, count }));
          const usable = inches(Math.ceil(width * 16) / 16);
          const each = onMarks.flatMap(({ patch, count }) => Array<number>(count).fill(patch));
          const spare = bundleSpare(rows(onMarks), { strips: 40, stripWidth: STRIP, width: usable });
          expect(spare).toBe(40 - fewestStrips(each, usable));
        },
      ),
    );
  });

  test("for one size agrees with counting strips", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), lengths(1, 40), lengths(40, 44), (count, patch, width) => {
        fc.pre(Number.isInteger(patch * 16) && Number.isInteger(width * 16));
        const spare = bundleSpare(rows([{ patch, count }]), { strips: 40, stripWidth: STRIP, width });
        expect(spare).toBe(40 - stripsNeeded(count, patch, width));
      }),
    );
  });
});
