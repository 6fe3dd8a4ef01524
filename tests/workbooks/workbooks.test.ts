/** The planning workbooks: their answers, their files, and what becomes of them when the inputs change. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import metadata from "../../manifest/functions.json";
import { evaluateBook, recalculate } from "../../src/practice/recalculate";
import { plannedWorkbook } from "../../src/practice/planned";
import { readXlsx } from "../../src/practice/xlsx/read";
import type { Book, CellValue, Entry, WorkedSheet } from "../../src/workbooks/book";
import { isFormula, place, roomOf } from "../../src/workbooks/book";
import { quiltCalls } from "../../src/workbooks/formats";
import { type Part, partsOf } from "../../src/workbooks/syntax";
import { Recalculated } from "../practice/recalculate";
import { formulas, names, written } from "./books";

const arguments_ = new Map(metadata.functions.map(({ id, parameters }) => [id, parameters]));

describe.each(names)("%s", (name) => {
  test("no cell holds an error, and every formula has an answer", async () => {
    const { book, worked } = await written(name);
    for (const { sheet, entry } of formulas(book)) {
      const where = `${sheet.name}!${entry.cell}`;
      expect([where, worked[sheet.name].values[entry.cell]]).not.toEqual([where, undefined]);
    }
    expect(errors(worked)).toEqual([]);
  });

  test("tables stay within the room that is kept for them, and cover nothing", async () => {
    const { book, worked } = await written(name);
    for (const sheet of book.sheets) {
      const typed = new Set(sheet.entries.map(({ cell }) => cell));
      for (const [cell, range] of Object.entries(worked[sheet.name].tables)) {
        const entry = sheet.entries.find((entry) => entry.cell === cell)!;
        const [from, to] = range.split(":").map(place);
        expect(entry.room).toBeDefined();
        expect(to.row - from.row).toBeLessThan(entry.room!.rows);
        const room = roomOf(entry).map(({ cell }) => cell);
        expect(room.filter((other) => other !== cell && typed.has(other))).toEqual([]);
      }
    }
  });

  test("every QUILT function is called with as many arguments as it has", async () => {
    const { book } = await written(name);
    for (const { formula } of formulas(book)) {
      for (const call of callsOf(partsOf(formula)!)) {
        const id = call.name.replace("QUILT.", "");
        const parameters = arguments_.get(id);
        expect([id, parameters !== undefined]).toEqual([id, true]);
        expect(call.given.length).toBeLessThanOrEqual(parameters!.length);
        const least = parameters!.filter((parameter) => !("optional" in parameter && parameter.optional)).length;
        expect(call.given.length).toBeGreaterThanOrEqual(least);
      }
    }
  });

  test("the file is valid", async () => {
    const { bytes } = await written(name);
    const folder = mkdtempSync(join(tmpdir(), "workbooks-"));
    try {
      const file = join(folder, "book.xlsx");
      writeFileSync(file, bytes);
      const faults = execFileSync("node", [join(__dirname, "validate.mjs"), file], { encoding: "utf8" });
      expect(JSON.parse(faults)).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test("the file stores calls as the program with the add-in does", async () => {
    const { book, bytes } = await written(name);
    const parts = unzipSync(bytes);
    const sheets = Object.keys(parts).filter((path) => path.startsWith("xl/worksheets/sheet"));
    const xml = sheets.map((path) => strFromU8(parts[path])).join("\n");
    const stored = [...xml.matchAll(/<c ([^>]*)><f([^>]*)>([^<]*)<\/f>/g)];
    expect(stored).toHaveLength(formulas(book).length);
    for (const [, cell, attributes, formula] of stored) {
      expect(formula).not.toMatch(/QUILT\./);
      if (!formula.includes("_xldudf_")) continue;
      expect(cell).toContain('cm="1"');
      expect(attributes).toMatch(/t="array" ref="[A-Z]+\d+(:[A-Z]+\d+)?"/);
    }
    expect(parts["xl/metadata.xml"]).toBeDefined();
    expect(strFromU8(parts["xl/workbook.xml"])).not.toContain('fullCalcOnLoad="1"');
    const reference = strFromU8(parts["xl/webextensions/webextension1.xml"]);
    const called = new Set(formulas(book).flatMap(({ formula }) => quiltCalls(formula)));
    for (const id of called)
      expect(reference).toContain(`<we:customFunctionIds>_xldudf_QUILT_${id}</we:customFunctionIds>`);
    expect(Object.keys(parts).filter((path) => /vba|macro/i.test(path))).toEqual([]);
    expect(xml).not.toContain("mergeCell");
  });

  test("the practice sheet opens the file and comes to the answers that it holds", async () => {
    const { worked, bytes } = await written(name);
    const opened = await readXlsx(bytes);
    if ("refusal" in opened) throw new Error(opened.refusal);
    const again = await recalculate(opened.workbook);
    for (const [sheet, { values }] of Object.entries(worked)) {
      for (const [cell, value] of Object.entries(values))
        expect([sheet, cell, again[sheet].values[cell] ?? ""]).toEqual([sheet, cell, value]);
    }
  });

  test.each([1, 2])("changed inputs give answers or sentences (%d)", async (seed) => {
    const { book } = await written(name);
    const worked = await evaluateBook(changed(book, seed));
    const opened = await Recalculated.open(plannedWorkbook(changed(book, seed)));
    for (const { sheet, cell } of errors(worked)) {
      const explained = await opened.explain(sheet, cell);
      expect([sheet, cell, explained?.sentence]).toEqual([sheet, cell, expect.stringMatching(/^\S.{10,}/)]);
    }
    opened.close();
    for (const { values } of Object.values(worked)) {
      for (const value of Object.values(values))
        if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
    }
  });
});

test.each(names)("%s works in centimeters, and text lengths in inches stay inches", async (name) => {
  const { book } = await written(name);
  const [sheet, cell] = book.units.replaceAll("$", "").split("!");
  const metric = mapInputs(book, (entry, name) => {
    if (name === sheet && entry.cell === cell) return "cm";
    if (entry.format === "length" && typeof entry.content === "number") return `${entry.content} in`;
    // An eighth of a yard is no step of a meter.
    return entry.format === "amount" && entry.content === 0.125 ? 0.1 : entry.content;
  });
  expect(errors(await evaluateBook(metric))).toEqual([]);
});

test("the quilt planner measures the same quilt in centimeters", async () => {
  const { book, worked } = await written("quilt-planner");
  const metric = mapInputs(book, (entry, sheet) => {
    if (sheet === "Design" && entry.cell === "B6") return "cm";
    return entry.format === "length" && typeof entry.content === "number" ? `${entry.content} in` : entry.content;
  });
  const { H6, I6 } = (await evaluateBook(metric)).Design.values as Record<string, number>;
  expect(H6).toBeCloseTo((worked.Design.values.H6 as number) * 2.54, 6);
  expect(I6).toBeCloseTo((worked.Design.values.I6 as number) * 2.54, 6);
});

test("a wider border asks for more of its fabric, and for a larger backing", async () => {
  const { book, worked } = await written("quilt-planner");
  const wider = await evaluateBook(withInput(book, "Design", "B16", 9));
  expect(wider.Design.values.H6).toBe((worked.Design.values.H6 as number) + 8);
  expect(wider.Design.values.G26).toBeGreaterThan(worked.Design.values.G26 as number);
  expect(wider.Design.values.H9).not.toBe(worked.Design.values.H9);
});

test("a margin and a markup of 45 % are different prices", async () => {
  const { worked } = await written("kit-costing");
  const { H9, H13, I13 } = worked.Kit.values as Record<string, number>;
  expect(H13).toBeCloseTo(H9 / 0.55, 2);
  expect(I13).toBeCloseTo(H9 * 1.45, 2);
});

test("each size of a class is counted anew", async () => {
  const { worked } = await written("class-planner");
  // 5 × 7 blocks of 8 in: 18 pinwheels of four units, so 36 pairs of squares of 4 7/8 in, 8 to a strip of 42 in.
  expect(worked.Lap.values).toMatchObject({ F7: 18, F8: 72, E24: 36, F24: 4.875, C24: 5, F5: 50, G5: 66 });
});

test("a pattern's mistakes are named with their amounts", async () => {
  const { worked } = await written("pattern-checker");
  expect(worked.Pieces.values.J7).toMatch(/^cannot be right: /);
  expect(worked.Pieces.values.J6).toMatch(/^OK/);
  expect(worked.Fabric.values.F7).toBe(
    "cannot be right: short by 3 1/2 in: the patches take 152 in, 148 1/2 in are there",
  );
  const verdicts = Object.values(worked).flatMap(({ values }) => Object.values(values).filter(isWrong));
  const total = book(worked.Pattern.values);
  expect(verdicts.length).toBe(total);
});

function isWrong(value: CellValue): boolean {
  return typeof value === "string" && value.startsWith("cannot be right: ");
}

/** The count of mistakes that the sheet Pattern states. */
function book(values: Record<string, CellValue>): number {
  return Number(/^(\d+) of/.exec(String(values.A13))![1]);
}

