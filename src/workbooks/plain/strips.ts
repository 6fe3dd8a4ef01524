/** Strips cut across the fabric. */
import { atMost, fits, minus, plus, times } from "./formula";
import { fabricToBuy, twin, type Twins } from "./template";

export const strips: Twins = {
  STRIPPATCHES: twin("patch width squaring units", "someCount", (read) => {
    const patch = read.length("patch");
    const usable = minus(read.length("width", "fabricWidth"), read.lengthOrZero("squaring", 0));
    read.require(atMost(patch, usable));
    return fits(patch, usable);
  }),

  STRIPFABRIC: twin("stripCount stripWidth step squaring units", "amount", (read) => {
    const count = read.countOrEmpty("stripCount");
    const length = times(count, read.length("stripWidth"));
    const squaring = read.lengthOrZero("squaring", 0);
    return fabricToBuy(read, plus(length, squaring === 0 ? 0 : times(`(${count}>0)`, squaring)));
  }),
};
