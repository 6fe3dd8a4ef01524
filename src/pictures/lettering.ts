/** Words in a picture: how large they are drawn and how much room they take. */
export const TEXT_SIZE = 13;
export const SMALL_SIZE = 10.5;
export const TITLE_SIZE = 15;

/** Width of a text in pixels; a little generous, so that nothing is cut off. */
export function textWidth(words: string, size = TEXT_SIZE): number {
  // Letters of the Far East and pictograms are as wide as they are high.
  const ems = Array.from(words).reduce((sum, letter) => sum + (letter > "\u2e7f" ? 1 : 0.56), 0);
  return ems * size;
}

/** Text as it may stand in an SVG document: marked characters written out, and none that XML forbids. */
export function escape(words: string): string {
  return words
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, "\ufffd")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}

/** A number of pixels, as short as is exact enough. */
export function pixels(value: number): number {
  const rounded = Math.round(value * 100) / 100;
  return rounded === 0 ? 0 : rounded;
}
