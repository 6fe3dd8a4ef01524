/** Between what is typed in a form, what stands in a formula, and what the function is given. */
import type { FunctionEntry, ParameterEntry } from "./catalogue";
import { localFormula, localText, usualFormula, usualNumber } from "./decimals";

export type Units = "in" | "cm";

/** What is typed for each argument, by its name; units are the pane's, unless another cell holds them. */
export type Typed = Readonly<Record<string, string>>;

/** A cell, a range, a table's range or whole columns, on this page or on another one. */
const REFERENCE =
  /^(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(?:\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6}|#)?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3})$/iu;

const NUMBER = /^-?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?%?$/i;

export function isReference(text: string): boolean {
  return REFERENCE.test(text.trim());
}

/** Whether what is typed stands in a cell or follows from a formula. */
export function isElsewhere(typed: string): boolean {
  return typed.trim().startsWith("=") || isReference(typed);
}

/** The text of one argument in a formula; empty where it is left out. */
export function argumentText(parameter: ParameterEntry, typed: string): string {
  const text = typed.trim();
  if (text === "") return "";
  if (text.startsWith("=")) return usualFormula(text.slice(1).trim());
  if (parameter.takes.kind === "range" || isReference(text))
    return isReference(text) ? text.toUpperCase().replace(/^.*!/, (page) => text.slice(0, page.length)) : text;
  if (parameter.takes.kind === "flag") return text.toUpperCase();
  const isMeasure = parameter.takes.kind === "length" || parameter.takes.kind === "number";
  const plain = isMeasure ? usualNumber(text) : text;
  if (parameter.takes.kind !== "text" && NUMBER.test(plain)) return plain;
  return `"${plain.replaceAll('"', '""')}"`;
}

/** The call as it is typed into a cell. Arguments at the end that are left out are not written. */
export function formulaText({ id, parameters }: FunctionEntry, typed: Typed, units: Units): string {
  const given = parameters.map((parameter) =>
    parameter.takes.kind === "units" && !isElsewhere(typed[parameter.name] ?? "")
      ? units === "cm"
        ? '"cm"'
        : ""
      : argumentText(parameter, typed[parameter.name] ?? ""),
  );
  while (given.at(-1) === "") given.pop();
  return `=QUILT.${id}(${given.join(",")})`;
}

/** The arguments that must be given and are not yet. */
export function missing({ parameters }: FunctionEntry, typed: Typed): ParameterEntry[] {
  return parameters.filter(({ name, optional }) => !optional && (typed[name] ?? "").trim() === "");
}

/** One argument of a formula as it is typed into a form: words without their quotation marks, a part of a formula behind `=`. */
export function typedText(text: string): string {
  if (text === "" || isReference(text) || /^(?:TRUE|FALSE)$/i.test(text)) return text;
  if (NUMBER.test(text)) return localText(text);
  const words = /^"(?:[^"]|"")*"$/.test(text) ? text.slice(1, -1).replaceAll('""', '"') : undefined;
  return words === undefined || isReference(words) || words.startsWith("=") ? `=${localFormula(text)}` : words;
}
