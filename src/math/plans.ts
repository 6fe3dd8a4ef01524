/**
 * Cut plans for a list of patches: lengths become whole marks of a ruler, the planner finds the strips, and the strips come
 * back in inches.
 */
import { USUAL } from "./conventions";
import { counted } from "./counted";
import { type CutList, type CutPlan, planCuts } from "./cutplan";
import { fabric, requireFabricWidth } from "./fabric";
import { Problem, requireNotNegative } from "./problem";
import { covers, fits, nearestCount, same } from "./rounding";
import { showing } from "./show";
import { type Inches, inches, type System, toInches } from "./units";
import { step } from "./working";

/**
 * How a patch lies on the fabric. "any": it may be turned. "upright": its height runs along the selvage. "join": longer than
 * the fabric is wide, and joined from strips. "along": longer than the fabric is wide, and cut along its length.
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

/** A cut plan and the ruler mark in which its lengths are counted. */
export interface Plan {
  list: readonly ListedPatch[];
  cuts: CutPlan;
  /** Inches for one unit of `cuts`. */
  mark: Inches;
  /** Length of fabric in strips and squaring, inches. */
  length: Inches;
  /** No plan takes less than this, inches. */
  leastLength: Inches;
  fabricWidth: Inches;
  squaring: Inches;
}

/** Marks of a ruler, coarsest first: a list is counted on the coarsest that holds all of it. */
const MARKS: Readonly<Record<System, readonly Inches[]>> = {
  in: [inches(1 / 8), inches(1 / 16)],
  cm: [toInches(0.1, "cm")],
};

/** The usual step of the shop. */
const USUAL_STEP: Readonly<Record<System, Inches>> = { in: toInches(1 / 8, "yd"), cm: toInches(0.1, "m") };

/** Steps of work for the least length, which few long lists settle: soon enough for a cell. */
const LENGTH_BUDGET = 25e6;

/** Wider than this is no quilting fabric; it would only make the planner slow. */
const WIDEST = 150;

/**
 * The plan of least length for a list: strips across the full width, then patches from each strip.
 *
 * A measure that lies on no mark of a ruler is cut at the next one up.
 *
 * @throws Problem "bad input" naming the row that cannot be planned; "no answer" where a patch does not fit the fabric
 */
export function plan(list: readonly ListedPatch[], options: PlanOptions = {}): Plan {
  const { fabricWidth = USUAL.fabricWidth, squaring = inches(0), seam = USUAL.seam } = options;
  const { trimming = true, system = "in", amountOnly = false } = options;
  requireFabricWidth(fabricWidth);
  if (fabricWidth > WIDEST) throw tooLarge("width", WIDEST);
  requireNotNegative("squaring", squaring);
  const mark = coarsestMark(list, system);
  const marks = (length: number) => covers(mark, length);
  const cuts = planCuts(
    list.map((patch) => ({ ...patch, width: marks(patch.width), height: marks(patch.height), ...lying(patch.grain) })),
    {
      width: fits(mark, fabricWidth),
      trimming,
      joinLoss: marks(2 * seam),
      show: (length) => showing(system).length(length * mark),
      ...(amountOnly
        ? { extraLength: marks(squaring), buyingStep: fits(mark, USUAL_STEP[system]) }
        : { budget: LENGTH_BUDGET }),
    },
  );
  const lengthOf = (strips: number) => inches(strips * mark + squaring);
  const found = {
    list,
    cuts,
    mark,
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
  const spare = inches(amount - plan.length);
  step((show) => `${show.length(amount)} − ${show.length(plan.length)} = ${show.length(spare)}`);
  return spare;
}

export function lying(grain: Grain): Pick<CutList[number], "mayTurn" | "whenLong"> {
  if (grain === "join" || grain === "along") return { mayTurn: false, whenLong: grain };
  return { mayTurn: grain === "any" };
}

export function coarsestMark(list: readonly ListedPatch[], system: System): Inches {
  const [coarse, ...finer] = MARKS[system];
  const measures = list.flatMap(({ width, height }) => [width, height]);
  const holds = (mark: Inches) => measures.every((measure) => same(measure, nearestCount(mark, measure) * mark));
  return [coarse, ...finer].find(holds) ?? finer.at(-1) ?? coarse;
}

function tooLarge(name: string, most: number): Problem {
  return new Problem(
    "bad input",
    (show) => `${name} is more than ${show.length(most)}; no quilting fabric is that wide`,
  );
}

function tell({ cuts, length, leastLength, squaring }: Plan): void {
  step(
    (show) =>
      `${counted(cuts.stripCount, "strip takes", "strips take")} ${show.length(length)}${squaring > 0 ? " with squaring up" : ""}`,
  );
  step((show) =>
    cuts.lengthProved
      ? "no plan takes less: least length proved"
      : `no plan takes less than ${show.length(leastLength)}`,
  );
}
