/** Rules for sizes of the quilt, borders, backing and binding. */
import { amountIn, yard } from "../shared";
import { enough, lengthOf, q, type Rule, SAME, sameSize, SEAM, SQUARING, STEP, U, widthOr, WRONG } from "./rules";

const EDGES = ["none", "sashed"];
const SETTINGS = ["straight", "on point"];
const CORNERS = ["butted", "mitered", "cornerstones"];

/** Width and length must both be right. */
function bothSizes(width: [string, string], length: [string, string]): string {
  return (
    `IF(ABS(${lengthOf(width[0])}-${width[1]})<=${SAME},` +
    `${sameSize(length[0], length[1], "length ")},${sameSize(width[0], width[1], "width ")})`
  );
}

/** One value of a table that a function answers with. */
const at = (table: string, row: number, column: number) => `INDEX(${table},${row},${column})`;

export const finishingRules: readonly Rule[] = [
  {
    title: "Size of the top before borders",
    heads: ["across", "down", "block", "sashing", "outside", "width", "length"],
    formats: ["count", "count", "length", "length", EDGES, "length", "length"],
    asks: "width is",
    answerFormat: "length",
    examples: [
      ["Cover, lap size", 4, 5, 12, 4, "sashed", 68, 84],
      ["Cover, wall size", 3, 4, 12, 4, "sashed", 52, 66],
    ],
    needs: ["B", "C", "D", "G", "H"],
    answer: (cell) => at(topSize(cell), 1, 1),
    verdict: (cell) => bothSizes([cell("G"), cell("I")], [cell("H"), at(topSize(cell), 1, 2)]),
  },
  {
    title: "Size of a top on point, without sashing",
    heads: ["across", "down", "block", "", "set", "width", "length"],
    formats: ["count", "count", "length", undefined, SETTINGS, "length", "length"],
    asks: "width is",
    answerFormat: "decimal",
    examples: [["Page 6, on point", 4, 5, 10, undefined, "on point", 56.625, 70.75]],
    needs: ["B", "C", "D", "F", "G", "H"],
    answer: (cell) => at(pointSize(cell), 1, 1),
    verdict: (cell) => bothSizes([cell("G"), cell("I")], [cell("H"), at(pointSize(cell), 1, 2)]),
  },
  {
    title: "Size with a border: it counts twice",
    heads: ["width", "length", "border", "", "", "new width", "new length"],
    formats: ["length", "length", "length", undefined, undefined, "length", "length"],
    asks: "width is",
    answerFormat: "length",
    examples: [["Cover, finished quilt", 68, 84, 6, undefined, undefined, 80, 90]],
    needs: ["B", "C", "D", "G", "H"],
    answer: (cell) => at(q("BORDERSIZE", border(cell)), 1, 1),
    verdict: (cell) => bothSizes([cell("G"), cell("I")], [cell("H"), at(q("BORDERSIZE", border(cell)), 1, 2)]),
  },
  {
    title: "Borders as cut: top and bottom run across the sides, and every seam is paid for",
    heads: ["width", "length", "border", "corner", "", "sides", "top"],
    formats: ["length", "length", "length", CORNERS, undefined, "length", "length"],
    asks: "sides are",
    answerFormat: "length",
    examples: [["Page 7, outer border", 68, 84, 6, "butted", undefined, 84.5, 80]],
    needs: ["B", "C", "D", "E", "G", "H"],
    answer: (cell) => at(borderLengths(cell), 2, 3),
    verdict: (cell) =>
      `IF(ABS(${lengthOf(cell("G"))}-${cell("I")})<=${SAME},${sameSize(cell("H"), at(borderLengths(cell), 3, 3), "top ")},${sameSize(cell("G"), cell("I"), "sides ")})`,
  },
  {
    title: "Strips for a border, cut across and joined",
    heads: ["width", "length", "border", "corner", "fabric", "strips"],
    formats: ["length", "length", "length", CORNERS, "length", "count"],
    asks: "at least",
    answerFormat: "count",
    examples: [["Page 7, outer border", 60, 80, 6, "butted", 40, 8]],
    needs: ["B", "C", "D", "G"],
    answer: (cell) =>
      q("BORDERSTRIPS", { ...border(cell), corner: cell("E"), fabricWidth: widthOr(cell("F")), seam: SEAM }),
    verdict: (cell) => enough(cell("G"), cell("I"), "strips"),
  },
  {
    title: "Whole units along a border",
    heads: ["side", "unit", "", "", "", "units"],
    formats: ["length", "length", undefined, undefined, undefined, "count"],
    asks: "overhang",
    answerFormat: "length",
    examples: [["Page 7, piano keys", 66, 2, undefined, undefined, undefined, 33]],
    needs: ["B", "C", "G"],
    answer: (cell) => q("BORDERGAP", { side: cell("B"), unit: cell("C") }),
    verdict: (cell) =>
      `IF(${cell("I")}>${SAME},"${WRONG}units do not fit, they overhang; a spacer is needed",${enough(cell("G"), q("BORDERUNITS", { side: cell("B"), unit: cell("C") }), "units")})`,
  },
  {
    title: "Backing: the margin counts on every side, panels are whole",
    heads: ["width", "length", "margin", "", "fabric", "amount"],
    formats: ["length", "length", "length", undefined, "length", "amount"],
    asks: "at least",
    answerFormat: "amount",
    examples: [["Cover, backing", 80, 96, 4, undefined, 42, 5.25]],
    needs: ["B", "C", "G"],
    answer: (cell) =>
      q("BACKINGFABRIC", {
        width: cell("B"),
        length: cell("C"),
        margin: cell("D"),
        fabricWidth: widthOr(cell("F")),
        step: STEP,
        squaring: SQUARING,
      }),
    verdict: amountVerdict,
  },
  {
    title: "Binding strips: joins and the tail count",
    heads: ["width", "length", "strip", "", "fabric", "strips"],
    formats: ["length", "length", "length", undefined, "length", "count"],
    asks: "at least",
    answerFormat: "count",
    examples: [["Cover, binding", 60, 72, 2.5, undefined, 40, 7]],
    needs: ["B", "C", "G"],
    answer: (cell) =>
      q("BINDINGSTRIPS", { width: cell("B"), length: cell("C"), strip: cell("D"), fabricWidth: widthOr(cell("F")) }),
    verdict: (cell) => enough(cell("G"), cell("I"), "strips"),
  },
  {
    title: "A strip in one piece across the fabric",
    heads: ["length", "", "", "", "fabric", "", ""],
    formats: ["length", undefined, undefined, undefined, "length"],
    asks: "fabric has",
    answerFormat: "length",
    examples: [["Page 4, sashing", 41.5, undefined, undefined, undefined, 41]],
    needs: ["B"],
    answer: (cell) => lengthOf(widthOr(cell("F"))),
    verdict: (cell) =>
      `IF(${lengthOf(cell("B"))}>${cell("I")},"${WRONG}longer than the fabric is wide; join strips","OK")`,
  },
  {
    title: "Amounts and inches: thirds and decimals are often misread",
    heads: ["amount", "", "", "", "", "is said to be"],
    formats: ["amount", undefined, undefined, undefined, undefined, "length"],
    asks: "it is",
    answerFormat: "length",
    examples: [["Cover, fabric A", 3.375, undefined, undefined, undefined, undefined, 121.5]],
    needs: ["B", "G"],
    answer: (cell) => `${amountIn(cell("B"), U)}*${yard(U)}`,
    verdict: (cell) => sameSize(cell("G"), cell("I")),
  },
];

function topSize(cell: (column: string) => string): string {
  const outside = `IF(${cell("F")}="","none",${cell("F")})`;
  return q("TOPSIZE", { across: cell("B"), down: cell("C"), block: cell("D"), sashing: cell("E"), edge: outside });
}

function pointSize(cell: (column: string) => string): string {
  return q("TOPSIZE", { across: cell("B"), down: cell("C"), block: cell("D"), setting: cell("F") });
}

function border(cell: (column: string) => string) {
  return { width: cell("B"), length: cell("C"), border: cell("D") };
}

function borderLengths(cell: (column: string) => string): string {
  return q("BORDERLENGTHS", { ...border(cell), corner: cell("E"), seam: SEAM });
}

function amountVerdict(cell: (column: string) => string): string {
  const claimed = amountIn(cell("G"), U);
  return (
    `IF(${claimed}<${cell("I")}-0.001,"${WRONG}short by "&${q("FABRICTEXT", { amount: `${cell("I")}-${claimed}` })},` +
    `IF(${claimed}<${cell("I")}+0.001,"OK, with nothing to spare","OK, "&${q("FABRICTEXT", { amount: `${claimed}-${cell("I")}` })}&" to spare"))`
  );
}
