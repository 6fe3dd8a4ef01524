/** What pictures say: it agrees with what the working and the notes say, one of a thing is told in the singular. */
import { easedText } from "../../src/math/borders";
import { showing } from "../../src/math/show";
import { inches } from "../../src/math/units";
import { borderFitPicture, borderLengthsPicture } from "../../src/pictures/borders";
import { cornerPicture, geesePicture, halfSquarePicture, squarePicture } from "../../src/pictures/patches";
import { halfRectanglePicture, hexagonPicture } from "../../src/pictures/shapes";
import { stripPatchesPicture, stripSetPicture, stripTrianglesPicture } from "../../src/pictures/strips";

/** The words of a picture, one line each. */
function wordsOf(svg: string): string[] {
  return [...svg.matchAll(/<(?:text|title|desc)[^>]*>([^<]*)</g)].map(([, words]) => words);
}

const SEAM_LINE = "dashed: seam line, 1/4 in inside";
const ROUNDED = "dashed: finished; cut up to the mark, so trim, or it finishes larger";

test.each([
  [51.0883, "units along the width: 0.0883 in shorter, eased in"],
  [50.9117, "units along the width: 0.0883 in longer, eased in"],
])("units round a quilt %d in wide are told longer or shorter than the quilt", (width, words) => {
  const picture = borderFitPicture(inches(width), inches(68), inches(1), { depth: inches(6) });
  expect(wordsOf(picture)).toContain(words);
  expect(picture).not.toMatch(/along the length: |stretched/);
});

test("units that fit are said to fit", () => {
  expect(easedText(showing("in"), inches(0))).toBe("they fit");
});

test("a square that is rounded up to a mark is drawn as it finishes", () => {
  const rounded = wordsOf(squarePicture(inches(3.3), { mark: inches(1 / 8) }));
  expect(rounded).toEqual(expect.arrayContaining(["A square that finishes 3 3/8 in", SEAM_LINE]));
  expect(rounded).toContain("cut up to the mark, larger than 3.3 in");
  const exact = wordsOf(squarePicture(inches(3.3)));
  expect(exact).toEqual(expect.arrayContaining(["A square that finishes 3.3 in", SEAM_LINE]));
  expect(exact.join()).not.toContain("larger");
});

test("so is half of a rectangle", () => {
  const rounded = wordsOf(halfRectanglePicture(inches(2), inches(4), { mark: inches(1 / 2) }));
  expect(rounded).toEqual(expect.arrayContaining(["Half of a rectangle of 2.3289 in × 4.2696 in", SEAM_LINE]));
  expect(rounded).toContain("cut up to the mark, larger than 2 in × 4 in");
  const exact = wordsOf(halfRectanglePicture(inches(2), inches(4)));
  expect(exact).toEqual(expect.arrayContaining(["Half of a rectangle of 2 in × 4 in", SEAM_LINE]));
  expect(exact.join()).not.toContain("larger");
});

test("so is a corner", () => {
  expect(wordsOf(cornerPicture(inches(1.3), { mark: inches(1 / 8) }))).toContain("corner finishes 1 3/8 in");
});

test.each([
  ["a hexagon", (mark: number) => hexagonPicture(inches(2), { mark: inches(mark) })],
  ["a half-square triangle", (mark: number) => halfSquarePicture(inches(3), 1, { mark: inches(mark) })],
])("%s with a seam line a seam inside says so, and another says why not", (_shape, draw) => {
  expect(wordsOf(draw(0))).toContain(SEAM_LINE);
  expect(wordsOf(draw(0))).not.toContain(ROUNDED);
  expect(wordsOf(draw(1 / 8))).toContain(ROUNDED);
  expect(wordsOf(draw(1 / 8))).not.toContain(SEAM_LINE);
});

test("a strip set is drawn as long as fabric usually is wide, and says that", () => {
  const set = [2.5, 2.5].map(inches);
  expect(wordsOf(stripSetPicture(set))).toContain("42 in, the usual width of fabric");
  expect(wordsOf(stripSetPicture(set, { width: inches(40) }))).toContain("40 in");
});

test.each([
  ["A set of 1 strip", stripSetPicture([inches(2.5)])],
  ["1 segment from one set", stripSetPicture([2.5, 2.5].map(inches), { segment: inches(30) })],
  ["1 patch of 30 in from one strip", stripPatchesPicture(inches(30))],
  ["1 triangle from one strip", stripTrianglesPicture(inches(30), inches(40))],
  ["1 unit", geesePicture(inches(4), "triangles", {}, 1)],
  ["1 unit each along top and bottom", borderFitPicture(inches(5), inches(10), inches(5))],
])("one is told in the singular: %s", (words, svg) => {
  expect(wordsOf(svg)).toContain(words);
  expect(svg).not.toMatch(/[^\d/.]1 (strips|segments|patches|triangles|units)\b/);
});

test("border lengths are told with the seams they hold", () => {
  const [width, length, border] = [60, 80, 6].map(inches);
  expect(wordsOf(borderLengthsPicture(width, length, border))).toContain("cut with seams of 1/4 in");
  const bare = borderLengthsPicture(width, length, border, { seam: inches(0) });
  expect(bare).not.toContain("cut with seams");
});
