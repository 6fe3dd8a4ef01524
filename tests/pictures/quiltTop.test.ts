import { finishedPieces } from "../../src/math/blocks/shapes";
import { type Block, readBlock } from "../../src/math/blocks/grammar";
import { FabricNames } from "../../src/math/blocks/fabricNames";
import { type Quilt, quiltFabrics, quiltSize } from "../../src/math/blocks/quilt";
import { inches } from "../../src/math/units";
import { sizedLayouts } from "../../src/math/blocks/sizes";
import { colorOf } from "../../src/pictures/fabrics";
import { blockPicture, quiltPicture } from "../../src/pictures/quiltTop";
import { sizesPicture } from "../../src/pictures/sizes";
import { areaOf, boxOf, expectPixels, overlappingTexts, type ReadPicture, readPicture } from "./reading";

function block(...rows: string[]): Block {
  return readBlock(
    rows.map((row) => row.split(" | ")),
    new FabricNames(),
  );
}

const STAR = block(
  "sand | goose up: sand, slate | < | sand",
  "goose left: sand, slate | rust | < | goose right: sand, slate",
  "^ | ^ | < | ^",
  "sand | goose down: sand, slate | < | sand",
);
const PLAIN = block("rust");

const QUILT: Quilt = {
  layout: [
    [
      { name: "star", turns: 0 },
      { name: "plain", turns: 1 },
    ],
    [
      { name: "plain", turns: 0 },
      { name: "star", turns: 3 },
    ],
    [
      { name: "star", turns: 2 },
      { name: "star", turns: 0 },
    ],
  ],
  blocks: new Map([
    ["star", STAR],
    ["plain", PLAIN],
  ]),
  size: inches(12),
  sashing: { width: inches(2), fabric: "slate", cornerstone: "rust" },
  edge: "sashed",
  borders: [
    { width: inches(1), fabric: "rust" },
    { width: inches(4), fabric: "sand" },
  ],
};

/** Area of all pieces of a picture. */
function drawnArea(picture: ReadPicture): number {
  return picture.shapes("piece").reduce((sum, shape) => sum + areaOf(shape), 0);
}

describe("blockPicture", () => {
  test("draws every finished piece once, and names the fabrics", () => {
    const picture = readPicture(blockPicture("A star", STAR));
    expect(picture.shapes("piece")).toHaveLength(finishedPieces(STAR).length);
    const whole = boxOf(picture.shapes("piece").flat());
    expect(Math.abs(drawnArea(picture) / (whole.width * whole.height) - 1)).toBeLessThan(0.001);
    expect(picture.words).toEqual(["A star", "sand", "slate", "rust"]);
  });

  test("a fabric takes the maker's color, keeps its hatch, and so does its swatch", () => {
    const colors = new Map([["slate", "#102040"]]);
    const svg = blockPicture("A star", STAR, { colors });
    expect(readPicture(svg).words).toEqual(["A star", "sand", "slate", "rust"]);
    const pieces = finishedPieces(STAR).filter(({ fabric }) => fabric === "slate").length;
    expect(svg.match(/fill="#102040"/g)).toHaveLength(pieces + 1);
    expect(svg.match(/fill="url\(#hatch1white\)"/g)).toHaveLength(pieces + 1);
    expect(svg).toContain(`fill="${colorOf(0)}"`);
  });

  test("an empty cell stays empty", () => {
    const picture = readPicture(blockPicture("A hole", block("a | ", "b | c")));
    expect(picture.shapes("piece")).toHaveLength(3);
  });
});

describe("quiltPicture", () => {
  test("draws every piece of every block, in a QUILT of the finished size", () => {
    const picture = readPicture(quiltPicture("A quilt", QUILT, quiltFabrics(QUILT)));
    expect(picture.shapes("piece")).toHaveLength(4 * finishedPieces(STAR).length + 2 * finishedPieces(PLAIN).length);
    const { width, length } = quiltSize(QUILT);
    const [whole] = [boxOf(picture.shapes("border").flat())];
    expectPixels(whole.width / whole.height, width / length, 0.001);
    const scale = whole.width / width;
    expect(Math.abs(drawnArea(picture) / (6 * 144 * scale ** 2) - 1)).toBeLessThan(0.001);
    expect(picture.shapes("border")).toHaveLength(8);
    expect(picture.shapes("cornerstone")).toHaveLength(12);
    expect(picture.words).toEqual(["A quilt", "40 in", "54 in", "sand", "slate", "rust"]);
  });

  test("sashes and cornerstones lie between the blocks and cover the center", () => {
    for (const edge of ["none", "sashed"] as const) {
      const picture = readPicture(quiltPicture("A quilt", { ...QUILT, edge }, quiltFabrics(QUILT)));
      const [down, across] = edge === "sashed" ? [4, 3] : [2, 1];
      expect(picture.shapes("sash")).toHaveLength(3 * across + 2 * down);
      expect(picture.shapes("cornerstone")).toHaveLength(down * across);
      const parts = ["sash", "cornerstone", "piece"].flatMap((part) => picture.shapes(part));
      const whole = boxOf(parts.flat());
      const area = parts.reduce((sum, shape) => sum + areaOf(shape), 0);
      expect(Math.abs(area / (whole.width * whole.height) - 1)).toBeLessThan(0.001);
    }
  });

  test("refuses more pieces than can be seen", () => {
    const layout = Array.from({ length: 100 }, () => Array.from({ length: 100 }, () => QUILT.layout[0][0]));
    expect(() => quiltPicture("A quilt", { ...QUILT, layout }, quiltFabrics(QUILT))).toThrow("at most 30000 are drawn");
  });

  test("metric", () => {
    const { words } = readPicture(quiltPicture("A quilt", QUILT, quiltFabrics(QUILT), { system: "cm" }));
    expect(words).toEqual(expect.arrayContaining(["101.6 cm", "137.16 cm"]));
  });
});

describe("sizesPicture", () => {
  const sizes = [
    { name: "crib", width: inches(40), length: inches(52) },
    { name: "queen & more", width: inches(92), length: inches(104) },
    { name: "table", width: inches(20), length: inches(20) },
  ];

  test("draws each size to one scale, with its name, blocks and measures", () => {
    const layouts = sizedLayouts(QUILT, sizes);
    const svg = sizesPicture("A quilt in three sizes", layouts, quiltFabrics(QUILT));
    const picture = readPicture(svg);
    expect(overlappingTexts(svg)).toEqual([]);
    const blocks = layouts.reduce((sum, { across, down }) => sum + across * down, 0);
    expect(picture.shapes("block")).toHaveLength(blocks);
    const [first, ...others] = picture.shapes("block").map(boxOf);
    for (const other of others) expectPixels(other.width, first.width, 0.03);
    for (const { name, across, down, quilt } of layouts) {
      const { width, length } = quiltSize(quilt);
      expect(picture.words).toEqual(
        expect.arrayContaining([name, `${across} × ${down} blocks`, `${width} in × ${length} in`]),
      );
      expect(picture.description).toContain(`${name}, ${across} × ${down} blocks, ${width} in × ${length} in`);
    }
  });

  test("metric, and refused where the pieces cannot be seen", () => {
    const { words } = readPicture(sizesPicture("Sizes", sizedLayouts(QUILT, sizes), [], { system: "cm" }));
    expect(words.join()).toMatch(/[\d.]+ cm × [\d.]+ cm/);
    const huge = Array.from({ length: 5 }, () => ({ name: "huge", width: inches(1300), length: inches(1300) }));
    expect(() => sizesPicture("Sizes", sizedLayouts(QUILT, huge), [])).toThrow("at most 30000 are drawn");
  });
});
