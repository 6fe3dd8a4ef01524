/** Block designer: a block drawn in cells, its cutting list and fabrics, its quilt in several sizes, a roll of strips first. */
import { across, callsIn, type Entry, type Format, heading, lines, nameOf, type Sheet } from "./book";
import { bordersIn, lacksFabric, sashingIn, tableFault } from "./drawn";
import type { PlanningWorkbook } from "./index";
import { type CuttingList, fabricsIn, listedColumn, unlisted } from "./listed";
import {
  AT_THE_IRON,
  BLADES,
  countOf,
  inUnits,
  isMetric,
  NEEDLES,
  shopUnit,
  STEPS,
  tickColumn,
  TITLE_ROW,
  UNITS,
  unlessTooLong,
} from "./shared";

const U = "Block!$B$5";
const q = callsIn(U);

/** The drawn block: four by four cells, its name on the left. */
const DRAWN = "Block!$F$6:$I$9";
const SIZE = "Block!$B$6";
/** One block where none is typed. */
const COUNT = 'IF(Block!$B$7="",1,Block!$B$7)';
const SEAM = "Block!$B$8";
const WIDTH = "Block!$B$9";
const SQUARING = "Block!$B$10";
const STEP = "Block!$B$11";

/** Four kites round an hourglass, every corner a half-square unit. */
const FOUR_KITES = [
  ["A / B", "goose up: C, A", "<", "A \\ B"],
  ["goose left: C, A", "four: B, C", "<", "goose right: C, A"],
  ["^", "^", "<", "^"],
  ["B \\ A", "goose down: C, A", "<", "B / A"],
];

/** What the letters stand for, and where the row of each fabric is. */
const FABRICS: [letter: string, words: string][] = [
  ["A", "Oatmeal, solid"],
  ["B", "Forest, leaf print"],
  ["C", "Brick, tiny dots"],
  ["", ""],
  ["", ""],
  ["", ""],
];
const FIRST_FABRIC = 15;

/** The heading of the pieces to cut, and their last row. */
const PIECES = 25;
const LAST_PIECE = 65;

const LIST: CuttingList = {
  sheet: "Block!",
  first: PIECES + 1,
  last: LAST_PIECE + 1,
  sentences: "K",
  listed: "Block!$B$15:$B$20",
};

/** A sentence: what is still to be typed or drawn. */
const MISSING = "Block!$A$3";
const missing = `IF(OR(${SIZE}="",${SIZE}=0),"How large is the block, finished?",IF(COUNTA(${DRAWN})=0,"No block is drawn.",""))`;

const unlessMissing = (formula: string) => `IF(${MISSING}<>"","",${formula})`;

/** Why nothing can be cut or bought, and fabrics that nobody would buy. */
const TABLE = `Block!$A$${PIECES}`;
const unread = `IF(ISERROR(${TABLE}),${unlessTooLong(TABLE, '"The block cannot be read: the message of Check says why."')},"")`;
const notBought = `IF(OR(${MISSING}<>"",ISERROR(${TABLE})),"",${unlisted(LIST)})`;

