/** Quilt planner: from a design drawn in cells to what is cut and what is bought. */
import { across, callsIn, type Entry, type Format, heading, lines, nameOf, type Sheet } from "./book";
import type { PlanningWorkbook } from "./index";
import { AT_THE_IRON, blank, BLADES, MEASURE_THE_SQUARES, shopUnit, STEPS, tickColumn, UNITS, inUnits } from "./shared";

const U = "Design!$B$6";
const q = callsIn(U);

/** Blocks across and down, at most; the layout has a cell for each. */
const MOST_ACROSS = 12;
const MOST_DOWN = 14;
const FABRIC_ROWS = [22, 23, 24, 25, 26, 27];

const SASHING = "Design!$B$10:$D$10";
const BORDERS = "Design!$B$15:$C$17";
const SEAM = "Design!$B$37";
const SQUARING = "Design!$B$38";
const STEP = "Design!$B$40";
const LAYOUT = "OFFSET(Layout!$A$4,0,0,Design!$B$8,Design!$B$7)";

const QUILT = {
  layout: LAYOUT,
  blocks: "Blocks!$A$5:$G$20",
  size: "Design!$B$9",
  sashing: SASHING,
  edge: "Design!$B$11",
  borders: BORDERS,
};

/** The patches of one fabric, or of all. */
function pieces(fabric?: string): string {
  return q("QUILTPIECES", { ...QUILT, seam: SEAM, ...(fabric ? { fabric } : {}) });
}

/** A border's width, or 0 where its row is free. */
const borderWidth = (row: number) => `IF(Design!$B$${row}="",0,${q("LENGTH", { length: `Design!$B$${row}` })})`;

