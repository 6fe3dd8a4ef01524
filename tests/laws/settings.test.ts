import fc from "fast-check";
import { Problem } from "../../src/math/problem";
import { TOLERANCE } from "../../src/math/rounding";
import {
  blocksFor,
  blocksIn,
  cutCornerTriangle,
  cutSideTriangle,
  EDGES,
  type SettingOptions,
  SETTINGS,
  topSize,
} from "../../src/math/settings";
import { topPieces } from "../../src/math/topPieces";
import { inches } from "../../src/math/units";
import { lengths, seams } from "./arbitraries";

const EXACT = inches(0);
const counts = fc.integer({ min: 1, max: 12 });
const blocks = lengths(2, 20);
const sashings = fc.oneof(fc.constant(inches(0)), lengths(0.5, 5));
const settings = fc
  .record({ sashing: sashings, edge: fc.constantFrom(...EDGES), setting: fc.constantFrom(...SETTINGS) })
  .filter((options) => options.setting !== "two-side" || options.edge === "none");

/** Whether sashing can lie between these blocks. */
function sewable(across: number, down: number, options: SettingOptions): boolean {
  return (
    options.setting !== "on point" || options.edge === "sashed" || options.sashing === 0 || (across > 1 && down > 1)
  );
}

/**
 * The kinds of places in a top, drawn on a grid. Straight: a line of the grid for every row of blocks (odd) and one for every
 * row of sashes (even). On point: the same grid over the corners and centers of the blocks, half a diagonal apart.
 */
function placesOnGrid(across: number, down: number, options: SettingOptions): Map<string, number> {
  const places = new Map<string, number>();
  const count = (kind: string): unknown => places.set(kind, (places.get(kind) ?? 0) + 1);
  const odd = (place: number): boolean => place % 2 === 1;
  const sashed = options.edge === "sashed";
  const strips = (options.sashing ?? 0) > 0;
  const inside = (x: number, y: number): boolean => x > 0 && y > 0 && x < 2 * across && y < 2 * down;
  const isBlock = (x: number, y: number): boolean => inside(x, y) && odd(x) === odd(y);
  for (let x = 0; x <= 2 * across; x++) {
    for (let y = 0; y <= 2 * down; y++) {
      const within = inside(x, y) || sashed;
      if (options.setting === "on point") {
        const edges = Number(x === 0 || x === 2 * across) + Number(y === 0 || y === 2 * down);
        const neighbors = [
          [x - 1, y],
          [x + 1, y],
          [x, y - 1],
          [x, y + 1],
        ] as const;
        if (isBlock(x, y)) count("block");
        else if (odd(x) === odd(y)) count(edges === 2 ? "corner" : "side");
        else if (strips && (sashed || neighbors.every(([nx, ny]) => isBlock(nx, ny)))) count("cornerstone");
        // A sash lies on every side of a block, between it and its neighbor to the right, above and below.
        for (const [nx, ny] of [
          [x + 1, y + 1],
          [x + 1, y - 1],
        ] as const) {
          const ends = Number(isBlock(x, y)) + Number(isBlock(nx, ny));
          if (odd(x) === odd(y) && strips && (sashed ? ends > 0 : ends === 2)) count("sash");
        }
      } else if (odd(x) && odd(y)) {
        count("block");
      } else if (strips && within && options.setting === "straight") {
        count(odd(x) ? "horizontal sash" : odd(y) ? "vertical sash" : "cornerstone");
      }
    }
  }
  return places;
}

