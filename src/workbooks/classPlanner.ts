/** Class planner: what the teacher settles, one page for each size of quilt, and the supply list that is sent out. */
import { across, callsIn, type Entry, type Format, heading, lines, type Sheet } from "./book";
import type { PlanningWorkbook } from "./index";
import { AT_THE_IRON, BLADES, inUnits, MEASURE_THE_SQUARES, shopUnit, STEPS, tickRow, UNITS } from "./shared";

const U = "Class!$C$12";
const q = callsIn(U);
const SEAM = "Class!$C$13";
const SQUARING = "Class!$C$14";
const EXTRA = "Class!$C$15";
const STEP = "Class!$C$16";
const STRIP = "Class!$C$17";
const TAIL = "Class!$C$18";
const MARGIN = "Class!$C$19";

interface Size {
  name: string;
  across: number;
  down: number;
  border: number;
}

const SIZES: readonly Size[] = [
  { name: "Wall", across: 3, down: 5, border: 3 },
  { name: "Lap", across: 5, down: 7, border: 5 },
  { name: "Twin", across: 7, down: 9, border: 6 },
];

function classSheet(): Sheet {
  const told: [string, string][] = [
    ["Class", "Pinwheels and plain squares"],
    ["Teacher, and how to reach me", "type your name and address here"],
    ["When and where", "two Tuesdays, 6 to 9 pm, shop classroom"],
    ["This version, corrections", "Version 1; corrections hang on the classroom door"],
    ["For whom", "you can sew a straight seam and have used a rotary cutter"],
    ["Time", "two evenings and about four hours at home"],
  ];
  const evenings = [
    ["1", "Check the seam. Cut, sew and trim the half-square units.", "all pieces cut but the border"],
    ["", "Sew the first pinwheel and measure it.", ""],
    ["at home", "Sew the other pinwheels.", "all pinwheels measure alike"],
    ["2", "Join blocks into rows, rows into the top.", "top pressed"],
    ["", "Measure the top, cut the border, sew it on.", "backing and batting ready"],
    ["", "Layer, and how to bind.", ""],
  ];
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Class planner" },
    ...lines(
      "A2",
      ["For the teacher. Each size of quilt has a page for students; the supply list is to be sent out."],
      "lead",
    ),
    ...heading("A4", "Yours to change", 4),
    ...told.flatMap(([label, content], index): Entry[] => [
      { cell: `A${5 + index}`, style: "label", content: label },
      { cell: `C${5 + index}`, style: "inputText", content },
    ]),
    ...setting(12, "Units of bare numbers", "in", undefined, "", UNITS),
    ...setting(13, "Seam allowance", 0.25, "length", inUnits(U)),
    ...setting(14, "Lost squaring an end", 1, "length", inUnits(U)),
    ...setting(15, "For miscuts, each fabric", 3, "length", inUnits(U)),
    ...setting(16, "The shop cuts in steps of", 0.125, "amount", shopUnit(U), STEPS),
    ...setting(17, "Binding strip, cut", 2.5, "length", inUnits(U)),
    ...setting(18, "Binding tail", 10, "length", inUnits(U)),
    ...setting(19, "Backing and batting, more each side", 4, "length", inUnits(U)),
    ...heading("A21", "The design", 4),
    ...lines("A22", [
      "Pinwheel blocks and plain blocks take turns, like a checkerboard; the first block is a pinwheel.",
      "A pinwheel is four half-square units of fabrics A and B, sewn two at a time from squares.",
      "Plain blocks are of fabric C; border and binding are of fabric D.",
    ]),
    ...heading("A26", "What is done when", 4),
    ...across("A27", ["evening", "", "what", "to be ready by then"], "column"),
    ...Array.from({ length: 9 }, (_, index): Entry[] => {
      const [evening, what, ready] = evenings[index] ?? [];
      return [
        { cell: `A${28 + index}`, style: "inputText", content: evening || undefined },
        { cell: `C${28 + index}`, style: "inputText", content: what || undefined },
        { cell: `D${28 + index}`, style: "inputText", content: ready || undefined },
      ];
    }).flat(),
    ...heading("A38", "Before the list goes out", 4),
    ...[
      "Sew a sample in another size than the one on the wall; every page counts anew.",
      "Let a second quilter check the cutting table.",
      "Measure the usable width of the fabrics on the shelf and type it on each page.",
      "Send the list well ahead, and link it from the booking.",
    ].flatMap((text, index): Entry[] => [
      ...tickRow(`A${39 + index}`),
      { cell: `B${39 + index}`, style: "item", content: text },
    ]),
    ...heading("A44", "Say it aloud", 4),
    ...lines("A45", [BLADES, AT_THE_IRON], "caution"),
  ];
  return { name: "Class", widths: [9, 25, 56, 30], entries, frozen: { rows: 2 }, print: "one page" };
}

