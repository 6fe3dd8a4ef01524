/**
 * Workbooks that other programs made: two libraries and LibreOffice. A class copy changes the cells that call our functions, and
 * nothing else: every other part, cell, style and note is there byte for byte.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Workbook } from "@cj-tech-master/excelts";
import writeExcelFile from "write-excel-file/node";
import { convert, hasLibreOffice } from "../plain/libreOffice";
import { copyOf, faultsOf, partsOf } from "./workbooks";

/** A picture of one dot. */
const DOT = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  "base64",
);

const CUT = "_xldudf_QUILT_CUTSQUARE";

/** Cells with our calls by the part of their sheet; tables with all cells that they fill. */
type Ours = Readonly<Record<string, readonly string[]>>;

const first = "xl/worksheets/sheet1.xml";
const second = "xl/worksheets/sheet2.xml";

/** With all that the first library knows: notes, pictures, names, tables, checks of input, formats, links, merged cells. */
async function madeByExcelts(): Promise<Uint8Array> {
  const file = new Workbook();
  file.creator = "Workshop";
  file.title = "Sampler & spares";
  const plan = file.addWorksheet("Plan", { views: [{ state: "frozen", xSplit: 1, ySplit: 1 }] });
  plan.columns = [{ width: 30 }, { width: 12 }, { width: 20 }, { width: 9, hidden: true }];
  plan.getCell("A1").value = { richText: [{ font: { bold: true }, text: "Kept " }, { text: "& <safe> “so”" }] };
  plan.mergeCells("A1:C1");
  plan.getCell("A3").value = "Finished";
  plan.getCell("B3").value = 3.5;
  plan.getCell("B3").numFmt = "# ?/8";
  plan.getCell("B3").note = "Measure twice.";
  plan.getCell("B3").dataValidation = { type: "decimal", operator: "greaterThan", formulae: [0], allowBlank: false };
  plan.getCell("A4").value = "Cut";
  plan.getCell("B4").value = called(`${CUT}(B3)`, "B4");
  plan.getCell("B4").style = { font: { italic: true, color: { argb: "FF880000" } }, numFmt: "# ??/??" };
  plan.getCell("C4").value = { formula: "B4*2", result: 7 };
  plan.getCell("A5").value = { text: "a link", hyperlink: "https://workshop.example/?a=1&b=2" };
  plan.getCell("B5").value = new Date(Date.UTC(2024, 1, 29));
  plan.getCell("C5").value = { error: "#DIV/0!" };
  plan.getCell("B6").value = true;
  plan.getCell("A8").value = called("_xldudf_QUILT_TOPSIZE(3,4,B3)", "A8:B8");
  plan.getCell("B8").value = 14;
  plan.addConditionalFormatting({
    ref: "B3:B9",
    rules: [{ type: "cellIs", operator: "greaterThan", priority: 1, formulae: [5], style: { font: { bold: true } } }],
  });
  plan.addTable({
    name: "Fabrics",
    ref: "F1",
    headerRow: true,
    columns: [{ name: "letter", filterButton: true }, { name: "yards" }],
    rows: [
      ["A", 1.5],
      ["B", 2],
    ],
  });
  plan.addImage(file.addImage({ buffer: DOT, extension: "png" }), "H1:I4");
  plan.headerFooter.oddFooter = "&LPage &P & more";
  const notes = file.addWorksheet("Notes 'n all", { state: "hidden" });
  notes.getCell("B2").value = { formula: "SUM(Plan!B3:B4)", result: 7.5 };
  notes.getCell("B3").value = called("_xldudf_QUILT_LENGTHTEXT(Plan!B3)", "B3");
  file.definedNames.add("Plan!$B$3", "Finished");
  return new Uint8Array(await file.xlsx.writeBuffer());
}

const oursInExcelts: Ours = { [first]: ["B4", "A8", "B8"], [second]: ["B3"] };

function called(formula: string, ref: string) {
  return { formula, result: 1, shareType: "array" as const, ref, isDynamicArray: true };
}

/** By the second library, which stores calls as plain formulas. */
async function madeByWriteExcelFile(): Promise<Uint8Array> {
  const title = { value: "Sampler", fontWeight: "bold" as const, columnSpan: 2, backgroundColor: "#fff8cc" };
  const formula = (value: string) => ({ type: "Formula" as const, value });
  const plan = [
    [title, null, "  spaces & <signs>  "],
    ["Finished", { value: 3.5, format: "# ?/8" }, { value: new Date(Date.UTC(2024, 1, 29)), format: "yyyy-mm-dd" }],
    ["Cut", formula(`=${CUT}(B2)`), formula("=B3*2")],
    [null, null, true],
    ["Text", formula(`="Cut "&_xldudf_QUILT_LENGTHTEXT(${CUT}(B2))`), { value: "red", textColor: "#cc0000" }],
  ];
  const notes = [["Kept", formula("=Plan!B3+1")]];
  const { toBuffer } = writeExcelFile([
    {
      data: plan,
      sheet: "Plan",
      columns: [{ width: 20 }, { width: 12 }],
      stickyRowsCount: 1,
      images: [
        {
          content: DOT,
          contentType: "image/png",
          width: 20,
          height: 20,
          dpi: 96,
          anchor: { row: 7, column: 2 },
          title: "A dot",
        },
      ],
    },
    { data: notes, sheet: "Notes" },
  ]);
  return new Uint8Array(await toBuffer());
}

const oursInWriteExcelFile: Ours = { [first]: ["B3", "B5"] };