describe("topPieces", () => {
  test("blocks stand straight, without sashing at the edge, unless told otherwise", () => {
    const usual = { setting: "straight", edge: "none" } as const;
    for (const sashing of [0, 2].map(inches)) {
      expect(topPieces(3, 4, inches(12), { sashing })).toEqual(topPieces(3, 4, inches(12), { sashing, ...usual }));
    }
    const names = topPieces(3, 4, inches(12), { sashing: inches(2) }).map(({ piece }) => piece);
    expect(names).toEqual(["block", "vertical sash", "horizontal sash", "cornerstone"]);
  });

  test("counts what a drawing of the top on a grid shows", () => {
    fc.assert(
      fc.property(counts, counts, blocks, settings, (across, down, block, options) => {
        fc.pre(options.setting !== "two-side" && sewable(across, down, options));
        const places = placesOnGrid(across, down, options);
        const names: Record<string, string> = {
          "square for side triangles": "side",
          "square for corner triangles": "corner",
        };
        const pieces = topPieces(across, down, block, options);
        const counted = pieces.map((piece): [string, number] => [names[piece.piece] ?? piece.piece, piece.inTop]);
        expect(new Map(counted)).toEqual(places);
      }),
    );
  });

  test("the finished pieces cover the top exactly", () => {
    fc.assert(
      fc.property(counts, counts, blocks, settings, seams, (across, down, block, options, seam) => {
        fc.pre(sewable(across, down, options));
        const pieces = topPieces(across, down, block, { ...options, seam, mark: EXACT });
        const area = pieces.reduce((sum, { piece, width, height, inTop }) => {
          if (piece === "square for side triangles") {
            // Its long edge is the side of the square less what the seams took.
            const longEdge = width - 2 * (1 + Math.SQRT2) * seam;
            return sum + (inTop * longEdge ** 2) / 4;
          }
          if (piece === "square for corner triangles") {
            return sum + (inTop * (width - (2 + Math.SQRT2) * seam) ** 2) / 2;
          }
          const onEdge =
            piece === "cornerstone" && options.setting === "on point" && options.edge === "sashed" ? across + down : 0;
          return sum + (inTop - onEdge) * (width - 2 * seam) * (height - 2 * seam);
        }, 0);
        const size = topSize(across, down, block, options);
        expect(area / (size.width * size.length)).toBeCloseTo(1, 9);
      }),
    );
  });

  test("alternate blocks are taken from the same blocks, at most half of them", () => {
    fc.assert(
      fc.property(counts, counts, settings, (across, down, options) => {
        fc.pre(sewable(across, down, options));
        const pieces = topPieces(across, down, inches(8), { ...options, alternate: true });
        const [own, other] = ["block", "alternate block"].map(
          (name) => pieces.find((piece) => piece.piece === name)?.inTop ?? 0,
        ) as [number, number];
        expect(own + other).toBe(blocksIn(across, down, options.setting));
        expect(other).toBeLessThanOrEqual(own);
      }),
    );
  });

  test("enough squares are cut for the triangles, and not one too many", () => {
    fc.assert(
      fc.property(counts, counts, (across, down) => {
        for (const { piece, count, inTop } of topPieces(across, down, inches(8), { setting: "on point" })) {
          const each = piece.includes("side") ? 4 : piece.includes("corner") ? 2 : 1;
          expect(count * each).toBeGreaterThanOrEqual(inTop);
          expect((count - 1) * each).toBeLessThan(inTop);
        }
      }),
    );
  });
});

describe("topSize", () => {
  test("spans the corners of the blocks, placed one by one", () => {
    fc.assert(
      fc.property(counts, counts, blocks, settings, (across, down, block, options) => {
        fc.pre(sewable(across, down, options));
        const { sashing, edge, setting } = options;
        const onPoint = setting === "on point";
        const outer = edge === "sashed" ? sashing : 0;
        const span = (many: number): number => {
          const centers = Array.from({ length: many }, (_, index) => index * (block + sashing));
          // Half of a block from its center to the edge; on point, to its corner; a cornerstone's center lies further out.
          const reach = block / 2 + (onPoint ? outer / 2 : outer);
          const [first, last] = [centers[0] - reach, centers[many - 1] + reach];
          return (last - first + (setting === "two-side" ? sashing : 0)) * (onPoint ? Math.SQRT2 : 1);
        };
        const size = topSize(across, down, block, options);
        expect(size.width).toBeCloseTo(span(across), 8);
        expect(size.length).toBeCloseTo(span(down), 8);
      }),
    );
  });
});