function setting(
  row: number,
  label: string,
  content: string | number,
  format?: Format,
  unit = "",
  choices?: Entry["choices"],
): Entry[] {
  return [
    { cell: `A${row}`, style: "label", content: label },
    {
      cell: `C${row}`,
      style: "inputText",
      content,
      ...(format ? { format } : {}),
      ...(choices ? { choices } : {}),
    },
    ...(unit ? [{ cell: `D${row}`, style: "unit", content: unit } satisfies Entry] : []),
  ];
}

/** Fabrics of a page by letter: row, what it looks like, what it is for. */
const FABRICS = {
  A: { row: 13, what: "light, small print", use: "pinwheels" },
  B: { row: 14, what: "dark, reads as solid", use: "pinwheels" },
  C: { row: 15, what: "medium, larger print", use: "plain blocks" },
  D: { row: 16, what: "darkest, any print", use: "border and binding" },
} as const;

function page({ name, across: blocksAcross, down, border }: Size): Sheet {
  const width = (letter: keyof typeof FABRICS) => `$C$${FABRICS[letter].row}`;
  const size = { width: "$F$5", length: "$G$5" };
  const inside = { width: "$F$6", length: "$G$6" };
  const half = `${q("LENGTH", { length: "$C$7" })}/2`;
  const strips = (letter: keyof typeof FABRICS, row: number) =>
    q("STRIPSNEEDED", { count: `$E$${row}`, patch: `$F$${row}`, width: width(letter), squaring: SQUARING });
  const used = { A: "$C$24*$D$24", B: "$C$25*$D$25", C: "$C$23*$D$23", D: "$C$22*$D$22+$C$26*$D$26" };
  const buy = (letter: keyof typeof FABRICS) => {
    const length = `${used[letter]}+${q("LENGTH", { length: SQUARING })}+${q("LENGTH", { length: EXTRA })}`;
    return `=${q("FABRICTEXT", { amount: q("FABRIC", { length, step: STEP }) })}`;
  };
  const backing = { ...size, fabricWidth: "$C$17", margin: MARGIN, step: STEP, squaring: SQUARING };
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: `="${name}: "&Class!C5` },
    ...lines("A2", ["Type your own size and fabrics into the yellow cells; the white cells follow."], "lead"),
    ...heading("A3", "Yours", 8),
    { cell: "A4", style: "label", content: "Your name" },
    { cell: "C4", style: "inputText" },
    ...size4(
      5,
      "Blocks across",
      blocksAcross,
      "count",
      "Quilt, finished",
      `=${q("BORDERSIZE", { ...inside, border: "$C$8" })}`,
    ),
    ...size4(
      6,
      "Blocks down",
      down,
      "count",
      "Before the border",
      `=${q("TOPSIZE", { across: "$C$5", down: "$C$6", block: "$C$7" })}`,
    ),
    ...size4(7, "Block, finished", 8, "length", "Pinwheels, plain", "=ROUNDUP($C$5*$C$6/2,0)"),
    ...size4(8, "Border, finished", border, "length", "Half-square units", "=4*$F$7"),
    { cell: "G7", style: "answer", content: "=$C$5*$C$6-$F$7", format: "count" },
    { cell: "D9", style: "unit", content: "Batting, at least" },
    {
      cell: "F9",
      style: "answer",
      content: `=${q("BATTINGSIZE", { ...size, margin: MARGIN })}`,
      room: { rows: 1, columns: ["length", "length"], header: false },
    },
    ...["H5", "H6", "H9"].map((cell): Entry => ({ cell, style: "unit", content: inUnits(U) })),
    ...heading("A10", "Fabrics, and what to buy", 8),
    ...across("A12", ["letter", "what it looks like", "usable width", "for", "", "", "buy", ""], "column"),
    ...lines("A11", ["Measure the usable width, selvages cut off; labels say more."]),
    ...Object.entries(FABRICS).flatMap(([letter, { row, what, use }]) =>
      fabric(row, letter, what, 42, use, buy(letter as keyof typeof FABRICS)),
    ),
    ...fabric(
      17,
      "",
      "backing",
      42,
      `=${q("BACKINGPANELS", backing)}&" panels"`,
      `=${q("FABRICTEXT", { amount: q("BACKINGFABRIC", backing) })}`,
    ),
    ...fabric(18, "", "batting", "", `="at least "&${sizeText("$F$9", "$G$9")}`, ""),
    ...heading("A20", "Cutting, largest first", 8),
    ...across("A21", ["letter", "piece", "strips", "width", "pieces", "size", "then", "done"], "column"),
    ...cut(
      22,
      "D",
      "border, from joined strips",
      `=${q("BORDERSTRIPS", { ...inside, border: "$C$8", fabricWidth: width("D"), seam: SEAM })}`,
      `=${q("CUTSQUARE", { finished: "$C$8", seam: SEAM })}`,
      "",
      "",
      "measure first",
    ),
    ...cut(
      23,
      "C",
      "plain blocks",
      `=${strips("C", 23)}`,
      "=$F$23",
      "=$G$7",
      `=${q("CUTSQUARE", { finished: "$C$7", seam: SEAM })}`,
      "",
    ),
    ...cut(
      24,
      "A",
      "squares for units",
      `=${strips("A", 24)}`,
      "=$F$24",
      "=2*$F$7",
      `=${q("CUTHALFSQUARE", { finished: half, seam: SEAM })}`,
      "pair with B",
    ),
    ...cut(25, "B", "squares for units", `=${strips("B", 25)}`, "=$F$25", "=2*$F$7", "=$F$24", "pair with A"),
    ...cut(
      26,
      "D",
      "binding",
      `=${q("BINDINGSTRIPS", { ...size, strip: STRIP, fabricWidth: width("D"), tail: TAIL })}`,
      `=${q("LENGTH", { length: STRIP })}`,
      "",
      "",
      "diagonally",
    ),
    ...cut(27, "", "", "", "", "", "", ""),
    ...heading("A29", "Check as you sew", 5),
    ...across("A30", ["", "it should measure", "across", "down", "mine"], "column"),
    ...check(
      31,
      "seam test: three 1 1/2 in strips",
      `=${q("CHECKROW", { sizes: '{"1 1/2 in","1 1/2 in","1 1/2 in"}', seam: SEAM })}`,
      "",
    ),
    ...check(
      32,
      "unit before trimming, about",
      `=${q("UNITMADE", { cut: "$F$24", how: '"half square"', seam: SEAM })}`,
      "=$C$32",
      "decimal",
    ),
    ...check(33, "unit, trimmed", `=${q("CUTSQUARE", { finished: half, seam: SEAM })}`, "=$C$33"),
    ...check(34, "two units sewn", `=2*($C$33-${q("LENGTH", { length: SEAM })})`, "=$C$33"),
    ...check(35, "pinwheel", "=$F$23", "=$F$23"),
    ...check(36, "a row of blocks", `=$F$6+2*${q("LENGTH", { length: SEAM })}`, "=$F$23"),
    ...check(
      37,
      "top before the border",
      `=$F$6+2*${q("LENGTH", { length: SEAM })}`,
      `=$G$6+2*${q("LENGTH", { length: SEAM })}`,
    ),
    ...check(
      38,
      "top with its border",
      `=$F$5+2*${q("LENGTH", { length: SEAM })}`,
      `=$G$5+2*${q("LENGTH", { length: SEAM })}`,
    ),
    ...heading("A40", "Border: measure edge, middle, edge, raw edge to raw edge", 8),
    ...measured(41, "length of the top: cut two sides"),
    ...measured(42, "width with the sides on: cut two"),
    ...lines("A43", [BLADES, AT_THE_IRON, MEASURE_THE_SQUARES], "caution"),
  ];
  return {
    name,
    widths: [7, 28, 9, 10, 9, 10, 13, 7],
    entries: entries.filter(({ content }) => content !== ""),
    frozen: { rows: 2 },
    print: "true size",
    testSquares: ["G29", "G35"],
    heights: { 12: 27 },
  };
}

