/** Saving to .xlsx and opening it again. */
import { Workbook } from "@cj-tech-master/excelts";
import { BooleanNumber, type ICellData, type IWorkbookData } from "@univerjs/core";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { cellPlace } from "../../src/practice/address";
import { starterWorkbook } from "../../src/practice/starter";
import { emptyWorkbook, workbookOf } from "../../src/practice/workbook";
import { openPackage } from "../../src/practice/xlsx/package";
import { readXlsx } from "../../src/practice/xlsx/read";
import { writeXlsx } from "../../src/practice/xlsx/write";
import { Recalculated } from "./recalculate";

async function saved(workbook: Partial<IWorkbookData>): Promise<Uint8Array> {
  const book = await Recalculated.open(workbook);
  const bytes = await writeXlsx(book.content());
  book.close();
  return bytes;
}

async function opened(bytes: Uint8Array): Promise<Partial<IWorkbookData>> {
  const read = await readXlsx(bytes);
  if ("refusal" in read) throw new Error(read.refusal);
  return read.workbook;
}

function part(bytes: Uint8Array, name: string): string {
  return strFromU8(unzipSync(bytes)[name]);
}

describe("the starter plan", () => {
  let bytes: Uint8Array;

  beforeAll(async () => {
    bytes = await saved(starterWorkbook());
  });

  test("stores each call as the host does, with its value", () => {
    const sheet = part(bytes, "xl/worksheets/sheet1.xml");
    expect(sheet).toMatch(
      /<c r="F9"[^>]* cm="1"[^>]*><f t="array" ref="F9">_xldudf_QUILT_CUTHALFSQUARE\(B5,2,B10\)<\/f><v>6.875<\/v>/,
    );
    expect(sheet).toMatch(/<f>B6\*B7<\/f><v>80<\/v>/);
    expect(sheet).not.toMatch(/QUILT\./);
    expect(part(bytes, "xl/metadata.xml")).toMatch(/fDynamic="1"/);
  });

  test("stores a table over the cells that it fills", () => {
    const sheet = part(bytes, "xl/worksheets/sheet2.xml");
    expect(sheet).toMatch(/<c r="A4"[^>]* cm="1"[^>]*><f t="array" ref="A4:G6">_xldudf_QUILT_BACKINGPLAN\(/);
    expect(sheet).toMatch(/<c r="D6"[^>]*><v>3.875<\/v>/);
  });

  test("comes back with formulas, values, look and sizes", async () => {
    const workbook = await opened(bytes);
    const [plan, backing] = workbook.sheetOrder!.map((id) => workbook.sheets![id]);
    const cell = (name: string): ICellData => {
      const { row, column } = cellPlace(name);
      return plan.cellData![row][column];
    };
    expect([plan.name, backing.name]).toEqual(["Plan", "Backing"]);
    expect(cell("F9")).toMatchObject({ f: "=QUILT.CUTHALFSQUARE(B5,2,B10)", v: 6.875 });
    expect(cell("B10")).toMatchObject({
      v: 0.25,
      s: { n: { pattern: "# ??/??" }, bg: { rgb: "#fff9d6" }, cl: { rgb: "#0b4fb3" } },
    });
    expect(cell("A1").s).toMatchObject({ fs: 18, bl: BooleanNumber.TRUE });
    expect(plan.columnData![0].w).toBe(215);
    expect(plan.rowData![0].h).toBe(34);
    expect(plan.defaultRowHeight).toBe(22);
    expect(plan.showGridlines).toBe(BooleanNumber.FALSE);
    // The cells that the table fills are its own, and must not stand in its way.
    expect(backing.cellData).not.toHaveProperty("5");
  });

  test("works out to the same when it is opened and saved once more", async () => {
    const first = await Recalculated.open(starterWorkbook());
    const second = await Recalculated.open(await opened(bytes));
    for (const cell of ["F5", "F9", "F14", "F20", "F23", "H8"]) {
      expect(second.value("Plan", cell)).toBe(first.value("Plan", cell));
    }
    expect(second.value("Backing", "D6")).toBe(3.875);
    const again = await writeXlsx(second.content());
    for (const name of ["xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml"])
      expect(part(again, name)).toBe(part(bytes, name));
    first.close();
    second.close();
  });
});

test("errors, truth, text that looks like a number, merged, frozen and hidden parts come back", async () => {
  const sheet = {
    name: "It's one",
    cellData: {
      0: { 0: { v: "1/4", t: 1 }, 1: { v: 1, t: 3 }, 2: { f: '=QUILT.CUTSQUARE("x")' }, 3: { f: "=1/0" } },
      1: { 0: { v: "line one\nline two" } },
      2: { 0: { v: "constructor" }, 1: { v: "toString" } },
    },
    mergeData: [{ startRow: 1, startColumn: 0, endRow: 1, endColumn: 2 }],
    freeze: { xSplit: 1, ySplit: 1, startRow: 1, startColumn: 1 },
    columnData: { 2: { hd: BooleanNumber.TRUE } },
  };
  const workbook = await opened(
    await saved(workbookOf("Parts", [sheet, { name: "Empty", hidden: BooleanNumber.TRUE }])),
  );
  const [first, second] = workbook.sheetOrder!.map((id) => workbook.sheets![id]);
  expect(first.cellData![0]).toMatchObject({
    0: { v: "1/4", t: 1 },
    1: { v: 1, t: 3 },
    2: { f: '=QUILT.CUTSQUARE("x")', v: "#VALUE!" },
    3: { f: "=1/0", v: "#DIV/0!" },
  });
  expect(first.name).toBe("It's one");
  expect(first.cellData![1][0].v).toBe("line one\nline two");
  expect(first.cellData![2]).toMatchObject({ 0: { v: "constructor" }, 1: { v: "toString" } });
  expect(first.mergeData).toEqual(sheet.mergeData);
  expect(first.freeze).toEqual(sheet.freeze);
  expect(first.columnData![2].hd).toBe(BooleanNumber.TRUE);
  expect(second.hidden).toBe(BooleanNumber.TRUE);
});

test("dates, and rows or columns that are frozen alone, are read from a file made elsewhere", async () => {
  const book = new Workbook();
  const rows = book.addWorksheet("Rows", { views: [{ state: "frozen", ySplit: 2 }] });
  rows.getCell("A1").value = new Date(Date.UTC(2026, 2, 8));
  book.addWorksheet("Columns", { views: [{ state: "frozen", xSplit: 1 }] }).getCell("A1").value = 1;
  const { sheetOrder, sheets } = await opened(new Uint8Array(await book.xlsx.writeBuffer()));
  const [byRow, byColumn] = sheetOrder!.map((id) => sheets![id]);
  // Days since the end of 1899, with the 29 February 1900 that never was.
  expect(byRow.cellData![0][0].v).toBe(46_089);
  expect(byRow.freeze).toEqual({ xSplit: 0, ySplit: 2, startColumn: -1, startRow: 2 });
  expect(byColumn.freeze).toEqual({ xSplit: 1, ySplit: 0, startColumn: 1, startRow: -1 });
});

test("a row of empty cells keeps its look", async () => {
  const book = new Workbook();
  book.addWorksheet("Names").getCell("A3").numFmt = "@";
  const { sheetOrder, sheets } = await opened(new Uint8Array(await book.xlsx.writeBuffer()));
  expect(sheets![sheetOrder![0]].cellData).toMatchObject({ 2: { 0: { s: { n: { pattern: "@" } } } } });
});

test("calls of either form, and names of ranges, are read from a file made elsewhere", async () => {
  const file = new Workbook();
  const page = file.addWorksheet("Sheet1");
  page.getCell("A1").value = 3;
  page.getCell("B1").value = { formula: "QUILT.CUTSQUARE(A1)", result: 1 };
  page.getCell("B2").value = { formula: "_xldudf_QUILT_CUTSQUARE(side)", result: 1 };
  page.getCell("B3").value = { formula: "[1]!_xldudf_QUILT_CUTSQUARE(A1)", result: 1 };
  file.definedNames.add("Sheet1!$A$1", "side");
  const book = await Recalculated.open(await opened(await file.xlsx.writeBuffer()));
  for (const cell of ["B1", "B2", "B3"]) expect([cell, book.value("Sheet1", cell)]).toEqual([cell, 3.5]);
  book.close();
});

describe("a file that cannot be opened says why", () => {
  let good: Record<string, Uint8Array>;

  beforeAll(async () => {
    good = unzipSync(await saved(emptyWorkbook()));
  });

  /** The good file with a part changed. */
  function changed(name: string, change: (xml: string) => string): Uint8Array {
    return zipSync({ ...good, [name]: strToU8(change(strFromU8(good[name]))) });
  }

  async function refusal(bytes: Uint8Array): Promise<string> {
    const read = await readXlsx(bytes);
    return "refusal" in read ? read.refusal : "opened";
  }

  test("nothing, text, another kind of package", async () => {
    expect(await refusal(new Uint8Array())).toMatch(/no \.xlsx file/);
    expect(await refusal(strToU8("quilt,size\n1,2\n"))).toMatch(/no \.xlsx file/);
    expect(await refusal(zipSync({ "word/document.xml": strToU8("<w/>") }))).toMatch(/no \.xlsx workbook/);
  });

  test("with a password", async () => {
    expect(await refusal(Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1))).toMatch(/password/);
  });

  test("cut off, or with broken parts", async () => {
    expect(await refusal(zipSync(good).slice(0, 900))).toMatch(/damaged/);
    const cutOff = "<worksheet><sheetData><row r='1'><c r='A1'><v>1";
    expect(await refusal(changed("xl/worksheets/sheet1.xml", () => cutOff))).toMatch(/damaged/);
    expect(await refusal(changed("xl/workbook.xml", () => "<workbook/>"))).toMatch(/no sheet|damaged/);
  });

  test("that would unpack to very much, in little time and memory", async () => {
    const bomb = zipSync({ ...good, "xl/worksheets/sheet1.xml": new Uint8Array(60_000_000) });
    expect(bomb.length).toBeLessThan(200_000);
    const started = Date.now();
    expect(await refusal(bomb)).toMatch(/too large/);
    expect(Date.now() - started).toBeLessThan(1000);
  });

  test("that lies about how much it unpacks to", async () => {
    const bomb = zipSync({ ...good, "xl/worksheets/sheet1.xml": new Uint8Array(60_000_000) });
    const view = new DataView(bomb.buffer);
    for (let at = 0; at < bomb.length - 28; at++) {
      // The size as it is, in the directory of the package and before the part itself.
      if (view.getUint32(at, true) === 60_000_000) view.setUint32(at, 1000, true);
    }
    const before = process.memoryUsage().rss;
    expect(await refusal(bomb)).not.toBe("");
    expect(process.memoryUsage().rss - before).toBeLessThan(300_000_000);
  });

  test("with definitions that grow", async () => {
    const text = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>';
    expect(await refusal(changed("xl/worksheets/sheet1.xml", (xml) => text + xml))).toMatch(/not opened/);
  });

  test("with tags that are never closed, in little time", () => {
    // The comment keeps the tags from being refused at once.
    const bytes = changed("xl/workbook.xml", () => `<!-- -->${"<extLst ".repeat(100_000)}`);
    const started = Date.now();
    openPackage(bytes);
    expect(Date.now() - started).toBeLessThan(2000);
  });

  test("with tags within tags", async () => {
    const started = Date.now();
    expect(await refusal(changed("xl/styles.xml", (xml) => xml + "<font ".repeat(100_000)))).toMatch(/damaged/);
    expect(Date.now() - started).toBeLessThan(2000);
  });

  test("with too many cells", async () => {
    const row = (r: number) => `<row r="${r}">${Array.from({ length: 50 }, () => "<c><v>1</v></c>").join("")}</row>`;
    const rows = Array.from({ length: 5000 }, (_, index) => row(index + 1)).join("");
    expect(
      await refusal(
        changed("xl/worksheets/sheet1.xml", (xml) =>
          xml.replace(/<sheetData.*?\/>|<sheetData>.*<\/sheetData>/s, `<sheetData>${rows}</sheetData>`),
        ),
      ),
    ).toMatch(/too large/);
  });
});

test("parts that would take for ever are left out, and what is left out is named", async () => {
  const parts = unzipSync(await saved(emptyWorkbook()));
  const name = "xl/worksheets/sheet1.xml";
  const vast =
    '<mergeCells count="1"><mergeCell ref="A1:XFD1048576"/></mergeCells>' +
    '<dataValidations count="1"><dataValidation type="list" sqref="A1:XFD1048576"><formula1>"a,b"</formula1></dataValidation></dataValidations>';
  const xml = strFromU8(parts[name]).replace(/(<\/sheetData>|<sheetData\/>)/, `$1${vast}`);
  const bytes = zipSync({ ...parts, [name]: strToU8(xml), "xl/media/image1.png": new Uint8Array(10) });
  const started = Date.now();
  const read = await readXlsx(bytes);
  expect(Date.now() - started).toBeLessThan(2000);
  expect(read).toMatchObject({ leftOut: ["pictures", "drop-down lists"] });
});
