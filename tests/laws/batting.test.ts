import fc from "fast-check";
import { battingPack, battingSize, PACKS } from "../../src/math/batting";
import { Problem } from "../../src/math/problem";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

const margin = lengths(0, 6);

/** Whether a quilt with its margin lies on the pack, tried both ways round with the quilt turned. */
function covers(pack: { width: number; length: number }, width: number, length: number): boolean {
  const lies = (wide: number, long: number) => wide <= pack.width + 1e-9 && long <= pack.length + 1e-9;
  return lies(width, length) || lies(length, width);
}

describe("battingSize", () => {
  test("leaves the margin on every side", () => {
    fc.assert(
      fc.property(lengths(5, 120), lengths(5, 120), margin, (width, length, extra) => {
        const [wide, long] = battingSize(width, length, extra);
        expect((wide - width) / 2).toBeCloseTo(extra, 9);
        expect((long - length) / 2).toBeCloseTo(extra, 9);
      }),
    );
  });
});

describe("battingPack", () => {
  test("covers, and no pack with less batting does; without one, none covers", () => {
    const pack = fc.record({ name: fc.string({ maxLength: 8 }), width: lengths(20, 130), length: lengths(20, 130) });
    const packs = fc.oneof(fc.constant([...PACKS]), fc.array(pack, { minLength: 1, maxLength: 8 }));
    fc.assert(
      fc.property(lengths(5, 120), lengths(5, 120), margin, packs, (width, length, extra, choices) => {
        const [wide, long] = [width + 2 * extra, length + 2 * extra];
        const fitting = choices.filter((choice) => covers(choice, wide, long));
        if (fitting.length === 0) {
          expect(() => battingPack(width, length, extra, choices)).toThrow(Problem);
          return;
        }
        const chosen = battingPack(width, length, extra, choices);
        expect(covers(chosen, wide, long)).toBe(true);
        const least = Math.min(...fitting.map((choice) => choice.width * choice.length));
        expect(chosen.width * chosen.length).toBe(least);
        const [acrossPack, alongPack] = chosen.turned ? [chosen.length, chosen.width] : [chosen.width, chosen.length];
        expect(wide).toBeLessThanOrEqual(acrossPack + 1e-9);
        expect(long).toBeLessThanOrEqual(alongPack + 1e-9);
      }),
    );
  });

  test("turning the quilt gives a pack of the same size", () => {
    fc.assert(
      fc.property(lengths(5, 100), lengths(5, 100), (width, length) => {
        const [upright, turned] = [battingPack(width, length, inches(4)), battingPack(length, width, inches(4))];
        expect(turned.name).toBe(upright.name);
      }),
    );
  });
});
