/** Quilts drawn in cells: what to cut and to buy for the whole of them, and for other sizes. */
import { fabricPlans } from "../src/math/blocks/amounts";
import { quiltFabrics as quiltFabricNames, quiltPieces as piecesOf } from "../src/math/blocks/quilt";
import { sizedQuilts } from "../src/math/blocks/sizes";
import { fabric as buy } from "../src/math/fabric";
import { planFabric } from "../src/math/plans";
import { knownFabric, patchTable, readSeam } from "./blockCells";
import { answer, type Cell, type Door, isEmpty, type Value } from "./cells";
import { readQuilt, readWantedSizes } from "./quiltCells";

/**
 * What to cut for a quilt drawn in cells: blocks, sashing and cornerstones, butted borders; equal patches together.
 * The first five columns are a list that PLAN reads; borders are to be joined from strips.
 *
 * PLAN joins strips with the usual seam; where the seam is another, QUILTFABRICS tells what to buy.
 * @customfunction QUILTPIECES
 * @param layout Cells with a block's name each; "star 90" is a block turned clockwise by 90 (180, 270) degrees.
 * @param blocks Named blocks: a name in the first column, the block's cells beside and below it.
 * @param size Finished width of a block.
 * @param [sashing] One row: finished width, fabric and, if need be, the fabric of the cornerstones; none (usual).
 * @param [edge] "none" (usual) or "sashed" where sashing lies outside the outer blocks, too.
 * @param [borders] Rows of finished width and fabric, from the inside out; none (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @param [fabric] One fabric's name, for its patches alone.
 * @returns Table: fabric, width and height to cut, count, grain, use, spare units.
 */
export function quiltPieces(
  layout: any[][],
  blocks: any[][],
  size: any,
  sashing?: any[][],
  edge?: any,
  borders?: any[][],
  seam?: any,
  units?: any,
  fabric?: any,
): any[][] {
  return answer(units, (door) => {
    const quilt = readQuilt(door, { layout, blocks, size, sashing, edge, borders });
    const patches = piecesOf(quilt, readSeam(door, seam));
    if (isEmpty(fabric)) return patchTable(door, patches);
    const name = knownFabric(door, quiltFabricNames(quilt), fabric);
    return patchTable(
      door,
      patches.filter((patch) => patch.fabric === name),
    );
  });
}

/**
 * Shopping list of a quilt drawn in cells: for each fabric the amount to buy, by the cutting plan of least length.
 * @customfunction QUILTFABRICS
 * @param layout Cells with a block's name each; "star 90" is a block turned clockwise by 90 (180, 270) degrees.
 * @param blocks Named blocks: a name in the first column, the block's cells beside and below it.
 * @param size Finished width of a block.
 * @param [sashing] One row: finished width, fabric and, if need be, the fabric of the cornerstones; none (usual).
 * @param [edge] "none" (usual) or "sashed" where sashing lies outside the outer blocks, too.
 * @param [borders] Rows of finished width and fabric, from the inside out; none (usual).
 * @param [width] Usable width of the fabrics: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of a fabric is squared; 0 (usual).
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm"; amounts come back in yards or meters.
 * @returns Table: fabric, amount to buy, exact length, strips, patches.
 */
export function quiltFabrics(
  layout: any[][],
  blocks: any[][],
  size: any,
  sashing?: any[][],
  edge?: any,
  borders?: any[][],
  width?: any,
  squaring?: any,
  step?: any,
  seam?: any,
  units?: any,
): any[][] {
  return answer(units, (door) => {
    const quilt = readQuilt(door, { layout, blocks, size, sashing, edge, borders });
    const shopStep = door.shopStep(step);
    const options = { ...readSeam(door, seam), ...readCloth(door, width, squaring) };
    const patches = piecesOf(quilt, options);
    const plans = fabricPlans(patches, options);
    return [
      ["fabric", "amount", "length", "strips", "patches"],
      ...plans.map(({ fabric, plan }): Value[] => [
        fabric,
        door.showsFabric(planFabric(plan, shopStep)),
        door.showsLength(plan.length),
        plan.cuts.stripCount,
        patches.reduce((sum, patch) => sum + (patch.fabric === fabric ? patch.count : 0), 0),
      ]),
    ];
  });
}

/**
 * The same design in several sizes, one column a size: blocks across and down nearest to the size, and the amount to buy of
 * each fabric. The layout repeats, and every piece is counted again; nothing is scaled. Crib is the name of a size only:
 * no quilt belongs where an infant sleeps.
 * @customfunction SIZETABLE
 * @param layout Cells with a block's name each, which repeat over larger sizes.
 * @param blocks Named blocks: a name in the first column, the block's cells beside and below it.
 * @param size Finished width of a block.
 * @param [sashing] One row: finished width, fabric and, if need be, the fabric of the cornerstones; none (usual).
 * @param [edge] "none" (usual) or "sashed" where sashing lies outside the outer blocks, too.
 * @param [borders] Rows of finished width and fabric, from the inside out; none (usual).
 * @param [sizes] Rows of name, width, length; crib, twin, full, queen and king with a 12 in (30 cm) drop (usual).
 * @param [width] Usable width of the fabrics: 42 in (usual) or 107 cm.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm"; amounts come back in yards or meters.
 * @returns Table: blocks across, blocks down, width, length and the amount of each fabric; one column a size.
 */
export function sizeTable(
  layout: any[][],
  blocks: any[][],
  size: any,
  sashing?: any[][],
  edge?: any,
  borders?: any[][],
  sizes?: any[][],
  width?: any,
  step?: any,
  seam?: any,
  units?: any,
): any[][] {
  return answer(units, (door) => {
    const quilt = readQuilt(door, { layout, blocks, size, sashing, edge, borders });
    const shopStep = door.shopStep(step);
    const options = { ...readSeam(door, seam), ...readCloth(door, width, null) };
    const columns = sizedQuilts(quilt, readWantedSizes(door, sizes), options);
    const row = (name: string, value: (column: (typeof columns)[number]) => Value) => [name, ...columns.map(value)];
    return [
      row("", ({ name }) => name),
      row("blocks across", ({ across }) => across),
      row("blocks down", ({ down }) => down),
      row("width", (column) => door.showsLength(column.size.width)),
      row("length", (column) => door.showsLength(column.size.length)),
      ...quiltFabricNames(quilt).map((fabric, index) =>
        row(fabric, ({ lengths }) => door.showsFabric(buy(lengths[index], shopStep))),
      ),
    ];
  });
}

function readCloth(door: Door, width: Cell, squaring: Cell) {
  return {
    fabricWidth: door.fabricWidth("width", width),
    squaring: door.squaring(squaring),
    system: door.system,
  };
}
