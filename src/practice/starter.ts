/** The plan that the practice sheet opens with: a throw quilt for a class, planned with the functions. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import { exactText, panelWord } from "../workbooks/shared";
import { cellPlace, columnName } from "./address";
import { workbookOf } from "./workbook";

export const starterName = "Throw quilt for a two-evening class";

/** The first cell to be changed. */
export const starterBegin = "B5";

/** Fractions as a ruler reads, reduced. */
const FRACTION = "# ??/??";

const LINE = { s: BorderStyleTypes.THIN, cl: { rgb: "#8c959f" } };
const BOX = { t: LINE, r: LINE, b: LINE, l: LINE };

const STYLES = {
  title: { fs: 18, bl: BooleanNumber.TRUE },
  lead: { cl: { rgb: "#57606a" } },
  heading: { bl: BooleanNumber.TRUE, bg: { rgb: "#e7ecef" }, bd: { b: LINE } },
  input: {
    bg: { rgb: "#fff9d6" },
    cl: { rgb: "#0b4fb3" },
    bd: BOX,
    ht: HorizontalAlign.RIGHT,
    n: { pattern: FRACTION },
  },
  answer: { bg: { rgb: "#f6f8fa" }, bd: BOX, ht: HorizontalAlign.RIGHT, n: { pattern: FRACTION } },
  buy: {
    bg: { rgb: "#f6f8fa" },
    bd: BOX,
    bl: BooleanNumber.TRUE,
    ht: HorizontalAlign.RIGHT,
    n: { pattern: FRACTION },
  },
  unit: { cl: { rgb: "#57606a" } },
  note: { cl: { rgb: "#57606a" }, fs: 10 },
  caution: { bl: BooleanNumber.TRUE, fs: 10 },
} satisfies Record<string, IStyleData>;

type Style = keyof typeof STYLES;

/** Cell, text or number or formula, style. */
type Entry = [cell: string, content: string | number, style: Style | undefined];

/** A blank border is none; another blank cell is what the functions take it for. */
const BORDER = orBlank("B8", 0);
const MARGIN = orBlank("B16", 4);
const [LIGHT, DARK] = ["B11", "B12"].map((cell) => orBlank(cell, 42));

const STRIPS_OF_KEYS =
  "ROUNDUP(2*(F14+F15)/QUILT.STRIPPATCHES(F16,B13,B15),0)+ROUNDUP(4/QUILT.STRIPPATCHES(F17,B13,B15),0)";

const PANELS = "QUILT.BACKINGPANELS(F5,F6,B14,B16)";

const NOTES = [
  "Width is across, length is down.",
  "Inches and yards. Sizes are finished, or say cut.",
  "Strips run across the fabric, side to side.",
  "Pieces are cut one by one from the strips.",
  "Nothing is added for shrinking or miscuts.",
  "Fabrics may be turned; a one-way print takes more.",
];

const CAUTION = "Close the blade after every cut; mind iron and needle.";

const PLAN: Entry[] = [
  ["A1", starterName, "title"],
  ["A2", "Type your own numbers into the yellow cells, such as 6, 2 1/2 or 6.5 cm: every answer follows.", "lead"],
  ...heading("A4", "Yours to change", 3),
  ...line(5, "A", "Half-square unit, finished", 6, "input", "in"),
  ...line(6, "A", "Units across", 8, "input", "units"),
  ...line(7, "A", "Units down", 10, "input", "units"),
  ...line(8, "A", "Border, finished width", 6, "input", "in"),
  ...line(9, "A", "One key along the border", 2, "input", "in"),
  ...line(10, "A", "Seam allowance", 0.25, "input", "in"),
  ...line(11, "A", "Usable width, light", 42, "input", "in"),
  ...line(12, "A", "Usable width, dark", 42, "input", "in"),
  ...line(13, "A", "Usable width, keys", 42, "input", "in"),
  ...line(14, "A", "Usable width, backing", 42, "input", "in"),
  ...line(15, "A", "Lost squaring an end", 1, "input", "in"),
  ...line(16, "A", "Backing margin, each side", 4, "input", "in"),
  ...line(17, "A", "The shop cuts in steps of", 0.125, "input", "yd"),
  ...heading("A19", "Assumed", 3),
  ...NOTES.map((note, index): Entry => [`A${20 + index}`, note, "note"]),
  [`A${20 + NOTES.length}`, CAUTION, "caution"],

  ...heading("E4", "Quilt top", 4),
  ...line(5, "E", "Width", `=B6*QUILT.LENGTH(B5)+2*${BORDER}`, "answer", "in"),
  ...line(6, "E", "Length", `=B7*QUILT.LENGTH(B5)+2*${BORDER}`, "answer", "in"),
  ...heading("E7", "Half-square units", 4),
  ...line(8, "E", "Units to sew", "=B6*B7", "answer", "units"),
  ["H8", `="Trim each to "&${inches("QUILT.CUTSQUARE(B5,B10)")}&" in after sewing."`, "note"],
  ...line(9, "E", "Cut the squares", "=QUILT.CUTHALFSQUARE(B5,2,B10)", "answer", "in"),
  ["H9", "A light and a dark square make two units.", "note"],
  ...line(10, "E", "Squares of each fabric", "=ROUNDUP(F8/2,0)", "answer", "squares"),
  ["H10", `=QUILT.STRIPPATCHES(F9,MIN(${LIGHT},${DARK}),B15)&" from a strip of the narrower one."`, "note"],
  ...line(11, "E", "Light, strips", "=ROUNDUP(F10/QUILT.STRIPPATCHES(F9,B11,B15),0)", "answer", "strips"),
  ...line(12, "E", "Dark, strips", "=ROUNDUP(F10/QUILT.STRIPPATCHES(F9,B12,B15),0)", "answer", "strips"),
  ...heading("E13", "Border of keys, with four corner squares", 4),
  ...line(14, "E", "Keys for each side", ofBorder("QUILT.BORDERUNITS(B7*QUILT.LENGTH(B5),B9)"), "answer", "keys"),
  ["H14", gap("B7"), "note"],
  ...line(15, "E", "Keys for top or bottom", ofBorder("QUILT.BORDERUNITS(B6*QUILT.LENGTH(B5),B9)"), "answer", "keys"),
  ["H15", gap("B6"), "note"],
  ...line(16, "E", "Cut the keys, width", ofBorder("QUILT.CUTSQUARE(B9,B10)"), "answer", "in"),
  ["H16", '="In all "&2*(F14+F15)&" keys."', "note"],
  ...line(17, "E", "Cut the keys, length", ofBorder("QUILT.CUTSQUARE(B8,B10)"), "answer", "in"),
  ["H17", ofBorder('"The corner squares are cut to this length."', '""'), "note"],
  ...line(18, "E", "Keys and corners, strips", ofBorder(STRIPS_OF_KEYS), "answer", "strips"),
  ...heading("E19", "To buy", 4),
  ...line(20, "E", "Light", "=QUILT.STRIPFABRIC(F11,F9,B17,B15)", "buy", "yd"),
  ...line(21, "E", "Dark", "=QUILT.STRIPFABRIC(F12,F9,B17,B15)", "buy", "yd"),
  ...line(22, "E", "Keys and corners", ofBorder("QUILT.STRIPFABRIC(F18,F17,B17,B15)"), "buy", "yd"),
  ...line(23, "E", "Backing", "=QUILT.BACKINGFABRIC(F5,F6,B14,B16,,,,B17,,B15)", "buy", "yd"),
  ["H23", `=${PANELS}&" "&${panelWord(PANELS)}&"; both ways are on the sheet Backing."`, "note"],
  ...line(24, "E", "Batting, from a wide roll", `=QUILT.FABRIC(MIN(F5,F6)+2*${MARGIN},B17)`, "buy", "yd"),
  ["H24", `="Off a roll at least "&${inches(`(MAX(F5,F6)+2*${MARGIN})`)}&" in wide."`, "note"],
];

