/** Panels of one size, such as fat quarters, and bolts of several lengths. */
import * as panels from "../src/math/panels";
import { roundedText } from "../src/math/counting";
import { showing } from "../src/math/show";
import { inches } from "../src/math/units";
import { readCountedLengths, readList } from "./cutLists";
import { answer, type Value } from "./cells";

/**
 * Fewest panels of one size, such as fat quarters, that a list of patches can be cut from, in strips either way round.
 *
 * Sizes and the longest list are as in PLAN.
 * @customfunction PANELSNEEDED
 * @param list Rows of label, width, height, count and, if need be, grain: "any" or "upright".
 * @param panelWidth Usable width of a panel, such as 21 for a fat quarter.
 * @param panelHeight Usable height of a panel, along the selvage, such as 17 1/2 for a fat quarter.
 * @param [trimming] TRUE (usual): a patch may come from a higher strip and be trimmed. FALSE: never.
 * @param [units] "in" (usual) or "cm".
 * @returns Panels needed.
 */
export function panelsNeeded(list: any[][], panelWidth: any, panelHeight: any, trimming?: any, units?: any): any {
  return answer(units, (door) => {
    const options = { trimming: door.flag("trimming", trimming, true), system: door.system };
    const width = door.length("panel width", panelWidth);
    const height = door.length("panel height", panelHeight);
    return panels.planInPanels(readList(door, list), width, height, options).cuts.panelCount;
  });
}

/**
 * Which lengths to cut from which bolts: fewest bolts, then least left over.
 *
 * Lengths that share no mark count up to 1/16 in or 0.1 cm longer. No bolt is longer than 500 yards.
 * @customfunction BOLTPLAN
 * @param list Rows of label, length, count: lengths to cut, in yards (meters).
 * @param bolts Bolts at hand: one column of lengths, or rows of label, length and count; in yards (meters).
 * @param [generosity] Length that the shop cuts beyond each cut, in inches (centimeters); 0 (usual).
 * @param [units] "in" (usual) or "cm"; bare lengths of fabric are yards or meters.
 * @returns Table: bolt, its length, what to cut from it, what is left; the last row sums up.
 */
export function boltPlan(list: any[][], bolts: any[][], generosity?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const planned = panels.boltPlan(
      readCountedLengths(door, "cuts", list),
      readCountedLengths(door, "bolts", bolts),
      door.lengthOrZero("generosity", generosity, inches(0)),
      door.system,
    );
    const { plan, bolts: stock } = planned;
    const proof = plan.proved ? "fewest bolts proved" : `no plan takes fewer than ${plan.boltBound}`;
    const proviso = roundedText(planned)(showing(door.system));
    return [
      ["bolt", "length", "cut from it", "left"],
      ...plan.bolts.map((bolt): Value[] => [
        bolt.label,
        door.showsFabric(stock[bolt.bolt].length),
        bolt.cuts.map((cut) => `${cut.count} × ${cut.label}`).join(", "),
        door.showsFabric(bolt.left * planned.mark),
      ]),
      ["total", plan.boltCount, `${proof}${proviso}`, door.showsFabric(planned.left)],
    ];
  });
}
