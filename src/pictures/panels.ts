/**
 * Panels of one size, such as fat quarters, with the strips and patches cut from them. Panels that are cut alike are drawn once,
 * with how many; kinds of patch differ by letter, hatch and color, and a list explains the letters.
 */
import { counted } from "../math/counted";
import type { Panel, Piece, Strip } from "../math/cutplan";
import type { PlannedPanels } from "../math/panels";
import { type Show, showing } from "../math/show";
import type { System } from "../math/units";
import { Drawing } from "./drawing";
import { fittingText, type Kind, kindsOf } from "./kinds";

/** Longer side of a panel as drawn, and how wide a row of panels may be, pixels. */
const DRAWN_PANEL = 210;
const ROW = 500;

/** Between two panels, and above each for its words, pixels. */
const GAP = 26;
const HEAD = 24;

/** More panels than these, each cut in its own way, are not drawn. */
const MOST_DRAWN = 24;

export function panelsPicture(title: string, planned: PlannedPanels, system: System = "in"): string {
  return new PanelsPicture(title, planned, showing(system)).svg();
}

class PanelsPicture {
  private readonly drawing: Drawing;
  private readonly scale: number;
  private readonly kinds: ReadonlyMap<number, Kind>;

  constructor(
    title: string,
    private readonly planned: PlannedPanels,
    private readonly show: Show,
  ) {
    const { list, width, height, cuts } = planned;
    this.scale = DRAWN_PANEL / Math.max(width, height);
    const rows = cuts.panels.flatMap(({ strips }) => strips.flatMap(({ pieces }) => pieces.map(({ row }) => row)));
    this.kinds = kindsOf(rows, (row) => {
      const { label, count, ...patch } = list[row];
      return `${label === "" ? "" : `${label}: `}${count} of ${show.length(patch.width)} × ${show.length(patch.height)}`;
    });
    const facts = `${counted(cuts.panelCount, "panel")} of ${show.length(width)} × ${show.length(height)}`;
    const told = cuts.panels.map((panel) => this.panelWords(panel)).join("; ");
    this.drawing = new Drawing(title, `${title}: ${facts}: ${told}`, this.scale);
  }

  svg(): string {
    const { drawing, planned, show } = this;
    const { width, height, cuts } = planned;
    const drawn = cuts.panels.slice(0, MOST_DRAWN);
    const [across, down] = [width * this.scale + GAP, height * this.scale + GAP + HEAD];
    const inRow = Math.max(1, Math.trunc((ROW + GAP) / across));
    drawn.forEach((panel, index) => {
      const column = index % inRow;
      const [left, top] = [column * across, ((index - column) / inRow) * down].map((place) => drawing.pixels(place));
      this.drawPanel(panel, left, top);
    });
    drawing.measure({ x: 0, y: 0 }, { x: width, y: 0 }, show.length(width), 12 + HEAD);
    drawing.measure({ x: 0, y: height }, { x: 0, y: 0 }, show.length(height), 12);
    for (const { key, fill, words } of this.kinds.values()) drawing.legend(fill, `${key}  ${words}`);
    drawing.note("white: trimmed off or left over");
    const proof = cuts.proved ? "" : `; no plan takes fewer than ${cuts.panelBound}`;
    drawing.note(`${counted(cuts.panelCount, "panel")}${proof}`);
    if (drawn.length < cuts.panels.length) {
      drawing.note(`the first ${drawn.length} of ${cuts.panels.length} ways of cutting are drawn`);
    }
    return drawing.svg();
  }

  private drawPanel({ times, way, strips }: Panel, left: number, top: number): void {
    const { drawing, planned } = this;
    const words = `${times === 1 ? "one panel" : `${times} panels alike`}, strips ${way}`;
    drawing.text({ x: left, y: top }, words, { anchor: "start", small: true, bold: true }, { x: 0, y: -HEAD / 2 + 2 });
    drawing.rectangle(left, top, planned.width, planned.height, "paper", { part: "panel" });
    let start = 0;
    for (const strip of strips) {
      for (let alike = 0; alike < strip.times; alike += 1) {
        this.drawStrip(strip, way, { x: left, y: top }, start);
        start += strip.height * planned.mark;
      }
    }
  }

  /** A strip that starts so far from the upper edge of its panel, or from the left edge where it runs along the panel. */
  private drawStrip(strip: Strip, way: Panel["way"], panel: { x: number; y: number }, start: number): void {
    const { drawing, planned } = this;
    /** From lengths along the strip and across it to the page. */
    const put = (along: number, beside: number, long: number, deep: number): [number, number, number, number] =>
      way === "across"
        ? [panel.x + along, panel.y + start + beside, long, deep]
        : [panel.x + start + beside, panel.y + along, deep, long];
    const [full, deep] = [way === "across" ? planned.width : planned.height, strip.height * planned.mark];
    drawing.rectangle(...put(0, 0, full, deep), "paper", { thin: true, part: "strip" });
    let at = 0;
    for (const piece of strip.pieces) {
      const [long, high] = [piece.across * planned.mark, piece.along * planned.mark];
      for (let copy = 0; copy < piece.count; copy += 1) {
        this.drawPiece(piece, put(at, 0, long, high));
        at += long;
      }
    }
  }

  private drawPiece({ row }: Piece, [left, top, wide, high]: [number, number, number, number]): void {
    const { drawing, scale } = this;
    const { key, fill } = this.kinds.get(row)!;
    drawing.rectangle(left, top, wide, high, fill, { thin: true, part: "piece" });
    const words = fittingText([key], wide * scale, high * scale);
    if (words) drawing.text({ x: left + wide / 2, y: top + high / 2 }, words.text, words.style);
  }

  private panelWords({ times, way, strips }: Panel): string {
    const cut = strips.flatMap(({ height, times: alike, pieces }) => {
      const words = pieces.map(({ row, count }) => `${count} ${this.kinds.get(row)!.key}`);
      const strip = `strip of ${this.show.length(height * this.planned.mark)} with ${words.join(", ")}`;
      return Array.from({ length: alike }, () => strip);
    });
    return `${times} cut ${way}: ${cut.join(", ")}`;
  }
}
