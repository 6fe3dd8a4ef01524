/** Panels of one size, such as fat quarters, and bolts of several lengths. */
import { fineMark } from "./bundles";
import { counted } from "./counted";
import { type BoltPlan, type PanelPlan, planBolts, planPanels } from "./cutplan";
import { coarsestMark, type ListedPatch, lying } from "./plans";
import { Problem } from "./problem";
import { covers, fits } from "./rounding";
import { showing } from "./show";
import { type Inches, inches, type System, toInches } from "./units";
import { step } from "./working";

export interface PanelOptions {
  /** whether a patch may be cut from a higher strip and trimmed */
  trimming?: boolean;
  system?: System;
}

/** Panels cut alike, with their strips and patches. */
export interface PlannedPanels {
  list: readonly ListedPatch[];
  width: Inches;
  height: Inches;
  /** Lengths in it count this, inches. */
  mark: number;
  cuts: PanelPlan;
}

/**
 * The fewest equal panels that a list can be cut from, and how. Each panel is cut in strips, across it or along it.
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
  const mark = coarsestMark(list, system);
  const cuts = planPanels(
    list.map((patch, index) => {
      if (patch.grain === "join" || patch.grain === "along") {
        throw new Problem("bad input", `row ${index + 1}: “${patch.grain}” is for lengths of fabric, not for panels`);
      }
      return { ...patch, width: covers(mark, patch.width), height: covers(mark, patch.height), ...lying(patch.grain) };
    }),
    { width: fits(mark, width), height: fits(mark, height) },
    { trimming, show: (length) => showing(system).length(length * mark) },
  );
  step(() => `${counted(cuts.panelCount, "panel")}; no plan takes fewer than ${cuts.panelBound}`);
  return { list, width, height, mark, cuts };
}

/** A length to cut from a bolt, or a bolt at hand; lengths in inches. */
export interface CountedLength {
  label: string;
  length: Inches;
  count: number;
}

/** Which lengths come from which bolts. */
export interface PlannedBolts {
  plan: BoltPlan;
  /** Lengths in the plan count this, inches. */
  mark: number;
  cuts: readonly CountedLength[];
  /** What is cut beyond each length, inches. */
  generosity: Inches;
}

/** Lengths on bolts are counted in sixteenths of an inch, or in millimeters, and finer where those do not hold them. */
const BOLT_MARK: Readonly<Record<System, Inches>> = { in: inches(1 / 16), cm: toInches(0.1, "cm") };

/** 500 yards: nobody rolls a longer bolt, and it would only make the planner slow. */
const LONGEST_BOLT = 18_000;

/**
 * Which lengths to cut from which bolts: fewest bolts, then least left over.
 *
 * @param cuts lengths to cut, inches
 * @param bolts bolts at hand, inches
 * @param generosity what the shop cuts beyond each length, inches
 * @throws Problem "no answer" where the bolts do not hold the cuts
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
  const lengths = cuts.map((cut) => inches(cut.length + generosity));
  const mark = fineMark(lengths, BOLT_MARK[system]);
  const plan = planBolts(
    cuts.map((cut, row) => ({ ...cut, length: covers(mark, lengths[row]) })),
    bolts.map((bolt) => ({ ...bolt, length: fits(mark, bolt.length) })),
  );
  step((show) => `${counted(plan.boltCount, "bolt")}, ${show.fabric(plan.left * mark)} left over`);
  return { plan, mark, cuts, generosity };
}
