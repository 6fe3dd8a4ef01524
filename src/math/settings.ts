/**
 * Settings: how blocks are laid out in a quilt top, how large the top comes out, and the triangles that fill the edges of a
 * top set on point.
 */
import { USUAL } from "./conventions";
import { cutHalfSquare, cutQuarterSquare } from "./patches";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { covers, difference, fits } from "./rounding";
import type { Inches, Size } from "./units";
import { step } from "./working";

/**
 * "straight": rows and columns. "on point": every block stands on a corner, in rows across and down, with more blocks
 * between the rows. "two-side": every block carries a strip on two sides, so that turning it shifts the block.
 */
export const SETTINGS = ["straight", "on point", "two-side"] as const;
export type Setting = (typeof SETTINGS)[number];

/** Whether sashing lies only between the blocks ("none" at the edge), or also outside the outer ones. */
export const EDGES = ["none", "sashed"] as const;
export type Edge = (typeof EDGES)[number];

export interface SettingOptions {
  /** finished width of the sashing, or of the strips of a two-side setting, inches */
  sashing?: Inches;
  edge?: Edge;
  setting?: Setting;
}

/** Sashes across the top beyond one for each block; undefined where the edge cannot be had. */
const EXTRA_SASHES: Readonly<Record<Setting, Record<Edge, number | undefined>>> = {
  straight: { none: -1, sashed: 1 },
  // The outer sashes of a top on point end in cornerstones that the edge cuts in half: half a sash at either end.
  "on point": { none: -1, sashed: 0 },
  "two-side": { none: 0, sashed: undefined },
};

/**
 * Finished size of a quilt top without borders.
 *
 * Straight: blocks and sashes in a row. On point: the same, measured from corner to corner of the blocks, √2 as long.
 * Two-side: block and strip, for each block.
 *
 * @param across blocks in a row; on point, blocks in one of the rows that reach both sides
 * @param down rows of blocks, counted in the same way
 * @param block finished side of a block, inches
 * @throws Problem "bad input" where a length or count is out of range, or the setting cannot be sewn
 */
export function topSize(across: number, down: number, block: Inches, options: SettingOptions = {}): Size {
  requireLayout(across, down, options);
  const { scale, pitch, extra } = spacing(block, options);
  const along = (blocks: number): Inches => (scale * (blocks * pitch + extra)) as Inches;
  const size = { width: along(across), length: along(down) };
  const times = scale === 1 ? "" : "√2 × ";
  for (const [name, blocks, total] of [
    ["width", across, size.width],
    ["length", down, size.length],
  ] as const) {
    step((show) => {
      const sashes = extra === 0 ? "" : ` ${extra < 0 ? "−" : "+"} ${show.length(Math.abs(extra))}`;
      return `${name}: ${times}(${blocks} × ${show.length(pitch)}${sashes}) = ${show.length(total)}`;
    });
  }
  return size;
}

/**
 * Blocks in a top. On point, the blocks between the rows are counted too: 4 × 5 and 3 × 4 are 32.
 *
 * @param across blocks in a row
 * @param down rows of blocks
 */
export function blocksIn(across: number, down: number, setting: Setting = "straight"): number {
  return across * down + (setting === "on point" ? (across - 1) * (down - 1) : 0);
}

/** One layout near a wanted size. */
export interface Layout extends Size {
  across: number;
  down: number;
  blocks: number;
  /** What the top is wider than wanted, inches; below 0 where it is narrower. */
  wider: Inches;
  longer: Inches;
}

/**
 * Layouts nearest to a wanted size: with the largest count that does not pass it and the smallest that reaches it, each
 * way; nearest first, by the two differences added.
 *
 * @param width wanted width of the top, inches
 * @param length wanted length of the top, inches
 * @param block finished side of a block, inches
 * @returns one to four layouts; fewer where a count fits exactly or less than one block would fit
 * @throws Problem "bad input" where a length is out of range, or more blocks are needed than are counted
 */
