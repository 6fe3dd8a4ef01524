/** Files that are no workbook, or none that anybody would keep: a sentence, soon, and nothing made. */
import { strToU8, zipSync } from "fflate";
import { Problem } from "../../src/math/problem";
import { classCopy } from "../../src/workbooks/classCopy";
import { copyOf, formulaIn, partsOf, patched, SHEET, workbook } from "./workbooks";

let plan: Uint8Array;

beforeAll(async () => {
  plan = await workbook({ Plan: { A1: 3, B1: "=_xldudf_QUILT_CUTSQUARE(A1)" } });
});

const text = (words: string) => strToU8(words);

/** An old file with a part of a name, as such files spell it. */
const oldFile = (name: string) =>
  new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...Array<number>(600).fill(0), ...Buffer.from(name, "utf16le")]);

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
const asType = (type: string) => () => patched(plan, { "[Content_Types].xml": (xml) => xml.replace(TYPE, type) });
const withSheet = (change: (xml: string) => string) => () => patched(plan, { [SHEET]: change });
const damaged = "this file is damaged and cannot be read";

test.each<[string, () => Uint8Array, string]>([
  ["nothing", () => new Uint8Array(), "this file is empty"],
  ["a text", () => text("fabric,yards\nblue,2"), "this is no .xlsx workbook"],
  ["an older workbook", () => oldFile("Workbook"), "of the older kind"],
  ["a workbook with a password", () => oldFile("EncryptedPackage"), "has a password"],
  ["an archive of something else", () => zipSync({ "a.txt": text("a") }), "this is no .xlsx workbook"],
  [
    "a document",
    asType("application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"),
    "no .xlsx workbook",
  ],
  ["a workbook with macros", asType("application/vnd.ms-excel.sheet.macroEnabled.main+xml"), "holds macros"],
  ["a binary workbook", asType("application/vnd.ms-excel.sheet.binary.macroEnabled.main"), "is a binary workbook"],
  ["half a file", () => plan.slice(0, plan.length / 2), damaged],
  ["a file whose bytes were changed", () => changedByte(), damaged],
  ["an element that is not closed", withSheet((xml) => xml.replace("</row>", "")), damaged],
  ["an element that closes another", withSheet((xml) => xml.replace("</c></row>", "</row></c>")), damaged],
  ["a tag without an end", withSheet((xml) => xml.slice(0, xml.indexOf("</sheetData") + 5)), damaged],
  ["a quote that is not closed", withSheet((xml) => xml.replace('r="B1"', 'r="B1')), damaged],
  ["very deep elements", withSheet((xml) => xml.replace("<sheetData>", `${"<a>".repeat(1e5)}<sheetData>`)), damaged],
  ["a cell of no place", withSheet((xml) => xml.replace('r="B1"', 'r="ZZZ1"')), damaged],
  ["a row beyond the last", withSheet((xml) => xml.replace('<row r="1"', '<row r="99999999"')), damaged],
  ["text that is no UTF-8", () => zipWith(SHEET, Uint8Array.of(0x3c, 0xff, 0x3e)), damaged],
  ["text in UTF-16", () => zipWith(SHEET, Uint8Array.of(0xff, 0xfe, 0x3c, 0)), "UTF-16"],
  [
    "entities",
    withSheet((xml) => `<!DOCTYPE a [<!ENTITY b "${"c".repeat(99)}">]>${xml}`),
    "definitions that no spreadsheet",
  ],
  ["a part that unpacks to very much", () => zipWith("xl/media/a.bin", new Uint8Array(60e6)), "too large"],
  ["a sheet that unpacks to very much", withSheet((xml) => xml + " ".repeat(2e6)), "too large"],
  ["more than it says", () => understated(), damaged],
  ["a part twice", () => twice(), damaged],
])("%s", async (_, file, sentence) => {
  const start = performance.now();
  const copying = classCopy(file(), (asked) => Promise.resolve(asked.map(() => [[3.5]])));
  await expect(copying).rejects.toThrow(Problem);
  await expect(copying).rejects.toThrow(sentence);
  expect(performance.now() - start).toBeLessThan(10_000);
});

