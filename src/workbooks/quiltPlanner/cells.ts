/** Cells of the quilt planner that several of its sheets read. */
import { callsIn } from "../book";
import { bordersIn, sashingIn } from "../drawn";
import type { CuttingList } from "../listed";
import { lengthOrUsual } from "../shared";

export const U = "Design!$B$6";
export const q = callsIn(U);

/** Blocks across and down, at most; the layout has a cell for each. */
export const MOST_ACROSS = 12;
export const MOST_DOWN = 14;
export const FABRIC_ROWS = [22, 23, 24, 25, 26, 27];
export const LETTERS = "Design!$B$22:$B$27";
export const BINDING_FABRIC = "Design!$B$35";

export const SEAM = "Design!$B$37";
export const SQUARING = "Design!$B$38";
export const STEP = "Design!$B$40";

/** Sentences: what is still to be typed, why the drawn quilt cannot be worked out, and fabrics that nobody would buy. */
export const MISSING = "Design!$A$3";
export const FAULT = "Design!$A$13";
export const UNLISTED = "Design!$A$28";

/** The blocks that count. (OFFSET would be worked out anew whenever any cell changes.) */
export const LAYOUT = `Layout!$A$4:INDEX(Layout!$A$4:$L$17,Design!$B$8,Design!$B$7)`;
export const BLOCK_NAMES = "Blocks!$A$5:$A$20";

/** Where the cutting list stands on its sheet, its heading included. */
export const CUTTING = { first: 4, last: 44 };

/** Its patches, and what stands beside them. */
export const LIST: CuttingList = {
  sheet: "Cutting!",
  first: CUTTING.first + 1,
  last: CUTTING.last + 1,
  sentences: "J",
  listed: LETTERS,
};

export const QUILT = {
  layout: LAYOUT,
  blocks: "Blocks!$A$5:$G$20",
  size: "Design!$B$9",
  sashing: sashingIn("Design!$B$10", "Design!$B$10:$D$10"),
  edge: "Design!$B$11",
  borders: bordersIn("Design!$B$15:$B$17", "Design!$C$15:$C$17"),
};

/** The patches of one fabric, or of all. */
export function pieces(fabric?: string): string {
  return q("QUILTPIECES", { ...QUILT, seam: SEAM, ...(fabric ? { fabric } : {}) });
}

/** A border's width, or 0 where there is none. */
export const borderWidth = (row: number) => lengthOrUsual(`Design!$B$${row}`, "none", U);

/** A formula that stays empty as long as something is to be typed. */
export const unlessMissing = (formula: string) => `IF(${MISSING}<>"","",${formula})`;

/** The amount to buy of the fabric of a row, in words: "not used", or empty. */
export const toBuy = (row: number) => `Design!$I$${row}`;

/** The width of the binding's strips. */
export const bindingStrip = lengthOrUsual("Design!$B$34", "bindingStrip", U);
