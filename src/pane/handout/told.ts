/** The cells of a plan that a handout can tell of. */
import { type System, toInches } from "../../math/units";
import { type Answered, isAnswered } from "../answer";
import { type Call, readCalls } from "../calls";
import type { FunctionEntry, Shown } from "../catalogue";
import { systemNamed } from "../given";
import { areaOf, valuesIn } from "../pages";
import { type CellValue, type SheetPage, SheetProblem } from "../sheet";
import { type At, headOf, labelOf, pieceOf } from "./labels";
import { mayShowCall, shownCall } from "./shownCall";

/** A cell with a formula whose value is the answer of a quilting function, or a number of pieces. */
export interface Told {
  at: At;
  label: string;
  /** The function that the cell is about; "" where a plain formula counts pieces. */
  id: string;
  entry: FunctionEntry | undefined;
  call: { cells: unknown[]; outcome: Answered } | undefined;
  system: System;
  /** What the cell shows; of a table all of it. */
  shown: Shown | Shown[][];
  /** Which function wrote it out in words. */
  words: "FABRICTEXT" | "LENGTHTEXT" | undefined;
  /** What the maker says that the number counts, such as strip. */
  piece: string | undefined;
  /** Whether the cell repeats the size of another row. */
  isRepeated: boolean;
}

type Functions = ReadonlyMap<string, FunctionEntry>;

export async function tellAll(pages: readonly SheetPage[], functions: Functions): Promise<Told[]> {
  const told: Told[] = [];
  for (const page of pages) {
    for (const [row, line] of page.formulas.entries()) {
      for (const [column, formula] of line.entries()) {
        if (formula === "") continue;
        const at = { page, row, column };
        const cell = (await tellAnswer(at, pages, functions)) ?? (await tellCount(at, pages, functions));
        if (cell) told.push(cell);
      }
    }
  }
  return [...told, ...repeatedSizes(pages, told)];
}

async function tellAnswer(at: At, pages: readonly SheetPage[], functions: Functions): Promise<Told | undefined> {
  const { page, row, column } = at;
  const formula = page.formulas[row][column];
  if (!mayShowCall(formula) || repeatsAmount(at, pages)) return undefined;
  const calls = await callsIn(at, pages);
  const found = shownCall(formula, calls, page.values[row][column], page.values[row].at(column + 1) ?? null);
  const entry = functions.get(found?.about.id ?? "");
  if (!found || !entry) return undefined;
  const { about, shows } = found;
  const words = shows.id === "FABRICTEXT" || shows.id === "LENGTHTEXT" ? shows.id : undefined;
  const shown = found.value ?? (words ? page.values[row][column] : shownOnPage(at, entry));
  if (shown === null || shown === "") return undefined;
  return tellCall(at, pages, entry, about, { shown, words });
}

/** What a formula fills that only the sheet can work out: one cell, or a table as wide as its function makes them. */
function shownOnPage(at: At, entry: FunctionEntry): Shown | Shown[][] | null {
  const { page, row, column } = at;
  const example = entry.examples.map(({ shows }) => shows).find((shows) => Array.isArray(shows));
  if (!example) return page.values[row][column];
  const table = filledTable(page, row, column, entry.id === "SIZETABLE" ? undefined : example[0].length);
  if (table.every((line) => line.every((cell) => (cell ?? "") === ""))) return null;
  return table.slice(0, example.length === 1 ? 1 : undefined).map((line) => line.map((cell) => cell ?? ""));
}

/** A whole number of pieces, such as strips, however it was reckoned. */
async function tellCount(at: At, pages: readonly SheetPage[], functions: Functions): Promise<Told | undefined> {
  const { page, row, column } = at;
  const value = page.values[row][column];
  const piece = pieceOf(at);
  const label = labelOf(at);
  if (typeof value !== "number" || !Number.isInteger(value) || value <= 0) return undefined;
  if (piece === undefined || label === undefined || mayShowCall(page.formulas[row][column])) return undefined;
  const call = (await callsIn(at, pages)).at(-1);
  const entry = functions.get(call?.id ?? "");
  const told = call && entry && tellCall(at, pages, entry, call, { shown: value, words: undefined });
  const plain = {
    at,
    label,
    entry: undefined,
    call: undefined,
    system: "in",
    words: undefined,
    isRepeated: false,
  } as const;
  return { ...plain, ...told, id: "", shown: value, piece };
}

