/** Random blocks drawn in cells. */
import fc from "fast-check";
import { CORNERS, DIRECTIONS } from "../../src/math/blocks/grammar";

const FABRICS = ["sand", "slate 2", "Rust", "moss"];
const fabric = fc.constantFrom(...FABRICS);
const twoFabrics = fc.shuffledSubarray(FABRICS, { minLength: 2, maxLength: 2 });

/** One cell that stands alone. */
const singleCell = fc.oneof(
  fabric,
  fc.constant(""),
  fc.tuple(twoFabrics, fc.constantFrom("/", "\\")).map(([[above, below], seam]) => `${above} ${seam} ${below}`),
  fc.array(fabric, { minLength: 4, maxLength: 4 }).map((fabrics) => `four: ${fabrics.join(", ")}`),
  fc
    .tuple(fabric, fabric, fc.subarray([...CORNERS], { minLength: 1 }))
    .map(([base, corner, at]) => `${base} + ${corner} ${at.join(" ")}`),
);

/** Random blocks: single cells, and geese or larger patches laid over some of them. */
export const blocks = fc
  .record({
    rows: fc.integer({ min: 1, max: 6 }),
    columns: fc.integer({ min: 1, max: 6 }),
    cells: fc.array(singleCell, { minLength: 36, maxLength: 36 }),
    large: fc.array(fc.tuple(fc.nat(5), fc.nat(5), fc.constantFrom("2x2", ...DIRECTIONS), twoFabrics), {
      maxLength: 4,
    }),
  })
  .map(({ rows, columns, cells, large }) => {
    const grid = Array.from({ length: rows }, (_, r) => cells.slice(r * columns, (r + 1) * columns));
    const taken = new Set<string>();
    for (const [r, c, what, [one, other]] of large) {
      const [high, wide] = what === "2x2" ? [2, 2] : what === "up" || what === "down" ? [1, 2] : [2, 1];
      const places = Array.from({ length: high * wide }, (_, i) => [r + Math.trunc(i / wide), c + (i % wide)] as const);
      if (places.some(([y, x]) => y >= rows || x >= columns || taken.has(`${y},${x}`))) continue;
      for (const [y, x] of places) {
        taken.add(`${y},${x}`);
        grid[y][x] = x > c ? "<" : "^";
      }
      grid[r][c] = what === "2x2" ? `${one} / ${other}` : `goose ${what}: ${one}, ${other}`;
    }
    return grid;
  })
  .filter((grid) => grid.some((row) => row.some((text) => text !== "")));