const BACKING: Entry[] = [
  ["A1", "Backing, pieced both ways", "title"],
  ["A2", "Worked out from the sheet Plan. Inches; amounts in yards.", "lead"],
  ...heading("A4", "=QUILT.BACKINGPLAN(Plan!F5,Plan!F6,Plan!B14,Plan!B16,,,,Plan!B17,,Plan!B15)", 7),
];

/** The workbook as it is opened for the first time. */
export function starterWorkbook(): Partial<IWorkbookData> {
  return {
    ...workbookOf(starterName, [
      sheet("Plan", PLAN, [215, 76, 54, 24, 215, 80, 70, 320], { 0: 34 }),
      sheet("Backing", BACKING, [150, 80, 90, 80, 100, 100, 170], { 0: 34 }),
    ]),
    styles: STYLES,
  };
}

function heading(cell: string, text: string, columns: number): Entry[] {
  const { row, column } = cellPlace(cell);
  return Array.from({ length: columns }, (_, index) => [
    `${columnName(column + index)}${row + 1}`,
    index === 0 ? text : "",
    "heading",
  ]);
}

/** A label, a value and its unit, side by side. */
function line(row: number, column: string, label: string, value: string | number, style: Style, unit: string): Entry[] {
  const first = cellPlace(`${column}1`).column;
  return [
    [`${column}${row}`, label, undefined],
    [`${columnName(first + 1)}${row}`, value, style],
    [`${columnName(first + 2)}${row}`, unit, "unit"],
  ];
}

/** How the keys along so many units fit, in words. */
function gap(units: string): string {
  const over = `QUILT.BORDERGAP(${units}*QUILT.LENGTH(B5),B9)`;
  const said = `"Together "&${inches(over)}&" in too long: use a spacer or another key."`;
  return ofBorder(`IF(${over}=0,"They fit exactly.",${said})`, '"There is no border."');
}

/** A length typed in a cell; where it is blank, another one. */
function orBlank(cell: string, otherwise: number): string {
  return `IF(${cell}="",${otherwise},QUILT.LENGTH(${cell}))`;
}

/** What concerns the border; where there is none, something else. */
function ofBorder(formula: string, otherwise = "0"): string {
  return `=IF(${BORDER}=0,${otherwise},${formula})`;
}

/** A length in words, as exact as it is. */
function inches(length: string): string {
  return exactText(length, '"in"');
}

function sheet(
  name: string,
  entries: Entry[],
  widths: number[],
  heights: Record<number, number>,
): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  for (const [cell, content, style] of entries) {
    const { row, column } = cellPlace(cell);
    const formula = typeof content === "string" && content.startsWith("=");
    const value = formula ? { f: content } : content === "" ? {} : { v: content };
    (cellData[row] ??= {})[column] = style ? { ...value, s: style } : value;
  }
  return {
    name,
    cellData,
    showGridlines: BooleanNumber.FALSE,
    columnData: Object.fromEntries(widths.map((w, index) => [index, { w }])),
    rowData: Object.fromEntries(Object.entries(heights).map(([row, h]) => [row, { h }])),
    defaultRowHeight: 22,
  };
}
