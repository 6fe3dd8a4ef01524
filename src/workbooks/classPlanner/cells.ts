/** Cells of the class planner that several of its sheets read, and its sizes. */
import { callsIn } from "../book";
import { exactText, lengthOrUsual, unitWord } from "../shared";

export const U = "Class!$C$12";
export const q = callsIn(U);
export const SEAM = "Class!$C$13";
export const SQUARING = "Class!$C$14";
export const EXTRA = "Class!$C$15";
export const STEP = "Class!$C$16";
export const STRIP = "Class!$C$17";
export const TAIL = "Class!$C$18";
export const MARGIN = "Class!$C$19";

/** Settings as numbers for arithmetic; a blank one is what the functions take it for. */
export const seam = lengthOrUsual(SEAM, "seam", U);
export const squaring = lengthOrUsual(SQUARING, "none", U);
export const extra = lengthOrUsual(EXTRA, "none", U);
export const strip = lengthOrUsual(STRIP, "bindingStrip", U);

export interface Size {
  name: string;
  across: number;
  down: number;
  border: number;
}

export const SIZES: readonly Size[] = [
  { name: "Wall", across: 3, down: 5, border: 3 },
  { name: "Lap", across: 5, down: 7, border: 5 },
  { name: "Twin", across: 7, down: 9, border: 6 },
];

/** A size as it is, of cells that hold numbers. */
export function sizeText(width: string, length: string): string {
  return `${exactText(width, U)}&" × "&${exactText(length, U)}&" "&${unitWord(U)}`;
}
