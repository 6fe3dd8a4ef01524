/**
 * Cut plans for a list of patches: lengths become whole marks of a ruler, the planner finds the strips, and the strips come
 * back in inches.
 */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { type Counting, countingMark, FINEST_TO_PLAN, marksFor, marksIn, roundedText, RULER_MARK } from "./counting";
import { type CutList, type CutPlan, planCuts } from "./cutplan";
import { fabric, requireFabricWidth } from "./fabric";
import { Problem, requireNotNegative } from "./problem";
import { atMost, difference, isMultiple } from "./rounding";
import { type Line, showing } from "./show";
import { type Inches, inches, type System, toInches } from "./units";
import { step } from "./working";

/**
 * How a patch lies on the fabric. "any": it may be turned. "upright": its height runs along the selvage. "join": across the
 * fabric, and joined from strips where it is longer than the fabric is wide. "along": across the fabric, and along its length
 * where it is longer than the fabric is wide.
 */
export const GRAINS = ["any", "upright", "join", "along"] as const;
export type Grain = (typeof GRAINS)[number];

/** One row of a cutting list, as the maker wrote it. */
export interface ListedPatch {
  label: string;
  width: Inches;
  height: Inches;
  count: number;
  grain: Grain;
}

export interface PlanOptions {
  /** usable width of the fabric, inches */
  fabricWidth?: Inches;
  /** length lost once where the end of the fabric is squared, inches */
  squaring?: Inches;
  /** whether a patch may be cut from a higher strip and trimmed */
  trimming?: boolean;
  /** seam allowance of the straight joins of patches that are longer than the fabric is wide, inches */
  seam?: Inches;
  /** in which units refusals speak, and on which ruler the marks lie */
  system?: System;
  /** whether only the amount to buy matters: the search ends once it is settled, though a shorter length may buy the same */
  amountOnly?: boolean;
}

/** A cut plan and the mark in which its lengths are counted. */
export interface Plan extends Counting {
  /** Patches as they lie: one that is joined has the side that is joined for its width. */
  list: readonly ListedPatch[];
  cuts: CutPlan;
  /** Length of fabric in strips and squaring, inches. */
  length: Inches;
  /** No plan takes less than this, inches. */
  leastLength: Inches;
  fabricWidth: Inches;
  squaring: Inches;
}

/** The usual step of the shop. */
const USUAL_STEP: Readonly<Record<System, Inches>> = { in: toInches(1 / 8, "yd"), cm: toInches(0.1, "m") };

/** Steps of work for the least length, which few long lists settle: soon enough for a cell. */
const LENGTH_BUDGET = 25e6;

/** Wider than this is no quilting fabric; it would only make the planner slow. */
const WIDEST = 150;

/**
 * The plan of least length for a list: strips across the full width, then patches from each strip.
 *
 * Sizes are counted exactly on the coarsest mark that holds them all. Where none does, as with exact diagonals, every size is
 * cut at the ruler's next mark up.
 *
 * @throws Problem "bad input" naming the row that cannot be planned; "no answer" where a patch does not fit the fabric
 */
export function plan(list: readonly ListedPatch[], options: PlanOptions = {}): Plan {
  const { fabricWidth = USUAL.fabricWidth, squaring = inches(0), seam = USUAL.seam } = options;
  const { trimming = true, system = "in", amountOnly = false } = options;
  requireFabricWidth(fabricWidth);
  if (fabricWidth > WIDEST) throw tooLarge("width", WIDEST);
  requireNotNegative("squaring", squaring);
  const laid = list.map((patch) => laidToJoin(patch, fabricWidth));
  const besides = [fabricWidth, inches(2 * seam)];
  const counting = countingMark(sizesOf(laid), RULER_MARK[system], FINEST_TO_PLAN, besides);
  const { mark } = counting;
  const marks = (length: number) => marksFor(counting, length);
  const buyingStep = USUAL_STEP[system];
  const cuts = planCuts(
    laid.map((patch) => ({ ...patch, width: marks(patch.width), height: marks(patch.height), ...lying(patch.grain) })),
    {
      width: marksIn(counting, fabricWidth),
      trimming,
      joinLoss: marks(2 * seam),
      show: (count) => showing(system).length(count * mark),
      ...(amountOnly && isMultiple(mark, buyingStep)
        ? { extraLength: marks(squaring), buyingStep: marks(buyingStep) }
        : { budget: LENGTH_BUDGET }),
    },
  );
  const lengthOf = (strips: number) => inches(strips * mark + squaring);
  const found = {
    ...counting,
    list: laid,
    cuts,
    length: lengthOf(cuts.length),
    leastLength: lengthOf(cuts.lengthBound),
    fabricWidth,
    squaring,
  };
  tell(found);
  return found;
}

/** Amount to buy for a plan, inches, up to the shop's step. */
export function planFabric(plan: Plan, shopStep = USUAL.shopStep): Inches {
  return fabric(plan.length, shopStep);
}

/** What a plan leaves of an amount already bought, inches; below 0 where the fabric is short. */
export function planSpare(plan: Plan, amount: Inches): Inches {
  requireNotNegative("amount", amount);
  const spare = difference(amount, plan.length);
  step((show) => `${show.length(amount)} − ${show.length(plan.length)} = ${show.length(spare)}`);
  return spare;
}

export function lying(grain: Grain): Pick<CutList[number], "mayTurn" | "whenLong"> {
  if (grain === "join" || grain === "along") return { mayTurn: false, whenLong: grain };
  return { mayTurn: grain === "any" };
}

/** All widths and heights of a list. */
export function sizesOf(list: readonly ListedPatch[]): Inches[] {
  return list.flatMap(({ width, height }) => [width, height]);
}

/** A patch that is to be joined lies across the fabric, whichever of its sides is the longer; too wide ones stay upright. */
function laidToJoin(patch: ListedPatch, fabricWidth: Inches): ListedPatch {
  const { width, height, grain } = patch;
  const swapped = grain === "join" && width < height && atMost(width, fabricWidth);
  return swapped ? { ...patch, width: height, height: width } : patch;
}

/** Whether a shorter plan is possible, and for what that holds: other joins, or the exact sizes, may take less. */
export function leastText(plan: Plan): Line {
  const { cuts, list, length, leastLength } = plan;
  const asked = list.some((patch) => patch.grain === "join" && patch.count > 0);
  const joins = asked ? ` with${cuts.joins.length > 0 ? " these" : "out"} joins` : "";
  return (show) => {
    const above = `at most ${show.length(length - leastLength)} above the least possible`;
    return `${cuts.lengthProved ? "least length proved" : above}${joins}${roundedText(plan)(show)}`;
  };
}

function tooLarge(name: string, most: number): Problem {
  return new Problem(
    "bad input",
    (show) => `${name} is more than ${show.length(most)}; no quilting fabric is that wide`,
  );
}

function tell(plan: Plan): void {
  const { cuts, length, squaring } = plan;
  step(
    (show) =>
      `${counted(cuts.stripCount, "strip takes", "strips take")} ${show.length(length)}${squaring > 0 ? " with squaring up" : ""}`,
  );
  step((show) => `${cuts.lengthProved ? "no plan takes less: " : ""}${leastText(plan)(show)}`);
}
