/** Patches: from the finished size to the size to cut, and back. */
import { type Formula, plain, upToMark } from "./formula";
import type { Reader } from "./reader";
import { twin, type Twins } from "./template";

export const patches: Twins = {
  CUTSQUARE: twin("finished seam mark units", "size", (read) => {
    const [finished, seam] = [read.length("finished"), read.lengthOrZero("seam", "seam")];
    return toMark(read, 0, plain`${finished}+2*${seam}`);
  }),

  CUTHALFSQUARE: twin("finished madeAtOnce seam mark units", "size", (read) => {
    const [finished, seam] = [read.length("finished"), read.lengthOrZero("seam", "seam")];
    const pair = plain`${finished}+(2+SQRT(2))*${seam}`;
    const branches: [number, () => Formula][] = [
      [2, () => pair],
      [1, () => pair],
      [4, () => plain`SQRT(2)*(${finished}+2*${seam})+2*${seam}`],
      [8, () => plain`2*${pair}`],
    ];
    return toMark(read, "mark", read.chooseNumber("madeAtOnce", 2, new Map(branches)));
  }),
};

/** The size to cut, up to the mark that the maker gave or to the usual one. */
function toMark(read: Reader, usual: "mark" | 0, exact: Formula): Formula {
  return upToMark(read.lengthOrZero("mark", usual), exact);
}
