/** The sheet Bolts: cuts from the bolts at hand. */
import { across, type Entry, type Format, heading, lines, type Sheet } from "../book";
import { BLADES, shopUnit, unlessTooLong } from "../shared";
import { FIRST, GENEROSITY, LAST, q, U } from "./cells";

const BOLT_ROWS = 8;

const CUTS: (string | number)[][] = [
  ["sample for the shop", 1.5, 1],
  ["by the yard, promised", 3, 1],
];

const BOLTS: (string | number)[][] = [
  ["opened bolt", 9.5, 1],
  ["remnant", 3.25, 1],
];

export function bolts(): Sheet {
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
    ...heading("A17", "Which cuts from which bolt", 7),
    { cell: "A18", style: "note", content: `=${unlessTooLong("A19")}` },
    {
      cell: "A19",
      style: "tableHead",
      content: `=${q("BOLTPLAN", { list: "A8:C15", bolts: "E8:G15", generosity: GENEROSITY })}`,
      room: { rows: 41, columns: [undefined, "amount", undefined, "decimal"] },
    },
    ...lines("A61", [
      "Every cut is as long as stated and the generosity of the sheet Kit.",
      "Fewest bolts are opened; of equal ways the one that leaves least is taken.",
    ]),
    ...lines("A64", [BLADES], "caution"),
  ];
  return {
    name: "Bolts",
    widths: [22, 13, 30, 10, 18, 13, 11],
    entries,
    frozen: { rows: 2 },
    print: "one page",
  };
}
