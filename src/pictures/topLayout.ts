/** Where every piece of a quilt top lies, finished: blocks, sashes, cornerstones and setting triangles. */
import { type SettingOptions, topSize } from "../math/settings";
import type { Inches } from "../math/units";
import { type Point, rectangle } from "./drawing";

export type PlacedKind =
  | "block"
  | "alternate block"
  | "sash"
  | "short strip"
  | "long strip"
  | "cornerstone"
  | "side triangle"
  | "corner triangle";

export interface PlacedPiece {
  kind: PlacedKind;
  corners: readonly Point[];
}

export interface LayoutOptions extends SettingOptions {
  /** whether every second block is another one */
  alternate?: boolean;
}

/** Every piece of a top, from its upper left corner; together they cover it once. */
export function topLayout(across: number, down: number, block: Inches, options: LayoutOptions = {}): PlacedPiece[] {
  const size = topSize(across, down, block, options);
  const { setting = "straight" } = options;
  if (setting === "two-side") return twoSide(across, down, block, options);
  return setting === "on point" ? onPoint(across, down, block, options, size) : straight(across, down, block, options);
}

function straight(across: number, down: number, block: number, options: LayoutOptions): PlacedPiece[] {
  const { sashing = 0, edge = "none", alternate = false } = options;
  const first = edge === "sashed" ? sashing : 0;
  // A sash lies before a block where there is another block or a sashed edge, and after the last one at a sashed edge.
  const along = (blocks: number) => {
    const parts: { start: number; size: number; sash: boolean; index: number }[] = [];
    for (let index = 0; index < blocks; index += 1) {
      const start = first + index * (block + sashing);
      if (sashing > 0 && (index > 0 || edge === "sashed")) {
        parts.push({ start: start - sashing, size: sashing, sash: true, index });
      }
      parts.push({ start, size: block, sash: false, index });
    }
    if (sashing > 0 && edge === "sashed") {
      parts.push({ start: first + blocks * (block + sashing) - sashing, size: sashing, sash: true, index: blocks });
    }
    return parts;
  };
  return along(down).flatMap((row) =>
    along(across).map((column): PlacedPiece => {
      const other = alternate && (row.index + column.index) % 2 === 1;
      const kind = row.sash && column.sash ? "cornerstone" : row.sash || column.sash ? "sash" : blockKind(other);
      return { kind, corners: rectangle(column.start, row.start, column.size, row.size) };
    }),
  );
}

/** Each block with strips on two sides; every second one is turned half round, which shifts the block. */
function twoSide(across: number, down: number, block: number, options: LayoutOptions): PlacedPiece[] {
  const { sashing = 0, alternate = false } = options;
  const pitch = block + sashing;
  return places(across, down).flatMap(({ row, column }): PlacedPiece[] => {
    const turned = (row + column) % 2 === 1;
    const put = (x: number, y: number, width: number, height: number): Point[] => {
      const [left, top] = turned ? [pitch - x - width, pitch - y - height] : [x, y];
      return rectangle(column * pitch + left, row * pitch + top, width, height);
    };
    const pieces: PlacedPiece[] = [{ kind: blockKind(alternate && turned), corners: put(0, 0, block, block) }];
    if (sashing > 0) {
      pieces.push({ kind: "short strip", corners: put(block, 0, sashing, block) });
      pieces.push({ kind: "long strip", corners: put(0, block, pitch, sashing) });
    }
    return pieces;
  });
}

/**
 * On point, pieces are placed along two slanting axes, u down to the right and v up to the right, in which all of them are
 * upright: the block in column i and row j starts at u = (i + j) × pitch, v = (i − j) × pitch, and the blocks between the
 * rows one pitch further along u.
 */
