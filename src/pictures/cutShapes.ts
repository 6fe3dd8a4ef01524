/** Cut shapes with their seam lines, the finished measure inside and the cut measure outside. */
import { showing } from "../math/show";
import type { System } from "../math/units";
import { Drawing, type Point } from "./drawing";

export interface CutShape {
  title: string;
  /** Corners of the piece as cut, inches. */
  cut: readonly Point[];
  /** Corners of the finished piece in the same place, inches. */
  finished: readonly Point[];
  /** Sides of the cut piece to measure, by the index of their first corner. */
  cutSides: readonly number[];
  /** Sides of the finished piece to measure, by the index of their first corner. */
  finishedSides: readonly number[];
}

/** Side of the square into which the larger measure of a shape is drawn, pixels. */
const DRAWN_SIZE = 220;

/** A cut shape: solid where it is cut, dashed where it is sewn. */
export function cutShapePicture(shape: CutShape, system: System = "in"): string {
  const show = showing(system);
  const size = Math.max(spread(shape.cut, "x"), spread(shape.cut, "y"));
  const measures = [
    ...shape.cutSides.map((side) => `cut ${show.length(sideLength(shape.cut, side))}`),
    ...shape.finishedSides.map((side) => `finished ${show.length(sideLength(shape.finished, side))}`),
  ];
  const drawing = new Drawing(shape.title, `${shape.title}: ${measures.join(", ")}`, DRAWN_SIZE / size);
  drawing.polygon(shape.cut, 0).polygon(shape.finished, 1, { dashed: true });
  for (const side of shape.cutSides) {
    const [from, to] = ends(shape.cut, side);
    drawing.measure(from, to, `cut ${show.length(sideLength(shape.cut, side))}`, 14);
  }
  for (const side of shape.finishedSides) {
    const [from, to] = ends(shape.finished, side);
    const inward = inwardNormal(from, to);
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const words = `finished ${show.length(sideLength(shape.finished, side))}`;
    drawing.text(middle, words, { ground: true }, { x: inward.x * 18, y: inward.y * 18 });
  }
  return drawing.svg();
}

function ends(corners: readonly Point[], side: number): [Point, Point] {
  return [corners[side], corners[(side + 1) % corners.length]];
}

function sideLength(corners: readonly Point[], side: number): number {
  const [from, to] = ends(corners, side);
  return Math.hypot(to.x - from.x, to.y - from.y);
}

/** Corners run clockwise on the page (y down), so the inside is on the right hand. */
function inwardNormal(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: -(to.y - from.y) / length, y: (to.x - from.x) / length };
}

function spread(corners: readonly Point[], axis: "x" | "y"): number {
  const values = corners.map((corner) => corner[axis]);
  return Math.max(...values) - Math.min(...values);
}
