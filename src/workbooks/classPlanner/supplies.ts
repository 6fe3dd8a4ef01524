/** The supply list that is sent out, with a column for each size. */
import { across, type Entry, heading, lines, type Sheet } from "../book";
import { AT_THE_IRON, BLADES, exactText, INFANTS, inUnits, lengthOrUsual, NEEDLES, tickRow, unitWord } from "../shared";
import { extra, q, seam, SIZES, sizeText, squaring, U } from "./cells";

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

export function supplies(): Sheet {
  const columns = ["D", "E", "F"];
  const rows: [string, string, number][] = [
    ["A", "pinwheels", 13],
    ["B", "pinwheels", 14],
    ["C", "plain blocks", 15],
    ["D", "border and binding", 16],
    ["", "backing, any cotton", 17],
  ];
  const assumed: [string, string][] = [
    ["Seam allowance", seam],
    ["Of each fabric, for miscuts", extra],
    ["Of each fabric, to square it up", squaring],
  ];
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: '="Supply list: "&Class!C5' },
    { cell: "A2", style: "lead", content: '=Class!C7&". Questions: "&Class!C6&"."' },
    ...heading("A4", "Choose one size and buy, in shop cuts", 9),
    ...across("A5", ["", "letter", "fabric, and what it is for", ...SIZES.map(({ name }) => name)], "column"),
    ...across(
      "G5",
      SIZES.map(({ name }) => `="${name}, width, "&${unitWord(U)}`),
      "column",
    ),
    ...rows.flatMap(([letter, use, from], index): Entry[] => [
      ...tickRow(`A${6 + index}`),
      { cell: `B${6 + index}`, style: "answerText", ...(letter ? { content: letter } : {}) },
      { cell: `C${6 + index}`, style: "answerText", content: letter ? `=Lap!B${from}&" (${use})"` : use },
      ...columns.map((column, at): Entry => ({
        cell: `${column}${6 + index}`,
        style: "buy",
        // The backing is a number there, the others are text.
        content: letter
          ? `=${SIZES[at].name}!G${from}`
          : `=${q("FABRICTEXT", { amount: `${SIZES[at].name}!G${from}` })}`,
      })),
      ...SIZES.map(({ name }, at): Entry => ({
        cell: `${"GHI"[at]}${6 + index}`,
        style: "answer",
        content: `=${lengthOrUsual(`${name}!$C$${from}`, "fabricWidth", U)}`,
        format: "length",
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
          content: `=${sheet}!C5&" × "&${sheet}!C6&", "&${exactText(q("LENGTH", { length: `${sheet}!$C$7` }), U)}&" "&${unitWord(U)}`,
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
    ...assumed.flatMap(([what, length], index): Entry[] => [
      { cell: `A${32 + index}`, style: "item", content: what },
      { cell: `D${32 + index}`, style: "answer", content: `=${length}`, format: "length" },
      { cell: `E${32 + index}`, style: "unit", content: inUnits(U) },
    ]),
    ...lines("A35", [
      "Usable widths are those beside the amounts; a fabric that is narrower takes more.",
      "Nothing is added for shrinking. One-way prints, and prints to be matched, need more: ask first.",
      "Instead: 40 strips of 2 1/2 in do not serve here; scraps do, if each gives one square for a unit.",
    ]),
    { cell: "A38", style: "note", content: '="You need: "&Class!C9&"."' },
    { cell: "A39", style: "note", content: '="It takes "&Class!C10&". "&Class!C8&"."' },
    ...lines("A41", [BLADES, AT_THE_IRON, NEEDLES, INFANTS], "caution"),
  ];
  return {
    name: "Supply list",
    widths: [5, 8, 40, 15, 15, 15, 9, 9, 9],
    heights: { 5: 27 },
    entries,
    print: "one page",
  };
}
