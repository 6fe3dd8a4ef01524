/** Binding: how two strips are joined on the diagonal, and the square that gives one continuous bias strip. */
import { biasLength } from "../math/binding";
import { requireNotNegative, requirePositive } from "../math/problem";
import { fits } from "../math/rounding";
import type { Inches } from "../math/units";
import { points, type Stretch } from "./cutShapes";
import { Drawing } from "./drawing";
import { type PictureOptions, settle } from "./options";
import { pieceRow } from "./pieceRow";

/** More lines than these could not be told apart. */
const MOST_LINES = 60;

/** Two strips crossed at right angles: the seam from corner to corner, and what is trimmed beyond it. */
export function diagonalJoinPicture(strip: Inches, options: PictureOptions = {}): string {
  const { seam, show } = settle(options);
  requirePositive("strip", strip);
  requireNotNegative("seam", seam);
  const title = `Strips of ${show.length(strip)} joined on the diagonal`;
  const drawing = new Drawing(title, `${title}: each join takes ${show.length(strip)} of length`, 80 / strip);
  drawing.rectangle(-1.6 * strip, 0, 2.6 * strip, strip, 0, { part: "strip" });
  drawing.rectangle(0, 0, strip, 2.6 * strip, 1, { part: "strip" });
  drawing.line({ x: 0, y: 0 }, { x: strip, y: strip }, { dashed: true });
  const off = Math.min(strip, Math.SQRT2 * seam);
  drawing.line({ x: off, y: 0 }, { x: strip, y: strip - off });
  drawing.measure({ x: 0, y: 0 }, { x: strip, y: 0 }, `${show.length(strip)} lost`, 12);
  drawing.measure({ x: -1.6 * strip, y: strip }, { x: -1.6 * strip, y: 0 }, show.length(strip), 12);
  drawing.note("right sides together, corner to corner");
  drawing.note(`dashed: sewn; solid: trimmed ${show.length(seam)} beyond`);
  return drawing.svg();
}

/** The square halved on its diagonal, and the slanting cloth sewn from the halves with the strips marked on it. */
export function biasSquarePicture(square: Inches, strip: Inches, options: PictureOptions = {}): string {
  const { seam, show } = settle(options);
  const length = biasLength(square, strip, seam);
  const sewn = square - 2 * seam;
  const step = strip * Math.SQRT2;
  const lines = Math.min(MOST_LINES, fits(step, sewn));
  const marks = Array.from({ length: lines }, (_, index): Stretch => {
    const x = (index + 1) * step;
    const [from, to] = points([x, 0], [x + sewn, sewn]);
    return [from, to];
  });
  const [nw, ne, se, sw] = points([0, 0], [square, 0], [square, square], [0, square]);
  return pieceRow(
    `Continuous bias from a square of ${show.length(square)}`,
    [
      {
        areas: [
          { corners: [nw, ne, se, sw], fill: 0, part: "cut" },
          { corners: [nw, ne, se], fill: 1 },
        ],
        cuts: [[nw, se]],
        across: show.length(square),
        words: ["1: halve the square"],
      },
      {
        areas: [
          { corners: points([0, 0], [sewn, 0], [2 * sewn, sewn], [sewn, sewn]), fill: 1, part: "sewn" },
          { corners: points([sewn, 0], [2 * sewn, sewn], [sewn, sewn]), fill: 0 },
        ],
        cuts: marks,
        words: ["2: sew the straight sides", `mark lines ${show.length(strip)} apart`],
      },
    ],
    [
      "3: sew the other two sides to a tube, one line off; cut round along the lines",
      `gives ${show.length(length)} of strip`,
    ],
  );
}
