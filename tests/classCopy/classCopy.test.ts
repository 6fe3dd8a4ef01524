/** Class copies: what each call becomes, and that nothing else changes. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ADD_IN, referAddIn } from "../../src/workbooks/addIn";
import { classCopy, reportText } from "../../src/workbooks/classCopy";
import { cellIn, copyOf, faultsOf, formulaIn, partsOf, patched, SHEET, STALE, workbook } from "./workbooks";

const CUT = "_xldudf_QUILT_CUTSQUARE";

/** Copies of all kinds, to be validated in one go. */
const copies: Uint8Array[] = [];

/** The plain formula of a square, exact. */
const SQUARE = (cell: string) => `IF(AND(ISNUMBER(${cell}),${cell}>=0.001,${cell}<=1000),${cell}+2*0.25,NA())`;

test("a call becomes a plain formula with its right value", async () => {
  const bytes = await workbook({ Plan: { A1: 3, B1: `=${CUT}(A1)` } });
  const copy = await copyOf(bytes);
  expect(formulaIn(copy.bytes, "B1")).toBe(SQUARE("A1"));
  expect(cellIn(copy.bytes, "B1")).toMatch(/^<c r="B1"><f>.*<\/f><v>3.5<\/v><\/c>$/);
  expect(copy.report.turned).toEqual([
    { sheet: "Plan", cell: "B1", functions: ["CUTSQUARE"], was: `${CUT}(A1)`, now: SQUARE("A1") },
  ]);
  expect(copy.report.values).toEqual([]);
});

test("every other part and cell stays byte for byte, and the workbook is worked out anew when it is opened", async () => {
  const original = referAddIn(
    await workbook({
      Plan: { A1: 3, A2: "two", B1: `=${CUT}(A1)`, C1: "=A1*2" },
      Notes: { A1: "& <kept>", B2: "=1+1" },
    }),
    ["CUTSQUARE"],
  );
  const withChain = patched(original, {
    "xl/calcChain.xml": () =>
      '<?xml version="1.0"?><calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="B1" i="1"/></calcChain>',
    "xl/media/picture.bin": () => "\u0000\u0001 any bytes",
    "xl/_rels/workbook.xml.rels": (xml) =>
      xml.replace(
        "</Relationships>",
        '<Relationship Id="chain" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain" Target="calcChain.xml"/></Relationships>',
      ),
    "[Content_Types].xml": (xml) =>
      xml.replace(
        "</Types>",
        '<Override PartName="/xl/calcChain.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml"/></Types>',
      ),
  });
  const copy = await copyOf(withChain);
  const [before, after] = [partsOf(withChain), partsOf(copy.bytes)];
  const gone = [...before.keys()].filter((path) => !after.has(path));
  expect(gone.sort()).toEqual([
    "xl/calcChain.xml",
    "xl/metadata.xml",
    "xl/webextensions/_rels/taskpanes.xml.rels",
    "xl/webextensions/taskpanes.xml",
    "xl/webextensions/webextension1.xml",
  ]);
  expect([...after.keys()].filter((path) => !before.has(path))).toEqual([]);
  const changed = [...after].filter(([path, text]) => before.get(path) !== text).map(([path]) => path);
  expect(changed.sort()).toEqual([
    "[Content_Types].xml",
    "_rels/.rels",
    "xl/_rels/workbook.xml.rels",
    "xl/workbook.xml",
    SHEET,
  ]);
  const cell = cellIn(withChain, "B1");
  const [start, end] = before.get(SHEET)!.split(cell);
  expect(after.get(SHEET)).toBe(start + cellIn(copy.bytes, "B1") + end);
  expect(after.get("xl/workbook.xml")).toContain('fullCalcOnLoad="1"');
  expect([...after.values()].join("\n")).not.toMatch(/QUILT|webextension|calcChain|metadata\.xml/);
  copies.push(copy.bytes);
});

