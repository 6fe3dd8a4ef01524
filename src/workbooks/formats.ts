/** Number formats, and formulas as files store them. */
import type { Entry, Format } from "./book";

/** Lengths and amounts reduce as a ruler reads: 4.5 is 4 1/2, not 4 4/8. Steps of 0.05 yd are twentieths: two digits. */
const PATTERNS: Record<Format, string> = {
  length: "# ??/??",
  amount: "# ??/??",
  count: "0",
  decimal: "0.00",
  money: "#,##0.00",
  percent: "0.0%",
  text: "@",
};

/** How lengths and amounts read where a workbook is set to centimeters and meters. */
export const METRIC_PATTERN = "0.0##";

export function patternOf(format: Entry["format"]): string | undefined {
  return format && PATTERNS[format];
}

/** Whether numbers of this format are fractions in inches and yards. */
export function isRuled(format: Entry["format"]): boolean {
  return format === "length" || format === "amount";
}

const CALL = /\bQUILT\.([A-Z]+)(?=\()/g;

/** A formula without its equals sign, its calls of the add-in spelled as files spell them. */
export function inFile(formula: string): string {
  return formula
    .slice(1)
    .split(/("(?:[^"]|"")*")/)
    .map((text, index) => (index % 2 === 0 ? text.replace(CALL, "_xldudf_QUILT_$1") : text))
    .join("");
}

/** The QUILT functions that a formula calls, such as CUTSQUARE. */
export function quiltCalls(formula: string): string[] {
  return formula
    .split(/"(?:[^"]|"")*"/)
    .flatMap((text) => [...text.matchAll(CALL)])
    .map(([, name]) => name);
}
