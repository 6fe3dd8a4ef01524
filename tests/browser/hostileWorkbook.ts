/** A workbook that tries, in each place that a file has for text, to run a script or to reach another address. */
import { strToU8, zipSync } from "fflate";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** @param elsewhere an address that must not be asked */
export function hostileWorkbook(elsewhere: string): Uint8Array<ArrayBuffer> {
  const script = (place: string) => `<img src=x onerror="ran('${place}')">`;
  const formulas = [
    `HYPERLINK("javascript:ran('hyperlink')","press")`,
    `HYPERLINK("${elsewhere}/hyperlink","press")`,
    `_xlfn.WEBSERVICE("${elsewhere}/webservice")`,
    `_xlfn.IMAGE("${elsewhere}/image.png")`,
    `_xlfn.FILTERXML(_xlfn.WEBSERVICE("${elsewhere}/xml"),"//a")`,
    `IMPORTDATA("${elsewhere}/data")`,
    `CALL("kernel32","WinExec","JCJ","calc",0)`,
    `REGISTER.ID("kernel32","WinExec")`,
    `cmd|'/C calc'!A0`,
    `'${elsewhere}/[book.xlsx]Sheet1'!A1`,
    `INDIRECT("'${elsewhere}/[book.xlsx]Sheet1'!A1")`,
    `EVALUATE("ran('evaluate')")`,
    `"${script("formula").replaceAll('"', '""')}"&A1`,
  ];
  const texts = [script("text"), `=HYPERLINK("${elsewhere}/text","press")`];
  const rows = [
    ...texts.map((text) => `t="inlineStr" s="1"><is><t>${escaped(text)}</t></is>`),
    't="inlineStr"><is><r><t>plain and </t></r><r><rPr><b/></rPr><t>&lt;b&gt;bold&lt;/b&gt;</t></r></is>',
    ...formulas.map((formula) => `t="str"><f>${escaped(formula)}</f><v>${escaped(script("value"))}</v>`),
  ];
  const cells = rows.map((rest, index) => `<row r="${index + 1}"><c r="A${index + 1}" ${rest}</c></row>`).join("");
  const relations = (...entries: [type: string, target: string][]) =>
    `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${entries
      .map(([type, target], index) => {
        const mode = /^\w+:/.test(target) ? ' TargetMode="External"' : "";
        return `<Relationship Id="rId${index + 1}" Type="${OFFICE}/${type}" Target="${escaped(target)}"${mode}/>`;
      })
      .join("")}</Relationships>`;
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml";
  const parts = {
    "[Content_Types].xml":
      `<Types xmlns="${PACKAGE}/content-types"><Default Extension="xml" ContentType="application/xml"/>` +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      `<Override PartName="/xl/workbook.xml" ContentType="${type}.sheet.main+xml"/>` +
      `<Override PartName="/xl/styles.xml" ContentType="${type}.styles+xml"/>` +
      `<Override PartName="/xl/worksheets/sheet1.xml" ContentType="${type}.worksheet+xml"/></Types>`,
    "_rels/.rels": relations(["officeDocument", "xl/workbook.xml"]),
    "xl/_rels/workbook.xml.rels": relations(
      ["worksheet", "worksheets/sheet1.xml"],
      ["styles", "styles.xml"],
      ["externalLink", `${elsewhere}/book.xlsx`],
      ["attachedTemplate", `${elsewhere}/template.xltx`],
    ),
    "xl/workbook.xml":
      `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>` +
      `<sheet name="${escaped("<svg onload=ran(1)>")}" sheetId="1" r:id="rId1"/></sheets>` +
      `<definedNames><definedName name="_xlnm.Auto_Open">${escaped(`HYPERLINK("javascript:ran('name')")`)}</definedName>` +
      `<definedName name="Size" comment="${escaped(script("comment"))}">${escaped(`"${script("defined")}"`)}</definedName>` +
      "</definedNames></workbook>",
    "xl/styles.xml":
      `<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="164" formatCode="${escaped(`"${script("format").replaceAll('"', "'")}"@`)}"/></numFmts>` +
      `<fonts count="1"><font><sz val="11"/><name val="${escaped(`x"${script("font")}`)}"/></font></fonts>` +
      '<fills count="1"><fill><patternFill patternType="none"/></fill></fills><borders count="1"><border/></borders>' +
      '<cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf/><xf fontId="0"/></cellXfs></styleSheet>',
    "xl/worksheets/sheet1.xml":
      `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheetData>${cells}</sheetData>` +
      '<hyperlinks><hyperlink ref="A1" r:id="rId1"/><hyperlink ref="A2" r:id="rId2"/></hyperlinks></worksheet>',
    "xl/worksheets/_rels/sheet1.xml.rels": relations(
      ["hyperlink", "javascript:ran('link')"],
      ["hyperlink", `${elsewhere}/link`],
      ["image", `${elsewhere}/picture.png`],
    ),
  };
  return zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, xml]) => [name, strToU8(xml.startsWith("<?") ? xml : HEAD + xml)]),
    ),
  );
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
