/**
 * The only place that takes a floor or a ceiling of a quotient of lengths. Binary fractions are not exact
 * (110 / 2.2 is 49.99999999999999), so each of these first forgives a tolerance: what fits exactly, fits.
 */

/** How far a quotient may miss a whole number and still count as that number. */
export const TOLERANCE = 1e-9;

/** The relative error of a few binary operations, which outgrows the tolerance only beyond quotients of 100,000. */
const BINARY_DUST = 1e-14;

/** How many pieces of `each` come out of `whole`: 42 in of 3 in pieces gives 14. */
export function fits(each: number, whole: number): number {
  return Math.max(0, Math.floor(forgive(whole / each, 1)));
}

/** How many of `each` cover `whole`: 66 in of 2 in units takes 33, 46 in of 4 in units takes 12. */
export function covers(each: number, whole: number): number {
  return Math.max(0, Math.ceil(forgive(whole / each, -1)));
}

/** The smallest whole multiple of `step` that is not below `value`; a step of 0 leaves the value exact. */
export function roundUpTo<L extends number>(step: L, value: number): L {
  return (step === 0 ? value : Math.ceil(forgive(value / step, -1)) * step) as L;
}

/** The largest whole multiple of `step` that is not above `value`; a step of 0 leaves the value exact. */
export function roundDownTo<L extends number>(step: L, value: number): L {
  return (step === 0 ? value : Math.floor(forgive(value / step, 1)) * step) as L;
}

/** The whole number of `each` nearest to `whole`, halves away from zero. */
export function nearestCount(each: number, whole: number): number {
  return Math.sign(whole) * Math.floor(forgive(Math.abs(whole) / each, 1) + 0.5);
}

/** The multiple of `step` nearest to `value`, halves away from zero; a step of 0 leaves the value exact. */
export function roundNearestTo<L extends number>(step: L, value: number): L {
  return (step === 0 ? value : nearestCount(step, value) * step) as L;
}

/** Whether two lengths are the same but for binary dust. */
export function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= TOLERANCE;
}

/** Whether `whole` is a whole number of `each`, but for binary dust. */
export function isMultiple(each: number, whole: number): boolean {
  return same(whole, nearestCount(each, whole) * each);
}

/** What `a` is more than `b`; 0, not dust, where they are the same. */
export function difference<L extends number>(a: L, b: number): L {
  return (same(a, b) ? 0 : a - b) as L;
}

/** Whether `small` goes into `large`, an exact fit included. */
export function atMost(small: number, large: number): boolean {
  return small <= large + TOLERANCE;
}

/** A quotient moved by the tolerance in the maker's favor: up before a floor, down before a ceiling. */
function forgive(quotient: number, direction: 1 | -1): number {
  return quotient + direction * Math.max(TOLERANCE, Math.abs(quotient) * BINARY_DUST);
}
