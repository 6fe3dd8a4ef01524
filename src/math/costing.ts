/** Costing: what a kit costs, what to ask for it, and how many come off a bolt. Money stays exact: its maker rounds it. */
import { counted } from "./counted";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { covers, fits } from "./rounding";
import { decimalText, percentText } from "./show";
import { type Inches, inches } from "./units";
import { step } from "./working";

/** One line of a kit: how much, and the price of one. */
export interface KitLine {
  amount: number;
  price: number;
}

/**
 * Cost of a kit: every amount times its price, and the extras.
 *
 * @param lines amounts in the unit that the price is for, such as yards and dollars a yard
 * @param extras sums to add as they are
 */
export function kitCost(lines: readonly KitLine[], extras: readonly number[] = []): number {
  let cost = 0;
  for (const { amount, price } of lines) {
    requireNotNegative("amount", amount);
    requireNotNegative("price", price);
    cost += amount * price;
    step(() => `${decimalText(amount)} × ${decimalText(price)} = ${decimalText(amount * price)}`);
  }
  for (const extra of extras) {
    requireNotNegative("extra", extra);
    cost += extra;
    step(() => `+ ${decimalText(extra)}`);
  }
  step(() => `in all ${decimalText(cost)}`);
  return cost;
}

/**
 * Price of which a given part is not cost: cost ÷ (1 − margin).
 *
 * @param cost what the goods cost
 * @param margin part of the price, 0.45 for 45 %
 * @throws Problem "bad input" for a margin of 100 % or more: however high the price, some of it is cost
 */
export function priceForMargin(cost: number, margin: number): number {
  requireNotNegative("cost", cost);
  requireNotNegative("margin", margin);
  if (margin >= 1) {
    throw new Problem(
      "bad input",
      `margin must be less than 100 %, not ${percentText(margin)}: it is the part of the price that is not cost; ` +
        `what is added to the cost is the markup`,
    );
  }
  const price = cost / (1 - margin);
  step(() => `${decimalText(cost)} ÷ (1 − ${decimalText(margin)}) = ${decimalText(price)}`);
  return price;
}

/**
 * Price that adds a part of the cost to the cost: cost × (1 + markup).
 *
 * @param cost what the goods cost
 * @param markup part of the cost, 0.45 for 45 %
 */
export function priceForMarkup(cost: number, markup: number): number {
  requireNotNegative("cost", cost);
  requireNotNegative("markup", markup);
  const price = cost * (1 + markup);
  step(() => `${decimalText(cost)} × (1 + ${decimalText(markup)}) = ${decimalText(price)}`);
  return price;
}

/**
 * Whole kits that come off a bolt.
 *
 * @param bolt length on the bolt, inches
 * @param each length of fabric in a kit, inches
 * @param generosity what the cutter adds to every cut, inches
 * @returns kits; 0 where the bolt is shorter than one cut
 */
export function kitsPerBolt(bolt: Inches, each: Inches, generosity = inches(0)): number {
  requirePositive("bolt", bolt);
  requirePositive("each", each);
  requireNotNegative("generosity", generosity);
  const cut = each + generosity;
  const kits = fits(cut, bolt);
  requireCount("kits per bolt", kits);
  step((show) => `${show.length(bolt)} ÷ ${show.length(cut)} a cut, rounded down: ${counted(kits, "kit")} a bolt`);
  return kits;
}

/**
 * Bolts of equal length for a number of kits. No kit is pieced from the ends of two bolts.
 *
 * @param kits how many kits
 * @param each length of fabric in a kit, inches
 * @param bolt length on a bolt, inches
 * @param generosity what the cutter adds to every cut, inches
 * @throws Problem "no answer" where a bolt is shorter than one cut
 */
export function boltsNeeded(kits: number, each: Inches, bolt: Inches, generosity = inches(0)): number {
  requireCount("kits", kits);
  const perBolt = kitsPerBolt(bolt, each, generosity);
  if (perBolt === 0) {
    throw new Problem(
      "no answer",
      (show) => `a bolt of ${show.fabric(bolt)} is shorter than one cut of ${show.length(each + generosity)}`,
    );
  }
  const bolts = covers(perBolt, kits);
  step(() => `${counted(kits, "kit")} ÷ ${perBolt} a bolt, rounded up: ${counted(bolts, "bolt")}`);
  return bolts;
}
