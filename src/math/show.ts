/** Lengths and amounts as a maker reads them. */
import { nearestCount, roundNearestTo, same } from "./rounding";
import { fabricUnit, fromInches, type System } from "./units";

/** Formats lengths for a sentence, in the maker's own units. */
export interface Show {
  length(inches: number): string;
  fabric(inches: number): string;
}

/** A sentence that waits for the maker's units. */
export type Line = (show: Show) => string;

const SHOWS: Readonly<Record<System, Show>> = { in: showIn("in"), cm: showIn("cm") };

/** The formats for makers who work in inches and yards, or in centimetres and metres. */
export function showing(system: System): Show {
  return SHOWS[system];
}

function showIn(system: System): Show {
  return {
    length: (inches) => showLength(inches, system),
    fabric: (inches) => showFabric(inches, system),
  };
}

/**
 * Reduced fraction text of a length, to the nearest 1/denominator, halves up: 2.25 gives `2 1/4`, 3.99 gives `4`.
 *
 * @param value length in the unit in which it is to be read
 * @param denominator parts of one unit that the ruler shows, a whole number
 */
export function fractionText(value: number, denominator: number): string {
  const parts = nearestCount(1 / denominator, value);
  const sign = parts < 0 ? "-" : "";
  const whole = Math.trunc(Math.abs(parts) / denominator);
  const over = Math.abs(parts) % denominator;
  if (over === 0) return `${sign}${whole}`;
  const divisor = commonDivisor(over, denominator);
  const fraction = `${over / divisor}/${denominator / divisor}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
}

/** Parts of an inch, and of a yard, that a number is read in. */
const MARKS = { length: [8, 16], fabric: [8, 16, 3] };

/** A number that is no whole one as a ruler reads it, such as `3 7/8`; undefined where it is on no mark. */
export function ruledText(value: number, measures: keyof typeof MARKS): string | undefined {
  if (Number.isInteger(value)) return undefined;
  const denominator = MARKS[measures].find((parts) => same(value, roundNearestTo(1 / parts, value)));
  return denominator === undefined ? undefined : fractionText(value, denominator);
}

/** A number to a few decimals, without trailing zeros: 9.842519685 gives `9.8425`. */
export function decimalText(value: number, decimals = 4): string {
  const text = value.toFixed(decimals).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}

/** A rate as people say it: 0.45 gives `45 %`. */
export function percentText(rate: number): string {
  return `${decimalText(rate * 100, 2)} %`;
}

/** A length with its unit: `12 1/2 in`, `3.8536 in`, `31.75 cm`. Never rounds a ruler mark away. */
function showLength(length: number, system: System): string {
  if (system === "cm") return `${decimalText(fromInches(length, "cm"))} cm`;
  const onMark = same(length, roundNearestTo(1 / 16, length));
  return `${onMark ? fractionText(length, 16) : decimalText(length)} in`;
}

/** An amount of fabric with its unit: `4 3/4 yd`, `2/3 yd`, `2.2 m`. */
function showFabric(length: number, system: System): string {
  const amount = fromInches(length, fabricUnit(system));
  if (system === "cm") return `${decimalText(amount)} m`;
  const denominator = [8, 3, 16].find((parts) => same(amount, roundNearestTo(1 / parts, amount)));
  return `${denominator ? fractionText(amount, denominator) : decimalText(amount)} yd`;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