describe("blocksFor", () => {
  test("no layout comes nearer than the first", () => {
    fc.assert(
      fc.property(lengths(5, 110), lengths(5, 110), blocks, settings, (width, length, block, options) => {
        const [nearest, ...others] = blocksFor(width, length, block, options);
        const off = (size: { width: number; length: number }): number =>
          Math.abs(size.width - width) + Math.abs(size.length - length);
        for (let across = 1; across <= 60; across++) {
          if (!sewable(across, 2, options)) continue;
          const size = topSize(across, 2, block, options);
          expect(Math.abs(nearest.wider)).toBeLessThanOrEqual(Math.abs(size.width - width) + 1e-6);
          if (size.width > 2 * width) break;
        }
        for (const other of others) expect(off(nearest)).toBeLessThanOrEqual(off(other) + 1e-6);
      }),
    );
  });

  test("a layout's own size finds that layout alone", () => {
    fc.assert(
      fc.property(counts, counts, blocks, settings, (across, down, block, options) => {
        fc.pre(sewable(across, down, options) && sewable(1, 1 + across, options));
        const { width, length } = topSize(across, down, block, options);
        expect(blocksFor(width, length, block, options)).toEqual([
          { across, down, width, length, blocks: blocksIn(across, down, options.setting), wider: 0, longer: 0 },
        ]);
      }),
    );
  });
});

describe("cutSideTriangle and cutCornerTriangle", () => {
  test("every cut edge lies a seam outside the sewn triangle", () => {
    fc.assert(
      fc.property(blocks, seams, (block, seam) => {
        // Sewn side triangle: long edge on the x axis, right angle at (0, h). Cut: long edge at y = −seam.
        const side = cutSideTriangle(block, seam, EXACT);
        const height = block / Math.SQRT2;
        expect(distance([0, height], [side / 2, 0 - seam], [0, side / 2 - seam])).toBeCloseTo(seam, 9);
        expect(distance([height, 0], [side / 2, 0 - seam], [0, side / 2 - seam])).toBeCloseTo(seam, 9);
        // Sewn corner triangle: right angle at the origin, legs on the axes. Cut: right angle at (−seam, −seam).
        const corner = cutCornerTriangle(block, seam, EXACT);
        const leg = block / Math.SQRT2;
        const longEdge = [
          [corner - seam, 0 - seam],
          [0 - seam, corner - seam],
        ] as const;
        expect(distance([leg, 0], ...longEdge)).toBeCloseTo(seam, 9);
        expect(distance([0, leg], ...longEdge)).toBeCloseTo(seam, 9);
      }),
    );
  });

  test("at a mark are never too small, and no step too large", () => {
    fc.assert(
      fc.property(blocks, seams, (block, seam) => {
        for (const cut of [cutSideTriangle, cutCornerTriangle]) {
          const spare = cut(block, seam, inches(1 / 8)) - cut(block, seam, EXACT);
          expect(spare).toBeGreaterThan(-TOLERANCE);
          expect(spare).toBeLessThan(1 / 8);
        }
      }),
    );
  });
});

test("any layout whatever gives numbers or a Problem", () => {
  const wild = fc
    .oneof(fc.constantFrom(0, -1, 0.5, 1e-12, NaN, Infinity), fc.double({ min: 1e-9, max: 1e7 }))
    .map(inches);
  fc.assert(
    fc.property(wild, wild, wild, wild, settings, (across, down, block, sashing, options) => {
      for (const ask of [topSize, topPieces, blocksFor]) {
        try {
          const shown = JSON.stringify(ask(across, down, block, { ...options, sashing }));
          expect(shown).not.toMatch(/null|NaN|Infinity/);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(Problem);
        }
      }
    }),
  );
});

/** How far a point lies from the line through two others. */
function distance(
  point: readonly [number, number],
  from: readonly [number, number],
  to: readonly [number, number],
): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return Math.abs((point[0] - from[0]) * dy - (point[1] - from[1]) * dx) / Math.hypot(dx, dy);
}
