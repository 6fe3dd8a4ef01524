/**
 * What the trade assumes where a maker says nothing. Every answer can be had with another value; these are the ones that
 * are stated with an answer when the maker leaves an argument out.
 */
import { type Inches, inches, type System, toInches } from "./units";

export interface Conventions {
  /** Seam allowance. ¼ in: general in patchwork; 0.75 cm: common practice where makers work in centimetres. */
  readonly seam: Inches;
  /** Usable width of fabric, selvage to selvage, after the selvages are cut off. Labels say 44; 39 to 43 are measured. */
  readonly fabricWidth: Inches;
  /** Step between the marks of a ruler to which a cut size is rounded. Common practice. */
  readonly mark: Inches;
  /** Patches of a block that is easy to cut finish on whole numbers of this. Half an inch, half a centimetre: common practice. */
  readonly gridStep: Inches;
  /** Step in which a shop cuts fabric. Eighths or quarters of a yard (Ball & West, Household Arithmetic, 1920). */
  readonly shopStep: Inches;
  /** Extra backing and batting on each side, for a quilting frame. Common practice. */
  readonly margin: Inches;
  /** Seam allowance between two panels of a backing. Common practice. */
  readonly panelSeam: Inches;
  /** Width to cut a strip for double-fold binding. Common practice. */
  readonly bindingStrip: Inches;
  /** Extra binding to join the two ends. Common practice. */
  readonly bindingTail: Inches;
  /** How far a quilt hangs down at the side of a bed. Common practice; class handouts name 12 in. */
  readonly drop: Inches;
  /** How far three measurements of one quilt may differ before it counts as out of square. Common practice. */
  readonly spread: Inches;
}

const US: Conventions = {
  seam: inches(1 / 4),
  fabricWidth: inches(42),
  mark: inches(1 / 8),
  gridStep: inches(1 / 2),
  shopStep: toInches(1 / 8, "yd"),
  margin: inches(4),
  panelSeam: inches(1 / 2),
  bindingStrip: inches(2.5),
  bindingTail: inches(10),
  drop: inches(12),
  spread: inches(1 / 2),
};

const METRIC: Conventions = {
  seam: toInches(0.75, "cm"),
  fabricWidth: toInches(107, "cm"),
  mark: toInches(0.1, "cm"),
  gridStep: toInches(0.5, "cm"),
  shopStep: toInches(0.1, "m"),
  margin: toInches(10, "cm"),
  panelSeam: toInches(1.5, "cm"),
  bindingStrip: toInches(6.5, "cm"),
  bindingTail: toInches(25, "cm"),
  drop: toInches(30, "cm"),
  spread: toInches(1, "cm"),
};

/** The assumptions of makers who work in inches and yards, or in centimetres and metres. */
export const CONVENTIONS: Readonly<Record<System, Conventions>> = { in: US, cm: METRIC };

/** The defaults of the mathematics, which a caller of src/math gets without saying anything. */
export const USUAL = US;
