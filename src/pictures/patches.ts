/** Squares, half-square and quarter-square triangles, flying geese and square-in-square units: what to cut and to sew. */
import { counted } from "../math/counted";
import {
  cutCorner,
  cutGeese,
  cutHalfSquare,
  cutQuarterSquare,
  cutSquare,
  cutSquareInSquare,
  type GeeseMethod,
  type MadeAtOnce,
} from "../math/patches";
import { same } from "../math/rounding";
import { type UnitWay, unitMade } from "../math/sewn";
import type { Show } from "../math/show";
import { type Inches, inches } from "../math/units";
import { cutShapePicture, moved, points, side, type Stretch } from "./cutShapes";
import { type Point, rectangle } from "./drawing";
import { type PictureOptions, settle } from "./options";
import { pieceRow, type RowPiece } from "./pieceRow";

const EXACT = inches(0);

/** A square patch. */
export function squarePicture(finished: Inches, options: PictureOptions = {}): string {
  const { seam, mark = EXACT, system, show } = settle(options);
  const cut = cutSquare(finished, seam, mark);
  const sewn = inches(cut - 2 * seam);
  const [outer, inner] = [square(cut), moved(square(sewn), { x: seam, y: seam })];
  return cutShapePicture(
    {
      title: `A square that finishes ${show.length(sewn)}`,
      cut: outer,
      finished: inner,
      cutMeasures: [side(outer, 0), side(outer, 3)],
      finishedMeasures: [side(inner, 2)],
      seam,
      notes: same(sewn, finished) ? [] : [`cut up to the mark, larger than ${show.length(finished)}`],
    },
    system,
  );
}

/** Half-square units: a triangle cut on its own, or a pair of squares that makes two, four or eight units. */
export function halfSquarePicture(finished: Inches, madeAtOnce: MadeAtOnce = 2, options: PictureOptions = {}): string {
  const { seam, usual, system, show } = settle(options);
  const cut = cutHalfSquare(finished, madeAtOnce, seam, options.mark ?? usual.mark);
  if (madeAtOnce > 1) {
    const title = `${inWords(madeAtOnce)} half-square units at once`;
    return pieceRow(
      title,
      [sewnPair(cut, madeAtOnce, seam, show.length(cut)), halfSquareUnit(finished, seam, show)],
      ["dashed: sewn; solid: cut after sewing"],
    );
  }
  const outer = points([0, 0], [cut, 0], [0, cut]);
  const inner = moved(points([0, 0], [finished, 0], [0, finished]), { x: seam, y: seam });
  return cutShapePicture(
    {
      title: `A half-square triangle that finishes ${show.length(finished)}`,
      cut: outer,
      finished: inner,
      cutMeasures: [side(outer, 0)],
      finishedMeasures: [side(inner, 0)],
      seam,
      notes: ["cut a square once, corner to corner"],
    },
    system,
  );
}

/** A quarter-square triangle, with the square that is cut twice for four of them. */
export function quarterSquarePicture(finished: Inches, options: PictureOptions = {}): string {
  const { seam, usual, system, show } = settle(options);
  const cut = cutQuarterSquare(finished, seam, options.mark ?? usual.mark);
  const outer = points([cut / 2, 0], [cut, cut / 2], [0, cut / 2]);
  const inner = moved(points([finished / 2, 0], [finished, finished / 2], [0, finished / 2]), {
    x: (cut - finished) / 2,
    y: cut / 2 - seam - finished / 2,
  });
  return cutShapePicture(
    {
      title: `A quarter-square triangle that finishes ${show.length(finished)}`,
      cut: outer,
      finished: inner,
      cutMeasures: [side(outer, 1)],
      finishedMeasures: [side(inner, 1)],
      seam,
      notes: ["cut a square twice, corner to corner"],
    },
    system,
  );
}

