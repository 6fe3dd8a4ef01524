/** The figures of the reference: one drawn example for each function that a picture explains better than words. */
import { cutHalfSquare, cutSquare } from "../math/patches";
import { inches } from "../math/units";
import { cutShapePicture } from "./cutShapes";
import type { Point } from "./drawing";

/** Draws the figure of a function, by its registered name. */
export const figures: ReadonlyMap<string, () => string> = new Map([
  ["CUTSQUARE", square],
  ["CUTHALFSQUARE", halfSquare],
]);

const EXACT = inches(0);
const SEAM = inches(0.25);

function square(): string {
  const cut = cutSquare(inches(3));
  return cutShapePicture({
    title: "A square that finishes 3 in",
    cut: box(0, cut),
    finished: box(SEAM, cut - SEAM),
    cutSides: [0],
    finishedSides: [2],
  });
}

function halfSquare(): string {
  const cut = cutHalfSquare(inches(3), 2, SEAM, EXACT);
  return cutShapePicture({
    title: "A half-square triangle that finishes 3 in",
    cut: rightTriangle({ x: 0, y: 0 }, cut),
    finished: rightTriangle({ x: SEAM, y: SEAM }, 3),
    cutSides: [0],
    finishedSides: [0],
  });
}

function box(from: number, to: number): Point[] {
  return [
    { x: from, y: from },
    { x: to, y: from },
    { x: to, y: to },
    { x: from, y: to },
  ];
}

/** A right isosceles triangle with its right angle at `corner`, clockwise. */
function rightTriangle(corner: Point, leg: number): Point[] {
  return [corner, { x: corner.x + leg, y: corner.y }, { x: corner.x, y: corner.y + leg }];
}
