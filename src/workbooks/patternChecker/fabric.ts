/** Amounts: whether the cuts come out of them, whether a fabric's uses add up, whether its name is in the list. */
import { across, type Entry, heading, lines, type Sheet } from "../book";
import { amountIn, blank, countOf, inUnits, sameName, shopUnit, unitWord } from "../shared";
import { q, SQUARING, STEP, U, UNCHECKED, verdictOr, WIDTH, WRONG } from "./rules";

const GRAINS = ["any", "upright", "join", "along"];

/** Cuts of one fabric, spare rows included. */
const CUTS = 7;
const FABRIC_ROWS = CUTS + 7;
const FABRICS = 3;
const TOP = 4;

interface Fabric {
  name: string;
  amount: number | undefined;
  width?: number;
  cuts: readonly (readonly (string | number)[])[];
}

const EXAMPLES: readonly Fabric[] = [
  {
    name: "cream",
    amount: 4.125,
    cuts: [["plain squares, page 3", 9.5, 9.5, 63]],
  },
  {
    name: "blue",
    amount: 1.5,
    width: 41,
    cuts: [
      ["star points, page 2", 2.875, 2.875, 72],
      ["star centers, page 2", 4.5, 4.5, 18],
      ["binding, page 8", 2.5, 40, 7, "any"],
    ],
  },
  { name: "", amount: undefined, cuts: [] },
];

const TOTALS_TOP = TOP + FABRICS * FABRIC_ROWS;
const TOTAL_ROWS = 10;
const FIRST_USE = TOTALS_TOP + 2;
const LAST_USE = FIRST_USE + TOTAL_ROWS - 1;
const USE_NAMES = `$A$${FIRST_USE}:$A$${LAST_USE}`;

/** Amounts of the uses as numbers; "?" where a use has none that can be read. */
const USE_AMOUNTS = `$E$${FIRST_USE}:$E$${LAST_USE}`;

const USES: readonly (readonly (string | number)[])[] = [
  ["cream", 4.125, "blocks", "cream", 4.125],
  ["blue", 0.875, "blocks", "blue", 1],
  ["blue", 0.625, "binding", "green", 0.5],
  ["stripe", 1.5, "border"],
];

/** What the sheet Pattern counts. */
export const FABRIC_VERDICTS: readonly [string, string][] = [
  ...Array.from({ length: FABRICS }, (_, index): [string, string] => [
    `Cuts of fabric ${index + 1} come out of its amount`,
    `$F$${TOP + index * FABRIC_ROWS + 3}:$F$${TOP + index * FABRIC_ROWS + 3}`,
  ]),
  ["Uses of one fabric add up to its amount", `$I$${FIRST_USE}:$I$${LAST_USE}`],
  ["Every fabric is in the supply list under one name", `$D$${FIRST_USE}:$D$${LAST_USE}`],
];

export function fabricSheet(): Sheet {
  return {
    name: "Fabric",
    widths: [27, 13, 13, 29, 12, 14, 13, 13, 44],
    entries: [
      { cell: "A1", style: "title", content: "Fabric" },
      ...lines(
        "A2",
        ["List every cut of a fabric, all uses together, and the amount that the pattern asks for."],
        "lead",
      ),
      ...EXAMPLES.flatMap((fabric, index) => fabricEntries(fabric, index, TOP + index * FABRIC_ROWS)),
      ...totals(),
    ],
    frozen: { rows: 2 },
    print: "fit width",
    landscape: true,
    repeat: "1:3",
    breaks: [TOTALS_TOP - 1],
  };
}