function design(): Sheet {
  const size = { width: "$H$6", length: "$I$6" };
  const backing = {
    ...size,
    fabricWidth: "$B$30",
    margin: "$B$31",
    panelSeam: "$B$32",
    print: "$B$33",
    step: "$B$40",
    squaring: "$B$38",
  };
  const binding = { ...size, strip: "$B$34", fabricWidth: bindingWidth, tail: "$B$36" };
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Quilt planner" },
    ...lines(
      "A2",
      ["Type your own into the yellow cells, such as 8, 2 1/2 or 6.5 cm. The white cells follow."],
      "lead",
    ),
    ...heading("A4", "Yours to change", 5),
    { cell: "A5", style: "label", content: "Name of the quilt" },
    { cell: "B5", style: "inputText", content: "Lap quilt of stars" },
    ...input(6, "Units of bare numbers", "in", "", undefined, UNITS),
    ...input(7, "Blocks across, up to 12", 5, "blocks", "count"),
    ...input(8, "Blocks down, up to 14", 7, "blocks", "count"),
    ...input(9, "Block, finished", 8, inUnits(U), "length"),
    ...input(10, "Sashing, fabric, cornerstones", 1.5, inUnits(U), "length"),
    { cell: "C10", style: "inputText", content: "C", choices: "$B$22:$B$27" },
    { cell: "D10", style: "inputText", content: "D", choices: "$B$22:$B$27" },
    ...input(11, "Sashing round the outside", "sashed", "", undefined, ["sashed", "none"]),
    ...lines("A12", ["0 for none. Draw blocks on Blocks, place them on Layout."]),
    ...heading("A14", "Borders, finished, inside out", 5),
    ...border(15, "First border, fabric", 1, "D"),
    ...border(16, "Second border, fabric", 5, "E"),
    ...border(17, "Third border, fabric"),
    ...lines("A18", ["A border that is not wanted stays empty."]),
    ...heading("A20", "Fabrics", 5),
    ...across("A21", ["In a few words", "letter", "usable width"], "column"),
    ...FABRICS.flatMap(([what, letter, width], index): Entry[] => {
      const row = FABRIC_ROWS[index];
      return [
        { cell: `A${row}`, style: "inputText", content: what },
        { cell: `B${row}`, style: "inputText", content: letter },
        { cell: `C${row}`, style: "input", content: width, format: "length" },
        { cell: `D${row}`, style: "unit", content: inUnits(U) },
      ];
    }),
    ...heading("A29", "Finishing and shopping", 5),
    ...input(30, "Backing, usable width", 42, inUnits(U), "length"),
    ...input(31, "Backing and batting margin", 4, inUnits(U), "length"),
    ...input(32, "Seam between backing panels", 0.5, inUnits(U), "length"),
    ...input(33, "Backing print", "any", "", undefined, ["any", "upright"]),
    ...input(34, "Binding strip, cut", 2.5, inUnits(U), "length"),
    ...input(35, "Binding fabric", "E", "", undefined, "$B$22:$B$27"),
    ...input(36, "Binding tail", 10, inUnits(U), "length"),
    ...input(37, "Seam allowance", 0.25, inUnits(U), "length"),
    ...input(38, "Lost squaring an end", 1, inUnits(U), "length"),
    ...input(39, "For miscuts, each fabric", 2, inUnits(U), "length"),
    ...input(40, "The shop cuts in steps of", 0.125, shopUnit(U), "amount", STEPS),

    ...heading("G4", "What follows", 4),
    { cell: "G5", style: "label", content: "Inside the borders" },
    pair("H5", `=${q("TOPSIZE", { across: "$B$7", down: "$B$8", block: "$B$9", sashing: "$B$10", edge: "$B$11" })}`),
    { cell: "G6", style: "label", content: "Quilt, finished" },
    pair("H6", `=${q("BORDERSIZE", { width: "H5", length: "I5", border: [15, 16, 17].map(borderWidth).join("+") })}`),
    ...["J5", "J6"].map((cell): Entry => ({ cell, style: "unit", content: inUnits(U) })),
    ...answer(7, "Blocks", "=B7*B8", "blocks", "count"),
    ...answer(8, "Backing panels", `=${q("BACKINGPANELS", backing)}`, "panels", "count"),
    ...answer(9, "Backing, to buy", text("BACKINGFABRIC", backing)),
    { cell: "G10", style: "label", content: "Batting, at least" },
    pair("H10", `=${q("BATTINGSIZE", { ...size, margin: "$B$31" })}`),
    { cell: "J10", style: "unit", content: inUnits(U) },
    { cell: "G11", style: "label", content: "Batting, packaged" },
    {
      cell: "H11",
      style: "answer",
      content: `=${q("BATTINGPACK", { ...size, margin: "$B$31" })}`,
      room: { rows: 1, columns: [undefined, "length", "length", undefined], header: false },
    },
    ...answer(12, "Binding, length", `=${q("BINDINGLENGTH", { ...size, tail: "$B$36" })}`, inUnits(U), "length"),
    ...answer(13, "Binding strips", `=${q("BINDINGSTRIPS", binding)}`, "strips", "count"),
    ...answer(14, "Joining seams", `=${seams}`, inUnits(U), "length"),
    ...answer(15, "Thread for them", `=${q("THREADLENGTH", { seamLength: seams })}`, inUnits(U), "length"),
    ...lines("G16", ["Seams between blocks; needle and bobbin."]),
    ...heading("G20", "Each fabric, binding included", 4),
    ...across("G21", ["exact length", "letter", "to buy", ""], "column").slice(0, 3),
    ...FABRIC_ROWS.flatMap((row): Entry[] => [
      { cell: `G${row}`, style: "answer", format: "length", content: blank(`B${row}`, lengthOf(row)) },
      { cell: `H${row}`, style: "answerText", content: `=B${row}&""` },
      { cell: `I${row}`, style: "buy", content: blank(`B${row}`, amountOf(row)) },
    ]),
    ...heading("G29", "Assumed", 4),
    ...lines("G30", [
      "Width is across, length is down.",
      "Sizes are finished unless they say cut.",
      "Strips run from selvage to selvage.",
      "Usable width is without selvages: measure.",
      "Borders are butted, sides first, and joined",
      "from strips. Measure the quilt before cutting.",
      "Binding is folded double, joined diagonally.",
      "Exact lengths include squaring and miscuts.",
      "Nothing is added for shrinking.",
      "One-way prints and matched prints need more.",
      "Batting packages are usual sizes; see yours.",
    ]),
  ];
  return {
    name: "Design",
    widths: [30, 11, 9, 7, 5, 2, 19, 11, 10, 7, 7],
    entries,
    frozen: { rows: 2 },
    print: "one page",
    heights: { 21: 27 },
  };
}

