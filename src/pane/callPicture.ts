/** The picture of one call, in the colors of its cells, and what can be turned on it. */
import { plainColor } from "../pictures/fabrics";
import { COLORED_ARGUMENTS } from "./blockPictures";
import type { Call } from "./calls";
import type { FunctionEntry, ParameterEntry } from "./catalogue";
import { type Fills, GivenArguments } from "./given";
import { pictureOf } from "./pictures";
import { type Picture, type Sheet, SheetProblem } from "./sheet";
import { type Turnable, turnableOf } from "./spots";
import { originOf, Turning } from "./turning";

/** Tables that a cutter reads off the picture as well. */
const SHOWN_AS_PICTURE = ["PLAN", "PANELSNEEDED", "BOLTPLAN"];

export interface CallPicture {
  picture: Picture;
  /** Whether it shows the answer itself, a cutting plan or what is drawn in cells, rather than how it comes about. */
  showsAnswer: boolean;
  /** What can be turned, and what turns it. */
  turns?: Turnable & { turning: Turning };
  /** What the maker should know: how to turn parts, or why that cannot be done. */
  remarks: string[];
}

/** @param page where the formula stands */
export async function callPicture(
  entry: FunctionEntry,
  { cells, argumentTexts }: Pick<Call, "cells" | "argumentTexts">,
  sheet: Sheet,
  page: string,
): Promise<CallPicture | undefined> {
  if (!cells) return undefined;
  const ofCells = entry.parameters.some(tellsColors);
  const showsAnswer = ofCells || SHOWN_AS_PICTURE.includes(entry.id);
  const fills = ofCells ? await fillsOf(entry, argumentTexts, sheet, page) : {};
  const picture = pictureOf(entry, cells, fills);
  if (!picture) return undefined;
  const cannotColor = ofCells ? sheet.whyNot("fills") : undefined;
  const remarks = cannotColor === undefined ? [] : [cannotColor];
  const turnable = turnableOf(entry.id, new GivenArguments(entry, cells), picture.svg);
  if (!turnable) return { picture, showsAnswer, remarks };
  const text = argumentTexts[entry.parameters.findIndex(({ name }) => name === turnable.argument)] ?? "";
  const origin = originOf(text, page);
  const cannot = sheet.whyNot("write") ?? (origin ? undefined : whyNoCells(text, turnable.argument));
  if (cannot !== undefined) return { picture, showsAnswer, remarks: [...remarks, cannot] };
  const turns = turnable.spots.length > 0 ? { ...turnable, turning: new Turning(sheet, origin!) } : undefined;
  return { picture, showsAnswer, turns, remarks: [...remarks, turnable.hint] };
}

/** The fill colors of the arguments that name cells. */
async function fillsOf(
  { parameters }: FunctionEntry,
  argumentTexts: readonly string[],
  sheet: Sheet,
  page: string,
): Promise<Fills> {
  const fills: Record<string, (string | null)[][]> = {};
  if (sheet.whyNot("fills") !== undefined) return fills;
  for (const [index, parameter] of parameters.entries()) {
    const text = argumentTexts.at(index) ?? "";
    if (!tellsColors(parameter) || !/^[\p{L}$'_]/u.test(text)) continue;
    try {
      const found = await sheet.fills(text, page);
      fills[parameter.name] = found.map((row) =>
        row.map((color) => (color === null ? null : (plainColor(color) ?? null))),
      );
    } catch (thrown) {
      // What names no cells has no colors.
      if (!(thrown instanceof SheetProblem)) throw thrown;
    }
  }
  return fills;
}

/** A block or a sashing may also be a length. */
function tellsColors({ name, takes }: ParameterEntry): boolean {
  return takes.kind === "range" && COLORED_ARGUMENTS.includes(name);
}

function whyNoCells(text: string, argument: "block" | "layout"): string {
  return /^[{"]/.test(text)
    ? `The ${argument} stands in the formula itself. Put it into cells, and its parts can be turned on the picture.`
    : `Name the cells of the ${argument}, such as B2:D5, and its parts can be turned on the picture.`;
}
