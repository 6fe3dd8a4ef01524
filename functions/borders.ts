/** Borders: sizes, strips and pieced units. */
import * as borders from "../src/math/borders";
import { answer } from "./cells";

/**
 * Whole units, such as piano keys, that cover one side of a quilt, rounded up.
 * @customfunction BORDERUNITS
 * @param side Finished length of the side, without its seam allowances.
 * @param unit Finished length that one unit takes along the side.
 * @param [units] "in" (usual) or "cm".
 * @returns Units for the side; BORDERGAP tells what they overhang.
 */
export function borderUnits(side: any, unit: any, units?: any): any {
  return answer(units, (door) => borders.borderUnits(door.length("side", side), door.length("unit", unit)));
}

/**
 * What the whole units that cover a side overhang; 0 where they fit.
 * @customfunction BORDERGAP
 * @param side Finished length of the side, without its seam allowances.
 * @param unit Finished length that one unit takes along the side.
 * @param [units] "in" (usual) or "cm".
 * @returns Overhang of the units beyond the side.
 */
export function borderGap(side: any, unit: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(borders.borderGap(door.length("side", side), door.length("unit", unit))),
  );
}
