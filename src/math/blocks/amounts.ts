/** What to buy of each fabric: its patches through the cut planner. */
import { type Plan, plan, type PlanOptions } from "../plans";
import type { CutPatches } from "./pieces";

/** The cut plan of one fabric. */
export interface FabricPlan {
  fabric: string;
  plan: Plan;
}

/** A cut plan for every fabric of a list, in the list's order. */
export function fabricPlans(patches: readonly CutPatches[], options: PlanOptions = {}): FabricPlan[] {
  const fabrics = [...new Set(patches.map(({ fabric }) => fabric))];
  return fabrics.map((fabric) => ({ fabric, plan: fabricPlan(patches, fabric, options) }));
}

/** The cut plan of one fabric of a list. */
export function fabricPlan(patches: readonly CutPatches[], fabric: string, options: PlanOptions = {}): Plan {
  const own = patches.filter((patch) => patch.fabric === fabric);
  return plan(
    own.map(({ use, width, height, count, grain }) => ({ label: use, width, height, count, grain })),
    { ...options, amountOnly: true },
  );
}
