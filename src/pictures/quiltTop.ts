/** Blocks and quilts, drawn from the same cells that their cutting lists come from. */
import { type Block } from "../math/blocks/grammar";
import { type Quilt } from "../math/blocks/quilt";
import { finishedPieces } from "../math/blocks/shapes";
import { turnBlock } from "../math/blocks/turn";
import { Problem } from "../math/problem";
import { showing } from "../math/show";
import type { System } from "../math/units";
import { Drawing, type Fill, type Point } from "./drawing";

/** Side of the square into which the longer side of a block or quilt is drawn, pixels. */
const DRAWN_SIZE = 320;

/** More pieces than these are too small to see, and make a picture too large to show. */
const MOST_DRAWN = 30_000;

export interface TopOptions {
  system?: System;
  /** Colors that the maker gave to fabrics, by their names, as six digits: #c0392b. */
  colors?: ReadonlyMap<string, string>;
}

/** A block with its fabrics named below it. */
export function blockPicture(title: string, block: Block, { colors }: TopOptions = {}): string {
  const description = `${title}: ${block.columns} × ${block.rows} cells of ${block.fabrics.join(", ")}`;
  const scale = DRAWN_SIZE / Math.max(block.rows, block.columns);
  const top = new TopDrawing(title, description, scale, block.fabrics, colors);
  top.block(block, { x: 0, y: 0 }, 1);
  return top.svg();
}

/** A quilt top with its sashing and borders, its finished size, and its fabrics named below it. */
export function quiltPicture(
  title: string,
  quilt: Quilt,
  fabrics: readonly string[],
  { system = "in", colors }: TopOptions = {},
): string {
  requireDrawable([quilt]);
  const show = showing(system);
  const frame = quiltFrame(quilt);
  const layout = `${quilt.layout[0].length} × ${quilt.layout.length} blocks`;
  const [width, length] = [show.length(frame.width), show.length(frame.length)];
  const description = `${title}: ${layout}, ${width} × ${length}, fabrics ${fabrics.join(", ")}`;
  const scale = DRAWN_SIZE / Math.max(frame.width, frame.length);
  const top = new TopDrawing(title, description, scale, fabrics, colors);
  top.quilt(quilt, frame, { x: 0, y: 0 });
  top.drawing.measure({ x: 0, y: 0 }, { x: frame.width, y: 0 }, width, 12);
  top.drawing.measure({ x: 0, y: frame.length }, { x: 0, y: 0 }, length, 12);
  return top.svg();
}

/** @throws Problem "no answer" where the quilts have more pieces than can be seen */
export function requireDrawable(quilts: readonly Quilt[]): void {
  let pieces = 0;
  for (const { layout, blocks } of quilts) {
    const counts = new Map([...blocks].map(([name, block]) => [name, finishedPieces(block).length]));
    pieces += layout.flat().reduce((sum, { name }) => sum + (counts.get(name) ?? 0), 0);
  }
  if (pieces <= MOST_DRAWN) return;
  throw new Problem("no answer", `the quilt has ${pieces} pieces; at most ${MOST_DRAWN} are drawn`);
}

export interface Frame {
  width: number;
  length: number;
  /** Where the pieced center starts, inside the borders. */
  center: number;
  /** Where the first block starts, inside the outer sashing. */
  first: number;
}

export function quiltFrame({ layout, size, sashing, edge, borders = [] }: Quilt): Frame {
  const sash = sashing?.width ?? 0;
  const outer = edge === "sashed" ? sash : 0;
  const center = borders.reduce((sum, { width }) => sum + width, 0);
  const along = (blocks: number) => 2 * center + 2 * outer + blocks * size + (blocks - 1) * sash;
  return { width: along(layout[0].length), length: along(layout.length), center, first: center + outer };
}

/** A drawing of blocks and quilts in the same fabrics, which are named below. */
export class TopDrawing {
  readonly drawing: Drawing;
  private readonly fills: ReadonlyMap<string, number>;

