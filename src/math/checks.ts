/** Checks of a written pattern: what its list of fabrics adds up to, and whether its cuts come out of its fabric. */
import { type Plan, planSpare } from "./plans";
import { Problem, requireNotNegative } from "./problem";
import { atMost } from "./rounding";
import type { Line } from "./show";
import { type Inches } from "./units";

/** One place of a pattern that asks for a fabric. */
export interface FabricUse {
  fabric: string;
  /** inches */
  amount: Inches;
}

/** What all places of a pattern ask for of one fabric. */
export interface FabricTotal extends FabricUse {
  places: number;
}

/**
 * Amounts of the same fabric added up, in the order in which the fabrics are first named. Capitals and spaces do not make a
 * name another one.
 *
 * @throws Problem "bad input" where a name is missing or an amount is below 0
 */
export function fabricTotals(uses: readonly FabricUse[]): FabricTotal[] {
  if (uses.length === 0) throw new Problem("bad input", "the list is empty");
  const totals = new Map<string, FabricTotal>();
  for (const { fabric, amount } of uses) {
    requireNotNegative("amount", amount);
    const name = fabric.trim().replace(/\s+/g, " ");
    if (name === "") throw new Problem("bad input", "a fabric has no name");
    const total = totals.get(name.toLowerCase()) ?? { fabric: name, amount: 0 as Inches, places: 0 };
    total.amount = (total.amount + amount) as Inches;
    total.places += 1;
    totals.set(name.toLowerCase(), total);
  }
  return [...totals.values()];
}

/** Less than this to spare is gone with one crooked cut, inches. Common practice. */
const LITTLE = 2;

/**
 * Whether the patches of a cutting plan come out of an amount of fabric, in a sentence.
 *
 * @param plan the plan of least length for the patches
 * @param amount length of the fabric at hand, inches
 */
export function fabricCheck(plan: Plan, amount: Inches): Line {
  const spare = planSpare(plan, amount);
  const { length, leastLength } = plan;
  if (!atMost(0, spare)) {
    const perhaps = atMost(leastLength, amount);
    return (show) =>
      `${perhaps ? "perhaps short" : "short"} by ${show.length(length - amount)}: the patches take ${show.length(length)}` +
      `${perhaps ? " by the best plan found" : ""}, ${show.length(amount)} are there`;
  }
  return (show) => {
    const left = atMost(spare, 0) ? "nothing" : show.length(spare);
    const careful = atMost(LITTLE, spare) ? "" : "; buy a little more";
    return `enough: the patches take ${show.length(length)} of ${show.length(amount)}, ${left} to spare${careful}`;
  };
}
