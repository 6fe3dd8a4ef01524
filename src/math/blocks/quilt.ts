/** A quilt drawn in cells: blocks by name and turn, with sashing and borders, and all that is to be cut for it. */
import { borderLengths, borderSize } from "../borders";
import { USUAL } from "../conventions";
import { counted } from "../counted";
import { Problem, requirePositive } from "../problem";
import { type Edge, topSize } from "../settings";
import { type Inches, inches, type Size } from "../units";
import { step } from "../working";
import type { Block } from "./grammar";
import { CuttingList, type CutPatches, type PieceOptions, USES } from "./pieces";
import type { Turns } from "./turn";

/** One place of the layout. */
export interface LaidBlock {
  name: string;
  turns: Turns;
}

export interface Sashing {
  /** finished width, inches */
  width: Inches;
  fabric: string;
  /** fabric of the squares where sashes meet; the sashing's own if left out */
  cornerstone?: string;
}

export interface QuiltBorder {
  /** finished width, inches */
  width: Inches;
  fabric: string;
}

export interface Quilt {
  /** Rows of blocks; every place holds one. */
  layout: readonly (readonly LaidBlock[])[];
  /** What each name of the layout stands for. */
  blocks: ReadonlyMap<string, Block>;
  /** Finished width of a block, inches. */
  size: Inches;
  sashing?: Sashing;
  edge?: Edge;
  /** From the inside out. */
  borders?: readonly QuiltBorder[];
}

/** More blocks than this across or down is no quilt. */
export const MOST_BLOCKS = 100;

/** Finished size of the quilt, borders included. */
export function quiltSize(quilt: Quilt): Size {
  const [across, down] = [quilt.layout[0].length, quilt.layout.length];
  const inside = topSize(across, down, quilt.size, { sashing: quilt.sashing?.width, edge: quilt.edge });
  return (quilt.borders ?? []).reduce((size, { width }) => borderSize(size.width, size.length, width), inside);
}

/**
 * All that is to be cut for a quilt: blocks, sashes and cornerstones, and borders with butted corners, sides first.
 *
 * @returns patches by fabric in the order in which the quilt names them, largest first
 * @throws Problem "bad input" where the layout has holes or blocks that are not square
 */
export function quiltPieces(quilt: Quilt, options: PieceOptions = {}): CutPatches[] {
  requireLayout(quilt);
  const list = new CuttingList(options);
  for (const [name, count] of countBlocks(quilt)) {
    const block = quilt.blocks.get(name)!;
    step(() => `${counted(count, "block")} of ${name}`);
    list.add(block, inches(quilt.size / block.columns), count);
  }
  addSashing(quilt, list);
  addBorders(quilt, list, options.seam ?? USUAL.seam);
  return list.patches(quiltFabrics(quilt));
}

/** The fabrics of a quilt, in the order of its blocks, sashing and borders. */
export function quiltFabrics({ blocks, layout, sashing, borders = [] }: Quilt): string[] {
  const laid = new Set(layout.flat().map(({ name }) => name));
  const inBlocks = [...blocks].filter(([name]) => laid.has(name)).flatMap(([, block]) => block.fabrics);
  const inSashing = sashing === undefined ? [] : [sashing.fabric, sashing.cornerstone ?? sashing.fabric];
  return [...new Set([...inBlocks, ...inSashing, ...borders.map(({ fabric }) => fabric)])];
}

function countBlocks({ layout }: Quilt): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { name } of layout.flat()) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
}

/** Sashes between the blocks, and outside the outer ones where the edge is sashed; a square wherever two would cross. */
function addSashing({ layout, size, sashing, edge = "none" }: Quilt, list: CuttingList): void {
  if (sashing === undefined || sashing.width === 0) return;
  const [across, down] = [layout[0].length, layout.length];
  const more = edge === "sashed" ? 1 : -1;
  const [upright, level] = [(across + more) * down, across * (down + more)];
  list.addPlain(sashing.fabric, size, sashing.width, upright + level, USES.sash);
  const cornerstones = (across + more) * (down + more);
  list.addPlain(sashing.cornerstone ?? sashing.fabric, sashing.width, sashing.width, cornerstones, USES.cornerstone);
}

function addBorders(quilt: Quilt, list: CuttingList, seam: Inches): void {
  let inside = quiltSize({ ...quilt, borders: [] });
  for (const { width, fabric } of quilt.borders ?? []) {
    for (const piece of borderLengths(inside.width, inside.length, width, { seam })) {
      list.addPlain(fabric, inches(piece.length - 2 * seam), width, piece.count, USES.border);
    }
    inside = borderSize(inside.width, inside.length, width);
  }
}

function requireLayout({ layout, blocks, size }: Quilt): void {
  requirePositive("size", size);
  for (const [row, places] of layout.entries()) {
    for (const [column, { name }] of places.entries()) {
      const block = blocks.get(name);
      const place = `layout, row ${row + 1}, column ${column + 1}`;
      if (block === undefined) {
        const known = [...blocks.keys()].join(", ");
        throw new Problem("bad input", `${place}: no block is called “${name}”; there is ${known}`);
      }
      if (block.rows !== block.columns) {
        throw new Problem("bad input", `${place}: ${name} is ${block.columns} × ${block.rows} cells, not square`);
      }
    }
  }
}
