/** Strips: the patches and triangles cut from one, and strip sets with their segments. */
import { counted } from "../math/counted";
import { requirePositive } from "../math/problem";
import { sewnTogether } from "../math/seams";
import { fits } from "../math/rounding";
import { stripPatches, stripSets, stripTriangles } from "../math/strips";
import { type Inches, inches } from "../math/units";
import { points } from "./cutShapes";
import { Drawing } from "./drawing";
import { type PictureOptions, settle } from "./options";

export interface StripOptions extends PictureOptions {
  /** usable width of the fabric, which is the length of a strip, inches */
  width?: Inches;
  /** length lost where the end of the strip is squared, inches */
  squaring?: Inches;
}

/** Length of a strip as drawn, and the highest that one is drawn, pixels. */
const DRAWN_LENGTH = 620;
const DRAWN_HEIGHT = 240;

/** Narrower pieces than this are not drawn one by one, pixels. */
const NARROWEST = 3;

/** Square patches on one strip, with what is left at its end. */
export function stripPatchesPicture(patch: Inches, options: StripOptions = {}): string {
  const { usual, show } = settle(options);
  const { width = usual.fabricWidth, squaring = inches(0) } = options;
  const count = stripPatches(patch, width, squaring);
  const left = width - squaring - count * patch;
  const title = `${counted(count, "patch", "patches")} of ${show.length(patch)} from one strip`;
  const scale = scaleFor(width, patch);
  const drawing = new Drawing(title, `${title} of ${show.length(width)}, ${show.length(left)} left`, scale);
  drawStrip(drawing, width, patch, squaring);
  if (patch * scale >= NARROWEST) {
    for (let piece = 0; piece < count; piece += 1) {
      drawing.rectangle(squaring + piece * patch, 0, patch, patch, 1, { part: "piece" });
    }
  } else drawing.rectangle(squaring, 0, count * patch, patch, 1);
  measureStrip(drawing, width, show.length(width));
  drawing.note(`${show.length(left)} left at the end`);
  if (squaring > 0) drawing.note(`${show.length(squaring)} cut off to square the end`);
  return drawing.svg();
}

/** Triangles cut head to tail from one strip. */
export function stripTrianglesPicture(height: Inches, base?: Inches, options: StripOptions = {}): string {
  const { usual, show } = settle(options);
  const { width = usual.fabricWidth, squaring = inches(0) } = options;
  const count = stripTriangles(height, base, width, squaring);
  const across = base ?? (2 * height) / Math.sqrt(3);
  const title = `${counted(count, "triangle")} from one strip`;
  const facts = `strip ${show.length(height)} wide, base ${show.length(across)}`;
  const scale = scaleFor(width, height);
  const drawing = new Drawing(title, `${title}: ${facts}, cut head to tail`, scale);
  drawStrip(drawing, width, height, squaring);
  const drawn = across * scale >= 2 * NARROWEST ? count : 0;
  for (let piece = 0; piece < drawn; piece += 1) {
    const left = squaring + (piece * across) / 2;
    const [foot, tip] = piece % 2 === 0 ? [height, 0] : [0, height];
    const corners = points([left, foot], [left + across / 2, tip], [left + across, foot]);
    drawing.polygon(corners, piece % 2 === 0 ? 1 : 2, { part: "piece" });
  }
  measureStrip(drawing, width, show.length(width));
  drawing.measure({ x: 0, y: height }, { x: 0, y: 0 }, show.length(height), 12);
  const first = { x: squaring, y: height };
  drawing.measure({ x: squaring + across, y: height }, first, `base ${show.length(across)}`, 12);
  return drawing.svg();
}

/** Strips sewn side by side, with the segments cut across them if any are asked for. */
export function stripSetPicture(widths: readonly Inches[], options: StripOptions & { segment?: Inches } = {}): string {
  const { usual, seam, show } = settle(options);
  const { width = usual.fabricWidth, squaring = inches(0), segment } = options;
  requirePositive("width", width);
  const height = sewnTogether("strip", widths, seam);
  const title = `A set of ${counted(widths.length, "strip")}`;
  const scale = scaleFor(width, height);
  const drawing = new Drawing(title, `${title}, ${show.length(height)} wide once sewn`, scale);
  let top = 0;
  widths.forEach((strip, index) => {
    const seams = Number(index > 0) + Number(index < widths.length - 1);
    drawing.rectangle(0, top, width, strip - seams * seam, index % 2, { part: "strip" });
    top += strip - seams * seam;
  });
  if (segment !== undefined) drawSegments(drawing, { width, height, squaring, segment }, scale, show.length(segment));
  measureStrip(
    drawing,
    width,
    `${show.length(width)}${options.width === undefined ? ", the usual width of fabric" : ""}`,
  );
  drawing.measure({ x: 0, y: height }, { x: 0, y: 0 }, show.length(height), 12);
  drawing.note(`strips cut ${widths.map((strip) => show.length(strip)).join(", ")}`);
  return drawing.svg();
}

function drawSegments(
  drawing: Drawing,
  { width, height, squaring, segment }: { width: Inches; height: number; squaring: Inches; segment: Inches },
  scale: number,
  words: string,
): void {
  // One segment at least must come out of a set; counting the sets for one refuses anything else.
  stripSets(1, segment, width, squaring);
  const count = fits(segment, width - squaring);
  const drawn = segment * scale >= NARROWEST ? count : 0;
  for (let cut = 0; cut <= drawn; cut += 1) {
    const x = squaring + cut * segment;
    drawing.line({ x, y: 0 }, { x, y: height });
  }
  drawing.measure({ x: squaring + segment, y: height }, { x: squaring, y: height }, `segment ${words}`, 12);
  drawing.note(`${counted(count, "segment")} from one set`);
}

function drawStrip(drawing: Drawing, width: number, height: number, squaring: number): void {
  drawing.rectangle(0, 0, width, height, "paper");
  if (squaring > 0) drawing.line({ x: squaring, y: 0 }, { x: squaring, y: height });
}

function measureStrip(drawing: Drawing, width: number, words: string): void {
  drawing.measure({ x: 0, y: 0 }, { x: width, y: 0 }, words, 12);
}

function scaleFor(width: number, height: number): number {
  return Math.min(DRAWN_LENGTH / width, DRAWN_HEIGHT / height);
}
