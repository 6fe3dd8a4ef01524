/** The spreadsheet program's own functions that the pane can follow. */
import { isReference, type Part, significant } from "../workbooks/syntax";
import {
  cannotFollow,
  clean,
  ComesToError,
  finite,
  number,
  one,
  operate,
  orError,
  sound,
  sumOf,
  type Value,
} from "./arithmetic";
import { type CellValue, isErrorCode } from "./sheet";

/** What parts of a formula come to; null where nothing is written, and for an empty cell. */
type Evaluate = (parts: readonly Part[]) => Promise<Value>;

type BuiltIn = (given: readonly Part[][], evaluate: Evaluate) => Promise<Value>;

const numeric =
  (work: (...numbers: number[]) => number): BuiltIn =>
  async (given, evaluate) => {
    const numbers: number[] = [];
    for (const argument of given) numbers.push(number(one(await evaluate(argument))));
    return finite(work(...numbers));
  };

const ofAll =
  (work: (numbers: readonly number[]) => number): BuiltIn =>
  async (given, evaluate) => {
    const numbers: number[][] = [];
    for (const argument of given) numbers.push(numbersOf(argument, await evaluate(argument)));
    return finite(work(numbers.flat()));
  };

/** The one number that wins over all others; 0 where there is none. */
const ofAllThe = (pick: (one: number, other: number) => number): BuiltIn =>
  ofAll((numbers) => (numbers.length === 0 ? 0 : numbers.reduce((one, other) => pick(one, other))));

export const BUILT_INS: ReadonlyMap<string, BuiltIn> = new Map<string, BuiltIn>([
  ["SUM", ofAll(sumOf)],
  ["MAX", ofAllThe(Math.max)],
  ["MIN", ofAllThe(Math.min)],
  ["ABS", numeric(Math.abs)],
  ["SQRT", numeric(Math.sqrt)],
  ["INT", numeric(whole)],
  ["ROUND", numeric((value, digits) => rounded(Math.round, value, digits))],
  ["ROUNDUP", numeric((value, digits) => rounded(Math.ceil, value, digits))],
  ["ROUNDDOWN", numeric((value, digits) => rounded(Math.floor, value, digits))],
  ["INDEX", index],
  ["MATCH", match],
  ["SINGLE", async ([argument], evaluate) => one(await evaluate(argument))],
  ["IF", chosen],
  ["IFERROR", unlessError],
  ["ISERROR", async ([argument], evaluate) => (await orError(evaluate(argument).then(one))) instanceof ComesToError],
]);

/** The numbers that SUM and its like find in an argument: in cells they pass over everything else. */
function numbersOf(argument: readonly Part[], value: Value): number[] {
  if (Array.isArray(value)) return value.flat().map(sound).filter(isNumber);
  if (isNumber(value)) return [value];
  const parts = significant(argument);
  if (parts.length === 0) return [0];
  return parts.length === 1 && isReference(parts[0]) ? [] : cannotFollow("What is no number among those of a sum");
}

function isNumber(value: CellValue): value is number {
  return typeof value === "number";
}

const ALMOST_WHOLE = "A number that almost is a round one";

function whole(value: number): number {
  const down = Math.floor(value);
  return down === Math.floor(clean(value)) ? down : cannotFollow(ALMOST_WHOLE);
}

/** More digits than these are beyond what a number holds. */
const MOST_DIGITS = 12;

/** Away from zero or toward it. A number of no more than 15 digits is rounded as it reads, whatever its binary digits. */
function rounded(round: (value: number) => number, value: number, digits: number): number {
  const places = Math.trunc(digits);
  if (Math.abs(places) > MOST_DIGITS) return cannotFollow(`Rounding to ${places} digits`);
  const factor = 10 ** Math.abs(places);
  const scaled = places < 0 ? Math.abs(value) / factor : Math.abs(value) * factor;
  const result = round(clean(scaled));
  if (value !== clean(value) && result !== round(scaled)) return cannotFollow(ALMOST_WHOLE);
  return Math.sign(value) * (places < 0 ? result * factor : result / factor);
}

async function index([table, ...places]: readonly Part[][], evaluate: Evaluate): Promise<Value> {
  const value = await evaluate(table);
  const rows = Array.isArray(value) ? value : [[value]];
  const numbers: number[] = [];
  for (const place of places) numbers.push(Math.trunc(number(one(await evaluate(place)))));
  const [first, second] = numbers as (number | undefined)[];
  const isRow = rows.length === 1;
  // Without a column, a place in a larger table is a whole row of it.
  const isClear = second !== undefined || isRow || rows[0].length === 1;
  const [row, column] = second === undefined && isRow ? [1, first] : [first, second ?? 1];
  const found = isClear && numbers.length <= 2 ? rows.at((row ?? 0) - 1)?.at((column ?? 0) - 1) : undefined;
  if (found === undefined || !row || !column || row < 1 || column < 1)
    return cannotFollow("INDEX of more or other cells");
  return sound(found);
}

/** The place of a value in one row or one column. */
async function match([wanted = [], table = [], kind]: readonly Part[][], evaluate: Evaluate): Promise<Value> {
  const sought = one(await evaluate(wanted));
  const value = await evaluate(table);
  const rows = Array.isArray(value) ? value : [[value]];
  const isLine = rows.length === 1 || rows[0].length === 1;
  const isExact = (kind as Part[] | undefined) !== undefined && number(one(await evaluate(kind))) === 0;
  if (!isLine || !isExact || sought === null || /[*?~]/.test(String(sought)))
    return cannotFollow("MATCH of anything but the same value in a row or a column");
  for (const [place, cell] of rows.flat().entries()) {
    const isSame = typeof cell === typeof sought && (await operate("=", cell, () => Promise.resolve(sought)));
    if (isSame) return place + 1;
  }
  throw new ComesToError("#N/A");
}

async function chosen([condition, ...branches]: readonly Part[][], evaluate: Evaluate): Promise<Value> {
  const branch = branches.at(number(one(await evaluate(condition))) === 0 ? 1 : 0);
  if (branch === undefined) return false;
  return significant(branch).length === 0 ? cannotFollow("A branch of IF that is left out") : evaluate(branch);
}

async function unlessError([argument, otherwise = []]: readonly Part[][], evaluate: Evaluate): Promise<Value> {
  const value = await orError(evaluate(argument));
  const kept = value instanceof ComesToError ? await evaluate(otherwise) : value;
  // Some programs make an empty text of an empty cell, others a 0.
  const cells = Array.isArray(kept) ? kept.flat() : [kept];
  return cells.some((cell) => cell === null || isErrorCode(cell))
    ? cannotFollow("An empty cell or an error among what IFERROR hands on")
    : kept;
}
