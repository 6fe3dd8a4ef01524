/** Cells of blocks written back, turned, and asked for the colors of their fabrics. */
import fc from "fast-check";
import { turnedPlace } from "../../functions/quiltCells";
import { fabricColors } from "../../src/math/blocks/cellColors";
import { fabricsInCell, readBlock } from "../../src/math/blocks/grammar";
import { unitText } from "../../src/math/blocks/text";
import { turnBlock, turnInPlace } from "../../src/math/blocks/turn";
import { blocks } from "./blockGrids";

const places = (...names: string[]) => ({ blocks: new Map(names.map((name) => [name, readBlock([["sand"]])])) });

describe("unitText", () => {
  test("every unit is read again as it was", () => {
    fc.assert(
      fc.property(blocks, (grid) => {
        const block = readBlock(grid);
        const written = grid.map((row) => [...row]);
        for (const { row, column, unit } of block.units) written[row][column] = unitText(unit);
        expect(readBlock(written).units).toEqual(block.units);
      }),
    );
  });

  test.each(["sand", "sand / slate 2", "sand \\ rust", "four: a, b", "four: a, b, c, d", "a + b ne sw"])(
    "%s",
    (text) => {
      expect(unitText(readBlock([[text]]).units[0].unit)).toBe(text);
    },
  );

  test("all four corners are called all", () => {
    expect(unitText(readBlock([["a + b nw ne se sw"]]).units[0].unit)).toBe("a + b all");
  });
});

describe("turnInPlace", () => {
  test("four quarters bring a patch back, and so do two halves", () => {
    fc.assert(
      fc.property(blocks, (grid) => {
        for (const placed of readBlock(grid).units) {
          const turns = placed.rows === placed.columns ? 4 : 2;
          let unit = placed.unit;
          for (let turn = 0; turn < turns; turn += 1) unit = turnInPlace({ ...placed, unit });
          expect(unit).toEqual(placed.unit);
        }
      }),
    );
  });

  test("a block of one patch turns as the patch does", () => {
    for (const text of ["a / b", "four: a, b, c, d", "a + b nw"]) {
      const block = readBlock([[text]]);
      expect(turnBlock(block, 1).units[0].unit).toEqual(turnInPlace(block.units[0]));
    }
  });

  test("a patch that is no square stays in its cells", () => {
    const [goose] = readBlock([["goose up: a, b", "<"]]).units;
    expect(unitText(turnInPlace(goose))).toBe("goose down: a, b");
    const [patch] = readBlock([["a + b nw", "<"]]).units;
    expect(unitText(turnInPlace(patch))).toBe("a + b se");
  });
});

describe("turnedPlace", () => {
  test("a quarter at a time, and round again", () => {
    const quilt = places("star", "slate 2");
    expect(turnedPlace("Star", quilt)).toBe("Star 90");
    expect(turnedPlace("Star 90", quilt)).toBe("Star 180");
    expect(turnedPlace("star  180", quilt)).toBe("star 270");
    expect(turnedPlace("star 270°", quilt)).toBe("star");
    expect(turnedPlace("slate 2", quilt)).toBe("slate 2 90");
  });

  test("a number that belongs to the name stays, and no turn names another block", () => {
    expect(turnedPlace("row 90", places("row 90"))).toBe("row 90 90");
    expect(() => turnedPlace("star", places("star", "star 90"))).toThrow("is the name of another block");
  });
});

describe("fabricColors", () => {
  const cell = (text: string, fill: string | null) => ({ text, fill });

  test("a cell of one fabric tells its color, the first of several", () => {
    const cells = [
      cell("sand / rust", "#111111"),
      cell("Sand", null),
      cell("SAND", "#222222"),
      cell("sand", "#333333"),
    ];
    expect([...fabricColors(cells, ["sand", "rust"])]).toEqual([["sand", "#222222"]]);
  });

  test("where a fabric stands nowhere alone, the first one named in a cell takes its color", () => {
    const cells = [
      cell("goose up: rust, sand", "#111111"),
      cell("<", "#222222"),
      cell("sand \\ moss", "#333333"),
      cell("rust / sand", "#444444"),
      cell("", "#555555"),
    ];
    expect([...fabricColors(cells, ["rust", "sand", "moss"])]).toEqual([
      ["rust", "#111111"],
      ["sand", "#333333"],
    ]);
  });

  test("names are those of the quilt", () => {
    expect([...fabricColors([cell("  SLATE   2 ", "#111111")], ["Slate 2"])]).toEqual([["Slate 2", "#111111"]]);
    expect(fabricsInCell("four: a, b, A, b")).toEqual(["a", "b"]);
    expect(fabricsInCell("^")).toEqual([]);
  });
});
