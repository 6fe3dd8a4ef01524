/** Lengths and amounts: reading, writing and rounding them. */
import * as fabrics from "../src/math/fabric";
import * as marks from "../src/math/marks";
import { decimalText, fractionText, showing } from "../src/math/show";
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

/**
 * Rounds a length to a ruler mark: up, down or to the nearest. A length that is on a mark stays as it is.
 * @customfunction LENGTHMARK
 * @param length A length, such as 3.8536 or "9.8 cm".
 * @param [mark] Distance between two marks: 1/8 in (usual) or 0.1 cm. Type 0 to leave the length exact.
 * @param [way] "up" (usual), "down" or "nearest"; of two marks equally near, the upper.
 * @param [units] "in" (usual) or "cm": what a bare number means and the answer is in.
 * @returns The length on the mark. Empty where the length is empty.
 */
export function lengthMark(length: any, mark?: any, way?: any, units?: any): any {
  return answer(units, (door) =>
    isEmpty(length)
      ? ""
      : door.showsLength(
          marks.lengthMark(
            door.longLength("length", length),
            door.mark(mark),
            door.choice("way", way, marks.MARK_WAYS, "up"),
          ),
        ),
  );
}

/**
 * Writes an amount of fabric as a shop says it, such as 4 3/4 yd, 1 2/3 yd or 2.2 m. Nothing is rounded to a shop's step.
 * @customfunction FABRICTEXT
 * @param amount Amount in yards (or meters), such as 4.75 or "45 in".
 * @param [units] "in" (usual) or "cm": yards or meters.
 * @returns Text: eighths, thirds or sixteenths of a yard where the amount is one, else decimals. Empty where it is empty.
 */
export function fabricText(amount: any, units?: any): any {
  return answer(units, (door) => (isEmpty(amount) ? "" : showing(door.system).fabric(door.fabric("amount", amount))));
}

/**
 * Length to make or to buy, so that it has the wanted length after washing.
 * @customfunction BEFOREWASHING
 * @param length Length wanted after washing, such as 90 or "6 yd".
 * @param shrinkage Part of the length before washing that is lost, such as 5% or 0.05.
 * @param [units] "in" (usual) or "cm": what a bare number means and the answer is in.
 * @returns Length before washing, exact: length ÷ (1 − shrinkage). LENGTHMARK or FABRIC rounds it.
 */
export function beforeWashing(length: any, shrinkage: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(fabrics.beforeWashing(door.longLength("length", length), door.number("shrinkage", shrinkage))),
  );
}
