/** Borders: the pieces by the way the corners are made, and whole units fitted round a quilt. */
import {
  type BorderFit,
  borderFit,
  borderLengths,
  borderMeasured,
  borderSize,
  type CornerOptions,
  easedText,
  type FitOptions,
} from "../math/borders";
import { counted } from "../math/counted";
import { Problem } from "../math/problem";
import type { Show } from "../math/show";
import type { Inches, System } from "../math/units";
import { points } from "./cutShapes";
import { Drawing, type Point, rectangle } from "./drawing";
import { type PictureOptions, settle } from "./options";

/** Longer side of a quilt with its border as drawn, pixels. */
const DRAWN_SIZE = 320;

/** Narrower units are drawn as one band, pixels; more than these are not drawn at all. */
const NARROWEST = 3;
const MOST_DRAWN = 2000;

/** A quilt with its border, and what to cut for it. */
export function borderLengthsPicture(
  width: Inches,
  length: Inches,
  border: Inches,
  options: CornerOptions & { system?: System } = {},
): string {
  const { seam, show } = settle(options);
  const { corner = "butted" } = options;
  const cuts = borderLengths(width, length, border, { ...options, seam });
  const outside = borderSize(width, length, border);
  const title = `Border of ${show.length(border)}, corners ${corner === "cornerstones" ? "with cornerstones" : corner}`;
  const facts = cuts.map(
    (cut) => `${cut.piece}: cut ${cut.count} of ${show.length(cut.width)} × ${show.length(cut.length)}`,
  );
  const drawing = new Drawing(
    title,
    `${title}; ${facts.join("; ")}`,
    DRAWN_SIZE / Math.max(outside.width, outside.length),
  );
  drawing.rectangle(border, border, width, length, 0, { part: "quilt" });
  const { sides, ends, stones } = borderShapes(outside, border, corner);
  for (const corners of sides) drawing.polygon(corners, 1, { part: "side" });
  for (const corners of ends) drawing.polygon(corners, 2, { part: "end" });
  for (const corners of stones) drawing.polygon(corners, 6, { part: "cornerstone" });
  const inside = `${show.length(width)} × ${show.length(length)}`;
  drawing.text({ x: outside.width / 2, y: outside.length / 2 }, inside, { ground: true });
  measureOutside(drawing, outside, show);
  facts.forEach((words, index) => drawing.legend([1, 2, 6][index], words));
  if (seam > 0) drawing.note(`cut with seams of ${show.length(seam)}`);
  return drawing.svg();
}

function borderShapes(
  { width, length }: { width: number; length: number },
  border: number,
  corner: NonNullable<CornerOptions["corner"]>,
): { sides: Point[][]; ends: Point[][]; stones: Point[][] } {
  const [right, bottom] = [width - border, length - border];
  if (corner === "mitered") {
    return {
      sides: [
        points([0, 0], [border, border], [border, bottom], [0, length]),
        points([width, 0], [width, length], [right, bottom], [right, border]),
      ],
      ends: [
        points([0, 0], [width, 0], [right, border], [border, border]),
        points([0, length], [border, bottom], [right, bottom], [width, length]),
      ],
      stones: [],
    };
  }
  const sides = [0, right].map((left) => rectangle(left, border, border, length - 2 * border));
  const [from, across] = corner === "butted" ? [0, width] : [border, width - 2 * border];
  const ends = [0, bottom].map((top) => rectangle(from, top, across, border));
  const stones = [0, right].flatMap((left) => [0, bottom].map((top) => rectangle(left, top, border, border)));
  return { sides, ends, stones: corner === "cornerstones" ? stones : [] };
}

/**
 * A quilt measured in three places, one way across, for a border of one length.
 *
 * @param measured raw edge to raw edge along one edge, through the middle and along the other edge, inches
 */
export function borderMeasuredPicture(
  measured: readonly [Inches, Inches, Inches],
  options: PictureOptions & {
    /** how far the three may differ before the picture warns, inches */
    spread?: Inches;
  } = {},
): string {
  const { usual, show } = settle(options);
  const { mark = usual.mark, spread: most = usual.spread } = options;
  const { length, spread, outOfSquare } = borderMeasured(measured, mark, most);
  const title = `Borders cut ${show.length(length)} from three measurements`;
  const apart = `the measurements differ by ${show.length(spread)}${outOfSquare ? ": the quilt is out of square" : ""}`;
  const drawing = new Drawing(title, `${title}: ${measured.map((one) => show.length(one)).join(", ")}; ${apart}`, 1);
  const [width, height] = [210, 280];
  drawing.rectangle(0, 0, width, height, 0, { part: "quilt" });
  const places = [0.12, 0.5, 0.88];
  measured.forEach((one, index) => {
    const x = places[index] * width;
    for (const y of [0, height]) drawing.line({ x: x - 5, y }, { x: x + 5, y });
    drawing.line({ x, y: 0 }, { x, y: height }, { thin: true });
    drawing.text({ x, y: height / 2 }, show.length(one), { turned: -90, ground: true });
  });
  drawing.note(`not to scale: the mean of the three${mark > 0 ? ", up to the next ruler mark" : ""}`);
  drawing.note(apart);
  return drawing.svg();
}