const FABRICS: [string, string, number | ""][] = [
  ["Deep rust, small print", "A", 42],
  ["Cream, tone on tone", "B", 42],
  ["Slate, solid", "C", 41],
  ["Gold, fine dots", "D", 42],
  ["Plum, large print", "E", 41.5],
  ["", "", ""],
];

/** Usable width of the fabric that binds. */
const bindingWidth = "INDEX(Design!$C$22:$C$27,MATCH(Design!$B$35,Design!$B$22:$B$27,0))";

const seams = q("SEAMLENGTH", { across: "$B$7", down: "$B$8", patch: "$B$9" });

/** Length of binding strips that come from the fabric of a row. */
const bindingLength = (row: number) =>
  `IF(Design!$B$35=Design!$B$${row},Design!$H$13*${q("LENGTH", { length: "Design!$B$34" })},0)`;

/** Everything that is cut from the fabric of a row, with what is kept for miscuts. */
function lengthOf(row: number): string {
  const plan = q("PLANLENGTH", { list: pieces(`$B$${row}`), width: `$C$${row}`, squaring: SQUARING });
  return `${plan}+${bindingLength(row)}+${q("LENGTH", { length: "Design!$B$39" })}`;
}

function amountOf(row: number): string {
  return q("FABRICTEXT", { amount: q("FABRIC", { length: `$G$${row}`, step: STEP }) });
}

/** An amount to buy, as a shop says it. */
function text(id: string, given: Record<string, string>): string {
  return `=${q("FABRICTEXT", { amount: q(id, given) })}`;
}

function input(
  row: number,
  label: string,
  content: string | number,
  unit: string,
  format?: Format,
  choices?: Entry["choices"],
): Entry[] {
  return [
    { cell: `A${row}`, style: "label", content: label },
    { cell: `B${row}`, style: "input", content, ...(format ? { format } : {}), ...(choices ? { choices } : {}) },
    ...(unit && row !== 10 ? [{ cell: `C${row}`, style: "unit", content: unit } satisfies Entry] : []),
    ...(row === 10 ? [{ cell: "E10", style: "unit", content: unit } satisfies Entry] : []),
  ];
}

function border(row: number, label: string, width?: number, fabric?: string): Entry[] {
  return [
    { cell: `A${row}`, style: "label", content: label },
    { cell: `B${row}`, style: "input", content: width, format: "length" },
    { cell: `C${row}`, style: "inputText", content: fabric, choices: "$B$22:$B$27" },
    { cell: `D${row}`, style: "unit", content: inUnits(U) },
  ];
}

function answer(row: number, label: string, content: string, unit = "", format?: Format): Entry[] {
  return [
    { cell: `G${row}`, style: "label", content: label },
    { cell: `H${row}`, style: "answer", content, ...(format ? { format } : {}) },
    ...(unit ? [{ cell: `I${row}`, style: "unit", content: unit } satisfies Entry] : []),
  ];
}

/** Width and length, side by side. */
function pair(cell: string, content: string): Entry {
  return { cell, style: "answer", content, room: { rows: 1, columns: ["length", "length"], header: false } };
}

