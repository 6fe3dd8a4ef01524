/** From the cut size back: what a patch or a unit measures once it is sewn. */
import * as sewn from "../src/math/sewn";
import { answer } from "./cells";

/**
 * Unfinished size that a unit really has once it is sewn, before it is trimmed.
 *
 * How it is made, and what is cut: "half square", "half square four" (sewn all round), "half square eight", "hourglass" (two
 * squares), "geese" (large square; the width of the unit): side of the squares. "hourglass from half squares": side of the
 * half-square unit. "square in square": side of the center square. "tube" (two strips sewn along both edges): width of the strips.
 * @customfunction UNITMADE
 * @param cut Size cut: of the squares, of the half-square unit, or the width of the strips.
 * @param how "half square", "half square four", "half square eight", "hourglass", "geese", "tube" and others, see the text.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Unfinished side of the unit, exact; trim it to the next smaller ruler mark.
 */
export function unitMade(cut: any, how: any, seam?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      sewn.unitMade(door.length("cut size", cut), door.choice("how", how, sewn.UNIT_WAYS), door.seam(seam)),
    ),
  );
}

/**
 * Finished size of a patch or unit from the size it is cut; the way back from the CUT functions.
 *
 * Of a "triangle" (three equal sides), a "diamond" (45°) and a "hexagon" cut is the width of the strip they are cut from. Of a
 * "quarter square" the answer is the long edge, of a "corner" the short side of the triangle. Units go by the words of UNITMADE.
 * @customfunction FINISHEDSIZE
 * @param cut Size cut, such as 3.875; of a triangle, diamond or hexagon the width of the strip.
 * @param [shape] "square" (usual), "corner", "quarter square", "triangle", "diamond", "hexagon", or a word of UNITMADE.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Finished side, exact.
 */
export function finishedSize(cut: any, shape?: any, seam?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      sewn.finishedSize(
        door.length("cut size", cut),
        door.choice("shape", shape, sewn.CUT_SHAPES, "square"),
        door.seam(seam),
      ),
    ),
  );
}

/**
 * What a sewn unit has to spare over the size it is to be trimmed to; below 0 it cannot be done, by so much.
 * @customfunction CUTCHECK
 * @param cut Size cut, as in UNITMADE.
 * @param trim Unfinished size to trim to: the finished size and two seams.
 * @param how How the unit is made, a word of UNITMADE such as "half square".
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns What is trimmed off; below 0 the unit is too small.
 */
export function cutCheck(cut: any, trim: any, how: any, seam?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      sewn.cutCheck(
        door.length("cut size", cut),
        door.length("trim", trim),
        door.choice("how", how, sewn.UNIT_WAYS),
        door.seam(seam),
      ),
    ),
  );
}
