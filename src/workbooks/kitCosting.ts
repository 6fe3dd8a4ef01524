/** Kit costing: what a kit costs, what to ask for it, how many bolts to order, and whether a roll of strips pays. */
import { across, callsIn, type Entry, type Format, heading, lines, type Sheet } from "./book";
import type { PlanningWorkbook } from "./index";
import { blank, inUnits, shopUnit, STEPS, tickRow, UNITS } from "./shared";

const U = "Kit!$B$6";
const q = callsIn(U);

const FIRST = 22;
const LAST = 31;
const ROWS = Array.from({ length: LAST - FIRST + 1 }, (_, index) => FIRST + index);
const GENEROSITY = "Kit!$B$8";

/** The generosity of a cut, in the unit of fabric. */
const generous = `${q("LENGTH", { length: GENEROSITY })}/IF(${U}="cm",100,36)`;

/** What, letter, in a kit, cost of one, length of a bolt. */
const FABRICS: [string, string, number, number, number][] = [
  ["Teal, leaf print", "A", 0.625, 7.4, 15],
  ["Ivory, solid", "B", 0.875, 5.2, 15],
  ["Mustard, small check", "C", 0.25, 7.4, 12],
  ["Backing, wide leaf print", "D", 1.5, 7.4, 15],
];

function kit(): Sheet {
  const table = (row: number) => ({
    each: `$C$${row}`,
    bolt: `$E$${row}`,
    generosity: GENEROSITY,
  });
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Kit costing" },
    ...lines(
      "A2",
      ["Type your own into the yellow cells. The white cells follow. Money is in your own currency."],
      "lead",
    ),
    ...heading("A4", "Yours to change", 3),
    { cell: "A5", style: "label", content: "Name of the kit" },
    { cell: "B5", style: "inputText", content: "Pinwheel table runner" },
    ...input(6, "Units of bare numbers", "in", undefined, "", UNITS),
    ...input(7, "Kits to make", 24, "count", "kits"),
    ...input(8, "Each cut is generous by", 0.5, "length", inUnits(U)),
    ...input(9, "Labor for a kit", 12, "count", "minutes"),
    ...input(10, "An hour of labor", 18, "money"),
    ...input(11, "Pattern and printing", 2.5, "money", "a kit"),
    ...input(12, "Bag, label and other packing", 0.85, "money", "a kit"),
    ...input(13, "Overhead, on top of the cost", 0.12, "percent"),
    ...input(14, "Margin wanted", 0.45, "percent", "of the price"),
    ...input(15, "Markup wanted", 0.45, "percent", "of the cost"),
    ...input(16, "Price you think of asking", 42, "money"),
    ...lines("A17", ["Margin: part of the price. Markup: part of the cost."]),

    ...heading("E4", "What one kit costs", 7),
    ...answer(5, "Fabric, generosity included", `=SUM(G${FIRST}:G${LAST})`),
    ...answer(6, "Labor", "=B9/60*B10"),
    ...answer(7, "Pattern and packing", "=B11+B12"),
    ...answer(8, "Overhead", "=B13*(H5+H6+H7)"),
    ...answer(9, "Cost of a kit", "=SUM(H5:H8)", "buy"),
    ...heading("E11", "What to ask", 7),
    ...across("E12", ["a kit", "", "", "margin", "markup", "your price"], "column"),
    ...prices(13, "Price", [
      `=${q("PRICEFORMARGIN", { cost: "$H$9", margin: "$B$14" })}`,
      `=${q("PRICEFORMARKUP", { cost: "$H$9", markup: "$B$15" })}`,
      "=B16",
    ]),
    ...prices(14, "Profit on a kit", ["=H13-$H$9", "=I13-$H$9", "=J13-$H$9"]),
    ...prices(15, "Profit on all kits", ["=H14*$B$7", "=I14*$B$7", "=J14*$B$7"]),
    ...prices(
      16,
      "This is a margin of",
      ['=IF(H13=0,"",H14/H13)', '=IF(I13=0,"",I14/I13)', '=IF(J13=0,"",J14/J13)'],
      "percent",
    ),
    ...prices(
      17,
      "This is a markup of",
      ['=IF($H$9=0,"",H14/$H$9)', '=IF($H$9=0,"",I14/$H$9)', '=IF($H$9=0,"",J14/$H$9)'],
      "percent",
    ),

    ...heading("A19", "Fabric by the bolt", 11),
    ...across(
      `A${FIRST - 1}`,
      [
        "fabric",
        "letter",
        "in a kit",
        "cost of one",
        "on a bolt",
        "cut",
        "cost in a kit",
        "kits a bolt",
        "bolts to order",
        "left over",
        "order costs",
      ],
      "column",
    ),
    {
      cell: "A20",
      style: "note",
      content: `="Amounts in "&${shopUnit(U).slice(1)}&". A cut is what a kit needs and the generosity. No kit is pieced from two bolts."`,
    },
    ...ROWS.flatMap((row, index): Entry[] => {
      const [what, letter, amount, cost, bolt] = FABRICS.at(index) ?? [];
      const filled = `C${row}`;
      return [
        { cell: `A${row}`, style: "inputText", content: what },
        { cell: `B${row}`, style: "inputText", content: letter },
        { cell: `C${row}`, style: "input", content: amount, format: "amount" },
        { cell: `D${row}`, style: "input", content: cost, format: "money" },
        { cell: `E${row}`, style: "input", content: bolt, format: "amount" },
        { cell: `F${row}`, style: "answer", content: blank(filled, `${amountOf(row)}+${generous}`), format: "decimal" },
        {
          cell: `G${row}`,
          style: "answer",
          content: blank(filled, q("KITCOST", { amounts: `$F$${row}`, prices: `$D$${row}` })),
          format: "money",
        },
        { cell: `H${row}`, style: "answer", content: blank(filled, q("KITSPERBOLT", table(row))), format: "count" },
        {
          cell: `I${row}`,
          style: "buy",
          content: blank(filled, q("BOLTSNEEDED", { kits: "$B$7", ...table(row) })),
          format: "count",
        },
        {
          cell: `J${row}`,
          style: "answer",
          content: blank(filled, `I${row}*${boltOf(row)}-$B$7*F${row}`),
          format: "decimal",
        },
        { cell: `K${row}`, style: "answer", content: blank(filled, `I${row}*${boltOf(row)}*D${row}`), format: "money" },
      ];
    }),
    { cell: `A${LAST + 1}`, style: "label", content: "All fabrics" },
    { cell: `G${LAST + 1}`, style: "buy", content: `=SUM(G${FIRST}:G${LAST})`, format: "money" },
    { cell: `I${LAST + 1}`, style: "buy", content: `=SUM(I${FIRST}:I${LAST})`, format: "count" },
    { cell: `K${LAST + 1}`, style: "buy", content: `=SUM(K${FIRST}:K${LAST})`, format: "money" },
    ...heading("A35", "Assumed", 11),
    ...lines("A36", [
      "Cost is what the shop pays today, not what the bolt once cost: it must be bought again.",
      "Overhead is a part of fabric, labor, pattern and packing together. Taxes and card fees are not in it.",
      "Whole bolts are ordered. What is left over is not charged to the kits; sell it, or make more kits.",
      "Bolts are as long as their label says. Flaws in the cloth are not counted.",
      "The price for a margin is cost ÷ (1 − margin); the price for a markup is cost × (1 + markup). Round as you like.",
    ]),
  ];
  return {
    name: "Kit",
    widths: [29, 13, 10, 11, 11, 9, 12, 11, 13, 11, 12],
    entries,
    frozen: { rows: 2 },
    print: "one page",
    landscape: true,
  };
}