/** A square sewn across a corner: the seam line, and the corner that is cut away beyond it. */
export function cornerPicture(finished: Inches, options: PictureOptions = {}): string {
  const { seam, mark = EXACT, show } = settle(options);
  const cut = cutCorner(finished, seam, mark);
  const patch = 2.2 * cut;
  const trim = cut - Math.SQRT2 * seam;
  const before: RowPiece = {
    areas: [
      { corners: square(patch), fill: 0 },
      { corners: moved(square(cut), { x: patch - cut, y: 0 }), fill: 1, part: "cut" },
    ],
    seams: [stretch(patch - cut, 0, patch, cut)],
    cuts: [stretch(patch - trim, 0, patch, trim)],
    words: ["sew corner to corner", `square cut ${show.length(cut)}`],
  };
  const flipped = points([patch - cut, 0], [patch, 0], [patch, cut]);
  const after: RowPiece = {
    areas: [
      { corners: square(patch), fill: 0 },
      { corners: flipped, fill: 1 },
    ],
    seams: rectangleLines(seam, seam, patch - 2 * seam, patch - 2 * seam),
    words: ["trim and flip", `corner finishes ${show.length(cut - 2 * seam)}`],
  };
  return pieceRow("A corner sewn and flipped", [before, after], ["dashed: sewn; solid: trimmed a seam beyond"]);
}

/** Flying geese: the patches, and the unit they make. */
export function geesePicture(
  width: Inches,
  method: GeeseMethod = "four at once",
  options: PictureOptions = {},
  units = 4,
): string {
  const { seam, usual, show } = settle(options);
  const mark = options.mark ?? (method === "corners" ? EXACT : usual.mark);
  const list = cutGeese(width, method, seam, mark, units);
  const patches = list
    .filter(({ patch }) => patch !== "unit made" && patch !== "waste triangle")
    .map(({ patch, width: across, length: down, count }, index): RowPiece => ({
      areas: [{ corners: rectangle(0, 0, across, down), fill: index === 0 ? 1 : 0, part: "cut" }],
      ...geeseLines(method, index, across, seam),
      across: show.length(across),
      ...(across === down ? {} : { down: show.length(down) }),
      words: [patch, `cut ${count}`],
    }));
  const unit = list[list.length - 1];
  const [w, h] = [unit.width, unit.length];
  const made: RowPiece = {
    areas: [
      { corners: rectangle(0, 0, w, h), fill: 0 },
      { corners: points([w / 2, seam], [w, h], [0, h]), fill: 1 },
    ],
    seams: rectangleLines(seam, seam, w - 2 * seam, h - 2 * seam),
    across: show.length(w),
    down: show.length(h),
    words: ["unit made", counted(unit.count, "unit")],
  };
  return pieceRow(
    `Flying geese that finish ${show.length(width)} wide`,
    [...patches, made],
    [`method: ${method}; dashed: sewn; solid: cut`],
  );
}

/** The lines across a patch of a goose: the first patch of the list is the goose itself, the second its sky. */
function geeseLines(method: GeeseMethod, index: number, cut: number, seam: number): Pick<RowPiece, "cuts" | "seams"> {
  if (method === "triangles") return { cuts: index === 0 ? diagonals(cut) : diagonals(cut).slice(0, 1) };
  if (index === 0) return {};
  if (method === "corners") return { seams: diagonals(cut).slice(0, 1) };
  return { cuts: diagonals(cut).slice(0, 1), seams: besideDiagonal(cut, seam) };
}

/** A square on point with four triangles round it: the patches and the unit. */
export function squareInSquarePicture(finished: Inches, options: PictureOptions = {}): string {
  const { seam, usual, show } = settle(options);
  const [center, corner, unit] = cutSquareInSquare(finished, seam, options.mark ?? usual.mark);
  const [mid, far] = [unit.width / 2, unit.width];
  const on = finished / 2;
  return pieceRow(`A square-in-square unit that finishes ${show.length(finished)}`, [
    {
      areas: [{ corners: square(center.width), fill: 1, part: "cut" }],
      across: show.length(center.width),
      words: [center.patch, `cut ${center.count}`],
    },
    {
      areas: [{ corners: square(corner.width), fill: 0, part: "cut" }],
      cuts: diagonals(corner.width).slice(0, 1),
      across: show.length(corner.width),
      words: [corner.patch, `cut ${corner.count}, halve them`],
    },
    {
      areas: [
        { corners: square(far), fill: 0 },
        { corners: points([mid, mid - on], [mid + on, mid], [mid, mid + on], [mid - on, mid]), fill: 1 },
      ],
      seams: rectangleLines(seam, seam, finished, finished),
      across: show.length(far),
      words: [unit.patch, "trim to this size"],
    },
  ]);
}