test("a call without a twin becomes its value, and a sheet says so", async () => {
  const bytes = await workbook({
    Plan: { A2: "squares", B2: 3.5, C2: 3.5, D2: 40, B1: 40, C1: "=_xldudf_QUILT_PLANFABRIC(A2:D2,B1)", D1: "=C1*2" },
  });
  const copy = await copyOf(bytes);
  expect(cellIn(copy.bytes, "C1")).toMatch(/^<c r="C1"><v>[\d.]+<\/v><\/c>$/);
  expect(cellIn(copy.bytes, "C1")).not.toContain(String(STALE));
  expect(cellIn(copy.bytes, "D1")).toBe(cellIn(bytes, "D1"));
  expect(copy.report.values).toMatchObject([{ sheet: "Plan", cell: "C1", functions: ["PLANFABRIC"] }]);
  expect(partsOf(copy.bytes).get("xl/workbook.xml")).toContain('name="Class copy"');
  expect(partsOf(copy.bytes).get("xl/worksheets/classCopy.xml")).toContain("Plan!C1");
  copies.push(copy.bytes);
  const bare = await copyOf(bytes, { list: false });
  expect(partsOf(bare.bytes).has("xl/worksheets/classCopy.xml")).toBe(false);
});

test("an empty text that becomes a value stays one: a blank cell would count as 0", async () => {
  const bytes = await workbook({ Plan: { B1: '=IF(A1="","",_xldudf_QUILT_PLANFABRIC(A2:D2,A1))', C1: "=B1" } });
  expect(cellIn((await copyOf(bytes)).bytes, "B1")).toBe(
    '<c r="B1" t="str"><f>""</f><v></v></c>'.replace('""', "&quot;&quot;"),
  );
});

test("the sheet takes another name where the workbook has one of that name", async () => {
  const bytes = await workbook({ "class copy": { A1: 3, B1: "=_xldudf_QUILT_PLANFABRIC(A1,A1,A1)" } });
  const copy = await copyOf(bytes);
  expect(partsOf(copy.bytes).get("xl/workbook.xml")).toContain('name="Class copy 2"');
});

test("a small table becomes a grid of formulas; a longer one a grid of values, what it filled before emptied", async () => {
  const bytes = patched(
    await workbook({
      Plan: { A1: 8, B1: "=_xldudf_QUILT_TOPSIZE(3,4,A1)", B4: "=_xldudf_QUILT_TOPPIECES(3,4,A1)", B7: 5, C9: 7 },
    }),
    { [SHEET]: (xml) => xml.replace('ref="B4"', 'ref="B4:B7"') },
  );
  const copy = await copyOf(bytes);
  expect(formulaIn(copy.bytes, "B1")).toContain("3*A1");
  expect(formulaIn(copy.bytes, "C1")).toContain("4*A1");
  expect(cellIn(copy.bytes, "C1")).toContain("<v>32</v>");
  expect(cellIn(copy.bytes, "B4")).toContain('<t xml:space="preserve">piece</t>');
  expect(cellIn(copy.bytes, "E5")).toContain("<v>12</v>");
  expect(cellIn(copy.bytes, "B7")).toBe('<c r="B7"/>');
  expect(cellIn(copy.bytes, "C9")).toBe('<c r="C9"><v>7</v></c>');
  copies.push(copy.bytes);
});

test("a table never covers what the maker has typed", async () => {
  const bytes = await workbook({ Plan: { A1: 8, B1: "=_xldudf_QUILT_TOPSIZE(3,4,A1)", C1: "mine" } });
  const copy = await copyOf(bytes);
  expect(cellIn(copy.bytes, "C1")).toBe(cellIn(bytes, "C1"));
  expect(copy.report.left).toMatchObject([{ cell: "B1", why: expect.stringContaining("room") as string }]);
});

test("a formula that reads a table wherever it ends reads the cells that it fills", async () => {
  const bytes = patched(
    await workbook({ Plan: { A1: 8, B1: "=_xldudf_QUILT_TOPSIZE(3,4,A1)", D1: "=SUM(_xlfn.ANCHORARRAY($B$1))" } }),
    { [SHEET]: (xml) => xml.replace('ref="B1"', 'ref="B1:C1"') },
  );
  const copy = await copyOf(bytes);
  expect(formulaIn(copy.bytes, "D1")).toBe("SUM($B$1:$C$1)");
  expect(cellIn(copy.bytes, "D1")).toContain("<v>56</v>");
});

test("a length that is text keeps its value, since only the function reads it", async () => {
  const bytes = await workbook({ Plan: { A1: "2 1/2", B1: `=${CUT}(A1)`, C1: `=${CUT}(B1)` } });
  const copy = await copyOf(bytes);
  expect(cellIn(copy.bytes, "B1")).toBe('<c r="B1"><v>3</v></c>');
  expect(formulaIn(copy.bytes, "C1")).toBe(SQUARE("B1"));
  expect(reportText(copy.report)).toContain("length that is text");
});

