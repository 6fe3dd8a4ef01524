/** From the cut size back: what a patch or a unit measures once it is sewn. */
import { above, type Formula, plain, plus } from "./formula";
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
  UNITMADE: twin("cut how seam units", "size", (read) => {
    const seam = read.lengthOrZero("seam", "seam");
    return read.choose(
      "how",
      undefined,
      sizes(read, MADE, (made) => leaving(read, plain`2*${seam}`, made)),
    );
  }),

  FINISHEDSIZE: twin("cut shape seam units", "size", (read) => {
    const twoSeams = plain`2*${read.lengthOrZero("seam", "seam")}`;
    return read.choose("shape", "square", {
      ...sizes(read, FINISHED, (finished) => leaving(read, 0, finished)),
      ...sizes(read, MADE, (made) => plain`${leaving(read, twoSeams, made)}-${twoSeams}`),
    });
  }),

  CUTCHECK: twin("cut trim how seam units", "number", (read) => {
    const trim = read.length("trim");
    return plain`${read.choose(
      "how",
      undefined,
      sizes(read, MADE, (made) => made),
    )}-${trim}`;
  }),
};

/** What each way makes of the cut size, and what is to be said of it. */
function sizes(
  read: Reader,
  ways: Readonly<Record<string, Way>>,
  say: (size: Formula) => Formula,
): Record<string, () => Formula> {
  const [cut, seam] = [read.length("cut"), read.lengthOrZero("seam", "seam")];
  return Object.fromEntries(Object.entries(ways).map(([name, size]) => [name, () => say(size(cut, seam))]));
}

/** A size, refused where the seams take all of it. */
function leaving(read: Reader, seams: Formula, size: Formula): Formula {
  read.require(above(plus(seams, 1e-9), size));
  return size;
}
