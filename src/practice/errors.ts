/** A plain sentence for each error that the engine itself gives. */

const SENTENCES: Record<string, string> = {
  "#DIV/0!": "Something is divided by 0 or by an empty cell.",
  "#VALUE!": "A value is of the wrong kind, such as text where a number is needed.",
  "#N/A": "No value was found.",
  "#NUM!": "A number is too large, too small or not allowed here.",
  "#REF!": "A cell or sheet that the formula reads is not there.",
  "#SPILL!": "The answer is a table and needs room: empty the cells below and to the right of the formula, or move it.",
  "#CYCLE!": "The formula reads its own cell, directly or by way of others.",
  "#CALC!": "This cannot be worked out.",
  "#NULL!": "The ranges have no cell in common.",
};

export const NOT_A_FORMULA =
  "This cannot be read as a formula: check that brackets and quotes are closed and that commas stand between arguments.";

/** Whether a cell's text is an error. */
export function isErrorCode(value: unknown): value is string {
  return typeof value === "string" && (value === "#NAME?" || Object.hasOwn(SENTENCES, value));
}

/** What an error means where no function said more. */
export function engineSentence(code: string, formula: string): string {
  if (code === "#NAME?") return nameSentence(formula);
  return SENTENCES[code] ?? NOT_A_FORMULA;
}

function nameSentence(formula: string): string {
  const withoutText = formula.replace(/"[^"]*"/g, "").replace(/\{[^{}]*\}/g, "");
  if (withoutText.includes(";")) return "Separate arguments with commas here, not with semicolons.";
  return 'The formula holds a name that is not known here: check the spelling. Text needs quotes, such as "2 1/2".';
}
