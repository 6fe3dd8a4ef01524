/** The planning workbooks, worked out and written once for all tests of a file. */
import { evaluateBook } from "../../src/practice/recalculate";
import { workbooks } from "../../src/workbooks";
import type { Book, Entry, Sheet, WorkedSheet } from "../../src/workbooks/book";
import { isFormula } from "../../src/workbooks/book";
import { writeBook } from "../../src/workbooks/write";

export interface Written {
  book: Book;
  worked: Record<string, WorkedSheet>;
  bytes: Uint8Array;
}

const made = new Map<string, Promise<Written>>();

export const names = workbooks.map(({ name }) => name);

export function written(name: string): Promise<Written> {
  let result = made.get(name);
  if (!result) made.set(name, (result = write(name)));
  return result;
}

async function write(name: string): Promise<Written> {
  const book = workbooks.find((workbook) => workbook.name === name)!.build();
  const worked = await evaluateBook(book);
  return { book, worked, bytes: await writeBook(book, () => Promise.resolve(worked)) };
}

/** Every formula of a book. */
export function formulas(book: Book): { sheet: Sheet; entry: Entry; formula: string }[] {
  return book.sheets.flatMap((sheet) =>
    sheet.entries.flatMap((entry) => (isFormula(entry.content) ? [{ sheet, entry, formula: entry.content }] : [])),
  );
}
