/** Patches: from the finished size to the size to cut, and back. */
import * as patches from "../src/math/patches";
import { inches } from "../src/math/units";
import { answer } from "./cells";

/**
 * Size to cut a square, or one side of a rectangle, from its finished size. Exact unless a ruler mark is given.
 * @customfunction CUTSQUARE
 * @param finished Finished side, such as 3 or "3 1/2" or "7.5 cm".
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves the size exact.
 * @param [units] "in" (usual) or "cm".
 * @returns Side to cut: finished size and two seams.
 */
export function cutSquare(finished: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      patches.cutSquare(
        door.length("finished size", finished),
        door.lengthOrZero("seam", seam, door.conventions.seam),
        door.lengthOrZero("mark", mark, inches(0)),
      ),
    ),
  );
}

/**
 * Size to cut the squares for half-square units, from the finished size of the unit, up to the next ruler mark.
 * @customfunction CUTHALFSQUARE
 * @param finished Finished side of the unit, such as 3 or "3 1/2" or "7.5 cm".
 * @param [madeAtOnce] Units from one pair of squares: 2 (usual), 1, 4 (sewn all round) or 8.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @param [units] "in" (usual) or "cm".
 * @returns Side of the squares to cut; trim the units after sewing.
 */
export function cutHalfSquare(finished: any, madeAtOnce?: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      patches.cutHalfSquare(
        door.length("finished size", finished),
        door.oneOf("made at once", madeAtOnce, patches.MADE_AT_ONCE, 2),
        door.lengthOrZero("seam", seam, door.conventions.seam),
        door.lengthOrZero("mark", mark, door.conventions.mark),
      ),
    ),
  );
}
