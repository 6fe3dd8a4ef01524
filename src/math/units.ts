/**
 * Units of length: inches inside, any usual unit outside.
 * 1 in = 25.4 mm and 1 yd = 0.9144 m exactly (NIST Handbook 44, Appendix C).
 */

/** A length in inches. The brand keeps a length in another unit from slipping in unconverted. */
export type Inches = number & { readonly unit: "inches" };

/** Width and length of a quilt, a quilt top or a bed. */
export interface Size {
  width: Inches;
  length: Inches;
}

/** What a bare number means, and what lengths come back in: inches and yards, or centimetres and metres. */
export type System = "in" | "cm";

export type Unit = "in" | "ft" | "yd" | "mm" | "cm" | "m";

/** Inches in one of each unit. */
export const UNIT_INCHES: Readonly<Record<Unit, number>> = {
  in: 1,
  ft: 12,
  yd: 36,
  mm: 1 / 25.4,
  cm: 1 / 2.54,
  m: 100 / 2.54,
};

/** A number taken as inches. */
export function inches(value: number): Inches {
  return value as Inches;
}

/** A length given in any unit, in inches. */
export function toInches(value: number, unit: Unit): Inches {
  return (value * UNIT_INCHES[unit]) as Inches;
}

/** A length in inches, in any unit. */
export function fromInches(length: number, unit: Unit): number {
  return length / UNIT_INCHES[unit];
}

/** The unit in which a shop sells fabric. */
export function fabricUnit(system: System): Unit {
  return system === "in" ? "yd" : "m";
}
