import fc from "fast-check";
import { EDGES, type SettingOptions, SETTINGS, topSize } from "../../src/math/settings";
import { topPieces } from "../../src/math/topPieces";
import { inches } from "../../src/math/units";
import { settingTrianglePicture, topPicture } from "../../src/pictures/settings";
import { topLayout } from "../../src/pictures/topLayout";
import { lengths } from "../laws/arbitraries";
import { areaOf, boxOf, expectPixels, readPicture } from "./reading";

const tops = fc
  .record({
    across: fc.integer({ min: 1, max: 7 }),
    down: fc.integer({ min: 1, max: 7 }),
    block: lengths(2, 20),
    sashing: fc.oneof(fc.constant(inches(0)), lengths(0.25, 4)),
    edge: fc.constantFrom(...EDGES),
    setting: fc.constantFrom(...SETTINGS),
    alternate: fc.boolean(),
  })
  .filter(({ across, down, block, ...options }) => canBeSewn(across, down, block, options));

function canBeSewn(across: number, down: number, block: number, options: SettingOptions): boolean {
  try {
    topSize(across, down, inches(block), options);
    return true;
  } catch {
    return false;
  }
}

describe("topLayout", () => {
  test("the pieces cover the top once and nothing beyond it", () => {
    fc.assert(
      fc.property(tops, ({ across, down, block, ...options }) => {
        const { width, length } = topSize(across, down, block, options);
        const pieces = topLayout(across, down, block, options);
        const area = pieces.reduce((sum, { corners }) => sum + areaOf(corners), 0);
        expect(Math.abs(area - width * length)).toBeLessThan(1e-6 * width * length);
        const box = boxOf(pieces.flatMap(({ corners }) => corners));
        expectPixels(box.left, 0, 1e-6);
        expectPixels(box.top, 0, 1e-6);
        expectPixels(box.width, width, 1e-6);
        expectPixels(box.height, length, 1e-6);
      }),
    );
  });

  test("no two pieces lie on one another", () => {
    fc.assert(
      fc.property(tops, ({ across, down, block, ...options }) => {
        const pieces = topLayout(across, down, block, options).map(({ corners }) => corners);
        const middles = pieces.map((corners) => ({
          x: corners.reduce((sum, { x }) => sum + x, 0) / corners.length,
          y: corners.reduce((sum, { y }) => sum + y, 0) / corners.length,
        }));
        const covered = middles.map((middle) => pieces.findIndex((corners) => holds(corners, middle)));
        const coveredLast = middles.map((middle) => pieces.findLastIndex((corners) => holds(corners, middle)));
        expect(covered).toEqual(pieces.map((_corners, index) => index));
        expect(coveredLast).toEqual(covered);
      }),
      { numRuns: 40 },
    );
  });

  test("the drawing counts as the list of pieces does", () => {
    fc.assert(
      fc.property(tops, ({ across, down, block, ...options }) => {
        const listed = new Map<string, number>();
        for (const { piece, inTop } of topPieces(across, down, block, options)) {
          const kind = piece.replace(/^square for (.*)s$/, "$1").replace(/^(vertical|horizontal) /, "");
          listed.set(kind, (listed.get(kind) ?? 0) + inTop);
        }
        const drawn = new Map<string, number>();
        for (const { kind } of topLayout(across, down, block, options)) drawn.set(kind, (drawn.get(kind) ?? 0) + 1);
        expect(drawn).toEqual(listed);
      }),
    );
  });
});

describe("topPicture", () => {
  test("draws every piece and writes the size in the maker's units", () => {
    const picture = readPicture(topPicture(4, 5, inches(12), { sashing: inches(4), edge: "sashed" }));
    expect(picture.shapes("block")).toHaveLength(20);
    expect(picture.shapes("sash")).toHaveLength(25 + 24);
    expect(picture.shapes("cornerstone")).toHaveLength(30);
    expect(picture.words).toEqual(expect.arrayContaining(["68 in", "84 in"]));
  });

  test("metric", () => {
    const picture = readPicture(topPicture(2, 2, inches(10), { system: "cm" }));
    expect(picture.words.filter((words) => words === "50.8 cm")).toHaveLength(2);
  });

  test("refuses what nobody could see", () => {
    expect(() => topPicture(1000, 1000, inches(1))).toThrow("too many to draw");
  });
});

describe("settingTrianglePicture", () => {
  test.each([
    ["side triangle", "cut 15 3/8 in", 8],
    ["corner triangle", "cut 8 in", 4],
  ] as const)("%s: the square to cut", (kind, words, count) => {
    const picture = readPicture(settingTrianglePicture(kind, inches(10)));
    expect(picture.words).toContain(words);
    expect(picture.shapes(kind.replace(" ", "-"))).toHaveLength(count);
  });
});

interface Place {
  x: number;
  y: number;
}

/** Whether a point lies inside a shape without notches, whichever way round it is listed. */
function holds(corners: readonly Place[], { x, y }: Place): boolean {
  const turns = corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length];
    return Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x));
  });
  return turns.every((turn) => turn > 0) || turns.every((turn) => turn < 0);
}
