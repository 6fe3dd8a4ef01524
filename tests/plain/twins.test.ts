/** The plain twins against the worksheet functions, worked out by a spreadsheet engine that is none of ours. */
import fc from "fast-check";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import { twins } from "../../src/workbooks/plain";
import { translate } from "../../src/workbooks/translate";
import { callText, cellsOf, type Given, given } from "./calls";
import { type Input, isError, recalculate, type Shown } from "./engines";

interface Metadata {
  functions: { id: string; parameters: { name: string; optional?: boolean }[] }[];
}

const metadata = JSON.parse(readFileSync(join(__dirname, "../../manifest/functions.json"), "utf8")) as Metadata;
const parametersOf = (id: string) => metadata.functions.find((entry) => entry.id === id)!.parameters;

/** Random calls of each function. */
const CALLS = Number(process.env.PLAIN_CALLS ?? 1000);

/** Column of the first formula, behind the cells of the arguments. */
const FIRST_FORMULA = 48;

const ids = Object.keys(twins);

test.each(ids)("%s names the arguments of the function", (id) => {
  expect(twins[id].parameters).toEqual(parametersOf(id).map(({ name }) => name));
});

describe("random calls", () => {
  let books: Book[] = [];

  beforeAll(() => {
    const written = ids.map(write);
    const shown = recalculate(written.map(({ rows }) => rows));
    books = written.map((book, index) => ({ ...book, shown: shown[index] }));
  });

  test.each(ids.map((id, index): [string, number] => [id, index]))("%s gives what the function gives", (id, index) => {
    const { calls, rows, shown } = books[index];
    let [answered, tooLong] = [0, 0];
    calls.forEach((args, at) => {
      const formulas = rows[at].slice(FIRST_FORMULA);
      const wanted = expected(id, args);
      const got = shown[at].slice(FIRST_FORMULA);
      if (wanted !== undefined) answered += 1;
      if (rows[at].length === FIRST_FORMULA) tooLong += 1;
      else if (!agrees(got, wanted, args)) {
        const call = `${callText(id, args, at + 1)} with ${JSON.stringify(args.map(({ value }) => value))}`;
        const both = `the function ${JSON.stringify(wanted)}, the twin ${JSON.stringify(got)}`;
        throw new Error(`${call}: ${both}: ${formulas.join("  ")}`);
      }
    });
    expect(answered).toBeGreaterThan(CALLS / 3);
    expect(tooLong).toBeLessThan(CALLS / 20);
  });
});

interface Book {
  calls: Given[][];
  rows: Input[][];
  shown: Shown[][];
}

/** Random calls of one function, a row each: the cells of the arguments, and the formulas of the twin. */
function write(id: string): Omit<Book, "shown"> {
  const parameters = parametersOf(id).map(({ name, optional = false }) => given(id, name, optional));
  const calls = fc.sample(fc.tuple(...parameters), { numRuns: CALLS, seed: 20240229 });
  const rows = calls.map((args, index): Input[] => {
    const { left, table, formula } = translate(callText(id, args, index + 1));
    const inputs = cellsOf(args);
    const gap = Array.from({ length: FIRST_FORMULA - inputs.length }, () => null);
    if (left.length > 0 && !left[0].why.includes("longer than a cell")) throw new Error(`${id}: ${left[0].why}`);
    return [...inputs, ...gap, ...(left.length > 0 ? [] : (table?.flat() ?? [formula]))];
  });
  return { calls, rows };
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
  const cells = args.filter(({ how }) => how !== "typed").flatMap(({ value }) => [value].flat(2));
  return cells.some((cell) => typeof cell === "string" && /\d/.test(cell));
}
