/** Strips cut across the fabric. */
import { sewnTogether } from "../src/math/seams";
import * as strips from "../src/math/strips";
import { answer, isEmpty } from "./cells";
import { readLengths } from "./lengthLists";

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
    strips.stripPatches(door.length("patch", patch), door.fabricWidth("width", width), door.squaring(squaring)),
  );
}

/**
 * Triangles that one strip across the fabric yields, cut head to tail.
 * @customfunction STRIPTRIANGLES
 * @param height Height of the triangle as cut, which is the width of the strip.
 * @param [base] Base of the triangle as cut; left out, all three sides are equal.
 * @param [width] Usable width of the fabric: 42 in (usual) or 107 cm.
 * @param [units] "in" (usual) or "cm".
 * @param [squaring] Length lost where the end of the strip is squared; 0 (usual).
 * @returns Whole triangles from one strip: the first takes a whole base, every further one half a base.
 */
export function stripTriangles(height: any, base?: any, width?: any, units?: any, squaring?: any): any {
  return answer(units, (door) => {
    const high = door.length("height", height);
    return strips.stripTriangles(
      high,
      isEmpty(base) ? undefined : door.length("base", base),
      door.fabricWidth("width", width),
      door.squaring(squaring),
    );
  });
}

/**
 * Strips to cut across the fabric for a number of patches.
 * @customfunction STRIPSNEEDED
 * @param count How many patches.
 * @param patch Side of the patch along the strip, as cut.
 * @param [width] Usable width of the fabric: 42 in (usual) or 107 cm; of a fat quarter, its longer side.
 * @param [squaring] Length lost where the end of each strip is squared; 0 (usual).
 * @param [units] "in" (usual) or "cm".
 * @returns Strips, rounded up. Empty where the count is empty.
 */
export function stripsNeeded(count: any, patch: any, width?: any, squaring?: any, units?: any): any {
  return answer(units, (door) =>
    strips.stripsNeeded(
      door.countOrEmpty("count", count),
      door.length("patch", patch),
      door.fabricWidth("width", width),
      door.squaring(squaring),
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
        door.squaring(squaring),
      ),
    ),
  );
}

/**
 * Whole strips that an amount of fabric yields, cut across it.
 * @customfunction STRIPSFROM
 * @param fabric Amount of fabric in yards (or meters), such as 1.5 or "1 1/3"; or a length with its unit, such as "24 in".
 * @param stripWidth Width to cut each strip.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [units] "in" (usual) or "cm".
 * @returns Strips, rounded down. Type a third as "1/3": 0.33 yd is 11.88 in, too short for a strip of 12 in.
 */
export function stripsFrom(fabric: any, stripWidth: any, squaring?: any, units?: any): any {
  return answer(units, (door) =>
    strips.stripsFrom(door.fabric("fabric", fabric), door.length("strip width", stripWidth), door.squaring(squaring)),
  );
}

/**
 * Unfinished width of a strip set: strips sewn side by side along their long edges.
 * @customfunction STRIPSETSIZE
 * @param widths Widths of the strips as cut, a range in any shape; empty cells are passed over.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Width of the strip set, with its two outer seam allowances.
 */
export function stripSetSize(widths: any[][], seam?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(sewnTogether("strip", readLengths(door, "strip", widths), door.seam(seam))),
  );
}

/**
 * Strip sets to sew for a number of segments cut across them.
 * @customfunction STRIPSETS
 * @param segments How many segments.
 * @param segment Width to cut each segment.
 * @param [length] Length of a strip set: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost where the end of each strip set is squared; 0 (usual).
 * @param [units] "in" (usual) or "cm".
 * @returns Strip sets, rounded up. Empty where the number of segments is empty.
 */
export function stripSets(segments: any, segment: any, length?: any, squaring?: any, units?: any): any {
  return answer(units, (door) =>
    strips.stripSets(
      door.countOrEmpty("segments", segments),
      door.length("segment", segment),
      door.fabricWidth("length", length),
      door.squaring(squaring),
    ),
  );
}
