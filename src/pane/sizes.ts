/** Finished, unfinished and cut: the three sizes of one piece, which are so easily mixed up. */
import type { Cell } from "../../functions/cells";
import { CUT_SHAPES } from "../math/sewn";
import { halfRectangleSewn } from "../math/shapes";
import { showing } from "../math/show";
import { inches, type Inches, toInches } from "../math/units";
import type { Shown, FunctionEntry } from "./catalogue";
import { GivenArguments } from "./given";

export interface Sizes {
  /** As it shows in the quilt. */
  finished?: string;
  /** Sewn or trimmed, with its seam allowances. */
  unfinished?: string;
  /** As cut from the fabric. */
  cut?: string;
}

/** How a function's first argument and its answer are to be read. */
type Reading = (
  given: GivenArguments,
  answer: Shown | Shown[][],
) => { [Size in keyof Sizes]: Inches | readonly Inches[] } & {
  /** The seam allowance, where it is to be told. */
  seam?: Inches;
};

/** A patch that is sewn as it is cut, and finishes larger than asked for where a ruler mark rounds it up. */
const sewnAsCut: Reading = (given, answer) => {
  const cut = lengthOf(given, answer);
  return { finished: withSeams(given, cut, -2), unfinished: cut, cut };
};

/** A unit that is sewn and trimmed: its unfinished size lies between what is cut and what shows. */
const trimmed: Reading = (given, answer) => ({
  finished: given.length("finished"),
  unfinished: withSeams(given, given.length("finished")),
  cut: lengthOf(given, answer),
});

const READINGS: Readonly<Record<string, Reading>> = {
  CUTSQUARE: sewnAsCut,
  CUTHALFSQUARE: trimmed,
  // A setting triangle is no unit: what it measures before it is sewn in differs from an hourglass unit.
  CUTQUARTERSQUARE: (given, answer) => ({ finished: given.length("finished"), cut: lengthOf(given, answer) }),
  CUTCORNER: (given, answer) => ({ ...sewnAsCut(given, answer), unfinished: undefined }),
  CUTSQUAREINSQUARE: (given) => ({
    finished: given.length("finished"),
    unfinished: withSeams(given, given.length("finished")),
  }),
  CUTGEESE: (given) => {
    const [width, height] = [given.length("width"), inches(given.length("width") / 2)];
    return { finished: [width, height], unfinished: [withSeams(given, width), withSeams(given, height)] };
  },
  CUTHALFRECTANGLE: (given, answer) => {
    const [width, height] = lengthsOf(given, answer);
    const finished = halfRectangleSewn({ width, height }, seamOf(given));
    return { finished: [finished.width, finished.height], cut: [width, height] };
  },
  UNITMADE: (given, answer) => ({
    finished: withSeams(given, lengthOf(given, answer), -2),
    unfinished: lengthOf(given, answer),
    cut: cutFromFabric(given, "how"),
  }),
  FINISHEDSIZE: (given, answer) => ({ finished: lengthOf(given, answer), cut: cutFromFabric(given, "shape") }),
  TOPSIZE: wholeTop,
  BORDERSIZE: wholeTop,
};

/** These functions are given no seam: the usual one is told with the size. */
function wholeTop(given: GivenArguments, answer: Shown | Shown[][]) {
  const finished = lengthsOf(given, answer);
  return { finished, unfinished: finished.map((side) => withSeams(given, side)), seam: seamOf(given) };
}

/** A size that was cut; undefined where what is said to be cut was sewn before. */
function cutFromFabric(given: GivenArguments, way: "how" | "shape"): Inches | undefined {
  return given.choice(way, CUT_SHAPES, "square") === "hourglass from half squares" ? undefined : given.length("cut");
}

/** The sizes of what a call is about; undefined where it is about no single piece. */
export function sizesOf(entry: FunctionEntry, cells: readonly Cell[], answer: Shown | Shown[][]): Sizes | undefined {
  const reading = READINGS[entry.id] as Reading | undefined;
  if (!reading || answer === "") return undefined;
  const given = new GivenArguments(entry, cells);
  const show = showing(given.system);
  const words = (size: Inches | readonly Inches[] | undefined) =>
    size === undefined
      ? undefined
      : typeof size === "number"
        ? show.length(size)
        : size.map((side) => show.length(side)).join(" × ");
  const { finished, unfinished, cut, seam } = reading(given, answer);
  const assumed = seam === undefined ? "" : ` (seams of ${show.length(seam)})`;
  return {
    finished: words(finished),
    unfinished: unfinished && `${words(unfinished)}${assumed}`,
    cut: words(cut),
  };
}

function withSeams(given: GivenArguments, size: Inches, seams = 2): Inches {
  return inches(size + seams * seamOf(given));
}

function seamOf(given: GivenArguments): Inches {
  return given.lengthOrZero("seam", given.door.conventions.seam);
}

function lengthOf(given: GivenArguments, answer: Shown | Shown[][]): Inches {
  return toInches(Number(Array.isArray(answer) ? answer[0][0] : answer), given.system);
}

function lengthsOf(given: GivenArguments, answer: Shown | Shown[][]): Inches[] {
  const rows = Array.isArray(answer) ? answer : [[answer]];
  return rows[0].map((value) => toInches(Number(value), given.system));
}
