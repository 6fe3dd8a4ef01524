/** Beds: how large a quilt covers a mattress and hangs down beside it. */
import { USUAL } from "./conventions";
import { requireNotNegative, requirePositive } from "./problem";
import { inches, type Inches, type Size } from "./units";
import { step } from "./working";

/**
 * Mattresses as sold in the United States, width and length. Crib: the inside of a full-size crib, 28 × 52 3/8 in (16 CFR
 * 1219), which its mattress fills. Twin: sold as 38 or 39 in wide; the Better Sleep Council lists 38. The others: common
 * practice, twin XL from memory.
 */
const MATTRESSES = {
  crib: mattress(28, 52.375),
  twin: mattress(39, 75),
  "twin xl": mattress(39, 80),
  full: mattress(54, 75),
  queen: mattress(60, 80),
  king: mattress(76, 80),
  "california king": mattress(72, 84),
};

export type Bed = keyof typeof MATTRESSES;
export const BEDS = Object.keys(MATTRESSES) as Bed[];

/** The size of a bed's mattress, inches. */
export function mattressSize(bed: Bed): Size {
  return MATTRESSES[bed];
}

/** How far a quilt usually hangs down: not at all in a crib, the size in which crib quilts are made. */
export function usualDrop(bed?: Bed, drop = USUAL.drop): Inches {
  return bed === "crib" ? inches(0) : drop;
}

/**
 * Size of a quilt for a mattress: it hangs down on both sides and at the foot, and is tucked under the pillows at the head
 * (Sewing & Craft Alliance, guideline 7.115, Bed Coverings).
 *
 * A quilt of crib size is for the wall, the floor or an older child: nothing soft belongs in an infant's sleep space
 * (American Academy of Pediatrics, 2022; US CPSC, "Bare is Best").
 *
 * @param size width and length of the mattress, inches
 * @param drop how far the quilt hangs down, inches
 * @param tuck extra length at the head, inches
 * @throws Problem "bad input" where a length is out of range
 */
export function bedSize(size: Size, drop: Inches = USUAL.drop, tuck = inches(0)): Size {
  requirePositive("mattress width", size.width);
  requirePositive("mattress length", size.length);
  requireNotNegative("drop", drop);
  requireNotNegative("tuck", tuck);
  const width = (size.width + 2 * drop) as Inches;
  const length = (size.length + drop + tuck) as Inches;
  step((show) => `width: ${show.length(size.width)} + 2 × ${show.length(drop)} = ${show.length(width)}`);
  step(
    (show) =>
      `length: ${show.length(size.length)} + ${show.length(drop)} + ${show.length(tuck)} = ${show.length(length)}`,
  );
  return { width, length };
}

function mattress(width: number, length: number): Size {
  return { width: inches(width), length: inches(length) };
}
