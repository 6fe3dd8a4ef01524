/** Borders: their sizes, strips and pieced units. */
import { requirePositive } from "./problem";
import { covers } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/**
 * Whole units, such as piano keys, that cover one side of a quilt.
 *
 * @param side finished length of the side, inches
 * @param unit finished length that one unit takes along the side, inches
 * @returns units, rounded up; `borderGap` tells what they overhang
 */
export function borderUnits(side: Inches, unit: Inches): number {
  requirePositive("side", side);
  requirePositive("unit", unit);
  const units = covers(unit, side);
  step((show) => `${show.length(side)} ÷ ${show.length(unit)}, rounded up: ${units} units`);
  return units;
}

/**
 * What the whole units that cover a side overhang: 46 in of 4 in units overhang by 2 in.
 *
 * @param side finished length of the side, inches
 * @param unit finished length that one unit takes along the side, inches
 * @returns overhang, inches; 0 where the units fit exactly
 */
export function borderGap(side: Inches, unit: Inches): Inches {
  const units = borderUnits(side, unit);
  const gap = Math.max(0, units * unit - side) as Inches;
  step((show) => `${units} × ${show.length(unit)} − ${show.length(side)} = ${show.length(gap)}`);
  return gap;
}
