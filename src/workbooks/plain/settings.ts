/** Settings: quilt tops laid out from blocks, and quilts for beds. */
import { BEDS, mattressSize } from "../../math/beds";
import { above, all, any, either, equal, type Formula, not, plus, times } from "./formula";
import { twin, type Twins } from "./template";

const SETTINGS = ["straight", "on point", "two-side"];
const EDGES = ["none", "sashed"];

export const settings: Twins = {
  TOPSIZE: twin("across down block sashing edge setting units", "size", (read) => {
    const [across, down] = [read.count("across", undefined, 1), read.count("down", undefined, 1)];
    const [block, sashing] = [read.length("block"), read.lengthOrZero("sashing", 0)];
    const isOnPoint = read.isChosen("setting", "straight", SETTINGS, ["on point"]);
    const isTwoSide = read.isChosen("setting", "straight", SETTINGS, ["two-side"]);
    const isSashed = read.isChosen("edge", "none", EDGES, ["sashed"]);
    read.require(not(all([isTwoSide, isSashed])));
    read.require(any([not(isOnPoint), isSashed, equal(sashing, 0), touchNowhere(across, down)]));
    // Sashes beyond one for each block. On point, the edge cuts the outer sashes in half at either end.
    const more = either(isTwoSide, 0, either(isSashed, either(isOnPoint, 0, 1), -1));
    const side = (count: Formula) => {
      const straight = plus(times(count, block), times(plus(count, more), sashing));
      return times(either(isOnPoint, "SQRT(2)", 1), straight);
    };
    return [[side(across), side(down)]];
  }),

  BEDSIZE: twin("bed drop tuck units mattressWidth mattressLength", "size", (read) => {
    const isNone = read.isEmpty("bed");
    const side = (name: string, inches: (bed: (typeof BEDS)[number]) => number) => {
      const usual = BEDS.map((bed): [string, () => Formula] => [
        bed,
        () => read.bySystem((system) => inches(bed) * (system === "in" ? 1 : 2.54)),
      ]);
      const measured = () => read.length(name);
      const named = () => read.lengthOr(name, read.choose("bed", undefined, Object.fromEntries(usual)));
      if (typeof isNone === "boolean") return isNone ? measured() : named();
      return either(isNone, read.branch(measured), read.branch(named));
    };
    for (const name of ["mattressWidth", "mattressLength"]) {
      read.lengthOr(name, 0);
      read.require(any([not(isNone), not(read.isEmpty(name))]));
    }
    const isCrib = isNone === true ? false : read.isChosen("bed", "", BEDS, ["crib"]);
    const drop = read.lengthOrZeroOr("drop", either(isCrib, 0, read.usual("drop")));
    const width = side("mattressWidth", (bed) => mattressSize(bed).width);
    const length = side("mattressLength", (bed) => mattressSize(bed).length);
    return [[plus(width, times(2, drop)), plus(plus(length, drop), read.lengthOrZero("tuck", 0))]];
  }),
};

/** Blocks on point in a single row touch at their corners, so that no sashing lies between. A single block has no neighbor. */
function touchNowhere(across: Formula, down: Formula) {
  return any([equal(plus(across, down), 2), all([above(1, across), above(1, down)])]);
}