function errors(worked: Record<string, WorkedSheet>): { sheet: string; cell: string; value: CellValue }[] {
  return Object.entries(worked).flatMap(([sheet, { values }]) =>
    Object.entries(values)
      .filter(([, value]) => typeof value === "string" && /^#[A-Z/0!?]+$/.test(value))
      .map(([cell, value]) => ({ sheet, cell, value })),
  );
}

function callsOf(parts: readonly Part[]): { name: string; given: Part[][] }[] {
  return parts.flatMap((part) => {
    if (part.kind === "leaf") return [];
    if (part.kind === "group") return callsOf(part.parts);
    const inner = part.given.flatMap((given) => callsOf(given));
    return part.name.startsWith("QUILT.") ? [part, ...inner] : inner;
  });
}

function withInput(source: Book, sheetName: string, cell: string, content: number): Book {
  return mapInputs(source, (entry, sheet) => (sheet === sheetName && entry.cell === cell ? content : entry.content));
}

/** The same book with its yellow numbers changed, now and then emptied or made text. */
function changed(source: Book, seed: number): Book {
  const random = numbers(seed);
  return mapInputs(source, (entry) => {
    if (typeof entry.content !== "number") return entry.content;
    const kind = random();
    if (kind < 0.5) return entry.content;
    if (kind < 0.55) return undefined;
    if (kind < 0.6) return "two and a half";
    if (kind < 0.65) return `${Math.round(entry.content * 10) / 4} cm`;
    const factor = 0.5 + random();
    return entry.format === "count"
      ? Math.max(1, Math.round(entry.content * factor))
      : Math.round(entry.content * factor * 8) / 8;
  });
}

function mapInputs(source: Book, change: (entry: Entry, sheet: string) => Entry["content"]): Book {
  return {
    ...source,
    sheets: source.sheets.map((sheet) => ({
      ...sheet,
      entries: sheet.entries.map((entry) =>
        entry.style.startsWith("input") && !isFormula(entry.content)
          ? { ...entry, content: change(entry, sheet.name) }
          : entry,
      ),
    })),
  };
}

/** Repeatable numbers from 0 to 1. */
function numbers(seed: number): () => number {
  let state = seed * 7919;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
