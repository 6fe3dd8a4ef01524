/** Lengths counted in whole marks: the planners work in whole numbers, so that what fits exactly, fits. */
import { covers, fits, isMultiple, nearestCount } from "./rounding";
import type { Line } from "./show";
import { type Inches, inches, type System, toInches } from "./units";

/** Equal parts of an inch, coarse to fine: of rulers, of decimals and thirds, and millimeters and their halves and tenths. */
const PARTS_OF_AN_INCH = [8, 10, 12, 16, 20, 24, 25.4, 32, 40, 48, 50.8, 64, 80, 100, 120, 254, 400, 1200];

/** Finer marks cost a plan of strips and patches more than they bring. */
export const FINEST_TO_PLAN = toInches(0.1, "mm");

/** What a size that lies on no mark is rounded up to, where it is cut by a ruler. */
export const RULER_MARK: Readonly<Record<System, Inches>> = { in: inches(1 / 16), cm: toInches(0.1, "cm") };

/** How lengths are counted. */
export interface Counting {
  /** Inches for one. */
  mark: Inches;
  /** Whether some of the lengths lie on no mark, and are rounded up to the next one. */
  rounded: boolean;
}

/**
 * The coarsest mark on which all lengths lie.
 *
 * @param lengths what has to be counted exactly, inches
 * @param ruler mark to which lengths are rounded up where none holds them all, inches
 * @param finest the finest mark to count in, inches
 * @param besides what may be counted a mark too short, but is counted exactly, too, where that can be, inches
 */
export function countingMark(
  lengths: readonly Inches[],
  ruler: Inches,
  finest = inches(0),
  besides: readonly Inches[] = [],
): Counting {
  const marks = PARTS_OF_AN_INCH.map((parts) => inches(1 / parts)).filter((mark) => mark >= finest);
  const holding = (measures: readonly Inches[]) =>
    marks.find((mark) => measures.every((measure) => isMultiple(mark, measure)));
  const mark = holding([...lengths, ...besides]) ?? holding(lengths);
  return { mark: mark ?? ruler, rounded: mark === undefined };
}

/** How many marks a length takes: of one between two marks, up to the next. */
export function marksFor({ mark }: Counting, length: number): number {
  return isMultiple(mark, length) ? nearestCount(mark, length) : covers(mark, length);
}

/** How many marks there are in a length. */
export function marksIn({ mark }: Counting, length: number): number {
  return isMultiple(mark, length) ? nearestCount(mark, length) : fits(mark, length);
}

/** How a proof that counts rounded sizes goes on. */
export function roundedText({ mark, rounded }: Counting): Line {
  return (show) => (rounded ? ` for sizes rounded up to ${show.length(mark)}` : "");
}
