/** The sheet Kit: what a kit costs, what to ask for it, and how many bolts to order. */
import { across, type Entry, type Format, heading, lines, type Sheet } from "../book";
import { amountIn, blank, input, inUnits, lengthOrUsual, shopUnit, UNITS, yard } from "../shared";
import { cents, FIRST, GENEROSITY, LAST, q, ROWS, U } from "./cells";

/** The generosity of a cut, in the unit of fabric. */
const generous = `${lengthOrUsual(GENEROSITY, "none", U)}/${yard(U)}`;

/** Letters of fabrics that are in the kit and have no cost. */
const unpriced = ROWS.map((row) => `IF(AND($F$${row}<>"",$D$${row}=""),IF($B$${row}="","?",$B$${row})&" ","")`).join(
  "&",
);
const UNPRICED = "$E$10";

/** What needs the cost of every fabric. */
const ifPriced = (formula: string) => `=IF(${UNPRICED}="",${formula},"")`;

/** What, letter, in a kit, cost of one, length of a bolt. */
const FABRICS: [string, string, number, number, number][] = [
  ["Teal, leaf print", "A", 0.625, 7.4, 15],
  ["Ivory, solid", "B", 0.875, 5.2, 15],
  ["Mustard, small check", "C", 0.25, 7.4, 12],
  ["Backing, wide leaf print", "D", 1.5, 7.4, 15],
];

export function kit(): Sheet {
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
    { cell: "B5", style: "inputText", content: "Pinwheel runner" },
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
    ...answer(5, "Fabric, generosity included", ifPriced(`SUM(G${FIRST}:G${LAST})`)),
    ...answer(6, "Labor", `=${cents("B9/60*B10")}`),
    ...answer(7, "Pattern and packing", `=${cents("B11")}+${cents("B12")}`),
    ...answer(8, "Overhead", ifPriced(cents("B13*(H5+H6+H7)"))),
    ...answer(9, "Cost of a kit", ifPriced("SUM(H5:H8)"), "buy"),
    {
      cell: "E10",
      style: "caution",
      content: `=IF(${unpriced}="","","No cost is typed for fabric "&TRIM(${unpriced})&": costs and prices wait for it.")`,
    },
    ...heading("E11", "What to ask", 7),
    ...across("E12", ["a kit", "", "", "margin", "markup", "your price"], "column"),
    ...prices(13, "Price", [
      ifPriced(cents(q("PRICEFORMARGIN", { cost: "$H$9", margin: "$B$14" }))),
      ifPriced(cents(q("PRICEFORMARKUP", { cost: "$H$9", markup: "$B$15" }))),
      `=${cents("B16")}`,
    ]),
    ...prices(
      14,
      "Profit on a kit",
      ["H", "I", "J"].map((column) => ifPriced(cents(`${column}13-$H$9`))),
    ),
    ...prices(
      15,
      "Profit on all kits",
      ["H", "I", "J"].map((column) => ifPriced(`${column}14*$B$7`)),
    ),
    ...prices(
      16,
      "This is a margin of",
      ["H", "I", "J"].map((column) => ifPriced(`IF(${column}13=0,"",${column}14/${column}13)`)),
      "percent",
    ),
    ...prices(
      17,
      "This is a markup of",
      ["H", "I", "J"].map((column) => ifPriced(`IF($H$9=0,"",${column}14/$H$9)`)),
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
      const filled = `F${row}`;
      return [
        { cell: `A${row}`, style: "inputText", content: what },
        { cell: `B${row}`, style: "inputText", content: letter },
        { cell: `C${row}`, style: "input", content: amount, format: "amount" },
        { cell: `D${row}`, style: "input", content: cost, format: "money" },
        { cell: `E${row}`, style: "input", content: bolt, format: "amount" },
        {
          cell: `F${row}`,
          style: "answer",
          content: blank(`C${row}`, `IF(${amountOf(row)}=0,"",${amountOf(row)}+${generous})`),
          format: "decimal",
        },
        {
          cell: `G${row}`,
          style: "answer",
          content: blank(
            filled,
            `IF(D${row}="","",${cents(q("KITCOST", { amounts: `$F$${row}`, prices: `$D$${row}` }))})`,
          ),
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
          content: blank(`I${row}`, `I${row}*${boltOf(row)}-$B$7*F${row}`),
          format: "decimal",
        },
        {
          cell: `K${row}`,
          style: "answer",
          content: blank(`I${row}`, `IF(D${row}="","",${cents(`I${row}*${boltOf(row)}*D${row}`)})`),
          format: "money",
        },
      ];
    }),
    { cell: `A${LAST + 1}`, style: "label", content: "All fabrics" },
    { cell: `G${LAST + 1}`, style: "buy", content: ifPriced(`SUM(G${FIRST}:G${LAST})`), format: "money" },
    { cell: `I${LAST + 1}`, style: "buy", content: `=SUM(I${FIRST}:I${LAST})`, format: "count" },
    { cell: `K${LAST + 1}`, style: "buy", content: ifPriced(`SUM(K${FIRST}:K${LAST})`), format: "money" },
    ...heading("A35", "Assumed", 11),
    ...lines("A36", [
      "Cost is what the shop pays today, not what the bolt once cost: it must be bought again.",
      "Overhead is a part of fabric, labor, pattern and packing together. Taxes and card fees are not in it.",
      "Every line of money is rounded to cents, then added: what is shown adds up.",
      "Whole bolts are ordered. What is left over is not charged to the kits; sell it, or make more kits.",
      "Bolts are as long as their label says. Flaws in the cloth are not counted.",
      "The price for a margin is cost ÷ (1 − margin); the price for a markup is cost × (1 + markup). Round as you like.",
      "Who sells follows the tax, labeling and product-safety rules of the place.",
    ]),
  ];
  return {
    name: "Kit",
    widths: [29, 16, 10, 11, 11, 9, 12, 11, 13, 11, 12],
    entries,
    frozen: { rows: 2 },
    print: "one page",
    landscape: true,
  };
}

/** An amount of fabric, however it was typed, as a number in the unit of fabric. */
const amountOf = (row: number) => amountIn(`$C$${row}`, U);

const boltOf = (row: number) => amountIn(`$E$${row}`, U);

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
