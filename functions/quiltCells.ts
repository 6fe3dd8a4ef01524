/** Reading a quilt from ranges: its named blocks, its layout, its sashing and borders, and other sizes of it. */
import { bedSize, mattressSize, usualDrop } from "../src/math/beds";
import { FabricNames, refuseFabric } from "../src/math/blocks/fabricNames";
import { type Block, readBlock } from "../src/math/blocks/grammar";
import { type LaidBlock, MOST_BLOCKS, type Quilt, type QuiltBorder, type Sashing } from "../src/math/blocks/quilt";
import { type WantedSize } from "../src/math/blocks/sizes";
import { type Turns } from "../src/math/blocks/turn";
import { Problem } from "../src/math/problem";
import { EDGES } from "../src/math/settings";
import { cellTexts } from "./blockCells";
import { type Cell, type Door, filledRows, isEmpty } from "./cells";

/** A quilt and the fabrics it names. */
export function readQuilt(
  door: Door,
  cells: { layout: Cell; blocks: Cell; size: Cell; sashing: Cell; edge: Cell; borders: Cell },
): Quilt {
  const names = new FabricNames();
  const blocks = readNamedBlocks(cells.blocks, names);
  return {
    blocks,
    layout: readLayout(cells.layout, blocks),
    size: door.length("size", cells.size),
    sashing: readSashing(door, cells.sashing, names),
    edge: door.choice("edge", cells.edge, EDGES, "none"),
    borders: readBorders(door, cells.borders, names),
  };
}

/**
 * The blocks of a range: a name in the first column, the block's cells in the columns beside it and in the rows below, down
 * to the next name. Empty rows and columns around a block's cells do not belong to it.
 */
function readNamedBlocks(range: Cell, names: FabricNames): Map<string, Block> {
  const drawings = new Map<string, string[][]>();
  let current: string[][] | undefined;
  for (const [index, [name, ...cells]] of cellTexts(range).entries()) {
    if (name !== "") {
      const key = blockKey(name);
      if (drawings.has(key))
        throw new Problem("bad input", `blocks, row ${index + 1}: there are two blocks called “${name}”`);
      drawings.set(key, (current = []));
    }
    if (current !== undefined) current.push(cells);
    else if (cells.some((text) => text !== "")) {
      throw new Problem("bad input", `blocks, row ${index + 1}: the block has no name in the first column`);
    }
  }
  if (drawings.size === 0) throw new Problem("bad input", "blocks: no name stands in the first column");
  return new Map([...drawings].map(([name, cells]) => [name, readNamedBlock(name, cells, names)]));
}

function readNamedBlock(name: string, cells: readonly string[][], names: FabricNames): Block {
  const isFilled = (text: string | undefined) => text !== undefined && text !== "";
  const height = cells.findLastIndex((row) => row.some(isFilled)) + 1;
  const width = cells.reduce((most, row) => Math.max(most, row.findLastIndex(isFilled) + 1), 0);
  try {
    return readBlock(
      cells.slice(0, height).map((row) => row.slice(0, width)),
      names,
    );
  } catch (thrown) {
    throw thrown instanceof Problem ? new Problem(thrown.kind, `block “${name}”, ${thrown.message}`) : thrown;
  }
}

const TURNS: ReadonlyMap<string, Turns> = new Map([
  ["90", 1],
  ["180", 2],
  ["270", 3],
]);

/** Each cell holds a block's name, and after it 90, 180 or 270 where the block lies turned clockwise by so many degrees. */
function readLayout(range: Cell, blocks: ReadonlyMap<string, Block>): LaidBlock[][] {
  const rows = cellTexts(range);
  if (rows.length > MOST_BLOCKS || rows[0].length > MOST_BLOCKS) {
    throw new Problem("bad input", `layout: ${rows[0].length} × ${rows.length} blocks; at most 100 × 100 are read`);
  }
  return rows.map((row, r) =>
    row.map((text, c) => {
      if (text === "") throw new Problem("bad input", `layout, row ${r + 1}, column ${c + 1}: no block stands there`);
      const { name, turns } = readPlace(text, blocks);
      return { name: blockKey(name), turns };
    }),
  );
}

/** The name in a cell of the layout as it is written there, and the turn behind it. */
function readPlace(text: string, blocks: ReadonlyMap<string, Block>): LaidBlock {
  const turned = /^(.*\S)\s+(90|180|270)\s*°?$/.exec(text);
  if (blocks.has(blockKey(text)) || turned === null) return { name: text, turns: 0 };
  return { name: turned[1], turns: TURNS.get(turned[2]) ?? 0 };
}

/**
 * The text of a layout's cell once its block is turned by one more quarter, clockwise.
 *
 * @throws Problem "no answer" where that text is the name of another block
 */
export function turnedPlace(text: string, { blocks }: Pick<Quilt, "blocks">): string {
  const { name, turns } = readPlace(text.trim(), blocks);
  const next = ((turns + 1) % 4) as Turns;
  const written = next === 0 ? name : `${name} ${90 * next}`;
  if (next !== 0 && blocks.has(blockKey(written))) {
    throw new Problem("no answer", `“${written}” is the name of another block, so that this turn cannot be written`);
  }
  return written;
}

function blockKey(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}

/** One row: width, fabric and, where it differs, the fabric of the cornerstones. A width of 0 is no sashing. */
function readSashing(door: Door, range: Cell, names: FabricNames): Sashing | undefined {
  const rows = filledRows(range);
  if (rows.length === 0) return undefined;
  const [width, fabric, cornerstone] = rows[0].cells;
  const finished = door.lengthOrZero("sashing: width", width);
  if (finished === 0) return undefined;
  return {
    width: finished,
    fabric: readFabric("sashing: fabric", fabric, names),
    ...(isEmpty(cornerstone) ? {} : { cornerstone: readFabric("sashing: cornerstones", cornerstone, names) }),
  };
}

/** Rows of width and fabric, from the inside out. */
function readBorders(door: Door, range: Cell, names: FabricNames): QuiltBorder[] {
  return filledRows(range).flatMap(({ number, cells: [width, fabric] }) => {
    const finished = door.lengthOrZero(`borders, row ${number}: width`, width);
    if (finished === 0) return [];
    return [{ width: finished, fabric: readFabric(`borders, row ${number}: fabric`, fabric, names) }];
  });
}

function readFabric(name: string, cell: Cell, names: FabricNames): string {
  const text = isEmpty(cell) ? "" : String(cell);
  const sentence = refuseFabric(text);
  if (sentence !== undefined) throw new Problem("bad input", `${name}: ${sentence}`);
  return names.spelling(text);
}

const USUAL_BEDS = ["crib", "twin", "full", "queen", "king"] as const;

/** Rows of name, width and length; the usual beds where none are given. */
export function readWantedSizes(door: Door, range: Cell): WantedSize[] {
  const rows = filledRows(range);
  if (rows.length === 0) {
    return USUAL_BEDS.map((bed) => ({
      name: bed,
      ...bedSize(mattressSize(bed), usualDrop(bed, door.conventions.drop)),
    }));
  }
  return rows.map(({ number, cells: [name, width, length] }) => ({
    name: isEmpty(name) ? `size ${number}` : door.text(`sizes, row ${number}: name`, name),
    width: door.length(`sizes, row ${number}: width`, width),
    length: door.length(`sizes, row ${number}: length`, length),
  }));
}
