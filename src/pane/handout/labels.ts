/** What the maker calls a cell: words beside it, above it, and the piece that it counts. */
import type { SheetPage } from "../sheet";

/** A cell of a page by its place among those that are filled. */
export interface At {
  page: SheetPage;
  row: number;
  column: number;
}

/** Rows above a table in which its title may stand. */
const ROWS_ABOVE = 3;

const UNIT = /^(?:in|cm|yd|m)$/i;
const TRAILING_UNIT = /,? \(?(?:in|cm|yd|m)\)?$/;
/** Letters that stand for fabrics, such as A or B2. */
const KEY = /^[A-Z]\d?$/;
const PIECE = /^(strip|strip set|square|rectangle|triangle|diamond|hexagon|patch|piece|segment|panel|key)(?:e?s)?$/i;

/**
 * The nearest words to the left of a cell; in a table that has headings all words of its row, with the letter of the fabric.
 * Where there are none, the words above.
 */
export function labelOf(at: At): string | undefined {
  const { row, column } = at;
  const isTable = headOf(at) !== undefined;
  const words: string[] = [];
  const keys = new Set<string>();
  for (let left = column - 1; left >= 0; left -= 1) {
    const text = textAt({ ...at, column: left });
    if (text === undefined && words.length > 0 && isEmpty({ ...at, column: left })) break;
    if (text !== undefined && KEY.test(text)) keys.add(text);
    else if (text !== undefined && isLabel(text)) words.unshift(text);
    if (words.length > 0 && !isTable) break;
  }
  const name = words.map((word) => word.replace(TRAILING_UNIT, "")).join(", ");
  if (words.length > 0) return [...[...keys].slice(0, 1), name].join(": ");
  for (let above = row - 1; above >= Math.max(0, row - ROWS_ABOVE); above -= 1) {
    const text = textAt({ ...at, row: above });
    if (text !== undefined && isLabel(text)) return text;
  }
  return undefined;
}

/** The heading of the column of a table that a cell stands in: the nearest words above that were typed. */
export function headOf(at: At): string | undefined {
  for (let row = at.row - 1; row >= 0 && at.page.values[row].some((value) => (value ?? "") !== ""); row -= 1) {
    const text = textAt({ ...at, row });
    if (text !== undefined && at.page.formulas[row][at.column] === "") return isLabel(text) ? text : undefined;
  }
  return undefined;
}

/** What a number counts, such as strip: the word beside it, or that over its column. */
export function pieceOf(at: At): string | undefined {
  const beside = textAt({ ...at, column: at.column + 1 });
  const found = [beside, headOf(at)].map((text) => PIECE.exec(text ?? "")?.[1].toLowerCase());
  return found[0] ?? found[1];
}

/** Words, no unit, no amount, no sentence. */
function isLabel(text: string): boolean {
  return text.length > 2 && !UNIT.test(text) && !/^\d|[.!?]$/.test(text);
}

function textAt({ page, row, column }: At): string | undefined {
  const value = page.values.at(row)?.[column];
  return typeof value === "string" && value.trim() !== "" ? value.trim() : undefined;
}

function isEmpty({ page, row, column }: At): boolean {
  return (page.values[row][column] ?? "") === "";
}
