/**
 * Class copies of the planning workbooks in two spreadsheet programs that are none of ours: every cell shows what the functions
 * show, as the maker has the inputs and as students change them. What is wanted comes from the edition with the functions, in
 * which the cells that became values hold these values: so no cell is left out, whatever it depends on.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Workbook } from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { evaluateBook } from "../../src/practice/recalculate";
import { type Book, type CellValue, isFormula, roomOf, type WorkedSheet } from "../../src/workbooks/book";
import type { Report } from "../../src/workbooks/classCopy";
import { cellName } from "../../src/workbooks/classCopy/places";
import { type Input, type InputSheet, isError, recalculateBooks, type Shown } from "../plain/engines";
import { convert, hasLibreOffice, shown } from "../plain/libreOffice";
import { names, written } from "../workbooks/books";
import { at, otherInputs, type Typed, typedInto, withValues } from "./changedInputs";
import { copyOf, STALE } from "./workbooks";

/** Rounds with inputs that make sense, and with some that make errors, for each workbook; one more as it is. */
const ROUNDS = process.env.FULL_CHECKS ? 20 : 3;

interface Round {
  name: string;
  /** In words, for a message. */
  what: string;
  /** The class copy with the inputs of the round, every answer wrong until it is worked out. */
  copy: Uint8Array;
  /** Its cells as they are typed. */
  sheets: InputSheet[];
  /** What each cell must show. */
  wanted: (sheet: string, cell: string) => CellValue;
}

let rounds: Round[];

beforeAll(async () => {
  rounds = (await Promise.all(names.map(roundsOf))).flat();
}, 300_000);

async function roundsOf(name: string): Promise<Round[]> {
  const { book, worked, bytes } = await written(name);
  const { bytes: copy, report } = await copyOf(bytes, { list: false });
  const kept = withValues(book, valuesOf(report, worked));
  const typed: [string, Typed][] = [
    ["as it is", new Map()],
    ...Array.from({ length: ROUNDS }, (_, seed): [string, Typed] => [
      `inputs ${seed}`,
      otherInputs(book, seed, "sensible"),
    ]),
    ...Array.from({ length: ROUNDS }, (_, seed): [string, Typed] => [
      `faults ${seed}`,
      otherInputs(book, 100 + seed, "faulty"),
    ]),
  ];
  return Promise.all(
    typed.map(async ([what, inputs]): Promise<Round> => {
      const round = poisoned(copy, book, inputs);
      return {
        name,
        what,
        copy: round,
        sheets: await sheetsOf(round),
        wanted: await wantedIn(typedInto(kept, inputs), worked),
      };
    }),
  );
}

function valuesOf({ values }: Report, worked: Record<string, WorkedSheet>) {
  return values.map(({ sheet = "", cell = "" }) => {
    const { values: all, tables } = worked[sheet];
    const cells = tables[cell] ? cellsOf(tables[cell]) : [cell];
    return { sheet, cell, values: Object.fromEntries(cells.map((each) => [each, each in all ? all[each] : ""])) };
  });
}

function cellsOf(range: string): string[] {
  const [, left, top, right, bottom] = /^([A-Z])(\d+):([A-Z])(\d+)$/.exec(range)!;
  const columns = Array.from(
    { length: right.charCodeAt(0) - left.charCodeAt(0) + 1 },
    (_, c) => left.charCodeAt(0) - 64 + c,
  );
  return Array.from({ length: Number(bottom) - Number(top) + 1 }, (_, r) =>
    columns.map((column) => cellName({ row: Number(top) + r, column })),
  ).flat();
}

/**
 * What each cell must show. A table that cannot be worked out shows its error in its first cell; its twin shows one in each of
 * its cells, and so does whatever reads them.
 */
