/** Finished, unfinished and cut: the three sizes of one piece, which are so easily mixed up. */
import type { Cell } from "../../functions/cells";
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
) => { [Size in keyof Sizes]: Inches | readonly Inches[] };

/** A unit that is sewn and trimmed: its unfinished size lies between what is cut and what shows. */
const trimmed: Reading = (given, answer) => ({
  finished: given.length("finished"),
  unfinished: withSeams(given, given.length("finished")),
  cut: lengthOf(given, answer),
});

const READINGS: Readonly<Record<string, Reading>> = {
  CUTSQUARE: (given, answer) => ({ ...trimmed(given, answer), unfinished: lengthOf(given, answer) }),
  CUTHALFSQUARE: trimmed,
  CUTQUARTERSQUARE: trimmed,
  CUTCORNER: (given, answer) => ({ finished: given.length("finished"), cut: lengthOf(given, answer) }),
  CUTSQUAREINSQUARE: (given) => ({
    finished: given.length("finished"),
    unfinished: withSeams(given, given.length("finished")),
  }),
  CUTGEESE: (given) => {
    const [width, height] = [given.length("width"), inches(given.length("width") / 2)];
    return { finished: [width, height], unfinished: [withSeams(given, width), withSeams(given, height)] };
  },
  CUTHALFRECTANGLE: (given, answer) => ({
    finished: [given.length("width"), given.length("height")],
    cut: lengthsOf(given, answer),
  }),
  UNITMADE: (given, answer) => ({
    finished: withSeams(given, lengthOf(given, answer), -2),
    unfinished: lengthOf(given, answer),
    cut: given.length("cut"),
  }),
  FINISHEDSIZE: (given, answer) => ({ finished: lengthOf(given, answer), cut: given.length("cut") }),
  TOPSIZE: wholeTop,
  BORDERSIZE: wholeTop,
};

function wholeTop(given: GivenArguments, answer: Shown | Shown[][]) {
  const finished = lengthsOf(given, answer);
  return { finished, unfinished: finished.map((side) => withSeams(given, side)) };
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
  const { finished, unfinished, cut } = reading(given, answer);
  return { finished: words(finished), unfinished: words(unfinished), cut: words(cut) };
}

function withSeams(given: GivenArguments, size: Inches, seams = 2): Inches {
  return inches(size + seams * given.lengthOrZero("seam", given.door.conventions.seam));
}

function lengthOf(given: GivenArguments, answer: Shown | Shown[][]): Inches {
  return toInches(Number(Array.isArray(answer) ? answer[0][0] : answer), given.system);
}

function lengthsOf(given: GivenArguments, answer: Shown | Shown[][]): Inches[] {
  const rows = Array.isArray(answer) ? answer : [[answer]];
  return rows[0].map((value) => toInches(Number(value), given.system));
}
