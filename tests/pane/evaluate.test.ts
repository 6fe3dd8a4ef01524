/** What the pane makes of formulas, against two spreadsheet engines: the same value, or a word that it cannot be followed. */
import { CellValueType, type ICellData } from "@univerjs/core";
import fc from "fast-check";
import { ComesToError, orError, type Value } from "../../src/pane/arithmetic";
import { Evaluation } from "../../src/pane/evaluate";
import { valuesIn } from "../../src/pane/pages";
import { type CellValue, isErrorCode, SheetProblem } from "../../src/pane/sheet";
import { recalculate as inPracticeSheet } from "../../src/practice/recalculate";
import { workbookOf } from "../../src/practice/workbook";
import { partsOf } from "../../src/workbooks/syntax";
import { isError, recalculate as inSecondEngine } from "../plain/engines";

/** The first row of a sheet: a formula as it is typed, with what its cell shows, or a value. */
const CELLS: readonly (CellValue | { typed: string; shows: CellValue })[] = [
  null, // A1
  2.5, // B1
  -3, // C1
  "x", // D1
  "3/8", // E1
  true, // F1
  false, // G1
  0, // H1
  { typed: "=NA()", shows: "#N/A" }, // I1
  { typed: "=1/0", shows: "#DIV/0!" }, // J1
  { typed: '=""', shows: "" }, // K1
  0.1, // L1
  "Star", // M1
  null, // N1
];
const shows = CELLS.map((cell) => (isTyped(cell) ? cell.shows : cell));
const page = { name: "Sheet1", row: 0, column: 0, values: [shows], formulas: [shows.map(() => "")] };

function isTyped(cell: (typeof CELLS)[number]) {
  return typeof cell === "object" && cell !== null;
}

/** A cell as the practice sheet keeps it. */
function inPractice(cell: (typeof CELLS)[number]): ICellData {
  if (isTyped(cell)) return { f: cell.typed };
  if (typeof cell === "boolean") return { v: Number(cell), t: CellValueType.BOOLEAN };
  return { v: cell, t: typeof cell === "string" ? CellValueType.STRING : null };
}

/** What a formula comes to; undefined where it cannot be followed. */
async function followed(formula: string): Promise<Value | undefined> {
  const evaluation = new Evaluation({
    cells: (reference) => Promise.resolve(valuesIn([page], reference, "Sheet1")),
    call: () => Promise.reject(new Error("no function of ours is called here")),
  });
  try {
    const value = await orError(evaluation.evaluate(partsOf(formula)!));
    return value instanceof ComesToError ? value.code : value;
  } catch (thrown) {
    if (thrown instanceof SheetProblem) return undefined;
    throw thrown;
  }
}

const NAMES = "ABCDEFGHIJKLMN".split("").map((column) => `${column}1`);
const LITERALS = ["0", "1", "2.5", "3", "50%", "TRUE", '"x"', '"star"', '""', '"5"', "#N/A"];
const RANGES = ["A1:C1", "B1:H1", "C1:J1", "K1:N1", "A1:A1", "{1,2;3,TRUE}"];
const OPERATORS = ["+", "-", "*", "/", "^", "&", "=", "<>", "<", ">", "<=", ">="];

const { formulas } = fc.letrec<{ part: string; formulas: string }>((tie) => {
  const part = tie("part");
  const several = fc.oneof(part, fc.constantFrom(...RANGES));
  const call = (name: string, ...given: fc.Arbitrary<string>[]) =>
    fc.tuple(...given).map((texts) => `${name}(${texts.join(",")})`);
  const digits = fc.constantFrom("-1", "0", "1", "2", "B1");
  return {
    formulas: part,
    part: fc.oneof(
      { maxDepth: 3, depthSize: "small" },
      { weight: 4, arbitrary: fc.constantFrom(...NAMES) },
      { weight: 3, arbitrary: fc.constantFrom(...LITERALS) },
      { weight: 5, arbitrary: fc.tuple(part, fc.constantFrom(...OPERATORS), part).map((three) => three.join("")) },
      { weight: 2, arbitrary: fc.tuple(part, fc.constantFrom(...OPERATORS), part).map((all) => `(${all.join("")})`) },
      { weight: 1, arbitrary: fc.tuple(fc.constantFrom("-", "+"), part).map((both) => both.join("")) },
      { weight: 1, arbitrary: part.map((one) => `(${one})%`) },
      { weight: 2, arbitrary: fc.constantFrom("SUM", "MAX", "MIN").chain((name) => call(name, several, several)) },
      { weight: 1, arbitrary: fc.constantFrom("ABS", "SQRT", "INT", "ISERROR").chain((name) => call(name, part)) },
      {
        weight: 1,
        arbitrary: fc.constantFrom("ROUND", "ROUNDUP", "ROUNDDOWN").chain((name) => call(name, part, digits)),
      },
      {
        weight: 1,
        arbitrary: call(
          "INDEX",
          fc.constantFrom("B1:H1", "A1:N1", "{4;5;6}"),
          fc.constantFrom("1", "2", "3", "9", "B1"),
        ),
      },
      { weight: 2, arbitrary: call("IF", part, part, part) },
      { weight: 1, arbitrary: call("IFERROR", part, part) },
    ),
  };
});

/** The same ones each time. */
const drawn = [...new Set(fc.sample(formulas, { numRuns: 1000, seed: 20240229 }))].map((text) => `=${text}`);