function fabricEntries({ name, amount, width, cuts }: Fabric, index: number, top: number): Entry[] {
  const first = top + 3;
  const list = `$A$${first}:$E$${first + CUTS - 1}`;
  const stated = `IF($D$${top + 1}="",${WIDTH},$D$${top + 1})`;
  const cloth = { list, squaring: SQUARING };
  const spare = q("PLANSPARE", { ...cloth, amount: `$B$${top + 1}`, width: stated });
  const words = q("CHECKFABRIC", { ...cloth, amount: `$B$${top + 1}`, width: stated });
  const verdict = verdictOr(`IF(${spare}<0,"${WRONG}","OK: ")&${words}`, "see what the cells below say of these cuts");
  const isFree = `OR($B$${top + 1}="",COUNTA($D$${first}:$D$${first + CUTS - 1})=0)`;
  const needs = (at: string) =>
    `=IF(${isFree},"",${q("FABRICTEXT", { amount: q("PLANFABRIC", { ...cloth, width: at, step: STEP }) })})`;
  const widths: [string, string][] = [
    [`="at "&${q("LENGTHTEXT", { length: stated })}&" "&${unitWord(U)}&", as stated"`, stated],
    ["at 42 in", '"42 in"'],
    ["at 40 in, after washing", '"40 in"'],
  ];
  return [
    ...heading(`A${top}`, `="Fabric ${index + 1}: "&$A$${top + 1}`, 9),
    { cell: `A${top + 1}`, style: "inputText", content: name || undefined },
    { cell: `B${top + 1}`, style: "input", content: amount, format: "amount" },
    { cell: `C${top + 1}`, style: "unit", content: `=${shopUnit(U).slice(1)}&", width"` },
    { cell: `D${top + 1}`, style: "input", content: width, format: "length" },
    { cell: `E${top + 1}`, style: "unit", content: inUnits(U) },
    ...across(`A${top + 2}`, ["cut, page", "width", "height", "count", "grain"], "column"),
    { cell: `F${top + 2}`, style: "unit", content: "verdict" },
    ...Array.from({ length: CUTS }, (_, at): Entry[] => {
      const cut = cuts[at] ?? [];
      const row = first + at;
      return [
        { cell: `A${row}`, style: "inputText", content: cut[0] },
        { cell: `B${row}`, style: "input", content: cut[1], format: "length" },
        { cell: `C${row}`, style: "input", content: cut[2], format: "length" },
        { cell: `D${row}`, style: "input", content: cut[3], format: "count" },
        { cell: `E${row}`, style: "input", content: cut[4], choices: GRAINS },
      ];
    }).flat(),
    { cell: `F${first}`, style: "item", content: `=IF(${isFree},"",${verdict})` },
    { cell: `F${first + 2}`, style: "unit", content: "to buy, if the usable width is" },
    ...widths.flatMap(([label, at], line): Entry[] => [
      { cell: `F${first + 3 + line}`, style: "unit", content: label },
      { cell: `H${first + 3 + line}`, style: "answer", content: needs(at) },
    ]),
  ];
}

/** Uses of fabrics on the left, the supply list on the right. */
function totals(): Entry[] {
  const supplied = `$F$${FIRST_USE}:$F$${LAST_USE}`;
  return [
    ...heading(`A${TOTALS_TOP}`, "One fabric in several places: the uses on the left, the supply list on the right", 9),
    ...across(
      `A${TOTALS_TOP + 1}`,
      [
        "fabric, as named there",
        "amount",
        "use",
        "in the list?",
        `="in "&${shopUnit(U).slice(1)}`,
        "supply list",
        "amount",
        "uses need",
        "verdict",
      ],
      "column",
    ),
    ...Array.from({ length: TOTAL_ROWS }, (_, index): Entry[] => {
      const row = FIRST_USE + index;
      const use = USES[index] ?? [];
      return [
        { cell: `A${row}`, style: "inputText", content: use[0] },
        { cell: `B${row}`, style: "input", content: use[1], format: "amount" },
        { cell: `C${row}`, style: "inputText", content: use[2] },
        {
          cell: `D${row}`,
          style: "answerText",
          content: blank(`A${row}`, `IF(${countOf(supplied, `A${row}`)}>0,"OK","${WRONG}no such name")`),
        },
        {
          cell: `E${row}`,
          style: "answer",
          content: blank(`A${row}`, `IF(B${row}="","?",IFERROR(${amountIn(`B${row}`, U)},"?"))`),
          format: "amount",
        },
        { cell: `F${row}`, style: "inputText", content: use[3] },
        { cell: `G${row}`, style: "input", content: use[4], format: "amount" },
        {
          cell: `H${row}`,
          style: "answer",
          format: "amount",
          content: blank(`F${row}`, `SUMIF(${USE_NAMES},F${row},${USE_AMOUNTS})`),
        },
        { cell: `I${row}`, style: "answerText", content: blank(`F${row}`, sumVerdict(row)) },
      ];
    }).flat(),
    {
      cell: `A${LAST_USE + 2}`,
      style: "tableHead",
      content: `=IF(COUNT(${USE_AMOUNTS})=0,"",${q("CHECKTOTALS", { list: `$A$${FIRST_USE}:$B$${LAST_USE}` })})`,
      room: { rows: TOTAL_ROWS + 1, columns: [undefined, "amount", "count"] },
    },
  ];
}

function sumVerdict(row: number): string {
  const listed = amountIn(`G${row}`, U);
  const short = q("FABRICTEXT", { amount: `H${row}-${listed}` });
  const spare = q("FABRICTEXT", { amount: `${listed}-H${row}` });
  const unread = `SUMPRODUCT(--(${sameName(USE_NAMES, `F${row}`)}),1-ISNUMBER(${USE_AMOUNTS}))`;
  const verdict =
    `IF(H${row}>${listed}+0.001,"${WRONG}short by "&${short},` +
    `IF(H${row}>${listed}-0.001,"OK, with nothing to spare","OK, "&${spare}&" to spare"))`;
  return (
    `IF(${countOf(USE_NAMES, `F${row}`)}<>COUNTIF(${USE_NAMES},F${row}),"${UNCHECKED}type its name alike everywhere, without spaces round it",` +
    `IF(${unread}>0,"${UNCHECKED}a use has no amount, or one that is no length",` +
    `IF(H${row}=0,"OK, but nothing is cut from it",IF(G${row}="","${UNCHECKED}type the amount of the supply list",` +
    `${verdictOr(verdict, "the amount of the supply list is no length")}))))`
  );
}
