/** The cutting list of a block: equal patches of one fabric together, units by the method that saves work. */
import { USUAL } from "../conventions";
import { cutHalfSquare, cutQuarterSquare, cutSquare } from "../patches";
import { requireCount, requirePositive } from "../problem";
import { covers } from "../rounding";
import { type Inches, inches } from "../units";
import { step } from "../working";
import type { Block, PlacedUnit } from "./grammar";
import { cornerSide } from "./shapes";

/** How the cut patches are used. */
export const USES = {
  square: "square",
  rectangle: "rectangle",
  halfSquare: "half-square units, two at once",
  quarterSquare: "cut twice corner to corner",
  goose: "geese, four at once: the goose",
  sky: "geese, four at once: the sky",
  corner: "corner, stitched and flipped",
  sash: "sashing",
  cornerstone: "cornerstone",
  border: "border",
} as const;
export type Use = (typeof USES)[keyof typeof USES];

/** Equal patches to cut from one fabric. */
export interface CutPatches {
  fabric: string;
  /** Size to cut, inches; the longer side first. */
  width: Inches;
  height: Inches;
  count: number;
  use: Use;
  /** "join" for a border that may be longer than the fabric is wide. */
  grain: "any" | "join";
  /** Finished units or triangles that the patches make beyond what the blocks need. */
  spare: number;
}

export interface PieceOptions {
  /** seam allowance, inches */
  seam?: Inches;
  /** ruler mark for units that are trimmed after sewing, inches */
  mark?: Inches;
}

/** Triangles from a square cut twice corner to corner, and geese from one set. */
const FOUR = 4;

/**
 * What to cut for a number of blocks.
 *
 * Squares, rectangles and flipped corners come back exact, since they are sewn as cut. Half-square units of the same two
 * fabrics are made in pairs, geese of the same two fabrics four at once, and the triangles of four-triangle units come
 * from squares cut twice corner to corner; these sizes are up to the ruler mark. An odd count is rounded up and the spare
 * told.
 *
 * @param block the block as read
 * @param size finished width of the block, inches; its cells are square
 * @param blocks how many blocks
 * @returns patches by fabric in the order of the block, largest first
 */
export function blockPieces(block: Block, size: Inches, blocks = 1, options: PieceOptions = {}): CutPatches[] {
  requirePositive("size", size);
  requireCount("count", blocks);
  const list = new CuttingList(options);
  list.add(block, inches(size / block.columns), blocks);
  return list.patches(block.fabrics);
}

/** Collects the patches of one or several blocks; equal ones are counted together. */
export class CuttingList {
  private readonly seam: Inches;
  private readonly mark: Inches;
  /** Patches sewn as cut, and units by the two fabrics and the finished size that they share. */
  private readonly sewnAsCut = new Map<string, CutPatches>();
  private readonly units = new Map<string, UnitTally>();

  constructor(options: PieceOptions = {}) {
    this.seam = options.seam ?? USUAL.seam;
    this.mark = options.mark ?? USUAL.mark;
  }

  /** Adds a number of equal blocks, whose cells finish at `cell`. */
  add(block: Block, cell: Inches, blocks: number): void {
    if (blocks === 0) return;
    for (const placed of block.units) this.addUnit(placed, cell, blocks);
  }

  /** Adds patches that are sewn as cut, by their finished size. */
  addPlain(fabric: string, width: Inches, height: Inches, count: number, use?: Use): void {
    if (count === 0) return;
    const grain = use === USES.border ? "join" : "any";
    const [long, short] = [Math.max(width, height), Math.min(width, height)].map((side) =>
      cutSquare(inches(side), this.seam),
    );
    const patch: Omit<CutPatches, "count" | "spare"> = {
      fabric,
      width: long,
      height: short,
      use: use ?? (long === short ? USES.square : USES.rectangle),
      grain,
    };
    const key = keyOf(patch.use, fabric, long, short);
    const known = this.sewnAsCut.get(key);
    if (known) known.count += count;
    else this.sewnAsCut.set(key, { ...patch, count, spare: 0 });
  }

