/** The picture of one call, in the colors of its cells, and what can be turned on it. */
import { plainColor } from "../pictures/fabrics";
import { COLORED_ARGUMENTS } from "./blockPictures";
import type { Call } from "./calls";
import type { FunctionEntry } from "./catalogue";
import { type Fills, GivenArguments } from "./given";
import { pictureOf } from "./pictures";
import { type Picture, type Sheet, SheetProblem } from "./sheet";
import { type Turnable, turnableOf } from "./spots";
import { originOf, Turning } from "./turning";

export interface CallPicture {
  picture: Picture;
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
  if (!cells || !pictureOf(entry, cells)) return undefined;
  const colored = entry.parameters.some(({ name }) => COLORED_ARGUMENTS.includes(name));
  const fills = colored ? await fillsOf(entry, argumentTexts, sheet, page) : {};
  const picture = pictureOf(entry, cells, fills)!;
  const cannotColor = colored ? sheet.whyNot("fills") : undefined;
  const remarks = cannotColor === undefined ? [] : [cannotColor];
  const turnable = turnableOf(entry.id, new GivenArguments(entry, cells), picture.svg);
  if (!turnable) return { picture, remarks };
  const text = argumentTexts[entry.parameters.findIndex(({ name }) => name === turnable.argument)] ?? "";
  const origin = originOf(text, page);
  const cannot = sheet.whyNot("write") ?? (origin ? undefined : whyNoCells(text, turnable.argument));
  if (cannot !== undefined) return { picture, remarks: [...remarks, cannot] };
  const turns = turnable.spots.length > 0 ? { ...turnable, turning: new Turning(sheet, origin!) } : undefined;
  return { picture, turns, remarks: [...remarks, turnable.hint] };
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
  for (const [index, { name }] of parameters.entries()) {
    const text = argumentTexts.at(index) ?? "";
    if (!COLORED_ARGUMENTS.includes(name) || !/^[\p{L}$'_]/u.test(text)) continue;
    try {
      const found = await sheet.fills(text, page);
      fills[name] = found.map((row) => row.map((color) => (color === null ? null : (plainColor(color) ?? null))));
    } catch (thrown) {
      // What names no cells has no colors.
      if (!(thrown instanceof SheetProblem)) throw thrown;
    }
  }
  return fills;
}

function whyNoCells(text: string, argument: "block" | "layout"): string {
  return /^[{"]/.test(text)
    ? `The ${argument} stands in the formula itself. Put it into cells, and its parts can be turned on the picture.`
    : `Name the cells of the ${argument}, such as B2:D5, and its parts can be turned on the picture.`;
}
