/** The supply list, on one page. */
import { across, type Entry, heading, lines, type Sheet } from "../book";
import { AT_THE_IRON, BLADES, INFANTS, NEEDLES, panelWord } from "../shared";
import { CUTTING, FABRIC_ROWS, q, SEAM, SQUARING, U } from "./cells";

export function supplies(): Sheet {
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
    ["", "Backing", `=Design!H8&" "&${panelWord("Design!H8")}`, `=${q("FABRICTEXT", { amount: "Design!H9" })}`],
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
    ...lines("A33", [BLADES, AT_THE_IRON, NEEDLES, INFANTS], "caution"),
  ];
  return { name: "Supply list", widths: [4, 7, 26, 38, 21], entries, print: "one page" };
}

/** A column of the cutting list. */
const inList = (column: string) => `Cutting!$${column}$${CUTTING.first + 1}:$${column}$${CUTTING.last}`;

/** What a fabric is for, in words, from the cutting list. */
function uses(letter: string): string {
  const pieces = (use: string) => `COUNTIFS(${inList("A")},${letter},${inList("F")},"${use}")`;
  const others = ["sashing", "cornerstone", "border"];
  const words: [string, string][] = [
    ["blocks", `COUNTIF(${inList("A")},${letter})-${others.map(pieces).join("-")}`],
    ...others.map((use): [string, string] => [use === "cornerstone" ? "cornerstones" : use, pieces(use)]),
    ["binding", `IF(Design!$B$35=${letter},1,0)`],
  ];
  return `MID(${words.map(([word, count]) => `IF(${count}>0,", ${word}","")`).join("&")},3,99)`;
}

function size(width: string, length: string): string {
  return `${q("LENGTHTEXT", { length: width })}&" × "&${q("LENGTHTEXT", { length })}&" "&${U}`;
}
