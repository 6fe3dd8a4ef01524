/** Cut plans: which strips to cut, what to cut from each, and how much fabric that takes. */
import * as plans from "../src/math/plans";
import { stripsFirst as splitByStrips } from "../src/math/stripsFirst";
import { answer, type Cell, type Door, type Value } from "./cells";
import { planTable } from "./planTable";
import { readList } from "./cutLists";

/**
 * Cutting plan of least length for a list of patches: strips across the fabric in cutting order, and what to cut from each.
 * Every strip runs from selvage to selvage. The last row tells the length, what is left over and whether less is possible.
 *
 * A "join" patch lies across the fabric. Where it is longer than the fabric is wide, it is joined from strips, and each join
 * loses two usual seams, 1/2 in or 1.5 cm; a shorter one stays in one piece, although a border joined all round can take less:
 * see BORDERFABRIC. An "along" patch longer than the fabric is wide lies along the selvage. Sizes count exactly; those that
 * share no mark, such as exact diagonals, are cut at the next 1/16 in or 0.1 cm up. At most 5000 patches in 200 rows.
 * A long list has more plans than are searched through; then the last row tells by how much the length may be above the least.
 * @customfunction PLAN
 * @param list Rows of label, width, height, count and, if need be, grain: "any", "upright", "join" or "along".
 * @param [width] Usable width of the fabric, selvages cut off: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [trimming] TRUE (usual): a patch may come from a higher strip and be trimmed. FALSE: never.
 * @param [units] "in" (usual) or "cm".
 * @returns Table: strip height, strips, what to cut from each strip, length left at its end.
 */
export function plan(list: any[][], width?: any, squaring?: any, trimming?: any, units?: any): any[][] {
  return answer(units, (door) => planTable(door, readPlan(door, list, width, squaring, trimming)));
}

/**
 * Amount of fabric to buy for a list of patches, by the cutting plan of least length.
 *
 * Grains, joins, sizes and the longest list are as in PLAN.
 * @customfunction PLANFABRIC
 * @param list Rows of label, width, height, count and, if need be, grain: "any", "upright", "join" or "along".
 * @param [width] Usable width of the fabric, selvages cut off: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [trimming] TRUE (usual): a patch may come from a higher strip and be trimmed. FALSE: never.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @returns Amount to buy in yards (or meters).
 */
export function planFabric(list: any[][], width?: any, squaring?: any, trimming?: any, step?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsFabric(plans.planFabric(readPlan(door, list, width, squaring, trimming), door.shopStep(step))),
  );
}

/**
 * Strips to cut for a list of patches, by the cutting plan of least length.
 *
 * Grains, joins, sizes and the longest list are as in PLAN.
 * @customfunction PLANSTRIPS
 * @param list Rows of label, width, height, count and, if need be, grain: "any", "upright", "join" or "along".
 * @param [width] Usable width of the fabric, selvages cut off: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [trimming] TRUE (usual): a patch may come from a higher strip and be trimmed. FALSE: never.
 * @param [units] "in" (usual) or "cm".
 * @returns Strips across the fabric, of all heights together.
 */
export function planStrips(list: any[][], width?: any, squaring?: any, trimming?: any, units?: any): any {
  return answer(units, (door) => readPlan(door, list, width, squaring, trimming).cuts.stripCount);
}

/**
 * Exact length of fabric that a list of patches takes, by the cutting plan of least length; squaring included.
 *
 * Grains, joins, sizes and the longest list are as in PLAN. Its last row tells whether less is possible.
 * @customfunction PLANLENGTH
 * @param list Rows of label, width, height, count and, if need be, grain: "any", "upright", "join" or "along".
 * @param [width] Usable width of the fabric, selvages cut off: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [trimming] TRUE (usual): a patch may come from a higher strip and be trimmed. FALSE: never.
 * @param [units] "in" (usual) or "cm".
 * @returns Length in inches (or centimeters).
 */
export function planLength(list: any[][], width?: any, squaring?: any, trimming?: any, units?: any): any {
  return answer(units, (door) => door.showsLength(readPlan(door, list, width, squaring, trimming).length));
}

/**
 * Length that the cutting plan of a list leaves of an amount already bought; negative where the fabric is short.
 *
 * Grains, joins, sizes and the longest list are as in PLAN.
 * @customfunction PLANSPARE
 * @param list Rows of label, width, height, count and, if need be, grain: "any", "upright", "join" or "along".
 * @param amount Fabric at hand: a bare number is yards (meters); text such as "54 in" carries its own unit.
 * @param [width] Usable width of the fabric, selvages cut off: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [trimming] TRUE (usual): a patch may come from a higher strip and be trimmed. FALSE: never.
 * @param [units] "in" (usual) or "cm".
 * @returns Length left in inches (or centimeters); below 0 what is missing.
 */
export function planSpare(list: any[][], amount: any, width?: any, squaring?: any, trimming?: any, units?: any): any {
  return answer(units, (door) => {
    const bought = door.fabric("amount", amount);
    return door.showsLength(plans.planSpare(readPlan(door, list, width, squaring, trimming), bought));
  });
}

/**
 * A roll of strips used first: which patches of a list come from the strips, and which must come from yardage.
 * A patch comes from a strip where one of its sides is the strip's width; the list's order says what is wanted first.
 *
 * Sizes count exactly; those that share no mark, such as exact diagonals, count up to 1/1200 in longer.
 * @customfunction STRIPSFIRST
 * @param list Rows of label, width, height, count and, if need be, grain: "any" or "upright".
 * @param strips Strips at hand.
 * @param [stripWidth] Width of each strip: 2 1/2 in (usual) or 6.5 cm.
 * @param [length] Usable length of each strip: 42 in (usual) or 107 cm.
 * @param [units] "in" (usual) or "cm".
 * @returns Table: label, width, height, count from yardage (a list that PLAN reads), grain, count from strips; then strips.
 */
export function stripsFirst(list: any[][], strips: any, stripWidth?: any, length?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const split = splitByStrips(
      readList(door, list),
      door.count("strips", strips),
      door.length("strip width", stripWidth, door.conventions.bindingStrip),
      door.fabricWidth("length", length),
    );
    return [
      ["label", "width", "height", "from yardage", "grain", "from strips"],
      ...split.rows
        .filter(({ patch }) => patch.count > 0)
        .map(({ patch, fromStrips, fromYardage }): Value[] => [
          patch.label,
          door.showsLength(patch.width),
          door.showsLength(patch.height),
          fromYardage,
          patch.grain,
          fromStrips,
        ]),
      ["strips used", "", "", "", "", split.stripsUsed],
      ["strips left", "", "", "", "", split.stripsLeft],
    ];
  });
}

function readPlan(door: Door, list: Cell, width: Cell, squaring: Cell, trimming: Cell): plans.Plan {
  return plans.plan(readList(door, list), {
    fabricWidth: door.fabricWidth("width", width),
    squaring: door.squaring(squaring),
    trimming: door.flag("trimming", trimming, true),
    seam: door.conventions.seam,
    system: door.system,
  });
}
