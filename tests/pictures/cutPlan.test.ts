import fc from "fast-check";
import { GRAINS, type ListedPatch, plan, type Plan } from "../../src/math/plans";
import { inches, toInches } from "../../src/math/units";
import { cutPlanPicture } from "../../src/pictures/cutPlan";
import { areaOf, boxOf, expectPixels, PIXEL, type ReadPicture, readPicture } from "./reading";

function row(label: string, width: number, height: number, count: number, grain: ListedPatch["grain"] = "any") {
  return { label, width: inches(width), height: inches(height), count, grain };
}

const eighths = fc.integer({ min: 8, max: 20 * 8 }).map((marks) => inches(marks / 8));
const rows = fc.record({
  label: fc.constantFrom("star", "a & b", "<i>", "", "größe"),
  width: eighths,
  height: eighths,
  count: fc.integer({ min: 1, max: 12 }),
  grain: fc.constantFrom(...GRAINS.slice(0, 2)),
});

/** Pixels for an inch, from the width of the fabric. */
function scaleOf(picture: ReadPicture, { fabricWidth }: Plan): number {
  return boxOf(picture.shapes("strip")[0]).width / fabricWidth;
}

/** Pieces in the order in which a plan lists them, strips that are cut alike once. */
function piecesOf({ cuts, mark }: Plan) {
  return cuts.strips.flatMap(({ pieces, times }) =>
    pieces.flatMap((piece) =>
      Array.from({ length: piece.count }, () => ({
        width: piece.across * mark,
        height: piece.along * mark,
        row: piece.row,
        times,
      })),
    ),
  );
}

describe("cutPlanPicture", () => {
  test("draws every piece of a plan once, to scale, and counts up to the list", () => {
    fc.assert(
      fc.property(fc.array(rows, { minLength: 1, maxLength: 6 }), (list) => {
        const planned = plan(list);
        const picture = readPicture(cutPlanPicture("A plan", planned));
        const scale = scaleOf(picture, planned);
        const drawn = picture.shapes("piece").map(boxOf);
        const expected = piecesOf(planned);
        expect(drawn).toHaveLength(expected.length);
        for (const [index, { width, height }] of expected.entries()) {
          expectPixels(drawn[index].width, width * scale);
          expectPixels(drawn[index].height, height * scale);
        }
        const counts = list.map((_row, index) =>
          expected.filter((piece) => piece.row === index).reduce((sum, { times }) => sum + times, 0),
        );
        expect(counts).toEqual(list.map(({ count }) => count));
        const area = picture
          .shapes("piece")
          .reduce((sum, shape, index) => sum + areaOf(shape) * expected[index].times, 0);
        const planArea = planned.cuts.patchArea * planned.mark ** 2 * scale ** 2;
        expect(Math.abs(area / planArea - 1)).toBeLessThan(0.002);
      }),
      { numRuns: 15 },
    );
  });

  test("every piece lies in one strip, and no two lie on one another", () => {
    fc.assert(
      fc.property(fc.array(rows, { minLength: 1, maxLength: 6 }), (list) => {
        const planned = plan(list);
        const picture = readPicture(cutPlanPicture("A plan", planned));
        const strips = picture.shapes("strip").map(boxOf);
        expect(strips).toHaveLength(planned.cuts.strips.length);
        let left = picture.shapes("piece").map(boxOf);
        for (const [index, strip] of strips.entries()) {
          const count = planned.cuts.strips[index].pieces.reduce((sum, piece) => sum + piece.count, 0);
          const pieces = left.slice(0, count);
          left = left.slice(count);
          let end = strip.left;
          for (const piece of pieces) {
            expectPixels(piece.left, end);
            expectPixels(piece.top, strip.top);
            expect(piece.height).toBeLessThanOrEqual(strip.height + 2 * PIXEL);
            end = piece.left + piece.width;
          }
          expect(end).toBeLessThanOrEqual(strip.left + strip.width + 2 * PIXEL);
        }
        expect(left).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });

  test("strips that are cut alike are drawn once, with how many", () => {
    const picture = readPicture(cutPlanPicture("A plan", plan([row("block", 12.5, 12.5, 9)])));
    expect(picture.shapes("strip")).toHaveLength(1);
    expect(picture.shapes("piece")).toHaveLength(3);
    expect(picture.words).toContain("12 1/2 in high, × 3");
    expect(picture.words).toContain("A  block: 9 of 12 1/2 in × 12 1/2 in");
    expect(picture.words).toContain("3 strips, 37 1/2 in of fabric");
  });

  test("every kind has a letter and a line in the list, and thirty kinds stay legible", () => {
    const list = Array.from({ length: 30 }, (_, index) => row(`kind ${index + 1}`, 2 + index / 2, 3 + (index % 7), 2));
    const planned = plan(list);
    const svg = cutPlanPicture("Thirty kinds", planned);
    const { words } = readPicture(svg);
    const letters = words.filter((line) => /^[A-Z]{1,2} {2}kind/.test(line)).map((line) => line.split(" ")[0]);
    expect(letters).toHaveLength(30);
    expect(new Set(letters).size).toBe(30);
    // Each letter stands on a piece, or beside a strip where its pieces are too small.
    for (const letter of letters) {
      expect(words.filter((line) => new RegExp(`(^|\\d )${letter}($| \\d|,)`).test(line)).length).toBeGreaterThan(0);
    }
    const [, height] = /height="(\d+)"/.exec(svg)!;
    expect(Number(height)).toBeLessThan(2200);
  }, 120_000);

  test("joined patches, squaring and trims are told", () => {
    const list = [row("border", 72.5, 6.5, 2, "join"), row("square", 4.5, 4.5, 3)];
    const { words, description } = readPicture(cutPlanPicture("A plan", plan(list, { squaring: inches(1) })));
    expect(words.some((line) => /A {2}border: 2 of 72 1\/2 in × 6 1\/2 in, from 4 strips joined/.test(line))).toBe(
      true,
    );
    expect(words.some((line) => line.includes("full width"))).toBe(true);
    expect(words.some((line) => line.endsWith("1 in of it to square up"))).toBe(true);
    expect(description).toContain("3 of square 4 1/2 in");
  });

  test("metric", () => {
    const list = [{ ...row("block", 0, 0, 6), width: toInches(31.5, "cm"), height: toInches(31.5, "cm") }];
    const planned = plan(list, { system: "cm", fabricWidth: toInches(107, "cm") });
    const { words, description } = readPicture(cutPlanPicture("A plan", planned, "cm"));
    expect(words).toContain("31.5 cm high, × 2");
    expect(words).toContain("107 cm of fabric");
    expect(`${words.join()}${description}`).not.toMatch(/\d in\b/);
  });
});