/** An amount of fabric, however it was typed, as a number in the unit of fabric. */
const amountOf = (row: number) => q("KITCOST", { amounts: `$C$${row}`, prices: 1 });
const boltOf = (row: number) => q("KITCOST", { amounts: `$E$${row}`, prices: 1 });

function input(
  row: number,
  label: string,
  content: string | number,
  format?: Format,
  unit = "",
  choices?: Entry["choices"],
): Entry[] {
  return [
    { cell: `A${row}`, style: "label", content: label },
    { cell: `B${row}`, style: "input", content, ...(format ? { format } : {}), ...(choices ? { choices } : {}) },
    ...(unit ? [{ cell: `C${row}`, style: "unit", content: unit } satisfies Entry] : []),
  ];
}

function answer(row: number, label: string, content: string, style: Entry["style"] = "answer"): Entry[] {
  return [
    { cell: `E${row}`, style: "label", content: label },
    { cell: `H${row}`, style, content, format: "money" },
  ];
}

function prices(row: number, label: string, contents: string[], format: Format = "money"): Entry[] {
  return [
    { cell: `E${row}`, style: "label", content: label },
    ...across(`H${row}`, contents, row === 13 ? "buy" : "answer", format),
  ];
}

const BOLT_ROWS = 8;

function bolts(): Sheet {
  const chosen = (column: string) =>
    `INDEX(Kit!$${column}$${FIRST}:$${column}$${LAST},MATCH($B$4,Kit!$B$${FIRST}:$B$${LAST},0))`;
  const spare = (columns: string[], formats: (Format | undefined)[], filled: (string | number)[][]) =>
    Array.from({ length: BOLT_ROWS - 1 }, (_, index) =>
      columns.map((column, c): Entry => ({
        cell: `${column}${9 + index}`,
        style: c === 0 ? "inputText" : "input",
        content: filled.at(index)?.[c],
        format: formats[c],
      })),
    ).flat();
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Cuts from bolts at hand" },
    ...lines("A2", ["One fabric, other cuts beside the kits, bolts of any length."], "lead"),
    { cell: "A4", style: "label", content: "Letter of the fabric" },
    { cell: "B4", style: "input", content: "D", choices: `Kit!$B$${FIRST}:$B$${LAST}` },
    { cell: "C4", style: "unit", content: `=${chosen("A")}` },
    ...heading("A6", "Cuts wanted", 3),
    ...heading("E6", "Bolts at hand", 3),
    ...across("A7", ["cut", `="length, "&${shopUnit(U).slice(1)}`, "how many"], "column"),
    ...across("E7", ["bolt", `="length, "&${shopUnit(U).slice(1)}`, "how many"], "column"),
    { cell: "A8", style: "answerText", content: "kits" },
    { cell: "B8", style: "answer", content: `=${chosen("C")}`, format: "amount" },
    { cell: "C8", style: "answer", content: "=Kit!B7", format: "count" },
    ...spare(["A", "B", "C"], [undefined, "amount", "count"], CUTS),
    { cell: "E8", style: "inputText", content: "full bolts" },
    { cell: "F8", style: "input", content: 15, format: "amount" },
    { cell: "G8", style: "input", content: 3, format: "count" },
    ...spare(["E", "F", "G"], [undefined, "amount", "count"], BOLTS),
    ...heading("A18", "Which cuts from which bolt", 7),
    {
      cell: "A19",
      style: "tableHead",
      content: `=${q("BOLTPLAN", { list: "A8:C15", bolts: "E8:G15", generosity: GENEROSITY })}`,
      room: { rows: 16, columns: [undefined, "amount", undefined, "decimal"] },
    },
    ...lines("A36", [
      "Every cut is as long as stated and the generosity of the sheet Kit.",
      "Fewest bolts are opened; of equal ways the one that leaves least is taken.",
    ]),
  ];
  return {
    name: "Bolts",
    widths: [22, 13, 30, 10, 18, 13, 11],
    entries,
    frozen: { rows: 2 },
    print: "one page",
  };
}

