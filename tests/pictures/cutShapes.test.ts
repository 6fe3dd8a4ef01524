import fc from "fast-check";
import { GEESE_METHODS, MADE_AT_ONCE } from "../../src/math/patches";
import { UNIT_WAYS } from "../../src/math/sewn";
import { inches, toInches } from "../../src/math/units";
import {
  cornerPicture,
  geesePicture,
  halfSquarePicture,
  quarterSquarePicture,
  squareInSquarePicture,
  squarePicture,
  unitMadePicture,
} from "../../src/pictures/patches";
import {
  diamondPicture,
  halfRectanglePicture,
  hexagonPicture,
  starPicture,
  templatePicture,
  trianglePicture,
} from "../../src/pictures/shapes";
import { lengths } from "../laws/arbitraries";
import { cutOutline, sideLengths } from "../laws/outline";
import { areaOf, boxOf, expectPixels, readPicture } from "./reading";

const size = lengths(1, 12);
const seam = lengths(0.125, 0.5);
const EXACT = { mark: inches(0) };

/** The finished shape of a picture, moved outward by the seam with a polygon library, is its cut shape. */
function expectSeamAllRound(svg: string, finishedSide: number, side: number, allowance: number): void {
  const picture = readPicture(svg);
  const [[cut], [finished]] = [picture.shapes("cut"), picture.shapes("finished")];
  const scale = sideLengths(finished)[side] / finishedSide;
  const moved = cutOutline(finished, allowance * scale);
  const [got, expected] = [boxOf(cut), boxOf(moved)];
  for (const measure of ["left", "top", "width", "height"] as const) expectPixels(got[measure], expected[measure], 0.4);
  expect(Math.abs(areaOf(cut) / areaOf(moved) - 1)).toBeLessThan(0.005);
}

describe("a seam lies all round the finished shape", () => {
  const both = fc.tuple(size, seam);
  test.each([
    ["square", (s: number, a: number) => squarePicture(inches(s), { ...EXACT, seam: inches(a) }), 0],
    ["half square", (s: number, a: number) => halfSquarePicture(inches(s), 1, { ...EXACT, seam: inches(a) }), 0],
    ["quarter square", (s: number, a: number) => quarterSquarePicture(inches(s), { ...EXACT, seam: inches(a) }), 1],
    ["triangle", (s: number, a: number) => trianglePicture(inches(s), undefined, { seam: inches(a) }), 1],
    ["hexagon", (s: number, a: number) => hexagonPicture(inches(s), { seam: inches(a) }), 0],
    ["half rectangle", (s: number, a: number) => halfRectanglePicture(inches(s), inches(3), { seam: inches(a) }), 1],
  ] as const)("%s", (_name, draw, side) => {
    fc.assert(
      fc.property(both, ([finished, allowance]) => {
        expectSeamAllRound(draw(finished, allowance), finished, side, allowance);
      }),
      { numRuns: 40 },
    );
  });

  test("diamonds of any angle", () => {
    fc.assert(
      fc.property(size, seam, fc.integer({ min: 20, max: 160 }), (finished, allowance, angle) => {
        expectSeamAllRound(diamondPicture(finished, angle, { seam: allowance }), finished, 0, allowance);
      }),
      { numRuns: 40 },
    );
  });

  test("templates, either way round", () => {
    const outline = [
      [0, 0],
      [6, 0],
      [6, 5],
      [2, 7],
    ].map(([x, y]) => ({ x: inches(x), y: inches(y) }));
    expectSeamAllRound(templatePicture(outline), 6, 0, 0.25);
    expectSeamAllRound(templatePicture([...outline].reverse()), 6, 2, 0.25);
  });
});

describe("measures", () => {
  test("squarePicture says what to cut and what it finishes", () => {
    const { words, description } = readPicture(squarePicture(inches(3)));
    expect(words.filter((line) => line === "cut 3 1/2 in")).toHaveLength(2);
    expect(words).toContain("finished 3 in");
    expect(description).toContain("cut 3 1/2 in, cut 3 1/2 in, finished 3 in");
  });

  test("halfSquarePicture rounds up to the mark of the maker's ruler", () => {
    expect(readPicture(halfSquarePicture(inches(3), 1)).words).toContain("cut 3 7/8 in");
    expect(readPicture(halfSquarePicture(toInches(7.5, "cm"), 1, { system: "cm" })).words).toContain("cut 10.1 cm");
  });

  test("words that find no room in the shape stand below it", () => {
    const { words } = readPicture(diamondPicture(inches(2), 10));
    expect(words).toContain("finished 2 in");
    expect(words.indexOf("finished 2 in")).toBeGreaterThan(words.indexOf("cut 4.8794 in"));
  });

  test("templatePicture numbers the corners and measures over all", () => {
    const { words } = readPicture(
      templatePicture([
        { x: inches(0), y: inches(0) },
        { x: inches(4), y: inches(0) },
        { x: inches(0), y: inches(3) },
      ]),
    );
    expect(words).toEqual(expect.arrayContaining(["1", "2", "3"]));
    // The inscribed circle of 3 : 4 : 5 has a radius of 1 in; with a seam of 1/4 in all lengths grow by 5/4.
    expect(words).toEqual(expect.arrayContaining(["cut 5 in", "cut 3 3/4 in"]));
  });
});

describe("units", () => {
  test.each(MADE_AT_ONCE)("half-square units, %d at once", (madeAtOnce) => {
    fc.assert(
      fc.property(size, (finished) => {
        readPicture(halfSquarePicture(finished, madeAtOnce));
      }),
      { numRuns: 20 },
    );
  });

  test("the unit and its squares are drawn at one scale", () => {
    const picture = readPicture(halfSquarePicture(inches(3), 8));
    const [[cut], [unit]] = [picture.shapes("cut"), picture.shapes("unit")].map((shapes) => shapes.map(boxOf));
    expectPixels(cut.width / unit.width, 7.75 / 3.5, 0.001);
    expect(picture.words).toEqual(expect.arrayContaining(["7 3/4 in", "3 1/2 in", "makes 8 units"]));
  });

  test.each(GEESE_METHODS)("flying geese, %s", (method) => {
    const { words } = readPicture(geesePicture(inches(4), method));
    const squares = {
      "four at once": ["5 1/4 in", "2 7/8 in"],
      triangles: ["5 1/4 in", "2 7/8 in"],
      corners: ["2 1/2 in"],
    };
    expect(words).toEqual(expect.arrayContaining([...squares[method], "4 1/2 in", "4 units"]));
  });

  test("square in a square, corners and stars", () => {
    expect(readPicture(squareInSquarePicture(inches(4))).words).toEqual(
      expect.arrayContaining(["3 3/8 in", "2 7/8 in", "4 1/2 in"]),
    );
    expect(readPicture(cornerPicture(inches(1.5))).words).toContain("square cut 2 in");
    expect(readPicture(starPicture(inches(14))).words).toEqual(
      expect.arrayContaining(["4.8076 in", "strip 3.3995 in", "cut 8", "14 in"]),
    );
    expect(readPicture(starPicture(inches(14), 3)).words).toContain("cut 72");
  });

  test.each(UNIT_WAYS)("unitMadePicture: %s", (how) => {
    const svg = unitMadePicture(inches(5), how);
    if (how.startsWith("half square")) expect(readPicture(svg!).words).toContain("5 in");
    else expect(svg).toBeUndefined();
  });
});
