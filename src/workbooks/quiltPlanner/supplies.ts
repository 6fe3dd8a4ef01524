/** The supply list, on one page. */
import { across, type Entry, heading, lines, type Sheet } from "../book";
import {
  AT_THE_IRON,
  BLADES,
  exactText,
  INFANTS,
  isMetric,
  lengthOrUsual,
  NEEDLES,
  panelWord,
  sameName,
  TITLE_ROW,
  unitWord,
  yard,
} from "../shared";
import {
  BINDING_FABRIC,
  CUTTING,
  FABRIC_ROWS,
  FAULT,
  MISSING,
  q,
  SEAM,
  SQUARING,
  toBuy,
  U,
  UNLISTED,
  unlessMissing,
} from "./cells";

export function supplies(): Sheet {
  const rows = FABRIC_ROWS.map((fabric, index): Entry[] => {
    const row = 7 + index;
    const letter = `Design!B${fabric}`;
    return [
      { cell: `A${row}`, style: "tick" },
      { cell: `B${row}`, style: "answerText", content: `=${letter}&""` },
      { cell: `C${row}`, style: "answerText", content: `=Design!A${fabric}&""` },
      { cell: `D${row}`, style: "answerText", content: `=IF(${letter}="","",${uses(letter)})` },
      { cell: `E${row}`, style: "answer", format: "length", content: `=${widthFrom(`Design!$C$${fabric}`, letter)}` },
      { cell: `F${row}`, style: "buy", content: `=${toBuy(fabric)}` },
    ];
  }).flat();
  const list: [what: string, use: string, amount: string, width?: string][] = [
    [
      "Backing",
      `=${unlessMissing(`Design!H8&" "&${panelWord("Design!H8")}`)}`,
      `=${unlessMissing(q("FABRICTEXT", { amount: "Design!H9" }))}`,
      `=${lengthOrUsual("Design!$B$30", "fabricWidth", U)}`,
    ],
    [
      "Batting",
      `=${unlessMissing(`"at least "&${size("Design!$H$10", "Design!$I$10")}`)}`,
      `=${unlessMissing(`Design!H11&" "&${size("Design!$I$11", "Design!$J$11")}`)}`,
    ],
    [
      "Binding",
      `=${unlessMissing(`Design!H13&" strips, counted with the fabric"`)}`,
      `=IF(${BINDING_FABRIC}="","no fabric is named","with "&${BINDING_FABRIC})`,
    ],
    [
      "Thread for piecing",
      "joining seams; blocks need more",
      `=${unlessMissing(`ROUNDUP(Design!H15/${yard(U)},0)&IF(${isMetric(U)}," m"," yd")`)}`,
    ],
  ];
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Supply list" },
    {
      cell: "A2",
      style: "lead",
      content: `=IF(Design!B5="","Quilt",Design!B5)&${unlessMissing(`", finished "&${size("Design!$H$6", "Design!$I$6")}&", blocks "&${inWords("Design!$B$9")}&${unit}`)}`,
    },
    { cell: "A3", style: "caution", content: `=${MISSING}&${FAULT}&${UNLISTED}` },
    ...heading("A4", "To buy, in shop cuts", 6),
    ...across("A6", ["", "letter", "what", "for", `="width, "&${unitWord(U)}`, "buy"], "column"),
    ...rows,
    ...list.flatMap(([what, use, amount, width], index): Entry[] => [
      { cell: `A${13 + index}`, style: "tick" },
      { cell: `B${13 + index}`, style: "answerText" },
      { cell: `C${13 + index}`, style: "answerText", content: what },
      { cell: `D${13 + index}`, style: "answerText", content: use },
      { cell: `E${13 + index}`, style: "answer", format: "length", content: width },
      { cell: `F${13 + index}`, style: "buy", content: amount },
    ]),
    ...Array.from({ length: 3 }, (_, index): Entry[] => [
      { cell: `A${17 + index}`, style: "tick" },
      ...["B", "C", "D", "E", "F"].map((column): Entry => ({ cell: `${column}${17 + index}`, style: "inputText" })),
    ]).flat(),
    ...heading("A21", "Tools", 6),
    ...[
      "Rotary cutter, mat, ruler at least 24 in long",
      "Sewing machine with a quarter-inch foot, pins",
      "Iron and board",
    ].flatMap((tool, index): Entry[] => [
      { cell: `A${22 + index}`, style: "tick" },
      { cell: `B${22 + index}`, style: "item", content: tool },
    ]),
    ...heading("A26", "These amounts assume", 6),
    ...lines("A27", ["Usable widths as listed: without selvages, measured."]),
    {
      cell: "A28",
      style: "note",
      content: `="Seam "&${inWords(SEAM, "seam")}&${unit}&"; "&${inWords(SQUARING, "none")}&${unit}&" lost squaring each fabric, "&${inWords("Design!$B$39", "none")}&${unit}&" more for miscuts; nothing for shrinking."`,
    },
    ...lines("A29", [
      "Not washed. One-way prints and prints to be matched need more: ask before buying.",
      "One letter stands for one fabric, here, in the cutting list and on the bags.",
      "Leave borders uncut until the quilt is measured.",
    ]),
    ...lines("A33", [BLADES, AT_THE_IRON, NEEDLES, INFANTS], "caution"),
  ];
  return { name: "Supply list", widths: [4, 7, 26, 38, 10, 21], entries, print: "one page", heights: TITLE_ROW };
}

/** A column of the cutting list. */
const inList = (column: string) => `Cutting!$${column}$${CUTTING.first + 1}:$${column}$${CUTTING.last}`;

/** What a fabric is for, in words, from the cutting list. */
function uses(letter: string): string {
  const pieces = (use: string) => `COUNTIFS(${inList("A")},TRIM(${letter}),${inList("F")},"${use}")`;
  const others = ["sashing", "cornerstone", "border"];
  const words: [string, string][] = [
    ["blocks", `COUNTIF(${inList("A")},TRIM(${letter}))-${others.map(pieces).join("-")}`],
    ...others.map((use): [string, string] => [use === "cornerstone" ? "cornerstones" : use, pieces(use)]),
    ["binding", `IF(${sameName(BINDING_FABRIC, letter)},1,0)`],
  ];
  return `MID(${words.map(([word, count]) => `IF(${count}>0,", ${word}","")`).join("&")},3,99)`;
}

/** A usable width where a letter is given. */
function widthFrom(cell: string, letter: string): string {
  return `IF(${letter}="","",${lengthOrUsual(cell, "fabricWidth", U)})`;
}

/** A length as it was given, or the usual one, without its unit. */
function inWords(cell: string, usual?: Parameters<typeof lengthOrUsual>[1]): string {
  return exactText(usual === undefined ? q("LENGTH", { length: cell }) : lengthOrUsual(cell, usual, U), U);
}

/** The unit, behind a text. */
const unit = `" "&${unitWord(U)}`;

function size(width: string, length: string): string {
  return `${inWords(width)}&" × "&${inWords(length)}&${unit}`;
}
