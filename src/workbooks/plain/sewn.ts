/** From the cut size back: what a patch or a unit measures once it is sewn. */
import { above, type Formula, plain } from "./formula";
import type { Reader } from "./reader";
import { twin, type Twins } from "./template";

type Way = (cut: Formula, seam: Formula) => Formula;

/** Unfinished sizes. Every diagonal seam takes √2 seams of the side, every straight one two. */
const MADE: Readonly<Record<string, Way>> = {
  "half square": (cut, seam) => plain`${cut}-SQRT(2)*${seam}`,
  "half square four": (cut, seam) => plain`(${cut}-2*${seam})/SQRT(2)`,
  "half square eight": (cut, seam) => plain`${cut}/2-SQRT(2)*${seam}`,
  hourglass: (cut, seam) => plain`${cut}-2*SQRT(2)*${seam}`,
  "hourglass from half squares": (cut, seam) => plain`${cut}-SQRT(2)*${seam}`,
  geese: (cut, seam) => plain`${cut}-2*SQRT(2)*${seam}`,
  "square in square": (cut, seam) => plain`SQRT(2)*(${cut}-2*${seam})+2*${seam}`,
  tube: (cut, seam) => plain`SQRT(2)*(${cut}-${seam})`,
};

/** Finished sizes of patches. */
const FINISHED: Readonly<Record<string, Way>> = {
  square: (cut, seam) => plain`${cut}-2*${seam}`,
  corner: (cut, seam) => plain`${cut}-2*${seam}`,
  "quarter square": (cut, seam) => plain`${cut}-2*(1+SQRT(2))*${seam}`,
  triangle: (cut, seam) => plain`(${cut}-3*${seam})*2/SQRT(3)`,
  diamond: (cut, seam) => plain`(${cut}-2*${seam})*SQRT(2)`,
  hexagon: (cut, seam) => plain`(${cut}-2*${seam})/SQRT(3)`,
};

export const sewn: Twins = {
  UNITMADE: twin("cut how seam units", "size", (read) => unitMade(read)),

  FINISHEDSIZE: twin("cut shape seam units", "size", (read) => {
    const seam = read.lengthOrZero("seam", "seam");
    const units = Object.entries(MADE).map(([name, made]): [string, Way] => [
      name,
      (cut) => plain`${made(cut, seam)}-2*${seam}`,
    ]);
    return chosen(read, "shape", "square", { ...FINISHED, ...Object.fromEntries(units) }, seam);
  }),

  CUTCHECK: twin("cut trim how seam units", "number", (read) => {
    const trim = read.length("trim");
    return plain`${unitMade(read)}-${trim}`;
  }),
};

function unitMade(read: Reader): Formula {
  return chosen(read, "how", undefined, MADE, read.lengthOrZero("seam", "seam"));
}

function chosen(
  read: Reader,
  name: string,
  usual: string | undefined,
  ways: Readonly<Record<string, Way>>,
  seam: Formula,
): Formula {
  const cut = read.length("cut");
  return read.choose(
    name,
    usual,
    Object.fromEntries(
      Object.entries(ways).map(([way, size]) => [
        way,
        () => {
          const left = size(cut, seam);
          read.require(above(0, left));
          return left;
        },
      ]),
    ),
  );
}
