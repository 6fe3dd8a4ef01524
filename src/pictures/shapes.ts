/** Triangles, diamonds, hexagons, stars and templates with their seam lines. */
import { same } from "../math/rounding";
import {
  cutDiamond,
  cutHalfRectangle,
  cutHexagon,
  cutStar,
  cutTriangle,
  DIAMOND_ANGLES,
  halfRectangleSewn,
} from "../math/shapes";
import { type Corner, cutTemplate } from "../math/template";
import { type Inches, inches } from "../math/units";
import { cutShapePicture, moved, points, side, spread, type Stretch } from "./cutShapes";
import { Drawing, type Point, rectangle } from "./drawing";
import { type PictureOptions, settle } from "./options";
import { pieceRow } from "./pieceRow";

const EXACT = inches(0);

/** Half of a rectangle, cut corner to corner. */
export function halfRectanglePicture(width: Inches, height: Inches, options: PictureOptions = {}): string {
  const { seam, mark = EXACT, system, show } = settle(options);
  const cut = cutHalfRectangle(width, height, seam, mark);
  const sewn = halfRectangleSewn(cut, seam);
  const outer = points([0, 0], [cut.width, cut.height], [0, cut.height]);
  const inner = moved(points([0, 0], [sewn.width, sewn.height], [0, sewn.height]), {
    x: seam,
    y: cut.height - seam - sewn.height,
  });
  const wanted = `${show.length(width)} × ${show.length(height)}`;
  return cutShapePicture(
    {
      title: `Half of a rectangle of ${show.length(sewn.width)} × ${show.length(sewn.height)}`,
      cut: outer,
      finished: inner,
      cutMeasures: [side(outer, 1), side(outer, 2)],
      finishedMeasures: [side(inner, 1), side(inner, 2)],
      seam,
      notes: [
        "cut a rectangle once, corner to corner",
        ...(same(sewn.width, width) && same(sewn.height, height) ? [] : [`cut up to the mark, larger than ${wanted}`]),
      ],
    },
    system,
  );
}

/** A triangle with two or three equal sides. */
export function trianglePicture(base: Inches, height?: Inches, options: PictureOptions = {}): string {
  const { seam, mark = EXACT, system, show } = settle(options);
  const cut = cutTriangle(base, height, seam, mark);
  const finishedHeight = height ?? base * Math.sqrt(0.75);
  const triangle = (b: number, h: number) => points([b / 2, 0], [b, h], [0, h]);
  const outer = triangle(cut.base, cut.height);
  const inner = moved(triangle(base, finishedHeight), {
    x: (cut.base - base) / 2,
    y: cut.height - seam - finishedHeight,
  });
  return cutShapePicture(
    {
      title: `A triangle that finishes ${show.length(base)} at its base`,
      cut: outer,
      finished: inner,
      cutMeasures: [
        side(outer, 1),
        [
          { x: 0, y: cut.height },
          { x: 0, y: 0 },
        ],
      ],
      finishedMeasures: [side(inner, 1)],
      seam,
      notes: [`finished height ${show.length(finishedHeight)}`],
    },
    system,
  );
}

/** A diamond on the strip that it is cut from. */
export function diamondPicture(
  finished: Inches,
  angle: number = DIAMOND_ANGLES.usual,
  options: PictureOptions = {},
): string {
  const { seam, mark = EXACT, system, show } = settle(options);
  const cut = cutDiamond(finished, angle, seam, mark);
  const radians = (angle * Math.PI) / 180;
  const outer = diamond(cut.along, cut.strip, radians);
  const inner = moved(diamond(finished, finished * Math.sin(radians), radians), centerShift(outer, finished, radians));
  const left = Math.min(...outer.map(({ x }) => x));
  return cutShapePicture(
    {
      title: `A diamond of ${angle}° that finishes ${show.length(finished)}`,
      cut: outer,
      finished: inner,
      cutMeasures: [
        side(outer, 2),
        [
          { x: left, y: cut.strip },
          { x: left, y: 0 },
        ],
      ],
      finishedMeasures: [side(inner, 0)],
      seam,
      notes: [`cut a strip ${show.length(cut.strip)} wide at ${angle}°`],
    },
    system,
  );
}

/** Two sides level, the tip of the given angle at the lower left; clockwise. */
function diamond(along: number, strip: number, radians: number): Point[] {
  const slant = strip / Math.tan(radians);
  return points([slant, 0], [slant + along, 0], [along, strip], [0, strip]);
}

/** What brings the finished diamond to the middle of the cut one. */
function centerShift(outer: readonly Point[], finished: number, radians: number): Point {
  const inner = diamond(finished, finished * Math.sin(radians), radians);
  const middle = (corners: readonly Point[]) => ({
    x: (corners[0].x + corners[2].x) / 2,
    y: (corners[0].y + corners[2].y) / 2,
  });
  const [a, b] = [middle(outer), middle(inner)];
  return { x: a.x - b.x, y: a.y - b.y };
}

/** A hexagon, two of its sides level. */
export function hexagonPicture(finished: Inches, options: PictureOptions = {}): string {
  const { seam, mark = EXACT, system, show } = settle(options);
  const cut = cutHexagon(finished, seam, mark);
  const outer = hexagon(cut.side, cut.flatToFlat);
  const inner = hexagon(finished, finished * Math.sqrt(3));
  const [left, half] = [-1 * cut.side, cut.flatToFlat / 2];
  return cutShapePicture(
    {
      title: `A hexagon that finishes ${show.length(finished)} on each side`,
      cut: outer,
      finished: inner,
      cutMeasures: [
        side(outer, 0),
        [
          { x: left, y: half },
          { x: left, y: -half },
        ],
      ],
      finishedMeasures: [side(inner, 3)],
      seam,
    },
    system,
  );
}

