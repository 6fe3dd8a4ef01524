/** Places of cells, such as B5: rows and columns counted from 1, as files count them. */

export interface Place {
  readonly row: number;
  readonly column: number;
}

export interface Area {
  readonly first: Place;
  readonly last: Place;
}

export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;

export function cellName({ row, column }: Place): string {
  return columnName(column) + String(row);
}

/** The letters of a column; empty where there is no such column. */
export function columnName(column: number): string {
  if (column > LAST_COLUMN) return "";
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.trunc((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return letters;
}

export function columnNumber(letters: string): number {
  return Array.from(letters.toUpperCase()).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

/** The place of a cell; undefined where the text names no single cell of a sheet. */
export function placeOf(name: string): Place | undefined {
  const parts = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/i.exec(name);
  if (!parts) return undefined;
  const column = columnNumber(parts[1]);
  const row = Number(parts[2]);
  return row <= LAST_ROW && column <= LAST_COLUMN ? { row, column } : undefined;
}

/** The area of a range such as B5:C9, or of one cell. */
export function areaOf(range: string): Area | undefined {
  const [first, last = first, ...more] = range.split(":").map(placeOf);
  return first && last && more.length === 0 ? { first, last } : undefined;
}

export function holds({ first, last }: Area, { row, column }: Place): boolean {
  return row >= first.row && row <= last.row && column >= first.column && column <= last.column;
}
