/** Strips cut across the fabric. */
import * as strips from "../src/math/strips";
import { inches } from "../src/math/units";
import { answer } from "./cells";

/**
 * Patches that one strip across the fabric yields. Times what a square yields, it gives the units a strip makes.
 * @customfunction STRIPPATCHES
 * @param patch Side of the patch along the strip, as cut.
 * @param [width] Usable width of the fabric: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost where the end of the strip is squared; 0 (usual).
 * @param [units] "in" (usual) or "cm".
 * @returns Whole patches from one strip.
 */
export function stripPatches(patch: any, width?: any, squaring?: any, units?: any): any {
  return answer(units, (door) =>
    strips.stripPatches(
      door.length("patch", patch),
      door.length("width", width, door.conventions.fabricWidth),
      door.lengthOrZero("squaring", squaring, inches(0)),
    ),
  );
}

/**
 * Amount of fabric to buy for a number of strips cut across it.
 * @customfunction STRIPFABRIC
 * @param stripCount How many strips.
 * @param stripWidth Width to cut each strip.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @returns Amount to buy in yards (or meters). Empty where the number of strips is empty.
 */
export function stripFabric(stripCount: any, stripWidth: any, step?: any, squaring?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsFabric(
      strips.stripFabric(
        door.countOrEmpty("strips", stripCount),
        door.length("strip width", stripWidth),
        door.shopStep(step),
        door.lengthOrZero("squaring", squaring, inches(0)),
      ),
    ),
  );
}
