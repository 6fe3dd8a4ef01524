import fc from "fast-check";
import { readBlock } from "../../src/math/blocks/grammar";
import { blockPieces, USES } from "../../src/math/blocks/pieces";
import { cornerSide, finishedPieces, gridArea, type GridPoint } from "../../src/math/blocks/shapes";
import { type Turns, turnBlock } from "../../src/math/blocks/turn";
import { inches } from "../../src/math/units";
import { blocks } from "./blockGrids";

/** Whether a point lies inside a convex shape. */
function inside(corners: readonly GridPoint[], { x, y }: GridPoint): boolean {
  const sides = corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length];
    return (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x);
  });
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}

describe("finishedPieces", () => {
  test("areas add up to the cells that hold something", () => {
    fc.assert(
      fc.property(blocks, (grid) => {
        const block = readBlock(grid);
        const area = finishedPieces(block).reduce((sum, piece) => sum + gridArea(piece.corners), 0);
        const filled = grid.flat().filter((text) => text !== "").length;
        expect(area).toBeCloseTo(filled, 9);
      }),
    );
  });

  test("every point of the block lies in one piece at most, in a filled cell in just one", () => {
    fc.assert(
      fc.property(blocks, fc.nat(5), fc.nat(5), (grid, r, c) => {
        const block = readBlock(grid);
        const pieces = finishedPieces(block);
        for (const [dx, dy] of [
          [0.13, 0.41],
          [0.41, 0.87],
          [0.87, 0.61],
          [0.63, 0.11],
        ]) {
          const [y, x] = [r % block.rows, c % block.columns];
          const over = pieces.filter((piece) => inside(piece.corners, { x: x + dx, y: y + dy }));
          expect(over.length).toBe(grid[y][x] === "" ? 0 : 1);
        }
      }),
    );
  });
});

describe("turnBlock", () => {
  test("four quarter turns bring every piece back; one turn moves each as a turned picture does", () => {
    fc.assert(
      fc.property(blocks, (grid) => {
        const block = readBlock(grid);
        const turned = [1, 2, 3].map((turns) => turnBlock(block, turns as Turns));
        expect(turnBlock(turned[2], 1).units).toEqual(block.units);
        const moved = finishedPieces(block).map(({ fabric: name, corners }) => ({
          name,
          corners: corners.map(({ x, y }) => ({ x: block.rows - y, y: x })),
        }));
        expect(
          shapesOf(finishedPieces(turned[0]).map((piece) => ({ name: piece.fabric, corners: piece.corners }))),
        ).toEqual(shapesOf(moved));
      }),
    );
  });
});

/** Shapes in an order of their own, each by its sorted corners. */
function shapesOf(pieces: { name: string; corners: readonly GridPoint[] }[]): string[] {
  return pieces
    .map(
      ({ name, corners }) =>
        `${name}: ${corners
          .map(({ x, y }) => `${x},${y}`)
          .sort()
          .join(" ")}`,
    )
    .sort();
}

describe("blockPieces", () => {
  test("has enough of everything, counted in the drawn block", () => {
    fc.assert(
      fc.property(blocks, fc.integer({ min: 1, max: 30 }), (grid, count) => {
        const block = readBlock(grid);
        const cut = blockPieces(block, inches(block.columns * 2), count);
        const total = (uses: string[], name: string) =>
          cut
            .filter((patch) => uses.includes(patch.use) && patch.fabric === name)
            .reduce((sum, patch) => sum + patch.count, 0);
        for (const name of block.fabrics) {
          const units = block.units.map(({ unit }) => unit);
          const whole = units.filter(
            (unit) => (unit.kind === "plain" || unit.kind === "corners") && unit.fabric === name,
          );
          expect(total([USES.square, USES.rectangle], name)).toBe(whole.length * count);
          const flips = block.units.reduce(
            (sum, { unit }) => sum + (unit.kind === "corners" && unit.corner === name ? unit.at.length : 0),
            0,
          );
          expect(total([USES.corner], name)).toBe(flips * count);
          const halves = units.filter((unit) => unit.kind === "half square" && [unit.above, unit.below].includes(name));
          expect(2 * total([USES.halfSquare], name)).toBeGreaterThanOrEqual(halves.length * count);
          const quarters = units.reduce(
            (sum, unit) =>
              sum + (unit.kind === "four triangles" ? unit.fabrics.filter((one) => one === name).length : 0),
            0,
          );
          expect(4 * total([USES.quarterSquare], name)).toBeGreaterThanOrEqual(quarters * count);
        }
        // No more than one unit to spare for each pair, three for each set of four.
        for (const patch of cut) expect(patch.spare).toBeLessThan(patch.use === USES.halfSquare ? 2 : 4);
      }),
    );
  });

  test("a corner is one cell, or half of a patch one cell wide", () => {
    expect(cornerSide({ rows: 2, columns: 3 })).toBe(1);
    expect(cornerSide({ rows: 1, columns: 3 })).toBe(0.5);
  });
});
