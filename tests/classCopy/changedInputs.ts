/** Planning workbooks with other inputs in their yellow cells, as students may type them. */
import { type Book, type CellValue, type Entry, isFormula, nameOf, place, type Sheet } from "../../src/workbooks/book";

/** What is typed into cells, by sheet and cell; undefined empties a cell. */
export type Typed = ReadonlyMap<string, CellValue | undefined>;

export const at = (sheet: string, cell: string) => `${sheet}!${cell}`;

/** Other inputs for some of the yellow cells: such that the sheet still makes sense, or with some that make errors. */
export function otherInputs(book: Book, seed: number, kind: "sensible" | "faulty"): Typed {
  const random = numbers(seed);
  const typed = new Map<string, CellValue | undefined>();
  for (const sheet of book.sheets) {
    for (const entry of sheet.entries) {
      if (!entry.style.startsWith("input") || isFormula(entry.content)) continue;
      const part = random();
      if (part < 0.4) continue;
      const isFaulty = kind === "faulty" && random() < 0.15;
      typed.set(at(sheet.name, entry.cell), isFaulty ? faulty(random) : sensible(book, sheet, entry, random));
    }
  }
  return typed;
}

/** The book with what is typed in its cells. */
export function typedInto(book: Book, typed: Typed): Book {
  return {
    ...book,
    sheets: book.sheets.map((sheet) => ({
      ...sheet,
      entries: sheet.entries.map((entry) => {
        const key = at(sheet.name, entry.cell);
        return typed.has(key) ? { ...entry, content: typed.get(key) as Entry["content"] } : entry;
      }),
    })),
  };
}

/** The book with values in the place of some formulas, of all that their tables fill. */
export function withValues(
  book: Book,
  spots: readonly { sheet: string; cell: string; values: Readonly<Record<string, CellValue>> }[],
): Book {
  return {
    ...book,
    sheets: book.sheets.map((sheet) => {
      const here = spots.filter((spot) => spot.sheet === sheet.name);
      const filled = new Map(here.flatMap(({ values }) => Object.entries(values)));
      return {
        ...sheet,
        entries: [
          ...sheet.entries.filter(({ cell }) => !filled.has(cell)),
          ...[...filled].map(([cell, content]): Entry => ({
            cell,
            style: "table",
            content: content as string | number,
          })),
        ],
      };
    }),
  };
}

function sensible(book: Book, sheet: Sheet, entry: Entry, random: () => number): CellValue | undefined {
  const { content, format } = entry;
  if (entry.choices !== undefined) {
    const choices = choicesOf(book, sheet, entry.choices);
    const chosen = choices.at(Math.trunc(random() * choices.length));
    return format && chosen !== undefined ? Number(chosen) : chosen;
  }
  if (format === undefined || format === "text") return typeof content === "number" ? content + 1 : content;
  if (content === undefined) return random() < 0.5 ? undefined : some(format, random);
  if (typeof content !== "number") return content;
  const factor = 0.6 + 0.8 * random();
  if (format === "count") return Math.max(1, Math.round(content * factor));
  return format === "length" || format === "amount"
    ? Math.max(1, Math.round(content * factor * 8)) / 8
    : Math.round(content * factor * 100) / 100;
}

/** A number for a cell that was free. */
function some(format: NonNullable<Entry["format"]>, random: () => number): number {
  if (format === "count") return 1 + Math.trunc(random() * 20);
  return format === "length" || format === "amount"
    ? Math.round(1 + random() * 96) / 8
    : Math.round(random() * 400) / 100;
}

/** What no formula can work with; texts that only the functions read, such as "2 1/2", are none of these. */
function faulty(random: () => number): CellValue | undefined {
  const faults = [undefined, 0, -3, -0.5, 2.7, 5_000, 1e9, "two and a half", "?", "sideways"];
  return faults[Math.trunc(random() * faults.length)];
}

function choicesOf(book: Book, sheet: Sheet, choices: NonNullable<Entry["choices"]>): readonly string[] {
  if (typeof choices !== "string") return choices;
  const [range, on = sheet.name] = choices.split("!").reverse();
  const [from, to] = range.replaceAll("$", "").split(":").map(place);
  const cells = Array.from({ length: to.row - from.row + 1 }, (_, index) => nameOf(from.row + index, from.column));
  const { entries } = book.sheets.find(({ name }) => name === on)!;
  return cells
    .map((cell) => entries.find((entry) => entry.cell === cell)?.content)
    .filter((content): content is string => typeof content === "string" && content !== "");
}

/** Repeatable numbers from 0 to 1. */
function numbers(seed: number): () => number {
  let state = seed * 7919 + 1;
  for (let turn = 0; turn < 3; turn++) state = (state * 48271) % 2147483647;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
