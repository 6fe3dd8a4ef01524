/** Widths and heights: pixels on the page; characters and points in files. */

/** Width of a digit, and the margin of a cell, in pixels, in the usual type. */
const DIGIT = 7;
const MARGIN = 5;

export function toCharacters(pixels: number): number {
  return Math.max((pixels - MARGIN) / DIGIT, 0);
}

export function fromCharacters(characters: number): number {
  return Math.round(characters * DIGIT + MARGIN);
}

export function toPoints(pixels: number): number {
  return pixels * 0.75;
}

export function fromPoints(points: number): number {
  return Math.round(points / 0.75);
}
