/** Patches: from the finished size to the size to cut, and back. */
import * as grid from "../src/math/grid";
import * as patches from "../src/math/patches";
import { type Inches, inches } from "../src/math/units";
import { answer } from "./cells";
import { patchTable } from "./tables";

/**
 * Size to cut a square, or one side of a rectangle, from its finished size. Exact unless a ruler mark is given.
 * @customfunction CUTSQUARE
 * @param finished Finished side, such as 3 or "3 1/2" or "7.5 cm".
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves the size exact.
 * @param [units] "in" (usual) or "cm".
 * @returns Side to cut: finished size and two seams.
 */
export function cutSquare(finished: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      patches.cutSquare(door.length("finished size", finished), door.seam(seam), door.mark(mark, inches(0))),
    ),
  );
}

/**
 * Size to cut the squares for half-square units, from the finished size of the unit, up to the next ruler mark.
 * @customfunction CUTHALFSQUARE
 * @param finished Finished side of the unit, such as 3 or "3 1/2" or "7.5 cm".
 * @param [madeAtOnce] Units from one pair of squares: 2 (usual), 1, 4 (sewn all round) or 8.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @param [units] "in" (usual) or "cm".
 * @returns Side of the squares to cut; trim the units after sewing.
 */
export function cutHalfSquare(finished: any, madeAtOnce?: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      patches.cutHalfSquare(
        door.length("finished size", finished),
        door.oneOf("made at once", madeAtOnce, patches.MADE_AT_ONCE, 2),
        door.seam(seam),
        door.mark(mark),
      ),
    ),
  );
}

/**
 * Size to cut the square that is cut twice, corner to corner, for four triangles; also squares for hourglass units.
 * @customfunction CUTQUARTERSQUARE
 * @param finished Finished long edge of the triangle, or side of the hourglass unit, such as 3 or "7.5 cm".
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @param [units] "in" (usual) or "cm".
 * @returns Side of the square to cut; trim after sewing. The long edges of the triangles lie on the straight grain.
 */
export function cutQuarterSquare(finished: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      patches.cutQuarterSquare(door.length("finished size", finished), door.seam(seam), door.mark(mark)),
    ),
  );
}

/**
 * What to cut for flying geese, which are twice as wide as high. Sizes that are trimmed after sewing come at the next mark.
 * @customfunction CUTGEESE
 * @param width Finished width of one unit, such as 4; its height is half of that.
 * @param [method] "four at once" (usual), "triangles" (all cut first) or "corners" (squares sewn across and flipped).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm; with "corners" 0 (usual), the exact size.
 * @param [units] "in" (usual) or "cm".
 * @param [count] Units wanted: 4 (usual). Four at once come in whole sets.
 * @returns Table: patch, finished, cut width, cut length, how many, how; with "corners" also the waste; last the unit.
 */
export function cutGeese(width: any, method?: any, seam?: any, mark?: any, units?: any, count?: any): any[][] {
  return answer(units, (door) => {
    const chosen = door.choice("method", method, patches.GEESE_METHODS, "four at once");
    return patchTable(
      door,
      patches.cutGeese(
        door.length("width", width),
        chosen,
        door.seam(seam),
        door.mark(mark, chosen === "corners" ? inches(0) : door.conventions.mark),
        door.count("count", count, 4, 1),
      ),
    );
  });
}

/**
 * What to cut for a square-in-square unit: a square on point with four triangles round it, up to the next ruler mark.
 * @customfunction CUTSQUAREINSQUARE
 * @param finished Finished side of the whole unit, such as 6 or "15 cm".
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @param [units] "in" (usual) or "cm".
 * @returns Table: patch, finished, cut width, cut length, how many, how; last the unit with its size to trim to.
 */
export function cutSquareInSquare(finished: any, seam?: any, mark?: any, units?: any): any[][] {
  return answer(units, (door) =>
    patchTable(
      door,
      patches.cutSquareInSquare(door.length("finished size", finished), door.seam(seam), door.mark(mark)),
    ),
  );
}

/**
 * Size to cut a square that is sewn across the corner of a patch and flipped. Exact unless a ruler mark is given.
 * @customfunction CUTCORNER
 * @param finished Finished short side of the corner triangle, such as 2 or "5 cm".
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves the size exact.
 * @param [units] "in" (usual) or "cm".
 * @returns Side of the square to cut: finished size and two seams.
 */
export function cutCorner(finished: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      patches.cutCorner(door.length("finished size", finished), door.seam(seam), door.mark(mark, inches(0))),
    ),
  );
}

/**
 * One patch of a block of equal patches, what rounding it adds up to, and the nearest blocks that cut cleanly.
 * @customfunction GRIDPATCH
 * @param block Finished side of the block, such as 12 or "30 cm".
 * @param divisions Patches along a side, such as 5.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark for the rounded cut: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @param [units] "in" (usual) or "cm".
 * @returns Table: finished patch, exact cut, cut at the nearest mark, by how much the block then comes out larger (below 0:
 * smaller), and the nearest blocks whose patch finishes on a half inch (half centimeter): "none" where there is no such
 * patch, or it is not cut on a mark. Where the block itself needs no rounding, it is both.
 */
export function gridPatch(block: any, divisions: any, seam?: any, mark?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const patch = grid.gridPatch(
      door.length("block", block),
      door.count("divisions", divisions, undefined, 1),
      door.conventions.gridStep,
      door.seam(seam),
      door.mark(mark),
    );
    const blockOrNone = (size?: Inches) => (size === undefined ? "none" : door.showsLength(size));
    return [
      ["finished patch", "exact cut", "cut at the mark", "adds up to", "smaller clean block", "larger clean block"],
      [
        door.showsLength(patch.finished),
        door.showsLength(patch.exact),
        door.showsLength(patch.atMark),
        door.showsLength(patch.addsUpTo),
        blockOrNone(patch.smallerBlock),
        blockOrNone(patch.largerBlock),
      ],
    ];
  });
}