const STAR = [
  ["star", "B", "goose down: B, A", "<", "B"],
  ["", "goose right: B, A", "A", "<", "goose left: B, A"],
  ["", "^", "^", "<", "^"],
  ["", "B", "goose up: B, A", "<", "B"],
];
const PLAIN = [["plain", "B"]];

function blocks(): Sheet {
  const cells = new Map<string, string>();
  const draw = (top: number, rows: string[][]) => {
    for (const [r, row] of rows.entries()) {
      for (const [c, text] of row.entries()) cells.set(nameOf(top + r, c), text);
    }
  };
  draw(4, STAR);
  draw(9, PLAIN);
  const grid = Array.from({ length: 16 }, (_, r) => Array.from({ length: 7 }, (_, c) => nameOf(4 + r, c))).flat();
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Blocks" },
    ...lines("A2", ["A block's name in the first column, its square cells beside and below it."], "lead"),
    ...across("A4", ["name", "cells", "", "", "", "", ""], "column"),
    ...grid.map((cell): Entry => {
      const content = cells.get(cell);
      return { cell, style: "inputText", ...(content ? { content } : {}) };
    }),
    ...heading("A22", "Check", 7),
    { cell: "A23", style: "label", content: "star" },
    { cell: "B23", style: "note", content: `=${q("BLOCKCHECK", { block: "B5:E8", size: QUILT.size, seam: SEAM })}` },
    ...heading("A25", "What a cell may hold", 7),
    ...lines("A26", [
      "B  a square of fabric B",
      "B / A  a half-square unit whose seam rises to the right: first the fabric above the seam",
      "B \\ A  a half-square unit whose seam falls to the right",
      "goose up: B, A  a goose of B that flies up in a sky of A; its other cell holds < or ^",
      "<  belongs to the patch on its left        ^  belongs to the patch above",
      "Leave an empty row between two blocks. Fabrics go by the letters of the sheet Design.",
    ]),
  ];
  return { name: "Blocks", widths: [10, 17, 17, 17, 17, 17, 17], entries, frozen: { rows: 4 }, print: "one page" };
}

function layout(): Sheet {
  const grid = Array.from({ length: MOST_DOWN }, (_, r) =>
    Array.from({ length: MOST_ACROSS }, (_, c): Entry => ({
      cell: nameOf(3 + r, c),
      style: "inputText",
      content: (r + c) % 2 === 0 ? "star" : "plain",
    })),
  ).flat();
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Layout" },
    {
      cell: "A2",
      style: "lead",
      content:
        '="The "&Design!B7&" × "&Design!B8&" blocks at the upper left count. After a name, 90, 180 or 270 turns a block clockwise."',
    },
    ...grid,
  ];
  return {
    name: "Layout",
    widths: Array.from({ length: MOST_ACROSS }, () => 9),
    entries,
    frozen: { rows: 2 },
    print: "one page",
    landscape: true,
  };
}

function cutting(): Sheet {
  const last = 28;
  const borderTable = (row: number, width: string, length: string, border: number): Entry => ({
    cell: `A${row}`,
    style: "tableHead",
    content: `=IF(Design!$B$${border}="","none",${q("BORDERLENGTHS", { width, length, border: `Design!$B$${border}`, seam: SEAM })})`,
    room: { rows: 4, columns: [undefined, "length", "length", "count"] },
  });
  const inside = `Design!$H$5+2*${borderWidth(15)}`;
  const insideLength = `Design!$I$5+2*${borderWidth(15)}`;
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Cutting" },
    {
      cell: "A2",
      style: "lead",
      content: '=Design!B5&": every piece, cut size. Cut the largest first; see Plans for the strips."',
    },
    {
      cell: "A4",
      style: "tableHead",
      content: `=${pieces()}`,
      room: { rows: last - 3, columns: [undefined, "length", "length", "count", undefined, undefined, "count"] },
    },
    ...tickColumn("H", 4, last, "A"),
    ...heading("A30", "First border: cut only after measuring the quilt", 8),
    borderTable(31, "Design!$H$5", "Design!$I$5", 15),
    ...heading("A36", "Second border", 4),
    borderTable(37, inside, insideLength, 16),
    ...lines("A43", [BLADES, AT_THE_IRON, MEASURE_THE_SQUARES], "caution"),
  ];
  return {
    name: "Cutting",
    widths: [15, 10, 10, 9, 7, 30, 6, 6],
    entries,
    frozen: { rows: 4 },
    print: "true size",
    testSquares: ["F31", "F37"],
  };
}

