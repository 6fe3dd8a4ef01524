/** What all cut sizes have in common: lengths to check, a ruler mark to round up to, patches to list. */
import { requireNotNegative, requirePositive } from "./problem";
import { roundUpTo } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** One kind of patch in a list of what to cut. The last row of such a list is the unit or block that they make. */
export interface PatchToCut {
  patch: string;
  /** Finished side in the quilt, inches: the width of a rectangle, the leg or the long edge of a triangle. */
  finished: Inches;
  /** Size to cut, inches. Of a diamond the width of the strip, then the length along its edge. */
  width: Inches;
  length: Inches;
  count: number;
  /** What to do with it. */
  how: string;
}

/**
 * Refuses finished sizes that are not above 0, and a seam or ruler mark below 0.
 *
 * @param sizes finished sizes by the names that the maker knows, inches
 */
export function requireSizes(sizes: Readonly<Record<string, Inches>>, seam: Inches, mark: Inches): void {
  for (const [name, size] of Object.entries(sizes)) requirePositive(name, size);
  requireNotNegative("seam", seam);
  requireNotNegative("mark", mark);
}

/**
 * A cut size at the next ruler mark.
 *
 * @param mark ruler mark to round up to, inches; 0 leaves the size exact
 * @param exact size to cut, inches
 */
export function upToMark(mark: Inches, exact: number): Inches {
  const cut = roundUpTo(mark, exact);
  if (mark > 0) step((show) => `up to the next ruler mark of ${show.length(mark)}: cut ${show.length(cut)}`);
  return cut;
}
