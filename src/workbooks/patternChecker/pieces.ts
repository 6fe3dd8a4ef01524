/** Rules for patches, units and strips. */
import { sameName, yard } from "../shared";
import {
  atMost,
  enough,
  lengthOf,
  lengthText,
  q,
  type Rule,
  SAME,
  sameSize,
  SEAM,
  SQUARING,
  U,
  widthOr,
  WRONG,
} from "./rules";

const UNITS_MADE = ["half square", "half square four", "half square eight", "hourglass", "geese", "tube"];
const EDGES = ["short edge", "long edge"];
const PLACES = ["side", "corner"];

export const pieceRules: readonly Rule[] = [
  {
    title: "Units that are trimmed: what is cut must give what they are trimmed to",
    heads: ["cut", "trimmed to", "", "made as"],
    formats: ["length", "length", undefined, UNITS_MADE],
    asks: "spare",
    answerFormat: "decimal",
    examples: [
      ["Page 2, units for the star", 3.875, 3.5, undefined, "half square"],
      ["Page 3, corner units", 4.5, 4.5, undefined, "half square"],
    ],
    needs: ["B", "C", "E"],
    answer: (cell) => q("CUTCHECK", { cut: cell("B"), trim: cell("C"), how: cell("E"), seam: SEAM }),
    verdict: (cell) =>
      `IF(${cell("I")}<-0.001,"${WRONG}comes out "&${lengthText(`-${cell("I")}`)}&" or more too small",IF(${cell("I")}<0.02,"OK, but nothing to trim: sew exactly","OK"))`,
  },
  {
    title: "Squares for triangles: which edge is known decides what is added",
    heads: ["finished", "known edge", "", "", "cut"],
    formats: ["length", EDGES, undefined, undefined, "length"],
    asks: "should be",
    answerFormat: "length",
    examples: [
      ["Page 2, setting squares", 6, "short edge", undefined, undefined, 6.875],
      ["Page 4, large triangles", 20, "long edge", undefined, undefined, 20.875],
    ],
    needs: ["B", "C", "F"],
    word: "C",
    answer: (cell) =>
      `IF(${sameName(cell("C"), '"long edge"')},${q("CUTQUARTERSQUARE", { finished: cell("B"), seam: SEAM })},${q("CUTHALFSQUARE", { finished: cell("B"), seam: SEAM })})`,
    verdict: (cell) => sameSize(cell("F"), cell("I")),
  },
  {
    title: "Patches in a row: every seam takes two allowances",
    heads: ["cut 1", "cut 2", "cut 3", "cut 4", "cut 5", "row is", ""],
    formats: ["length", "length", "length", "length", "length", "length"],
    asks: "should be",
    answerFormat: "length",
    examples: [
      ["Page 2, top row of the block", 2.5, 4.5, 2.5, undefined, undefined, 8.5],
      ["Page 2, four small squares", 2.5, 2.5, undefined, undefined, undefined, 5.5],
    ],
    needs: ["B", "G"],
    answer: (cell) => q("CHECKROW", { sizes: `${cell("B")}:${cell("F")}`, seam: SEAM }),
    verdict: (cell) => sameSize(cell("G"), cell("I")),
  },
  {
    title: "Finished and unfinished: they differ by two seams",
    heads: ["finished", "unfinished"],
    formats: ["length", "length"],
    asks: "should be",
    answerFormat: "length",
    examples: [["Cover, size of the block", 8, 8.5]],
    needs: ["B", "C"],
    answer: (cell) => q("CUTSQUARE", { finished: cell("B"), seam: SEAM }),
    verdict: (cell) => sameSize(cell("C"), cell("I")),
  },
  {
    title: "Patches of a grid: rounding each one adds up across the block",
    heads: ["block", "patches", "cut"],
    formats: ["length", "count", "length"],
    asks: "exactly",
    answerFormat: "decimal",
    examples: [["Page 5, five-patch", 12, 5, 2.875]],
    needs: ["B", "C", "D"],
    answer: (cell) => q("CUTSQUARE", { finished: `${lengthOf(cell("B"))}/${cell("C")}`, seam: SEAM }),
    verdict: (cell) => {
      const off = `${cell("C")}*(${lengthOf(cell("D"))}-${cell("I")})`;
      return `IF(ABS(${off})<=${SAME},"OK","${WRONG}the block comes out "&${lengthText(`ABS(${off})`)}&IF(${off}<0," too small"," too large"))`;
    },
  },
  {
    title: "Number of units: what is cut times what each gives",
    heads: ["pairs cut", "from each", "units"],
    formats: ["count", "count", "count"],
    asks: "makes",
    answerFormat: "count",
    examples: [
      ["Page 3, half-square units", 36, 2, 72],
      ["Page 3, geese", 18, 4, 80],
    ],
    needs: ["B", "C", "D"],
    answer: (cell) => `${cell("B")}*${cell("C")}`,
    verdict: (cell) => atMost(cell("D"), cell("I"), "units"),
  },
  {
    title: "Strips for patches, cut across the fabric",
    heads: ["patches", "along strip", "", "", "width", "strips"],
    formats: ["count", "length", undefined, undefined, "length", "count"],
    asks: "at least",
    answerFormat: "count",
    examples: [
      ["Page 3, plain squares", 63, 9.5, undefined, undefined, undefined, 16],
      ["Page 3, small squares", 72, 2.5, undefined, undefined, 40, 4],
    ],
    needs: ["B", "C", "G"],
    answer: (cell) =>
      q("STRIPSNEEDED", { count: cell("B"), patch: cell("C"), width: widthOr(cell("F")), squaring: SQUARING }),
    verdict: (cell) => enough(cell("G"), cell("I"), "strips"),
  },
  {
    title: "Strip sets for segments",
    heads: ["segments", "segment", "", "", "set length", "sets"],
    formats: ["count", "length", undefined, undefined, "length", "count"],
    asks: "at least",
    answerFormat: "count",
    examples: [["Page 4, checkerboard", 40, 1.5, undefined, undefined, 21, 3]],
    needs: ["B", "C", "G"],
    answer: (cell) =>
      q("STRIPSETS", { segments: cell("B"), segment: cell("C"), length: widthOr(cell("F")), squaring: SQUARING }),
    verdict: (cell) => enough(cell("G"), cell("I"), "strip sets"),
  },
  {
    title: "Patches from a fat quarter or another piece; type the smallest it may be",
    heads: ["piece wide", "piece long", "patch wide", "patch high", "", "patches"],
    formats: ["length", "length", "length", "length", undefined, "count"],
    asks: "at most",
    answerFormat: "count",
    examples: [["Page 1, from a fat quarter", 21, 17.5, 2.5, 2.5, undefined, 56]],
    needs: ["B", "C", "D", "E", "G"],
    answer: (cell) =>
      q("PIECESFROM", {
        fabric: `${lengthOf(cell("C"))}/${yard(U)}`,
        width: cell("D"),
        height: cell("E"),
        fabricWidth: cell("B"),
      }),
    verdict: (cell) => atMost(cell("G"), cell("I"), "patches"),
  },
  {
    title: "Triangles that set blocks on point",
    heads: ["block", "place", "", "", "", "cut"],
    formats: ["length", PLACES, undefined, undefined, undefined, "length"],
    asks: "should be",
    answerFormat: "length",
    examples: [
      ["Page 6, side triangles", 10, "side", undefined, undefined, undefined, 15.375],
      ["Page 6, corner triangles", 10, "corner", undefined, undefined, undefined, 7.5],
    ],
    needs: ["B", "C", "G"],
    word: "C",
    answer: (cell) =>
      `IF(${sameName(cell("C"), '"corner"')},${q("CUTCORNERTRIANGLE", { block: cell("B"), seam: SEAM })},${q("CUTSIDETRIANGLE", { block: cell("B"), seam: SEAM })})`,
    verdict: (cell) =>
      `IF(${lengthOf(cell("G"))}<${cell("I")}-${SAME},"${WRONG}"&${lengthText(`${cell("I")}-${lengthOf(cell("G"))}`)}&" too small",IF(${lengthOf(cell("G"))}>${cell("I")}+${SAME},"OK, cut generously and trimmed","OK"))`,
  },
  {
    title: "The same piece on two pages",
    heads: ["one page", "the other"],
    formats: ["length", "length"],
    asks: "differ by",
    answerFormat: "length",
    examples: [["Piece D, pages 2 and 5", 4.5, 4.5]],
    needs: ["B", "C"],
    answer: (cell) => `ABS(${lengthOf(cell("B"))}-${lengthOf(cell("C"))})`,
    verdict: (cell) => `IF(${cell("I")}<0.001,"OK","${WRONG}one piece has two sizes")`,
  },
  {
    title: "A metric column: cut size from the finished size and the metric seam, all in cm",
    heads: ["finished", "seam", "", "", "", "cut"],
    formats: ["decimal", "decimal", undefined, undefined, undefined, "decimal"],
    asks: "should be",
    answerFormat: "decimal",
    examples: [["Page 8, squares", 10, 0.75, undefined, undefined, undefined, 11.3]],
    needs: ["B", "C", "G"],
    answer: (cell) => q("CUTSQUARE", { finished: cell("B"), seam: cell("C"), units: '"cm"' }),
    verdict: (cell) =>
      `IF(ABS(${cell("G")}-${cell("I")})<=0.10001,"OK","${WRONG}"&TEXT(ROUND(ABS(${cell("G")}-${cell("I")})+0.000001,2),"0.0#")&" cm off")`,
  },
];
