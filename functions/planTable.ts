/** A cut plan as the table that a cutter follows. */
import type { Join, Piece, Strip } from "../src/math/cutplan";
import { leastText, type Plan } from "../src/math/plans";
import { type Show, showing } from "../src/math/show";
import type { Door, Value } from "./cells";

/** Rows of strip height, strips, what to cut from each, and what is left at the end; the last row sums up. */
export function planTable(door: Door, plan: Plan): Value[][] {
  const show = showing(door.system);
  const lengthOf = (marks: number) => door.showsLength(marks * plan.mark);
  return [
    ["strip", "strips", "from each strip", "left at the end"],
    ...plan.cuts.strips.map((strip) => [
      lengthOf(strip.height),
      strip.times,
      cutting(show, plan, strip),
      lengthOf(strip.left),
    ]),
    ...plan.cuts.joins.map((join): Value[] => ["join", join.strips, joining(show, plan, join), ""]),
    ["total", plan.cuts.stripCount, summary(show, plan), ""],
  ];
}

function cutting(show: Show, plan: Plan, strip: Strip): string {
  return strip.pieces.map((piece) => cut(show, plan, piece)).join(", ");
}

/** One kind of piece, such as `3 × star 4 1/2 in, trim to 4 in`. */
function cut(show: Show, plan: Plan, piece: Piece): string {
  const across = show.length(piece.across * plan.mark);
  const part = piece.part === "rest" ? " (rest of the join)" : piece.part === "full width" ? " (full width)" : "";
  const turned = piece.turned ? ", turned" : "";
  const trim = piece.trimmed ? `, trim to ${show.length(piece.along * plan.mark)}` : "";
  const label = piece.label === "" ? "" : `${piece.label} `;
  return `${piece.count} × ${label}${across}${part}${turned}${trim}`;
}

function joining(show: Show, plan: Plan, join: Join): string {
  const patch = plan.list[join.row];
  const pieces = `then cut ${patch.count} × ${show.length(patch.width)}`;
  return `${join.label}: sew ${join.strips} strips end to end, the last ${show.length(join.rest * plan.mark)}; ${pieces}`;
}

function summary(show: Show, plan: Plan): string {
  const used = plan.fabricWidth * plan.cuts.length * plan.mark;
  const patches = plan.cuts.patchArea * plan.mark * plan.mark;
  const waste = used === 0 ? 0 : 100 * (1 - patches / used);
  const squaring = plan.squaring > 0 ? `, ${show.length(plan.squaring)} of it to square up` : "";
  return (
    `${show.length(plan.length)} of fabric ${show.length(plan.fabricWidth)} wide without selvages${squaring}; ` +
    `${waste.toFixed(0)} % waste; ${leastText(plan)(show)}`
  );
}