/** The workbook with one byte of the packed sheet changed. */
function changedByte(): Uint8Array {
  const bytes = plan.slice();
  const at = Buffer.from(bytes).indexOf(SHEET) + SHEET.length + 20;
  bytes[at] ^= 0x55;
  return bytes;
}

function zipWith(path: string, content: Uint8Array): Uint8Array {
  return patched(zipOf(path, content), {});
}

function zipOf(path: string, content: Uint8Array): Uint8Array {
  const parts = Object.fromEntries([...partsOf(plan)].map(([name, part]) => [name, strToU8(part, true)]));
  return zipSync({ ...parts, [path]: content });
}

/** The workbook, its directory saying that a large sheet unpacks to a few bytes. */
function understated(): Uint8Array {
  const bytes = patched(plan, { [SHEET]: (xml) => xml.replace("</worksheet>", `${" ".repeat(5e5)}</worksheet>`) });
  const at = Buffer.from(bytes).lastIndexOf(SHEET) - 46;
  new DataView(bytes.buffer, bytes.byteOffset).setUint32(at + 24, 100, true);
  return bytes;
}

/** The workbook with two parts of one name, but for capitals. */
function twice(): Uint8Array {
  return zipOf(SHEET.toUpperCase(), strToU8("<a/>"));
}

test("a formula that would be longer than a cell holds becomes its value", async () => {
  const long = Array.from({ length: 90 }, (_, index) => `_xldudf_QUILT_LENGTHTEXT(A${index + 1})`).join("&");
  const copy = await copyOf(await workbook({ Plan: { A1: 3, B1: `=${long}` } }));
  expect(formulaIn(copy.bytes, "B1")).toBeUndefined();
  expect(copy.report.values).toMatchObject([{ cell: "B1", why: expect.stringContaining("longer") as string }]);
});

test("an element that no program knows holds no formula of ours, whatever its name", async () => {
  const unknown = "<constructor><f>_xldudf_QUILT_CUTSQUARE(A1)</f></constructor>";
  const bytes = patched(plan, { [SHEET]: (xml) => xml.replace("</sheetData>", `</sheetData>${unknown}`) });
  const { report } = await classCopy(bytes, (asked) => Promise.resolve(asked.map(() => undefined)));
  expect([...report.turned, ...report.left].map(({ cell, place }) => cell ?? place)).toEqual(["B1"]);
});

test("a formula over a whole sheet is listed and stays", async () => {
  const bytes = patched(plan, { [SHEET]: (xml) => xml.replace('ref="B1"', 'ref="B1:XFD1048576"') });
  const copy = await copyOf(bytes);
  expect(copy.report.left).toMatchObject([{ cell: "B1" }]);
});

test("a formula that cannot be read is listed", async () => {
  const bytes = await workbook({ Plan: { A1: 3, B1: "=_xldudf_QUILT_CUTSQUARE(A1" } });
  const copy = await classCopy(bytes, (asked) => Promise.resolve(asked.map(() => undefined)));
  expect(copy.report.left).toMatchObject([{ cell: "B1" }]);
});

test("a formula of very deep parentheses is no harm", async () => {
  const deep = `${"(".repeat(4000)}_xldudf_QUILT_CUTSQUARE(A1)${")".repeat(4000)}`;
  const bytes = await workbook({ Plan: { A1: 3, B1: `=${deep}` } });
  const copy = await classCopy(bytes, (asked) => Promise.resolve(asked.map(() => undefined)));
  expect(copy.report.turned.length + copy.report.left.length).toBe(1);
});

test("a file larger than any workbook is not read", async () => {
  await expect(classCopy(new Uint8Array(101e6), () => Promise.resolve([]))).rejects.toThrow(Problem);
});
