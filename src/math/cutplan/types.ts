/** What goes into the cut planner and what comes out. All lengths are whole numbers of one unit that the caller chose. */

/** One row of a cutting list. */
export interface Patch {
  readonly label: string;
  /** across the cloth, from selvage to selvage */
  readonly width: number;
  /** along the length of the cloth: the height of the strip it is cut from */
  readonly height: number;
  readonly count: number;
  /** whether it may be turned a quarter; false for a one-way print or where the grain matters */
  readonly mayTurn: boolean;
  /**
   * What to do with a patch wider than the cloth, such as a border: "join" it from full-width strips and a rest,
   * or cut it "along" the length of the cloth. Without either, such a patch is refused.
   */
  readonly whenLong?: "join" | "along";
}

export type CutList = readonly Patch[];

/** The cloth, and how to plan. */
export interface Cloth {
  /** usable width, selvages off */
  readonly width: number;
  /** whether a patch may be cut from a higher strip and trimmed (default true) */
  readonly trimming?: boolean;
  /**
   * The step the shop sells in. When given, planning stops as soon as the amount to buy is settled: the length may then
   * stay a little above the least, but no better plan would buy less.
   */
  readonly buyingStep?: number;
  /** length that every plan loses besides its strips, for squaring up; it counts when rounding up to the step (default 0) */
  readonly extraLength?: number;
  /** what one join of two strips loses: twice the seam when straight (default 0); "diagonal" loses the strip's own height */
  readonly joinLoss?: number | "diagonal";
  /** steps of work, about 2 ns each (default 40 million) */
  readonly budget?: number;
  /** how a refusal writes a length, such as "4 1/2 in" (default: the plain number) */
  readonly show?: (length: number) => string;
}

/** Equal patches in one strip. */
export interface Piece {
  /** row of the list, from 0 */
  readonly row: number;
  readonly label: string;
  readonly count: number;
  /** as it lies in the strip: across the cloth and along it */
  readonly across: number;
  readonly along: number;
  readonly turned: boolean;
  /** lower than its strip, so one more cut */
  readonly trimmed: boolean;
  /** for a joined patch: a strip of the full width, or the rest that completes it */
  readonly part?: "full width" | "rest";
}

/** Strips that are cut alike; they can be stacked and cut at once. */
export interface Strip {
  readonly height: number;
  readonly times: number;
  /** widest first */
  readonly pieces: readonly Piece[];
  /** width used, and width left over at the end */
  readonly used: number;
  readonly left: number;
}

/** How a patch longer than the cloth is wide comes together. */
export interface Join {
  readonly row: number;
  readonly label: string;
  /** strips joined end to end, the last one cut to `rest` */
  readonly strips: number;
  readonly rest: number;
  readonly loss: number;
}

export interface CutPlan {
  /** highest strips first, then those cut most often */
  readonly strips: readonly Strip[];
  readonly joins: readonly Join[];
  /** length of cloth in strips (without `extraLength`) */
  readonly length: number;
  /** no plan is shorter than this */
  readonly lengthBound: number;
  /** length = lengthBound: proved least */
  readonly lengthProved: boolean;
  readonly stripCount: number;
  /** no plan of this length has fewer strips than this */
  readonly stripBound: number;
  readonly stripsProved: boolean;
  /** patches to trim to height */
  readonly trims: number;
  /** length + extraLength, rounded up to the buying step (exact without a step) */
  readonly toBuy: number;
  /** no plan buys less than this */
  readonly toBuyBound: number;
  readonly toBuyProved: boolean;
  /** area of the patches as they are cut, joins and all */
  readonly patchArea: number;
  /** steps of work done */
  readonly work: number;
}
