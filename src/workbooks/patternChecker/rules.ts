/** Rules that a written pattern must obey: what the maker types, what follows from it, and what a verdict says. */
import { across, callsIn, type Entry, type Format, heading, place } from "../book";
import { isMetric, lengthOrUsual, sameName, unitWord } from "../shared";

export const U = "Pattern!$B$6";
export const q = callsIn(U);

export const SEAM = "Pattern!$B$7";
export const WIDTH = "Pattern!$B$8";
export const SQUARING = "Pattern!$B$9";
export const STEP = "Pattern!$B$10";

/** A verdict that starts so counts as a mistake. */
export const WRONG = "cannot be right: ";

/** A verdict that starts so is of a claim that is neither right nor wrong. */
export const UNCHECKED = "cannot be checked: ";

/** A verdict, or what to do where there is none. */
export function verdictOr(verdict: string, where: string): string {
  return `IFERROR(${verdict},"${UNCHECKED}${where}")`;
}

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
  /** The column of a word that the rule itself understands, and no function: other words are refused. */
  word?: string;
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
  const words = wordsOf(rule);
  const verdict = verdictOr(rule.verdict(cell), "see what the column before this one says");
  const known = rule.word && `OR(${words.map((word) => sameName(cell(rule.word!), `"${word}"`)).join(",")})`;
  const refused = `"${UNCHECKED}“"&${rule.word && cell(rule.word)}&"” is not ${words.join(" or ")}"`;
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
      content: `=IF(${known ? `NOT(AND(NOT(${isFree}),${known}))` : isFree},"",${rule.answer(cell)})`,
    },
    {
      cell: `${VERDICT}${row}`,
      style: "answerText",
      content: `=IF(${isFree},"",${known ? `IF(${known},${verdict},${refused})` : verdict})`,
    },
  ];
}

/** The words of the drop-down list of the rule's own word. */
function wordsOf({ word, formats }: Rule): readonly string[] {
  const format = word && formats[CLAIMS.findIndex((column) => column === word)];
  return typeof format === "object" ? format : [];
}

export function lengthOf(cell: string): string {
  return q("LENGTH", { length: cell });
}

export function lengthText(length: string): string {
  return `${q("LENGTHTEXT", { length })}&" "&${unitWord(U)}`;
}

/** How far two sizes may differ and still be the same on a ruler, 1/16 in or 0.1 cm; a hair more, for sums of decimals. */
export const SAME = `IF(${isMetric(U)},0.10001,0.06251)`;

/** The same, in words. */
export const SAME_TEXT = `IF(${isMetric(U)},"0.1 cm","1/16 in")`;

/** The width typed beside a claim, or that of the sheet Pattern. */
export function widthOr(cell: string): string {
  return `IF(${cell}="",${lengthOrUsual(WIDTH, "fabricWidth", U)},${cell})`;
}

/** A size must be what follows from the others. */
export function sameSize(claimed: string, right: string, name = ""): string {
  const difference = `${lengthOf(claimed)}-${right}`;
  const said = `"${WRONG}${name}"&${lengthText(`ABS(${difference})`)}`;
  return `IF(ABS(${difference})<=${SAME},"OK",${said}&IF(${difference}<0," too small"," too large"))`;
}

/** A count must be at least what follows from the others. */
export function enough(claim: string, needed: string, things: string): string {
  const claimed = `1*${claim}`;
  return (
    `IF(${claimed}<${needed},"${WRONG}${things} short by "&(${needed}-${claimed}),` +
    `IF(${claimed}=${needed},"OK","OK, "&(${claimed}-${needed})&" more than needed"))`
  );
}

/** A count that cannot be exceeded. */
export function atMost(claim: string, possible: string, things: string): string {
  const claimed = `1*${claim}`;
  return (
    `IF(${claimed}>${possible},"${WRONG}${things} too many by "&(${claimed}-${possible}),` +
    `IF(${claimed}=${possible},"OK","OK, "&(${possible}-${claimed})&" to spare"))`
  );
}
