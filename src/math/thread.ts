/** Thread, and the seams that take it. */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { requireCount, requireNotNegative, requirePositive } from "./problem";
import type { Inches } from "./units";
import { step } from "./working";

/** Length of thread that a lockstitch takes for each length of seam, as thread makers' guides print it. */
export const LOCKSTITCH_RATIO = 2.5;

/**
 * Thread for a length of seam, needle and bobbin thread of a lockstitch (ISO 4915, stitch type 301) together.
 *
 * @param seamLength length of all seams, inches
 * @param ratio length of thread for each length of seam
 * @returns inches
 */
export function threadLength(seamLength: Inches, ratio = LOCKSTITCH_RATIO): Inches {
  requireNotNegative("seam length", seamLength);
  requirePositive("ratio", ratio);
  const thread = (seamLength * ratio) as Inches;
  step((show) => `${show.length(seamLength)} × ${ratio} = ${show.length(thread)} of thread`);
  return thread;
}

/**
 * Length of all seams that join rows of equal square patches, sewn from raw edge to raw edge: first the patches of each row,
 * then the rows.
 *
 * @param across patches in a row
 * @param down rows
 * @param patch finished side of a patch, inches
 * @param seam seam allowance, inches; 0 gives the seams as they show in the finished quilt
 * @returns inches
 */
export function seamLength(across: number, down: number, patch: Inches, seam = USUAL.seam): Inches {
  requireCount("across", across);
  requireCount("down", down);
  requirePositive("patch", patch);
  requireNotNegative("seam", seam);
  if (across === 0 || down === 0) return 0 as Inches;
  const inRow = patch + 2 * seam;
  const betweenRows = across * patch + 2 * seam;
  const short = (across - 1) * down;
  const total = (short * inRow + (down - 1) * betweenRows) as Inches;
  step((show) => `in the rows: ${counted(short, "seam")} × ${show.length(inRow)}`);
  step(
    (show) =>
      `between the rows: ${counted(down - 1, "seam")} × ${show.length(betweenRows)}; in all ${show.length(total)}`,
  );
  return total;
}
