/** Costing: what a kit costs, what to ask for it, and how many come off a bolt. */
import * as costing from "../src/math/costing";
import { Problem } from "../src/math/problem";
import { inches } from "../src/math/units";
import { answer, type Cell, type Door, isEmpty } from "./cells";

/** The largest markup that a bare number stands for: 5 is 500 %, and 45 is a percent sign left out. */
const LARGEST_BARE_MARKUP = 5;

/**
 * Cost of a kit: each amount times the price beside it, and the extras.
 *
 * A row without an amount is skipped; an amount without a price is refused, since the kit would come out too cheap.
 * @customfunction KITCOST
 * @param amounts How much of each, in the unit of its price; text such as "1 7/8" or "27 in" is read as yards (meters).
 * @param prices Price of one of each, a range of the same shape.
 * @param [extras] Sums to add as they are, such as a pattern or a bag: one cell or a range.
 * @param [units] "in" (usual) or "cm": whether text amounts are yards or meters.
 * @returns Cost of one kit, not rounded.
 */
export function kitCost(amounts: any[][], prices: any[][], extras?: any[][], units?: any): any {
  return answer(units, (door) =>
    costing.kitCost(readLines(door, range("amounts", amounts), range("prices", prices)), readExtras(door, extras)),
  );
}

/**
 * Price of which a given part, the margin, is not cost: cost ÷ (1 − margin).
 *
 * To add a part of the cost to the cost, use PRICEFORMARKUP: 45 % of a cost of 60.83 added asks 88.20, a margin of 45 %
 * asks 110.59. Sellers follow the tax, labeling and product-safety rules of their place.
 * @customfunction PRICEFORMARGIN
 * @param cost What the goods cost.
 * @param margin Part of the price that is not cost, less than 100 %: 0.45 or "45%".
 * @param [units] Makes no difference to money.
 * @returns Price, not rounded.
 */
export function priceForMargin(cost: any, margin: any, units?: any): any {
  return answer(units, (door) => costing.priceForMargin(door.number("cost", cost), door.rate("margin", margin)));
}

/**
 * Price that adds a part of the cost, the markup, to the cost: cost × (1 + markup).
 *
 * Where a part of the price is to be left over, use PRICEFORMARGIN: a margin of 45 % on a cost of 60.83 asks 110.59, a markup
 * of 45 % asks 88.20. Sellers follow the tax, labeling and product-safety rules of their place.
 * @customfunction PRICEFORMARKUP
 * @param cost What the goods cost.
 * @param markup Part of the cost to add: 0.45 or "45%"; 1 doubles the cost. Above 5 write it with %, such as "600%".
 * @param [units] Makes no difference to money.
 * @returns Price, not rounded.
 */
export function priceForMarkup(cost: any, markup: any, units?: any): any {
  return answer(units, (door) =>
    costing.priceForMarkup(door.number("cost", cost), door.rate("markup", markup, LARGEST_BARE_MARKUP)),
  );
}

/**
 * Whole kits that come off a bolt.
 *
 * Every cut is as long as a kit needs and the generosity, the last one too.
 * @customfunction KITSPERBOLT
 * @param bolt Length on the bolt, in yards (or meters), such as 15.
 * @param each Length of fabric in one kit, in yards (or meters), such as "1 7/8".
 * @param [generosity] What is added to every cut, in inches (or centimeters), such as "1/2"; 0 (usual).
 * @param [units] "in" (usual): yards and inches; or "cm": meters and centimeters.
 * @returns Whole kits; 0 where the bolt is too short for one.
 */
export function kitsPerBolt(bolt: any, each: any, generosity?: any, units?: any): any {
  return answer(units, (door) =>
    costing.kitsPerBolt(
      door.fabric("bolt", bolt),
      door.fabric("each", each),
      door.lengthOrZero("generosity", generosity, inches(0)),
    ),
  );
}

/**
 * Bolts of equal length for a number of kits; no kit is pieced from the ends of two bolts.
 * @customfunction BOLTSNEEDED
 * @param kits How many kits.
 * @param each Length of fabric in one kit, in yards (or meters), such as "1 7/8".
 * @param bolt Length on a bolt, in yards (or meters), such as 15.
 * @param [generosity] What is added to every cut, in inches (or centimeters), such as "1/2"; 0 (usual).
 * @param [units] "in" (usual): yards and inches; or "cm": meters and centimeters.
 * @returns Whole bolts. Empty where the number of kits is empty.
 */
export function boltsNeeded(kits: any, each: any, bolt: any, generosity?: any, units?: any): any {
  return answer(units, (door) =>
    costing.boltsNeeded(
      door.countOrEmpty("kits", kits),
      door.fabric("each", each),
      door.fabric("bolt", bolt),
      door.lengthOrZero("generosity", generosity, inches(0)),
    ),
  );
}

function readLines(door: Door, amounts: Cell[][], prices: Cell[][]): costing.KitLine[] {
  if (shape(amounts) !== shape(prices)) {
    throw new Problem(
      "bad input",
      `amounts is ${shape(amounts)} and prices is ${shape(prices)}; both must be the same, an amount beside every price`,
    );
  }
  return amounts.flatMap((row, r) =>
    row.flatMap((cell, c) => {
      const place = `${r + 1}${row.length > 1 ? `, column ${c + 1}` : ""}`;
      const amount = isEmpty(cell) ? 0 : door.showsFabric(door.fabric(`amount in row ${place}`, cell));
      return amount === 0 ? [] : [{ amount, price: door.number(`price in row ${place}`, prices[r][c]) }];
    }),
  );
}

function readExtras(door: Door, extras: Cell): number[] {
  if (isEmpty(extras)) return [];
  return range("extras", extras).flatMap((row, r) =>
    row.filter((cell) => !isEmpty(cell)).map((cell) => door.number(`extra in row ${r + 1}`, cell)),
  );
}

/** The rows of a range; one cell counts as a range of one. */
function range(name: string, cells: Cell): Cell[][] {
  if (isEmpty(cells)) throw new Problem("bad input", `${name} is missing`);
  return (Array.isArray(cells) ? cells : [[cells]]).map((row: Cell): Cell[] => (Array.isArray(row) ? row : [row]));
}

function shape(rows: Cell[][]): string {
  const columns = rows[0]?.length ?? 0;
  return `${rows.length} ${rows.length === 1 ? "row" : "rows"} by ${columns} ${columns === 1 ? "column" : "columns"}`;
}
