/** Cells of the class planner that several of its sheets read, and its sizes. */
import { callsIn } from "../book";

export const U = "Class!$C$12";
export const q = callsIn(U);
export const SEAM = "Class!$C$13";
export const SQUARING = "Class!$C$14";
export const EXTRA = "Class!$C$15";
export const STEP = "Class!$C$16";
export const STRIP = "Class!$C$17";
export const TAIL = "Class!$C$18";
export const MARGIN = "Class!$C$19";

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

export function sizeText(width: string, length: string): string {
  return `${q("LENGTHTEXT", { length: width })}&" × "&${q("LENGTHTEXT", { length })}&" "&${U}`;
}
