/** A planning workbook with other inputs than those that it comes with. */
import { evaluateBook } from "../../src/practice/recalculate";
import type { WorkedSheet } from "../../src/workbooks/book";
import { at, typedInto } from "../classCopy/changedInputs";
import { written } from "./books";

export type Worked = Record<string, WorkedSheet>;
export type TypedCells = Record<string, string | number | undefined>;

/** What a workbook comes to with other inputs, such as "Class!C17"; undefined empties a cell. */
export async function workedWith(name: string, typed: TypedCells): Promise<Worked> {
  const { book } = await written(name);
  const cells = new Set(book.sheets.flatMap((sheet) => sheet.entries.map(({ cell }) => at(sheet.name, cell))));
  expect(Object.keys(typed).filter((cell) => !cells.has(cell))).toEqual([]);
  return evaluateBook(typedInto(book, new Map(Object.entries(typed))));
}

/** Cells that show an error. */
export function errorsIn(sheets: Worked): string[] {
  return Object.entries(sheets).flatMap(([sheet, { values }]) =>
    Object.entries(values)
      .filter(([, value]) => typeof value === "string" && /^#[A-Z/0!?]+$/.test(value))
      .map(([cell, value]) => `${at(sheet, cell)} ${value}`),
  );
}
