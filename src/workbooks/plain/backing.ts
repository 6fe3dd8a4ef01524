/** Backing: panels of fabric sewn side by side under the quilt. */
import { above, either, type Formula, minus, plain, plus, times } from "./formula";
import type { Reader } from "./reader";
import { fabricToBuy, joinedStrips, openWidth, twin, type Twins } from "./template";

const PARAMETERS = "width length fabricWidth margin panelSeam print repeat step units squaring";

export const backing: Twins = {
  BACKINGFABRIC: twin(PARAMETERS, "amount", (read) => {
    const { along, across } = ways(read);
    const least = read.choose("print", "any", {
      any: () => plain`MIN(${along.length},${across.length})`,
      upright: () => along.length,
    });
    return fabricToBuy(read, least);
  }),

  /** The way that takes the smaller amount; of equal amounts the one with fewer panels. */
  BACKINGPANELS: twin(PARAMETERS, "someCount", (read) => {
    const { along, across } = ways(read);
    const [upAndDown, turned] = [fabricToBuy(read, along.length), fabricToBuy(read, across.length)];
    return read.choose("print", "any", {
      any: () =>
        plain`IF(${turned}<${upAndDown},${across.panels},IF(${turned}=${upAndDown},MIN(${along.panels},${across.panels}),${along.panels}))`,
      upright: () => along.panels,
    });
  }),
};

/** Batting has no seams: only its size is asked for. */
export const batting: Twins = {
  BATTINGSIZE: twin("width length margin units", "size", (read) => [withMargin(read)]),
};

interface Way {
  panels: Formula;
  length: Formula;
}

function withMargin(read: Reader): [Formula, Formula] {
  const [width, length, margin] = [read.length("width"), read.length("length"), read.lengthOrZero("margin", "margin")];
  return [plus(width, times(2, margin)), plus(length, times(2, margin))];
}

/** The quilt lying along the fabric (seams up and down) or across it; each panel but the last takes whole repeats. */
function ways(read: Reader): { along: Way; across: Way } {
  const [wide, long] = withMargin(read);
  const fabricWidth = openWidth(read, "fabricWidth");
  const lost = times(2, read.lengthOrZero("panelSeam", "panelSeam"));
  read.require(above(lost, fabricWidth));
  const repeat = read.lengthOrZero("repeat", 0);
  const squaring = read.lengthOrZero("squaring", 0);
  const way = (covered: Formula, cut: Formula): Way => {
    const panels = joinedStrips(covered, fabricWidth, lost);
    const matched =
      repeat === 0
        ? times(panels, cut)
        : either(
            plain`${repeat}=0`,
            times(panels, cut),
            plain`(${minus(panels, 1)})*ROUNDUP(ROUND(${cut}/${repeat},9),0)*${repeat}+${cut}`,
          );
    return { panels, length: plus(matched, squaring) };
  };
  return { along: way(wide, long), across: way(long, wide) };
}
