/** A second route to every cut shape: its finished outline, moved outward by a general polygon library. */
import { areaD, EndType, inflatePathsD, JoinType } from "@countertype/clipper2-ts";

export interface Point {
  x: number;
  y: number;
}

/** Decimal places that the library works to, and how exact its answers may be expected to be, inches. */
const PLACES = 6;
const CLOSE = 1e-4;

/** Longer tips than any test draws, in seams. */
const LONGEST_TIP = 500;

/** All outlines of the shape moved outward by the seam, its corners mitred: one, unless it runs into itself. */
export function movedOutward(outline: readonly Point[], seam: number): Point[][] {
  const counterclockwise = areaD([...outline]) > 0 ? [...outline] : [...outline].reverse();
  return inflatePathsD([counterclockwise], seam, JoinType.Miter, EndType.Polygon, LONGEST_TIP, PLACES);
}

/** The one outline of a shape without notches, moved outward by the seam. */
export function cutOutline(outline: readonly Point[], seam: number): Point[] {
  const outlines = movedOutward(outline, seam);
  expect(outlines).toHaveLength(1);
  return outlines[0];
}

/** Width and height of an outline. */
export function extent(outline: readonly Point[]): { width: number; height: number } {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

/** Lengths of the sides of an outline. */
export function sideLengths(outline: readonly Point[]): number[] {
  return outline.map((from, index) => {
    const to = outline[(index + 1) % outline.length];
    return Math.hypot(to.x - from.x, to.y - from.y);
  });
}

/** A regular shape or any other, from corners written as [x, y]. */
export function points(...corners: [number, number][]): Point[] {
  return corners.map(([x, y]) => ({ x, y }));
}

/** The signed area of an outline, above 0 counterclockwise. */
export function area(outline: readonly Point[]): number {
  return areaD([...outline]);
}

/** Expects two numbers to agree as far as the library is exact. */
export function expectClose(got: number, expected: number): void {
  expect(Math.abs(got - expected)).toBeLessThan(CLOSE);
}
