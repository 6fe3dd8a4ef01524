/** Backing: both ways to lay the fabric under the quilt, panel by panel. */
import { type BackingOptions, type BackingWay, backingWays, bestBacking } from "../math/backing";
import { Problem } from "../math/problem";
import type { Show } from "../math/show";
import type { Inches, System } from "../math/units";
import { Drawing, type Point } from "./drawing";
import { textWidth } from "./lettering";
import { settle } from "./options";

/** Longer side of the larger backing as drawn, and the room between the two ways, pixels. */
const DRAWN_SIZE = 260;
const GAP = 46;
const LINE = 17;

/** More panels than these could not be told apart. */
const MOST_DRAWN = 60;

/** Both ways beside each other: panels, seams, the margin, and the quilt inside. */
export function backingPicture(
  width: Inches,
  length: Inches,
  options: BackingOptions & { system?: System } = {},
): string {
  const { usual, show } = settle(options);
  const { fabricWidth = usual.fabricWidth, margin = usual.margin, panelSeam = usual.panelSeam } = options;
  const settled = { ...options, fabricWidth, margin, panelSeam, shopStep: options.shopStep ?? usual.shopStep };
  const ways = backingWays(width, length, settled);
  const best = bestBacking(ways);
  const panels = Math.max(...ways.map((way) => way.panels));
  if (panels > MOST_DRAWN) {
    throw new Problem("no answer", `${panels} panels are too many to draw; at most ${MOST_DRAWN} are drawn`);
  }
  const backings = ways.map((way) => layPanels(way, fabricWidth, panelSeam));
  const longest = Math.max(...backings.flatMap(({ across, down }) => [across, down]));
  const title = `Backing for a quilt of ${show.length(width)} × ${show.length(length)}`;
  const facts = ways.map((way) => wordsOf(way, best, show).join(", "));
  const drawing = new Drawing(title, `${title}: ${facts.join("; ")}`, DRAWN_SIZE / longest);
  const tallest = Math.max(...backings.map(({ down }) => down));
  let left = 0;
  backings.forEach((backing, index) => {
    const words = wordsOf(ways[index], best, show);
    const column = Math.max(backing.across, drawing.pixels(Math.max(...words.map((line) => textWidth(line)))));
    const at = { x: left + (column - backing.across) / 2, y: tallest - backing.down };
    drawBacking(drawing, backing, at, { width, length, margin }, show);
    words.forEach((line, row) => {
      const below = { x: left + column / 2, y: tallest };
      drawing.text(below, line, { bold: row === 0 }, { x: 0, y: 20 + row * LINE });
    });
    left += column + drawing.pixels(GAP);
  });
  drawing.note("dashed: seams between panels; inner line: the quilt");
  const fabric = `fabric ${show.length(fabricWidth)} wide`;
  drawing.note(`${fabric}, ${show.length(panelSeam)} seams, at least ${show.length(margin)} extra on each side`);
  return drawing.svg();
}

/** Panels side by side as sewn; sizes in inches, as the backing lies under the quilt. */
interface Backing {
  across: number;
  down: number;
  panels: { left: number; top: number; width: number; height: number }[];
  upright: boolean;
  cutLength: number;
}

function layPanels(way: BackingWay, fabricWidth: number, panelSeam: number): Backing {
  const upright = way.lies === "along";
  const ends = [];
  for (let panel = 1; panel < way.panels; panel += 1) {
    ends.push(panel * fabricWidth - (2 * panel - 1) * panelSeam);
  }
  const sewn = way.panels * fabricWidth - (way.panels - 1) * 2 * panelSeam;
  const starts = [0, ...ends];
  const panels = starts.map((start, index) => {
    const size = (starts[index + 1] ?? sewn) - start;
    return upright
      ? { left: start, top: 0, width: size, height: way.cutLength }
      : { left: 0, top: start, width: way.cutLength, height: size };
  });
  const [across, down] = upright ? [sewn, way.cutLength] : [way.cutLength, sewn];
  return { across, down, panels, upright, cutLength: way.cutLength };
}

function drawBacking(
  drawing: Drawing,
  backing: Backing,
  at: Point,
  quilt: { width: number; length: number; margin: number },
  show: Show,
): void {
  const { across, down, panels, upright, cutLength } = backing;
  panels.forEach(({ left, top, width, height }, index) => {
    const style = { thin: true, dashed: true, part: "panel" };
    drawing.rectangle(at.x + left, at.y + top, width, height, (index % 2) + 2, style);
  });
  drawing.rectangle(at.x, at.y, across, down, "none", { part: "backing" });
  const inside = { x: at.x + (across - quilt.width) / 2, y: at.y + (down - quilt.length) / 2 };
  drawing.rectangle(inside.x, inside.y, quilt.width, quilt.length, "none", { part: "quilt" });
  const middle = { x: inside.x + quilt.width / 2, y: inside.y + quilt.length / 2 };
  drawing.text(middle, `quilt ${show.length(quilt.width)} × ${show.length(quilt.length)}`, { ground: true });
  const corners = { nw: at, ne: { x: at.x + across, y: at.y }, sw: { x: at.x, y: at.y + down } };
  drawing.measure(corners.nw, corners.ne, upright ? show.length(across) : `cut ${show.length(cutLength)}`, 12);
  drawing.measure(corners.sw, corners.nw, upright ? `cut ${show.length(cutLength)}` : show.length(down), 12);
}

function wordsOf(way: BackingWay, best: BackingWay, show: Show): string[] {
  const seams = way.panels === 1 ? "no seam" : way.lies === "along" ? "seams up and down" : "seams across";
  const amount = `${way.panels} × ${show.length(way.cutLength)}: buy ${show.fabric(way.amount)}`;
  const verdict = way.refused !== undefined ? `not with an ${way.refused}` : way === best ? "least fabric" : "";
  const spare = `${show.length(way.spareWidth)} to spare across the seams`;
  return [seams, amount, way.panels === 1 ? spare.replace(" across the seams", "") : spare, verdict].filter(
    (line) => line !== "",
  );
}