/** A border of whole units: units, corner units, and the spacers that make them fit. */
export function borderFitPicture(
  width: Inches,
  length: Inches,
  unit: Inches,
  options: FitOptions & { seam?: Inches; system?: System } = {},
): string {
  const { usual, seam, show } = settle(options);
  const { depth = unit, mark = usual.mark } = options;
  const fit = borderFit(width, length, unit, { ...options, mark });
  if (fit.units > MOST_DRAWN) {
    throw new Problem("no answer", `${fit.units} units are too many to draw; at most ${MOST_DRAWN} are drawn`);
  }
  const { across, down, outside } = fit;
  const title = `Units of ${show.length(unit)} round a quilt of ${show.length(width)} × ${show.length(length)}`;
  const facts = [
    `${counted(across.units, "unit")} each along top and bottom`,
    `${counted(down.units, "unit")} along each side`,
    `${fit.units} in all`,
    `outside ${show.length(outside.width)} × ${show.length(outside.length)}`,
  ];
  const scale = DRAWN_SIZE / Math.max(outside.width, outside.length);
  const drawing = new Drawing(title, `${title}: ${facts.join(", ")}`, scale);
  drawCenter(drawing, fit, depth, `quilt ${show.length(width)} × ${show.length(length)}`);
  drawUnits(drawing, fit, { unit, depth }, scale);
  measureOutside(drawing, outside, show);
  drawing.legend(1, facts[0]).legend(2, facts[1]).legend(6, "4 at the corners");
  for (const [{ spacer }, words] of [
    [across, "spacers at the sides"],
    [down, "spacers at top and bottom"],
  ] as const) {
    if (spacer > 0) drawing.legend(4, `${words}: finish ${show.length(spacer)}, cut ${show.length(spacer + 2 * seam)}`);
  }
  for (const [{ eased }, words] of [
    [across, "width"],
    [down, "length"],
  ] as const) {
    if (eased !== 0) drawing.note(`units along the ${words}: ${easedText(show, eased)}`);
  }
  return drawing.svg();
}

/** The quilt with its spacers: first those at the sides, then those across top and bottom. */
function drawCenter(drawing: Drawing, { across, down }: BorderFit, depth: number, words: string): void {
  const [width, length] = [across.covered - 2 * across.spacer, down.covered - 2 * down.spacer];
  const [left, top] = [depth + across.spacer, depth + down.spacer];
  drawing.rectangle(left, top, width, length, 0, { part: "quilt" });
  const style = { thin: true, part: "spacer" };
  if (across.spacer > 0) {
    for (const x of [depth, left + width]) drawing.rectangle(x, top, across.spacer, length, 4, style);
  }
  if (down.spacer > 0) {
    for (const y of [depth, top + length]) drawing.rectangle(depth, y, across.covered, down.spacer, 4, style);
  }
  drawing.text({ x: left + width / 2, y: top + length / 2 }, words, { ground: true });
}

function drawUnits(
  drawing: Drawing,
  { across, down, outside }: BorderFit,
  { unit, depth }: { unit: number; depth: number },
  scale: number,
): void {
  const style = { thin: true, part: "unit" };
  const single = unit * scale >= NARROWEST;
  const along = (units: number) => (single ? { count: units, size: unit } : { count: 1, size: units * unit });
  const [columns, rows] = [along(across.units), along(down.units)];
  for (const y of [0, outside.length - depth]) {
    for (let index = 0; index < columns.count; index += 1) {
      drawing.rectangle(depth + index * columns.size, y, columns.size, depth, 1, style);
    }
  }
  for (const x of [0, outside.width - depth]) {
    for (let index = 0; index < rows.count; index += 1) {
      drawing.rectangle(x, depth + index * rows.size, depth, rows.size, 2, style);
    }
    for (const y of [0, outside.length - depth]) drawing.rectangle(x, y, depth, depth, 6, style);
  }
}

function measureOutside(drawing: Drawing, { width, length }: { width: number; length: number }, show: Show): void {
  drawing.measure({ x: 0, y: 0 }, { x: width, y: 0 }, show.length(width), 12);
  drawing.measure({ x: 0, y: length }, { x: 0, y: 0 }, show.length(length), 12);
}
