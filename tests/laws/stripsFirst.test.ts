/** Laws of a roll of strips used first, against packing every patch in every way. */
import fc from "fast-check";
import type { ListedPatch } from "../../src/math/plans";
import { stripsFirst } from "../../src/math/stripsFirst";
import { inches, toInches } from "../../src/math/units";

const WIDTH = inches(2.5);
const LENGTH = inches(12);

const patch = fc.record({
  label: fc.constant("patch"),
  width: fc.constantFrom(2.5, 3, 4.5, 5, 7, 7.5, 12, 13).map(inches),
  height: fc.constantFrom(2.5, 2.5, 2.5, 3).map(inches),
  count: fc.integer({ min: 0, max: 5 }),
  grain: fc.constantFrom("any" as const, "upright" as const),
});
const list = fc.array(patch, { minLength: 1, maxLength: 3 });
const strips = fc.integer({ min: 0, max: 3 });

/** The fewest strips for pieces of these lengths, by trying every place for every piece. */
function fewestStrips(lengths: readonly number[], most: number, left: readonly number[] = []): number {
  if (lengths.length === 0) return left.length;
  const [piece, ...others] = lengths;
  const places = left.flatMap((room, at) => (room >= piece ? [left.with(at, room - piece)] : []));
  if (piece <= LENGTH && left.length < most) places.push([...left, LENGTH - piece]);
  return Math.min(Infinity, ...places.map((place) => fewestStrips(others, most, place)));
}

/** What lies along the strip, where the patch can come from one. */
function along({ width, height, grain }: ListedPatch): number | undefined {
  if (height === 2.5) return width;
  return width === 2.5 && grain === "any" ? height : undefined;
}

test("each row in turn gets as many from the strips as packing in any way allows, and the fewest strips are used", () => {
  fc.assert(
    fc.property(list, strips, (patches, atHand) => {
      const lengths: number[] = [];
      for (const { patch: listed, fromStrips, fromYardage } of stripsFirst(patches, atHand, WIDTH, LENGTH).rows) {
        expect(fromStrips + fromYardage).toBe(listed.count);
        const length = along(listed);
        for (let piece = 0; piece < listed.count; piece++) {
          const fits = length !== undefined && fewestStrips([...lengths, length], atHand) <= atHand;
          expect(fits).toBe(piece < fromStrips);
          if (fits) lengths.push(length);
        }
      }
      const { stripsUsed, stripsLeft } = stripsFirst(patches, atHand, WIDTH, LENGTH);
      expect(stripsUsed).toBe(fewestStrips(lengths, atHand));
      expect(stripsLeft).toBe(atHand - stripsUsed);
    }),
    { numRuns: 300 },
  );
});

test("patches that fill a strip to a hair's breadth fill it, whatever the ruler", () => {
  const exact = fc.record({
    unit: fc.constantFrom("in" as const, "cm" as const),
    parts: fc.constantFrom(3, 8, 10, 16, 100),
    along: fc.integer({ min: 1, max: 900 }),
    each: fc.integer({ min: 1, max: 30 }),
    atHand: fc.integer({ min: 1, max: 4 }),
  });
  const short = exact.filter(({ along, parts, each, unit }) => {
    // Thirds, eighths and sixteenths of a centimeter stand in no list.
    return (along * each) / parts < 150 && along / parts > 0.5 && !(unit === "cm" && [3, 8, 16].includes(parts));
  });
  fc.assert(
    fc.property(short, ({ unit, parts, along, each, atHand }) => {
      const listed = { label: "", width: toInches(along / parts, unit), height: WIDTH, grain: "any" as const };
      const strip = toInches((along * each) / parts, unit);
      const [row] = stripsFirst([{ ...listed, count: each * atHand + 1 }], atHand, WIDTH, strip).rows;
      expect([row.fromStrips, row.fromYardage]).toEqual([each * atHand, 1]);
    }),
    { numRuns: 200 },
  );
});
