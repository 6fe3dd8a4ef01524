/** Random lengths for the laws: on ruler marks, so that exact fits happen often, and off them. */
import fc from "fast-check";
import { type Inches, inches } from "../../src/math/units";

/** Off the marks, lengths differ by a hundred-thousandth of an inch or not at all: nearer ones are rounded as equal. */
const PARTS = 100_000;

/** A length from `least` to `most` inches, half of the time a multiple of a sixteenth. */
export function lengths(least: number, most: number): fc.Arbitrary<Inches> {
  const whole = (parts: number) =>
    fc.integer({ min: Math.ceil(least * parts), max: Math.floor(most * parts) }).map((count) => inches(count / parts));
  return fc.oneof(whole(16), whole(PARTS));
}

/** Seams that makers sew. */
export const seams = lengths(0, 1);

/** Usable widths of fabric, fat quarters and wide cloth included. */
export const widths = lengths(15, 120);
