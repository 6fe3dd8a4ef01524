/** Cut shapes with their seam lines, the finished measure inside and the cut measure outside. */
import { atMost } from "../math/rounding";
import { showing } from "../math/show";
import type { Inches, System } from "../math/units";
import { Drawing, type Point } from "./drawing";
import { textWidth } from "./lettering";

/** From one point to another; along a shape that runs clockwise on the page, the outside is on the left hand. */
export type Stretch = readonly [from: Point, to: Point];

export interface CutShape {
  title: string;
  /** Corners of the piece as cut, clockwise on the page, inches. */
  cut: readonly Point[];
  /** Corners of the finished piece in the same place, inches. */
  finished: readonly Point[];
  /** What to measure outside, at the cut piece. */
  cutMeasures: readonly Stretch[];
  /** What to measure inside, at the finished piece. */
  finishedMeasures: readonly Stretch[];
  seam: Inches;
  notes?: readonly string[];
}

/** The most that the larger and the smaller measure of a shape are drawn, pixels. */
const LARGER = 300;
const SMALLER = 240;

/** A cut shape: solid where it is cut, dashed where it is sewn. */
export function cutShapePicture(shape: CutShape, system: System = "in"): string {
  const show = showing(system);
  const lengthOf = ([from, to]: Stretch) => show.length(Math.hypot(to.x - from.x, to.y - from.y));
  const measures = [
    ...shape.cutMeasures.map((stretch) => `cut ${lengthOf(stretch)}`),
    ...shape.finishedMeasures.map((stretch) => `finished ${lengthOf(stretch)}`),
  ];
  const sizes = [spread(shape.cut, "x"), spread(shape.cut, "y")];
  const scale = Math.min(LARGER / Math.max(...sizes), SMALLER / Math.min(...sizes));
  const drawing = new Drawing(shape.title, `${shape.title}: ${measures.join(", ")}`, scale);
  drawing.polygon(shape.cut, 0, { part: "cut" }).polygon(shape.finished, 1, { dashed: true, part: "finished" });
  for (const stretch of shape.cutMeasures) drawing.measure(...stretch, `cut ${lengthOf(stretch)}`, 12);
  const outside: string[] = [];
  for (const stretch of shape.finishedMeasures) {
    const words = `finished ${lengthOf(stretch)}`;
    const place = placeWithin(drawing, stretch, words, shape.finished);
    if (place === undefined) outside.push(lengthOf(stretch));
    else drawing.textAlong(...place, words, -INWARD, { ground: true });
  }
  if (outside.length > 0) drawing.note(`finished ${outside.join(" × ")}`);
  for (const words of shape.notes ?? []) drawing.note(words);
  if (isRoundedUp(shape)) drawing.note("dashed: finished; cut up to the mark, so trim, or it finishes larger");
  else if (shape.seam > 0) drawing.note(`dashed: seam line, ${show.length(shape.seam)} inside`);
  return drawing.svg();
}

/** Whether any side is cut further than a seam from where it finishes. */
function isRoundedUp({ cut, finished, seam }: CutShape): boolean {
  return cut.some((corner, index) => {
    const [from, to] = side(finished, index);
    const along = { x: to.x - from.x, y: to.y - from.y };
    const off = along.x * (corner.y - from.y) - along.y * (corner.x - from.x);
    return !atMost(Math.abs(off) / Math.hypot(along.x, along.y), seam);
  });
}

/** From a seam line to the middle of the words within, and half the height of their ground, pixels. */
const INWARD = 14;
const HALF_LINE = 10;

/** The side moved along itself until words beside it lie within the shape, which has no notches; undefined where they do not fit. */
function placeWithin(
  drawing: Drawing,
  [from, to]: Stretch,
  words: string,
  within: readonly Point[],
): Stretch | undefined {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const [half, spare] = [drawing.pixels(textWidth(words) / 2 + 5), length - drawing.pixels(textWidth(words) + 10)];
  if (spare < 0) return undefined;
  const at = (alongBy: number, inward: number): Point => ({
    x: (from.x + to.x) / 2 + along.x * alongBy - along.y * drawing.pixels(inward),
    y: (from.y + to.y) / 2 + along.y * alongBy + along.x * drawing.pixels(inward),
  });
  const shift = [0, 0.25, -0.25, 0.5, -0.5]
    .map((part) => part * spare)
    .find((by) =>
      [-half, half].every((end) =>
        [INWARD - HALF_LINE, INWARD + HALF_LINE].every((inward) => liesWithin(at(by + end, inward), within)),
      ),
    );
  if (shift === undefined) return undefined;
  const [start, end] = moved([from, to], { x: along.x * shift, y: along.y * shift });
  return [start, end];
}

/** Whether a point lies on the right hand of every side, going clockwise on the page. */
function liesWithin(point: Point, corners: readonly Point[]): boolean {
  return corners.every((from, index) => {
    const to = corners[(index + 1) % corners.length];
    return (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x) >= 0;
  });
}

/** A side of a shape, by the index of its first corner. */
export function side(corners: readonly Point[], index: number): Stretch {
  return [corners[index], corners[(index + 1) % corners.length]];
}

/** Corners moved together. */
export function moved(corners: readonly Point[], by: Point): Point[] {
  return corners.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
}

/** Corners written as pairs. */
export function points(...corners: readonly (readonly [number, number])[]): Point[] {
  return corners.map(([x, y]) => ({ x, y }));
}

/** From the least to the greatest coordinate. */
export function spread(corners: readonly Point[], axis: "x" | "y"): number {
  const values = corners.map((corner) => corner[axis]);
  return Math.max(...values) - Math.min(...values);
}
