/** The finished shapes of a block's pieces, in cells of its grid, for pictures and for counting again. */
import type { Block, Corner, PlacedUnit } from "./grammar";

/** A corner of a shape: x to the right, y down, in cells. */
export interface GridPoint {
  x: number;
  y: number;
}

export interface FinishedPiece {
  fabric: string;
  corners: readonly GridPoint[];
}

/** Every finished piece of a block; together they cover its cells once, empty cells left out. */
export function finishedPieces(block: Block): FinishedPiece[] {
  return block.units.flatMap(unitPieces);
}

/** Finished side of a stitched-and-flipped corner, in cells: one cell, or half a cell on a patch one cell wide. */
export function cornerSide(placed: Pick<PlacedUnit, "rows" | "columns">): number {
  return Math.min(placed.rows, placed.columns) > 1 ? 1 : 0.5;
}

/** Area of a shape in square cells. */
export function gridArea(corners: readonly GridPoint[]): number {
  const twice = corners.reduce((sum, { x, y }, index) => {
    const next = corners[(index + 1) % corners.length];
    return sum + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
}

function unitPieces(placed: PlacedUnit): FinishedPiece[] {
  const { row, column, rows, columns, unit } = placed;
  const at = (x: number, y: number): GridPoint => ({ x: column + x * columns, y: row + y * rows });
  const [nw, ne, se, sw, center] = [at(0, 0), at(1, 0), at(1, 1), at(0, 1), at(0.5, 0.5)];
  switch (unit.kind) {
    case "plain":
      return [{ fabric: unit.fabric, corners: [nw, ne, se, sw] }];
    case "half square":
      return unit.seam === "rising"
        ? [
            { fabric: unit.above, corners: [nw, ne, sw] },
            { fabric: unit.below, corners: [ne, se, sw] },
          ]
        : [
            { fabric: unit.above, corners: [nw, ne, se] },
            { fabric: unit.below, corners: [nw, se, sw] },
          ];
    case "four triangles": {
      const sides = [
        [nw, ne],
        [ne, se],
        [se, sw],
        [sw, nw],
      ];
      return sides.map(([from, to], index) => ({ fabric: unit.fabrics[index], corners: [from, to, center] }));
    }
    case "goose": {
      const [n, e, s, w] = [at(0.5, 0), at(1, 0.5), at(0.5, 1), at(0, 0.5)];
      const { tip, base, wings } = {
        up: { tip: n, base: [se, sw], wings: [ne, nw] },
        right: { tip: e, base: [sw, nw], wings: [se, ne] },
        down: { tip: s, base: [nw, ne], wings: [sw, se] },
        left: { tip: w, base: [ne, se], wings: [nw, sw] },
      }[unit.flies];
      return [
        { fabric: unit.goose, corners: [tip, base[0], base[1]] },
        { fabric: unit.sky, corners: [tip, wings[0], base[0]] },
        { fabric: unit.sky, corners: [tip, base[1], wings[1]] },
      ];
    }
    case "corners": {
      const side = cornerSide(placed);
      const flips = unit.at.map((corner) => ({ fabric: unit.corner, corners: flip(placed, corner, side) }));
      return [{ fabric: unit.fabric, corners: clipped(placed, unit.at, side) }, ...flips];
    }
  }
}

/** Where a corner lies, and the ways along the two sides that meet there, clockwise. */
function cornerFrame({ row, column, rows, columns }: PlacedUnit, corner: Corner) {
  const [right, bottom] = [column + columns, row + rows];
  return {
    nw: { x: column, y: row, before: { x: 0, y: 1 }, after: { x: 1, y: 0 } },
    ne: { x: right, y: row, before: { x: -1, y: 0 }, after: { x: 0, y: 1 } },
    se: { x: right, y: bottom, before: { x: 0, y: -1 }, after: { x: -1, y: 0 } },
    sw: { x: column, y: bottom, before: { x: 1, y: 0 }, after: { x: 0, y: -1 } },
  }[corner];
}

function flip(placed: PlacedUnit, corner: Corner, side: number): GridPoint[] {
  const { x, y, before, after } = cornerFrame(placed, corner);
  return [
    { x, y },
    { x: x + after.x * side, y: y + after.y * side },
    { x: x + before.x * side, y: y + before.y * side },
  ];
}

/** The patch without its flipped corners. */
function clipped(placed: PlacedUnit, at: readonly Corner[], side: number): GridPoint[] {
  return (["nw", "ne", "se", "sw"] as const).flatMap((corner) => {
    const { x, y, before, after } = cornerFrame(placed, corner);
    if (!at.includes(corner)) return [{ x, y }];
    return [
      { x: x + before.x * side, y: y + before.y * side },
      { x: x + after.x * side, y: y + after.y * side },
    ];
  });
}
