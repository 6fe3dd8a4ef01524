/**
 * Fabrics of a picture: each number has a color and a hatch of its own. The first eight differ in both, so they can be told
 * apart in black and white; after that colors and hatches are paired anew, 64 in all.
 */
const COLORS = ["#f3ead8", "#cfe3ea", "#f0cdb8", "#d7e4c7", "#dcd3ec", "#f2dd9d", "#cdd3da", "#e8cfd8"];

/** Lines and dots of an 8 × 8 tile; the first fabric is plain. */
const HATCHES = [
  "",
  '<path d="M-2 2 2 -2M0 8 8 0M6 10 10 6"/>',
  '<circle cx="4" cy="4" r="1.1" fill="#1f2328" stroke="none"/>',
  '<path d="M0 4H8"/>',
  '<path d="M-2 6 2 10M0 0 8 8M6 -2 10 2"/>',
  '<path d="M4 0V8"/>',
  '<path d="M0 8 8 0M0 0 8 8"/>',
  '<path d="M0 4H8M4 0V8"/>',
];

export function colorOf(fabric: number): string {
  return COLORS[fabric % COLORS.length];
}

/** The number of a fabric's hatch; 0 is none. */
export function hatchOf(fabric: number): number {
  const round = (fabric - (fabric % COLORS.length)) / COLORS.length;
  return (fabric + round) % HATCHES.length;
}

/** The pattern of a hatch, dark enough to copy in gray. */
export function hatchPattern(hatch: number): string {
  return (
    `<pattern id="hatch${hatch}" width="8" height="8" patternUnits="userSpaceOnUse">` +
    `<g stroke="#1f2328" stroke-width="0.7" stroke-opacity="0.55" fill="none">${HATCHES[hatch]}</g></pattern>`
  );
}
