/** The sheet Design: everything that a maker settles, and the main answers. */
import { across, type Entry, type Format, heading, lines, type Sheet } from "../book";
import { blank, input, inUnits, panelWord, shopUnit, STEPS, UNITS } from "../shared";
import { borderWidth, FABRIC_ROWS, pieces, q, SQUARING, STEP, U } from "./cells";

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
    pair("H5", `=${q("TOPSIZE", { across: "$B$7", down: "$B$8", block: "$B$9", sashing: "$B$10", edge: "$B$11" })}`),
    { cell: "G6", style: "label", content: "Quilt, finished" },
    pair("H6", `=${q("BORDERSIZE", { width: "H5", length: "I5", border: [15, 16, 17].map(borderWidth).join("+") })}`),
    ...["J5", "J6"].map((cell): Entry => ({ cell, style: "unit", content: inUnits(U) })),
    ...answer(7, "Blocks", "=B7*B8", "blocks", "count"),
    ...answer(8, "Backing panels", `=${q("BACKINGPANELS", backing)}`, `=${panelWord("$H$8")}`, "count"),
    ...answer(9, "Backing, to buy", `=${q("BACKINGFABRIC", backing)}`, shopUnit(U), "amount"),
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
      "No quilt belongs where an infant sleeps.",
    ]),
  ];
  return {
    name: "Design",
    widths: [30, 16, 9, 7, 5, 2, 19, 11, 10, 7, 7],
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
