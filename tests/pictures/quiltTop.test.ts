import { finishedPieces } from "../../src/math/blocks/shapes";
import { type Block, readBlock } from "../../src/math/blocks/grammar";
import { FabricNames } from "../../src/math/blocks/fabricNames";
import { type Quilt, quiltFabrics, quiltSize } from "../../src/math/blocks/quilt";
import { inches } from "../../src/math/units";
import { blockPicture, quiltPicture } from "../../src/pictures/quiltTop";
import { areaOf, boxOf, expectPixels, type ReadPicture, readPicture } from "./reading";

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

  test("an empty cell stays empty", () => {
    const picture = readPicture(blockPicture("A hole", block("a | ", "b | c")));
    expect(picture.shapes("piece")).toHaveLength(3);
  });
});

describe("quiltPicture", () => {
  const quilt: Quilt = {
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

  test("draws every piece of every block, in a quilt of the finished size", () => {
    const picture = readPicture(quiltPicture("A quilt", quilt, quiltFabrics(quilt)));
    expect(picture.shapes("piece")).toHaveLength(4 * finishedPieces(STAR).length + 2 * finishedPieces(PLAIN).length);
    const { width, length } = quiltSize(quilt);
    const [whole] = [boxOf(picture.shapes("border").flat())];
    expectPixels(whole.width / whole.height, width / length, 0.001);
    const scale = whole.width / width;
    expect(Math.abs(drawnArea(picture) / (6 * 144 * scale ** 2) - 1)).toBeLessThan(0.001);
    expect(picture.shapes("border")).toHaveLength(8);
    expect(picture.shapes("cornerstone")).toHaveLength(12);
    expect(picture.words).toEqual(["A quilt", "40 in", "54 in", "sand", "slate", "rust"]);
  });

  test("refuses more pieces than can be seen", () => {
    const layout = Array.from({ length: 100 }, () => Array.from({ length: 100 }, () => quilt.layout[0][0]));
    expect(() => quiltPicture("A quilt", { ...quilt, layout }, quiltFabrics(quilt))).toThrow("at most 30000 are drawn");
  });

  test("metric", () => {
    const { words } = readPicture(quiltPicture("A quilt", quilt, quiltFabrics(quilt), "cm"));
    expect(words).toEqual(expect.arrayContaining(["101.6 cm", "137.16 cm"]));
  });
});