const CUTS: (string | number)[][] = [
  ["sample for the shop", 1.5, 1],
  ["by the yard, promised", 3, 1],
];
const BOLTS: (string | number)[][] = [
  ["opened bolt", 9.5, 1],
  ["remnant", 3.25, 1],
];

const PIECES: (string | number)[][] = [
  ["logs", 2.5, 6.5, 24],
  ["bars", 2.5, 12.5, 12],
  ["centers", 4.5, 4.5, 12],
];

function roll(): Sheet {
  const list = "$A$14:$E$21";
  const strips = { list, strips: "$B$5", stripWidth: "$B$6", length: "$B$7" };
  const plan = { width: "$B$8", squaring: "$B$9", step: "$B$10" };
  const rest = { list: q("STRIPSFIRST", strips), ...plan };
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "A roll instead of yardage" },
    ...lines("A2", ["The pieces of one kit, cut from yardage alone, or from a roll of strips first."], "lead"),
    ...heading("A4", "Yours to change", 5),
    ...input(5, "Strips in a roll", 40, "count", "strips"),
    ...input(6, "Width of a strip", 2.5, "length", inUnits(U)),
    ...input(7, "Usable length of a strip", 42, "length", inUnits(U)),
    ...input(8, "Usable width of the yardage", 42, "length", inUnits(U)),
    ...input(9, "Lost squaring an end", 1, "length", inUnits(U)),
    ...input(10, "The shop cuts in steps of", 0.125, "amount", shopUnit(U), STEPS),
    { cell: "D5", style: "label", content: "A roll costs" },
    { cell: "E5", style: "input", content: 21, format: "money" },
    { cell: "D6", style: "label", content: "Yardage costs" },
    { cell: "E6", style: "input", content: 7.4, format: "money" },
    ...heading("A12", "Pieces of one kit, cut size; what is wanted first from the strips comes first", 5),
    ...across("A13", ["piece", "width", "height", "count", "grain"], "column"),
    ...Array.from({ length: 8 }, (_, index): Entry[] => {
      const row = 14 + index;
      const piece = PIECES[index] ?? [];
      return [
        { cell: `A${row}`, style: "inputText", content: piece[0] },
        { cell: `B${row}`, style: "input", content: piece[1], format: "length" },
        { cell: `C${row}`, style: "input", content: piece[2], format: "length" },
        { cell: `D${row}`, style: "input", content: piece[3], format: "count" },
        { cell: `E${row}`, style: "inputText", choices: ["any", "upright"] },
      ];
    }).flat(),
    ...heading("A23", "From the roll first", 6),
    {
      cell: "A24",
      style: "tableHead",
      content: `=${q("STRIPSFIRST", strips)}`,
      room: { rows: 11, columns: [undefined, "length", "length", "count", undefined, "count"] },
    },
    ...heading("A36", "What changes", 6),
    ...across("A37", ["one kit", "yardage", "roll first", "change"], "column"),
    { cell: "A38", style: "label", content: "Strips of the roll" },
    ...across("B38", [0, `=${stripsUsed}`, "=C38-B38"], "answer", "count"),
    { cell: "A39", style: "label", content: `="Yardage to buy, "&${shopUnit(U).slice(1)}` },
    ...across(
      "B39",
      [`=${q("PLANFABRIC", { list, ...plan })}`, `=IF(${left}=0,0,${q("PLANFABRIC", rest)})`, "=C39-B39"],
      "answer",
      "amount",
    ),
    { cell: "A40", style: "label", content: "Cost of the yardage" },
    ...across("B40", ["=B39*$E$6", "=C39*$E$6", "=C40-B40"], "answer", "money"),
    { cell: "A41", style: "label", content: "Cost of the strips used" },
    ...across("B41", [0, "=C38/$B$5*$E$5", "=C41-B41"], "answer", "money"),
    { cell: "A42", style: "label", content: "Both" },
    ...across("B42", ["=B40+B41", "=C40+C41", "=C42-B42"], "buy", "money"),
    {
      cell: "A43",
      style: "note",
      content:
        '=IF(C38=0,"No piece is as wide as a strip: the roll is of no use here.","A roll serves "&INT($B$5/C38)&" kits. "&IF(D42<0,"The roll is cheaper for a kit by ",IF(D42>0,"The roll is dearer for a kit by ","Both cost the same, "))&TEXT(ABS(D42),"0.00")&".")',
    },
    ...lines("A44", [
      "Strips left on a roll go into other kits; pinked edges are taken as part of the width.",
      "A strip is one color: sort the pieces so that each kit has the colors it should.",
    ]),
  ];
  return { name: "Roll", widths: [30, 12, 12, 14, 12, 14], entries, frozen: { rows: 2 }, print: "one page" };
}

