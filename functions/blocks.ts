/** Blocks drawn in cells: what to cut and to buy for them. */
import { fabricPlan } from "../src/math/blocks/amounts";
import { checkBlock } from "../src/math/blocks/check";
import { readBlock } from "../src/math/blocks/grammar";
import { blockPieces as blockPiecesOf } from "../src/math/blocks/pieces";
import { planFabric } from "../src/math/plans";
import { showing } from "../src/math/show";
import { answer, type Cell, type Door, isEmpty } from "./cells";
import { cellTexts, knownFabric, patchTable, readSeam } from "./blockCells";

/**
 * What to cut for blocks drawn in cells: equal patches together, units by the method that saves work, spares told.
 * The first five columns are a list that PLAN reads.
 * @customfunction BLOCKPIECES
 * @param block The cells of the block: fabric names, "sand / slate" and the other units; see the guide to blocks.
 * @param size Finished width of the block; its cells are square.
 * @param [count] How many blocks: 1 (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @param [fabric] One fabric's name, for its patches alone.
 * @returns Table: fabric, width and height to cut, count, grain, use, spare units.
 */
export function blockPieces(block: any[][], size: any, count?: any, seam?: any, units?: any, fabric?: any): any[][] {
  return answer(units, (door) => {
    const { patches, fabrics } = readPieces(door, block, size, count, seam);
    if (isEmpty(fabric)) return patchTable(door, patches);
    const name = knownFabric(door, fabrics, fabric);
    return patchTable(
      door,
      patches.filter((patch) => patch.fabric === name),
    );
  });
}

/**
 * Amount to buy of one fabric for blocks drawn in cells, by the cutting plan of least length.
 *
 * Sizes and the longest list are as in PLAN.
 * @customfunction BLOCKFABRIC
 * @param block The cells of the block: fabric names, "sand / slate" and the other units; see the guide to blocks.
 * @param size Finished width of the block; its cells are square.
 * @param count How many blocks.
 * @param fabric The fabric's name, as written in the block.
 * @param [width] Usable width of the fabric: 42 in (usual) or 107 cm.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @returns Amount to buy in yards (or meters).
 */
export function blockFabric(
  block: any[][],
  size: any,
  count: any,
  fabric: any,
  width?: any,
  squaring?: any,
  step?: any,
  seam?: any,
  units?: any,
): any {
  return answer(units, (door) => {
    const blocks = door.countOrEmpty("count", count);
    const { patches, fabrics, options } = readPieces(door, block, size, blocks, seam);
    const name = knownFabric(door, fabrics, fabric);
    if (blocks === 0) return 0;
    const plan = fabricPlan(patches, name, {
      ...options,
      fabricWidth: door.fabricWidth("width", width),
      squaring: door.squaring(squaring),
      system: door.system,
    });
    return door.showsFabric(planFabric(plan, door.shopStep(step)));
  });
}

/**
 * One line about a block drawn in cells: the size of its cells, patches that lie on no ruler mark, its fabrics.
 * @customfunction BLOCKCHECK
 * @param block The cells of the block: fabric names, "sand / slate" and the other units; see the guide to blocks.
 * @param size Finished width of the block; its cells are square.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Text such as: 3 × 3 cells of 4 in; all patches on ruler marks; fabrics: sand, slate.
 */
export function blockCheck(block: any[][], size: any, seam?: any, units?: any): any {
  return answer(units, (door) =>
    checkBlock(readBlock(cellTexts(block)), door.length("size", size), readSeam(door, seam), showing(door.system)),
  );
}

function readPieces(door: Door, cells: Cell, size: Cell, count: Cell, seam: Cell) {
  const block = readBlock(cellTexts(cells));
  const options = readSeam(door, seam);
  const patches = blockPiecesOf(block, door.length("size", size), door.count("count", count, 1), options);
  return { patches, fabrics: block.fabrics, options };
}