function sizeText(width: string, length: string): string {
  return `${q("LENGTHTEXT", { length: width })}&" × "&${q("LENGTHTEXT", { length })}&" "&${U}`;
}

function size4(row: number, label: string, content: number, format: Format, result: string, formula: string): Entry[] {
  const pair = row < 7;
  return [
    { cell: `A${row}`, style: "label", content: label },
    { cell: `C${row}`, style: "input", content, format },
    { cell: `D${row}`, style: "unit", content: result },
    {
      cell: `F${row}`,
      style: "answer",
      content: formula,
      format: pair ? "length" : "count",
      ...(pair ? { room: { rows: 1, columns: ["length", "length"] as const, header: false } } : {}),
    },
  ];
}

function fabric(row: number, letter: string, what: string, width: number | "", use: string, amount: string): Entry[] {
  return [
    { cell: `A${row}`, style: "answerText", content: letter },
    { cell: `B${row}`, style: "inputText", content: what },
    { cell: `C${row}`, style: width === "" ? "answer" : "input", content: width, format: "length" },
    { cell: `D${row}`, style: "unit", content: use },
    { cell: `G${row}`, style: "buy", content: amount },
  ];
}

function cut(
  row: number,
  letter: string,
  piece: string,
  strips: string,
  width: string,
  count: string,
  size: string,
  then: string,
): Entry[] {
  const style = piece === "" ? "inputText" : "answerText";
  return [
    { cell: `A${row}`, style, ...(letter ? { content: letter } : {}) },
    { cell: `B${row}`, style, ...(piece ? { content: piece } : {}) },
    { cell: `C${row}`, style: piece ? "answer" : "input", ...(strips ? { content: strips } : {}), format: "count" },
    { cell: `D${row}`, style: piece ? "answer" : "input", ...(width ? { content: width } : {}), format: "length" },
    { cell: `E${row}`, style: piece ? "answer" : "input", ...(count ? { content: count } : {}), format: "count" },
    { cell: `F${row}`, style: piece ? "answer" : "input", ...(size ? { content: size } : {}), format: "length" },
    { cell: `G${row}`, style: "answerText", ...(then ? { content: then } : {}) },
    ...tickRow(`H${row}`),
  ];
}

