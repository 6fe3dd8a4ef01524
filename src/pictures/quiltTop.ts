/** Blocks and quilts, drawn from the same cells that their cutting lists come from. */
import { type Block } from "../math/blocks/grammar";
import { type Quilt } from "../math/blocks/quilt";
import { finishedPieces } from "../math/blocks/shapes";
import { turnBlock } from "../math/blocks/turn";
import { Problem } from "../math/problem";
import { showing } from "../math/show";
import type { System } from "../math/units";
import { Drawing, type Fill } from "./drawing";

/** Side of the square into which the longer side of a block or quilt is drawn, pixels. */
const DRAWN_SIZE = 320;

/** More pieces than these are too small to see, and make a picture too large to show. */
const MOST_DRAWN = 30_000;

/** A block with its fabrics named below it. */
export function blockPicture(title: string, block: Block): string {
  const scale = DRAWN_SIZE / Math.max(block.rows, block.columns);
  const drawing = new Drawing(
    title,
    `${title}: ${block.columns} × ${block.rows} cells of ${block.fabrics.join(", ")}`,
    scale,
  );
  const fills = fillsOf(block.fabrics);
  drawBlock(drawing, block, { x: 0, y: 0 }, 1, fills);
  for (const [fabric, fill] of fills) drawing.legend(fill, fabric);
  return drawing.svg();
}

/** A quilt top with its sashing and borders, its finished size, and its fabrics named below it. */
export function quiltPicture(title: string, quilt: Quilt, fabrics: readonly string[], system: System = "in"): string {
  requireDrawable(quilt);
  const show = showing(system);
  const frame = quiltFrame(quilt);
  const scale = DRAWN_SIZE / Math.max(frame.width, frame.length);
  const layout = `${quilt.layout[0].length} × ${quilt.layout.length} blocks`;
  const [width, length] = [show.length(frame.width), show.length(frame.length)];
  const facts = `${layout}, ${width} × ${length}, fabrics ${fabrics.join(", ")}`;
  const drawing = new Drawing(title, `${title}: ${facts}`, scale);
  const fills = fillsOf(fabrics);
  drawBorders(drawing, quilt, frame, fills);
  const { sashing, size } = quilt;
  if (sashing !== undefined) drawSashing(drawing, quilt, frame, fills);
  const pitch = size + (sashing?.width ?? 0);
  for (const [row, places] of quilt.layout.entries()) {
    for (const [column, { name, turns }] of places.entries()) {
      const block = turnBlock(quilt.blocks.get(name)!, turns);
      const at = { x: frame.first + column * pitch, y: frame.first + row * pitch };
      drawBlock(drawing, block, at, size / block.columns, fills);
    }
  }
  drawing.measure({ x: 0, y: 0 }, { x: frame.width, y: 0 }, width, 12);
  drawing.measure({ x: 0, y: frame.length }, { x: 0, y: 0 }, length, 12);
  for (const [fabric, fill] of fills) drawing.legend(fill, fabric);
  return drawing.svg();
}

function requireDrawable({ layout, blocks }: Quilt): void {
  const counts = new Map([...blocks].map(([name, block]) => [name, finishedPieces(block).length]));
  const pieces = layout.flat().reduce((sum, { name }) => sum + (counts.get(name) ?? 0), 0);
  if (pieces <= MOST_DRAWN) return;
  throw new Problem("no answer", `the quilt has ${pieces} pieces; at most ${MOST_DRAWN} are drawn`);
}

interface Frame {
  width: number;
  length: number;
  /** Where the pieced center starts, inside the borders. */
  center: number;
  /** Where the first block starts, inside the outer sashing. */
  first: number;
}

function quiltFrame({ layout, size, sashing, edge, borders = [] }: Quilt): Frame {
  const sash = sashing?.width ?? 0;
  const outer = edge === "sashed" ? sash : 0;
  const center = borders.reduce((sum, { width }) => sum + width, 0);
  const along = (blocks: number) => 2 * center + 2 * outer + blocks * size + (blocks - 1) * sash;
  return { width: along(layout[0].length), length: along(layout.length), center, first: center + outer };
}

function drawBlock(
  drawing: Drawing,
  block: Block,
  at: { x: number; y: number },
  cell: number,
  fills: ReadonlyMap<string, Fill>,
): void {
  drawing.rectangle(at.x, at.y, block.columns * cell, block.rows * cell, "paper");
  for (const { fabric, corners } of finishedPieces(block)) {
    const placed = corners.map(({ x, y }) => ({ x: at.x + x * cell, y: at.y + y * cell }));
    drawing.polygon(placed, fills.get(fabric) ?? "paper", { thin: true, part: "piece" });
  }
}

/** From the outside in, each border over the one before it; top and bottom reach over the sides. */
function drawBorders(drawing: Drawing, { borders = [] }: Quilt, frame: Frame, fills: ReadonlyMap<string, Fill>): void {
  let inset = 0;
  for (const { width, fabric } of [...borders].reverse()) {
    const fill = fills.get(fabric) ?? "paper";
    const [across, down] = [frame.width - 2 * inset, frame.length - 2 * inset];
    const style = { part: "border" };
    for (const top of [inset, frame.length - inset - width]) drawing.rectangle(inset, top, across, width, fill, style);
    for (const left of [inset, frame.width - inset - width]) {
      drawing.rectangle(left, inset + width, width, down - 2 * width, fill, style);
    }
    inset += width;
  }
}

function drawSashing(drawing: Drawing, quilt: Quilt, frame: Frame, fills: ReadonlyMap<string, Fill>): void {
  const { sashing, size, layout } = quilt;
  if (sashing === undefined) return;
  const { center, width, length } = frame;
  const fill = fills.get(sashing.fabric) ?? "paper";
  drawing.rectangle(center, center, width - 2 * center, length - 2 * center, fill);
  const starts = (blocks: number) => {
    const first = quilt.edge === "sashed" ? -1 : 0;
    const count = blocks - 1 - 2 * first;
    return Array.from({ length: count }, (_, i) => frame.first + size + (first + i) * (size + sashing.width));
  };
  const [columns, rows] = [starts(layout[0].length), starts(layout.length)];
  const stone = fills.get(sashing.cornerstone ?? sashing.fabric) ?? "paper";
  const [right, bottom] = [width - center, length - center];
  const thin = { thin: true };
  for (const x of columns) {
    for (const at of [x, x + sashing.width]) drawing.line({ x: at, y: center }, { x: at, y: bottom }, thin);
  }
  for (const y of rows) {
    for (const at of [y, y + sashing.width]) drawing.line({ x: center, y: at }, { x: right, y: at }, thin);
    for (const x of columns) {
      drawing.rectangle(x, y, sashing.width, sashing.width, stone, { thin: true, part: "cornerstone" });
    }
  }
}

function fillsOf(fabrics: readonly string[]): Map<string, Fill> {
  return new Map(fabrics.map((fabric, index) => [fabric, index]));
}
