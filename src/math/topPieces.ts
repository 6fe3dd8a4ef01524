/** What a quilt top is sewn from: blocks, sashing, cornerstones and setting triangles, counted and sized for cutting. */
import { USUAL } from "./conventions";
import { requireNotNegative } from "./problem";
import { covers } from "./rounding";
import { blocksIn, cutCornerTriangle, cutSideTriangle, type SettingOptions, topSize } from "./settings";
import type { Inches } from "./units";
import { step } from "./working";

export interface TopPiecesOptions extends SettingOptions {
  seam?: Inches;
  /** whether every second block is another one, such as a plain square */
  alternate?: boolean;
  /** ruler mark to round setting triangles up to, inches; everything else is sewn as cut and stays exact */
  mark?: Inches;
}

/** One kind of piece. */
export interface TopPiece {
  piece: string;
  /** Size to cut, inches; of a block, its size before it is sewn into the top. */
  width: Inches;
  height: Inches;
  /** How many to cut at that size. */
  count: number;
  /** How many pieces of the top these become: a square cut twice is four triangles. */
  inTop: number;
  how: string;
}

/**
 * The pieces of a quilt top, without borders. Kinds that do not occur are left out.
 *
 * Alternate blocks: straight and two-side, every second one, beginning with a block in a corner; on point, those between
 * the rows.
 *
 * @param across blocks in a row; on point, blocks in one of the rows that reach both sides
 * @param down rows of blocks, counted in the same way
 * @param block finished side of a block, inches
 * @throws Problem "bad input" where a length or count is out of range, or the setting cannot be sewn
 */
export function topPieces(across: number, down: number, block: Inches, options: TopPiecesOptions = {}): TopPiece[] {
  requireNotNegative("seam", options.seam ?? USUAL.seam);
  topSize(across, down, block, options);
  const pieces = [
    ...blocks(across, down, block, options),
    ...sashes(across, down, block, options),
    ...settingTriangles(across, down, block, options),
  ].filter((piece) => piece.count > 0);
  for (const { piece, width, height, count } of pieces) {
    step((show) => `${piece}: ${count} of ${show.length(width)} × ${show.length(height)}`);
  }
  return pieces;
}

function blocks(across: number, down: number, block: Inches, options: TopPiecesOptions): TopPiece[] {
  const { setting = "straight", alternate = false, seam } = options;
  const all = blocksIn(across, down, setting);
  const checkerboard = (all - (all % 2)) / 2;
  const alternates = alternate ? (setting === "on point" ? all - across * down : checkerboard) : 0;
  const how = "size before it is sewn in";
  return [
    sewnAsCut("block", block, block, all - alternates, seam, how),
    sewnAsCut("alternate block", block, block, alternates, seam, how),
  ];
}

/** Strips between the blocks, and round them where the edge is sashed. */
function sashes(across: number, down: number, block: Inches, options: TopPiecesOptions): TopPiece[] {
  const { sashing = 0, edge = "none", setting = "straight", seam } = options;
  if (sashing === 0) return [];
  const sashed = edge === "sashed";
  if (setting === "two-side") {
    return [
      sewnAsCut("short strip", sashing, block, across * down, seam, "sewn to the block first"),
      sewnAsCut("long strip", sashing, block + sashing, across * down, seam, "sewn to the next side"),
    ];
  }
  if (setting === "straight") {
    const [columns, rows] = sashed ? [across + 1, down + 1] : [across - 1, down - 1];
    return [
      sewnAsCut("vertical sash", sashing, block, columns * down, seam),
      sewnAsCut("horizontal sash", block, sashing, across * rows, seam),
      sewnAsCut("cornerstone", sashing, sashing, columns * rows, seam),
    ];
  }
  // On point. Every sash lies at one of the four sides of a block that stands in a row, half of them in either direction.
  if (sashed) {
    const cornerstones = across * (down + 1) + (across + 1) * down;
    const how = `${2 * (across + down)} of them lie across the edge; trim them there after sewing`;
    return [
      sewnAsCut("sash", sashing, block, 4 * across * down, seam),
      sewnAsCut("cornerstone", sashing, sashing, cornerstones, seam, how),
    ];
  }
  const cornerstones = (across - 2) * (down - 1) + (across - 1) * (down - 2);
  return [
    sewnAsCut("sash", sashing, block, 4 * (across - 1) * (down - 1), seam),
    sewnAsCut("cornerstone", sashing, sashing, cornerstones, seam),
  ];
}

/** The triangles that fill the edges of a top on point. */
function settingTriangles(across: number, down: number, block: Inches, options: TopPiecesOptions): TopPiece[] {
  const { sashing = 0, edge = "none", setting = "straight", seam, mark } = options;
  if (setting !== "on point") return [];
  // Without sashing at the edge, a side triangle also covers the end of the sash beside it.
  const leg = (edge === "sashed" ? block : block + sashing) as Inches;
  const sides = 2 * (across - 1) + 2 * (down - 1);
  const square = (piece: string, side: Inches, inTop: number, each: number, how: string): TopPiece => ({
    piece,
    width: side,
    height: side,
    count: covers(each, inTop),
    inTop,
    how,
  });
  return [
    square("square for side triangles", cutSideTriangle(leg, seam, mark), sides, 4, "cut twice, corner to corner"),
    square("square for corner triangles", cutCornerTriangle(block, seam, mark), 4, 2, "cut once, corner to corner"),
  ];
}

/** A rectangle that is sewn as it was cut. */
function sewnAsCut(piece: string, width: number, height: number, count: number, seam = USUAL.seam, how = ""): TopPiece {
  const [cutWidth, cutHeight] = [width + 2 * seam, height + 2 * seam] as [Inches, Inches];
  return { piece, width: cutWidth, height: cutHeight, count, inTop: count, how };
}