function check(row: number, what: string, acrossIt: string, downIt: string, format: Format = "length"): Entry[] {
  return [
    ...tickRow(`A${row}`),
    { cell: `B${row}`, style: "answerText", content: what },
    { cell: `C${row}`, style: "answer", content: acrossIt, format },
    { cell: `D${row}`, style: "answer", ...(downIt ? { content: downIt } : {}), format },
    { cell: `E${row}`, style: "input", format: "length" },
  ];
}

function measured(row: number, what: string): Entry[] {
  const three = { first: `$C$${row}`, second: `$D$${row}`, third: `$E$${row}` };
  return [
    { cell: `A${row}`, style: "label", content: what },
    ...["C", "D", "E"].map((column): Entry => ({ cell: `${column}${row}`, style: "input", format: "length" })),
    {
      cell: `F${row}`,
      style: "buy",
      content: `=IF(OR(C${row}="",D${row}="",E${row}=""),"",${q("BORDERMEASURED", three)})`,
      room: { rows: 1, columns: ["length", undefined], header: false },
    },
  ];
}

const TOOLS: [string, string][] = [
  ["Rotary cutter with a new blade, mat at least 18 × 24 in", "bring"],
  ["Ruler 6 × 24 in; a square ruler for trimming, 6 1/2 in or larger", "bring"],
  ["Sewing machine with its cord, pedal and a quarter-inch foot", "bring"],
  ["Piecing thread in a gray that suits both, new needle size 80", "bring"],
  ["Pins, small scissors, seam ripper, marking pencil", "bring"],
  ["Letters and bags for cut pieces", "in class"],
  ["Irons and boards", "shared"],
  ["Second ruler, walking foot", "if you have it"],
];