export function blocksFor(width: Inches, length: Inches, block: Inches, options: SettingOptions = {}): Layout[] {
  requirePositive("width", width);
  requirePositive("length", length);
  const { scale, pitch, extra } = spacing(block, options);
  const fewest = touchOnly(1, options) ? 2 : 1;
  const counts = (wanted: Inches): number[] => {
    const inPitches = wanted / scale - extra;
    const under = Math.max(fewest, fits(pitch, inPitches));
    const over = Math.max(fewest, covers(pitch, inPitches));
    return under === over ? [under] : [under, over];
  };
  const layouts = counts(width).flatMap((across) =>
    counts(length).map((down): Layout => {
      const size = topSize(across, down, block, options);
      const blocks = blocksIn(across, down, options.setting);
      return {
        ...size,
        across,
        down,
        blocks,
        wider: difference(size.width, width),
        longer: difference(size.length, length),
      };
    }),
  );
  const off = (layout: Layout): number => Math.abs(layout.wider) + Math.abs(layout.longer);
  return layouts.sort((one, other) => difference(off(one), off(other)));
}

/**
 * Side of the square to cut twice, corner to corner, for the side triangles of a top on point. Their long edges lie along
 * the edge of the top, on the straight grain.
 *
 * @param block finished side of a block, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves the size exact
 * @returns side of the square to cut, inches; it makes four triangles
 */
export function cutSideTriangle(block: Inches, seam = USUAL.seam, mark = USUAL.mark): Inches {
  requirePositive("block", block);
  const longEdge = (Math.SQRT2 * block) as Inches;
  step((show) => `long edge of a side triangle: √2 × ${show.length(block)} = ${show.length(longEdge)}`);
  return cutQuarterSquare(longEdge, seam, mark);
}

/**
 * Side of the square to cut once, corner to corner, for the corner triangles of a top on point.
 *
 * @param block finished side of a block, inches
 * @param seam seam allowance, inches
 * @param mark ruler mark to round up to, inches; 0 leaves the size exact
 * @returns side of the square to cut, inches; it makes two triangles
 */
export function cutCornerTriangle(block: Inches, seam = USUAL.seam, mark = USUAL.mark): Inches {
  requirePositive("block", block);
  const leg = (block / Math.SQRT2) as Inches;
  step((show) => `short edge of a corner triangle: ${show.length(block)} ÷ √2 = ${show.length(leg)}`);
  return cutHalfSquare(leg, 1, seam, mark);
}

/**
 * Refuses counts that are out of range and blocks on point that sashing cannot join.
 *
 * @param across blocks in a row
 * @param down rows of blocks
 */
function requireLayout(across: number, down: number, options: SettingOptions): void {
  requireCount("across", across, 1);
  requireCount("down", down, 1);
  requireCount("blocks", blocksIn(across, down, options.setting));
  if (across + down > 2 && touchOnly(Math.min(across, down), options)) {
    throw new Problem(
      "bad input",
      'blocks on point in a single row touch only at their corners, so no sashing lies between; try edge "sashed"',
    );
  }
}

/** Whether blocks on point, this many across or down, would have sashing between corners only. */
function touchOnly(fewest: number, options: SettingOptions): boolean {
  const { sashing = 0, edge = "none", setting = "straight" } = options;
  return setting === "on point" && edge === "none" && sashing > 0 && fewest === 1;
}

/** What n blocks take along one side of the top: scale × (n × pitch + extra). */
function spacing(block: Inches, options: SettingOptions): { scale: number; pitch: number; extra: number } {
  const { sashing = 0 as Inches, edge = "none", setting = "straight" } = options;
  requirePositive("block", block);
  requireNotNegative("sashing", sashing);
  const extraSashes = EXTRA_SASHES[setting][edge];
  if (extraSashes === undefined) {
    throw new Problem(
      "bad input",
      'in a "two-side" setting the strips belong to the blocks; leave edge at "none" and add a strip all round as a border',
    );
  }
  return { scale: setting === "on point" ? Math.SQRT2 : 1, pitch: block + sashing, extra: extraSashes * sashing };
}