const stripsUsed = 'INDEX($F$24:$F$34,MATCH("strips used",$A$24:$A$34,0))';

/** Pieces that must come from yardage. */
const left = "SUM($D$25:$D$34)";

function card(): Sheet {
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "=Kit!B5" },
    ...lines("A2", ["Packing list, one page for each bag"], "lead"),
    ...across("A4", ["", "letter", "fabric", "cut"], "column"),
    ...ROWS.flatMap((row, index): Entry[] => {
      const at = 5 + index;
      return [
        ...tickRow(`A${at}`),
        { cell: `B${at}`, style: "answerText", content: `=Kit!B${row}&""` },
        { cell: `C${at}`, style: "answerText", content: `=Kit!A${row}&""` },
        {
          cell: `D${at}`,
          style: "buy",
          content: `=IF(Kit!C${row}="","",${q("FABRICTEXT", { amount: `Kit!$C$${row}` })})`,
        },
      ];
    }),
    ...["Pattern", "Label with letters", "Bag"].flatMap((what, index): Entry[] => [
      ...tickRow(`A${15 + index}`),
      { cell: `B${15 + index}`, style: "answerText" },
      { cell: `C${15 + index}`, style: "answerText", content: what },
      { cell: `D${15 + index}`, style: "buy", content: 1, format: "count" },
    ]),
    ...Array.from({ length: 3 }, (_, index): Entry[] => [
      ...tickRow(`A${18 + index}`),
      ...["B", "C", "D"].map((column): Entry => ({ cell: `${column}${18 + index}`, style: "inputText" })),
    ]).flat(),
    { cell: "C22", style: "label", content: "Price" },
    { cell: "D22", style: "buy", content: "=Kit!B16", format: "money" },
    {
      cell: "A24",
      style: "note",
      content: `="Each cut is at least "&${q("LENGTHTEXT", { length: GENEROSITY })}&" "&${U}&" longer than stated. Not washed. Amounts are for prints that may be turned."`,
    },
    ...lines("A25", ["Fabrics carry their letter: the same in the pattern and on the bag."]),
    ...lines("A27", ["Packed by: ______________________     Date: ______________"], "label"),
  ];
  return { name: "Packing list", widths: [5, 9, 50, 20], entries, print: "one page" };
}

const description = "What a kit costs, what to ask for it, how many bolts to order, and whether a roll pays.";

export const kitCosting: PlanningWorkbook = {
  name: "kit-costing",
  title: "Kit costing",
  description,
  build: () => ({
    name: "kit-costing",
    title: "Kit costing",
    description,
    units: U,
    sheets: [kit(), bolts(), roll(), card()],
  }),
};
