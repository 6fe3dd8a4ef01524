/** Patches: from the finished size to the size to cut, and back. */
import { type Formula, plain, times, upToMark } from "./formula";
import type { Reader } from "./reader";
import { twin, type Twins } from "./template";

export const patches: Twins = {
  CUTSQUARE: twin("finished seam mark units", "size", (read) =>
    toMark(read, 0, square(read.length("finished"), read.lengthOrZero("seam", "seam"))),
  ),

  CUTCORNER: twin("finished seam mark units", "size", (read) =>
    toMark(read, 0, square(read.length("finished"), read.lengthOrZero("seam", "seam"))),
  ),

  CUTHALFSQUARE: twin("finished madeAtOnce seam mark units", "size", (read) => {
    const [finished, seam] = [read.length("finished"), read.lengthOrZero("seam", "seam")];
    const pair = halfSquare(finished, seam);
    const branches: [number, () => Formula][] = [
      [2, () => pair],
      [1, () => pair],
      [4, () => plain`SQRT(2)*(${finished}+2*${seam})+2*${seam}`],
      [8, () => plain`2*${pair}`],
    ];
    return toMark(read, "mark", read.chooseNumber("madeAtOnce", 2, new Map(branches)));
  }),

  CUTQUARTERSQUARE: twin("finished seam mark units", "size", (read) =>
    toMark(read, "mark", quarterSquare(read.length("finished"), read.lengthOrZero("seam", "seam"))),
  ),

  /** The long edge of a side triangle is the diagonal of a block. */
  CUTSIDETRIANGLE: twin("block seam mark units", "size", (read) =>
    toMark(read, "mark", quarterSquare(times("SQRT(2)", read.length("block")), read.lengthOrZero("seam", "seam"))),
  ),

  /** The long edge of a corner triangle is the side of a block. */
  CUTCORNERTRIANGLE: twin("block seam mark units", "size", (read) => {
    const [block, seam] = [read.length("block"), read.lengthOrZero("seam", "seam")];
    return toMark(read, "mark", halfSquare(plain`${block}/SQRT(2)`, seam));
  }),
};

/** The size to cut, up to the mark that the maker gave or to the usual one. */
export function toMark(read: Reader, usual: "mark" | 0, exact: Formula): Formula {
  return upToMark(read.lengthOrZero("mark", usual), exact);
}

/** A square, or one side of a rectangle. */
export function square(finished: Formula, seam: Formula): Formula {
  return plain`${finished}+2*${seam}`;
}

/** A square cut once, corner to corner: its side is a short edge of the two triangles. */
export function halfSquare(shortEdge: Formula, seam: Formula): Formula {
  return plain`${shortEdge}+(2+SQRT(2))*${seam}`;
}

/** A square cut twice, corner to corner: its side is the long edge of the four triangles. */
export function quarterSquare(longEdge: Formula, seam: Formula): Formula {
  return plain`${longEdge}+2*(1+SQRT(2))*${seam}`;
}
