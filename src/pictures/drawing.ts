/**
 * A drawing to scale, as SVG text. Legible in black and white: fabrics differ by hatch as well as by color, a cut line is
 * solid, a seam line dashed, and every measure stands in words beside its line.
 */
import { fits } from "../math/rounding";
import { colorOf, hatchName, hatchOf, hatchPattern, INK, inkOn, PAPER } from "./fabrics";
import { escape, pixels, SMALL_SIZE, TEXT_SIZE, textWidth, TITLE_SIZE } from "./lettering";

export interface Point {
  x: number;
  y: number;
}

/** How an area is filled. Fabrics are numbered. */
export type Fill = "none" | "paper" | number;

const MARGIN = 12;
const SWATCH = 16;
const LEGEND_LINE = 22;
const NOTE_LINE = 19;

export interface LineStyle {
  /** Dashed for a seam line, solid for a cut line. */
  dashed?: boolean;
  /** Thin for help lines, and where many lines lie close together. */
  thin?: boolean;
  /** What is drawn, as the class of the shape. */
  part?: string;
}

export interface TextStyle {
  anchor?: "start" | "middle" | "end";
  bold?: boolean;
  small?: boolean;
  /** Degrees, clockwise. */
  turned?: number;
  /** A pale ground behind the text, where it lies on a hatch. */
  ground?: boolean;
}

const NOWHERE: Point = { x: 0, y: 0 };

/** Collects shapes in the maker's measure and writes them as one SVG. The y axis points down. */
export class Drawing {
  private readonly shapes: string[] = [];
  /** Hatches in use, by their names. */
  private readonly hatches = new Map<string, string>();
  private readonly box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  private readonly legends: { fill: Fill; words: string }[] = [];
  private readonly notes: string[] = [];

  /**
   * @param title what the picture shows, in a few words
   * @param description the same for those who cannot see it, with the measures
   * @param scale pixels for one unit of the drawing's measure
   */
  constructor(
    private readonly title: string,
    private readonly description: string,
    private readonly scale: number,
    /** Colors that the maker gave to fabrics, as six digits: #c0392b. */
    private readonly colors: ReadonlyMap<number, string> = new Map(),
  ) {}

  /** A number of pixels in the drawing's measure: room for words, whatever the scale. */
  pixels(count: number): number {
    return count / this.scale;
  }

  /** Whether words find room along a stretch of the drawing. */
  hasRoom(words: string, along: number, style: TextStyle = {}): boolean {
    return textWidth(words, sizeOf(style)) + 6 <= along * this.scale;
  }

  /** A closed shape. */
  polygon(corners: readonly Point[], fill: Fill, style: LineStyle = {}): this {
    const points = corners.map((corner) => this.place(corner)).map(({ x, y }) => `${pixels(x)},${pixels(y)}`);
    const outline = `points="${points.join(" ")}"`;
    const part = style.part === undefined ? "" : ` class="${style.part}"`;
    const own = typeof fill === "number" ? this.colors.get(fill) : undefined;
    const ink = own === undefined ? INK : inkOn(own);
    this.shapes.push(`<polygon ${outline}${part} ${stroke(style, ink)} fill="${own ?? colorIn(fill)}"/>`);
    const hatch = typeof fill === "number" ? hatchOf(fill) : 0;
    if (hatch > 0) {
      const name = hatchName(hatch, ink);
      this.hatches.set(name, hatchPattern(hatch, ink));
      this.shapes.push(`<polygon ${outline} fill="url(#${name})" stroke="none"/>`);
    }
    return this;
  }

  rectangle(left: number, top: number, width: number, height: number, fill: Fill, style: LineStyle = {}): this {
    return this.polygon(rectangle(left, top, width, height), fill, style);
  }

  line(from: Point, to: Point, style: LineStyle = {}): this {
    const [a, b] = [this.place(from), this.place(to)];
    this.shapes.push(
      `<path d="M${pixels(a.x)} ${pixels(a.y)}L${pixels(b.x)} ${pixels(b.y)}" ${stroke(style)} fill="none"/>`,
    );
    return this;
  }

