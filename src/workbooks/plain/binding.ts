/** Binding: straight strips round the edge of a quilt, and bias strips from one square. */
import { above, atMost, type Formula, plain, plus, times, upToMark } from "./formula";
import type { Reader } from "./reader";
import { fabricToBuy, joinedStrips, openWidth, requireJoinable, twin, type Twins } from "./template";

export const binding: Twins = {
  BINDINGLENGTH: twin("width length tail units edge", "size", (read) => {
    const [width, length] = [read.length("width"), read.length("length")];
    const around = read.choose("edge", "straight", {
      straight: () => plain`2*(${width}+${length})`,
      round: () => oval(width, length),
    });
    return plus(around, read.lengthOrZero("tail", "bindingTail"));
  }),

  BINDINGSTRIPS: twin("width length strip fabricWidth tail units join", "someCount", (read) =>
    bindingStrips(read, read.length("fabricWidth", "fabricWidth")),
  ),

  BINDINGFABRIC: twin("width length strip fabricWidth tail step units join squaring", "amount", (read) => {
    const length = times(bindingStrips(read, openWidth(read, "fabricWidth")), read.length("strip", "bindingStrip"));
    return fabricToBuy(read, plus(length, read.lengthOrZero("squaring", 0)));
  }),

  /** Two seams leave (side − 2 seams)² of cloth; the strip must fit between the two bias edges, side ÷ √2 apart. */
  BIASSQUARE: twin("length strip units seam mark", "size", (read) => {
    const [length, strip] = [read.longLength("length"), read.length("strip")];
    read.require(above(0, length));
    const sewn = plain`MAX(SQRT(${length}*${strip}),SQRT(2)*${strip})`;
    return upToMark(read.lengthOrZero("mark", 1), plain`${sewn}+2*${read.lengthOrZero("seam", "seam")}`);
  }),

  BIASLENGTH: twin("square strip units seam", "size", (read) => {
    const [square, strip] = [read.length("square"), read.length("strip")];
    const seam = read.lengthOrZero("seam", 0);
    const sewn = seam === 0 ? square : plain`${square}-2*${seam}`;
    read.require(atMost(plain`SQRT(2)*${strip}`, sewn));
    return plain`${sewn}^2/${strip}`;
  }),
};

/** Once round an oval with these two diameters (Ramanujan's second approximation). */
function oval(width: Formula, length: Formula): Formula {
  const flat = plain`3*((${width}-${length})/(${width}+${length}))^2`;
  return plain`PI()/2*(${width}+${length})*(1+${flat}/(10+SQRT(4-${flat})))`;
}

function bindingStrips(read: Reader, fabricWidth: Formula): Formula {
  const [width, length] = [read.length("width"), read.length("length")];
  const around = plain`2*(${width}+${length})`;
  const needed = plus(around, read.lengthOrZero("tail", "bindingTail"));
  const strip = read.length("strip", "bindingStrip");
  const seam = read.usual("seam");
  const strips = (loss: Formula) => () => {
    requireJoinable(read, fabricWidth, loss);
    return joinedStrips(needed, fabricWidth, loss);
  };
  return read.choose("join", "diagonal", { diagonal: strips(strip), straight: strips(plain`2*${seam}`) });
}
