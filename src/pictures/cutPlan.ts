/**
 * A cut plan: every kind of strip once, with how many to cut of it, its pieces, what is trimmed and what is left. Kinds of
 * patch differ by letter, hatch and color; a list explains the letters.
 */
import { counted } from "../math/counted";
import type { Piece, Strip } from "../math/cutplan";
import type { Plan } from "../math/plans";
import { type Show, showing } from "../math/show";
import type { System } from "../math/units";
import { Drawing } from "./drawing";
import { fittingText, type FittingText, type Kind, kindsOf } from "./kinds";
import { TEXT_SIZE, textWidth } from "./lettering";

/** Width of the fabric as drawn, and the greatest height of a column of strips, pixels. */
const DRAWN_WIDTH = 430;
const HIGHEST = 1600;

/** Strips stand in as many columns as make the picture largest on a printed page, which is so much higher than wide. */
const PAGE_RATIO = 4 / 3;
const MOST_COLUMNS = 3;

/** Between two strips, from column to column, and beside a strip for its words, pixels. */
const GAP = 7;
const COLUMN_GAP = 26;
const USUAL_SIDE = 120;

/** The plan to scale; strips that are cut alike are drawn once. */
export function cutPlanPicture(title: string, plan: Plan, system: System = "in"): string {
  const picture = new PlanPicture(title, plan, showing(system));
  return picture.svg();
}

class PlanPicture {
  private readonly kinds: ReadonlyMap<number, Kind>;
  private readonly drawing: Drawing;
  private readonly scale: number;
  private readonly columns: number;

  constructor(
    title: string,
    private readonly plan: Plan,
    private readonly show: Show,
  ) {
    const { strips, stripCount } = plan.cuts;
    const whole = DRAWN_WIDTH / plan.fabricWidth;
    const height = this.columnHeight(whole);
    this.columns = columnsFor(height);
    this.scale = whole * Math.min(1, (HIGHEST * this.columns) / height);
    const rows = strips.flatMap(({ pieces }) => pieces.map(({ row }) => row));
    this.kinds = kindsOf(rows, (row) => kindWords(plan, row, show));
    const facts = `${counted(stripCount, "strip takes", "strips take")} ${show.length(plan.length)} of fabric ${show.length(plan.fabricWidth)} wide`;
    const listed = strips.map((strip) => this.stripWords(strip)).join("; ");
    this.drawing = new Drawing(title, `${title}: ${facts}: ${listed}`, this.scale);
  }

  svg(): string {
    const { drawing, plan, show, columns } = this;
    const { strips, stripCount } = plan.cuts;
    const share = this.columnHeight(this.scale) / columns;
    const side = 20 + Math.max(0, ...strips.flatMap((strip) => this.captions(strip).map((line) => textWidth(line))));
    let [column, top] = [0, 0];
    for (const strip of strips) {
      const height = strip.height * plan.mark;
      // A column is full where the middle of the next strip would lie beyond its share.
      if (column < columns - 1 && (top + height / 2) * this.scale > share) {
        column += 1;
        top = 0;
      }
      const left = column * (plan.fabricWidth + drawing.pixels(side + COLUMN_GAP));
      if (top === 0) this.measureWidth(left);
      this.drawStrip(strip, left, top);
      top += height + drawing.pixels(GAP);
    }
    for (const { key, fill, words } of this.kinds.values()) drawing.legend(fill, `${key}  ${words}`);
    drawing.note("dashed: trim to height; white: trimmed off or left over");
    const squaring = plan.squaring > 0 ? `, ${show.length(plan.squaring)} of it to square up` : "";
    drawing.note(`${counted(stripCount, "strip")}, ${show.length(plan.length)} of fabric${squaring}`);
    return drawing.svg();
  }

  private measureWidth(left: number): void {
    const width = this.plan.fabricWidth;
    this.drawing.measure({ x: left, y: 0 }, { x: left + width, y: 0 }, `${this.show.length(width)} of fabric`, 12);
  }

