/** Reading and writing the cells of the open workbook, with what stands in for the program's object model. */
import { WorkbookSheet } from "../../src/pane/workbook";

interface Cells {
  values?: unknown[][];
  valueTypes?: string[][];
  formulas?: unknown[][];
  isNullObject?: boolean;
}

/** A range that keeps what is written into it. */
class Range {
  isNullObject: boolean;
  readonly address: string;
  readonly written: unknown[][][] = [];
  readonly entered: unknown[][][] = [];
  readonly worksheet = { name: "S", load: () => undefined };
  /** The ranges that it leads to, by how one asks for them. */
  readonly others: Record<string, Range> = {};

  constructor(
    name: string,
    private readonly cells: Cells = {},
  ) {
    this.address = `S!${name}`;
    this.isNullObject = cells.isNullObject ?? false;
  }

  load(): void {}
  clear(): void {}
  getCell = () => this;
  getRow = () => this.others.row;
  getBoundingRect = (other: Range) => (other === this.others.row ? this.others.whole : undefined);
  getUsedRangeOrNullObject = () => this.others.used;
  getSpillingToRangeOrNullObject = () => this.others.spill;

  get values(): unknown[][] {
    return this.cells.values ?? [[""]];
  }
  set values(values: unknown[][]) {
    this.written.push(values);
  }
  get valueTypes(): string[][] {
    return this.cells.valueTypes ?? this.values.map((line) => line.map((value) => (value === "" ? "Empty" : "String")));
  }
  get formulas(): unknown[][] {
    return this.cells.formulas ?? this.values;
  }
  set formulas(formulas: unknown[][]) {
    this.entered.push(formulas);
  }
}

const MISSING = new Range("A1", { isNullObject: true });

function open(range: Range, names: { page?: Range; book?: Range } = {}): WorkbookSheet {
  const namesOf = (named?: Range) => ({
    getItemOrNullObject: () => ({ isNullObject: !named, load: () => undefined, getRangeOrNullObject: () => named }),
  });
  const page = { isNullObject: false, load: () => undefined, getRange: () => range, names: namesOf(names.page) };
  const workbook = {
    getSelectedRange: () => range,
    worksheets: { getItem: () => page, getItemOrNullObject: () => page },
    names: namesOf(names.book),
  };
  const run = (batch: (context: unknown) => unknown) => batch({ workbook, sync: () => Promise.resolve() });
  const isSetSupported = (_: string, version: string) => version !== "1.12";
  Object.assign(globalThis, { Excel: { run }, Office: { context: { requirements: { isSetSupported } } } });
  return new WorkbookSheet();
}

test.each([
  ["3/8", "'3/8"],
  ["2 1/4 yd", "'2 1/4 yd"],
  ["=1+1", "'=1+1"],
  ["-fold", "'-fold"],
  ["True", "'True"],
  ["star", "star"],
  ["#VALUE!", "#VALUE!"],
  [0.375, 0.375],
  [true, true],
  ["", ""],
])("the value %j takes the place of its formula as %j, and the formula comes back", async (value, written) => {
  const cell = new Range("B1", { values: [[value]], formulas: [["=QUILT.LENGTHTEXT(A1)"]] });
  const replaced = await open(cell).replaceByValues();
  expect([replaced.formulas, cell.written]).toEqual([1, [[[written]]]]);
  await replaced.undo();
  expect(cell.entered).toEqual([[["=QUILT.LENGTHTEXT(A1)"]]]);
});

test("an empty text is no empty cell", async () => {
  const cells = new Range("A1:B1", { values: [["", ""]], valueTypes: [["Empty", "String"]] });
  expect(await open(cells).values("A1:B1", "S")).toEqual([[null, ""]]);
});

test("whole columns are read from their first cells on", async () => {
  const columns = new Range("A:B");
  const used = new Range("B3", { values: [[5]] });
  const row = new Range("A1:B1", { values: [["", ""]] });
  const whole = new Range("A1:B3", {
    values: [
      ["", ""],
      ["", ""],
      ["", 5],
    ],
  });
  Object.assign(columns.others, { used, row });
  Object.assign(used.others, { row, whole });
  expect(await open(columns).values("A:B", "S")).toEqual([
    [null, null],
    [null, null],
    [null, 5],
  ]);
  columns.others.used = MISSING;
  expect(await open(columns).values("A:B", "S")).toEqual([[null, null]]);
});

test("a name of the page goes before one of the workbook; what names no cells is said", async () => {
  const [page, book] = [new Range("A1", { values: [[1]] }), new Range("A2", { values: [[2]] })];
  expect(await open(MISSING, { page, book }).values("Seam", "S")).toEqual([[1]]);
  expect(await open(MISSING, { book }).values("Seam", "S")).toEqual([[2]]);
  await expect(open(MISSING).values("Seam", "S")).rejects.toThrow("Nothing in this workbook is called “Seam”");
  await expect(open(MISSING, { book: MISSING }).values("Seam", "S")).rejects.toThrow("“Seam” is no name of cells");
  await expect(open(page).values("Fabrics[Yards]", "S")).rejects.toThrow("names no cells that can be read here");
});

test("a table that no formula fills is said", async () => {
  const home = new Range("B5");
  home.others.spill = MISSING;
  await expect(open(home).values("B5#", "S")).rejects.toThrow("No formula in B5 fills a table");
});
