/** Pre-cut bundles of strips. */
import { bundleSpare, type BundlePatch } from "../src/math/bundles";
import type { Inches } from "../src/math/units";
import { answer, type Cell, type Door, filledRows } from "./cells";

/**
 * Strips that a pre-cut bundle has to spare for a list of patches; negative where it is short.
 * @customfunction BUNDLECHECK
 * @param list Rows of patch and count: its side along the strip. Or of patch, height and count, for patches lower than the strip.
 * @param stripCount Strips in the bundle.
 * @param stripWidth Width of each strip.
 * @param [width] Usable length of a strip: 42 in (usual) or 107 cm.
 * @param [units] "in" (usual) or "cm".
 * @param [squaring] Length lost where the end of each strip is squared; 0 (usual).
 * @returns Spare strips, by the plan that takes fewest: what one size leaves of a strip is used for the others. Patches lie in
 * one row to a strip, none stacked or turned. Sizes that share no mark, such as exact diagonals, count up to 1/1200 in longer.
 * Rows with no count are passed over.
 */
export function bundleCheck(
  list: any[][],
  stripCount: any,
  stripWidth: any,
  width?: any,
  units?: any,
  squaring?: any,
): any {
  return answer(units, (door) => {
    const bundle = {
      strips: door.count("strips", stripCount),
      stripWidth: door.length("strip width", stripWidth),
      width: door.fabricWidth("width", width),
      squaring: door.squaring(squaring),
    };
    return bundleSpare(readPatches(door, list, bundle.stripWidth), bundle);
  });
}

/** Rows of patch and count, or of patch, height and count; a height that is left out is the width of the strip. */
function readPatches(door: Door, list: Cell, stripWidth: Inches): BundlePatch[] {
  return filledRows(list).map(({ number, cells }) => {
    const [patch, height, count] = cells.length === 2 ? [cells[0], null, cells[1]] : cells;
    return {
      patch: door.length(`patch in row ${number}`, patch),
      height: door.length(`height in row ${number}`, height, stripWidth),
      count: door.count(`count in row ${number}`, count, 0),
    };
  });
}