test("a cell that shows an error shows it in the copy, whatever was kept", async () => {
  const bytes = await workbook({ Plan: { A1: -3, B1: `=${CUT}(A1)`, B2: "=_xldudf_QUILT_PLANFABRIC(A1,A1,A1)" } });
  const copy = await copyOf(bytes);
  expect(formulaIn(copy.bytes, "B1")).toBe(SQUARE("A1"));
  expect(cellIn(copy.bytes, "B1")).toMatch(/^<c r="B1" t="e">.*<v>#VALUE!<\/v>/);
  expect(cellIn(copy.bytes, "B2")).toBe('<c r="B2" t="e"><v>#VALUE!</v></c>');
});

test.each([
  ["behind an @", `_xlfn.SINGLE(${CUT}(A1))`, SQUARE("A1")],
  ["of a workbook of its own", `[2]!${CUT}(A1)`, SQUARE("A1")],
  ["within LET", `_xlfn.LET(_xlpm.x,${CUT}(A1),_xlpm.x*2)`, `_xlfn.LET(_xlpm.x,${SQUARE("A1")},_xlpm.x*2)`],
  [
    "beside text that only looks like a call",
    `"QUILT.CUTSQUARE(1)"&${CUT}(A1)`,
    `"QUILT.CUTSQUARE(1)"&${SQUARE("A1")}`,
  ],
])("a call %s", async (_, formula, plain) => {
  const copy = await copyOf(await workbook({ Plan: { A1: 3, B1: `=${formula}` } }));
  expect(formulaIn(copy.bytes, "B1")).toBe(plain);
  expect(copy.report.left).toEqual([]);
});

test("a text that only looks like a call is left alone", async () => {
  const bytes = await workbook({ Plan: { A1: '="QUILT.CUTSQUARE(1)"', A2: "_xldudf_QUILT_CUTSQUARE(1)" } });
  const copy = await copyOf(bytes);
  expect(partsOf(copy.bytes).get(SHEET)).toBe(partsOf(bytes).get(SHEET));
  expect(reportText(copy.report)).toBe("No QUILT function is called in this workbook.");
});

test("each member of a shared formula gets one of its own", async () => {
  const bytes = patched(await workbook({ Plan: { A1: 3, A2: 4, A3: 5, $C$1: 1, B1: "=A1", B2: "=A2", B3: "=A3" } }), {
    [SHEET]: (xml) =>
      xml
        .replace("<f>A1</f>", `<f t="shared" ref="B1:B3" si="0">${CUT}(A1,$C$1)</f>`)
        .replace("<f>A2</f>", '<f t="shared" si="0"/>')
        .replace("<f>A3</f>", '<f t="shared" si="0"></f>'),
  });
  const copy = await copyOf(bytes);
  const sheet = partsOf(copy.bytes).get(SHEET)!;
  expect(sheet).not.toContain("shared");
  for (const row of [1, 2, 3]) expect(formulaIn(copy.bytes, `B${row}`)).toContain(`A${row}+2*`);
  expect(formulaIn(copy.bytes, "B3")).toContain("$C$1");
  expect(cellIn(copy.bytes, "B2")).toContain("<v>6</v>");
});

test("a formula that works with several cells at once stays one", async () => {
  const bytes = await workbook({ Plan: { A1: 3, A2: 4, B1: `=SUM(${CUT}(A1)*A1:A2)` } });
  const copy = await copyOf(bytes);
  expect(cellIn(copy.bytes, "B1")).toMatch(/^<c r="B1" cm="1"><f t="array" ref="B1">SUM\(.*<v>24.5<\/v>/);
  expect(partsOf(copy.bytes).has("xl/metadata.xml")).toBe(true);
  copies.push(copy.bytes);
});

test("names, drop-down lists and conditional formats are turned or listed", async () => {
  const bytes = patched(await workbook({ Plan: { A1: 3, B1: "=Cut+1", A2: "squares", B2: 3.5, C2: 3.5, D2: 40 } }), {
    "xl/workbook.xml": (xml) =>
      xml.replace(
        "</sheets>",
        `</sheets><definedNames><definedName name="Cut">${CUT}(Plan!$A$1)</definedName>` +
          `<definedName name="Planned">_xldudf_QUILT_PLANFABRIC(Plan!$A$2:$D$2)</definedName>` +
          `<definedName name="Wide">_xldudf_QUILT_PLANFABRIC(A1,A1,A1)</definedName></definedNames>`,
      ),
    [SHEET]: (xml) =>
      xml.replace(
        "</sheetData>",
        `</sheetData><conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>A1&gt;${CUT}(2)</formula></cfRule></conditionalFormatting>` +
          `<dataValidations count="1"><dataValidation type="decimal" operator="lessThan" sqref="A1"><formula1>_xldudf_QUILT_PLANFABRIC(A1,A1,A1)</formula1></dataValidation></dataValidations>`,
      ),
  });
  const { bytes: copy, report } = await copyOf(bytes);
  const text = partsOf(copy).get("xl/workbook.xml")!;
  expect(text).toContain('<definedName name="Cut">IF(AND(ISNUMBER(Plan!$A$1)');
  expect(text).toMatch(/<definedName name="Planned">[\d.]+<\/definedName>/);
  expect(partsOf(copy).get(SHEET)).toContain("<formula>A1&gt;(2+2*0.25)</formula>");
  expect(report.turned.map(({ place }) => place)).toEqual(["a conditional format", "the name Cut"]);
  expect(report.values.map(({ place }) => place)).toEqual(["the name Planned"]);
  expect(report.left.map(({ place }) => place)).toEqual(["a check of input", "the name Wide"]);
});

test("the formula that a table keeps for its column is turned with its cells", async () => {
  const bytes = patched(
    await workbook({ Plan: { A1: "Size", B1: "Cut", A2: 3, B2: `=${CUT}(Sizes[[#This Row],[Size]])` } }),
    {
      "xl/tables/table1.xml": () =>
        `<table id="1"><tableColumns><tableColumn id="2" name="Cut"><calculatedColumnFormula>${CUT}(Sizes[[#This Row],[Size]])</calculatedColumnFormula></tableColumn></tableColumns></table>`,
    },
  );
  const copy = await copyOf(bytes);
  expect(partsOf(copy.bytes).get("xl/tables/table1.xml")).toContain("(Sizes[[#This Row],[Size]])+2*0.25");
  expect(partsOf(copy.bytes).get("xl/tables/table1.xml")).not.toContain("QUILT");
});

test("parts written with prefixes and without the names of cells", async () => {
  const bytes = patched(await workbook({ Plan: { A1: 3, B1: `=${CUT}(A1)`, A2: "=1" } }), {
    [SHEET]: () =>
      '<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row><x:c><x:v>3</x:v></x:c>' +
      `<x:c s='0'><x:f><![CDATA[${CUT}(A1)]]></x:f><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>`,
  });
  const copy = await classCopy(bytes, (asked) => Promise.resolve(asked.map(() => [[3.5]])));
  const sheet = partsOf(copy.bytes).get(SHEET)!;
  expect(sheet).toContain("<x:c><x:v>3</x:v></x:c><x:c s='0'><x:f>IF(");
  copies.push(copy.bytes);
});

test("another add-in of the workbook stays", async () => {
  const original = referAddIn(await workbook({ Plan: { A1: 3, B1: `=${CUT}(A1)` } }), ["CUTSQUARE"]);
  const pane =
    '<wetp:taskpane dockstate="right" visibility="0" width="1" row="1"><wetp:webextensionref xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="other"/></wetp:taskpane>';
  const bytes = patched(original, {
    "xl/webextensions/taskpanes.xml": (xml) => xml.replace("</wetp:taskpanes>", `${pane}</wetp:taskpanes>`),
    "xl/webextensions/_rels/taskpanes.xml.rels": (xml) =>
      xml.replace(
        "</Relationships>",
        '<Relationship Id="other" Type="http://schemas.microsoft.com/office/2011/relationships/webextension" Target="other.xml"/></Relationships>',
      ),
    "xl/webextensions/other.xml": () => "<we:webextension xmlns:we='we' id='another'/>",
  });
  const after = partsOf((await copyOf(bytes)).bytes);
  expect(after.has("xl/webextensions/other.xml")).toBe(true);
  expect(after.has("xl/webextensions/webextension1.xml")).toBe(false);
  const panes = after.get("xl/webextensions/taskpanes.xml")!;
  expect(panes).toContain(pane);
  expect(panes.match(/<wetp:taskpane /g)).toHaveLength(1);
});

test("files name the add-in as its manifest does", () => {
  const manifest = readFileSync(join(__dirname, "../../manifest/manifest.xml"), "utf8");
  const element = (name: string) => new RegExp(`<${name}>([^<]+)</${name}>`).exec(manifest)?.[1];
  expect(ADD_IN).toEqual({ id: element("Id"), version: element("Version") });
});

test("the copies are valid", () => {
  expect(copies.length).toBeGreaterThan(4);
  expect(faultsOf(...copies)).toEqual([]);
});
