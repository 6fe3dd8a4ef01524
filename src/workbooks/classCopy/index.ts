/**
 * Class copies: a workbook for students, who work without the add-in. Every QUILT call becomes a plain formula that works in
 * any spreadsheet program, or its value where there is none; everything else stays byte for byte.
 */
import { ADD_IN } from "../addIn";
import { mentionsQuilt } from "../translate";
import { removeAddIn } from "./addInParts";
import type { WorkOut } from "./answers";
import { readsSpilled } from "./formulas";
import { LIST_NAME, listSheet } from "./listSheet";
import { definedNames, rangeNamesOf, turnNames, turnOthers } from "./otherFormulas";
import { Package } from "./package";
import type { Report } from "./report";
import { SheetPart } from "./sheet";
import { type Outcome, turnCells } from "./turn";
import { attributesOf, encoded, type Tag, tagsOf } from "./xml";
import { DAMAGED, refuse } from "./zip";

export type { Answer, Asked, CellError, Value, WorkOut } from "./answers";
export { type Report, reportText } from "./report";

export interface ClassCopy {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly report: Report;
}

export interface Options {
  /** Whether a sheet is added that lists the values and what could not be turned, where there are any. Usually it is. */
  readonly list?: boolean;
}

/** A workbook of the strict kind of the standard names everything after another address. */
const STRICT = /purl\.oclc\.org\/ooxml\/spreadsheetml/;
const SCHEMAS = {
  usual: {
    cells: "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
    relationship: "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet",
  },
  strict: {
    cells: "http://purl.oclc.org/ooxml/spreadsheetml/main",
    relationship: "http://purl.oclc.org/ooxml/officeDocument/relationships/worksheet",
  },
};

const WORKSHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

/**
 * @param file the bytes of an .xlsx file, which stay as they are
 * @param workOut works out formulas of this workbook
 * @throws Problem where the file is none that can be turned
 */
export async function classCopy(file: Uint8Array, workOut: WorkOut, { list = true }: Options = {}): Promise<ClassCopy> {
  const parts = new Package(file);
  const outcome: Outcome = { turned: [], values: [], left: [] };
  const rangeNames = rangeNamesOf(definedNames(parts.text(parts.workbook)));
  const sheets = sheetsOf(parts);
  const read = sheets.flatMap((sheet) => {
    const xml = parts.text(sheet.path);
    return mentionsQuilt(xml) || readsSpilled(xml)
      ? [{ ...sheet, part: new SheetPart(xml, `the sheet ${sheet.name}`) }]
      : [];
  });
  await turnCells(read, rangeNames, workOut, outcome);
  for (const { name, path, part } of read) parts.put(path, turnOthers(part.made(), name, rangeNames, outcome));
  turnTables(parts, rangeNames, outcome);
  const workbook = await turnNames(parts.text(parts.workbook), sheets[0].name, rangeNames, workOut, outcome);
  parts.put(parts.workbook, recalculated(workbook));
  removeAddIn(parts, ADD_IN.id);
  removeLeftOvers(parts, sheets);
  const report = { ...outcome, notes: notesOf(parts) };
  if (list && outcome.values.length + outcome.left.length > 0) addList(parts, sheets, report);
  return { bytes: parts.bytes(), report };
}

interface SheetPath {
  readonly name: string;
  readonly path: string;
}

/** The sheets with cells, in order. */
function sheetsOf(parts: Package): SheetPath[] {
  const xml = parts.text(parts.workbook);
  const relationships = new Map(parts.relationships(parts.workbook).map((each) => [each.id, each]));
  const sheets = [...tagsOf(xml)].flatMap((tag): SheetPath[] => {
    if (tag.name !== "sheet" || tag.kind === "close") return [];
    const attributes = attributesOf(xml, tag);
    const id = [...attributes].find(([name]) => name.endsWith(":id"))?.[1] ?? "";
    const relationship = relationships.get(id);
    if (relationship?.type !== "worksheet" || relationship.target === undefined) return [];
    return [{ name: attributes.get("name") ?? "", path: relationship.target }];
  });
  return sheets.length > 0 ? sheets : refuse("this workbook holds no sheet with cells");
}

