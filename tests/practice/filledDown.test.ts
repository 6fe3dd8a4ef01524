/** Formulas that were filled down or across: files hold them once, and every cell must have its own. */
import type { ICellData, IWorkbookData } from "@univerjs/core";
import { cellPlace } from "../../src/practice/address";
import { readXlsx } from "../../src/practice/xlsx/read";
import { writeXlsx } from "../../src/practice/xlsx/write";
import { type Cells, cellIn, copyOf, patched, SHEET, workbook } from "../classCopy/workbooks";
import { Recalculated } from "./recalculate";

/**
 * A file in which some cells hold their formulas as given, as an element of the file.
 *
 * @param cells what stands in the cells; those with a formula element hold the value that is stored with it
 */
function file(cells: Cells, formulas: Readonly<Record<string, string>>): Promise<Uint8Array> {
  return workbook({ "Bob's A1": cells }).then((bytes) =>
    patched(bytes, {
      [SHEET]: (xml) =>
        Object.entries(formulas).reduce(
          (changed, [cell, formula]) => changed.replace(new RegExp(`<c r="${cell}"[^>]*>`), (tag) => tag + formula),
          xml,
        ),
    }),
  );
}

async function opened(bytes: Uint8Array): Promise<{ workbook: Partial<IWorkbookData>; leftOut: string[] }> {
  const read = await readXlsx(bytes);
  if ("refusal" in read) throw new Error(read.refusal);
  return read;
}

function cellOf({ sheetOrder, sheets }: Partial<IWorkbookData>, name: string): ICellData | undefined {
  const { row, column } = cellPlace(name);
  return sheets![sheetOrder![0]].cellData?.[row]?.[column];
}

function formulasOf(book: Partial<IWorkbookData>, ...names: string[]): unknown[] {
  return names.map((name) => cellOf(book, name)?.f);
}

const DOWN: Cells = { A1: 1, A2: 2, A3: 3, A4: 4, B1: 2, B2: 4, B3: 6, B4: 8 };
const FOLLOWS = '<f t="shared" si="0"/>';
const DOUBLED = { B1: '<f t="shared" ref="B1:B4" si="0">A1*2</f>', B2: FOLLOWS, B3: FOLLOWS, B4: FOLLOWS };

test("every cell has its own formula and its value", async () => {
  const { workbook: book, leftOut } = await opened(await file(DOWN, DOUBLED));
  expect(formulasOf(book, "B1", "B2", "B3", "B4")).toEqual(["=A1*2", "=A2*2", "=A3*2", "=A4*2"]);
  expect(["B1", "B2", "B3", "B4"].map((name) => cellOf(book, name)?.v)).toEqual([2, 4, 6, 8]);
  expect(leftOut).toEqual([]);
});

test("they are worked out, and saved, and opened once more", async () => {
  const first = await Recalculated.open((await opened(await file(DOWN, DOUBLED))).workbook);
  await first.type("Bob's A1", "A3", 30);
  expect(["B1", "B2", "B3", "B4"].map((name) => first.value("Bob's A1", name))).toEqual([2, 4, 60, 8]);
  const bytes = await writeXlsx(first.content());
  first.close();
  expect(cellIn(bytes, "B3")).toMatch(/<f>A3\*2<\/f><v>60<\/v>/);
  expect(formulasOf((await opened(bytes)).workbook, "B1", "B4")).toEqual(["=A1*2", "=A4*2"]);
});

test.each<[string, string, string, string]>([
  ["dollar signs", "$A$1+A$1+$A1", "D3", "=$A$1+C$1+$A3"],
  ["ranges, whole columns and rows", "SUM(A1:$B2,A:A,$B:B,1:1)", "D3", "=SUM($B3:C4,C:C,$B:D,3:3)"],
  ["texts that look like cells", 'A1&amp;"A1"', "D3", '=C3&"A1"'],
  ["names of sheets that look like cells", "'Bob''s A1'!A1+1", "D3", "='Bob''s A1'!C3+1"],
  [
    "functions and names that look like cells",
    "LOG10(A1)+side+_xlfn.LET(_xlpm.r,A1,_xlpm.r)",
    "D3",
    "=LOG10(C3)+side+LET(r,C3,r)",
  ],
  ["functions of ours", "_xldudf_QUILT_CUTSQUARE(A1,$B$1)", "D3", "=QUILT.CUTSQUARE(C3,$B$1)"],
  ["cells that are not on the sheet", "A1+B1", "A3", "=#REF!+A3"],
])("references move along, with %s", async (_, formula, cell, wanted) => {
  const bytes = await file(
    { B1: 1, [cell]: 2 },
    { B1: `<f t="shared" ref="A1:D9" si="3">${formula}</f>`, [cell]: '<f t="shared" si="3"></f>' },
  );
  expect(cellOf((await opened(bytes)).workbook, cell)).toMatchObject({ f: wanted, v: 2 });
});

