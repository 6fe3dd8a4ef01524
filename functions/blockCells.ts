/** Ranges that draw blocks and quilts, and the table of what to cut for them. */
import { FabricNames } from "../src/math/blocks/fabricNames";
import type { CutPatches } from "../src/math/blocks/pieces";
import { Problem } from "../src/math/problem";
import { type Cell, type Door, isEmpty, type Value } from "./cells";
import { widthOf } from "./shown";

/** The texts of a range's cells. A 0 counts as an empty cell, as which some hosts hand it over. */
export function cellTexts(range: Cell): string[][] {
  const rows = (Array.isArray(range) && range.length > 0 ? range : [[range]]) as Cell[][];
  const columns = Math.max(1, widthOf(rows));
  return rows.map((row, r) => Array.from({ length: columns }, (_, c) => cellText(row[c], r, c)));
}

function cellText(cell: Cell, row: number, column: number): string {
  if (isEmpty(cell) || cell === 0) return "";
  if (typeof cell === "string" || typeof cell === "number" || typeof cell === "boolean") return String(cell).trim();
  throw new Problem("bad input", `row ${row + 1}, column ${column + 1}: holds no text`);
}

/** The seam of a block's patches, and the mark of the ruler to which they are cut. */
export function readSeam(door: Door, seam: Cell) {
  return { seam: door.seam(seam), mark: door.conventions.mark };
}

/** The fabric that a cell names, as the block or the quilt spells it. */
export function knownFabric(door: Door, fabrics: readonly string[], cell: Cell): string {
  const wanted = door.text("fabric", cell);
  const names = new FabricNames();
  for (const fabric of fabrics) names.spelling(fabric);
  const found = names.find(wanted);
  if (found !== undefined) return found;
  throw new Problem("bad input", `no fabric is called “${wanted}”; there is ${fabrics.join(", ")}`);
}

/** Rows of fabric, width, height, count, grain, use, spare. */
export function patchTable(door: Door, patches: readonly CutPatches[]): Value[][] {
  return [
    ["fabric", "width", "height", "count", "grain", "use", "spare"],
    ...patches.map(({ fabric, width, height, count, grain, use, spare }): Value[] => [
      fabric,
      door.showsLength(width),
      door.showsLength(height),
      count,
      grain,
      use,
      spare,
    ]),
  ];
}
