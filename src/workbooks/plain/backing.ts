/** Backing: panels of fabric sewn side by side under the quilt. */
import {
  above,
  all,
  atMost,
  type Condition,
  either,
  type Formula,
  minus,
  not,
  plain,
  plus,
  quoted,
  times,
} from "./formula";
import { lengthText } from "./length";
import type { Reader } from "./reader";
import { fabricToBuy, joinedStrips, openWidth, twin, type Twins } from "./template";

const PARAMETERS = "width length fabricWidth margin panelSeam print repeat step units squaring";

/** A backing that lacks no more than this saves a panel with slightly wider cloth: 8 in. */
const A_LITTLE = { in: 8, cm: 20.32 };

const HEADER = ["way", "panels", "cut each", "amount", "spare width", "spare length", "note"];

export const backing: Twins = {
  BACKINGPLAN: twin(PARAMETERS, "text", (read) => {
    const { along, across } = ways(read);
    const isUpright = read.isChosen("print", "any", ["any", "upright"], ["upright"]);
    const [upAndDown, turned] = [fabricToBuy(read, along.length), fabricToBuy(read, across.length)];
    const fewer = plain`${across.panels}<${along.panels}`;
    const shorter = plain`AND(${across.panels}=${along.panels},${across.length}<${along.length})`;
    const isTurned = all([
      not(isUpright),
      `OR(${plain`${turned}<${upAndDown}`},AND(${plain`${turned}=${upAndDown}`},OR(${fewer},${shorter})))`,
    ]);
    const row = (way: Way, names: [string, string], amount: Formula, isBest: Condition): Formula[] => [
      plain`IF(${way.panels}=1,${quoted(names[0])},${quoted(names[1])})`,
      way.panels,
      way.cut,
      amount,
      plain`${way.sewn}-${way.covered}`,
      plain`${amount}*${read.fabricLength}-(${way.length})`,
      note(read, way, isBest),
    ];
    const [straight, sideways] = [
      row(along, ["no seam", "seams up and down"], upAndDown, not(isTurned)),
      row(across, ["no seam, turned", "seams across"], turned, isTurned),
    ];
    sideways[6] = either(isUpright, quoted("turns an upright print"), sideways[6]);
    return [HEADER.map(quoted), straight, sideways];
  }),

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
  /** What the panels must cover, what they cover sewn together, and what one more panel adds to it. */
  covered: Formula;
  sewn: Formula;
  added: Formula;
  panels: Formula;
  cut: Formula;
  /** Length of fabric for all panels. */
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
  const added = minus(fabricWidth, lost);
  const way = (covered: Formula, cut: Formula): Way => {
    const panels = joinedStrips(covered, fabricWidth, lost);
    const together = times(panels, cut);
    const matched =
      repeat === 0
        ? together
        : either(
            plain`${repeat}=0`,
            together,
            plain`(${panels}-1)*ROUNDUP(ROUND(${cut}/${repeat},9),0)*${repeat}+${cut}`,
          );
    return { covered, sewn: plus(times(panels, added), lost), added, panels, cut, length: plus(matched, squaring) };
  };
  return { along: way(wide, long), across: way(long, wide) };
}

/** Which way is best, and where slightly wider cloth would save a panel. */
function note(read: Reader, { covered, sewn, added, panels }: Way, isBest: Condition): Formula {
  const lacking = plain`${covered}-(${sewn}-${added})`;
  const few = atMost(lacking, read.usual(A_LITTLE));
  const aim = plain`IF(${panels}=2,"to go without a seam","for "&${panels}-1&" panels")`;
  const remark = plain`${lengthText(read, lacking)}&" too narrow "&${aim}`;
  const best = (more: Formula) => either(isBest, more === '""' ? '"best"' : plain`"best; "&${more}`, more);
  return either(all([plain`${panels}>1`, few]), best(remark), best('""'));
}
