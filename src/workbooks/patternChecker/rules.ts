/** Rules that a written pattern must obey: what the maker types, what follows from it, and what a verdict says. */
import { across, callsIn, type Entry, type Format, heading, place } from "../book";

export const U = "Pattern!$B$6";
export const q = callsIn(U);

export const SEAM = "Pattern!$B$7";
export const WIDTH = "Pattern!$B$8";
export const SQUARING = "Pattern!$B$9";
export const STEP = "Pattern!$B$10";

/** A verdict that starts so counts as a mistake. */
export const WRONG = "cannot be right: ";

/** Columns of what is claimed, and where the answer and the verdict stand. */
const CLAIMS = ["B", "C", "D", "E", "F", "G", "H"] as const;
export const ANSWER = "I";
export const VERDICT = "J";
export const WIDTHS = [27, 10.5, 10.5, 10, 11, 10, 9, 10, 12, 56];

/** Claims of each rule, spare rows included. */
export const ROWS = 4;

/** Rows from the heading of one rule to that of the next. */
export const RULE_ROWS = ROWS + 3;

type Content = string | number | undefined;

export interface Rule {
  title: string;
  /** Above the columns of claims; an empty text is a column without. */
  heads: readonly string[];
  /** How each claim reads, and its drop-down list. */
  formats: readonly (Format | readonly string[] | undefined)[];
  /** Column heading of the answer. */
  asks: string;
  answerFormat: Format;
  examples: readonly (readonly Content[])[];
  /** Columns that must be filled before there is an answer. */
  needs: readonly string[];
  /** Formulas without the equals sign, for the cells of a row. */
  answer(cell: (column: string) => string): string;
  verdict(cell: (column: string) => string): string;
}

/** Cells of the rules of a sheet, one below the other. */
export function ruleEntries(rules: readonly Rule[], top: number): Entry[] {
  return rules.flatMap((rule, index) => entriesOf(rule, top + index * RULE_ROWS));
}

/** Rows of column headings, which take two lines. */
export function ruleHeights(rules: readonly Rule[], top: number): Record<number, number> {
  return Object.fromEntries(rules.map((_, index) => [top + index * RULE_ROWS + 1, 27]));
}

/** Verdicts of a rule, as a range for counting. */
export function verdicts(index: number, top: number): string {
  const first = top + index * RULE_ROWS + 2;
  return `$${VERDICT}$${first}:$${VERDICT}$${first + ROWS - 1}`;
}

function entriesOf(rule: Rule, top: number): Entry[] {
  const heads = CLAIMS.map((_, index) => rule.heads[index] ?? "");
  return [
    ...heading(`A${top}`, rule.title, place(`${VERDICT}1`).column + 1),
    ...across(`A${top + 1}`, ["where in the pattern", ...heads, rule.asks, "verdict"], "column").filter(
      ({ content }) => content !== undefined,
    ),
    ...Array.from({ length: ROWS }, (_, index) => claim(rule, top + 2 + index, rule.examples[index] ?? [])).flat(),
  ];
}

function claim(rule: Rule, row: number, example: readonly Content[]): Entry[] {
  const cell = (column: string) => `$${column}$${row}`;
  const isFree = `OR(${rule.needs.map((column) => `${cell(column)}=""`).join(",")})`;
  return [
    { cell: `A${row}`, style: "inputText", content: example[0] },
    ...CLAIMS.flatMap((column, index): Entry[] => {
      if (!rule.heads[index]) return [];
      const format = rule.formats[index];
      const look = typeof format === "object" ? { choices: format } : { format };
      return [{ cell: `${column}${row}`, style: "input", content: example[index + 1], ...look }];
    }),
    {
      cell: `${ANSWER}${row}`,
      style: "answer",
      format: rule.answerFormat,
      content: `=IF(${isFree},"",${rule.answer(cell)})`,
    },
    {
      cell: `${VERDICT}${row}`,
      style: "answerText",
      content: `=IF(${isFree},"",${rule.verdict(cell)})`,
    },
  ];
}

export function lengthOf(cell: string): string {
  return q("LENGTH", { length: cell });
}

export function lengthText(length: string): string {
  return `${q("LENGTHTEXT", { length })}&" "&${U}`;
}

/** How far two sizes may differ and still be the same on a ruler. */
const SAME = 0.06;

/** A size must be what follows from the others. */
export function sameSize(claimed: string, right: string, name = ""): string {
  const difference = `${lengthOf(claimed)}-${right}`;
  const said = `"${WRONG}${name}"&${lengthText(`ABS(${difference})`)}`;
  return `IF(ABS(${difference})<${SAME},"OK",${said}&IF(${difference}<0," too small"," too large"))`;
}

/** A count must be at least what follows from the others. */
export function enough(claimed: string, needed: string, things: string): string {
  return (
    `IF(${claimed}<${needed},"${WRONG}${things} short by "&(${needed}-${claimed}),` +
    `IF(${claimed}=${needed},"OK","OK, "&(${claimed}-${needed})&" more than needed"))`
  );
}

/** A count that cannot be exceeded. */
export function atMost(claimed: string, possible: string, things: string): string {
  return (
    `IF(${claimed}>${possible},"${WRONG}${things} too many by "&(${claimed}-${possible}),` +
    `IF(${claimed}=${possible},"OK","OK, "&(${possible}-${claimed})&" to spare"))`
  );
}
