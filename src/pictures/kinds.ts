/** Kinds of piece in a plan: each has a letter, a hatch with its color, and a line in the list that explains the letters. */
import type { TextStyle } from "./drawing";
import { SMALL_SIZE, TEXT_SIZE, textWidth } from "./lettering";

/** The pieces of one row of a list. */
export interface Kind {
  key: string;
  fill: number;
  words: string;
}

/** A text with the style in which it finds room. */
export interface FittingText {
  text: string;
  style: TextStyle;
}

/** Kinds by the row of the list, from 0, in the order of the list. */
export function kindsOf(rows: Iterable<number>, words: (row: number) => string): Map<number, Kind> {
  const sorted = [...new Set(rows)].sort((a, b) => a - b);
  return new Map(sorted.map((row, index) => [row, { key: letters(index), fill: index, words: words(row) }]));
}

/**
 * The first of several texts that finds room on a piece, level, small or upright; undefined where there is none.
 *
 * @param across width of the piece, pixels
 * @param along its height, pixels
 */
export function fittingText(texts: readonly string[], across: number, along: number): FittingText | undefined {
  const ways = texts.flatMap((text): FittingText[] => [
    { text, style: { ground: true } },
    { text, style: { ground: true, small: true } },
    { text, style: { ground: true, small: true, turned: -90 } },
  ]);
  return ways.find(({ text, style }) => {
    const size = style.small ? SMALL_SIZE : TEXT_SIZE;
    const [room, depth] = style.turned === undefined ? [across, along] : [along, across];
    return textWidth(text, size) + 6 <= room && size + 1 <= depth;
  });
}

/** A, B … Z, AA, AB … */
function letters(index: number): string {
  const last = index % 26;
  const before = (index - last) / 26;
  return (before > 0 ? letters(before - 1) : "") + String.fromCharCode(65 + last);
}