/** Rows for the cut plan of one fabric. */
const BAND = 15;

function plans(): Sheet {
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Plans" },
    ...lines("A2", ["Strips across each fabric, the highest first, and what comes from each."], "lead"),
    ...FABRIC_ROWS.flatMap((fabric, index): Entry[] => {
      const top = 4 + index * BAND;
      const letter = `Design!$B$${fabric}`;
      return [
        ...heading(`A${top}`, `=IF(${letter}="","","Fabric "&${letter}&", "&Design!$A$${fabric})`, 4),
        {
          cell: `A${top + 1}`,
          style: "note",
          content: `=IF(${letter}="","",IF(Design!$B$35=${letter},"And "&Design!$H$13&" strips of "&${q("LENGTHTEXT", { length: "Design!$B$34" })}&" "&${U}&" for the binding.","Buy "&Design!$I$${fabric}&"."))`,
        },
        {
          cell: `A${top + 2}`,
          style: "tableHead",
          content: `=IF(${letter}="","",${q("PLAN", { list: pieces(letter), width: `Design!$C$${fabric}`, squaring: SQUARING })})`,
          room: { rows: BAND - 4, columns: ["length", "count", undefined, "length"] },
        },
      ];
    }),
  ];
  return {
    name: "Plans",
    widths: [9, 9, 90, 13],
    entries,
    frozen: { rows: 2 },
    print: "fit width",
    lastRow: 3 + 6 * BAND,
    breaks: [3 + 3 * BAND],
  };
}

