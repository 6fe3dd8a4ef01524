/** Random lengths for the laws: on ruler marks, so that exact fits happen often, and off them. */
import fc from "fast-check";
import { type Inches, inches } from "../../src/math/units";

/** A length from `least` to `most` inches, half of the time a multiple of a sixteenth. */
export function lengths(least: number, most: number): fc.Arbitrary<Inches> {
  const onMarks = fc.integer({ min: Math.ceil(least * 16), max: Math.floor(most * 16) }).map((marks) => marks / 16);
  const anywhere = fc.double({ min: least, max: most, noNaN: true });
  return fc.oneof(onMarks, anywhere).map(inches);
}

/** Seams that makers sew. */
export const seams = lengths(0, 1);

/** Usable widths of fabric, fat quarters and wide cloth included. */
export const widths = lengths(15, 120);
