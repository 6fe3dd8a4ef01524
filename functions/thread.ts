/** Thread, and the seams that take it. */
import * as threads from "../src/math/thread";
import { answer } from "./cells";

/** Usual for a lockstitch, and the least and most that any stitch takes. */
const RATIOS = { usual: threads.LOCKSTITCH_RATIO, least: 1, most: 25 };

/**
 * Thread for a length of seam, needle and bobbin thread of a machine's lockstitch (ISO 4915, type 301) together.
 * @customfunction THREADLENGTH
 * @param seamLength Length of all seams, such as an answer of SEAMLENGTH or "80 yd".
 * @param [ratio] Length of thread for each length of seam, from 1 to 25: 2.5 (usual); more for short stitches or thick layers.
 * @param [units] "in" (usual) or "cm".
 * @returns Length of thread in inches (or centimeters); divide by 36 for yards.
 */
export function threadLength(seamLength: any, ratio?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      threads.threadLength(door.longLength("seam length", seamLength), door.number("ratio", ratio, RATIOS)),
    ),
  );
}

/**
 * Length of all seams that join equal square patches, or blocks, into rows and the rows into a top.
 *
 * They are sewn from raw edge to raw edge, over the seam allowances. Seams inside the blocks are not counted.
 * @customfunction SEAMLENGTH
 * @param across Patches in a row.
 * @param down Rows.
 * @param patch Finished side of a patch.
 * @param [units] "in" (usual) or "cm".
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for the seams as they show in the finished quilt.
 * @returns Length of the seams. Empty where across or down is empty.
 */
export function seamLength(across: any, down: any, patch: any, units?: any, seam?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      threads.seamLength(
        door.countOrEmpty("across", across),
        door.countOrEmpty("down", down),
        door.length("patch", patch),
        door.seam(seam),
      ),
    ),
  );
}