function supplies(): Sheet {
  const rows = FABRIC_ROWS.map((fabric, index): Entry[] => {
    const row = 7 + index;
    const letter = `Design!B${fabric}`;
    return [
      { cell: `A${row}`, style: "tick" },
      { cell: `B${row}`, style: "answerText", content: `=${letter}&""` },
      { cell: `C${row}`, style: "answerText", content: `=Design!A${fabric}&""` },
      { cell: `D${row}`, style: "answerText", content: `=IF(${letter}="","",${uses(letter)})` },
      { cell: `E${row}`, style: "buy", content: `=Design!I${fabric}` },
    ];
  }).flat();
  const list: [string, string, string, string][] = [
    ["", "Backing", '=Design!H8&" panels"', "=Design!H9"],
    [
      "",
      "Batting",
      `="at least "&${size("Design!$H$10", "Design!$I$10")}`,
      `=Design!H11&" "&${size("Design!$I$11", "Design!$J$11")}`,
    ],
    ["", "Binding", `=Design!H13&" strips, counted with the fabric"`, '="with "&Design!B35'],
    [
      "",
      "Thread for piecing",
      "seams between blocks; blocks need more",
      `=ROUND(Design!H15/IF(${U}="cm",100,36),0)&IF(${U}="cm"," m"," yd")`,
    ],
  ];
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Supply list" },
    {
      cell: "A2",
      style: "lead",
      content: `=Design!B5&", finished "&${size("Design!$H$6", "Design!$I$6")}&", blocks "&${q("LENGTHTEXT", { length: "Design!$B$9" })}&" "&${U}`,
    },
    ...heading("A4", "To buy, in shop cuts", 5),
    ...across("A6", ["", "letter", "what", "for", "buy"], "column"),
    ...rows,
    ...list.flatMap(([letter, what, use, amount], index): Entry[] => [
      { cell: `A${13 + index}`, style: "tick" },
      { cell: `B${13 + index}`, style: "answerText", content: letter || undefined },
      { cell: `C${13 + index}`, style: "answerText", content: what },
      { cell: `D${13 + index}`, style: "answerText", content: use },
      { cell: `E${13 + index}`, style: "buy", content: amount || undefined },
    ]),
    ...Array.from({ length: 3 }, (_, index): Entry[] => [
      { cell: `A${17 + index}`, style: "tick" },
      ...["B", "C", "D", "E"].map((column): Entry => ({ cell: `${column}${17 + index}`, style: "inputText" })),
    ]).flat(),
    ...heading("A21", "Tools", 5),
    ...[
      "Rotary cutter, mat, ruler at least 24 in long",
      "Sewing machine with a quarter-inch foot, pins",
      "Iron and board",
    ].flatMap((tool, index): Entry[] => [
      { cell: `A${22 + index}`, style: "tick" },
      { cell: `B${22 + index}`, style: "item", content: tool },
    ]),
    ...heading("A26", "These amounts assume", 5),
    {
      cell: "A27",
      style: "note",
      content: `="Usable widths: "&${FABRIC_ROWS.map((row) => `IF(Design!B${row}="","",Design!B${row}&" "&${q("LENGTHTEXT", { length: `Design!C${row}` })}&" "&${U}&"; ")`).join("&")}&"backing "&${q("LENGTHTEXT", { length: "Design!B30" })}&" "&${U}`,
    },
    {
      cell: "A28",
      style: "note",
      content: `="Seam "&${q("LENGTHTEXT", { length: SEAM })}&" "&${U}&"; "&${q("LENGTHTEXT", { length: SQUARING })}&" "&${U}&" lost squaring each fabric, "&${q("LENGTHTEXT", { length: "Design!$B$39" })}&" "&${U}&" more for miscuts; nothing for shrinking."`,
    },
    ...lines("A29", [
      "Not washed. One-way prints and prints to be matched need more: ask before buying.",
      "One letter stands for one fabric, here, in the cutting list and on the bags.",
      "Leave borders uncut until the quilt is measured.",
    ]),
    ...lines("A33", [BLADES, AT_THE_IRON], "caution"),
  ];
  return { name: "Supply list", widths: [4, 7, 26, 38, 21], entries, print: "one page" };
}

/** What a fabric is for, in words, from the cutting list. */
function uses(letter: string): string {
  const pieces = (use: string) => `COUNTIFS(Cutting!$A$5:$A$28,${letter},Cutting!$F$5:$F$28,"${use}")`;
  const others = ["sashing", "cornerstone", "border"];
  const words: [string, string][] = [
    ["blocks", `COUNTIF(Cutting!$A$5:$A$28,${letter})-${others.map(pieces).join("-")}`],
    ...others.map((use): [string, string] => [use === "cornerstone" ? "cornerstones" : use, pieces(use)]),
    ["binding", `IF(Design!$B$35=${letter},1,0)`],
  ];
  return `MID(${words.map(([word, count]) => `IF(${count}>0,", ${word}","")`).join("&")},3,99)`;
}

function size(width: string, length: string): string {
  return `${q("LENGTHTEXT", { length: width })}&" × "&${q("LENGTHTEXT", { length })}&" "&${U}`;
}

export const quiltPlanner: PlanningWorkbook = {
  name: "quilt-planner",
  title: "Quilt planner",
  description: "From blocks drawn in cells to cut sizes, strips, amounts and a supply list.",
  build: () => ({
    name: "quilt-planner",
    title: "Quilt planner",
    description: "From blocks drawn in cells to cut sizes, strips, amounts and a supply list.",
    units: U,
    sheets: [design(), blocks(), layout(), cutting(), plans(), supplies()],
  }),
};