  /** Text whose middle line runs through the point. `shift` moves it by pixels, so that it clears a line. */
  text(at: Point, words: string, style: TextStyle = {}, shift: Point = NOWHERE): this {
    const { anchor = "middle", turned = 0, ground = false, bold = false, small = false } = style;
    const size = sizeOf(style);
    const [x, y] = [at.x * this.scale + shift.x, at.y * this.scale + shift.y];
    const width = textWidth(words, size);
    const left = anchor === "start" ? 0 : anchor === "end" ? -width : -width / 2;
    this.reachTurned({ x, y }, turned, { left, right: left + width, half: size * 0.7 });
    const turn = turned === 0 ? "" : ` transform="rotate(${pixels(turned)} ${pixels(x)} ${pixels(y)})"`;
    if (ground) {
      const extent = `width="${pixels(width + 6)}" height="${size + 5}" rx="2"`;
      const corner = `x="${pixels(x + left - 3)}" y="${pixels(y - size / 2 - 2.5)}"`;
      this.shapes.push(`<rect ${corner} ${extent} fill="${PAPER}" fill-opacity="0.85"${turn}/>`);
    }
    const weight = bold ? ' font-weight="600"' : "";
    const smaller = small ? ` font-size="${SMALL_SIZE}"` : "";
    this.shapes.push(
      `<text x="${pixels(x)}" y="${pixels(y)}" text-anchor="${anchor}" dominant-baseline="central"${weight}${smaller}${turn}>${escape(words)}</text>`,
    );
    return this;
  }

  /**
   * A measure: a thin line with end marks beside the stretch, and its words; along the line where they find room there, else
   * level beside it.
   *
   * @param from start of the stretch
   * @param to end of the stretch
   * @param words the measure, such as "3 7/8 in"
   * @param away pixels from the stretch, to the left hand when looking from start to end; negative for the right hand
   */
  measure(from: Point, to: Point, words: string, away: number): this {
    const { normal } = frameOf(from, to);
    const shifted = (point: Point, by: number) => ({ x: point.x + normal.x * by, y: point.y + normal.y * by });
    const [start, end] = [from, to].map((point) => shifted(point, this.pixels(away)));
    this.line(start, end, { thin: true });
    for (const at of [start, end]) this.line(shifted(at, this.pixels(-4)), shifted(at, this.pixels(4)), { thin: true });
    return this.textAlong(from, to, words, away + Math.sign(away) * TEXT_SIZE * 0.9);
  }

  /**
   * Words beside a stretch, along it where they find room there, else level.
   *
   * @param away pixels from the stretch to the middle of the words, as for `measure`
   */
  textAlong(from: Point, to: Point, words: string, away: number, style: TextStyle = {}): this {
    const { normal, length, angle } = frameOf(from, to);
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const level = Math.abs(angle) < 1;
    if (level || this.hasRoom(words, length, style)) {
      const shift = { x: normal.x * away, y: normal.y * away };
      return this.text(middle, words, { ...style, turned: level ? 0 : angle }, shift);
    }
    const side = normal.x * Math.sign(away);
    const clear = Math.abs(away) - TEXT_SIZE * 0.4;
    const shift = { x: normal.x * Math.sign(away) * clear, y: normal.y * Math.sign(away) * clear };
    return this.text(middle, words, { ...style, anchor: side > 0 ? "start" : "end" }, shift);
  }

  /** A line of the legend below the drawing: a swatch and what it stands for. */
  legend(fill: Fill, words: string): this {
    this.legends.push({ fill, words });
    return this;
  }

  /** A line of text at the foot. */
  note(words: string): this {
    this.notes.push(words);
    return this;
  }

