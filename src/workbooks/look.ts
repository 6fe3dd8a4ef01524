/** The one place where the look of planning workbooks is kept. */

export interface Look {
  bold?: boolean;
  size?: number;
  color?: string;
  fill?: string;
  /** A box round the cell, a line below it, or a fine line below it where its row is filled. */
  border?: "box" | "below" | "hair";
  align?: "left" | "right" | "center";
  wrap?: boolean;
  /** A step away from the cell's edge. */
  indent?: boolean;
  /** Can be changed where the sheet is protected. */
  unlocked?: boolean;
}

const INK = "#000000";
const GRAY = "#4d4d4d";
const BLUE = "#0b3fa8";
const YELLOW = "#fff8cc";
const PALE = "#e9edef";

export const LOOKS = {
  title: { bold: true, size: 16 },
  lead: { color: GRAY },
  heading: { bold: true, fill: PALE, border: "below" },
  label: {},
  item: { align: "left", indent: true },
  input: { color: BLUE, fill: YELLOW, border: "box", align: "right", unlocked: true },
  inputText: { color: BLUE, fill: YELLOW, border: "box", align: "left", indent: true, unlocked: true },
  answer: { border: "box", align: "right" },
  answerText: { border: "box", align: "left", indent: true },
  wrapped: { border: "box", align: "left", wrap: true },
  buy: { bold: true, border: "box", align: "right" },
  unit: { color: GRAY, align: "left", indent: true },
  note: { color: GRAY, size: 9 },
  caution: { bold: true, size: 9 },
  verdict: { bold: true, border: "box", align: "left", indent: true },
  column: { bold: true, border: "box", fill: PALE, align: "center", wrap: true },
  table: { border: "hair", align: "left" },
  tableHead: { bold: true, border: "below", fill: PALE, align: "left" },
  tick: { border: "box", align: "center", unlocked: true },
} satisfies Record<string, Look>;

export type StyleName = keyof typeof LOOKS;

export const LINE = "#808080";
export const FONT = "Arial";
export const SIZE = 10;
export { INK };
