/** Tubes: half-square units from two strips sewn together along both long edges. */
import * as tubes from "../src/math/tubes";
import { answer, type Cell, type Door, filledRows } from "./cells";

/**
 * Half-square units of one size from a tube: two strips sewn along both long edges and cut at 45°, head to tail.
 * @customfunction TUBEUNITS
 * @param length Length of the tube.
 * @param trim Size to which the units are trimmed, with their seam allowances.
 * @param stripWidth Width of the two strips as cut.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm.
 * @param [ears] "clipped" (usual): dog ears cut back at the seam line. "unclipped": cut straight through the allowance.
 * @param [units] "in" (usual) or "cm".
 * @returns Whole units. A unit needs half its diagonal of height above its seam line; a tip that passes the far seam line
 *   takes a few stitches along, which are picked out.
 */
export function tubeUnits(length: any, trim: any, stripWidth: any, seam?: any, ears?: any, units?: any): any {
  return answer(units, (door) =>
    tubes.tubeUnits(
      door.length("length", length),
      door.length("trim size", trim),
      readTube(door, stripWidth, seam, ears),
    ),
  );
}

/**
 * Length of tube that half-square units of several sizes take, cut head to tail.
 * @customfunction TUBELENGTH
 * @param list Rows of trim size and count.
 * @param stripWidth Width of the two strips as cut.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm.
 * @param [ears] "clipped" (usual): dog ears cut back at the seam line. "unclipped": cut straight through the allowance.
 * @param [units] "in" (usual) or "cm".
 * @returns Least length where the largest size is cut first, sizes stay together, and each unit lies on the seam where it
 *   ends sooner. A mixed order can be a little shorter. Rows with no count are passed over.
 */
export function tubeLength(list: any[][], stripWidth: any, seam?: any, ears?: any, units?: any): any {
  return answer(units, (door) => {
    const wanted = filledRows(list).map(({ number, cells: [trim, count] }) => ({
      trim: door.length(`trim size in row ${number}`, trim),
      count: door.count(`count in row ${number}`, count, 0),
    }));
    return door.showsLength(tubes.tubeLength(wanted, readTube(door, stripWidth, seam, ears)));
  });
}

function readTube(door: Door, stripWidth: Cell, seam: Cell, ears: Cell): tubes.Tube {
  return {
    stripWidth: door.length("strip width", stripWidth),
    seam: door.seam(seam),
    ears: door.choice("ears", ears, tubes.EARS, "clipped"),
  };
}