function onPoint(
  across: number,
  down: number,
  block: number,
  options: LayoutOptions,
  size: { width: number; length: number },
): PlacedPiece[] {
  const { sashing = 0, edge = "none", alternate = false } = options;
  const pitch = block + sashing;
  const sashed = edge === "sashed" && sashing > 0;
  // The left and the upper edge run through the tips of the outer blocks, or half a cornerstone beyond them.
  const beyond = sashed ? sashing / Math.SQRT2 : 0;
  const toPage = ({ x: u, y: v }: Point): Point => ({
    x: (u + v) / Math.SQRT2 + beyond,
    y: (u - v + block) / Math.SQRT2 + beyond,
  });
  const upright = (u: number, v: number, width: number, height: number) => rectangle(u, v, width, height).map(toPage);
  const main = places(across, down).map(({ row, column }) => ({
    u: (column + row) * pitch,
    v: (column - row) * pitch,
  }));
  const between = places(across - 1, down - 1).map(({ row, column }) => ({
    u: (column + row + 1) * pitch,
    v: (column - row) * pitch,
  }));
  const pieces: PlacedPiece[] = [
    ...main.map(({ u, v }): PlacedPiece => ({ kind: "block", corners: upright(u, v, block, block) })),
    ...between.map(({ u, v }): PlacedPiece => ({ kind: blockKind(alternate), corners: upright(u, v, block, block) })),
  ];
  if (sashing > 0) {
    // With a sashed edge all four sides of every block in a row carry a sash; without, those of the blocks between the rows.
    const framed = sashed ? main : between;
    for (const { u, v } of framed) {
      for (const [du, dv, width, height] of [
        [-1 * sashing, 0, sashing, block],
        [block, 0, sashing, block],
        [0, -1 * sashing, block, sashing],
        [0, block, block, sashing],
      ]) {
        pieces.push({ kind: "sash", corners: upright(u + du, v + dv, width, height) });
      }
    }
    pieces.push(...cornerstones(across, down, { pitch, sashing, sashed }, upright, size));
  }
  const leg = sashed ? block : block + sashing;
  return [...pieces, ...settingTriangles(across, down, { leg, pitch, block, beyond }, size)];
}

/** The squares between the tips of the blocks; those that the edge crosses are trimmed to half. */
function cornerstones(
  across: number,
  down: number,
  { pitch, sashing, sashed }: { pitch: number; sashing: number; sashed: boolean },
  upright: (u: number, v: number, width: number, height: number) => Point[],
  size: { width: number; length: number },
): PlacedPiece[] {
  const beside = places(across + 1, down).map(({ row, column }) => ({
    u: (column + row) * pitch - sashing,
    v: (column - row) * pitch - sashing,
    atEdge: column === 0 || column === across,
    inside: row > 0 && row < down - 1,
  }));
  const above = places(across, down + 1).map(({ row, column }) => ({
    u: (column + row) * pitch - sashing,
    v: (column - row) * pitch + pitch - sashing,
    atEdge: row === 0 || row === down,
    inside: column > 0 && column < across - 1,
  }));
  return [...beside, ...above]
    .filter(({ atEdge, inside }) => sashed || (inside && !atEdge))
    .map(({ u, v, atEdge }): PlacedPiece => {
      const corners = upright(u, v, sashing, sashing);
      return { kind: "cornerstone", corners: atEdge ? withinTop(corners, size) : corners };
    });
}

/** The half of a square on point that lies on the top: its corners beyond an edge are dropped. */
function withinTop(corners: readonly Point[], { width, length }: { width: number; length: number }): Point[] {
  const dust = 1e-9 * (width + length);
  return corners.filter(({ x, y }) => x >= -dust && y >= -dust && x <= width + dust && y <= length + dust);
}

/** Triangles along the edges: their long edges lie between the tips of neighboring blocks. */
function settingTriangles(
  across: number,
  down: number,
  { leg, pitch, block, beyond }: { leg: number; pitch: number; block: number; beyond: number },
  { width, length }: { width: number; length: number },
): PlacedPiece[] {
  const long = Math.SQRT2 * leg;
  const deep = long / 2;
  const short = block / Math.SQRT2;
  const centers = (blocks: number) =>
    Array.from({ length: blocks - 1 }, (_, index) => beyond + block / Math.SQRT2 + (index + 0.5) * Math.SQRT2 * pitch);
  const triangle = (corners: [number, number][]): PlacedPiece => ({
    kind: "side triangle",
    corners: corners.map(([x, y]) => ({ x, y })),
  });
  return [
    ...centers(across).map((x) =>
      triangle([
        [x - deep, 0],
        [x + deep, 0],
        [x, deep],
      ]),
    ),
    ...centers(down).map((y) =>
      triangle([
        [width, y - deep],
        [width, y + deep],
        [width - deep, y],
      ]),
    ),
    ...centers(across).map((x) =>
      triangle([
        [x + deep, length],
        [x - deep, length],
        [x, length - deep],
      ]),
    ),
    ...centers(down).map((y) =>
      triangle([
        [0, y + deep],
        [0, y - deep],
        [deep, y],
      ]),
    ),
    ...[
      [
        [0, 0],
        [short, 0],
        [0, short],
      ],
      [
        [width, 0],
        [width, short],
        [width - short, 0],
      ],
      [
        [width, length],
        [width - short, length],
        [width, length - short],
      ],
      [
        [0, length],
        [0, length - short],
        [short, length],
      ],
    ].map((corners): PlacedPiece => ({ kind: "corner triangle", corners: corners.map(([x, y]) => ({ x, y })) })),
  ];
}

function places(across: number, down: number): { row: number; column: number }[] {
  return Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (_c, column) => ({ row, column })),
  ).flat();
}

function blockKind(alternate: boolean): PlacedKind {
  return alternate ? "alternate block" : "block";
}
