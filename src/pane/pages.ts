/** Reading references from pages of cells that are at hand. */
import { type CellValue, type SheetPage, SheetProblem } from "./sheet";

interface Area {
  page: string;
  top: number;
  left: number;
  bottom: number;
  right: number;
  /** Of a table that a formula fills, only its first cell is named. */
  spilled: boolean;
}

const AREA = /^(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?\$?([A-Z]{1,3})\$?(\d+)?(?::\$?([A-Z]{1,3})\$?(\d+)?)?(#)?$/i;
const LAST = 1_048_575;

/**
 * The rectangle that a reference names, rows and columns from 0.
 * @throws SheetProblem where it names none
 */
export function areaOf(reference: string, page: string): Area {
  const found = AREA.exec(reference.trim()) as (string | undefined)[] | null;
  if (!found || (found[4] === undefined && found[5] === undefined)) {
    throw new SheetProblem(`“${reference}” names no cells that can be read here`);
  }
  const [, quoted, plain, left, top, right = left, bottom, spilled] = found;
  const columns = [columnOf(left!), columnOf(right!)].sort((a, b) => a - b);
  const rows = [Number(top ?? 1) - 1, top === undefined ? LAST : Number(bottom ?? top) - 1].sort((a, b) => a - b);
  return {
    page: quoted?.replaceAll("''", "'") ?? plain ?? page,
    top: rows[0],
    bottom: rows[1],
    left: columns[0],
    right: columns[1],
    spilled: spilled !== undefined,
  };
}

/** Larger ranges are read as far as the page is filled, as whole columns are. */
const MOST_CELLS = 100_000;

/** The values of a reference; an empty text, which only a formula gives, is no empty cell. */
export function valuesIn(pages: readonly SheetPage[], reference: string, from: string): CellValue[][] {
  const area = areaOf(reference, from);
  const page = pages.find(({ name }) => name.toLowerCase() === area.page.toLowerCase());
  if (!page) throw new SheetProblem(`There is no page “${area.page}”`);
  if (area.spilled) throw new SheetProblem(`“${reference}” is worked out by the sheet only`);
  const isLarge = (area.bottom - area.top + 1) * (area.right - area.left + 1) > MOST_CELLS;
  const filled = Math.min(area.bottom, Math.max(area.top, page.row + page.values.length - 1));
  const bottom = isLarge ? filled : area.bottom;
  return Array.from({ length: bottom - area.top + 1 }, (_, row) =>
    Array.from({ length: area.right - area.left + 1 }, (_cell, column) =>
      page.values.at(0) === undefined ? null : valueAt(page, area.top + row, area.left + column),
    ),
  );
}

function valueAt({ row, column, values }: SheetPage, at: number, across: number): CellValue {
  return values[at - row]?.[across - column] ?? null;
}

function columnOf(letters: string): number {
  let number = 0;
  for (let place = 0; place < letters.length; place += 1) {
    number = number * 26 + letters.toUpperCase().charCodeAt(place) - 64;
  }
  return number - 1;
}

/** Such as B5. */
export function cellName(row: number, column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row + 1}`;
}
