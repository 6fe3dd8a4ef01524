/** Blocks and their patches turned by quarter turns, clockwise. */
import { type Block, type Corner, CORNERS, type Direction, DIRECTIONS, type PlacedUnit, type Unit } from "./grammar";

/** Quarter turns, clockwise. */
export type Turns = 0 | 1 | 2 | 3;

/** The block as it lies after a number of quarter turns. */
export function turnBlock(block: Block, turns: Turns): Block {
  let turned = block;
  for (let turn = 0; turn < turns; turn++) turned = quarterTurn(turned);
  return turned;
}

function quarterTurn(block: Block): Block {
  const units = block.units.map((placed): PlacedUnit => {
    const { row, column, rows, columns, unit } = placed;
    return {
      row: column,
      column: block.rows - row - rows,
      rows: columns,
      columns: rows,
      unit: turnUnit(unit),
    };
  });
  return { rows: block.columns, columns: block.rows, units, fabrics: block.fabrics };
}

/** A patch turned in its own cells: a quarter where they make a square, half round where they do not. */
export function turnInPlace({ rows, columns, unit }: PlacedUnit): Unit {
  return rows === columns ? turnUnit(unit) : turnUnit(turnUnit(unit));
}

function turnUnit(unit: Unit): Unit {
  switch (unit.kind) {
    case "plain":
      return unit;
    case "half square":
      // Above a rising seam lies the upper left, which a turn takes to the upper right: above a falling seam.
      return unit.seam === "rising"
        ? { ...unit, seam: "falling" }
        : { kind: "half square", seam: "rising", above: unit.below, below: unit.above };
    case "four triangles": {
      const [top, right, bottom, left] = unit.fabrics;
      return { ...unit, fabrics: [left, top, right, bottom] };
    }
    case "goose":
      return { ...unit, flies: next<Direction>(DIRECTIONS, unit.flies) };
    case "corners":
      return { ...unit, at: unit.at.map((corner) => next<Corner>(CORNERS, corner)) };
  }
}

function next<T>(round: readonly T[], value: T): T {
  return round[(round.indexOf(value) + 1) % round.length];
}
