/** Lengths and amounts: reading, writing and rounding them. */
import * as fabrics from "../src/math/fabric";
import { decimalText, fractionText } from "../src/math/show";
import { roundNearestTo } from "../src/math/rounding";
import { answer, isEmpty } from "./cells";

/**
 * Reads a length written any usual way, such as 2 1/2, 2½, 1 7/8", 3' 6", 1 1/4 yd or 63.5 mm, as a number.
 * @customfunction LENGTH
 * @param length A length, such as "2 1/2", "12 1/2 in" or "6.35 cm".
 * @param [units] "in" (usual) or "cm": what a bare number means and the answer is in.
 * @returns The length in inches (or centimeters). Empty where the length is empty.
 */
export function length(length: any, units?: any): any {
  return answer(units, (door) => (isEmpty(length) ? "" : door.showsLength(door.lengthOrZero("length", length))));
}

/**
 * Writes a length as a ruler reads: the nearest eighth, reduced, such as 2 1/4.
 * @customfunction LENGTHTEXT
 * @param length A length; may be negative, such as a shortfall.
 * @param [denominator] Parts of an inch to show: 8 (usual), 16 or 4. In centimeters 10 (usual) or 2.
 * @param [units] "in" (usual) or "cm": what a bare number means and the text is in.
 * @returns Text such as 2 1/4; in centimeters a decimal such as 7.6. Empty where the length is empty.
 */
export function lengthText(length: any, denominator?: any, units?: any): any {
  return answer(units, (door) => {
    if (isEmpty(length)) return "";
    const parts = door.count("denominator", denominator, door.system === "in" ? 8 : 10, 1);
    const value = door.showsLength(door.signedLength("length", length));
    return door.system === "in" ? fractionText(value, parts) : decimalText(roundNearestTo(1 / parts, value));
  });
}

/**
 * Amount of fabric to buy for a length, rounded up to the step in which the shop cuts.
 * @customfunction FABRIC
 * @param length Length of fabric needed, such as 152 or "4 yd".
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @returns Amount to buy in yards (or meters).
 */
export function fabric(length: any, step?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsFabric(fabrics.fabric(door.longLength("length", length), door.shopStep(step))),
  );
}