function hexagon(length: number, flatToFlat: number): Point[] {
  const [half, high] = [length / 2, flatToFlat / 2];
  return points([-half, -high], [half, -high], [length, 0], [half, high], [-half, high], [-length, 0]);
}

/** What to cut for an eight-point star, and the finished block. */
export function starPicture(block: Inches, rows = 1, options: PictureOptions = {}): string {
  const { seam, mark = EXACT, show } = settle(options);
  const [point, corner, triangle] = cutStar(block, rows, seam, mark);
  const size = triangle.width;
  const cutPoint = diamond(point.length, point.width, Math.PI / 4);
  return pieceRow(`An eight-point star in a block that finishes ${show.length(block)}`, [
    {
      areas: [{ corners: cutPoint, fill: 1, part: "cut" }],
      across: show.length(point.length),
      acrossOf: side(cutPoint, 0),
      words: ["diamond", `cut ${point.count}`, `strip ${show.length(point.width)}`],
    },
    {
      areas: [{ corners: rectangle(0, 0, corner.width, corner.width), fill: 0, part: "cut" }],
      across: show.length(corner.width),
      words: [corner.patch, `cut ${corner.count}`],
    },
    {
      areas: [{ corners: rectangle(0, 0, size, size), fill: 0, part: "cut" }],
      cuts: [
        [points([0, 0])[0], points([size, size])[0]],
        [points([0, size])[0], points([size, 0])[0]],
      ],
      across: show.length(size),
      words: [triangle.patch, `cut ${triangle.count}, twice`, "corner to corner"],
    },
    {
      areas: [{ corners: rectangle(0, 0, block, block), fill: 0 }, ...starPoints(block, rows)],
      cuts: starSeams(block),
      across: show.length(block),
      words: ["block, finished"],
    },
  ]);
}

/** The eight points, each of one diamond or of rows of smaller ones. */
function starPoints(block: number, rows: number): { corners: Point[]; fill: number }[] {
  const step = block / (2 + Math.SQRT2) / rows;
  const center = block / 2;
  const ray = (eighth: number): Point => {
    const angle = (eighth * Math.PI) / 4;
    return { x: step * Math.cos(angle), y: step * Math.sin(angle) };
  };
  return Array.from({ length: 8 * rows * rows }, (_, index) => {
    const [column, row, eighth] = [index % rows, Math.trunc(index / rows) % rows, Math.trunc(index / (rows * rows))];
    const [one, other] = [ray(eighth), ray(eighth + 1)];
    const at = (i: number, j: number): Point => ({
      x: center + i * one.x + j * other.x,
      y: center + i * one.y + j * other.y,
    });
    const corners = [at(column, row), at(column + 1, row), at(column + 1, row + 1), at(column, row + 1)];
    return { corners, fill: (eighth + column + row) % 2 === 0 ? 1 : 2 };
  });
}

/** Where the corner squares and side triangles meet the star. */
function starSeams(block: number): Stretch[] {
  const side = block / (2 + Math.SQRT2);
  const far = block - side;
  return [
    points([side, 0], [side, side], [0, side]),
    points([far, 0], [far, side], [block, side]),
    points([far, block], [far, far], [block, far]),
    points([side, block], [side, far], [0, far]),
  ].flatMap(([a, b, c]): Stretch[] => [
    [a, b],
    [b, c],
  ]);
}

/**
 * A template of any shape: its corners numbered as in the table, and its measures over all.
 *
 * @param corners finished corners in order, to the right and up, inches
 */
export function templatePicture(corners: readonly Corner[], options: PictureOptions = {}): string {
  const { seam, show } = settle(options);
  const onPage = (list: readonly Corner[]): Point[] => list.map(({ x, y }) => ({ x, y: -1 * y }));
  const [cut, finished] = [onPage(cutTemplate(corners, seam)), onPage(corners)];
  const [width, height] = [spread(cut, "x"), spread(cut, "y")];
  const words = `cut ${show.length(width)} × ${show.length(height)} over all`;
  const title = `A template with ${corners.length} corners`;
  const drawing = new Drawing(title, `${title}: ${words}, seam ${show.length(seam)}`, 260 / Math.max(width, height));
  drawing.polygon(cut, 0, { part: "cut" }).polygon(finished, 1, { dashed: true, part: "finished" });
  finished.forEach((corner, index) => {
    // From the cut corner through the finished one leads inward, in notches too.
    const [x, y] = [corner.x - cut[index].x, corner.y - cut[index].y];
    const inward = 13 / (Math.hypot(x, y) || 1);
    drawing.text(corner, `${index + 1}`, { small: true, ground: true }, { x: x * inward, y: y * inward });
  });
  const [left, top] = [Math.min(...cut.map(({ x }) => x)), Math.min(...cut.map(({ y }) => y))];
  drawing.measure({ x: left, y: top }, { x: left + width, y: top }, `cut ${show.length(width)}`, 14);
  drawing.measure({ x: left, y: top + height }, { x: left, y: top }, `cut ${show.length(height)}`, 14);
  drawing.note("corners numbered as in the list");
  if (seam > 0) drawing.note(`dashed: seam line, ${show.length(seam)} inside`);
  return drawing.svg();
}
