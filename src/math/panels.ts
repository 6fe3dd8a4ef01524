/** Panels of one size, such as fat quarters, and bolts of several lengths. */
import { counted } from "./counted";
import { type Counting, countingMark, FINEST_TO_PLAN, marksFor, marksIn, roundedText, RULER_MARK } from "./counting";
import { type BoltPlan, type PanelPlan, planBolts, planPanels } from "./cutplan";
import { type ListedPatch, lying, sizesOf } from "./plans";
import { Problem } from "./problem";
import { showing } from "./show";
import { type Inches, inches, type System } from "./units";
import { step } from "./working";

export interface PanelOptions {
  /** whether a patch may be cut from a higher strip and trimmed */
  trimming?: boolean;
  system?: System;
}

/** Panels cut alike, with their strips and patches. */
export interface PlannedPanels extends Counting {
  list: readonly ListedPatch[];
  width: Inches;
  height: Inches;
  cuts: PanelPlan;
}

/**
 * The fewest equal panels that a list can be cut from, and how. Each panel is cut in strips, across it or along it. Sizes are
 * counted as `plan` counts them.
 *
 * @param list patches; none may ask to be joined or cut along the length, which panels have no room for
 * @param width width of a panel, inches
 * @param height height of a panel, along the selvage, inches
 * @throws Problem naming the row that no panel holds
 */
export function planInPanels(
  list: readonly ListedPatch[],
  width: Inches,
  height: Inches,
  { trimming = true, system = "in" }: PanelOptions = {},
): PlannedPanels {
  const counting = countingMark(sizesOf(list), RULER_MARK[system], FINEST_TO_PLAN);
  const marks = (size: Inches) => marksFor(counting, size);
  const cuts = planPanels(
    list.map((patch, index) => {
      if (patch.grain === "join" || patch.grain === "along") {
        throw new Problem("bad input", `row ${index + 1}: “${patch.grain}” is for lengths of fabric, not for panels`);
      }
      return { ...patch, width: marks(patch.width), height: marks(patch.height), ...lying(patch.grain) };
    }),
    { width: marksIn(counting, width), height: marksIn(counting, height) },
    { trimming, show: (count) => showing(system).length(count * counting.mark) },
  );
  step((show) => {
    const least = `no plan takes fewer than ${cuts.panelBound}${roundedText(counting)(show)}`;
    return `${counted(cuts.panelCount, "panel")}; ${least}`;
  });
  return { ...counting, list, width, height, cuts };
}

/** A length to cut from a bolt, or a bolt at hand; lengths in inches. */
export interface CountedLength {
  label: string;
  length: Inches;
  count: number;
}

/** Which lengths come from which bolts. */
export interface PlannedBolts extends Counting {
  plan: BoltPlan;
  cuts: readonly CountedLength[];
  bolts: readonly CountedLength[];
  /** What is cut beyond each length, inches. */
  generosity: Inches;
  /** What is left over on the bolts taken, inches. */
  left: Inches;
}

/** 500 yards: nobody rolls a longer bolt, and it would only make the planner slow. */
const LONGEST_BOLT = 18_000;

/** Finer marks on a long bolt would make it slow, too. */
const MOST_MARKS = 1_000_000;

/**
 * Which lengths to cut from which bolts: fewest bolts, then least left over. Lengths are counted as `plan` counts sizes.
 *
 * @param cuts lengths to cut, inches
 * @param bolts bolts at hand, inches
 * @param generosity what the shop cuts beyond each length, inches
 * @throws Problem "no answer" where the bolts do not hold the cuts; "bad input" for a bolt longer than any
 */
export function boltPlan(
  cuts: readonly CountedLength[],
  bolts: readonly CountedLength[],
  generosity = inches(0),
  system: System = "in",
): PlannedBolts {
  for (const { label, length } of bolts) {
    if (length <= LONGEST_BOLT) continue;
    throw new Problem(
      "bad input",
      (show) => `${label} is more than ${show.fabric(LONGEST_BOLT)}; no bolt is that long`,
    );
  }
  const stock = bolts.map(({ length }) => length);
  const counting = countingMark(
    cuts.map(({ length }) => inches(length + generosity)),
    RULER_MARK[system],
    inches(stock.reduce((one, other) => Math.max(one, other), 0) / MOST_MARKS),
    stock,
  );
  const plan = planBolts(
    cuts.map((cut) => ({ ...cut, length: marksFor(counting, cut.length + generosity) })),
    bolts.map((bolt) => ({ ...bolt, length: marksIn(counting, bolt.length) })),
  );
  const left = inches(plan.left * counting.mark);
  step((show) => `${counted(plan.boltCount, "bolt")}, ${show.fabric(left)} left over`);
  return { ...counting, plan, cuts, bolts, generosity, left };
}
