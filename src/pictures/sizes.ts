/** One design in several sizes, side by side and to one scale. */
import type { SizedLayout } from "../math/blocks/sizes";
import { showing } from "../math/show";
import { TEXT_SIZE, textWidth } from "./lettering";
import { quiltFrame, requireDrawable, TopDrawing, type TopOptions } from "./quiltTop";

/** Longer side of the largest quilt as drawn, and how wide a row of quilts may be, pixels. */
const LARGEST = 230;
const ROW = 520;

/** Between two quilts, and from one line of words to the next, pixels. */
const GAP = 22;
const LINE = 17;

/** Every size with its name, its blocks and what it measures; quilts that find no room in a row start a new one. */
export function sizesPicture(
  title: string,
  sizes: readonly SizedLayout[],
  fabrics: readonly string[],
  { system = "in", colors }: TopOptions = {},
): string {
  requireDrawable(sizes.map(({ quilt }) => quilt));
  const show = showing(system);
  const drawn = sizes.map(({ name, across, down, quilt }) => {
    const frame = quiltFrame(quilt);
    const size = `${show.length(frame.width)} × ${show.length(frame.length)}`;
    return { quilt, frame, words: [name, `${across} × ${down} blocks`, size] };
  });
  const scale = LARGEST / Math.max(...drawn.flatMap(({ frame }) => [frame.width, frame.length]));
  const facts = drawn.map(({ words }) => words.join(", "));
  const top = new TopDrawing(title, `${title}: ${facts.join("; ")}`, scale, fabrics, colors);
  const { drawing } = top;
  const head = drawn[0].words.length * LINE;
  let [left, above, deepest] = [0, 0, 0];
  for (const { quilt, frame, words } of drawn) {
    const wide = Math.max(frame.width * scale, ...words.map((line) => textWidth(line)));
    if (left > 0 && left + wide > ROW) {
      above += deepest + head + GAP;
      [left, deepest] = [0, 0];
    }
    words.forEach((line, index) => {
      const middle = above + index * LINE + TEXT_SIZE / 2;
      const at = { x: drawing.pixels(left), y: drawing.pixels(middle) };
      drawing.text(at, line, { anchor: "start", bold: index === 0 });
    });
    top.quilt(quilt, frame, { x: drawing.pixels(left), y: drawing.pixels(above + head) });
    left += wide + GAP;
    deepest = Math.max(deepest, frame.length * scale);
  }
  return top.svg();
}
