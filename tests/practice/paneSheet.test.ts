/** The practice sheet as the pane reads and changes it. */
import { BooleanNumber } from "@univerjs/core";
import { type OpenSheet, PaneSheet } from "../../src/practice/paneSheet";
import { workbookOf } from "../../src/practice/workbook";
import { SheetProblem } from "../../src/pane/sheet";
import { Recalculated } from "./recalculate";

/** Made anew each time, as the engine changes them. */
const cellData = () => ({
  0: { 0: { v: "width" }, 1: { v: 66 }, 2: { v: 0, t: 3 } },
  1: { 0: { v: "length" }, 1: { v: 77, s: { bg: { rgb: "rgb(192,57,43)" } } }, 2: { v: "4 1/2" } },
  3: { 0: { f: "=QUILT.BORDERSIZE(45,54,5)" } },
  6: { 0: { f: "=QUILT.CUTSQUARE(B1)" }, 1: { f: "=B1/0" }, 2: { v: "", s: { bg: { rgb: "#FFEEDD" } } } },
});

let book: Recalculated;
let open: OpenSheet | undefined;
let sheet: PaneSheet;

beforeEach(async () => {
  const names = { first: { id: "first", name: "Sizes", formulaOrRefString: "Plan!$B$1:$B$2" } };
  book = await Recalculated.open({
    ...workbookOf("Harbor lights", [
      { name: "Plan", cellData: cellData() },
      { name: "Other page", cellData: { 0: { 0: { v: 3 } } } },
      { name: "Hidden", hidden: BooleanNumber.TRUE },
    ]),
    resources: [{ name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(names) }],
  });
  open = { engine: book.engine(), content: () => book.content(), name: "Harbor lights", mine: true };
  sheet = new PaneSheet(() => open);
});

afterEach(() => {
  book.close();
});

test("tells the selected cell, its formula and what it shows", async () => {
  book.select("Plan", "A7");
  expect(await sheet.selected()).toEqual({
    name: "A7",
    page: "Plan",
    formula: "=QUILT.CUTSQUARE(B1)",
    home: "A7",
    shown: "66.5",
  });
});

test("of a cell that a table fills it tells the formula of the table", async () => {
  book.select("Plan", "B4");
  expect(await sheet.selected()).toMatchObject({
    name: "B4",
    formula: "=QUILT.BORDERSIZE(45,54,5)",
    home: "A4",
    shown: "64",
  });
});

test.each([
  ["B1:B2", "B1:B2"],
  ["C2", "C2"],
  ["B:C", "B:C"],
])("names the selection %s", async (range, name) => {
  book.select("Plan", range);
  expect(await sheet.selectedRange()).toBe(name);
});

test.each([
  [
    "B1:C2",
    [
      [66, false],
      [77, "4 1/2"],
    ],
  ],
  ["$B$1", [[66]]],
  ["b1", [[66]]],
  ["A4#", [[55, 64]]],
  ["A4:C4", [[55, 64, null]]],
  ["B7", [["#DIV/0!"]]],
  ["C9:C10", [[null], [null]]],
  ["'Other page'!A1", [[3]]],
  ["Sizes", [[66], [77]]],
  ["B:B", [[66], [77], [null], [64], [null], [null], ["#DIV/0!"]]],
])("reads the values of %s", async (reference, values) => {
  expect(await sheet.values(reference, "Plan")).toEqual(values);
});

test.each([
  ["Nowhere!A1", "There is no page “Nowhere”"],
  ["B1#", "No table starts in B1"],
  ["NoName", "“NoName” names no cells that can be read here"],
])("says why it cannot read %s", async (reference, sentence) => {
  await expect(sheet.values(reference, "Plan")).rejects.toThrow(new SheetProblem(sentence));
});

test("reads the colors of cells in the shape of their values", async () => {
  expect(await sheet.fills("B1:B2", "Plan")).toEqual([[null], ["#c0392b"]]);
  expect(await sheet.fills("C7", "Plan")).toEqual([["#ffeedd"]]);
});

test("a text is written as if it were typed, and the sheet's undo takes it back", async () => {
  await sheet.writeText({ cell: "C9", page: "plan" }, "QST A B");
  await sheet.writeText({ cell: "C10", page: "Plan" }, "12");
  await sheet.writeText({ cell: "B1", page: "Plan" }, "=60+3");
  await book.settle();
  expect([book.value("Plan", "C9"), book.value("Plan", "C10"), book.value("Plan", "B1")]).toEqual(["QST A B", 12, 63]);
  expect(book.value("Plan", "A7")).toBe(63.5);
  await book.undo();
  expect([book.value("Plan", "B1"), book.value("Plan", "A7")]).toEqual([66, 66.5]);
});

