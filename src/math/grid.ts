/** Blocks drawn on a grid of equal patches, and how the rounding of one patch adds up across a block. */
import { USUAL } from "./conventions";
import { requireSizes } from "./cut";
import { Problem, requireCount } from "./problem";
import { atMost, covers, fits, roundNearestTo, same } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** One patch of a grid block. Lengths in inches. */
export interface GridPatch {
  finished: Inches;
  /** Exact size to cut. */
  exact: Inches;
  /** Size to cut at the nearest ruler mark. */
  atMark: Inches;
  /** What the sewn block comes out larger than wanted (below 0: smaller) if every patch is cut at the mark. */
  addsUpTo: Inches;
  /** Largest block not above this one, and smallest not below it, that need no rounding; undefined where there is none. */
  smallerBlock?: Inches;
  largerBlock?: Inches;
}

/**
 * One patch of a block of equal patches: a 12 in block of 5 by 5 has patches that finish 2.4 in, and cut at the nearest mark
 * it comes out 1/8 in short.
 *
 * A block cuts cleanly where its patch is cut on a mark. This one is taken where it does; else the nearest ones whose patch
 * finishes on a whole number of grid steps, if they do.
 *
 * @param block finished side of the block, inches
 * @param divisions patches along a side
 * @param gridStep what the patch of a clean block is a multiple of, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark, inches; 0 for none
 * @throws Problem "bad input" where a length or the count is out of range; "no answer" where a patch is too small to cut
 */
export function gridPatch(
  block: Inches,
  divisions: number,
  gridStep = USUAL.gridStep,
  seam = USUAL.seam,
  mark = USUAL.mark,
): GridPatch {
  requireSizes({ block }, seam, mark);
  requireCount("divisions", divisions, 1);
  const finished = (block / divisions) as Inches;
  const exact = (finished + 2 * seam) as Inches;
  const atMark = roundNearestTo(mark, exact);
  if (atMost(atMark, 2 * seam)) {
    throw new Problem(
      "no answer",
      (show) => `patches of ${show.length(finished)} are too small to cut at marks ${show.length(mark)} apart`,
    );
  }
  const addsUpTo = same(atMark, exact) ? 0 : divisions * (atMark - exact);
  step((show) => `${show.length(block)} ÷ ${divisions} = ${show.length(finished)}; cut ${show.length(exact)} exactly`);
  step((show) => `cut at ${show.length(atMark)}, ${divisions} of them come out ${show.length(addsUpTo)} off`);
  const clean = (steps: number): Inches | undefined => {
    const patch = steps * gridStep;
    return steps > 0 && same(patch + 2 * seam, roundNearestTo(mark, patch + 2 * seam))
      ? ((divisions * patch) as Inches)
      : undefined;
  };
  return {
    finished,
    exact,
    atMark,
    addsUpTo: addsUpTo as Inches,
    smallerBlock: addsUpTo === 0 ? block : clean(fits(gridStep, finished)),
    largerBlock: addsUpTo === 0 ? block : clean(covers(gridStep, finished)),
  };
}
