/** Small tables whose rows are the same whatever the numbers are: a formula for each cell. */
import { PACKS } from "../../math/batting";
import {
  above,
  all,
  any,
  atMost,
  either,
  type Formula,
  not,
  plain,
  plus,
  quoted,
  times,
  up,
  upToMark,
} from "./formula";
import { halfSquare, quarterSquare, square } from "./patches";
import { NO_ANSWER, NoTwin } from "./argument";
import { twin, type Twins } from "./template";

export const tables: Twins = {
  /** A square on point with the triangles of two squares round it. */
  CUTSQUAREINSQUARE: twin("finished seam mark units", "text", (read) => {
    const [finished, seam] = [read.length("finished"), read.lengthOrZero("seam", "seam")];
    const mark = read.lengthOrZero("mark", "mark");
    const [center, leg] = [plain`${finished}/SQRT(2)`, plain`${finished}/2`];
    return patchTable([
      squares("center square", center, upToMark(mark, square(center, seam)), 1, "stands on point"),
      squares("corner square", leg, upToMark(mark, halfSquare(leg, seam)), 2, "cut once, corner to corner"),
      squares("unit made", finished, square(finished, seam), 1, "trim to this size"),
    ]);
  }),

  CUTGEESE: twin("width method seam mark units count", "text", (read) => {
    const method = read.word("method", "four at once", ["four at once", "triangles", "corners"]);
    const [width, seam] = [read.length("width"), read.lengthOrZero("seam", "seam")];
    const mark = read.lengthOrZero("mark", method === "corners" ? 0 : "mark");
    const count = read.count("count", 4, 1);
    const height = plain`${width}/2`;
    const unit = (made: Formula): Formula[] => [
      quoted("unit made"),
      width,
      square(width, seam),
      square(height, seam),
      made,
      quoted("trim to this size"),
    ];
    if (method === "corners") {
      const [long, side] = [upToMark(mark, square(width, seam)), upToMark(mark, square(height, seam))];
      const waste = plain`${side}-SQRT(2)*${seam}`;
      const left = plain`MAX(0,${waste}-(2+SQRT(2))*${seam})`;
      const use = plain`IF(${left}>0,"cut away; a pair makes a half-square unit","cut away; too small to sew")`;
      return patchTable([
        [quoted("rectangle"), width, long, side, count, quoted("one for each unit")],
        squares("square", height, side, times(2, count), "sew across two corners, trim and flip"),
        [quoted("waste triangle"), left, waste, waste, times(4, count), use],
        unit(count),
      ]);
    }
    const large = upToMark(mark, quarterSquare(width, seam));
    const small = upToMark(mark, halfSquare(height, seam));
    const sets = up(plain`${count}/4`);
    const isAtOnce = method === "four at once";
    const made = isAtOnce ? plain`4*${sets}` : count;
    return patchTable([
      squares("large square", width, large, sets, isAtOnce ? "one for four units" : "cut twice, corner to corner"),
      squares(
        "small square",
        height,
        small,
        made,
        isAtOnce ? "sew to the corners on both sides of the diagonal" : "cut once, corner to corner",
      ),
      unit(made),
    ]);
  }),

  /** Along one side of the block lie a corner square, a triangle and a corner square: side × (1 + √2 + 1). */
  CUTSTAR: twin("block seam mark units rows", "text", (read) => {
    const [block, seam] = [read.length("block"), read.lengthOrZero("seam", "seam")];
    const [mark, rows] = [read.lengthOrZero("mark", 0), read.count("rows", 1, 1)];
    const diamonds = plain`8*${rows}^2`;
    read.require(atMost(diamonds, 1_000_000));
    const point = plain`${block}/(2+SQRT(2))`;
    const side = rows === 1 ? point : plain`${point}/${rows}`;
    const long = plain`SQRT(2)*${point}`;
    const one = quoted("strip of the cut width; cut at 45°, the cut length along the edge");
    const several = plain`${quoted("cut at 45° from strips; each point is ")}&${rows}&${quoted(" rows of ")}&${rows}`;
    return patchTable([
      [
        quoted("diamond"),
        side,
        upToMark(mark, plain`${side}/SQRT(2)+2*${seam}`),
        upToMark(mark, plain`${side}+2*SQRT(2)*${seam}`),
        diamonds,
        either(typeof rows === "number" ? rows === 1 : plain`${rows}=1`, one, several),
      ],
      squares("corner square", point, upToMark(mark, square(point, seam)), 4, "one in each corner"),
      squares(
        "side square",
        long,
        upToMark(mark, quarterSquare(long, seam)),
        1,
        "cut twice, corner to corner, for four side triangles",
      ),
      squares("block made", block, square(block, seam), 1, "unfinished size"),
    ]);
  }),

  BORDERLENGTHS: twin("width length border corner insurance seam units", "text", (read) => {
    const is = (...words: string[]) => read.isChosen("corner", "butted", CORNERS, words);
    const [isMitered, isButted, hasCornerstones] = [is("mitered", "mitred"), is("butted"), is("cornerstones")];
    const [width, length, border] = [read.length("width"), read.length("length"), read.length("border")];
    const seam = read.lengthOrZero("seam", "seam");
    const insurance = read.lengthOrZeroOr("insurance", plain`4*${seam}`);
    const outside = (inside: Formula) => plain`${inside}+2*${border}`;
    const strip = square(border, seam);
    read.require(any([not(isMitered), atMost(plain`2*SQRT(2)*${seam}`, insurance)]));
    const side = either(isMitered, plus(outside(length), insurance), square(length, seam));
    const top = either(
      isMitered,
      plus(outside(width), insurance),
      square(either(isButted, outside(width), width), seam),
    );
    const corners = [quoted("cornerstones"), strip, strip, 4].map((cell) => either(hasCornerstones, cell, '""'));
    return [
      header("piece", "cut width", "cut length", "how many"),
      [quoted("sides"), strip, side, 2],
      [quoted("top and bottom"), strip, top, 2],
      ...(hasCornerstones === false ? [] : [corners]),
    ];
  }),

  /** The smallest package by area that covers the quilt, as it is or turned. */
  BATTINGPACK: twin("width length margin units packs", "text", (read) => {
    if (read.isEmpty("packs") !== true) throw new NoTwin("packs is a list of any length");
    const margin = times(2, read.lengthOrZero("margin", "margin"));
    const [wide, long] = [plus(read.length("width"), margin), plus(read.length("length"), margin)];
    const packs = [...PACKS].sort((a, b) => b.width * b.length - a.width * a.length);
    const inUnits = (inches: number) => read.bySystem((system) => (system === "in" ? inches : inches * 2.54));
    const lies = (width: number, length: number) => all([atMost(wide, inUnits(width)), atMost(long, inUnits(length))]);
    const first = (gives: (pack: (typeof PACKS)[number]) => Formula) =>
      packs.reduce<Formula>((rest, pack) => {
        const covers = any([lies(pack.width, pack.length), lies(pack.length, pack.width)]);
        return either(covers, gives(pack), rest);
      }, NO_ANSWER);
    return [
      [
        first(({ name }) => quoted(name)),
        first(({ width }) => inUnits(width)),
        first(({ length }) => inUnits(length)),
        first(({ width, length }) => either(lies(width, length), '""', quoted("turned"))),
      ],
    ];
  }),

  /** A block cuts cleanly where its patch needs no rounding; else where the patch finishes on half inches (centimeters). */
  GRIDPATCH: twin("block divisions seam mark units", "text", (read) => {
    const [block, divisions] = [read.length("block"), read.count("divisions", undefined, 1)];
    const [seam, mark] = [read.lengthOrZero("seam", "seam"), read.lengthOrZero("mark", "mark")];
    const finished = plain`${block}/${divisions}`;
    const exact = square(finished, seam);
    const onMark = (size: Formula) =>
      mark === 0 ? size : plain`IF(${mark}=0,${size},INT(ROUND((${size})/${mark},9)+0.5)*${mark})`;
    const isOn = (size: Formula) => plain`ABS(${onMark(size)}-(${size}))<0.000000001`;
    read.require(above(plain`2*${seam}`, onMark(exact)));
    const clean = (steps: Formula) => {
      const patch = plain`${steps}/2`;
      return plain`IF(${isOn(exact)},${block},IF(AND(${steps}>0,${isOn(square(patch, seam))}),${divisions}*${patch},"none"))`;
    };
    return [
      header(
        "finished patch",
        "exact cut",
        "cut at the mark",
        "adds up to",
        "smaller clean block",
        "larger clean block",
      ),
      [
        finished,
        exact,
        onMark(exact),
        plain`IF(${isOn(exact)},0,${divisions}*(${onMark(exact)}-(${exact})))`,
        clean(plain`INT(ROUND(2*${finished},9))`),
        clean(up(plain`2*${finished}`)),
      ],
    ];
  }),
};

const CORNERS = ["butted", "mitered", "mitred", "cornerstones"];

function header(...titles: string[]): Formula[] {
  return titles.map(quoted);
}

/** What to cut, a row for each kind of patch; the last row is what they make. */
function patchTable(rows: Formula[][]): Formula[][] {
  return [header("patch", "finished", "cut width", "cut length", "how many", "how"), ...rows];
}

function squares(patch: string, finished: Formula, side: Formula, count: Formula, how: string): Formula[] {
  return [quoted(patch), finished, side, side, count, quoted(how)];
}
