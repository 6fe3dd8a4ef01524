/** What every picture may be told besides its sizes. */
import { CONVENTIONS, type Conventions } from "../math/conventions";
import { type Show, showing } from "../math/show";
import type { Inches, System } from "../math/units";

export interface PictureOptions {
  /** seam allowance, inches; what the maker's units usually take if left out */
  seam?: Inches;
  /** ruler mark to which sizes are rounded up, inches; as the function rounds if left out */
  mark?: Inches;
  /** in which units measures are written */
  system?: System;
}

/** The options with what is usual in the maker's units. */
export function settle({ seam, mark, system = "in" }: PictureOptions): {
  seam: Inches;
  mark: Inches | undefined;
  usual: Conventions;
  system: System;
  show: Show;
} {
  const usual = CONVENTIONS[system];
  return { seam: seam ?? usual.seam, mark, usual, system, show: showing(system) };
}