function tellCall(
  at: At,
  pages: readonly SheetPage[],
  entry: FunctionEntry,
  { cells, outcome, argumentTexts }: Call,
  shown: Pick<Told, "shown" | "words">,
): Told {
  const place = entry.parameters.findIndex(({ takes }) => takes.kind === "units");
  const units = cells ? cells[place] : textOf(argumentTexts.at(place) ?? "", at, pages);
  return {
    at,
    label: labelOf(at) ?? entry.description.replace(/[,.:;].*$/s, ""),
    id: entry.id,
    entry,
    call: cells && isAnswered(outcome) ? { cells, outcome } : undefined,
    system: systemNamed(units),
    piece: pieceOf(at),
    isRepeated: false,
    ...shown,
  };
}

/** A word that an argument names, such as "cm" or the cell that holds it. */
function textOf(argument: string, { page }: At, pages: readonly SheetPage[]): CellValue {
  const quoted = /^"(.*)"$/s.exec(argument);
  if (quoted) return quoted[1];
  try {
    return cellsOf(pages, argument, page.name)[0][0];
  } catch (thrown) {
    if (thrown instanceof SheetProblem) return null;
    throw thrown;
  }
}

async function callsIn({ page, row, column }: At, pages: readonly SheetPage[]): Promise<readonly Call[]> {
  const read = (reference: string) => Promise.resolve(cellsOf(pages, reference, page.name));
  const calls = await readCalls(page.formulas[row][column], read);
  return typeof calls === "string" ? [] : calls;
}

/** Cells that a formula names; of a table that a formula fills, such as A5#, as far as it is filled. */
function cellsOf(pages: readonly SheetPage[], reference: string, from: string): CellValue[][] {
  const area = areaOf(reference, from);
  const page = pages.find(({ name }) => name.toLowerCase() === area.page.toLowerCase());
  if (!area.spilled || !page) return valuesIn(pages, reference, from);
  return filledTable(page, area.top - page.row, area.left - page.column);
}

/** The cells that a formula fills: as wide as told, or as far as its first row goes, and down to an empty row. */
function filledTable({ values, formulas }: SheetPage, row: number, column: number, width?: number): CellValue[][] {
  const isFilled = (r: number, c: number) =>
    (values.at(r)?.[c] ?? "") !== "" && (formulas[r][c] === "" || (r === row && c === column));
  let right = column + (width ?? 1) - 1;
  while (width === undefined && isFilled(row, right + 1)) right += 1;
  const columns = Array.from({ length: right - column + 1 }, (_, index) => column + index);
  let bottom = row;
  while (columns.some((c) => isFilled(bottom + 1, c))) bottom += 1;
  return values.slice(row, bottom + 1).map((line) => columns.map((c) => line[c] ?? null));
}

/** Whether an amount is only written out that another cell with a quilting formula tells itself. */
function repeatsAmount({ page, row, column }: At, pages: readonly SheetPage[]): boolean {
  const formula = page.formulas[row][column];
  const reference = /(?:QUILT[._])FABRICTEXT\(\s*((?:'[^']+'!|\w+!)?\$?[A-Z]{1,3}\$?\d+)\s*[,)]/i.exec(formula)?.[1];
  if (reference === undefined) return false;
  const area = areaOf(reference, page.name);
  const other = pages.find(({ name }) => name.toLowerCase() === area.page.toLowerCase());
  return /QUILT[._]/i.test(other?.formulas.at(area.top - other.row)?.[area.left - other.column] ?? "");
}

/** Cells of a table that repeat the size of another row, such as squares of two fabrics that are cut alike. */
function repeatedSizes(pages: readonly SheetPage[], told: readonly Told[]): Told[] {
  return pages.flatMap((page) =>
    page.formulas.flatMap((line, row) =>
      line.flatMap((formula, column) => {
        const other = /^=\$?[A-Z]{1,3}\$?\d+$/i.test(formula) ? areaOf(formula.slice(1), page.name) : undefined;
        const at = { page, row, column };
        const label = labelOf(at);
        if (!other || other.left - page.column !== column || label === undefined || headOf(at) === undefined) return [];
        const size = told.find(
          (cell) => cell.at.page === page && cell.at.row === other.top - page.row && cell.at.column === column,
        );
        return size ? [{ ...size, at, label, isRepeated: true }] : [];
      }),
    ),
  );
}

/** A number of a cell in inches. */
export function inInches(cell: Shown, system: System): number {
  return toInches(Number(cell), system);
}
