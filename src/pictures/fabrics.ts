/**
 * Fabrics of a picture: each number has a color and a hatch of its own. The first sixteen differ in their hatch, so that they
 * can be told apart in black and white; after that colors and hatches are paired anew, 128 in all. A maker's own color may
 * take the place of a fabric's color; the hatch stays, in black or white, whichever can be seen on it.
 */
const COLORS = ["#f3ead8", "#cfe3ea", "#f0cdb8", "#d7e4c7", "#dcd3ec", "#f2dd9d", "#cdd3da", "#e8cfd8"];

/** Lines and dots of an 8 × 8 tile; the first fabric is plain. */
const HATCHES = [
  "",
  '<path d="M-2 2 2 -2M0 8 8 0M6 10 10 6"/>',
  '<circle cx="4" cy="4" r="1.1" fill="INK" stroke="none"/>',
  '<path d="M0 4H8"/>',
  '<path d="M-2 6 2 10M0 0 8 8M6 -2 10 2"/>',
  '<path d="M4 0V8"/>',
  '<path d="M0 8 8 0M0 0 8 8"/>',
  '<path d="M0 4H8M4 0V8"/>',
  '<path d="M0 6 4 2 8 6"/>',
  '<circle cx="4" cy="4" r="2.2"/>',
  '<path d="M0 3H8M0 5H8"/>',
  '<path d="M4 1.5V6.5M1.5 4H6.5"/>',
  '<path d="M0 0H8M0 4H8M2 0V4M6 4V8"/>',
  '<path d="M3 0V8M5 0V8"/>',
  '<path d="M0 2H4M4 6H8"/>',
  '<path d="M0 4 4 0 8 4 4 8Z"/>',
];

/** What lines and hatches are drawn in. */
export const INK = "#1f2328";
export const PAPER = "#ffffff";
const [BLACK, WHITE] = ["#000000", "#ffffff"];

export function colorOf(fabric: number): string {
  return COLORS[fabric % COLORS.length];
}

/** The number of a fabric's hatch; 0 is none. */
export function hatchOf(fabric: number): number {
  const round = (fabric - (fabric % HATCHES.length)) / HATCHES.length;
  return (fabric + round) % HATCHES.length;
}

/** A color as six digits, such as #c0392b; undefined where it is written in another way. */
export function plainColor(color: string): string | undefined {
  const text = color.trim().toLowerCase();
  if (/^#[0-9a-f]{6}$/.test(text)) return text;
  return /^#[0-9a-f]{3}$/.test(text) ? text.replace(/[0-9a-f]/g, "$&$&") : undefined;
}

/** Black or white, whichever stands out more on a color: at least 4.5 to 1. */
export function inkOn(color: string): string {
  const light = luminance(color) + 0.05;
  return light / 0.05 > 1.05 / light ? BLACK : WHITE;
}

/** How bright a color looks, from 0 for black to 1 for white, as WCAG 2 reckons it. */
export function luminance(color: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = parseInt(color.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** The name of a hatch drawn in an ink. */
export function hatchName(hatch: number, ink: string): string {
  return `hatch${hatch}${ink === INK ? "" : ink === BLACK ? "black" : "white"}`;
}

/** The pattern of a hatch, dark enough to copy in gray. */
export function hatchPattern(hatch: number, ink: string): string {
  const opacity = ink === INK ? 0.55 : 0.75;
  return (
    `<pattern id="${hatchName(hatch, ink)}" width="8" height="8" patternUnits="userSpaceOnUse">` +
    `<g stroke="${ink}" stroke-width="0.7" stroke-opacity="${opacity}" fill="none">` +
    `${HATCHES[hatch].replaceAll("INK", ink)}</g></pattern>`
  );
}
