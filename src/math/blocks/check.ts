/** What a maker should know of a block before cutting it. */
import { onMark } from "../borders";
import { USUAL } from "../conventions";
import type { Show } from "../show";
import { type Inches, inches } from "../units";
import type { Block } from "./grammar";
import { blockPieces, type PieceOptions } from "./pieces";

/**
 * One line about a block: the size of its cells, patches whose cut size lies on no ruler mark, empty cells, its fabrics.
 *
 * @param size finished width of the block, inches
 */
export function checkBlock(block: Block, size: Inches, options: PieceOptions, show: Show): string {
  const mark = options.mark ?? USUAL.mark;
  const sides = blockPieces(block, size, 1, options).flatMap(({ width, height }) => [width, height]);
  const off = [...new Set(sides.filter((side) => !onMark(side, mark)).map((side) => show.length(side)))];
  const covered = block.units.reduce((cells, { rows, columns }) => cells + rows * columns, 0);
  const empty = block.rows * block.columns - covered;
  return [
    `${block.columns} × ${block.rows} cells of ${show.length(inches(size / block.columns))}`,
    ...(empty > 0 ? [`${empty} empty`] : []),
    off.length === 0 ? "all patches on ruler marks" : `on no ruler mark: ${off.join(", ")}`,
    `fabrics: ${block.fabrics.join(", ")}`,
  ].join("; ");
}
