/** What is told of a formula, and kept in a class copy, is what the sheet shows: never another value that was worked out here. */
import { Workbook } from "@cj-tech-master/excelts";
import { readCalls } from "../../src/pane/calls";
import { copyForClass } from "../../src/pane/classCopy";
import type { CellValue, SheetPage } from "../../src/pane/sheet";
import type { Value } from "../../src/pane/arithmetic";
import { patched } from "../classCopy/workbooks";
import { MemorySheet } from "./memorySheet";

describe("the calls of a formula", () => {
  const CELLS = new Map<string, CellValue[][]>([
    ["A1", [[null]]],
    ["B1:B3", [[30], ["#VALUE!"], [40]]],
    ["B2", [["#VALUE!"]]],
    ["C1:F1", [["p", 5, 5, 20]]],
    ["x", [[7]]],
  ]);
  const cellsOf = (reference: string) => Promise.resolve(CELLS.get(reference)!);

  async function outcomes(formula: string, shown?: Value): Promise<unknown[]> {
    const calls = await readCalls(formula, cellsOf, shown);
    if (typeof calls === "string") throw new Error(calls);
    return calls.map(({ outcome }) => ("value" in outcome ? outcome.value : `${outcome.code} ${outcome.sentence}`));
  }

  test.each([
    ["=QUILT.CUTSQUARE(IF(A1=0,3,5))", 3.5],
    ['=QUILT.CUTSQUARE(IF("1"=1,3,5))', 5.5],
    ["=QUILT.CUTSQUARE(3/0)", "#DIV/0! “3/0” in it comes to #DIV/0!"],
    ["=QUILT.FABRIC(SUM(B1:B3))", "#VALUE! “SUM(B1:B3)” in it comes to #VALUE!"],
    ["=QUILT.FABRIC(B2)", "#VALUE! A cell that this formula reads shows #VALUE!. Mend that cell first."],
    ["=QUILT.CUTSQUARE(IFERROR(B2,3))", 3.5],
    [
      '=QUILT.CUTSQUARE("3/8"*1)',
      " The steps cannot be told: The text “3/8” where a number is needed cannot be followed here.",
    ],
    ["=LET(x,3,QUILT.CUTSQUARE(x))", " The steps cannot be told: “x” stands for a part of the formula."],
  ])("of %s come to %j", async (formula, told) => {
    expect(await outcomes(formula)).toEqual([told]);
  });

  test("an error of one call is that of the call around it", async () => {
    expect(await outcomes('=QUILT.CUTSQUARE(QUILT.LENGTH("x"))')).toEqual([
      expect.stringMatching(/^#VALUE! Length: cannot read/),
      '#VALUE! “QUILT.LENGTH("x")” in it comes to #VALUE!',
    ]);
    expect(await outcomes('=QUILT.CUTSQUARE(IFERROR(QUILT.LENGTH("x"),3))')).toContain(3.5);
  });

  test("are told where the cell shows the same, or nothing yet, or where the rest cannot be followed", async () => {
    for (const shown of [3, 3 + 1e-12, "#BUSY!", [[3]]])
      expect(await outcomes("=1.5*QUILT.PLANSTRIPS(C1:F1)/1.5", shown)).toEqual([3]);
    expect(await outcomes("=VLOOKUP(1,C1:F1,2)+QUILT.PLANSTRIPS(C1:F1)", 8)).toEqual([3]);
    expect(await outcomes('=QUILT.LENGTH("x")', "#N/A")).toEqual([expect.stringContaining("cannot read")]);
  });

  test.each<[string, Value]>([
    ["=QUILT.PLANSTRIPS(C1:F1)", 4],
    ["=QUILT.PLANSTRIPS(C1:F1)", "#VALUE!"],
    ["=QUILT.PLANSTRIPS(C1:F1)*2", 3],
    ['=QUILT.LENGTH("x")', 3],
    ["=QUILT.BACKINGPLAN(66,77)", [["anything"]]],
  ])("of %s are not told where the cell shows %j", async (formula, shown) => {
    expect(await outcomes(formula, shown)).toEqual([
      " The steps cannot be told: they come to something else than the sheet shows.",
    ]);
  });
});

describe("a class copy", () => {
  /** A formula in F1 beside a list of pieces, as its file and its open workbook; what follows it belongs to its table. */
  async function copied(formula: string, shown: CellValue[][]): Promise<unknown[][]> {
    const file = new Workbook();
    const sheet = file.addWorksheet("S");
    const pieces = ["p", 5, 5, 20];
    pieces.forEach((value, index) => (sheet.getCell(1, index + 1).value = value));
    const ref = `F1:${"FGHI"[shown[0].length - 1]}${shown.length}`;
    sheet.getCell(1, 6).value = { formula, result: 0, shareType: "array", ref, isDynamicArray: true };
    const values = shown.map((line, row) => [...(row === 0 ? pieces : pieces.map(() => null)), null, ...line]);
    const formulas = values.map((line, row) =>
      line.map((_, column) => (row === 0 && column === 5 ? `=${formula}` : "")),
    );
    const page: SheetPage = { name: "S", row: 0, column: 0, values, formulas };
    const open = Object.assign(new MemorySheet({}), {
      file: async () => new Uint8Array(await file.xlsx.writeBuffer()),
      pages: () => Promise.resolve([page]),
    });
    const { bytes } = await copyForClass(open);
    const copy = new Workbook();
    await copy.xlsx.load(bytes);
    const made = copy.getWorksheet("S")!;
    return shown.map((line, row) => line.map((_, column) => made.getCell(row + 1, column + 6).value));
  }

  const PLAN = "_xldudf_QUILT_PLANSTRIPS(A1:D1)";

  test.each([
    [`IF(E9=0,1,2)*${PLAN}`, 3, 3],
    [`${PLAN}+MAX(E9:E10)`, 3, 3],
    [`${PLAN}/E9`, "#DIV/0!", { error: "#DIV/0!" }],
    [`${PLAN}*"5"`, 15, 15],
    [`${PLAN}*2`, 7, 7],
    [`${PLAN}*2`, "#BUSY!", 6],
    [`VLOOKUP("p",A1:D1,2)+${PLAN}`, 8, 8],
  ])("of %s, which shows %j, holds %j", async (formula, shown, kept) => {
    expect(await copied(formula, [[shown]])).toEqual([[kept]]);
  });

  test("keeps all of a table that cannot be worked out here", async () => {
    const table = [
      ["a", 1],
      ["b", 2],
    ];
    expect(await copied("SORT(_xldudf_QUILT_BACKINGPLAN(66,77))", table)).toEqual(table);
  });

  test("of a name never holds what a cell shows", async () => {
    const file = new Workbook();
    file.addWorksheet("S").getCell("A1").value = { formula: "1+1", result: 2 };
    file.definedNames.add("S!$A$1", "Strips");
    const formula = `VLOOKUP(1,{1,2},2)*_xldudf_QUILT_PLANSTRIPS({"p",5,5,20})`;
    const bytes = patched(new Uint8Array(await file.xlsx.writeBuffer()), {
      "xl/workbook.xml": (xml) => xml.replace(/(<definedName [^>]*>)[^<]*/, `$1${formula.replaceAll('"', "&quot;")}`),
    });
    const page = { name: "S", row: 0, column: 0, values: [[2]], formulas: [["=1+1"]] };
    const open = Object.assign(new MemorySheet({}), {
      file: () => Promise.resolve(bytes as Uint8Array<ArrayBuffer>),
      pages: () => Promise.resolve([page]),
    });
    expect((await copyForClass(open)).report).toContain("1 formula could not be turned");
  });
});
