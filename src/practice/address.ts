/** Names of cells, such as B5, from rows and columns counted from 0. */

export function columnName(column: number): string {
  const rest = Math.trunc(column / 26);
  return (rest > 0 ? columnName(rest - 1) : "") + String.fromCharCode(65 + (column % 26));
}

export function cellName(row: number, column: number): string {
  return `${columnName(column)}${row + 1}`;
}

/** Row and column of a cell's name. */
export function cellPlace(name: string): { row: number; column: number } {
  const parts = /^([A-Z]+)(\d+)$/.exec(name);
  if (!parts) throw new Error(`${name} is no cell`);
  return { row: Number(parts[2]) - 1, column: columnNumber(parts[1]) };
}

/** Column of its letters: A is 0, AA is 26. */
export function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}
