/** Pattern checker: what a printed pattern claims, and which of it cannot be right. */
import { across, type Entry, heading, lines, type Sheet } from "../book";
import type { PlanningWorkbook } from "../index";
import { AT_THE_IRON, BLADES, input, inUnits, NEEDLES, shopUnit, STEPS, UNITS } from "../shared";
import { FABRIC_VERDICTS, fabricSheet } from "./fabric";
import { finishingRules } from "./finishing";
import { pieceRules } from "./pieces";
import {
  type Rule,
  RULE_ROWS,
  ruleEntries,
  ruleHeights,
  SAME_TEXT,
  U,
  UNCHECKED,
  verdicts,
  WIDTHS,
  WRONG,
} from "./rules";

const TOP = 4;

/** Rules on a printed page. */
const ON_A_PAGE = 4;

function rulesSheet(name: string, lead: string, rules: readonly Rule[]): Sheet {
  const pages = Math.trunc((rules.length - 1) / ON_A_PAGE);
  return {
    name,
    widths: WIDTHS,
    entries: [
      { cell: "A1", style: "title", content: name },
      ...lines("A2", [lead], "lead"),
      ...ruleEntries(rules, TOP),
    ],
    frozen: { rows: 2, columns: 1 },
    print: "fit width",
    landscape: true,
    repeat: "1:3",
    heights: ruleHeights(rules, TOP),
    breaks: Array.from({ length: pages }, (_, index) => TOP - 1 + (index + 1) * ON_A_PAGE * RULE_ROWS),
  };
}

function patternSheet(): Sheet {
  const tallies: [string, string][] = [
    ...pieceRules.map(({ title }, index): [string, string] => [title, `Pieces!${verdicts(index, TOP)}`]),
    ...finishingRules.map(({ title }, index): [string, string] => [title, `Finishing!${verdicts(index, TOP)}`]),
    ...FABRIC_VERDICTS.map(([title, range]): [string, string] => [title, `Fabric!${range}`]),
  ];
  const first = 24;
  const last = first + tallies.length - 1;
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Pattern checker" },
    ...lines("A2", ["Type what the pattern claims into the yellow cells of Pieces, Finishing and Fabric."], "lead"),
    ...heading("A4", "Yours to change", 5),
    ...input(5, "Pattern, page, size checked", "Star quilt, lap size"),
    ...input(6, "Units of bare numbers", "in", undefined, "", UNITS),
    ...input(7, "Seam allowance", 0.25, "length", inUnits(U)),
    ...input(8, "Usable width it states", 42, "length", inUnits(U)),
    ...input(9, "Lost squaring an end", 0, "length", inUnits(U)),
    ...input(10, "The shop cuts in steps of", 0.125, "amount", shopUnit(U), STEPS),
    ...heading("A12", "Verdict", 5),
    {
      cell: "A13",
      style: "verdict",
      content: `=IF(C${last + 1}>0,C${last + 1}&" of "&B${last + 1}&" claims cannot be right. ",IF(D${last + 1}>0,"","Nothing that was typed is wrong."))&IF(D${last + 1}=0,"","Not checked: "&D${last + 1}&". See the rules below.")`,
    },
    ...heading("A15", "How to read it", 5),
    ...lines("A16", [
      "“Cannot be right” is arithmetic, not taste: the pieces do not come out, or do not fit.",
      "“OK” says that a claim can be right, not that the pattern is good. Check each size that it offers.",
      `="A size counts as the same within "&${SAME_TEXT}&": rulers show no less. Sizes are for the seam above."`,
      "Scant seams: sew three strips of 1 1/2 in; they must measure 3 1/2 in, the middle one 1 in.",
    ]),
    ...heading("A21", "Every rule", 5),
    ...across("A23", ["rule", "checked", "wrong", "not checked"], "column"),
    ...tallies.flatMap(([title, range], index): Entry[] => {
      const row = first + index;
      return [
        { cell: `A${row}`, style: "answerText", content: title },
        { cell: `B${row}`, style: "answer", content: `=C${row}+COUNTIF(${range},"OK*")`, format: "count" },
        { cell: `C${row}`, style: "answer", content: `=COUNTIF(${range},"${WRONG}*")`, format: "count" },
        { cell: `D${row}`, style: "answer", content: `=COUNTIF(${range},"${UNCHECKED}*")`, format: "count" },
        { cell: `E${row}`, style: "unit", content: `=IF(C${row}+D${row}=0,"","look there")` },
      ];
    }),
    { cell: `A${last + 1}`, style: "answerText", content: "All rules" },
    { cell: `B${last + 1}`, style: "buy", content: `=SUM(B${first}:B${last})`, format: "count" },
    { cell: `C${last + 1}`, style: "buy", content: `=SUM(C${first}:C${last})`, format: "count" },
    { cell: `D${last + 1}`, style: "buy", content: `=SUM(D${first}:D${last})`, format: "count" },
    ...lines(`A${last + 3}`, [BLADES, AT_THE_IRON, NEEDLES], "caution"),
  ];
  return { name: "Pattern", widths: [70, 20, 9, 13, 12], entries, frozen: { rows: 2 }, print: "one page" };
}

const description = "Type a printed pattern's claims and see which cannot be right, and by how much.";

export const patternChecker: PlanningWorkbook = {
  name: "pattern-checker",
  title: "Pattern checker",
  description,
  build: () => ({
    name: "pattern-checker",
    title: "Pattern checker",
    description,
    units: U,
    sheets: [
      patternSheet(),
      rulesSheet("Pieces", "Patches, units and strips. Fill a row; the verdict appears at its end.", pieceRules),
      rulesSheet("Finishing", "Sizes of the quilt, borders, backing and binding.", finishingRules),
      fabricSheet(),
    ],
  }),
};
