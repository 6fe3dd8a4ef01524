/** Two spreadsheet programs that are none of ours, each asked to work out a sheet of formulas. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";

/** What stands in a cell: a formula with its equals sign, a value, or nothing. */
export type Input = string | number | boolean | null;

/** What a formula shows; an error is its text, such as "#N/A". Null for a cell that holds no formula. */
export type Shown = string | number;

/** A sheet by its name, with the inputs of its rows. */
export interface InputSheet {
  name: string;
  rows: Input[][];
}

/** Works out some sheets, each in a workbook of its own, in @ironcalc/wasm. */
export function recalculate(sheets: Input[][][]): Shown[][][] {
  return recalculateBooks(sheets.map((rows) => [{ name: "Sheet1", rows }])).map(([rows]) => rows);
}

/** Works out some workbooks in @ironcalc/wasm; for each one the rows of each of its sheets. */
export function recalculateBooks(books: InputSheet[][]): Shown[][][][] {
  const inputs = books.map((sheets) =>
    sheets.map(({ name, rows }) => ({ name, rows: rows.map((row) => row.map(typed)) })),
  );
  const run = spawnSync(process.execPath, [join(__dirname, "ironcalc.mjs")], {
    input: JSON.stringify(inputs),
    encoding: "utf8",
    maxBuffer: 2 ** 28,
    timeout: 300_000,
  });
  if (run.status !== 0) throw run.error ?? new Error(run.stderr);
  return JSON.parse(run.stdout) as Shown[][][][];
}

/** As a maker would type it, with the apostrophe that keeps text from becoming a number or a date. */
function typed(input: Input): string {
  if (input === null) return "";
  if (typeof input === "boolean") return String(input).toUpperCase();
  if (typeof input === "number") return String(input);
  return input.startsWith("=") ? input : `'${input}`;
}

/** Whether a cell shows an error. */
export function isError(shown: Shown | undefined): boolean {
  return typeof shown === "string" && /^#[A-Z0-9/!?]+/.test(shown);
}
