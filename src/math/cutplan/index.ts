/**
 * The cut planner: the least fabric for a list of rectangular patches, with a proof or a bound.
 *
 * Cloth of usable width is cut in two stages, the way it is done on a cutting mat: strips across the full width, then
 * patches from each strip. A patch may be turned a quarter unless its print is one-way. With trimming, a patch may be
 * lower than its strip and is trimmed to height afterwards (one more cut each); without, every patch of a strip has the
 * strip's height.
 *
 * All lengths in this folder are **whole numbers of one unit**: the caller picks 1/8 in, 1/16 in or 1 mm and converts.
 *
 * - {@link planCuts}: the plan of least length, then fewest strips, then fewest trims, then fewest kinds of strip.
 * - {@link planPanels}: the same cutting from panels of one size (fat quarters): fewest panels.
 * - {@link planBolts}: lengths cut from bolts of different lengths: fewest bolts, then least left over.
 * - {@link firstFitPlan}, {@link ownStripsPlan}: what is cut without planning, to compare with.
 * - {@link checkPlan}: counts a plan again, on its own, and says what is wrong with it.
 *
 * Every result is the same on every machine: work is counted in steps, never in seconds.
 */
export { planCuts } from "./plan";
export { planPanels } from "./panels";
export { planBolts } from "./bolts";
export { firstFitPlan, ownStripsPlan } from "./plain";
export { checkPlan } from "./check";
export type { CutList, Cloth, CutPlan, Join, Patch, Piece, Strip } from "./types";
export type { Panel, PanelPlan, PanelSize } from "./panels";
export type { Bolt, BoltCut, BoltPlan, UsedBolt } from "./bolts";
