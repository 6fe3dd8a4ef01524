/** Quilt tops: blocks set straight, on point or with strips on two sides, with sashing and setting triangles. */
import { counted } from "../math/counted";
import { cutCornerTriangle, cutSideTriangle, topSize } from "../math/settings";
import { Problem } from "../math/problem";
import type { Show } from "../math/show";
import type { Inches } from "../math/units";
import { points } from "./cutShapes";
import { Drawing, type Fill, rectangle } from "./drawing";
import { type PictureOptions, settle } from "./options";
import { type LayoutOptions, type PlacedKind, type PlacedPiece, topLayout } from "./topLayout";

/** Longer side of a top as drawn, pixels. */
const DRAWN_SIZE = 340;

/** More pieces than these would be too small to see. */
const MOST_DRAWN = 6000;

/** Kinds of piece in the order of the legend. */
const FILLS: Readonly<Record<PlacedKind, Fill>> = {
  block: 0,
  "alternate block": 2,
  sash: 1,
  "short strip": 1,
  "long strip": 3,
  cornerstone: 6,
  "side triangle": 4,
  "corner triangle": 5,
};

/** A quilt top without borders, each kind of piece in a fabric of its own, with how many there are. */
export function topPicture(
  across: number,
  down: number,
  block: Inches,
  options: LayoutOptions & PictureOptions = {},
): string {
  const { show } = settle(options);
  const { setting = "straight" } = options;
  const size = topSize(across, down, block, options);
  requireDrawable(across * down);
  const pieces = topLayout(across, down, block, options);
  const title = `${across} × ${down} blocks, ${setting === "two-side" ? "strips on two sides" : `set ${setting}`}`;
  const counts = countKinds(pieces);
  const facts = [...counts].map(([kind, count]) => countedKind(count, kind));
  const measures = `${show.length(size.width)} × ${show.length(size.length)}`;
  const scale = DRAWN_SIZE / Math.max(size.width, size.length);
  const drawing = new Drawing(title, `${title}: ${measures}, ${facts.join(", ")}`, scale);
  drawPieces(drawing, pieces, (kind) => FILLS[kind]);
  measureTop(drawing, size.width, size.length, show);
  for (const [kind, count] of counts) drawing.legend(FILLS[kind], countedKind(count, kind));
  return drawing.svg();
}

/** A top on point with its side or its corner triangles marked, and the square that they are cut from. */
export function settingTrianglePicture(
  kind: "side triangle" | "corner triangle",
  block: Inches,
  options: PictureOptions = {},
): string {
  const { seam, usual, show } = settle(options);
  const mark = options.mark ?? usual.mark;
  const twice = kind === "side triangle";
  const cut = twice ? cutSideTriangle(block, seam, mark) : cutCornerTriangle(block, seam, mark);
  const size = topSize(3, 3, block, { setting: "on point" });
  const title = `${twice ? "Side" : "Corner"} triangles for blocks that finish ${show.length(block)}`;
  const how = `cut a square of ${show.length(cut)} ${twice ? "twice" : "once"}, corner to corner`;
  const drawing = new Drawing(title, `${title}: ${how}`, 250 / size.width);
  const pieces = topLayout(3, 3, block, { setting: "on point" });
  drawPieces(drawing, pieces, (placed) => (placed === kind ? FILLS[kind] : "paper"));
  const first = pieces.find((piece) => piece.kind === "block")!;
  const middle = { x: (first.corners[0].x + first.corners[2].x) / 2, y: (first.corners[0].y + first.corners[2].y) / 2 };
  drawing.text(middle, show.length(block), { small: true });
  const left = size.width + drawing.pixels(46);
  const top = (size.length - cut) / 2;
  drawing.polygon(rectangle(left, top, cut, cut), FILLS[kind], { part: "cut" });
  const [nw, ne, se, sw] = points([left, top], [left + cut, top], [left + cut, top + cut], [left, top + cut]);
  drawing.line(nw, se);
  if (twice) drawing.line(sw, ne);
  drawing.measure(nw, ne, `cut ${show.length(cut)}`, 12);
  drawing.text({ x: left + cut / 2, y: top + cut }, `makes ${twice ? 4 : 2}`, {}, { x: 0, y: 16 });
  drawing.legend(FILLS[kind], kind);
  drawing.note(how);
  return drawing.svg();
}

function drawPieces(drawing: Drawing, pieces: readonly PlacedPiece[], fillOf: (kind: PlacedKind) => Fill): void {
  for (const { kind, corners } of pieces) {
    drawing.polygon(corners, fillOf(kind), { thin: true, part: kind.replace(/ /g, "-") });
  }
}

function measureTop(drawing: Drawing, width: number, length: number, show: Show): void {
  drawing.measure({ x: 0, y: 0 }, { x: width, y: 0 }, show.length(width), 12);
  drawing.measure({ x: 0, y: length }, { x: 0, y: 0 }, show.length(length), 12);
}

function countKinds(pieces: readonly PlacedPiece[]): Map<PlacedKind, number> {
  const counts = new Map<PlacedKind, number>();
  for (const { kind } of pieces) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return counts;
}

function countedKind(count: number, kind: PlacedKind): string {
  return counted(count, kind, kind === "sash" ? "sashes" : undefined);
}

function requireDrawable(blocks: number): void {
  if (blocks <= MOST_DRAWN) return;
  throw new Problem("no answer", `${blocks} blocks are too many to draw; at most ${MOST_DRAWN} are drawn`);
}