  /** The drawing as one SVG document, with a margin all round. */
  svg(): string {
    this.writeLegend();
    this.notes.forEach((words, index) => {
      const at = { x: this.box.left, y: this.box.bottom + NOTE_LINE / 2 + (index === 0 ? 6 : 0) };
      this.text({ x: at.x / this.scale, y: at.y / this.scale }, words, { anchor: "start" });
    });
    const head = TITLE_SIZE * 2;
    const titleWidth = textWidth(this.title, TITLE_SIZE * 1.06);
    const width = Math.max(this.box.right - this.box.left, titleWidth) + 2 * MARGIN;
    const height = this.box.bottom - this.box.top + 2 * MARGIN + head;
    const [left, top] = [this.box.left - MARGIN, this.box.top - MARGIN - head];
    const patterns = [...this.hatches.values()].join("");
    const [x, y, across, down] = [left, top, width, height].map((value) => Math.round(value));
    return (
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x} ${y} ${across} ${down}" width="${across}" height="${down}" ` +
      `role="img" font-family="system-ui, -apple-system, 'Segoe UI', sans-serif" font-size="${TEXT_SIZE}" fill="${INK}">` +
      `<title>${escape(this.title)}</title><desc>${escape(this.description)}</desc>` +
      (patterns === "" ? "" : `<defs>${patterns}</defs>`) +
      `<rect x="${x}" y="${y}" width="${across}" height="${down}" fill="${PAPER}"/>` +
      `<text x="${pixels(left + MARGIN)}" y="${pixels(top + MARGIN + TITLE_SIZE / 2)}" dominant-baseline="central" ` +
      `font-weight="600" font-size="${TITLE_SIZE}">${escape(this.title)}</text>` +
      `${this.shapes.join("")}</svg>\n`
    );
  }

  /** Swatches in as many columns as the drawing is wide. */
  private writeLegend(): void {
    if (this.legends.length === 0) return;
    const column = Math.max(...this.legends.map(({ words }) => textWidth(words))) + SWATCH + 28;
    const columns = Math.max(1, fits(column, this.box.right - this.box.left));
    const { left, bottom } = this.box;
    this.legends.forEach(({ fill, words }, index) => {
      const place = index % columns;
      const [x, y] = [left + place * column, bottom + 8 + ((index - place) / columns) * LEGEND_LINE];
      const [corner, side] = [{ x: this.pixels(x), y: this.pixels(y) }, this.pixels(SWATCH)];
      this.rectangle(corner.x, corner.y, side, side, fill, { thin: true });
      const middle = { x: corner.x + side, y: corner.y + side / 2 };
      this.text(middle, words, { anchor: "start" }, { x: 8, y: 0 });
    });
  }

  private place(point: Point): Point {
    const placed = { x: point.x * this.scale, y: point.y * this.scale };
    this.reach(placed);
    return placed;
  }

  /** Makes room for a text that is turned round its anchor. */
  private reachTurned(at: Point, turned: number, extent: { left: number; right: number; half: number }): void {
    const [sine, cosine] = [Math.sin((turned * Math.PI) / 180), Math.cos((turned * Math.PI) / 180)];
    for (const x of [extent.left, extent.right]) {
      for (const y of [-extent.half, extent.half]) {
        this.reach({ x: at.x + x * cosine - y * sine, y: at.y + x * sine + y * cosine });
      }
    }
  }

  private reach({ x, y }: Point): void {
    this.box.left = Math.min(this.box.left, x);
    this.box.right = Math.max(this.box.right, x);
    this.box.top = Math.min(this.box.top, y);
    this.box.bottom = Math.max(this.box.bottom, y);
  }
}

/** The corners of an upright rectangle, clockwise on the page. */
export function rectangle(left: number, top: number, width: number, height: number): Point[] {
  const [right, bottom] = [left + width, top + height];
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** Length of a stretch, the direction to its left hand, and the angle at which words along it can be read. */
function frameOf(from: Point, to: Point): { length: number; normal: Point; angle: number } {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(x, y);
  const normal = length === 0 ? { x: 0, y: -1 } : { x: y / length, y: -x / length };
  const degrees = (Math.atan2(y, x) * 180) / Math.PI;
  // From the bottom up rather than from the top down, and never upside down.
  const angle = degrees >= 89.5 ? degrees - 180 : degrees < -90.5 ? degrees + 180 : degrees;
  return { length, normal, angle };
}

function sizeOf({ small = false }: TextStyle): number {
  return small ? SMALL_SIZE : TEXT_SIZE;
}

function colorIn(fill: Fill): string {
  if (fill === "none") return "none";
  return fill === "paper" ? PAPER : colorOf(fill);
}

function stroke({ dashed = false, thin = false }: LineStyle, ink = INK): string {
  const dash = dashed ? ' stroke-dasharray="5 4"' : "";
  return `stroke="${ink}" stroke-width="${thin ? 0.8 : 1.6}"${dash} stroke-linejoin="round"`;
}
