/** Shapes other than squares: from the finished size to the size to cut. */
import { Problem } from "../src/math/problem";
import * as shapes from "../src/math/shapes";
import { cutTemplate as cutTemplateCorners, type Corner } from "../src/math/template";
import { inches } from "../src/math/units";
import { answer, type Cell, type Door, filledRows, isEmpty } from "./cells";
import { patchTable } from "./tables";

/**
 * Size to cut a right triangle that is half of a rectangle. Exact unless a ruler mark is given.
 * @customfunction CUTHALFRECTANGLE
 * @param width Finished width of the rectangle, such as 2.
 * @param height Finished height of the rectangle, such as 4.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves sizes exact.
 * @param [units] "in" (usual) or "cm".
 * @returns Two cells: width and height of the rectangle to cut once, corner to corner.
 */
export function cutHalfRectangle(width: any, height: any, seam?: any, mark?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const cut = shapes.cutHalfRectangle(
      door.length("width", width),
      door.length("height", height),
      ...seamAndMark(door, seam, mark),
    );
    return [[door.showsLength(cut.width), door.showsLength(cut.height)]];
  });
}

/**
 * Size to cut a triangle with two equal sides, or with three. Exact unless a ruler mark is given.
 * @customfunction CUTTRIANGLE
 * @param base Finished base, such as 4.
 * @param [height] Finished height; left out, the triangle has three equal sides.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves sizes exact.
 * @param [units] "in" (usual) or "cm".
 * @returns Two cells: base and height to cut, to the tips of the seam allowance; the height is the width of the strip.
 */
export function cutTriangle(base: any, height?: any, seam?: any, mark?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const cut = shapes.cutTriangle(
      door.length("base", base),
      isEmpty(height) ? undefined : door.length("height", height),
      ...seamAndMark(door, seam, mark),
    );
    return [[door.showsLength(cut.base), door.showsLength(cut.height)]];
  });
}

/**
 * Strip to cut for diamonds, and how far apart to cut it. Exact unless a ruler mark is given.
 * @customfunction CUTDIAMOND
 * @param side Finished side, such as 3.
 * @param [angle] Angle at one tip in degrees, from 1 to 179: 45 (usual), 60 or any other.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves sizes exact.
 * @param [units] "in" (usual) or "cm".
 * @returns Two cells: width of the strip, and the distance between the slanting cuts measured along the edge of the strip.
 */
export function cutDiamond(side: any, angle?: any, seam?: any, mark?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const cut = shapes.cutDiamond(
      door.length("side", side),
      door.number("angle", angle, shapes.DIAMOND_ANGLES),
      ...seamAndMark(door, seam, mark),
    );
    return [[door.showsLength(cut.strip), door.showsLength(cut.along)]];
  });
}

/**
 * Size to cut a hexagon with six equal sides. Exact unless a ruler mark is given.
 * @customfunction CUTHEXAGON
 * @param side Finished side, such as 2.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves sizes exact.
 * @param [units] "in" (usual) or "cm".
 * @returns Two cells: size from flat side to flat side, which is the width of the strip, and the cut side.
 */
export function cutHexagon(side: any, seam?: any, mark?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const cut = shapes.cutHexagon(door.length("side", side), ...seamAndMark(door, seam, mark));
    return [[door.showsLength(cut.flatToFlat), door.showsLength(cut.side)]];
  });
}

/**
 * What to cut for an eight-point star in a square block: diamonds, corner squares, side triangles. Exact without a mark.
 * @customfunction CUTSTAR
 * @param block Finished side of the block, such as 14.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to, such as "1/8"; 0 (usual) leaves sizes exact.
 * @param [units] "in" (usual) or "cm".
 * @param [rows] Rows of diamonds in each point: 1 (usual); 2 makes each point of 2 × 2 smaller diamonds.
 * @returns Table: patch, finished side, cut width, cut length, how many, how; last the block. The cut width of a diamond is
 * the width of its strip, its cut length is measured along the edge of the strip.
 */
export function cutStar(block: any, seam?: any, mark?: any, units?: any, rows?: any): any[][] {
  return answer(units, (door) =>
    patchTable(
      door,
      shapes.cutStar(door.length("block", block), door.count("rows", rows, 1, 1), ...seamAndMark(door, seam, mark)),
    ),
  );
}

/**
 * Corners of the cut shape of a patch with straight sides, from its finished corners; the cut corners are mitred.
 * @customfunction CUTTEMPLATE
 * @param corners Two columns, right and up from any point: one corner in each row, in order round the shape.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Two columns: the corner to cut for each finished corner, in the same order. The last corner is joined to the first.
 * Rows without anything in them are skipped. Shapes of 3 to 200 corners; a notch narrower than two seams has no answer.
 */
export function cutTemplate(corners: any[][], seam?: any, units?: any): any[][] {
  return answer(units, (door) =>
    cutTemplateCorners(readCorners(door, corners), door.seam(seam)).map(({ x, y }) => [
      door.showsLength(x),
      door.showsLength(y),
    ]),
  );
}

function seamAndMark(door: Door, seam: Cell, mark: Cell) {
  return [door.seam(seam), door.mark(mark, inches(0))] as const;
}

function readCorners(door: Door, range: Cell): Corner[] {
  return filledRows(range).map(({ number, cells }) => {
    if (cells.length !== 2) throw new Problem("bad input", "corners must be a range of two columns, right and up");
    const [x, y] = cells;
    return {
      x: door.place(`row ${number}, distance to the right`, x),
      y: door.place(`row ${number}, distance up`, y),
    };
  });
}