/** Made in LibreOffice, from its own kind of file. */
const OPEN_DOCUMENT = `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:automatic-styles><style:style style:name="ce1" style:family="table-cell"><style:table-cell-properties fo:background-color="#fff8cc" fo:border="0.5pt solid #808080"/><style:text-properties fo:font-weight="bold" fo:color="#0b3fa8"/></style:style></office:automatic-styles>
<office:body><office:spreadsheet>
<table:content-validations><table:content-validation table:name="val1" table:condition="of:cell-content-is-decimal-number() and cell-content()&gt;0" table:base-cell-address="Plan.B2"/></table:content-validations>
<table:table table:name="Plan"><table:table-column table:number-columns-repeated="3"/>
<table:table-row><table:table-cell table:style-name="ce1" office:value-type="string" table:number-columns-spanned="2" table:number-rows-spanned="1"><text:p>Made &amp; kept</text:p></table:table-cell><table:covered-table-cell/></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p>Finished</text:p></table:table-cell><table:table-cell table:style-name="ce1" table:content-validation-name="val1" office:value-type="float" office:value="3.5"><office:annotation><dc:creator>Workshop</dc:creator><text:p>Measure twice.</text:p></office:annotation></table:table-cell></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p>Cut</text:p></table:table-cell><table:table-cell table:formula="of:=_XLDUDF_QUILT_CUTSQUARE([.B2])" table:style-name="ce1"/><table:table-cell table:formula="of:=[.B2]*2"/></table:table-row>
</table:table>
<table:table table:name="Notes"><table:table-row><table:table-cell table:formula="of:=SUM([Plan.B2:.B3])"/><table:table-cell office:value-type="date" office:date-value="2024-02-29"/></table:table-row></table:table>
<table:named-expressions><table:named-range table:name="Finished" table:base-cell-address="$Plan.$A$1" table:cell-range-address="$Plan.$B$2"/></table:named-expressions>
</office:spreadsheet></office:body></office:document>`;

/** Workbooks and their class copies, to be validated in one go. */
const pairs: [made: Uint8Array, copy: Uint8Array][] = [];

/** What a class copy must not touch, and that our cells are without our functions. */
async function expectTheRestKept(made: Uint8Array, ours: Ours, gone: readonly string[] = []): Promise<void> {
  const { bytes, report } = await copyOf(made, { list: false });
  expect(report.turned.length + report.values.length).toBeGreaterThan(0);
  expect(report.left).toEqual([]);
  const [before, after] = [partsOf(made), partsOf(bytes)];
  expect([...before.keys()].filter((path) => !gone.includes(path))).toEqual([...after.keys()]);
  for (const [path, text] of after)
    expect([path, rest(path, text, ours)]).toEqual([path, rest(path, before.get(path)!, ours)]);
  expect([...after].filter(([, text]) => /QUILT[._]/i.test(text)).map(([path]) => path)).toEqual([]);
  for (const [path, cells] of Object.entries(ours)) {
    for (const cell of cells)
      expect(cellOf(cell).exec(after.get(path)!)?.[0]).not.toBe(cellOf(cell).exec(before.get(path)!)?.[0]);
  }
  pairs.push([made, bytes]);
}

/** The text of a part without what a class copy may change in it. */
function rest(path: string, text: string, ours: Ours): string {
  if (path in ours) return ours[path].reduce((left, cell) => left.replace(cellOf(cell), ""), text);
  if (path === "xl/workbook.xml") return text.replace(/ fullCalcOnLoad="1"/, "").replace(/<calcPr *\/>/, "");
  if (path === "[Content_Types].xml") return text.replace(/<Override [^>]*sheetMetadata[^>]*>/, "");
  if (path === "xl/_rels/workbook.xml.rels") return text.replace(/<Relationship [^>]*sheetMetadata[^>]*>/, "");
  return text;
}

const cellOf = (cell: string) => new RegExp(`<c r="${cell}"(?:[^>]*/>|[^>]*>.*?</c>)`, "s");

const METADATA = ["xl/metadata.xml"];

test("a workbook of the library that writes ours", async () => {
  await expectTheRestKept(await madeByExcelts(), oursInExcelts, METADATA);
});

test("a workbook of another library", async () => {
  await expectTheRestKept(await madeByWriteExcelFile(), oursInWriteExcelFile);
});

(hasLibreOffice() ? test : test.skip)(
  "workbooks of LibreOffice: its own, and those of both libraries saved again",
  async () => {
    const folder = mkdtempSync(join(tmpdir(), "round-trip-"));
    try {
      const made: [string, string | Uint8Array, Ours][] = [
        ["own.fods", OPEN_DOCUMENT, { [first]: ["B3"] }],
        ["excelts.xlsx", await madeByExcelts(), oursInExcelts],
        ["other.xlsx", await madeByWriteExcelFile(), oursInWriteExcelFile],
      ];
      for (const [name, content] of made) writeFileSync(join(folder, name), content);
      convert(folder, ...made.map(([name]) => join(folder, name)));
      for (const [name, , ours] of made) {
        const file = join(folder, "out", name.replace(/\.\w+$/, ".xlsx"));
        await expectTheRestKept(new Uint8Array(readFileSync(file)), ours);
      }
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
  60_000,
);

test("the copies have no fault that their workbooks have not", () => {
  expect(pairs.length).toBeGreaterThan(1);
  const faults = faultsOf(...pairs.map(([, copy]) => copy));
  expect(faults).toEqual(faults.length === 0 ? [] : faultsOf(...pairs.map(([made]) => made)));
}, 60_000);
