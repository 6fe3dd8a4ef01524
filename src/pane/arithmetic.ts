/**
 * Arithmetic, comparisons and texts of cells as spreadsheet programs make them. Where that hangs on the program or on the
 * maker's settings it is said, never guessed.
 */
import { localText } from "./decimals";
import { type CellValue, isErrorCode, SheetProblem } from "./sheet";

export type Value = CellValue | CellValue[][];

/** An error that a formula comes to, and with it all that reads it. */
export class ComesToError extends Error {
  /** @param code such as #DIV/0! */
  constructor(readonly code: string) {
    super(code);
  }
}

/** What comes of a formula, its error included. */
export async function orError(value: Promise<Value>): Promise<Value | ComesToError> {
  try {
    return await value;
  } catch (thrown) {
    if (thrown instanceof ComesToError) return thrown;
    throw thrown;
  }
}

/** The first error among the cells of a table; a single text is none. */
export function errorIn(value: Value): string | undefined {
  return Array.isArray(value) ? value.flat().find(isErrorCode) : undefined;
}

/** Says why something is left to the sheet. */
export function cannotFollow(what: string): never {
  throw new SheetProblem(`${what} cannot be followed here`);
}

/** What a cell holds, unless it is an error. */
export function sound(value: CellValue): CellValue {
  if (isErrorCode(value)) throw new ComesToError(value);
  return value;
}

/** The one value of what may be a table. */
export function one(value: Value): CellValue {
  if (!Array.isArray(value)) return value;
  if (value.length === 1 && value[0].length === 1) return sound(value[0][0]);
  return cannotFollow("Several cells at once");
}

/** A value as arithmetic takes it. Of a text, such as 3/8, each program makes a date, a number or an error after its settings. */
export function number(value: CellValue): number {
  if (typeof value === "string") return cannotFollow(`The text “${value}” where a number is needed`);
  return Number(value);
}

/** A number that cells can show. */
export function finite(value: number): number {
  if (!Number.isFinite(value)) throw new ComesToError("#NUM!");
  // There is no -0 in cells.
  return value + 0;
}

const ARITHMETIC: ReadonlyMap<string, (left: number, right: number) => number> = new Map([
  ["+", (left, right) => sumOf([left, right])],
  ["-", (left, right) => sumOf([left, -right])],
  ["*", (left, right) => left * right],
  ["/", quotient],
  ["^", power],
]);

/** @param right is asked for once the left side is known to be sound, as an error there comes first */
export async function operate(operator: string, left: CellValue, right: () => Promise<CellValue>): Promise<CellValue> {
  const run = ARITHMETIC.get(operator);
  if (run) {
    const first = number(left);
    return finite(run(first, number(await right())));
  }
  const other = await right();
  return operator === "&" ? text(left) + text(other) : compare(operator, left, other);
}

/** What a minus before a value makes of it, or a percent sign behind it. Some programs refuse that for TRUE and FALSE. */
export function signed(sign: "-" | "%", value: CellValue): number {
  if (typeof value === "boolean") return cannotFollow(`TRUE or FALSE with ${sign}`);
  return sign === "-" ? 0 - number(value) : number(value) / 100;
}

/** Parts that cancel out but for their last binary digits: some programs show 0 then, others the rest. */
const DUST = 2 ** -46;

export function sumOf(numbers: readonly number[]): number {
  const sum = numbers.reduce((all, each) => all + each, 0);
  const largest = numbers.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  return sum !== 0 && Math.abs(sum) <= largest * DUST ? cannotFollow("A difference of almost nothing") : sum;
}

function quotient(left: number, right: number): number {
  if (right === 0) throw new ComesToError("#DIV/0!");
  return left / right;
}

/** Programs differ about powers of 0 and about roots of negative numbers. */
function power(base: number, exponent: number): number {
  const isClear = base > 0 || (base === 0 ? exponent > 0 : Number.isInteger(exponent));
  return isClear ? base ** exponent : cannotFollow(`${base}^${exponent}`);
}

/** Numbers outside of these are written with a power of ten by some programs. */
const [SMALLEST, LARGEST] = [1e-4, 1e11];

function text(value: CellValue): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value !== "number") return value ?? "";
  const size = Math.abs(value);
  if (size !== 0 && (size < SMALLEST || size >= LARGEST)) return cannotFollow(`The number ${value} as text`);
  return localText(String(clean(value)));
}

/** A number with the 15 digits that cells keep. */
export function clean(value: number): number {
  return Number(value.toPrecision(15));
}

const COMPARISONS: ReadonlyMap<string, (order: number) => boolean> = new Map([
  ["=", (order) => order === 0],
  ["<>", (order) => order !== 0],
  ["<", (order) => order < 0],
  [">", (order) => order > 0],
  ["<=", (order) => order <= 0],
  [">=", (order) => order >= 0],
]);

function compare(operator: string, left: CellValue, right: CellValue): boolean {
  const [one, other] = [left ?? emptyBeside(right), right ?? emptyBeside(left)];
  const holds = COMPARISONS.get(operator)!;
  if (typeof one !== typeof other) return holds(orderOfKinds(one, other, operator));
  if (typeof one === "string" && typeof other === "string") return holds(textOrder(one, other, operator));
  const [first, second] = [Number(one), Number(other)];
  if (first !== second && clean(first) === clean(second))
    return cannotFollow("A comparison of almost the same numbers");
  return holds(first - second);
}

/** Numbers come before texts. Programs differ about TRUE and FALSE beside them, and about where an empty text comes. */
function orderOfKinds(left: number | string | boolean, right: number | string | boolean, operator: string): number {
  const isUnclear = [left, right].some((value) => typeof value === "boolean" || (value === "" && !isForSame(operator)));
  return isUnclear ? cannotFollow("A comparison of different kinds") : typeof left === "number" ? -1 : 1;
}

function isForSame(operator: string): boolean {
  return operator === "=" || operator === "<>";
}

/** What an empty cell counts as beside another value. */
function emptyBeside(other: CellValue): number | string | boolean {
  return typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
}

/** Small and large letters are the same; how other signs are sorted hangs on the maker's language. */
function textOrder(left: string, right: string, operator: string): number {
  const [one, other] = [left.toLowerCase(), right.toLowerCase()];
  if (one === other) return 0;
  const isSorted = isForSame(operator) || (/^[a-z]*$/.test(one) && /^[a-z]*$/.test(other));
  return isSorted ? (one < other ? -1 : 1) : cannotFollow(`Whether “${left}” comes before “${right}”`);
}
