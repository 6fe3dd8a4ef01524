/** Fabric for patches of one kind, and patches out of an amount of fabric. */
import * as yardage from "../src/math/yardage";
import { answer } from "./cells";

/**
 * Amount of fabric to buy for one kind of patch, all lying the way round that takes least.
 * @customfunction PATCHFABRIC
 * @param count How many patches.
 * @param width Width of the patch as cut.
 * @param height Height of the patch as cut.
 * @param [fabricWidth] Usable width of the fabric: 42 in (usual) or 107 cm.
 * @param [grain] "any" (usual) or "upright" to keep the height along the selvage.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @returns Amount to buy in yards (or meters): patches in a row rounded down, rows up, amount up to the shop's step. A patch
 *   longer than the fabric is wide lies along its length. Empty where the count is empty.
 */
export function patchFabric(
  count: any,
  width: any,
  height: any,
  fabricWidth?: any,
  grain?: any,
  step?: any,
  squaring?: any,
  units?: any,
): any {
  return answer(units, (door) =>
    door.showsFabric(
      yardage.patchFabric(
        door.countOrEmpty("count", count),
        door.length("width", width),
        door.length("height", height),
        {
          fabricWidth: door.fabricWidth("fabric width", fabricWidth),
          grain: door.choice("grain", grain, yardage.GRAINS, "any"),
          squaring: door.squaring(squaring),
        },
        door.shopStep(step),
      ),
    ),
  );
}

/**
 * Patches of one kind that an amount of fabric, or a piece such as a fat quarter, yields.
 * @customfunction PIECESFROM
 * @param fabric Amount of fabric in yards (or meters), or the length of a piece with its unit, such as "18 in".
 * @param width Width of the patch as cut.
 * @param height Height of the patch as cut.
 * @param [fabricWidth] Usable width of the fabric: 42 in (usual) or 107 cm; of a fat quarter, its longer side.
 * @param [grain] "any" (usual) or "upright" to keep the height along the selvage.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [units] "in" (usual) or "cm".
 * @returns Whole patches, all lying the same way in rows; turning some of them can now and then yield more. Half a fabric
 *   width (20 to 23 in) is taken for a fat quarter up to 20 in of length, and questioned beyond.
 */
export function piecesFrom(
  fabric: any,
  width: any,
  height: any,
  fabricWidth?: any,
  grain?: any,
  squaring?: any,
  units?: any,
): any {
  return answer(units, (door) =>
    yardage.piecesFrom(door.fabric("fabric", fabric), door.length("width", width), door.length("height", height), {
      fabricWidth: door.fabricWidth("fabric width", fabricWidth),
      grain: door.choice("grain", grain, yardage.GRAINS, "any"),
      squaring: door.squaring(squaring),
    }),
  );
}
