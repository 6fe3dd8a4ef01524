/** Random calls of a function with their plain twins, to be worked out in a sheet and compared with the function. */
import fc from "fast-check";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import { translate } from "../../src/workbooks/translate";
import { callText, cellsOf, type Given, given } from "./calls";
import { type Input, isError, type Shown } from "./engines";

interface Metadata {
  functions: { id: string; parameters: { name: string; optional?: boolean }[] }[];
}

const metadata = JSON.parse(readFileSync(join(__dirname, "../../manifest/functions.json"), "utf8")) as Metadata;

/** The arguments of a function, as its metadata tells them. */
export function parametersOf(id: string): { name: string; optional?: boolean }[] {
  return metadata.functions.find((entry) => entry.id === id)!.parameters;
}

/** Column of the first formula, behind the cells of the arguments. */
const FIRST_FORMULA = 48;

/** Random calls of one function, a row each. */
export interface Sample {
  id: string;
  calls: Given[][];
  /** The cells of the arguments, and the formulas of the twin; no formula where it would be longer than a cell holds. */
  rows: Input[][];
  firstRow: number;
}

/** Random calls of one function, always the same for a seed. */
export function sample(id: string, count: number, seed: number, firstRow = 1): Sample {
  const parameters = parametersOf(id).map(({ name, optional = false }) => given(id, name, optional));
  const calls = fc.sample(fc.tuple(...parameters), { numRuns: count, seed });
  const rows = calls.map((args, index): Input[] => {
    const { left, table, formula } = translate(callText(id, args, firstRow + index));
    if (left.length > 0 && !left[0].why.includes("longer than a cell")) throw new Error(`${id}: ${left[0].why}`);
    const inputs = cellsOf(args);
    const gap = Array.from({ length: FIRST_FORMULA - inputs.length }, () => null);
    return [...inputs, ...gap, ...(left.length > 0 ? [] : (table?.flat() ?? [formula]))];
  });
  return { id, calls, rows, firstRow };
}

/** What a comparison found. */
export interface Compared {
  /** The first call that a twin answers otherwise than its function. */
  difference?: string;
  /** Calls that the function answers and a twin can be written for. */
  answered: number;
}

/**
 * Compares what the twins show with what the function answers.
 *
 * @param skip calls that are not compared
 */
export function compare(
  { id, calls, rows, firstRow }: Sample,
  shown: readonly Shown[][],
  skip: (args: readonly Given[]) => boolean = () => false,
): Compared {
  const compared: Compared = { answered: 0 };
  calls.forEach((args, at) => {
    if (skip(args) || rows[at].length === FIRST_FORMULA) return;
    const formulas = rows[at].slice(FIRST_FORMULA);
    const wanted = expected(id, args);
    const got = shown[at].slice(FIRST_FORMULA, rows[at].length);
    if (wanted !== undefined) compared.answered += 1;
    if (!agrees(got, wanted, args)) {
      const call = `${callText(id, args, firstRow + at)} with ${JSON.stringify(args.map(({ value }) => value))}`;
      const both = `the function ${JSON.stringify(wanted)}, the twin ${JSON.stringify(got)}`;
      compared.difference ??= `${call}: ${both}: ${formulas.join("  ")}`;
    }
  });
  return compared;
}

/** What the worksheet function answers, cell after cell; undefined where it refuses. */
function expected(id: string, args: readonly Given[]): unknown[] | undefined {
  try {
    const answer: unknown = worksheetFunctions.get(id)!(...args.map(({ value }) => value));
    return [answer].flat(2);
  } catch (thrown) {
    if (thrown instanceof CellError) return undefined;
    throw thrown;
  }
}

/**
 * A twin refuses where its function does; and a number that is text in a cell, which only the function reads. Where the
 * first thing to fill in is still empty, it stays empty, whatever else is wrong.
 */
function agrees(shown: readonly Shown[], wanted: readonly unknown[] | undefined, args: readonly Given[]): boolean {
  if (wanted === undefined && shown.every((cell) => cell === "")) return args.some(({ value }) => value === null);
  if (shown.every(isError) && wanted === undefined) return true;
  if (shown.some(isError)) return holdsNumberAsText(args);
  return wanted?.length === shown.length && wanted.every((value, at) => isSame(shown[at], value));
}

function isSame(shown: Shown, wanted: unknown): boolean {
  if (typeof wanted !== "number") return shown === wanted;
  return typeof shown === "number" && Math.abs(shown - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));
}

function holdsNumberAsText(args: readonly Given[]): boolean {
  return cellValues(args).some((cell) => typeof cell === "string" && /\d/.test(cell));
}

/** Whether TRUE stands in a cell, which some programs keep as the number 1. */
export function holdsTrue(args: readonly Given[]): boolean {
  return cellValues(args).includes(true);
}

function cellValues(args: readonly Given[]): unknown[] {
  return args.filter(({ how }) => how !== "typed").flatMap(({ value }) => [value].flat(2));
}
