/** Names of sheets that the grid takes and no file may hold. */
import { Workbook } from "@cj-tech-master/excelts";
import type { IWorkbookData } from "@univerjs/core";
import { copyForClass } from "../../src/practice/classCopy";
import { workbookOf } from "../../src/practice/workbook";
import { readXlsx } from "../../src/practice/xlsx/read";
import { namesInFile, renamedSheets, withSheetsRenamed } from "../../src/practice/xlsx/sheetNames";
import { writeXlsx } from "../../src/practice/xlsx/write";
import { cellIn, partsOf } from "../classCopy/workbooks";
import { Recalculated } from "./recalculate";

const PLAN = "xl/worksheets/sheet2.xml";
const LONG = "x".repeat(31);

test.each<[string, string[], string[]]>([
  ["names that may stay", ["Plan", "It's one", LONG, "日本"], ["Plan", "It's one", LONG, "日本"]],
  ["the name that programs keep for themselves", ["History", "Plan"], ["History 2", "Plan"]],
  ["names that differ in capitals alone", ["Plan", "plan", "PLAN", "plan 2"], ["Plan", "plan 3", "PLAN 4", "plan 2"]],
  ["names that are too long", [`${LONG}1`, `${LONG}2`], [LONG, `${"x".repeat(29)} 2`]],
  ["signs that may not stand in names", ["Rows: 1/2", "'a'", "[b]?*\\", "''"], ["Rows- 1-2", "a", "-b----", "Sheet"]],
  ["names cut within a character", [`${"x".repeat(30)}🧵`], ["x".repeat(30)]],
])("%s", (_, names, inFile) => {
  expect(namesInFile(names)).toEqual(inFile);
  const file = new Workbook();
  for (const name of inFile) expect(file.addWorksheet(name).name).toBe(name);
});

test("formulas name the sheets as they are called then, and nothing else changes in them", () => {
  const names = renamedSheets(["History", "it's: 1", "Plan"]);
  expect([...names]).toEqual([
    ["History", "History 2"],
    ["it's: 1", "it's- 1"],
  ]);
  const formula = `=History!A1+SUM('it''s: 1'!A:B)+Plan!A1&"History!A1"&History!side+HISTORY(A1)`;
  expect(withSheetsRenamed(formula, names)).toBe(
    `='History 2'!A1+SUM('it''s- 1'!A:B)+Plan!A1&"History!A1"&'History 2'!side+HISTORY(A1)`,
  );
});

describe("a workbook with a sheet called History", () => {
  let saved: Uint8Array;
  let copied: Uint8Array;

  beforeAll(async () => {
    const history = {
      0: { 0: { v: 3 }, 1: { f: "=QUILT.CUTSQUARE(A1)" }, 2: { f: '=QUILT.PLANSTRIPS({"p",5,5,200})' } },
    };
    const plan = { 0: { 0: { f: "=History!A1*2" }, 1: { f: "=QUILT.CUTSQUARE(History!A1)" }, 2: { f: "=side" } } };
    const name = { id: "n", name: "side", formulaOrRefString: "History!$A$1" };
    const book = await Recalculated.open({
      ...workbookOf("E", [
        { name: "History", cellData: history },
        { name: "Plan", cellData: plan },
      ]),
      resources: [{ name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify({ n: name }) }],
    });
    saved = await writeXlsx(book.content());
    copied = (await copyForClass(book.content(), book.engine())).bytes;
    book.close();
  });

  test("is saved with all that it holds, and works out to the same when it is opened again", async () => {
    expect(partsOf(saved).get("xl/workbook.xml")).toMatch(/name="History 2".*name="Plan"/s);
    expect(cellIn(saved, "A1", PLAN)).toContain("<f>&apos;History 2&apos;!A1*2</f><v>6</v>");
    const read = (await readXlsx(saved)) as { workbook: Partial<IWorkbookData> };
    const again = await Recalculated.open(read.workbook);
    expect(["A1", "B1", "C1"].map((cell) => again.value("Plan", cell))).toEqual([6, 3.5, 3]);
    expect(again.value("History 2", "B1")).toBe(3.5);
    again.close();
  });

  test("makes a class copy", () => {
    expect(cellIn(copied, "B1")).toContain("<v>3.5</v>");
    expect(cellIn(copied, "C1")).toMatch(/<c r="C1"[^>]*><v>25<\/v>/);
    expect(cellIn(copied, "B1", PLAN)).toMatch(/'History 2'!A1.*<v>3.5<\/v>/);
  });
});

test("names of ranges come back, however their sheets are called", async () => {
  for (const name of ["Bob's plan", "A1", "a-b", "Plan"]) {
    const range = `'${name.replace("'", "''")}'!$A$1`;
    const names = { n: { id: "n", name: "side", formulaOrRefString: range } };
    const book = await Recalculated.open({
      ...workbookOf("E", [{ name, cellData: { 0: { 0: { v: 3 }, 1: { f: "=side*2" } } } }]),
      resources: [{ name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(names) }],
    });
    const bytes = await writeXlsx(book.content());
    book.close();
    expect(partsOf(bytes).get("xl/workbook.xml")).toContain(`name="side">${range.replaceAll("'", "&apos;")}<`);
    const again = await Recalculated.open(((await readXlsx(bytes)) as { workbook: Partial<IWorkbookData> }).workbook);
    expect([name, again.value(name, "B1")]).toEqual([name, 6]);
    expect(partsOf(await writeXlsx(again.content())).get("xl/workbook.xml")).toBe(
      partsOf(bytes).get("xl/workbook.xml"),
    );
    again.close();
  }
});
