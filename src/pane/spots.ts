/** Parts of a block's or a quilt's picture that turn when they are pressed, each with the cell in which it stands. */
import { cellTexts } from "../../functions/blockCells";
import { turnedPlace } from "../../functions/quiltCells";
import { FabricNames } from "../math/blocks/fabricNames";
import { type Block, type PlacedUnit, readBlock } from "../math/blocks/grammar";
import { unitText } from "../math/blocks/text";
import { turnInPlace, type Turns } from "../math/blocks/turn";
import { givenBlock, givenQuilt } from "./blockPictures";
import type { GivenArguments } from "./given";

/** A stretch of the picture, in parts of its width and height. */
export interface Box {
  left: number;
  top: number;
  width: number;
  height: number;
}

export interface Spot {
  box: Box;
  /** Row and column of its cell in the range, from 0. */
  row: number;
  column: number;
  /** What the cell held when the picture was drawn. */
  text: string;
  /** Such as "Row 2, column 3: star, turned a quarter; press to turn". */
  words: string;
  /**
   * The cell's text once its part is turned.
   *
   * @throws Problem where that cannot be written
   */
  turned(text: string): string;
}

export interface Turnable {
  /** The argument whose cells are written. */
  argument: "block" | "layout";
  /** What happens where one is pressed. */
  hint: string;
  spots: Spot[];
}

/** Smaller parts cannot be pressed, pixels. */
const LEAST = 9;

const TURNED: Readonly<Record<Turns, string>> = {
  0: "",
  1: ", turned a quarter",
  2: ", turned half round",
  3: ", turned three quarters",
};

/** What can be turned on the picture of a call; undefined where it has nothing of the kind. */
export function turnableOf(id: string, given: GivenArguments, svg: string): Turnable | undefined {
  switch (id) {
    case "BLOCKPIECES":
    case "BLOCKFABRIC":
    case "BLOCKCHECK":
      return turnablePatches(givenBlock(given), cellTexts(given.cell("block")), svg);
    case "QUILTPIECES":
    case "QUILTFABRICS":
      return turnableBlocks(given, svg);
    default:
      return undefined;
  }
}

/** The blocks of a quilt, by the cells of its layout. */
function turnableBlocks(given: GivenArguments, svg: string): Turnable {
  const quilt = givenQuilt(given);
  const texts = cellTexts(given.cell("layout"));
  const boxes = drawnBlocks(svg);
  const spots = quilt.layout.flatMap((places, row) =>
    places.map(({ name, turns }, column): Spot => {
      const words = `Row ${row + 1}, column ${column + 1}: ${name}${TURNED[turns]}; press to turn`;
      const box = boxes[row * places.length + column];
      return { box, row, column, text: texts[row][column], words, turned: (text) => turnedPlace(text, quilt) };
    }),
  );
  return turnable("layout", "Press a block to turn it by a quarter. Its cell in the sheet follows.", spots, svg);
}

/** The patches of a block that do not look the same once they are turned. */
function turnablePatches(block: Block, texts: readonly string[][], svg: string): Turnable | undefined {
  const [whole] = drawnBlocks(svg);
  const spots = block.units
    .filter((placed) => unitText(turnInPlace(placed)) !== unitText(placed.unit))
    .map((placed): Spot => {
      const { row, column, rows, columns } = placed;
      const box = {
        left: whole.left + (whole.width * column) / block.columns,
        top: whole.top + (whole.height * row) / block.rows,
        width: (whole.width * columns) / block.columns,
        height: (whole.height * rows) / block.rows,
      };
      const words = `Row ${row + 1}, column ${column + 1}: ${texts[row][column]}; press to turn`;
      return { box, row, column, text: texts[row][column], words, turned: (text) => turnedPatch(text, placed, block) };
    });
  if (spots.length === 0) return undefined;
  return turnable("block", "Press a patch of several fabrics to turn it. Its cell in the sheet follows.", spots, svg);
}

/** The text of a patch's cell once it is turned; fabrics keep the block's spelling of their names. */
function turnedPatch(text: string, { rows, columns }: PlacedUnit, { fabrics }: Block): string {
  const names = new FabricNames();
  for (const fabric of fabrics) names.spelling(fabric);
  const cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_c, column) => (column > 0 ? "<" : row > 0 ? "^" : text)),
  );
  const [placed] = readBlock(cells, names).units;
  return unitText(turnInPlace(placed));
}

function turnable(argument: Turnable["argument"], hint: string, spots: Spot[], svg: string): Turnable {
  const [, , width, height] = viewBox(svg);
  const isSmall = spots.some(({ box }) => Math.min(box.width * width, box.height * height) < LEAST);
  return isSmall
    ? {
        argument,
        hint: "To turn a part of it, write into its cell: the parts are drawn too small to be pressed.",
        spots: [],
      }
    : { argument, hint, spots };
}

/** Where the blocks of a picture lie, in the order in which they are drawn. */
function drawnBlocks(svg: string): Box[] {
  const [left, top, width, height] = viewBox(svg);
  return [...svg.matchAll(/<polygon points="([^"]+)" class="block"/g)].map(([, points]) => {
    // Rectangles start in their upper left corner and run clockwise.
    const [[x, y], , [right, bottom]] = points.split(" ").map((corner) => corner.split(",").map(Number));
    return {
      left: (x - left) / width,
      top: (y - top) / height,
      width: (right - x) / width,
      height: (bottom - y) / height,
    };
  });
}

function viewBox(svg: string): number[] {
  return / viewBox="([^"]+)"/.exec(svg)![1].split(" ").map(Number);
}
