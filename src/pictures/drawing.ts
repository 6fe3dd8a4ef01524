/**
 * A drawing to scale, as SVG text. Legible in black and white: fabrics differ by hatch as well as by color, a cut line is
 * solid, a seam line dashed, and every measure stands in words beside its line.
 */
export interface Point {
  x: number;
  y: number;
}

/** How an area is filled. Fabrics are numbered; each number has a color and a hatch of its own. */
export type Fill = "none" | "paper" | number;

const INK = "#1f2328";
const PAPER = "#ffffff";
const TEXT_SIZE = 13;
const TITLE_SIZE = 15;

/** One color and one hatch for each fabric; the hatch lines are dark enough to copy in gray. */
const FABRICS: { color: string; hatch: string }[] = [
  { color: "#f3ead8", hatch: "" },
  { color: "#cfe3ea", hatch: '<path d="M0 8 8 0"/>' },
  { color: "#f0cdb8", hatch: '<circle cx="4" cy="4" r="1.1" fill="#1f2328" stroke="none"/>' },
  { color: "#d7e4c7", hatch: '<path d="M0 4H8"/>' },
  { color: "#dcd3ec", hatch: '<path d="M0 0 8 8"/>' },
  { color: "#f2dd9d", hatch: '<path d="M4 0V8"/>' },
  { color: "#cdd3da", hatch: '<path d="M0 8 8 0M0 0 8 8"/>' },
  { color: "#e8cfd8", hatch: '<path d="M0 4H8M4 0V8"/>' },
];

export interface LineStyle {
  /** Dashed for a seam line, solid for a cut line. */
  dashed?: boolean;
  /** Thin for help lines. */
  thin?: boolean;
}

export interface TextStyle {
  anchor?: "start" | "middle" | "end";
  bold?: boolean;
  /** Degrees, clockwise. */
  turned?: number;
  /** A pale ground behind the text, where it lies on a hatch. */
  ground?: boolean;
}