  /** @param scale pixels for an inch of a quilt, or for a cell of a block */
  constructor(
    title: string,
    description: string,
    scale: number,
    fabrics: readonly string[],
    colors: ReadonlyMap<string, string> = new Map(),
  ) {
    this.fills = new Map(fabrics.map((fabric, index) => [fabric, index]));
    const own = fabrics.flatMap((fabric, index): [number, string][] => {
      const color = colors.get(fabric);
      return color === undefined ? [] : [[index, color]];
    });
    this.drawing = new Drawing(title, description, scale, new Map(own));
  }

  svg(): string {
    for (const [fabric, fill] of this.fills) this.drawing.legend(fill, fabric);
    return this.drawing.svg();
  }

  /** A block whose upper left corner lies at a point, with cells of a size. */
  block(block: Block, at: Point, cell: number): void {
    this.drawing.rectangle(at.x, at.y, block.columns * cell, block.rows * cell, "paper", { part: "block" });
    for (const { fabric, corners } of finishedPieces(block)) {
      const placed = corners.map(({ x, y }) => ({ x: at.x + x * cell, y: at.y + y * cell }));
      this.drawing.polygon(placed, this.fill(fabric), { thin: true, part: "piece" });
    }
  }

  /** A quilt whose upper left corner lies at a point. */
  quilt(quilt: Quilt, frame: Frame, at: Point): void {
    const { sashing, size } = quilt;
    this.borders(quilt, frame, at);
    if (sashing !== undefined) this.sashing(quilt, frame, at);
    const pitch = size + (sashing?.width ?? 0);
    for (const [row, places] of quilt.layout.entries()) {
      for (const [column, { name, turns }] of places.entries()) {
        const block = turnBlock(quilt.blocks.get(name)!, turns);
        const corner = { x: at.x + frame.first + column * pitch, y: at.y + frame.first + row * pitch };
        this.block(block, corner, size / block.columns);
      }
    }
  }

  private fill(fabric: string): Fill {
    return this.fills.get(fabric) ?? "paper";
  }

  /** From the outside in; top and bottom reach over the sides. */
  private borders({ borders = [] }: Quilt, frame: Frame, at: Point): void {
    let inset = 0;
    for (const { width, fabric } of [...borders].reverse()) {
      const draw = (left: number, top: number, across: number, down: number) => {
        this.drawing.rectangle(at.x + left, at.y + top, across, down, this.fill(fabric), { part: "border" });
      };
      const [across, down] = [frame.width - 2 * inset, frame.length - 2 * inset];
      for (const top of [inset, frame.length - inset - width]) draw(inset, top, across, width);
      for (const left of [inset, frame.width - inset - width]) draw(left, inset + width, width, down - 2 * width);
      inset += width;
    }
  }

  /** Sashes beside the blocks, and a cornerstone wherever two would cross. */
  private sashing({ sashing, size, layout, edge }: Quilt, frame: Frame, at: Point): void {
    if (sashing === undefined) return;
    const { width } = sashing;
    const pitch = size + width;
    /** Where blocks and sashes start along one side. */
    const along = (blocks: number) => {
      const starts = Array.from({ length: blocks }, (_, index) => frame.first + index * pitch);
      const sashes = (edge === "sashed" ? [frame.first - pitch, ...starts] : starts.slice(0, -1)).map((x) => x + size);
      return { starts, sashes };
    };
    const [across, down] = [along(layout[0].length), along(layout.length)];
    const draw = (lefts: number[], tops: number[], [wide, high]: [number, number], fabric: string, part: string) => {
      const [fill, style] = [this.fill(fabric), { thin: true, part }];
      for (const top of tops) {
        for (const left of lefts) this.drawing.rectangle(at.x + left, at.y + top, wide, high, fill, style);
      }
    };
    draw(across.sashes, down.starts, [width, size], sashing.fabric, "sash");
    draw(across.starts, down.sashes, [size, width], sashing.fabric, "sash");
    draw(across.sashes, down.sashes, [width, width], sashing.cornerstone ?? sashing.fabric, "cornerstone");
  }
}
