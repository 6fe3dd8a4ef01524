/** Whether what was worked out here is what the sheet itself shows. */
import { ComesToError, type Value } from "./arithmetic";
import { type CellValue, isErrorCode } from "./sheet";

/** What cells show before the sheet has worked them out, or where a table has no room: nothing is to be told from it. */
const UNTOLD: readonly CellValue[] = ["#BUSY!", "#GETTING_DATA", "#CONNECT!", "#NAME?", "#SPILL!"];

/** Programs differ in the last binary digits. */
const DUST = 1e-9;

/** @param shown by the cell of the formula, or by all that it fills */
export function isAsShown(worked: Value | ComesToError, shown: Value): boolean {
  const cells = tableOf(shown);
  if (UNTOLD.includes(cells[0][0])) return true;
  if (worked instanceof ComesToError) return isErrorCode(cells[0][0]);
  const own = tableOf(worked);
  return cells.every((line, row) =>
    line.every((cell, column) => {
      const mine = own.at(row)?.at(column);
      // In the answer of a formula an empty cell counts as 0.
      return mine === undefined || isSameCell(mine ?? 0, cell ?? "");
    }),
  );
}

function tableOf(value: Value): CellValue[][] {
  return Array.isArray(value) ? value : [[value]];
}

function isSameCell(worked: CellValue, shown: CellValue): boolean {
  if (isErrorCode(worked) || isErrorCode(shown)) return isErrorCode(worked) && isErrorCode(shown);
  if (typeof worked === "number" && typeof shown === "number")
    return Math.abs(worked - shown) <= DUST * Math.max(1, Math.abs(shown));
  return worked === shown;
}
