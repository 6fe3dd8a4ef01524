/**
 * A block drawn in cells. Each cell of the grid says what stands there:
 *
 * | in the cell | what it is |
 * | --- | --- |
 * | `sand` | a square of the fabric called sand |
 * | `sand / slate` | a half-square unit, its seam rising to the right: sand above the seam, slate below |
 * | `sand \ slate` | a half-square unit, its seam falling to the right: sand above the seam, slate below |
 * | `four: sand, slate, sand, slate` | a unit of four triangles: top, right, bottom, left; two names take turns |
 * | `goose up: slate, sand` | a goose of slate that flies up, right, down or left in a sky of sand |
 * | `sand + slate nw se` | a patch of sand with corners of slate, stitched and flipped: nw, ne, se, sw or all |
 * | `<` or `^` | belongs to the patch on its left, or above |
 * | nothing | nothing is sewn there |
 *
 * A fabric may have any name that holds none of / \ + , : < ^. Capitals and spaces make no difference.
 */
import { Problem } from "../problem";
import { FabricNames, refuseFabric } from "./fabricNames";

export type Corner = "nw" | "ne" | "se" | "sw";
export const CORNERS: readonly Corner[] = ["nw", "ne", "se", "sw"];

export const DIRECTIONS = ["up", "right", "down", "left"] as const;
export type Direction = (typeof DIRECTIONS)[number];

/** What is sewn in one place. Fabrics go by the name that the maker wrote first. */
export type Unit =
  | { kind: "plain"; fabric: string }
  | { kind: "half square"; seam: "rising" | "falling"; above: string; below: string }
  | { kind: "four triangles"; fabrics: readonly [top: string, right: string, bottom: string, left: string] }
  | { kind: "goose"; flies: Direction; goose: string; sky: string }
  | { kind: "corners"; fabric: string; corner: string; at: readonly Corner[] };

/** A unit and the cells it covers. Rows and columns count from 0. */
export interface PlacedUnit {
  row: number;
  column: number;
  rows: number;
  columns: number;
  unit: Unit;
}

export interface Block {
  rows: number;
  columns: number;
  units: readonly PlacedUnit[];
  /** Names of the fabrics in the order in which they appear. */
  fabrics: readonly string[];
}

/** More cells than this across or down is no block. */
const LARGEST = 100;

/**
 * Reads a block from the texts of its cells.
 *
 * @param cells rows of texts; an empty text is an empty cell, and so is what a shorter row lacks
 * @param names the fabrics known so far, where several blocks share them
 * @throws Problem "bad input" naming the cell: "row 2, column 3: …"
 */
export function readBlock(cells: readonly (readonly string[])[], names = new FabricNames()): Block {
  const [rows, columns] = [cells.length, cells.reduce((most, row) => Math.max(most, row.length), 0)];
  if (rows > LARGEST || columns > LARGEST) {
    throw new Problem("bad input", `the block is ${columns} × ${rows} cells; at most ${LARGEST} × ${LARGEST} are read`);
  }
  const owners = new Owners(cells, rows, columns);
  const units = owners.patches().map((patch): PlacedUnit => {
    const place: Place = { row: patch.row, column: patch.column };
    const unit = readUnit(cells[patch.row][patch.column], place, names);
    requireShape(unit, patch, place);
    return { ...patch, unit };
  });
  if (units.length === 0) throw new Problem("bad input", "the block is empty");
  return { rows, columns, units, fabrics: [...new Set(units.flatMap(({ unit }) => fabricsOf(unit)))] };
}

interface Place {
  row: number;
  column: number;
}

interface CellPatch extends Place {
  rows: number;
  columns: number;
}

/** Follows the marks `<` and `^` to the cell that each one belongs to. */
class Owners {
  constructor(
    private readonly cells: readonly (readonly string[])[],
    private readonly rows: number,
    private readonly columns: number,
  ) {}

  /** The rectangles of cells that belong together, in reading order. */
  patches(): CellPatch[] {
    const members = new Map<number, Place[]>();
    const owner = new Int32Array(this.rows * this.columns).fill(-1);
    for (let row = 0; row < this.rows; row++) {
      for (let column = 0; column < this.columns; column++) {
        const at = row * this.columns + column;
        const text = this.text(row, column);
        if (text === "") continue;
        // Reading order settles the cell on the left and the cell above before this one.
        owner[at] = text === "<" || text === "^" ? this.joined(owner, row, column, text) : at;
        members.set(owner[at], [...(members.get(owner[at]) ?? []), { row, column }]);
      }
    }
    return [...members.entries()].map(([at, places]) => this.rectangle(at, places));
  }

  private joined(owner: Int32Array, row: number, column: number, mark: "<" | "^"): number {
    const [r, c] = mark === "<" ? [row, column - 1] : [row - 1, column];
    const found = r < 0 || c < 0 ? -1 : owner[r * this.columns + c];
    if (found >= 0) return found;
    throw problemAt({ row, column }, `there is no patch ${mark === "<" ? "on the left" : "above"} to belong to`);
  }