/** Collects shapes in the maker's measure and writes them as one SVG. The y axis points down. */
export class Drawing {
  private readonly shapes: string[] = [];
  private readonly used = new Set<number>();
  private readonly box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };

  /**
   * @param title what the picture shows, in a few words
   * @param description the same for those who cannot see it, with the measures
   * @param scale pixels for one unit of the drawing's measure
   */
  constructor(
    private readonly title: string,
    private readonly description: string,
    private readonly scale: number,
  ) {}

  /** A closed shape. */
  polygon(corners: readonly Point[], fill: Fill, style: LineStyle = {}): this {
    const points = corners.map((corner) => this.place(corner)).map(({ x, y }) => `${round(x)},${round(y)}`);
    const outline = `points="${points.join(" ")}" ${stroke(style)}`;
    this.shapes.push(`<polygon ${outline} fill="${this.color(fill)}"/>`);
    if (typeof fill === "number" && FABRICS[fill % FABRICS.length]?.hatch) {
      this.shapes.push(
        `<polygon points="${points.join(" ")}" fill="url(#hatch${fill % FABRICS.length})" stroke="none"/>`,
      );
    }
    return this;
  }

  rectangle(left: number, top: number, width: number, height: number, fill: Fill, style: LineStyle = {}): this {
    const [right, bottom] = [left + width, top + height];
    return this.polygon(
      [
        { x: left, y: top },
        { x: right, y: top },
        { x: right, y: bottom },
        { x: left, y: bottom },
      ],
      fill,
      style,
    );
  }

  line(from: Point, to: Point, style: LineStyle = {}): this {
    const [a, b] = [this.place(from), this.place(to)];
    this.shapes.push(
      `<path d="M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}" ${stroke(style)} fill="none"/>`,
    );
    return this;
  }

  /** Text whose middle line runs through the point. `shift` moves it by pixels, so that it clears a line. */
  text(at: Point, words: string, style: TextStyle = {}, shift: Point = { x: 0, y: 0 }): this {
    const placed = this.place(at);
    const [x, y] = [placed.x + shift.x, placed.y + shift.y];
    const width = textWidth(words);
    const anchor = style.anchor ?? "middle";
    const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
    const turn = style.turned ? ` transform="rotate(${style.turned} ${round(x)} ${round(y)})"` : "";
    if (style.turned) this.reach({ x: x - TEXT_SIZE, y: y - width / 2 }, { x: x + TEXT_SIZE, y: y + width / 2 });
    else this.reach({ x: left, y: y - TEXT_SIZE }, { x: left + width, y: y + TEXT_SIZE });
    if (style.ground) {
      const size = `width="${round(width + 6)}" height="${TEXT_SIZE + 5}"`;
      this.shapes.push(
        `<rect x="${round(left - 3)}" y="${round(y - TEXT_SIZE / 2 - 2.5)}" ${size} rx="2" fill="${PAPER}" fill-opacity="0.85"${turn}/>`,
      );
    }
    const weight = style.bold ? ' font-weight="600"' : "";
    this.shapes.push(
      `<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" dominant-baseline="central"${weight}${turn}>${escape(words)}</text>`,
    );
    return this;
  }

  /**
   * A measure: a thin line with end marks beside the stretch, and its words.
   *
   * @param from start of the stretch
   * @param to end of the stretch
   * @param words the measure, such as "3 7/8 in"
   * @param away pixels from the stretch, to the left hand when looking from start to end; negative for the right hand
   */
  measure(from: Point, to: Point, words: string, away: number): this {
    const [a, b] = [this.place(from), this.place(to)];
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const normal = { x: (b.y - a.y) / length, y: (a.x - b.x) / length };
    const shifted = (point: Point, by: number) => ({ x: point.x + normal.x * by, y: point.y + normal.y * by });
    const [c, d] = [shifted(a, away), shifted(b, away)];
    const mark = (at: Point) => {
      const [near, far] = [shifted(at, -4), shifted(at, 4)];
      return `M${round(near.x)} ${round(near.y)}L${round(far.x)} ${round(far.y)}`;
    };
    this.shapes.push(
      `<path d="M${round(c.x)} ${round(c.y)}L${round(d.x)} ${round(d.y)}${mark(c)}${mark(d)}" ${stroke({ thin: true })} fill="none"/>`,
    );
    this.reach(c, d);
    const steep = Math.abs(normal.x) > 0.9;
    const middle = shifted({ x: (c.x + d.x) / 2, y: (c.y + d.y) / 2 }, Math.sign(away) * (TEXT_SIZE * 0.9));
    const anchor = steep ? (normal.x * Math.sign(away) > 0 ? "start" : "end") : "middle";
    const at = { x: middle.x / this.scale, y: middle.y / this.scale };
    return this.text(at, words, { anchor }, steep ? { x: -Math.sign(normal.x * away) * 6, y: 0 } : { x: 0, y: 0 });
  }

  /** The drawing as one SVG document, with a margin all round. */
  svg(): string {
    const margin = 12;
    const head = TITLE_SIZE * 2;
    const width =
      Math.max(this.box.right - this.box.left, textWidth(this.title) * (TITLE_SIZE / TEXT_SIZE)) + 2 * margin;
    const height = this.box.bottom - this.box.top + 2 * margin + head;
    const [left, top] = [this.box.left - margin, this.box.top - margin - head];
    const view = [left, top, width, height].map((value) => Math.round(value)).join(" ");
    return (
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${view}" width="${Math.round(width)}" height="${Math.round(height)}" ` +
      `role="img" font-family="system-ui, -apple-system, 'Segoe UI', sans-serif" font-size="${TEXT_SIZE}" fill="${INK}">` +
      `<title>${escape(this.title)}</title><desc>${escape(this.description)}</desc>${this.hatches()}` +
      `<rect x="${Math.round(left)}" y="${Math.round(top)}" width="${Math.round(width)}" height="${Math.round(height)}" fill="${PAPER}"/>` +
      `<text x="${round(left + margin)}" y="${round(top + margin + TITLE_SIZE / 2)}" dominant-baseline="central" font-weight="600" font-size="${TITLE_SIZE}">${escape(this.title)}</text>` +
      `${this.shapes.join("")}</svg>\n`
    );
  }

  private hatches(): string {
    const patterns = [...this.used].map((fabric) => {
      const size = 'width="8" height="8" patternUnits="userSpaceOnUse"';
      return `<pattern id="hatch${fabric}" ${size}><g stroke="${INK}" stroke-width="0.7" stroke-opacity="0.55" fill="none">${FABRICS[fabric]?.hatch ?? ""}</g></pattern>`;
    });
    return patterns.length === 0 ? "" : `<defs>${patterns.join("")}</defs>`;
  }

  private color(fill: Fill): string {
    if (fill === "none") return "none";
    if (fill === "paper") return PAPER;
    const fabric = fill % FABRICS.length;
    this.used.add(fabric);
    return FABRICS[fabric]?.color ?? PAPER;
  }

  private place(point: Point): Point {
    const placed = { x: point.x * this.scale, y: point.y * this.scale };
    this.reach(placed, placed);
    return placed;
  }

  private reach(a: Point, b: Point): void {
    this.box.left = Math.min(this.box.left, a.x, b.x);
    this.box.right = Math.max(this.box.right, a.x, b.x);
    this.box.top = Math.min(this.box.top, a.y, b.y);
    this.box.bottom = Math.max(this.box.bottom, a.y, b.y);
  }
}

function stroke({ dashed = false, thin = false }: LineStyle): string {
  const dash = dashed ? ' stroke-dasharray="5 4"' : "";
  return `stroke="${INK}" stroke-width="${thin ? 0.8 : 1.6}"${dash} stroke-linejoin="round"`;
}

/** Width of a text in pixels; a little generous, so that nothing is cut off. */
function textWidth(words: string): number {
  return words.length * TEXT_SIZE * 0.56;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

function escape(words: string): string {
  return words.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}