function block(): Sheet {
  const check = q("BLOCKCHECK", { block: DRAWN, size: SIZE, seam: SEAM });
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Block designer" },
    ...lines("A2", ["Draw the block in the yellow cells, one fabric or unit in each. The white cells follow."], "lead"),
    { cell: "A3", style: "caution", content: `=${missing}` },
    ...heading("A4", "Yours to change", 3),
    ...input(5, "Units of bare numbers", "in", "", undefined, UNITS),
    ...input(6, "Block, finished", 12, inUnits(U), "length"),
    ...input(7, "How many blocks", 20, '=IF(B7="","one, if empty","blocks")', "count"),
    ...input(8, "Seam allowance", 0.25, inUnits(U), "length"),
    ...input(9, "Usable width of the fabrics", 42, inUnits(U), "length"),
    ...input(10, "Lost squaring an end", 1, inUnits(U), "length"),
    ...input(11, "The shop cuts in steps of", 0.125, shopUnit(U), "amount", STEPS),
    ...heading("E4", "The block", 5),
    ...across("E5", ["name", "cells", "", "", ""], "column"),
    ...FOUR_KITES.flatMap((row, r): Entry[] => [
      { cell: nameOf(5 + r, 4), style: "inputText", ...(r === 0 ? { content: "four kites" } : {}) },
      ...row.map((content, c): Entry => ({ cell: nameOf(5 + r, 5 + c), style: "inputText", content })),
    ]),
    ...heading("E11", "Check", 5),
    { cell: "E12", style: "note", content: `=${unlessMissing(check)}` },
    ...heading("A13", "Fabrics", 3),
    ...across("A14", ["in a few words", "letter", "to buy"], "column"),
    ...FABRICS.flatMap(([letter, words], index): Entry[] => {
      const row = FIRST_FABRIC + index;
      return [
        { cell: `A${row}`, style: "inputText", content: words || undefined },
        { cell: `B${row}`, style: "inputText", content: letter || undefined },
        { cell: `C${row}`, style: "buy", content: `=${amount(`$B$${row}`)}` },
      ];
    }),
    { cell: "A21", style: "caution", content: `=${notBought}` },
    ...heading("E14", "What a cell may hold", 5),
    ...lines("E15", [
      "A  a square of fabric A",
      "A / B  a half-square unit, its seam rising to the right: A above it",
      "A \\ B  the same, its seam falling to the right",
      "four: A, B  four triangles: top, right, bottom, left; two take turns",
      "goose up: C, A  a goose of C in a sky of A, two cells: the other holds < or ^",
      "A + B nw se  a patch of A with corners of B, stitched and flipped",
      "<  belongs to the patch on its left        ^  belongs to the patch above",
      "Nothing: nothing is sewn there.",
    ]),
    ...heading("A23", "What to cut for all blocks", 9),
    { cell: "A24", style: "caution", content: `=${unread}&A21` },
    {
      cell: `A${PIECES}`,
      style: "tableHead",
      content: `=${unlessMissing(pieces())}`,
      room: {
        rows: LAST_PIECE - PIECES + 1,
        columns: [undefined, "length", "length", "count", undefined, undefined, "count"],
      },
    },
    ...tickColumn("H", PIECES, LAST_PIECE, "A"),
    ...listedColumn(LIST),
    ...lines(`A${LAST_PIECE + 2}`, [
      "Units are cut a little large and trimmed after sewing; squares and rectangles are sewn as cut.",
      "Spare: units or triangles beyond what the blocks need.",
    ]),
    ...lines(`A${LAST_PIECE + 5}`, [BLADES, AT_THE_IRON, NEEDLES], "caution"),
  ];
  return {
    name: "Block",
    widths: [27, 10, 11, 8, 12, 26, 18, 18, 18],
    entries,
    frozen: { rows: 2 },
    print: "one page",
    heights: TITLE_ROW,
  };
}

const NAMED = "Block!$E$6:$I$9";
const LAYOUT_ROWS = 2;
const LAYOUT_COLUMNS = 2;

function sizes(): Sheet {
  const layout = "$A$6:$B$7";
  const quilt = {
    layout,
    blocks: NAMED,
    size: SIZE,
    sashing: sashingIn("$E$6", "$E$6:$G$6"),
    edge: "$E$7",
    borders: bordersIn("$E$9:$E$10", "$F$9:$F$10"),
  };
  const faults: [when: string, sentence: string][] = [
    [`${MISSING}<>""`, MISSING],
    [`Block!$E$6=""`, '"The block has no name: type one on Block, and into the layout."'],
    [`COUNTBLANK(${layout})>0`, '"Every place of the layout needs the name of the block."'],
    [lacksFabric("$E$6", "$F$6"), '"Of which fabric is the sashing?"'],
    [`OR(${lacksFabric("$E$9", "$F$9")},${lacksFabric("$E$10", "$F$10")})`, '"A border has a width and no fabric."'],
  ];
  const first = faults.reduceRight((rest, [when, sentence]) => `IF(${when},${sentence},${rest})`, '""');
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "The same block in other sizes" },
    ...lines(
      "A2",
      ["Every size is counted again from its pieces. The layout repeats; 90, 180 or 270 turns a block."],
      "lead",
    ),
    { cell: "A3", style: "caution", content: `=${first}` },
    ...heading("A4", "Layout", 2),
    ...across("A5", ["left", "right"], "column"),
    ...Array.from({ length: LAYOUT_ROWS * LAYOUT_COLUMNS }, (_, index): Entry => {
      const [r, c] = [Math.trunc(index / LAYOUT_COLUMNS), index % LAYOUT_COLUMNS];
      return { cell: nameOf(5 + r, c), style: "inputText", content: r === c ? "four kites" : "four kites 90" };
    }),
    ...heading("D4", "Sashing and borders, finished", 5),
    ...across("E5", ["width", "fabric", "cornerstones"], "column"),
    { cell: "D6", style: "label", content: "Sashing" },
    { cell: "E6", style: "input", content: 2, format: "length" },
    { cell: "F6", style: "inputText", content: "A" },
    { cell: "G6", style: "inputText", content: "C" },
    { cell: "D7", style: "label", content: "Round the outside" },
    { cell: "E7", style: "inputText", content: "sashed", choices: ["sashed", "none"] },
    { cell: "D9", style: "label", content: "First border" },
    { cell: "E9", style: "input", content: 4, format: "length" },
    { cell: "F9", style: "inputText", content: "B" },
    { cell: "D10", style: "label", content: "Second border" },
    { cell: "E10", style: "input", format: "length" },
    { cell: "F10", style: "inputText" },
    ...lines("D11", ["A width of 0, or an empty one, is none."]),
    { cell: "A12", style: "caution", content: `=${tableFault("$A$14", "cell A14", layout, "Block!$E$6:$E$9")}` },
    ...heading("A13", "Size of the quilt and fabric to buy", 6),
    {
      cell: "A14",
      style: "tableHead",
      content: `=IF($A$3<>"","",${q("SIZETABLE", { ...quilt, width: WIDTH, step: STEP, seam: SEAM })})`,
      room: { rows: 20, columns: [undefined, "length", "length", "length", "length", "length"] },
    },
    {
      cell: "A35",
      style: "note",
      content: `="Fabric in "&IF(${isMetric(U)},"meters","yards")&"; borders are joined from strips; beds hang down 12 in (30 cm)."`,
    },
    ...lines("A36", [
      "A quilt of crib size is for the wall, the floor or an older child: none belongs in an infant's sleep space.",
    ]),
  ];
  return {
    name: "Sizes",
    widths: [16, 15, 8, 18, 12, 12, 14, 8],
    entries,
    frozen: { rows: 2 },
    print: "one page",
    landscape: true,
    heights: TITLE_ROW,
  };
}