  private drawStrip(strip: Strip, left: number, top: number): void {
    const { drawing, plan } = this;
    const height = strip.height * plan.mark;
    drawing.rectangle(left, top, plan.fabricWidth, height, "paper", { part: "strip" });
    let x = left;
    for (const piece of strip.pieces) {
      const [across, along] = [piece.across * plan.mark, piece.along * plan.mark];
      const words = this.wordsOn(piece);
      for (let copy = 0; copy < piece.count; copy += 1) {
        this.drawPiece(piece, { x, top, height });
        if (words !== undefined) drawing.text({ x: x + across / 2, y: top + along / 2 }, words.text, words.style);
        x += across;
      }
    }
    const middle = top + height / 2;
    this.writeLeft(strip.left * plan.mark, height, { x, y: middle });
    const lines = this.captions(strip);
    lines.forEach((line, index) => {
      const shift = { x: 8, y: (index - (lines.length - 1) / 2) * 16 };
      drawing.text({ x: left + plan.fabricWidth, y: middle }, line, { anchor: "start", bold: index === 0 }, shift);
    });
  }

  /** A piece in the upper part of its cut; what is trimmed off lies below it. */
  private drawPiece(piece: Piece, { x, top, height }: { x: number; top: number; height: number }): void {
    const [across, along] = [piece.across * this.plan.mark, piece.along * this.plan.mark];
    const { fill } = this.kinds.get(piece.row)!;
    if (piece.trimmed) this.drawing.rectangle(x, top, across, height, "paper", { thin: true });
    this.drawing.rectangle(x, top, across, along, fill, { thin: true, part: "piece" });
    if (piece.trimmed) this.drawing.line({ x, y: top + along }, { x: x + across, y: top + along }, { dashed: true });
  }

  /** The key and the width of a piece, or the key alone, level or upright, as far as there is room. */
  private wordsOn(piece: Piece): FittingText | undefined {
    const { key } = this.kinds.get(piece.row)!;
    const [across, along] = [piece.across, piece.along].map((marks) => marks * this.plan.mark * this.scale);
    const size = piece.part === "full width" ? "full width" : this.show.length(piece.across * this.plan.mark);
    return fittingText([`${key} ${size}`, key], across, along);
  }

  private writeLeft(left: number, height: number, at: { x: number; y: number }): void {
    const words = `${this.show.length(left)} left`;
    const low = height * this.scale < TEXT_SIZE;
    if (left <= 0 || low || !this.drawing.hasRoom(words, left, { small: true })) return;
    this.drawing.text({ x: at.x + left / 2, y: at.y }, words, { small: true });
  }

  /** Beside a strip: its height, how many, and which of its pieces are too small to carry their key. */
  private captions(strip: Strip): string[] {
    const unnamed = strip.pieces
      .filter((piece) => this.wordsOn(piece) === undefined)
      .map((piece) => `${piece.count} ${this.kinds.get(piece.row)!.key}`)
      .join(", ");
    const lines = [this.headWords(strip), ...(unnamed === "" ? [] : [unnamed])];
    return strip.height * this.plan.mark * this.scale < lines.length * 15 ? [lines.join("; ")] : lines;
  }

  private headWords({ height, times }: Strip): string {
    return `${this.show.length(height * this.plan.mark)} high${times > 1 ? `, × ${times}` : ""}`;
  }

  private stripWords(strip: Strip): string {
    const pieces = strip.pieces.map(({ label, across, count }) => {
      const name = label === "" ? "" : `${label} `;
      return `${count} of ${name}${this.show.length(across * this.plan.mark)}`;
    });
    return `${this.headWords(strip)}, each with ${pieces.join(", ")}`;
  }

  /** Height of all strips in one column, pixels. */
  private columnHeight(scale: number): number {
    return this.plan.cuts.strips.reduce((sum, { height }) => sum + height * this.plan.mark * scale + GAP, 0);
  }
}

function columnsFor(height: number): number {
  const sizeOnPage = (columns: number) =>
    Math.min(1 / (columns * (DRAWN_WIDTH + USUAL_SIDE + COLUMN_GAP)), (PAGE_RATIO * columns) / height);
  let best = 1;
  for (let columns = 2; columns <= MOST_COLUMNS; columns += 1) {
    if (sizeOnPage(columns) > sizeOnPage(best)) best = columns;
  }
  return best;
}

function kindWords(plan: Plan, row: number, show: Show): string {
  const { label, width, height, count } = plan.list[row];
  const join = plan.cuts.joins.find((one) => one.row === row);
  const joined = join === undefined ? "" : `, from ${join.strips} strips joined`;
  return `${label === "" ? "" : `${label}: `}${count} of ${show.length(width)} × ${show.length(height)}${joined}`;
}