/** Ways to make units from squares that can be drawn. */
const DRAWN_WAYS: Partial<Record<UnitWay, MadeAtOnce>> = {
  "half square": 2,
  "half square four": 4,
  "half square eight": 8,
};

/** A pair of squares of the size cut, and the half-square unit that it really makes; undefined for other units. */
export function unitMadePicture(cut: Inches, how: UnitWay, options: PictureOptions = {}): string | undefined {
  const madeAtOnce = DRAWN_WAYS[how];
  if (madeAtOnce === undefined) return undefined;
  const { seam, show } = settle(options);
  const finished = inches(unitMade(cut, how, seam) - 2 * seam);
  return pieceRow(
    `Units from squares cut ${show.length(cut)}`,
    [sewnPair(cut, madeAtOnce, seam, show.length(cut)), halfSquareUnit(finished, seam, show)],
    ["dashed: sewn; solid: cut after sewing"],
  );
}

/** Two squares laid one on the other, with the lines to sew and to cut. */
function sewnPair(cut: number, madeAtOnce: MadeAtOnce, seam: number, measure: string): RowPiece {
  const [falling, rising] = diagonals(cut);
  const half = cut / 2;
  const lines = {
    1: { cuts: [falling], seams: [] },
    2: { cuts: [falling], seams: besideDiagonal(cut, seam) },
    4: { cuts: [falling, rising], seams: rectangleLines(seam, seam, cut - 2 * seam, cut - 2 * seam) },
    8: {
      cuts: [falling, rising, stretch(half, 0, half, cut), stretch(0, half, cut, half)],
      seams: [...besideDiagonal(cut, seam), ...besideDiagonal(cut, seam).map((line) => mirrored(line, cut))],
    },
  }[madeAtOnce];
  return {
    areas: [{ corners: square(cut), fill: 0, part: "cut" }],
    ...lines,
    across: measure,
    words: ["pair of squares", `makes ${madeAtOnce} units`],
  };
}

function halfSquareUnit(finished: number, seam: number, show: Show): RowPiece {
  const size = finished + 2 * seam;
  return {
    areas: [
      { corners: square(size), fill: 0, part: "unit" },
      { corners: points([size, 0], [size, size], [0, size]), fill: 1 },
    ],
    seams: rectangleLines(seam, seam, finished, finished),
    across: show.length(size),
    words: ["unit, unfinished", `finishes ${show.length(finished)}`],
  };
}

function square(size: number): Point[] {
  return rectangle(0, 0, size, size);
}

function stretch(x1: number, y1: number, x2: number, y2: number): Stretch {
  return [
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ];
}

/** Corner to corner, falling and rising to the right. */
function diagonals(size: number): [Stretch, Stretch] {
  return [stretch(0, 0, size, size), stretch(0, size, size, 0)];
}

/** The lines to sew on both sides of the falling diagonal. */
function besideDiagonal(size: number, seam: number): Stretch[] {
  const off = Math.min(size, Math.SQRT2 * seam);
  return [stretch(off, 0, size, size - off), stretch(0, off, size - off, size)];
}

function mirrored([from, to]: Stretch, size: number): Stretch {
  return [
    { x: size - from.x, y: from.y },
    { x: size - to.x, y: to.y },
  ];
}

function rectangleLines(left: number, top: number, width: number, height: number): Stretch[] {
  const corners = rectangle(left, top, width, height);
  return corners.map((_corner, index) => side(corners, index));
}

function inWords(count: MadeAtOnce): string {
  return { 1: "One", 2: "Two", 4: "Four", 8: "Eight" }[count];
}
