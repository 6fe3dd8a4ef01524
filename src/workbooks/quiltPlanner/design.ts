/** The sheet Design: everything that a maker settles, and the main answers. */
import { across, type Entry, type Format, heading, lines, type Sheet } from "../book";
import { lacksFabric, tableFault } from "../drawn";
import { fabricsIn, unlessListed, unlisted } from "../listed";
import {
  countOf,
  input,
  inUnits,
  lengthOrUsual,
  panelWord,
  sameName,
  shopUnit,
  STEPS,
  TITLE_ROW,
  UNITS,
} from "../shared";
import {
  BINDING_FABRIC,
  bindingStrip,
  BLOCK_NAMES,
  borderWidth,
  FABRIC_ROWS,
  FAULT,
  LAYOUT,
  LETTERS,
  LIST,
  MISSING,
  MOST_ACROSS,
  MOST_DOWN,
  pieces,
  q,
  SEAM,
  SQUARING,
  STEP,
  U,
  unlessMissing,
} from "./cells";

export function design(): Sheet {
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
    { cell: "A3", style: "caution", content: `=${missing()}` },
    ...heading("A4", "Yours to change", 5),
    { cell: "A5", style: "label", content: "Name of the quilt" },
    { cell: "B5", style: "inputText", content: "Lap quilt of stars" },
    ...input(6, "Units of bare numbers", "in", undefined, "", UNITS),
    ...input(7, "Blocks across, up to 12", 5, "count", "blocks"),
    ...input(8, "Blocks down, up to 14", 7, "count", "blocks"),
    ...input(9, "Block, finished", 8, "length", inUnits(U)),
    ...input(10, "Sashing, fabric, cornerstones", 1.5, "length"),
    { cell: "E10", style: "unit", content: inUnits(U) },
    { cell: "C10", style: "inputText", content: "C", choices: "$B$22:$B$27" },
    { cell: "D10", style: "inputText", content: "D", choices: "$B$22:$B$27" },
    ...input(11, "Sashing round the outside", "sashed", undefined, "", ["sashed", "none"]),
    ...lines("A12", ["0 for none. Draw blocks on Blocks, place them on Layout."]),
    { cell: "A13", style: "caution", content: `=${fault}` },
    ...heading("A14", "Borders, finished, inside out", 5),
    ...border(15, "First border, fabric", 1, "D"),
    ...border(16, "Second border, fabric", 5, "E"),
    ...border(17, "Third border, fabric"),
    ...lines("A18", ["A width of 0, or an empty one, is no border."]),
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
    { cell: "A28", style: "caution", content: `=${notBought}` },
    ...heading("A29", "Finishing and shopping", 5),
    ...input(30, "Backing, usable width", 42, "length", inUnits(U)),
    ...input(31, "Backing and batting margin", 4, "length", inUnits(U)),
    ...input(32, "Seam between backing panels", 0.5, "length", inUnits(U)),
    ...input(33, "Backing print", "any", undefined, "", ["any", "upright"]),
    ...input(34, "Binding strip, cut", 2.5, "length", inUnits(U)),
    ...input(35, "Binding fabric", "E", undefined, "", "$B$22:$B$27"),
    ...input(36, "Binding tail", 10, "length", inUnits(U)),
    ...input(37, "Seam allowance", 0.25, "length", inUnits(U)),
    ...input(38, "Lost squaring an end", 1, "length", inUnits(U)),
    ...input(39, "For miscuts, each fabric", 2, "length", inUnits(U)),
    ...input(40, "The shop cuts in steps of", 0.125, "amount", shopUnit(U), STEPS),

    ...heading("G4", "What follows", 4),
    { cell: "G5", style: "label", content: "Inside the borders" },
    pair("H5", q("TOPSIZE", { across: "$B$7", down: "$B$8", block: "$B$9", sashing: "$B$10", edge: "$B$11" })),
    { cell: "G6", style: "label", content: "Quilt, finished" },
    ...["H", "I"].map((column): Entry => ({
      cell: `${column}6`,
      style: "answer",
      content: `=${unlessMissing(`${column}5+2*(${[15, 16, 17].map(borderWidth).join("+")})`)}`,
      format: "length",
    })),
    ...["J5", "J6"].map((cell): Entry => ({ cell, style: "unit", content: inUnits(U) })),
    ...answer(7, "Blocks", "B7*B8", "blocks", "count"),
    ...answer(8, "Backing panels", q("BACKINGPANELS", backing), `=${panelWord("$H$8")}`, "count"),
    ...answer(9, "Backing, to buy", q("BACKINGFABRIC", backing), shopUnit(U), "amount"),
    { cell: "G10", style: "label", content: "Batting, at least" },
    pair("H10", q("BATTINGSIZE", { ...size, margin: "$B$31" })),
    { cell: "J10", style: "unit", content: inUnits(U) },
    { cell: "G11", style: "label", content: "Batting, packaged" },
    {
      cell: "H11",
      style: "answer",
      content: `=${unlessMissing(q("BATTINGPACK", { ...size, margin: "$B$31" }))}`,
      room: { rows: 1, columns: [undefined, "length", "length", undefined], header: false },
    },
    ...answer(12, "Binding, length", q("BINDINGLENGTH", { ...size, tail: "$B$36" }), inUnits(U), "length"),
    ...answer(13, "Binding strips", q("BINDINGSTRIPS", binding), "strips", "count"),
    ...answer(14, "Joining seams", seams, inUnits(U), "length"),
    ...answer(15, "Thread for them", q("THREADLENGTH", { seamLength: "$H$14" }), inUnits(U), "length"),
    ...lines("G16", ["Seams between blocks and sashing."]),
    ...heading("G20", "Each fabric, binding included", 4),
    ...across("G21", ["exact length", "letter", "to buy", ""], "column").slice(0, 3),
    ...FABRIC_ROWS.flatMap((row): Entry[] => [
      { cell: `G${row}`, style: "answer", format: "length", content: `=${lengthOf(row)}` },
      { cell: `H${row}`, style: "answerText", content: `=B${row}&""` },
      { cell: `I${row}`, style: "buy", content: `=${amountOf(row)}` },
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
      "No quilt belongs where an infant sleeps.",
    ]),
  ];
  return {
    name: "Design",
    widths: [30, 16, 9, 7, 5, 2, 19, 11, 10, 7, 7],
    entries,
    frozen: { rows: 2 },
    print: "one page",
    heights: { ...TITLE_ROW, 21: 27 },
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

/** Whether a cell holds a whole number from 1. */
const isCount = (cell: string, most: number) =>
  `IFERROR(AND(${cell}+0>=1,${cell}+0<=${most},${cell}+0=INT(${cell}+0)),FALSE)`;

/** What must be typed before anything can be worked out, the first of it. */
function missing(): string {
  const borders = [15, 16, 17].map((row) => lacksFabric(`B${row}`, `C${row}`)).join(",");
  const faults: [when: string, sentence: string][] = [
    [`NOT(${isCount("B7", MOST_ACROSS)})`, `"Blocks across must be a whole number from 1 to ${MOST_ACROSS}."`],
    [`NOT(${isCount("B8", MOST_DOWN)})`, `"Blocks down must be a whole number from 1 to ${MOST_DOWN}."`],
    [`OR(B9="",B9=0)`, `"How large is a block, finished?"`],
    [lacksFabric("B10", "C10"), `"Of which fabric is the sashing?"`],
    [`OR(${borders})`, `"A border has a width and no fabric."`],
    [`COUNTBLANK(${LAYOUT})>0`, `"Places of the layout without a block: "&COUNTBLANK(${LAYOUT})&"."`],
  ];
  return faults.reduceRight((rest, [when, sentence]) => `IF(${when},${sentence},${rest})`, '""');
}

/** Why the quilt as it is drawn cannot be worked out. */
const fault = `IF(${MISSING}<>"","",${tableFault("Cutting!$A$4", "Cutting, cell A4,", LAYOUT, BLOCK_NAMES)})`;

/** Fabrics that are used and not among those to buy. */
const notBought = `IF(${MISSING}&${FAULT}<>"","",${unlisted(LIST)}&IF(${BINDING_FABRIC}="","",${unlessListed(BINDING_FABRIC, "binds", LETTERS)}))`;

/** Usable width of the fabric that binds; empty, and so the usual one, where it is not known. */
const rowOfBinding = `INDEX(Design!$C$22:$C$27,MATCH(TRIM(${BINDING_FABRIC}),Design!$B$22:$B$27,0))`;
const bindingWidth = `IFERROR(IF(${rowOfBinding}="","",${rowOfBinding}),"")`;

/** Pieces in a row of the top, or rows: blocks, and sashing where there is any. */
function pieced(blocks: string): string {
  const sashed = `2*${blocks}+IF(LOWER(TRIM($B$11))="sashed",1,-1)`;
  return `IF(${lengthOrUsual("$B$10", "none", U)}=0,${blocks},${sashed})`;
}

/** The seams of every row, as long as the row is high before sewing, and those between the rows. */
function seamsOf(width: string, length: string): string {
  const seam = `2*${lengthOrUsual(SEAM, "seam", U)}`;
  const [columns, rows] = [pieced("$B$7"), pieced("$B$8")];
  return `(${columns}-1)*(${length}+${rows}*${seam})+(${rows}-1)*(${width}+${seam})`;
}

const seams = seamsOf("$H$5", "$I$5");

/** Everything that is cut from the fabric of a row, with what is kept for miscuts; empty where nothing is. */
function lengthOf(row: number): string {
  const letter = `$B$${row}`;
  const isCut = `${countOf(fabricsIn(LIST), letter)}>0`;
  const binds = sameName(BINDING_FABRIC, letter);
  const plan = q("PLANLENGTH", { list: pieces(letter), width: `$C$${row}`, squaring: SQUARING });
  const cut = `IF(${isCut},${plan},${lengthOrUsual(SQUARING, "none", U)})`;
  const binding = `IF(${binds},$H$13*${bindingStrip},0)`;
  const all = `${cut}+${binding}+${lengthOrUsual("$B$39", "none", U)}`;
  return `IF(OR(${letter}="",${MISSING}&${FAULT}<>""),"",IF(OR(${isCut},${binds}),${all},""))`;
}

function amountOf(row: number): string {
  const amount = q("FABRICTEXT", { amount: q("FABRIC", { length: `$G$${row}`, step: STEP }) });
  return `IF(OR($B$${row}="",${MISSING}&${FAULT}<>""),"",IF($G$${row}="","not used",${amount}))`;
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
    { cell: `H${row}`, style: "answer", content: `=${unlessMissing(content)}`, ...(format ? { format } : {}) },
    ...(unit ? [{ cell: `I${row}`, style: "unit", content: unit } satisfies Entry] : []),
  ];
}

/** Width and length, side by side. */
function pair(cell: string, content: string): Entry {
  return {
    cell,
    style: "answer",
    content: `=${unlessMissing(content)}`,
    room: { rows: 1, columns: ["length", "length"], header: false },
  };
}
