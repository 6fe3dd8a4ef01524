/**
 * Takes apart the package that an .xlsx file is, without trusting it: only the parts that hold cells and their look are
 * unpacked, up to a limit, and what else it holds is named.
 */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { columnNumber } from "../address";

/** Kept parts, bounded in size. */
export interface Package {
  /** A package with the cells only. */
  bytes: Uint8Array;
  /** What the file holds besides, in words. */
  leftOut: string[];
}

/** Unpacked bytes of the parts with cells. A planning workbook has some hundred thousand. */
const MOST_BYTES = 40_000_000;
const MOST_PARTS = 5_000;

const NEEDED =
  /^(\[Content_Types\]\.xml|_rels\/\.rels|xl\/workbook\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/(styles|sharedStrings|metadata)\.xml|xl\/theme\/[^/]+\.xml|xl\/worksheets\/[^/]+\.xml)$/;

const OTHER_PARTS: [RegExp, string][] = [
  [/^xl\/charts\//, "charts"],
  [/^xl\/media\//, "pictures"],
  [/^xl\/(threadedComments|comments)/, "comments"],
  [/^xl\/pivotTables\//, "pivot tables"],
  [/^xl\/vbaProject\.bin$/, "macros"],
  [/^xl\/externalLinks\//, "links to other files"],
];

/** Parts of a sheet that the grid has nothing for; some of them take very long to read. */
const OTHER_ELEMENTS: [string, string][] = [
  ["dataValidations", "drop-down lists"],
  ["conditionalFormatting", "conditional formats"],
  ["hyperlinks", "links"],
  ["sheetProtection", "protection"],
  ["drawing", ""],
  ["legacyDrawing", ""],
  ["picture", ""],
  ["tableParts", ""],
  ["extLst", ""],
];

const WORKBOOK_ELEMENTS = ["externalReferences", "pivotCaches", "extLst"];

export const DAMAGED = "the file is damaged and cannot be read.";

/** The package, or the sentence that says why it cannot be opened. */
export function openPackage(bytes: Uint8Array): Package | { refusal: string } {
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    return {
      refusal: "the file has a password or is of an old kind. Save it as .xlsx without a password, then open that.",
    };
  }
  if (!startsWith(bytes, [0x50, 0x4b])) return { refusal: "this is no .xlsx file." };
  const seen: string[] = [];
  let size = 0;
  let parts: Record<string, Uint8Array>;
  try {
    parts = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        seen.push(name);
        if (!NEEDED.test(name)) return false;
        size += originalSize;
        return size <= MOST_BYTES && seen.length <= MOST_PARTS;
      },
    });
  } catch {
    return { refusal: DAMAGED };
  }
  if (size > MOST_BYTES || seen.length > MOST_PARTS)
    return { refusal: "the file is too large for the practice sheet." };
  if (!("xl/workbook.xml" in parts)) return { refusal: "this is no .xlsx workbook. Save it as .xlsx, then open that." };
  const leftOut = OTHER_PARTS.filter(([part]) => seen.some((name) => part.test(name))).map(([, words]) => words);
  for (const name of Object.keys(parts)) {
    const read = readPart(name, strFromU8(parts[name]));
    if ("refusal" in read) return read;
    parts[name] = strToU8(read.xml);
    leftOut.push(...read.leftOut);
  }
  return { bytes: zipSync(parts, { level: 0 }), leftOut: [...new Set(leftOut)] };
}

/** A tag in which another one begins. The reader finds each of them, and takes long over it. */
const BROKEN_TAG = /<[^<>?][^<>]*</;

/** A part without what is left out. */
function readPart(name: string, xml: string): { xml: string; leftOut: string[] } | { refusal: string } {
  if (/<!(DOCTYPE|ENTITY)/i.test(xml)) {
    return { refusal: "the file holds definitions that no spreadsheet program writes; it is not opened." };
  }
  if (!xml.includes("<!") && BROKEN_TAG.test(xml)) return { refusal: DAMAGED };
  const leftOut: string[] = [];
  if (name === "xl/workbook.xml") {
    for (const element of WORKBOOK_ELEMENTS) xml = without(xml, element);
  } else if (name.startsWith("xl/worksheets/")) {
    // The reader would take what is there of a sheet that was cut off, and lose the rest without a word.
    if (!xml.includes("<worksheet") || !xml.trimEnd().endsWith("</worksheet>")) return { refusal: DAMAGED };
    for (const [element, words] of OTHER_ELEMENTS) {
      const shorter = without(xml, element);
      if (words && shorter.length < xml.length) leftOut.push(words);
      xml = shorter;
    }
    xml = withoutVastMerges(xml);
  }
  return { xml, leftOut };
}

/** The XML without any element of a name. One pass, whatever the text. */
function without(xml: string, element: string): string {
  const opening = new RegExp(`<${element}(?=[\\s/>])`, "g");
  const close = `</${element}>`;
  let kept = "";
  let from = 0;
  for (let found = opening.exec(xml); found; found = opening.exec(xml)) {
    const tagEnd = xml.indexOf(">", opening.lastIndex);
    // The reader refuses a tag that is never closed.
    if (tagEnd < 0) break;
    kept += xml.slice(from, found.index);
    const closing = xml[tagEnd - 1] === "/" ? tagEnd : xml.indexOf(close, tagEnd);
    if (closing < 0) return kept;
    from = closing === tagEnd ? tagEnd + 1 : closing + close.length;
    opening.lastIndex = from;
  }
  return kept + xml.slice(from);
}

/** Cells merged over a range larger than this are nobody's layout, and would take for ever to merge. */
const MOST_MERGED = 10_000;

function withoutVastMerges(xml: string): string {
  return xml.replace(/<mergeCell [^>]*>/g, (element) => {
    const ends = /ref="([A-Z]{1,3})(\d{1,7}):([A-Z]{1,3})(\d{1,7})"/.exec(element);
    if (!ends) return "";
    const columns = columnNumber(ends[3]) - columnNumber(ends[1]) + 1;
    const rows = Number(ends[4]) - Number(ends[2]) + 1;
    return rows > 0 && columns > 0 && rows * columns <= MOST_MERGED ? element : "";
  });
}

function startsWith(bytes: Uint8Array, start: number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}