test.each<[string, CellValue]>([
  ["=A1=0", true],
  ['=A1=""', true],
  ["=A1=FALSE", true],
  ["=A1=N1", true],
  ['="1"=1', false],
  ['=1<"a"', true],
  ['="star"=M1', true],
  ['="b">"A"', true],
  ["=K1=0", false],
  ["=MAX(A1:A1)", 0],
  ["=MIN(D1:E1)", 0],
  ["=SUM(B1:H1)", -0.5],
  ["=SUM(B1:J1)", "#N/A"],
  ["=MAX(J1,I1)", "#DIV/0!"],
  ["=B1/A1", "#DIV/0!"],
  ["=IF(I1,1,2)", "#N/A"],
  ["=IF(H1,1)", false],
  ["=I1&1", "#N/A"],
  ["=#REF!+1", "#REF!"],
  ["=SQRT(C1)", "#NUM!"],
  ["=10^309", "#NUM!"],
  ["=-2^2", 4],
  ["=2^3^2", 64],
  ["=2^-1", 0.5],
  ["=-5%", -0.05],
  ["=200%%", 0.02],
  ["=1/3&F1", "0.333333333333333TRUE"],
  ['=0.1+0.2&""', "0.3"],
  ["=ROUND(2.675,2)", 2.68],
  ["=ROUND(-2.5,0)", -3],
  ["=ROUNDUP(21.1,-1)", 30],
  ["=ROUNDDOWN(-2.79,1.9)", -2.7],
  ["=INT(C1/2)", -2],
  ["=INDEX(A1:C1,3)", -3],
  ["=INDEX(A1:J1,1,9)", "#N/A"],
  ["=IFERROR(J1,B1)", 2.5],
  ["=IFERROR(B1,J1)", 2.5],
  ["=ISERROR(I1+1)", true],
  ["=SUM(A1:INDEX(A1:C1,1,2))", 2.5],
])("%s is %j", async (formula, value) => {
  expect(await followed(formula)).toEqual(value);
});

test.each([
  ["=E1*1", "a date, a number or an error"],
  ['="5"+1', "that too"],
  ["=K1+1", "an empty text"],
  ["=SUM(TRUE,1)", "a value among those of a sum, which in a cell would be passed over"],
  ["=0^0", "1 or an error"],
  ["=C1^0.5", "an error or a root"],
  ["=0.1+0.2=0.3", "the last binary digits"],
  ["=0.1+0.2-0.3", "almost nothing"],
  ["=INT((0.1+0.7)*10)", "almost 8"],
  ['="a-b"<"ab"', "an order of the maker's language"],
  ["=F1>1", "different kinds"],
  ["=-F1", "an error in some programs"],
  ["=IF(E1,1,2)", "text that is neither true nor false"],
  ["=IF(F1,,2)", "a branch left out"],
  ["=IFERROR(A1,1)", "0 or an empty text"],
  ["=A1:C1*2", "several cells at once"],
  ["=@A1:C1", "the cell that stands in line with the formula"],
  ["=INDEX(A1:C1,2,2)", "outside of the table"],
  ["=INDEX({1,2;3,4},2)", "a whole row"],
  ["=A1:INDEX({1,2},1,2)", "no cell"],
  ["=A1:A2 A1", "what ranges have in common"],
  ["=1E15&1", "digits that programs write otherwise"],
  ["=CONSTRUCTOR(1)", "no function"],
])("%s cannot be followed: %s", async (formula) => {
  expect(await followed(formula)).toBeUndefined();
});

test("half of all formulas can be followed, and more than just their errors", async () => {
  const values = await Promise.all(drawn.map(followed));
  const known = values.filter((value) => value !== undefined);
  expect(known.length).toBeGreaterThan(drawn.length / 2);
  expect(known.filter((value) => !isErrorCode(value)).length).toBeGreaterThan(drawn.length / 4);
});

test("as in the practice sheet", async () => {
  const rows = [CELLS.map(inPractice), ...drawn.map((f) => [{ f }])];
  const sheet = { name: "Sheet1", cellData: Object.fromEntries(rows.entries()), rowCount: rows.length };
  const { Sheet1 } = await inPracticeSheet(workbookOf("Followed", [sheet]));
  expect(await differences((index) => Sheet1.values[`A${index + 2}`])).toEqual([]);
});

test("as in a second engine", async () => {
  const typed = CELLS.map((cell) => (isTyped(cell) ? cell.typed : cell));
  const [rows] = inSecondEngine([[typed, ...drawn.map((formula) => [...typed.map(() => null), formula])]]);
  expect(await differences((index) => rows[index + 1][CELLS.length])).toEqual([]);
});

/** The formulas that come to something else in an engine than in the pane. */
async function differences(shownAt: (index: number) => unknown): Promise<string[]> {
  const found: string[] = [];
  for (const [index, formula] of drawn.entries()) {
    const [own, shown] = [await followed(formula), shownAt(index)];
    if (own !== undefined && !Array.isArray(own) && !isSame(own, shown))
      found.push(`${formula}: ${JSON.stringify(own)}, the engine shows ${JSON.stringify(shown)}`);
  }
  return found;
}

function isSame(own: CellValue, shown: unknown): boolean {
  // A cell that hands on an empty one may be empty itself.
  if (own === null || own === "") return shown === undefined || shown === "" || (own === null && shown === 0);
  if (isErrorCode(own)) return typeof shown === "string" && isError(shown);
  if (typeof own === "number" && typeof shown === "number")
    return Math.abs(own - shown) <= 1e-9 * Math.max(1, Math.abs(own));
  // The second engine tells TRUE as a text, and keeps the sign of -0.
  return own === shown || String(own).toUpperCase() === String(shown).toUpperCase().replace(/-0$/, "0");
}
