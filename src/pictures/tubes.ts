/** Tubes: half-square units of one or several sizes, head to tail between the two seams. */
import { decimalText, fractionText } from "../math/show";
import { type Tube, type TubeCut, tubeLayout, tubeLength, tubeUnits, type TubeUnits } from "../math/tubes";
import { fromInches, type Inches, inches, type System } from "../math/units";
import { Drawing } from "./drawing";
import { settle } from "./options";

/** Length of a tube as drawn, pixels; a short tube is not blown up beyond the scale. */
const DRAWN_LENGTH = 1000;
const LARGEST_SCALE = 56;

/** More units than these are not drawn: they repeat, and would be too small to read. */
const MOST_DRAWN = 40;

/**
 * The layout of a tube, from its cut positions: the largest size first, each unit with its trim size, and on either seam
 * line the place where each long side begins.
 *
 * @param list trim sizes and how many of each
 * @param length length of the tube, inches; drawn as long as the units take if left out
 */
export function tubePicture(
  list: readonly TubeUnits[],
  tube: Tube,
  { length, system = "in" }: { length?: number; system?: System } = {},
): string {
  const { seam: usualSeam, show } = settle({ system });
  const { stripWidth, seam = usualSeam } = tube;
  const sewn = { ...tube, seam };
  const cuts = tubeLayout(list, sewn);
  const drawn = cuts.slice(0, MOST_DRAWN);
  const taken = tubeLength(list, sewn);
  const end = drawn.length < cuts.length ? Math.max(...drawn.flatMap(reachOf)) : (length ?? taken);
  const title = `Half-square units from a tube of ${show.length(stripWidth)} strips`;
  const facts = sizesOf(list).map(({ trim, count }) => `${count} of ${show.length(trim)}`);
  const description = `${title}: ${facts.join(", ")} take ${show.length(taken)}`;
  const drawing = new Drawing(title, description, Math.min(LARGEST_SCALE, DRAWN_LENGTH / end));
  drawing.rectangle(0, 0, end, stripWidth, "paper", { part: "tube" });
  const fills = new Map(sizesOf(list).map(({ trim }, index) => [trim, index]));
  for (const cut of drawn) drawUnit(drawing, cut, stripWidth, fills.get(cut.trim)!);
  for (const y of [seam, stripWidth - seam]) drawing.line({ x: 0, y }, { x: end, y }, { dashed: true, thin: true });
  for (const cut of drawn) writePlace(drawing, cut, stripWidth, system);
  for (const { trim, count } of sizesOf(list)) {
    drawing.legend(fills.get(trim)!, `${count} trimmed to ${show.length(trim)}`);
  }
  const mark = system === "in" ? "1/16 in" : "1 mm";
  drawing.note(`numbers: where each long side begins on its seam line, from the squared end, to the nearest ${mark}`);
  drawing.note(`${show.length(taken)} of tube; dashed: seam lines, ${show.length(seam)} from the edges`);
  if (drawn.length < cuts.length) drawing.note(`the first ${drawn.length} of ${cuts.length} units are drawn`);
  return drawing.svg();
}

/** As many units of one size as a length of tube gives. */
export function tubeUnitsPicture(length: Inches, trim: Inches, tube: Tube, system: System = "in"): string {
  const count = tubeUnits(length, trim, { ...tube, seam: tube.seam ?? settle({ system }).seam });
  return tubePicture([{ trim, count }], tube, { length, system });
}

function drawUnit(drawing: Drawing, cut: TubeCut, stripWidth: number, fill: number): void {
  const corners = cut.outline.map(([along, up]) => ({ x: along, y: stripWidth - up }));
  drawing.polygon(corners, fill, { part: "unit" });
}

/** The place of a cut, on the side of its seam line. */
function writePlace(drawing: Drawing, cut: TubeCut, stripWidth: number, system: System): void {
  const lower = cut.seamLine === "lower";
  const at = { x: Math.max(0, cut.from), y: lower ? stripWidth : 0 };
  const length = fromInches(cut.from, system);
  const words = system === "in" ? fractionText(length, 16) : decimalText(length, 1);
  drawing.line(at, { x: at.x, y: at.y + drawing.pixels(lower ? 6 : -6) }, { thin: true });
  drawing.text(at, words, { small: true }, { x: 0, y: lower ? 13 : -13 });
}

/** Sizes in the order in which they are cut, equal ones counted together. */
function sizesOf(list: readonly TubeUnits[]): TubeUnits[] {
  const counts = new Map<number, number>();
  for (const { trim, count } of list) counts.set(trim, (counts.get(trim) ?? 0) + count);
  return [...counts]
    .filter(([, count]) => count > 0)
    .sort(([a], [b]) => b - a)
    .map(([trim, count]) => ({ trim: inches(trim), count }));
}

function reachOf({ outline }: TubeCut): number[] {
  return outline.map(([along]) => along);
}
