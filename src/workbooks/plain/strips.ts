/** Strips cut across the fabric. */
import { above, atMost, covers, either, fits, type Formula, minus, plain, plus, times, up } from "./formula";
import type { Reader } from "./reader";
import { fabricToBuy, twin, type Twins } from "./template";

export const strips: Twins = {
  STRIPPATCHES: twin("patch width squaring units", "someCount", (read) => perStrip(read, "patch", "width")),

  /** The first triangle takes a whole base, every further one, turned head to tail, half a base. */
  STRIPTRIANGLES: twin("height base width units squaring", "someCount", (read) => {
    const base = read.lengthOr("base", plain`${read.length("height")}*2/SQRT(3)`);
    const usable = minus(read.length("width", "fabricWidth"), read.lengthOrZero("squaring", 0));
    read.require(atMost(base, usable));
    return plain`1+${fits(plain`${base}/2`, plain`${usable}-${base}`)}`;
  }),

  STRIPSNEEDED: twin("count patch width squaring units", "count", (read) => {
    const count = read.countOrEmpty("count");
    return up(plain`${count}/${perStrip(read, "patch", "width")}`);
  }),

  STRIPFABRIC: twin("stripCount stripWidth step squaring units", "amount", (read) => {
    const count = read.countOrEmpty("stripCount");
    const length = times(count, read.length("stripWidth"));
    return fabricToBuy(read, squared(length, read.lengthOrZero("squaring", 0), above(0, count)));
  }),

  STRIPSFROM: twin("fabric stripWidth squaring units", "count", (read) => {
    const length = times(read.fabric("fabric"), read.fabricLength);
    const usable = minus(length, read.lengthOrZero("squaring", 0));
    return plain`MAX(0,${fits(read.length("stripWidth"), usable)})`;
  }),

  STRIPSETSIZE: twin("widths seam units", "size", (read) => sewnTogether(read, "widths")),

  STRIPSETS: twin("segments segment length squaring units", "count", (read) => {
    const segments = read.countOrEmpty("segments");
    return covers(perStrip(read, "segment", "length"), segments);
  }),

  CHECKROW: twin("sizes seam units", "size", (read) => sewnTogether(read, "sizes")),
};

/** Whole patches from one strip. */
function perStrip(read: Reader, patch: string, width: string): Formula {
  const each = read.length(patch);
  const usable = minus(read.length(width, "fabricWidth"), read.lengthOrZero("squaring", 0));
  read.require(atMost(each, usable));
  return fits(each, usable);
}

/** A length and what squaring loses, where anything is cut at all. */
export function squared(length: Formula, squaring: Formula, cut: ReturnType<typeof above>): Formula {
  return plus(length, squaring === 0 ? 0 : either(cut, squaring, 0));
}

/** Patches or strips sewn side by side: two seams go into every seam between them, and something of each must be left. */
function sewnTogether(read: Reader, name: string): Formula {
  const sizes = read.lengths(name);
  const seam = read.lengthOrZero("seam", "seam");
  read.require(`OR(COUNT(${sizes})=1,${plain`MIN(${sizes})>2*${seam}`})`);
  return plain`SUM(${sizes})-2*${seam}*(COUNT(${sizes})-1)`;
}