function roll(): Sheet {
  const faults = [
    `IF(${MISSING}<>"",${MISSING}`,
    `IF($B$5="","Of which fabric is the roll? Type its letter."`,
    `IF(${countOf(fabricsIn(LIST), "$B$5")}=0,"Fabric "&$B$5&" is not in the block."`,
    `IF($B$6="","How many strips are on the roll?",""`,
  ];
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "A roll of strips first" },
    ...lines("A2", ["What comes from the strips, and what must come from yardage of the same fabric."], "lead"),
    { cell: "A3", style: "caution", content: `=${faults.join(",")}${")".repeat(faults.length)}` },
    ...heading("A4", "Yours to change", 3),
    ...input(5, "Fabric, by its letter", "B", ""),
    ...input(6, "Strips on the roll", 40, "strips", "count"),
    ...input(7, "Width of a strip", 3.875, inUnits(U), "length"),
    ...input(8, "Usable length of a strip", 40, inUnits(U), "length"),
    ...heading("A10", "Patches", 6),
    {
      cell: "A11",
      style: "tableHead",
      content: `=IF($A$3<>"","",${q("STRIPSFIRST", { list: pieces("$B$5"), strips: "$B$6", stripWidth: "$B$7", length: "$B$8" })})`,
      room: { rows: 41, columns: [undefined, "length", "length", "count", undefined, "count"] },
    },
    ...lines("A53", [
      "A patch comes from a strip where one of its sides is the strip's width.",
      "Count your own roll and measure a strip: bundles and pinked edges differ.",
    ]),
    ...lines("A56", [BLADES], "caution"),
  ];
  return {
    name: "Roll",
    widths: [26, 12, 12, 14, 10, 14],
    entries,
    frozen: { rows: 2 },
    print: "one page",
    heights: TITLE_ROW,
  };
}

function pieces(fabric?: string): string {
  return q("BLOCKPIECES", { block: DRAWN, size: SIZE, count: COUNT, seam: SEAM, ...(fabric ? { fabric } : {}) });
}

/** What to buy of the fabric of a letter, where anything is cut from it. */
function amount(letter: string): string {
  const given = { block: DRAWN, size: SIZE, count: COUNT, fabric: letter, width: WIDTH, squaring: SQUARING };
  const text = q("FABRICTEXT", { amount: q("BLOCKFABRIC", { ...given, step: STEP, seam: SEAM }) });
  const used = `IF(${countOf(fabricsIn(LIST), letter)}=0,"not used",${text})`;
  return `IF(OR(${letter}="",${MISSING}<>"",ISERROR(${TABLE})),"",${used})`;
}

function input(
  row: number,
  label: string,
  content: string | number,
  unit: string,
  format?: Format,
  choices?: Entry["choices"],
): Entry[] {
  const style = typeof content === "string" ? "inputText" : "input";
  return [
    { cell: `A${row}`, style: "label", content: label },
    { cell: `B${row}`, style, content, ...(format ? { format } : {}), ...(choices ? { choices } : {}) },
    ...(unit ? [{ cell: `C${row}`, style: "unit", content: unit } satisfies Entry] : []),
  ];
}

export const blockDesigner: PlanningWorkbook = {
  name: "block-designer",
  title: "Block designer",
  description: "Draw a block in cells and read what to cut and to buy, in several sizes.",
  build: () => ({
    name: "block-designer",
    title: "Block designer",
    description: "Draw a block in cells and read what to cut and to buy, in several sizes.",
    units: U,
    sheets: [block(), sizes(), roll()],
  }),
};
