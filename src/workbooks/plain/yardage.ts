/** Fabric for patches of one kind, and patches out of an amount of fabric. */
import { above, any, atMost, covers, either, fits, type Formula, minus, not, plain, times, written } from "./formula";
import type { Reader } from "./reader";
import { squared } from "./strips";
import { fabricToBuy, isFolded, openWidth, twin, type Twins } from "./template";

/** One way for a patch to lie: what it takes across the fabric, and along it. */
interface Lay {
  across: Formula;
  along: Formula;
}

export const yardage: Twins = {
  PATCHFABRIC: twin("count width height fabricWidth grain step squaring units", "amount", (read) => {
    const count = read.countOrEmpty("count");
    const fabricWidth = openWidth(read, "fabricWidth");
    const length = bestLay(read, fabricWidth, "MIN", ({ across, along }) =>
      times(covers(fits(across, fabricWidth), count), along),
    );
    return fabricToBuy(read, squared(length, read.lengthOrZero("squaring", 0), above(0, count)));
  }),

  PIECESFROM: twin("fabric width height fabricWidth grain squaring units", "count", (read) => {
    const length = times(read.fabric("fabric"), read.fabricLength);
    const fabricWidth = read.length("fabricWidth", "fabricWidth");
    const fatQuarter = atMost(
      length,
      read.bySystem((system) => (system === "in" ? 20 : 50.8)),
    );
    read.require(any([fatQuarter, not(isFolded(read, fabricWidth))]));
    const usable = plain`MAX(0,${minus(length, read.lengthOrZero("squaring", 0))})`;
    return bestLay(read, fabricWidth, "MAX", ({ across, along }) =>
      times(fits(across, fabricWidth), fits(along, usable)),
    );
  }),
};

/** What the better way to lie gives; upright patches lie only one way. A patch must fit across the fabric. */
function bestLay(read: Reader, fabricWidth: Formula, best: "MIN" | "MAX", gives: (lay: Lay) => Formula): Formula {
  const [width, height] = [read.length("width"), read.length("height")];
  const upright: Lay = { across: width, along: height };
  const turned: Lay = { across: height, along: width };
  const goes = (lay: Lay) => atMost(lay.across, fabricWidth);
  return read.choose("grain", "any", {
    any: () => {
      read.require(any([goes(upright), goes(turned)]));
      const [one, other] = [upright, turned].map((lay) => either(goes(lay), gives(lay), best === "MIN" ? 1e15 : 0));
      return `${best}(${written(one)},${written(other)})`;
    },
    upright: () => {
      read.require(goes(upright));
      return gives(upright);
    },
  });
}