async function wantedIn(book: Book, asItIs: Record<string, WorkedSheet>): Promise<Round["wanted"]> {
  const worked = await evaluateBook(book);
  const failed = book.sheets.flatMap(({ name, entries }) =>
    entries.flatMap((entry) => {
      const cells = roomOf(entry)
        .slice(0, entry.room?.columns.length)
        .map(({ cell }) => cell);
      const fails = cells.length > 1 && isError(String(worked[name].values[entry.cell]));
      return fails
        ? [{ sheet: name, cell: entry.cell, values: Object.fromEntries(cells.map((cell) => [cell, "=NA()"])) }]
        : [];
    }),
  );
  if (failed.length > 0) return wantedIn(withValues(book, failed), asItIs);
  const typed = new Map(
    book.sheets.flatMap(({ name, entries }) =>
      entries.flatMap(({ cell, content }): [string, CellValue][] =>
        content === undefined || isFormula(content) ? [] : [[at(name, cell), content]],
      ),
    ),
  );
  // Nothing reads the further rows of a table that fails.
  const below = new Set(
    Object.entries(asItIs).flatMap(([sheet, { tables }]) =>
      Object.entries(tables)
        .filter(([cell]) => isError(String(worked[sheet].values[cell])))
        .flatMap(([, range]) => cellsOf(range).map((cell) => at(sheet, cell))),
    ),
  );
  return (sheet, cell) => {
    if (below.has(at(sheet, cell))) return "#N/A";
    const { values } = worked[sheet];
    return cell in values ? values[cell] : (typed.get(at(sheet, cell)) ?? "");
  };
}

/** The copy with other inputs, and a wrong value in the cell of every formula. */
function poisoned(copy: Uint8Array, book: Book, inputs: Typed): Uint8Array {
  const parts = unzipSync(copy);
  book.sheets.forEach((sheet, index) => {
    const path = `xl/worksheets/sheet${index + 1}.xml`;
    const xml = strFromU8(parts[path])
      .replace(/<c r="(\w+)"([^>]*?)\/>/g, '<c r="$1"$2></c>')
      .replace(/<c r="(\w+)"([^>]*)>(.*?)<\/c>/gs, (_, cell: string, attributes: string, content: string) => {
        const plain = attributes.replace(/ t="\w+"/, "");
        const key = at(sheet.name, cell);
        if (inputs.has(key)) return `<c r="${cell}"${plain}${contentXml(inputs.get(key))}</c>`;
        const formula = /<f[^>]*>[^<]*<\/f>/.exec(content)?.[0];
        return formula
          ? `<c r="${cell}"${plain}>${formula}<v>${STALE}</v></c>`
          : `<c r="${cell}"${attributes}>${content}</c>`;
      });
    parts[path] = strToU8(xml);
  });
  return zipSync(parts);
}

function contentXml(value: CellValue | undefined): string {
  if (value === undefined || value === "") return ">";
  return typeof value === "number"
    ? `><v>${value}</v>`
    : ` t="inlineStr"><is><t xml:space="preserve">${String(value).replace(/&/g, "&amp;").replace(/</g, "&lt;")}</t></is>`;
}

/** The cells of a workbook as they are typed. */
async function sheetsOf(bytes: Uint8Array): Promise<InputSheet[]> {
  const book = new Workbook();
  await book.xlsx.load(bytes);
  return book.worksheets.map((page) => ({
    name: page.name,
    rows: Array.from({ length: page.rowCount }, (_, row) =>
      Array.from({ length: page.columnCount }, (_, column): Input => {
        const { formula, value } = page.getCell(row + 1, column + 1);
        if (formula) return `=${formula}`;
        return typeof value === "number" || typeof value === "string" ? value : null;
      }),
    ),
  }));
}

/** The cells of a round that do not show what they must. */
function wrong(
  { name, what, sheets, wanted }: Round,
  is: (sheet: number, row: number, column: number) => Shown,
): string[] {
  return sheets.flatMap(({ name: sheet, rows }, index) =>
    rows.flatMap((row, r) =>
      row.flatMap((input, c) => {
        const cell = cellName({ row: r + 1, column: c + 1 });
        const [got, right] = [is(index, r, c), wanted(sheet, cell)];
        return agrees(got, right)
          ? []
          : [
              `${name}, ${what}: ${at(sheet, cell)} shows ${got}, not ${String(right)}: ${String(input).slice(0, 3000)}`,
            ];
      }),
    ),
  );
}