  /** Everything to cut, fabrics in the order given, largest patches first. */
  patches(fabrics: readonly string[]): CutPatches[] {
    const all = [...this.sewnAsCut.values(), ...[...this.units.values()].flatMap((tally) => this.unitPatches(tally))];
    const order = new Map(fabrics.map((fabric, index) => [fabric, index]));
    const sorted = all.sort(
      (a, b) =>
        (order.get(a.fabric) ?? 0) - (order.get(b.fabric) ?? 0) ||
        b.width * b.height - a.width * a.height ||
        a.use.localeCompare(b.use),
    );
    for (const { fabric, width, height, count, use } of sorted) {
      step((show) => `${fabric}: ${count} of ${show.length(width)} × ${show.length(height)}, ${use}`);
    }
    return sorted;
  }

  private addUnit(placed: PlacedUnit, cell: Inches, blocks: number): void {
    const { unit, rows, columns } = placed;
    const [width, height] = [inches(columns * cell), inches(rows * cell)];
    switch (unit.kind) {
      case "plain":
        this.addPlain(unit.fabric, width, height, blocks);
        break;
      case "corners":
        this.addPlain(unit.fabric, width, height, blocks);
        this.addCorners(unit.corner, inches(cornerSide(placed) * cell), unit.at.length * blocks);
        break;
      case "half square":
        this.tally("half square", [unit.above, unit.below].sort(), width, blocks);
        break;
      case "four triangles":
        for (const fabric of unit.fabrics) this.tally("four triangles", [fabric], width, blocks);
        break;
      case "goose":
        this.tally("goose", [unit.goose, unit.sky], inches(Math.max(width, height)), blocks);
    }
  }

  private addCorners(fabric: string, side: Inches, count: number): void {
    this.addPlain(fabric, side, side, count, USES.corner);
  }

  private tally(kind: UnitTally["kind"], fabrics: string[], finished: Inches, count: number): void {
    const key = keyOf(kind, fabrics.join("\n"), finished);
    const known = this.units.get(key);
    if (known) known.count += count;
    else this.units.set(key, { kind, fabrics, finished, count });
  }

  private unitPatches({ kind, fabrics, finished, count }: UnitTally): CutPatches[] {
    if (kind === "half square") {
      const side = cutHalfSquare(finished, 2, this.seam, this.mark);
      const squares = covers(2, count);
      return fabrics.map((fabric) => square(fabric, side, squares, USES.halfSquare, 2 * squares - count));
    }
    if (kind === "four triangles") {
      const side = cutQuarterSquare(finished, this.seam, this.mark);
      const squares = covers(FOUR, count);
      return [square(fabrics[0], side, squares, USES.quarterSquare, FOUR * squares - count)];
    }
    const sets = covers(FOUR, count);
    const spare = FOUR * sets - count;
    const [large, small] = [
      cutQuarterSquare(finished, this.seam, this.mark),
      cutHalfSquare(inches(finished / 2), 2, this.seam, this.mark),
    ];
    return [
      square(fabrics[0], large, sets, USES.goose, spare),
      square(fabrics[1], small, FOUR * sets, USES.sky, spare),
    ];
  }
}

interface UnitTally {
  kind: "half square" | "four triangles" | "goose";
  fabrics: string[];
  /** Side of the unit, or the width of a goose, inches. */
  finished: Inches;
  /** Units, or for four triangles the single triangles of the fabric. */
  count: number;
}

function square(fabric: string, side: Inches, count: number, use: Use, spare: number): CutPatches {
  return { fabric, width: side, height: side, count, use, grain: "any", spare };
}

/** Lengths that differ by binary dust only count as one. */
function keyOf(kind: string, fabric: string, ...lengths: readonly number[]): string {
  return [kind, fabric, ...lengths.map((length) => length.toFixed(6))].join("|");
}
