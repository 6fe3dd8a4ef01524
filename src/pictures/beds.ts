/** A quilt on its bed, seen from above and laid flat. */
import { bedSize } from "../math/beds";
import { CONVENTIONS } from "../math/conventions";
import { showing } from "../math/show";
import { type Inches, inches, type Size, type System } from "../math/units";
import { Drawing } from "./drawing";

const DRAWN_SIZE = 320;

/** The mattress, what hangs down at the sides and the foot, and what is tucked in at the head. */
export function bedPicture(mattress: Size, options: { drop?: Inches; tuck?: Inches; system?: System } = {}): string {
  const { system = "in", tuck = inches(0) } = options;
  const { drop = CONVENTIONS[system].drop } = options;
  const show = showing(system);
  const { width, length } = bedSize(mattress, drop, tuck);
  const title = `A quilt for a mattress of ${show.length(mattress.width)} × ${show.length(mattress.length)}`;
  const facts = `${show.length(width)} × ${show.length(length)}, hanging down ${show.length(drop)}`;
  const drawing = new Drawing(title, `${title}: ${facts}`, DRAWN_SIZE / Math.max(width, length));
  drawing.rectangle(0, 0, width, length, 1, { part: "quilt" });
  drawing.rectangle(drop, tuck, mattress.width, mattress.length, 0, { dashed: true, part: "mattress" });
  const middle = width / 2;
  drawing.text({ x: middle, y: tuck + mattress.length / 2 }, "mattress", { ground: true });
  if (tuck > 0)
    drawing.text({ x: middle, y: tuck / 2 }, `tucked in ${show.length(tuck)}`, { small: true, ground: true });
  if (drop > 0) {
    const foot = { x: middle, y: length - drop / 2 };
    drawing.text(foot, `hangs down ${show.length(drop)}`, { small: true, ground: true });
  }
  drawing.measure({ x: 0, y: 0 }, { x: width, y: 0 }, show.length(width), 12);
  drawing.measure({ x: 0, y: length }, { x: 0, y: 0 }, show.length(length), 12);
  drawing.note("dashed: edge of the mattress; the head is at the top");
  return drawing.svg();
}
