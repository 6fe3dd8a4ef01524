/** Borders: sizes, strips and pieced units. */
import {
  above,
  all,
  any,
  atMost,
  covers,
  either,
  fits,
  type Formula,
  not,
  plain,
  plus,
  quoted,
  times,
  upToMark,
  written,
} from "./formula";
import { lengthText } from "./length";
import type { Reader } from "./reader";
import { fabricToBuy, joinedStrips, openWidth, requireJoinable, twin, type Twins } from "./template";

const MITERED = ["mitered", "mitred"];
const CORNERS = ["butted", "cornerstones", ...MITERED];

/** A length that no way needs. */
const NEVER = 1e15;

export const borders: Twins = {
  BORDERSIZE: twin("width length border units", "size", (read) => {
    const border = read.length("border");
    return [[plain`${read.length("width")}+2*${border}`, plain`${read.length("length")}+2*${border}`]];
  }),

  /** The mean of three measurements; a note where they differ too much. */
  BORDERMEASURED: twin("first second third mark units spread", "text", (read) => {
    const measured = ["first", "second", "third"]
      .map((name) => read.length(name))
      .map(written)
      .join(",");
    const spread = `MAX(${measured})-MIN(${measured})`;
    const most = read.lengthOrZero("spread", "spread");
    const note = plain`${quoted("not square: the measurements differ by ")}&${lengthText(read, spread)}`;
    return [
      [
        upToMark(read.lengthOrZero("mark", "mark"), `SUM(${measured})/3`),
        either(above(plus(most, 1e-9), spread), note, '""'),
      ],
    ];
  }),

  BORDERSTRIPS: twin("width length border fabricWidth corner join units insurance seam", "someCount", (read) =>
    borderStrips(read, openWidth(read, "fabricWidth")),
  ),

  BORDERFABRIC: twin("width length border fabricWidth way corner join step units insurance seam", "amount", (read) => {
    const fabricWidth = openWidth(read, "fabricWidth");
    const strip = stripWidth(read);
    const fitsAlong = atMost(strip, fabricWidth);
    const may = (way: string) => read.isChosen("way", "best", ["best", "across", "along"], ["best", way]);
    read.require(any([fitsAlong, may("across")]));
    const across = either(may("across"), times(borderStrips(read, fabricWidth), strip), NEVER);
    const along = either(all([may("along"), fitsAlong]), lengthAlong(read, strip, fabricWidth), NEVER);
    return fabricToBuy(read, plain`MIN(${across},${along})`);
  }),

  BORDERUNITS: twin("side unit units", "someCount", (read) => covers(read.length("unit"), read.length("side"))),

  BORDERGAP: twin("side unit units", "amount", (read) => {
    const [side, unit] = [read.length("side"), read.length("unit")];
    return plain`MAX(0,ROUND(${covers(unit, side)}*${unit}-${side},9))`;
  }),
};

function stripWidth(read: Reader): Formula {
  return plain`${read.length("border")}+2*${read.lengthOrZero("seam", "seam")}`;
}

/** Cut lengths of the two sides, and of top and bottom. */
function cutLengths(read: Reader): { side: Formula; top: Formula } {
  const [width, length, border] = [read.length("width"), read.length("length"), read.length("border")];
  const seam = read.lengthOrZero("seam", "seam");
  const isMitered = read.isChosen("corner", "butted", CORNERS, MITERED);
  const isButted = read.isChosen("corner", "butted", CORNERS, ["butted"]);
  const seams = plain`2*${seam}`;
  const insurance = read.lengthOrZeroOr("insurance", plain`4*${seam}`);
  read.require(any([not(isMitered), atMost(plain`SQRT(2)*${seams}`, insurance)]));
  const outside = (inside: Formula) => plain`${inside}+2*${border}`;
  return {
    side: either(isMitered, plus(outside(length), insurance), plain`${length}+${seams}`),
    top: either(
      isMitered,
      plus(outside(width), insurance),
      either(isButted, plain`${outside(width)}+${seams}`, plain`${width}+${seams}`),
    ),
  };
}

/**
 * Every way to share rows of joined strips among two sides and two ends; the fewest strips of them. (One row for a side and
 * an end, and the others each on its own, is never fewer than both of two ways that are counted.)
 */
function borderStrips(read: Reader, fabricWidth: Formula): Formula {
  const { side, top } = cutLengths(read);
  const isDiagonal = read.isChosen("join", "straight", ["straight", "diagonal"], ["diagonal"]);
  const loss = either(isDiagonal, stripWidth(read), plain`2*${read.lengthOrZero("seam", "seam")}`);
  requireJoinable(read, fabricWidth, loss);
  const row = (sides: number, ends: number) =>
    joinedStrips(plus(times(sides, side), times(ends, top)), fabricWidth, loss);
  const ways = [
    row(2, 2),
    plain`${row(1, 0)}+${row(1, 2)}`,
    plain`${row(0, 1)}+${row(2, 1)}`,
    plain`2*${row(1, 1)}`,
    plain`MIN(${row(2, 0)},2*${row(1, 0)})+MIN(${row(0, 2)},2*${row(0, 1)})`,
  ];
  return `MIN(${ways.join(",")})`;
}

/** Four strips, as many side by side as fit, all as long as the longest. */
function lengthAlong(read: Reader, strip: Formula, fabricWidth: Formula): Formula {
  const { side, top } = cutLengths(read);
  return plain`${covers(fits(strip, fabricWidth), 4)}*MAX(${side},${top})`;
}