function supplies(): Sheet {
  const columns = ["D", "E", "F"];
  const rows: [string, string, number][] = [
    ["A", "pinwheels", 13],
    ["B", "pinwheels", 14],
    ["C", "plain blocks", 15],
    ["D", "border and binding", 16],
    ["", "backing, any cotton", 17],
  ];
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: '="Supply list: "&Class!C5' },
    { cell: "A2", style: "lead", content: '=Class!C7&". Questions: "&Class!C6&"."' },
    ...heading("A4", "Choose one size and buy, in shop cuts", 6),
    ...across("A5", ["", "letter", "fabric, and what it is for", ...SIZES.map(({ name }) => name)], "column"),
    ...rows.flatMap(([letter, use, from], index): Entry[] => [
      ...tickRow(`A${6 + index}`),
      { cell: `B${6 + index}`, style: "answerText", ...(letter ? { content: letter } : {}) },
      { cell: `C${6 + index}`, style: "answerText", content: letter ? `=Lap!B${from}&" (${use})"` : use },
      ...columns.map((column, at): Entry => ({
        cell: `${column}${6 + index}`,
        style: "buy",
        content: `=${SIZES[at].name}!G${from}`,
      })),
    ]),
    ...tickRow("A11"),
    { cell: "B11", style: "answerText" },
    { cell: "C11", style: "answerText", content: "batting, at least" },
    ...columns.map((column, at): Entry => ({
      cell: `${column}11`,
      style: "buy",
      content: `=${sizeText(`${SIZES[at].name}!$F$9`, `${SIZES[at].name}!$G$9`)}`,
    })),
    { cell: "C12", style: "note", content: "finished quilt" },
    { cell: "C13", style: "note", content: "blocks across × down, finished" },
    ...columns.flatMap((column, at): Entry[] => {
      const sheet = SIZES[at].name;
      return [
        { cell: `${column}12`, style: "answer", content: `=${sizeText(`${sheet}!$F$5`, `${sheet}!$G$5`)}` },
        {
          cell: `${column}13`,
          style: "answer",
          content: `=${sheet}!C5&" × "&${sheet}!C6&", "&${q("LENGTHTEXT", { length: `${sheet}!$C$7` })}&" "&${U}`,
        },
      ];
    }),
    ...heading("A15", "Bring", 6),
    ...TOOLS.flatMap(([tool, who], index): Entry[] => [
      ...tickRow(`A${16 + index}`),
      { cell: `B${16 + index}`, style: "item", content: tool },
      { cell: `F${16 + index}`, style: "unit", content: who },
    ]),
    ...heading("A25", "Before class", 6),
    ...[
      "Do not wash the fabrics. Iron them flat.",
      "Do not cut before class; the first strips are cut together.",
      "Put a letter on each fabric, the one of this list, and keep it on the bag.",
      "Leave border and binding uncut until the top is measured.",
    ].flatMap((text, index): Entry[] => [
      ...tickRow(`A${26 + index}`),
      { cell: `B${26 + index}`, style: "item", content: text },
    ]),
    ...heading("A31", "These amounts assume", 6),
    {
      cell: "A32",
      style: "note",
      content: `="Usable width "&${q("LENGTHTEXT", { length: "Lap!$C$13" })}&" "&${U}&" (as typed on each page); seam "&${q("LENGTHTEXT", { length: SEAM })}&" "&${U}&"; "&${q("LENGTHTEXT", { length: EXTRA })}&" "&${U}&" of each fabric for miscuts, "&${q("LENGTHTEXT", { length: SQUARING })}&" "&${U}&" to square it up."`,
    },
    ...lines("A33", [
      "Nothing is added for shrinking. One-way prints, and prints to be matched, need more: ask first.",
      "Instead: 40 strips of 2 1/2 in do not serve here; scraps do, if each gives one square for a unit.",
    ]),
    { cell: "A35", style: "note", content: '="You need: "&Class!C9&"."' },
    { cell: "A36", style: "note", content: '="It takes "&Class!C10&". "&Class!C8&"."' },
    ...lines("A38", [BLADES, AT_THE_IRON], "caution"),
  ];
  return { name: "Supply list", widths: [5, 8, 40, 15, 15, 15], entries, print: "one page" };
}

const description = "A teacher's settings, a page for each size of quilt to fill in, and a supply list.";

export const classPlanner: PlanningWorkbook = {
  name: "class-planner",
  title: "Class planner",
  description,
  build: () => ({
    name: "class-planner",
    title: "Class planner",
    description,
    units: U,
    sheets: [classSheet(), ...SIZES.map(page), supplies()],
  }),
};