test("several groups on one sheet, and a cell that holds its own formula all the same", async () => {
  const { workbook: book } = await opened(
    await file(
      { ...DOWN, C1: 1, C2: 2 },
      {
        ...DOUBLED,
        B2: '<f t="shared" si="0">A2*3</f>',
        C1: '<f t="shared" ref="C1:C2" si="1">B1</f>',
        C2: '<f t="shared" si="1"/>',
      },
    ),
  );
  expect(formulasOf(book, "B1", "B2", "B3", "C1", "C2")).toEqual(["=A1*2", "=A2*3", "=A3*2", "=B1", "=B2"]);
});

test("only the cells of a table are its own", async () => {
  const { workbook: book } = await opened(
    await file(
      { ...DOWN, C1: 5, C2: 6, C3: 7 },
      { B1: '<f t="array" ref="B1:B3">A1:A3*2</f>', C1: '<f t="array" ref="C1">SUM(A1:A3)</f>' },
    ),
  );
  expect(cellOf(book, "B1")).toMatchObject({ f: "=A1:A3*2", v: 2 });
  expect([cellOf(book, "B2"), cellOf(book, "B3")]).toEqual([undefined, undefined]);
  expect(["B4", "C2", "C3"].map((name) => cellOf(book, name)?.v)).toEqual([8, 6, 7]);
});

test("where a formula cannot be told from the file, its value stays, and that is said", async () => {
  const whatIf = await opened(await file(DOWN, { B1: '<f t="dataTable" ref="B1:B4" dt2D="0" dtr="0" r1="A1"/>' }));
  expect(["B1", "B2", "B4"].map((name) => cellOf(whatIf.workbook, name)?.v)).toEqual([2, 4, 8]);
  const orphan = await opened(await file(DOWN, { B2: FOLLOWS }));
  expect(cellOf(orphan.workbook, "B2")).toMatchObject({ v: 4 });
  for (const { leftOut } of [whatIf, orphan]) expect(leftOut).toEqual(["some formulas (their values stay)"]);
});

test("a class copy works with the cells that were filled down", async () => {
  const lengths = { D1: 20, D2: 40, D3: 60, D4: 80 };
  const cells: Record<string, string | number> = { F1: "=_xldudf_QUILT_PLANSTRIPS(A1:D4)", ...lengths };
  for (const row of [1, 2, 3, 4])
    Object.assign(cells, { [`A${row}`]: "p", [`B${row}`]: 5, [`C${row}`]: 5, [`E${row}`]: row * 10 });
  const filled = { D1: '<f t="shared" ref="D1:D4" si="0">E1*2</f>', D2: FOLLOWS, D3: FOLLOWS, D4: FOLLOWS };
  const copy = await copyOf(await file(cells, filled));
  // 200 squares of 5 in, 8 from each strip of 42 in.
  expect(cellIn(copy.bytes, "F1")).toBe('<c r="F1"><v>25</v></c>');
});

test("formulas that would take for ever to read are refused; very many tables are read in little time", async () => {
  const rows = 7_000;
  const cells = Object.fromEntries(Array.from({ length: rows }, (_, index) => [`B${index + 1}`, index]));
  const values = await workbook({ Plan: cells });
  const every = (formula: (row: number) => string) =>
    patched(values, {
      [SHEET]: (xml) => xml.replace(/<c r="B(\d+)"[^>]*>/g, (tag, row: string) => tag + formula(Number(row))),
    });
  const long = `<f t="shared" ref="B1:B${rows}" si="0">LEN("${"x".repeat(8000)}")+A1</f>`;
  for (const [bytes, wanted] of [
    [every((row) => (row === 1 ? long : FOLLOWS)), /too large/],
    [every((row) => `<f>${row === 1 ? "'".repeat(20_000) : 1}</f>`), /too large/],
    [every((row) => `<f t="array" ref="B${row}:C${row}">A${row}</f>`), /^$/],
  ] as const) {
    const started = Date.now();
    const read = await readXlsx(bytes);
    expect("refusal" in read ? read.refusal : "").toMatch(wanted);
    expect(Date.now() - started).toBeLessThan(20_000);
  }
});
