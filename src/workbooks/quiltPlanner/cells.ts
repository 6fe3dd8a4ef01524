/** Cells of the quilt planner that several of its sheets read. */
import { callsIn } from "../book";

export const U = "Design!$B$6";
export const q = callsIn(U);

/** Blocks across and down, at most; the layout has a cell for each. */
export const MOST_ACROSS = 12;
export const MOST_DOWN = 14;
export const FABRIC_ROWS = [22, 23, 24, 25, 26, 27];

const SASHING = "Design!$B$10:$D$10";
const BORDERS = "Design!$B$15:$C$17";
export const SEAM = "Design!$B$37";
export const SQUARING = "Design!$B$38";
export const STEP = "Design!$B$40";

/** The blocks that count. (OFFSET would be worked out anew whenever any cell changes.) */
const LAYOUT = "Layout!$A$4:INDEX(Layout!$A$4:$L$17,Design!$B$8,Design!$B$7)";

/** Where the cutting list stands on its sheet, its heading included. */
export const CUTTING = { first: 4, last: 44 };

export const QUILT = {
  layout: LAYOUT,
  blocks: "Blocks!$A$5:$G$20",
  size: "Design!$B$9",
  sashing: SASHING,
  edge: "Design!$B$11",
  borders: BORDERS,
};

/** The patches of one fabric, or of all. */
export function pieces(fabric?: string): string {
  return q("QUILTPIECES", { ...QUILT, seam: SEAM, ...(fabric ? { fabric } : {}) });
}

/** A border's width, or 0 where its row is free. */
export const borderWidth = (row: number) => `IF(Design!$B$${row}="",0,${q("LENGTH", { length: `Design!$B$${row}` })})`;
