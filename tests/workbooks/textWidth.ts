/** How wide a text is in Arial, in pixels of 1/96 in. */

/** Widths of the characters from the space to the tilde, in thousandths of the type's size, as Adobe's Helvetica metrics have them. */
const WIDTHS = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
];

/** Other signs, such as ×, are about as wide as a digit. */
const OTHER = 584;

/** Bold type is this much wider. */
const BOLD = 1.08;

export function textWidth(text: string, points: number, bold: boolean): number {
  const thousandths = Array.from(text, (sign) => WIDTHS.at(sign.charCodeAt(0) - 32) ?? OTHER);
  const sum = thousandths.reduce((total, width) => total + width, 0);
  return (sum / 1000) * points * (96 / 72) * (bold ? BOLD : 1);
}
