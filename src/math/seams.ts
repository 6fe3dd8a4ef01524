/** Strips or patches sewn side by side: two seam allowances go into every seam. */
import { USUAL } from "./conventions";
import { Problem, requireNotNegative, requirePositive } from "./problem";
import { type Inches } from "./units";
import { step } from "./working";

/**
 * Unfinished length of patches, or width of strips, sewn side by side: six strips of 2½ in make 12½ in.
 *
 * @param what what is sewn, for the sentences: "patch" or "strip"
 * @param sizes cut size of each, inches, in the order of sewing
 * @param seam seam allowance, inches
 * @returns size over all, with its two outer seam allowances, inches
 * @throws Problem "bad input" where a size is out of range, or two seams leave nothing of it
 */
export function sewnTogether(what: string, sizes: readonly Inches[], seam = USUAL.seam): Inches {
  requireNotNegative("seam", seam);
  if (sizes.length === 0) throw new Problem("bad input", `no ${what} is given`);
  sizes.forEach((size, index) => {
    requirePositive(`${what} ${index + 1}`, size);
    if (sizes.length > 1 && size <= 2 * seam) {
      throw new Problem(
        "bad input",
        (show) => `${what} ${index + 1} is ${show.length(size)}; two seams of ${show.length(seam)} leave nothing of it`,
      );
    }
  });
  const cut = sizes.reduce((sum, size) => sum + size, 0);
  const seams = sizes.length - 1;
  const sewn = (cut - 2 * seam * seams) as Inches;
  step((show) => `${show.length(cut)} as cut − ${seams} × 2 × ${show.length(seam)} in seams = ${show.length(sewn)}`);
  return sewn;
}