/** The formulas that tables keep for their columns. */
function turnTables(parts: Package, rangeNames: ReadonlySet<string>, outcome: Outcome): void {
  for (const path of parts.paths) {
    if (!/\/tables\/[^/]+\.xml$/i.test(path)) continue;
    const xml = parts.text(path);
    if (mentionsQuilt(xml)) parts.put(path, turnOthers(xml, undefined, rangeNames, outcome));
  }
}

/** Elements of a workbook that stand before its settings of calculation, the last of them last. */
const BEFORE_CALCULATION = ["sheets", "functionGroups", "externalReferences", "definedNames"];

/** The workbook part, with the mark that programs are to work out everything when they open the file. */
function recalculated(xml: string): string {
  let before: Tag | undefined;
  for (const tag of tagsOf(xml)) {
    if (tag.name === "calcPr" && tag.kind !== "close") {
      const source = xml.slice(tag.start, tag.end).replace(/\s+fullCalcOnLoad\s*=\s*(?:"[^"]*"|'[^']*')/, "");
      const marked = source.replace(/\s*\/?>$/, (end) => ` fullCalcOnLoad="1"${end.trim()}`);
      return xml.slice(0, tag.start) + marked + xml.slice(tag.end);
    }
    if (BEFORE_CALCULATION.includes(tag.name) && tag.kind !== "open") before = tag;
  }
  if (!before) return refuse(DAMAGED);
  return `${xml.slice(0, before.end)}<${before.prefix}calcPr fullCalcOnLoad="1"/>${xml.slice(before.end)}`;
}

/** The order of calculation, which programs find anew; and what only dynamic formulas need, where there are none left. */
function removeLeftOvers(parts: Package, sheets: readonly SheetPath[]): void {
  const needsMetadata = () => sheets.some(({ path }) => /<(?:[^\s<>/:]+:)?c\s[^<>]*\b[cv]m\s*=/.test(parts.text(path)));
  for (const { type, target } of parts.relationships(parts.workbook)) {
    if (target === undefined || !parts.has(target)) continue;
    if (type === "calcChain" || (type === "sheetMetadata" && !hasRichData(parts) && !needsMetadata()))
      parts.remove([target], [parts.workbook]);
  }
}

function hasRichData(parts: Package): boolean {
  return parts.paths.some((path) => /\/richData\//i.test(path));
}

function notesOf(parts: Package): string[] {
  const isSigned = parts.paths.some((path) => path.startsWith("_xmlsignatures/"));
  return isSigned ? ["The workbook was signed; the signature does not hold for the copy."] : [];
}

function addList(parts: Package, sheets: readonly SheetPath[], report: Report): void {
  const xml = parts.text(parts.workbook);
  const elements = [...tagsOf(xml)].filter(({ name }) => name === "sheet" || name === "sheets");
  const end = elements.find(({ name, kind }) => name === "sheets" && kind === "close");
  if (!end) return refuse(DAMAGED);
  const all = elements
    .filter(({ name, kind }) => name === "sheet" && kind !== "close")
    .map((tag) => attributesOf(xml, tag));
  const names = new Set(all.map((attributes) => attributes.get("name")?.toLowerCase()));
  let name = LIST_NAME;
  for (let number = 2; names.has(name.toLowerCase()); number++) name = `${LIST_NAME} ${number}`;
  const sheetId = Math.max(...all.map((attributes) => Number(attributes.get("sheetId") ?? 0))) + 1;
  const idName = [...all[0].keys()].find((key) => key.endsWith(":id")) ?? "r:id";
  const folder = sheets[0].path.replace(/[^/]*$/, "");
  let path = `${folder}classCopy.xml`;
  for (let number = 2; parts.has(path); number++) path = `${folder}classCopy${number}.xml`;
  const schemas = STRICT.test(xml) ? SCHEMAS.strict : SCHEMAS.usual;
  const id = parts.add(path, listSheet(report, schemas.cells), WORKSHEET_TYPE, parts.workbook, schemas.relationship);
  const element = `<${end.prefix}sheet name="${encoded(name)}" sheetId="${sheetId}" ${idName}="${id}"/>`;
  parts.put(parts.workbook, xml.slice(0, end.start) + element + xml.slice(end.start));
}
