/** The sentence behind an error cell. */
import { engineSentence, isErrorCode } from "../../src/practice/errors";
import { workbookOf } from "../../src/practice/workbook";
import { Recalculated } from "./recalculate";

let book: Recalculated;

beforeAll(async () => {
  const cells = {
    0: { 0: { v: "x" }, 1: { f: "=QUILT.CUTSQUARE(A1)" }, 2: { f: "=B1+1" }, 3: { f: "=SUM(C1:C1)" } },
    1: { 0: { v: 1 } },
    2: { 0: { v: "y" } },
    3: { 0: { v: 3 } },
    4: { 1: { f: "=QUILT.CUTSQUARE(A2:A4)" } },
    9: {
      0: { f: "=1/0" },
      1: { f: "=A10" },
      2: { f: "=NOSUCH(1)" },
      3: { v: "#VALUE!" },
      4: { f: "=QUILT.CUTSQUARE(3)" },
    },
    10: { 0: { f: "=QUILT.BACKINGPLAN(66,77)" } },
    11: { 1: { v: "in the way" } },
    14: { 0: { f: '=IFERROR(B1,"fine")' }, 1: { f: "=A16" } },
    15: { 0: { f: "=B15" } },
    17: { 0: { f: '=IF(A1="x",E18,0)' }, 4: { f: '=QUILT.CUTSQUARE("mine")' } },
    18: { 0: { f: "=SUM(E:E)" }, 1: { f: "=SUM(18:18)" } },
  };
  const other = { 0: { 0: { f: "=Plan!B1*2" } } };
  book = await Recalculated.open(
    workbookOf("Errors", [
      { name: "Plan", cellData: cells },
      { name: "Other", cellData: other },
    ]),
  );
});

afterAll(() => {
  book.close();
});

const UNREADABLE = /^finished size: cannot read a length in “x”/;

test.each<[string, string, string, RegExp]>([
  ["of the function that failed", "B1", "#VALUE!", UNREADABLE],
  ["of the cell that a formula reads", "C1", "#VALUE!", /^From B1: finished size: cannot read a length in “x”/],
  ["of the first cell in a chain of them", "D1", "#VALUE!", /^From B1: finished size: cannot read a length in “x”/],
  ["of one cell in a column of answers", "B6", "#VALUE!", /^finished size: cannot read a length in “y”/],
  ["of the program", "A10", "#DIV/0!", /divided by 0/],
  ["of the program, in a cell that is read", "B10", "#DIV/0!", /^From A10: .*divided by 0/],
  ["of a name that is not known", "C10", "#NAME?", /check the spelling/],
  ["of the cell in a whole column", "A19", "#VALUE!", /^From E18: .*“mine”/],
  ["of the cell in a whole row", "B19", "#VALUE!", /^From E18: .*“mine”/],
  ["of a cell that is read, and of no other, beside one that shows none", "A18", "#VALUE!", /^From E18: .*“mine”/],
  ["of a table that has no room", "A11", "#SPILL!", /needs room/],
])("is that %s", async (_, cell, code, sentence) => {
  expect(await book.explain("Plan", cell)).toEqual({ code, sentence: expect.stringMatching(sentence) as string });
});

test("names the sheet where the cell that failed is on another one", async () => {
  expect((await book.explain("Other", "A1"))?.sentence).toMatch(/^From Plan!B1: finished size/);
});

test.each(["B5", "B7", "A15", "D10", "E10", "F20"])(
  "there is none for %s, which shows no error of a formula",
  async (cell) => {
    expect(await book.explain("Plan", cell)).toBeUndefined();
  },
);

test("cells that read each other come to an end", async () => {
  const explained = await book.explain("Plan", "B15");
  expect(explained === undefined || explained.sentence.length > 0).toBe(true);
});

test("follows the cell when it has been changed", async () => {
  await book.type("Plan", "A1", "z");
  expect((await book.explain("Plan", "B1"))?.sentence).toMatch(/“z”/);
  await book.type("Plan", "A1", 2);
  expect(await book.explain("Plan", "B1")).toBeUndefined();
  expect(book.value("Plan", "D1")).toBe(3.5);
});

test("only errors are errors, whatever a cell holds", () => {
  for (const text of ["#VALUE!", "#NAME?", "#SPILL!"]) expect(isErrorCode(text)).toBe(true);
  for (const text of ["constructor", "toString", "valueOf", "__proto__", "", 5, null])
    expect(isErrorCode(text)).toBe(false);
});

test("the sentence for a name comes at once, however many brackets are open", () => {
  const started = Date.now();
  expect(engineSentence("#NAME?", `=x${"{".repeat(200_000)}`)).toMatch(/check the spelling/);
  expect(Date.now() - started).toBeLessThan(1000);
});
