/** Checks of a written pattern. */
import * as checks from "../src/math/checks";
import { plan } from "../src/math/plans";
import { sewnTogether } from "../src/math/seams";
import { showing } from "../src/math/show";
import { answer, filledRows } from "./cells";
import { readList } from "./cutLists";
import { readLengths } from "./lengthLists";

/**
 * Unfinished length of patches sewn in a row: two seam allowances go into every seam.
 * @customfunction CHECKROW
 * @param sizes Cut sizes of the patches along the row, a range in any shape; empty cells are passed over.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Length of the sewn row, with its two outer seam allowances. Rows of a block must agree.
 */
export function checkRow(sizes: any[][], seam?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(sewnTogether("patch", readLengths(door, "patch", sizes), door.seam(seam))),
  );
}

/**
 * Totals of a list that names the same fabric in several places, such as blocks, border and binding.
 * @customfunction CHECKTOTALS
 * @param list Rows of fabric and amount in yards (or meters). Capitals and spaces do not make a name another one.
 * @param [units] "in" (usual) or "cm"; amounts come back in yards or meters.
 * @returns Table: fabric, amount in all, in how many places it is named; exact sums, in the order of first mention.
 */
export function checkTotals(list: any[][], units?: any): any[][] {
  return answer(units, (door) => {
    const uses = filledRows(list).map(({ number, cells: [fabric, amount] }) => ({
      fabric: door.text(`fabric in row ${number}`, fabric),
      amount: door.fabric(`amount in row ${number}`, amount),
    }));
    return [
      ["fabric", "amount", "places"],
      ...checks.fabricTotals(uses).map(({ fabric, amount, places }) => [fabric, door.showsFabric(amount), places]),
    ];
  });
}

/**
 * Whether the patches of a list come out of an amount of fabric, in a sentence.
 *
 * Grains, joins, sizes and the longest list are as in PLAN.
 * @customfunction CHECKFABRIC
 * @param list Rows of label, width, height, count and, if need be, grain: "any", "upright", "join" or "along".
 * @param amount Fabric at hand: a bare number is yards (meters); text such as "54 in" carries its own unit.
 * @param [width] Usable width of the fabric, selvages cut off: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [trimming] TRUE (usual): a patch may come from a higher strip and be trimmed. FALSE: never.
 * @param [units] "in" (usual) or "cm".
 * @returns A sentence: enough or short, by how much; below 2 in to spare it advises more. PLANSPARE gives the number.
 */
export function checkFabric(list: any[][], amount: any, width?: any, squaring?: any, trimming?: any, units?: any): any {
  return answer(units, (door) => {
    const bought = door.fabric("amount", amount);
    const planned = plan(readList(door, list), {
      fabricWidth: door.fabricWidth("width", width),
      squaring: door.squaring(squaring),
      trimming: door.flag("trimming", trimming, true),
      seam: door.conventions.seam,
      system: door.system,
    });
    return checks.fabricCheck(planned, bought)(showing(door.system));
  });
}
