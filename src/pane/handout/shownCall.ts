/** Which call of a formula gives what the cell shows: only then is the cell's value that call's answer, in its unit. */
import { isOperator, type Part, partsOf, significant } from "../../workbooks/syntax";
import { isAnswered, type Outcome } from "../answer";
import type { Call } from "../calls";
import type { Shown } from "../catalogue";
import { quiltName, textOf } from "../evaluate";
import type { CellValue } from "../sheet";

/** A call that may give what the cell shows. */
interface Candidate {
  /** The call that the cell is about. */
  about: string;
  /** The call that writes it out in words, or else the same one. */
  shows: string;
  rounded: boolean;
  /** Whether another branch may be shown instead. */
  chosen: boolean;
  /** Whether every other branch is an empty text. */
  isAlone: boolean;
}

export interface ShownCall {
  about: Call;
  shows: Call;
  /** What the cell shows, of a table all of it; undefined where the call cannot be followed, and the sheet has to tell it. */
  value: Shown | Shown[][] | undefined;
}

/** Functions of ours that write out what another one answers. */
const WORDS = new Set(["FABRICTEXT", "LENGTHTEXT"]);
/** Functions of the sheet that hand on one of their arguments as it is; which of them may be handed on. */
const CHOICES: Readonly<Partial<Record<string, (given: Part[][]) => Part[][]>>> = {
  IF: (given) => given.slice(1),
  IFS: (given) => given.filter((_, index) => index % 2 === 1),
  CHOOSE: (given) => given.slice(1),
  IFERROR: (given) => given,
  IFNA: (given) => given,
  MAX: (given) => given,
  MIN: (given) => given,
};
const ROUNDINGS = /^(?:ROUND|ROUNDUP|ROUNDDOWN|CEILING|FLOOR|MROUND|INT)$/;

/** Whether the formula may show the answer of a call of ours at all. */
export function mayShowCall(formula: string): boolean {
  return candidatesOf(formula).length > 0;
}

/**
 * The call whose answer a cell shows; of several branches the one that came to the cell's value.
 * @param beside what stands to the right of the cell
 */
export function shownCall(
  formula: string,
  calls: readonly Call[],
  cell: CellValue,
  beside: CellValue,
): ShownCall | undefined {
  for (const { about, shows, rounded, chosen, isAlone } of candidatesOf(formula)) {
    const [aboutCall, showsCall] = [about, shows].map((text) => calls.find((call) => call.text === text));
    if (!aboutCall || !showsCall) continue;
    if (isAlone && isUntold(showsCall.outcome)) return { about: aboutCall, shows: showsCall, value: undefined };
    if (!isAnswered(aboutCall.outcome) || !isAnswered(showsCall.outcome)) continue;
    const { value } = showsCall.outcome;
    if (chosen && !isShown(value, cell, beside, rounded)) continue;
    return { about: aboutCall, shows: showsCall, value: rounded && cell !== null ? cell : value };
  }
  return undefined;
}

function candidatesOf(formula: string): Candidate[] {
  return candidatesIn(partsOf(formula) ?? []);
}

function candidatesIn(parts: readonly Part[]): Candidate[] {
  const [only, ...others] = significant(parts).filter((part) => !isOperator(part, "+", "@")) as [Part?, ...Part[]];
  if (!only || others.length > 0) return [];
  if (only.kind === "group") return only.open === "(" ? candidatesIn(only.parts) : [];
  if (only.kind !== "call") return [];
  const { given } = only;
  const id = quiltName(only.name);
  if (id !== undefined) {
    const text = `QUILT.${id}(${given.map(textOf).join(", ")})`;
    const inner = WORDS.has(id) ? candidatesIn(given.at(0) ?? []) : [];
    if (inner.length > 0) return inner.map((candidate) => ({ ...candidate, shows: text }));
    return [{ about: text, shows: text, rounded: false, chosen: false, isAlone: true }];
  }
  const word = only.name.toUpperCase().replace(/^_XLFN\./, "");
  if (ROUNDINGS.test(word)) return candidatesIn(given.at(0) ?? []).map((inner) => ({ ...inner, rounded: true }));
  const branches = CHOICES[word]?.(given) ?? [];
  const isAlone = branches.filter((branch) => textOf(branch) !== '""').length === 1;
  return branches.flatMap(candidatesIn).map((inner) => ({ ...inner, chosen: true, isAlone: inner.isAlone && isAlone }));
}

/** Whether a call is worked out by the sheet only. */
function isUntold(outcome: Outcome): boolean {
  return !isAnswered(outcome) && outcome.code === "";
}

function isShown(value: Shown | Shown[][], cell: CellValue, beside: CellValue, rounded: boolean): boolean {
  if (!Array.isArray(value)) return isSame(value, cell, rounded ? 1 : 1e-9);
  const [first, second] = value[0] as [Shown, Shown?];
  return isSame(first, cell, 1e-9) && (first !== "" || second === undefined || isSame(second, beside, 1e-9));
}

function isSame(value: Shown, cell: CellValue, within: number): boolean {
  if (typeof value === "number" && typeof cell === "number") {
    return Math.abs(value - cell) <= within * Math.max(1, within < 1 ? Math.abs(value) : 1);
  }
  return value === (cell ?? "");
}