test("a formula is put into the selected cell, or into another one", async () => {
  book.select("Plan", "C9:D10");
  expect(await sheet.insertFormula("=QUILT.CUTSQUARE(3)")).toBe("C9");
  expect(await sheet.insertFormula("=A1*2", { cell: "B5", page: "Other page" })).toBe("B5");
  await book.settle();
  expect([book.value("Plan", "C9"), book.value("Other page", "B5")]).toEqual([3.5, 6]);
});

test("values take the place of formulas, of tables too, and the formulas come back", async () => {
  book.select("Plan", "A4:A7");
  const replaced = await sheet.replaceByValues();
  expect(replaced).toMatchObject({ range: "A4:A7", formulas: 2 });
  const cells = () => ["A4", "B4", "A7"].map((cell) => book.value("Plan", cell));
  const formulas = async () => (await sheet.pages())[0].formulas.flat().filter((formula) => formula !== "");
  expect(cells()).toEqual([55, 64, 66.5]);
  expect(await formulas()).toEqual(["=B1/0"]);
  await book.type("Plan", "B1", 70);
  expect(cells()).toEqual([55, 64, 66.5]);
  await replaced.undo();
  await book.settle();
  expect(cells()).toEqual([55, 64, 70.5]);
  expect(await formulas()).toHaveLength(3);
});

test("the sheet's own undo brings the formulas back as well", async () => {
  book.select("Plan", "A4");
  await sheet.replaceByValues();
  await book.undo();
  expect((await sheet.pages())[0].formulas[3][0]).toBe("=QUILT.BORDERSIZE(45,54,5)");
  expect(book.value("Plan", "B4")).toBe(64);
});

test("where nothing is to be replaced, nothing is changed", async () => {
  book.select("Plan", "A1:B2");
  expect(await sheet.replaceByValues()).toMatchObject({ formulas: 0 });
});

test("hands out all pages but the hidden ones", async () => {
  const pages = await sheet.pages();
  expect(pages.map(({ name }) => name)).toEqual(["Plan", "Other page"]);
  expect(pages[0].values[1]).toEqual(["length", 77, "4 1/2"]);
  expect(pages[0].formulas[6]).toEqual(["=QUILT.CUTSQUARE(B1)", "=B1/0", ""]);
  expect(await sheet.workbookName()).toBe("Harbor lights");
});

test("hands out the file, and the class copy without the functions", async () => {
  expect([...(await sheet.file()).slice(0, 2)]).toEqual([0x50, 0x4b]);
  const { bytes, report } = await sheet.copyForClass();
  expect(bytes.length).toBeGreaterThan(1000);
  expect(report).toMatch(/^2 formulas turned into plain formulas/);
});

test("tells all who listen", () => {
  let calls = 0;
  sheet.onChange(() => (calls += 1));
  sheet.changed();
  expect(calls).toBe(1);
});

test("a sheet that another tab works on is read and not changed", async () => {
  book.select("Plan", "A7");
  open = { ...open!, mine: false };
  expect(await sheet.selected()).toMatchObject({ name: "A7" });
  const refused = /^Another tab works on this sheet/;
  await expect(sheet.insertFormula("=1")).rejects.toThrow(refused);
  await expect(sheet.writeText({ cell: "A1", page: "Plan" }, "x")).rejects.toThrow(refused);
  await expect(sheet.replaceByValues()).rejects.toThrow(refused);
});

test("while a sheet is being opened there is no selection, and all else says so", async () => {
  open = undefined;
  expect(await sheet.selected()).toBeUndefined();
  await expect(sheet.values("A1", "Plan")).rejects.toThrow("The sheet is still being opened.");
  await expect(sheet.file()).rejects.toThrow("The sheet is still being opened.");
});

test("formulas do not come back into another sheet that was opened meanwhile", async () => {
  book.select("Plan", "A7");
  const replaced = await sheet.replaceByValues();
  const other = await Recalculated.open(workbookOf("Other", [{ name: "Plan" }]));
  open = { ...open!, engine: other.engine() };
  await expect(replaced.undo()).rejects.toThrow("Another sheet is open now.");
  other.close();
});

test("pictures are not taken, and the sentence says what to do instead", async () => {
  expect(sheet.whyNot("picture")).toMatch(/save this one/);
  expect(sheet.whyNot("insert")).toBeUndefined();
  await expect(sheet.insertPicture()).rejects.toThrow(/save this one/);
});
