/** Quilts drawn in cells: their size, their fabrics, what is cut for them, and the same design in other sizes. */
import fc from "fast-check";
import { worksheetFunctions } from "../../functions";
import { readBlock } from "../../src/math/blocks/grammar";
import { blockPieces, USES } from "../../src/math/blocks/pieces";
import { type Quilt, quiltFabrics, quiltPieces, quiltSize } from "../../src/math/blocks/quilt";
import { sizedLayouts, sizedQuilts } from "../../src/math/blocks/sizes";
import { type Inches, inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

const PLAIN = { name: "plain", turns: 0 } as const;

/** Blocks of one piece that finish 12 in, 2 across and 2 down. */
const QUILT: Quilt = {
  layout: [
    [PLAIN, PLAIN],
    [PLAIN, PLAIN],
  ],
  blocks: new Map([["plain", readBlock([["sand"]])]]),
  size: inches(12),
};

const BORDERED: Quilt = {
  ...QUILT,
  sashing: { width: inches(2), fabric: "slate", cornerstone: "rust" },
  borders: [
    { width: inches(3), fabric: "moss" },
    { width: inches(6), fabric: "sand" },
  ],
};

/** What is cut of one use: width, height and count of each patch. */
function cutFor(quilt: Quilt, use: string, seam?: Inches): number[][] {
  const patches = quiltPieces(quilt, seam === undefined ? {} : { seam });
  return patches.filter((patch) => patch.use === use).map(({ width, height, count }) => [width, height, count]);
}

describe("quiltSize", () => {
  test("counts sashing between the blocks and both sides of every border", () => {
    expect(quiltSize(QUILT)).toEqual({ width: 24, length: 24 });
    expect(quiltSize(BORDERED)).toEqual({ width: 44, length: 44 });
    expect(quiltSize({ ...BORDERED, edge: "sashed" })).toEqual({ width: 48, length: 48 });
  });
});

describe("quiltFabrics", () => {
  test("names blocks first, then sashing, cornerstones and borders, each once", () => {
    expect(quiltFabrics(QUILT)).toEqual(["sand"]);
    expect(quiltFabrics(BORDERED)).toEqual(["sand", "slate", "rust", "moss"]);
    expect(quiltFabrics({ ...QUILT, sashing: { width: inches(2), fabric: "slate" } })).toEqual(["sand", "slate"]);
  });
});

describe("quiltPieces", () => {
  test("cuts sashes and cornerstones between the blocks, and round them where the edge is sashed", () => {
    expect(cutFor(BORDERED, USES.sash)).toEqual([[12.5, 2.5, 4]]);
    expect(cutFor(BORDERED, USES.cornerstone)).toEqual([[2.5, 2.5, 1]]);
    const sashed: Quilt = { ...BORDERED, edge: "sashed" };
    expect(cutFor(sashed, USES.sash)).toEqual([[12.5, 2.5, 12]]);
    expect(cutFor(sashed, USES.cornerstone)).toEqual([[2.5, 2.5, 9]]);
  });

  test("sashing of no width takes no fabric", () => {
    const none: Quilt = { ...QUILT, sashing: { width: inches(0), fabric: "slate" } };
    expect(quiltPieces(none)).toEqual(quiltPieces(QUILT));
  });

  test("a single row has no cornerstones: nothing of their fabric is listed or bought", () => {
    const row: Quilt = { ...BORDERED, layout: [[PLAIN, PLAIN]], borders: [] };
    expect(quiltPieces(row).map(({ fabric, count }) => [fabric, count])).toEqual([
      ["sand", 2],
      ["slate", 1],
    ]);
    const [one, two] = sizedQuilts(row, [
      { name: "one", width: inches(12), length: inches(12) },
      { name: "two", width: inches(26), length: inches(26) },
    ]);
    expect(one.lengths).toEqual([12.5, 0, 0]);
    expect(two.lengths).toEqual([25, 5, 2.5]);
  });

  test("cuts every border with its own seam: sides first, then top and bottom over their ends", () => {
    const onlyBorders: Quilt = { ...QUILT, borders: [{ width: inches(3), fabric: "moss" }] };
    expect(cutFor(onlyBorders, USES.border)).toEqual([
      [30.5, 3.5, 2],
      [24.5, 3.5, 2],
    ]);
    expect(cutFor(onlyBorders, USES.border, inches(1))).toEqual([
      [32, 5, 2],
      [26, 5, 2],
    ]);
  });

  test("refuses blocks that are not square, blocks without a name, and no size", () => {
    const blocks = new Map([["plain", readBlock([["sand", "slate"]])]]);
    expect(() => quiltPieces({ ...QUILT, blocks })).toThrow(
      "layout, row 1, column 1: plain is 2 × 1 cells, not square",
    );
    expect(() => quiltPieces({ ...QUILT, blocks: new Map() })).toThrow("no block is called “plain”");
    expect(() => quiltPieces({ ...QUILT, size: inches(0) })).toThrow(/^size must be more than 0$/);
  });
});

describe("sizedLayouts", () => {
  const wanted = (width: number, length: number) => [{ name: "wall", width: inches(width), length: inches(length) }];
  const sized = (quilt: Quilt, width: number, length: number) => sizedLayouts(quilt, wanted(width, length))[0];

  test("no whole number of blocks comes nearer to the wanted size", () => {
    fc.assert(
      fc.property(lengths(60, 120), lengths(60, 120), fc.constantFrom(undefined, "none", "sashed"), (w, l, edge) => {
        const { quilt } = sized({ ...BORDERED, edge }, w, l);
        const size = quiltSize(quilt);
        // A block and a sash more or less is 14 in.
        expect(Math.abs(size.width - w)).toBeLessThanOrEqual(7 + 1e-9);
        expect(Math.abs(size.length - l)).toBeLessThanOrEqual(7 + 1e-9);
      }),
    );
  });

  test("the layout repeats, row by row and place by place", () => {
    const other = { name: "other", turns: 1 } as const;
    const quilt: Quilt = { ...QUILT, layout: [[PLAIN, other], [other]] };
    expect(sized(quilt, 36, 24).quilt.layout).toEqual([
      [PLAIN, other, PLAIN],
      [other, other, other],
    ]);
  });

  test("borders that leave nothing inside are refused, in either direction", () => {
    const sentence = "the borders alone are larger than the size “wall”";
    for (const [width, length] of [
      [18, 60],
      [60, 18],
      [17, 60],
      [60, 17],
      [10, 10],
    ]) {
      expect(() => sized(BORDERED, width, length)).toThrow(sentence);
    }
    expect(sized(BORDERED, 30, 30)).toMatchObject({ across: 1, down: 1 });
  });

  test("up to 100 blocks in either direction", () => {
    expect(sized(QUILT, 1200, 12)).toMatchObject({ across: 100, down: 1 });
    expect(sized(QUILT, 12, 1200)).toMatchObject({ across: 1, down: 100 });
    expect(() => sized(QUILT, 1212, 12)).toThrow("the size “wall” takes 101 × 1 blocks; that is no quilt");
    expect(() => sized(QUILT, 12, 1212)).toThrow("the size “wall” takes 1 × 101 blocks; that is no quilt");
  });

  test("every size is counted from its own pieces", () => {
    const [small, large] = sizedQuilts(QUILT, [...wanted(24, 24), ...wanted(48, 48)]);
    // 12½ in blocks, 3 across 42 in: 4 take 2 strips, 16 take 6.
    expect(small).toMatchObject({ size: { width: 24, length: 24 }, lengths: [25] });
    expect(large).toMatchObject({ size: { width: 48, length: 48 }, lengths: [75] });
  });
});

describe("QUILTFABRICS", () => {
  const rows = (id: string, ...cells: unknown[]) => worksheetFunctions.get(id)!(...cells) as unknown[][];
  const bordered = fc.record({
    across: fc.integer({ min: 4, max: 9 }),
    down: fc.integer({ min: 4, max: 9 }),
    block: fc.integer({ min: 7, max: 13 }),
    border: fc.integer({ min: 2, max: 6 }),
    seam: fc.constantFrom(null, 0, 1 / 8, 3 / 8, 1 / 2, 1),
    units: fc.constantFrom("in", "cm"),
  });

  test("buys for a quilt what SIZETABLE buys for it in its own size, whatever the seam", () => {
    fc.assert(
      fc.property(bordered, ({ across, down, block, border, seam, units }) => {
        const [size, edge] = units === "cm" ? [2.5 * block, 2.5 * border] : [block, border];
        const layout = Array.from({ length: down }, () => Array<string>(across).fill("plain"));
        const own = ["own", across * size + 2 * edge, down * size + 2 * edge];
        const quilt = [layout, [["plain", "sand"]], size, null, null, [[edge, "slate"]]];
        const bought = rows("QUILTFABRICS", ...quilt, null, null, null, seam, units).slice(1);
        const sized = rows("SIZETABLE", ...quilt, [own], null, null, seam, units).slice(-2);
        expect(sized).toEqual(bought.map(([fabric, amount]) => [fabric, amount]));
      }),
      { numRuns: 150 },
    );
  });
});

describe("blockPieces", () => {
  test("no blocks need no patches", () => {
    expect(blockPieces(readBlock([["sand / slate", "rust"]]), inches(6), 0)).toEqual([]);
  });

  test("half squares of the same two fabrics are made together, whichever lies above", () => {
    const [sand, slate] = blockPieces(readBlock([["sand / slate", "slate / sand"]]), inches(6));
    expect([sand.count, sand.spare, slate.count, slate.spare]).toEqual([1, 0, 1, 0]);
  });

  test("what units leave over is told: sets of four make more than the block takes", () => {
    const spare = (cells: string[][], blocks: number) =>
      blockPieces(readBlock(cells), inches(6), blocks).map((patch) => [patch.fabric, patch.count, patch.spare]);
    expect(spare([["goose up: slate, sand", "<"]], 6)).toEqual([
      ["slate", 2, 2],
      ["sand", 8, 2],
    ]);
    expect(spare([["four: sand, slate"]], 3)).toEqual([
      ["sand", 2, 2],
      ["slate", 2, 2],
    ]);
  });

  test("squares for units are rounded up to the mark that is asked for", () => {
    const side = (mark?: number) =>
      blockPieces(readBlock([["sand / slate"]]), inches(3), 1, mark === undefined ? {} : { mark: inches(mark) })[0]
        .width;
    expect([side(), side(1 / 2), side(1)]).toEqual([3.875, 4, 4]);
    expect(side(0)).toBeCloseTo(3.8536, 4);
  });

  test("fabrics whose names run into one another are kept apart", () => {
    const units = readBlock([
      ["ab / c", "a / bc"],
      ["", ""],
    ]);
    expect(blockPieces(units, inches(6)).map(({ fabric }) => fabric)).toEqual(["ab", "c", "a", "bc"]);
    // Cut 13½ × 2½ of sand and 3½ × 2½ of sand1.
    const row = ["sand", ...Array<string>(12).fill("<"), "sand1", "<", "<"];
    const patches = blockPieces(readBlock([row, row.map(() => "^")]), inches(16));
    expect(patches.map(({ fabric, width, height }) => [fabric, width, height])).toEqual([
      ["sand", 13.5, 2.5],
      ["sand1", 3.5, 2.5],
    ]);
  });
});