function agrees(is: Shown, wanted: CellValue): boolean {
  if (isError(String(wanted))) return isError(is);
  if (typeof wanted === "number")
    return typeof is === "number" && Math.abs(is - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));
  return is === (typeof wanted === "boolean" ? String(wanted).toUpperCase() : wanted);
}

/** What the formulas of a round must show. */
function answers({ sheets, wanted }: Round): CellValue[] {
  return sheets.flatMap(({ name, rows }) =>
    rows.flatMap((row, r) =>
      row.flatMap((input, c) =>
        String(input).startsWith("=") ? [wanted(name, cellName({ row: r + 1, column: c + 1 }))] : [],
      ),
    ),
  );
}

test.each(names.filter((name) => name !== "block-designer"))("%s: other inputs make other answers", (name) => {
  const all = rounds.filter((round) => round.name === name).map(answers);
  expect(new Set(all.map((each) => JSON.stringify(each))).size).toBe(all.length);
  const [asItIs, ...changed] = all;
  expect(asItIs.length).toBeGreaterThan(50);
  expect(asItIs.filter((value) => isError(String(value)))).toEqual([]);
  const errors = changed.flat().filter((value) => isError(String(value)));
  expect(errors.length).toBeGreaterThan(0);
  expect(errors.length).toBeLessThan(changed.flat().length / 2);
});

/** The functions without a twin, as each workbook's report names them: all that may become values. */
const NO_TWIN: Record<string, RegExp> = {
  "quilt-planner": /^(?:PLAN|PLANLENGTH|QUILTPIECES|BLOCKCHECK)$/,
  "kit-costing": /^(?:BOLTPLAN|STRIPSFIRST|PLANFABRIC)$/,
  "class-planner": /^$/,
};

test.each(Object.entries(NO_TWIN))("%s: only what needs a search or a list becomes a value", async (name, allowed) => {
  const { report } = await copyOf((await written(name)).bytes, { list: false });
  const others = report.values.filter(({ functions }) => !functions.some((id) => allowed.test(id)));
  expect(others.map(({ sheet = "", cell = "" }) => at(sheet, cell))).toEqual([]);
  expect(report.left).toEqual([]);
});

/** A formula as it is worked out; anything else as it is typed. */
function shownOr(worked: Shown | null, typed: Input): Shown {
  return worked ?? (typeof typed === "boolean" ? String(typed).toUpperCase() : (typed ?? ""));
}

test("IronCalc shows what the functions show", () => {
  const worked = recalculateBooks(rounds.map(({ sheets }) => sheets));
  const faults = rounds.flatMap((round, index) =>
    wrong(round, (sheet, row, column) =>
      shownOr(worked[index][sheet][row][column], round.sheets[sheet].rows[row][column]),
    ),
  );
  expect(faults).toEqual([]);
}, 300_000);

(hasLibreOffice() ? test : test.skip)(
  "LibreOffice shows what the functions show",
  async () => {
    const folder = mkdtempSync(join(tmpdir(), "class-copies-"));
    try {
      const files = rounds.map(({ copy }, index) => {
        const file = join(folder, `${index}.xlsx`);
        writeFileSync(file, copy);
        return file;
      });
      convert(folder, ...files);
      const faults: string[] = [];
      for (const [index, round] of rounds.entries()) {
        const back = new Workbook();
        await back.xlsx.load(readFileSync(join(folder, "out", `${index}.xlsx`)));
        faults.push(
          ...wrong(round, (sheet, row, column) => shown(back.worksheets[sheet].getCell(row + 1, column + 1).value)),
        );
      }
      expect(faults).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
  300_000,
);
