/** Binding: straight strips round the edge of a quilt, and bias strips from one square. */
import * as bindings from "../src/math/binding";
import { JOINS } from "../src/math/joins";
import { inches, toInches } from "../src/math/units";
import { answer, type Cell, type Door } from "./cells";

/**
 * Length of binding for a quilt: once round it, and a tail to join the ends.
 *
 * For scallops, measure one curve with a string, multiply it, add the tail, and go on with BIASSQUARE.
 * @customfunction BINDINGLENGTH
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [tail] Extra to join the two ends: 10 in (usual) or 25 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @param [edge] "straight" (usual) or "round" for a circle or an oval, which takes bias binding.
 * @returns Length of binding, exact.
 */
export function bindingLength(width: any, length: any, tail?: any, units?: any, edge?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      bindings.bindingLength(
        door.length("width", width),
        door.length("length", length),
        door.lengthOrZero("tail", tail, door.conventions.bindingTail),
        door.choice("edge", edge, bindings.EDGES, "straight"),
      ),
    ),
  );
}

/**
 * Strips across the fabric that bind a quilt with straight sides.
 *
 * Each diagonal join costs the width of a strip, each straight join two seam allowances of 1/4 in (0.75 cm).
 * @customfunction BINDINGSTRIPS
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [strip] Width to cut the strips: 2 1/2 in (usual) or 6.5 cm.
 * @param [fabricWidth] Usable width of the fabric: 42 in (usual) or 107 cm. A fat quarter's will do.
 * @param [tail] Extra to join the two ends: 10 in (usual) or 25 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @param [join] "diagonal" (usual) or "straight".
 * @returns Whole strips.
 */
export function bindingStrips(
  width: any,
  length: any,
  strip?: any,
  fabricWidth?: any,
  tail?: any,
  units?: any,
  join?: any,
): any {
  return answer(units, (door) =>
    bindings.bindingStrips(...readBinding(door, [width, length, strip, fabricWidth, tail, join])),
  );
}

/**
 * Amount of fabric to buy for the strips that bind a quilt with straight sides.
 *
 * Strips as BINDINGSTRIPS counts them, times their width.
 * @customfunction BINDINGFABRIC
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [strip] Width to cut the strips: 2 1/2 in (usual) or 6.5 cm.
 * @param [fabricWidth] Usable width of the fabric: 42 in (usual) or 107 cm.
 * @param [tail] Extra to join the two ends: 10 in (usual) or 25 cm. Type 0 for none.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @param [join] "diagonal" (usual) or "straight".
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @returns Amount to buy in yards (or meters).
 */
export function bindingFabric(
  width: any,
  length: any,
  strip?: any,
  fabricWidth?: any,
  tail?: any,
  step?: any,
  units?: any,
  join?: any,
  squaring?: any,
): any {
  return answer(units, (door) =>
    door.showsFabric(
      bindings.bindingFabric(
        ...readBinding(door, [width, length, strip, fabricWidth, tail, join]),
        door.shopStep(step),
        door.squaring(squaring),
      ),
    ),
  );
}

/**
 * Side of the square to cut for a length of continuous bias strip, up to the next inch.
 *
 * The cloth left after the two seams has the area of the strip, (side − 2 × seam)² = length × strip, and the side is at least
 * √2 strips, so that one strip fits. A last row narrower than the strip is lost: add a row where every inch counts.
 * @customfunction BIASSQUARE
 * @param length Length of bias strip needed, such as an answer of BINDINGLENGTH.
 * @param strip Width of the strip as cut.
 * @param [units] "in" (usual) or "cm".
 * @param [seam] Seam allowance of the two seams: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Step to round the side up to: 1 in (usual) or 1 cm. Type 0 for the exact side.
 * @returns Side of the square.
 */
export function biasSquare(length: any, strip: any, units?: any, seam?: any, mark?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      bindings.biasSquare(
        door.longLength("length", length),
        door.length("strip", strip),
        door.seam(seam),
        door.mark(mark, toInches(1, door.system)),
      ),
    ),
  );
}

/**
 * Length of continuous bias strip from a square, as published tables count it.
 *
 * They count all of the cloth, nothing lost in seams: square² ÷ strip. Give the seam allowance to see what is left after the
 * two seams: (square − 2 × seam)² ÷ strip.
 * @customfunction BIASLENGTH
 * @param square Side of the square.
 * @param strip Width of the strip as cut.
 * @param [units] "in" (usual) or "cm".
 * @param [seam] Seam allowance of the two seams, such as 1/4; 0 (usual) counts all of the cloth.
 * @returns Length of the strip.
 */
export function biasLength(square: any, strip: any, units?: any, seam?: any): any {
  return answer(units, (door) =>
    door.showsLength(
      bindings.biasLength(door.length("square", square), door.length("strip", strip), door.seam(seam, inches(0))),
    ),
  );
}

function readBinding(door: Door, cells: Cell[]) {
  const [width, length, strip, fabricWidth, tail, join] = cells;
  return [
    door.length("width", width),
    door.length("length", length),
    {
      strip: door.length("strip", strip, door.conventions.bindingStrip),
      fabricWidth: door.fabricWidth("fabric width", fabricWidth),
      tail: door.lengthOrZero("tail", tail, door.conventions.bindingTail),
      join: door.choice("join", join, JOINS, "diagonal"),
      seam: door.conventions.seam,
    },
  ] as const;
}