  private rectangle(at: number, places: readonly Place[]): CellPatch {
    const row = Math.trunc(at / this.columns);
    const column = at % this.columns;
    const rows = Math.max(...places.map((place) => place.row)) - row + 1;
    const columns = Math.max(...places.map((place) => place.column)) - column + 1;
    // No mark leads to the left of its patch or above it, so that as many cells as the rectangle has fill it.
    if (places.length !== rows * columns) {
      throw problemAt({ row, column }, "the cells that belong to this patch make no rectangle");
    }
    return { row, column, rows, columns };
  }

  private text(row: number, column: number): string {
    return (this.cells[row][column] ?? "").trim();
  }
}

function readFabric(text: string, place: Place, names: FabricNames): string {
  const sentence = refuseFabric(text);
  if (sentence !== undefined) throw problemAt(place, sentence);
  return names.spelling(text);
}

function readUnit(written: string, place: Place, names: FabricNames): Unit {
  const text = written.trim();
  const fabric = (name: string) => readFabric(name, place, names);
  const named = /^([a-z]+(?:\s+[a-z]+)?)\s*:(.*)$/i.exec(text);
  if (named) {
    const word = named[1].toLowerCase().replace(/\s+/g, " ");
    return readNamedUnit(word, named[2].split(",").map(fabric), place);
  }
  if (text.includes("+")) return readCorners(text, place, names);
  const seam = /^([^/\\]*)([/\\])([^/\\]*)$/.exec(text);
  if (!seam) return { kind: "plain", fabric: fabric(text) };
  const [above, below] = [fabric(seam[1]), fabric(seam[3])];
  if (above === below) throw problemAt(place, `both halves are ${above}; write ${above} alone`);
  return { kind: "half square", seam: seam[2] === "/" ? "rising" : "falling", above, below };
}

function readNamedUnit(word: string, fabrics: readonly string[], place: Place): Unit {
  if (word === "four") {
    const [first, second, third = first, fourth = second] = fabrics;
    if (fabrics.length !== 2 && fabrics.length !== 4) {
      throw problemAt(place, "four triangles need two fabrics, or four: top, right, bottom, left");
    }
    return { kind: "four triangles", fabrics: [first, second, third, fourth] };
  }
  const flies = DIRECTIONS.find((direction) => word === `goose ${direction}`);
  if (flies === undefined)
    throw problemAt(place, `“${word}:” is no unit; write four: or goose up: (right, down, left)`);
  const [goose, sky] = fabrics;
  if (fabrics.length !== 2) throw problemAt(place, "a goose needs two fabrics: the goose, then the sky");
  return { kind: "goose", flies, goose, sky };
}

function readCorners(text: string, place: Place, names: FabricNames): Unit {
  const [base, added, ...more] = text.split("+");
  const words = added.trim().split(/\s+/);
  const at: Corner[] = [];
  while (words.length > 1) {
    const word = words[words.length - 1].toLowerCase();
    const found = word === "all" ? CORNERS : CORNERS.filter((corner) => corner === word);
    if (found.length === 0) break;
    at.push(...found);
    words.pop();
  }
  if (more.length > 0 || at.length === 0) {
    throw problemAt(
      place,
      "corners are written like sand + slate nw se: the patch, then the corner's fabric and places",
    );
  }
  return {
    kind: "corners",
    fabric: readFabric(base, place, names),
    corner: readFabric(words.join(" "), place, names),
    at: CORNERS.filter((corner) => at.includes(corner)),
  };
}

/**
 * The fabrics that one cell of a block names, each once; none where it is empty or belongs to another cell.
 *
 * @throws Problem "bad input" where the cell cannot be read
 */
export function fabricsInCell(written: string, names = new FabricNames()): readonly string[] {
  const text = written.trim();
  if (text === "" || text === "<" || text === "^") return [];
  return [...new Set(fabricsOf(readUnit(text, { row: 0, column: 0 }, names)))];
}

/** The fabrics of a unit, as its maker reads them. */
function fabricsOf(unit: Unit): readonly string[] {
  switch (unit.kind) {
    case "plain":
      return [unit.fabric];
    case "half square":
      return [unit.above, unit.below];
    case "four triangles":
      return unit.fabrics;
    case "goose":
      return [unit.goose, unit.sky];
    case "corners":
      return [unit.fabric, unit.corner];
  }
}

function requireShape(unit: Unit, patch: CellPatch, place: Place): void {
  const { rows, columns } = patch;
  if ((unit.kind === "half square" || unit.kind === "four triangles") && rows !== columns) {
    throw problemAt(place, `a unit of ${unit.kind === "half square" ? "two" : "four"} triangles must be square`);
  }
  if (unit.kind === "goose") {
    const upright = unit.flies === "up" || unit.flies === "down";
    const [long, short] = upright ? [columns, rows] : [rows, columns];
    if (long !== 2 * short) {
      const cells = upright
        ? "two cells wide and one high (join the right one with <)"
        : "two cells high and one wide (join the lower one with ^)";
      throw problemAt(place, `a goose that flies ${unit.flies} is twice as wide as high: ${cells}`);
    }
  }
}

function problemAt({ row, column }: Place, sentence: string): Problem {
  return new Problem("bad input", `row ${row + 1}, column ${column + 1}: ${sentence}`);
}
