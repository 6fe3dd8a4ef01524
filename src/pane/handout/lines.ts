/** What single cells say on a handout: amounts to buy, sizes and counts to cut, sizes to measure. */
import { type Show, showing } from "../../math/show";
import { fabricUnit, inches, toInches } from "../../math/units";
import { cellText } from "../answerView";
import type { Shown } from "../catalogue";
import { GivenArguments } from "../given";
import { sizesOf } from "../sizes";
import { inInches, type Told } from "./told";

/** Amounts in yards or meters. */
const FABRIC_TO_BUY = /^(?!CHECK)(?:\w*FABRIC|FABRICTEXT)$/;
/** Things that are bought whole, and what they are called. */
const WHOLE_TO_BUY: Readonly<Partial<Record<string, string>>> = { PANELSNEEDED: "panel", BOLTSNEEDED: "bolt" };
const SIZES_TO_CUT = /^CUT(?!CHECK)|^BORDERMEASURED$|^BIASSQUARE$/;
/** What is counted, where the maker says nothing else. */
const COUNTS_TO_CUT: Readonly<Partial<Record<string, string>>> = {
  STRIPSNEEDED: "strip",
  STRIPSETS: "strip set",
  BORDERSTRIPS: "strip",
  BORDERUNITS: "unit",
  BINDINGSTRIPS: "strip",
  PLANSTRIPS: "strip",
  BACKINGPANELS: "panel",
};
/** Units that are trimmed once they are sewn. */
const TRIMMED = new Set(["CUTHALFSQUARE", "CUTGEESE", "CUTSQUAREINSQUARE"]);

/** What two numbers side by side mean; other pairs are width and length. */
const PAIRS: Readonly<Partial<Record<string, (first: string, second: string) => string>>> = {
  CUTDIAMOND: (strip, along) => `a strip ${strip} wide, slanting cuts ${along} apart along its edge`,
  CUTHEXAGON: (across, side) => `${across} from flat side to flat side, each side ${side}`,
  CUTTRIANGLE: (base, height) => `base ${base}, height ${height}`,
  CUTHALFRECTANGLE: (width, height) => `a rectangle ${width} × ${height}, once corner to corner`,
};

/** What to buy. */
export function supply(told: Told): string | undefined {
  const { id, shown, system, words } = told;
  const show = showing(system);
  if (FABRIC_TO_BUY.test(id)) {
    if (words === "FABRICTEXT") return String(shown);
    return typeof shown === "number" ? show.fabric(toInches(shown, fabricUnit(system))) : undefined;
  }
  const whole = WHOLE_TO_BUY[id];
  if (whole !== undefined && typeof shown === "number") return counted(shown, whole);
  if (id === "BATTINGSIZE") return sizeText(told);
  if (id !== "BATTINGPACK" || !Array.isArray(shown)) return undefined;
  const [name, width, length, turned] = shown[0];
  return [name, `${show.length(inInches(width, system))} × ${show.length(inInches(length, system))}`, turned]
    .filter((part) => part !== "")
    .join(", ");
}

/** What to cut: a size, or how many. */
export function cut(told: Told): string | undefined {
  const { id, shown, system, piece } = told;
  if (id === "" && piece !== undefined) return counted(Number(shown), piece);
  if (id === "BACKINGPLAN" && Array.isArray(shown)) {
    const best = bestWay(shown);
    return `${counted(Number(best[1]), "panel")}, each ${showing(system).length(inInches(best[2], system))} long`;
  }
  if (Array.isArray(shown) && shown.length > 1) return undefined;
  const counts = COUNTS_TO_CUT[id];
  if (counts !== undefined && typeof shown === "number") return `${counted(shown, piece ?? counts)}${ofWidth(told)}`;
  if (!SIZES_TO_CUT.test(id) || isTrimming(told)) return undefined;
  if (id === "BIASSQUARE") return `cut a square of ${sizeText(told)}`;
  if (id !== "BORDERMEASURED" || !Array.isArray(shown)) return `cut ${sizeText(told)}`;
  const [length, note] = shown[0];
  return [`cut ${showing(system).length(inInches(length, system))}`, note].filter((part) => part !== "").join("; ");
}

/** What must measure so on the way; finished and unfinished told apart. */
export function measure(told: Told): string | undefined {
  const { id, entry, call, isRepeated } = told;
  if (!entry || !call || isRepeated) return undefined;
  const sizes = sizesOf(entry, call.cells, call.outcome.value);
  switch (id) {
    case "TOPSIZE":
    case "BORDERSIZE":
      return `sewn ${sizes?.unfinished}, finished ${sizes?.finished}`;
    case "BEDSIZE":
      return `${sizeText(told)} finished`;
    case "UNITMADE":
      return `${sizeText(told)} sewn, before it is trimmed`;
    case "CHECKROW":
    case "STRIPSETSIZE":
      return `${sizeText(told)} sewn, with its outer seam allowances`;
    case "BINDINGLENGTH":
      return `${sizeText(told)} joined`;
  }
  if (!sizes?.unfinished || !sizes.finished || !(TRIMMED.has(id) || isTrimming(told))) return undefined;
  return `${sizes.unfinished} sewn and trimmed, ${sizes.finished} finished`;
}

/** The row of the way that takes least fabric: way, panels, length of each, amount. */
export function bestWay([, ...ways]: Shown[][]): Shown[] {
  return ways.find((way) => String(way.at(-1)).startsWith("best")) ?? ways[0];
}

/** Such as 1 strip, 2 strips, 3 patches. */
function counted(count: number, piece: string): string {
  const plural = /(?:ch|x|s)$/.test(piece) ? "es" : "s";
  return `${cellText(count)} ${piece}${count === 1 ? "" : plural}`;
}

/** A square that is trimmed to a size, not cut from fabric. */
function isTrimming({ id, label }: Told): boolean {
  return id === "CUTSQUARE" && /\btrim/i.test(label);
}

/** How wide strips are cut whose width the call knows. */
function ofWidth({ id, entry, call, system }: Told): string {
  if (!entry || !call) return "";
  const given = new GivenArguments(entry, call.cells);
  const { bindingStrip, seam } = given.door.conventions;
  const width =
    id === "BINDINGSTRIPS"
      ? given.length("strip", bindingStrip)
      : id === "BORDERSTRIPS"
        ? inches(given.length("border") + 2 * given.lengthOrZero("seam", seam))
        : undefined;
  return width === undefined ? "" : ` of ${showing(system).length(width)}`;
}

/** A length, or two side by side, as a ruler reads. */
function sizeText({ id, shown, system, words }: Told): string {
  if (words === "LENGTHTEXT") return `${String(shown)} ${system}`;
  const show: Show = showing(system);
  const lengths = (Array.isArray(shown) ? shown[0] : [shown]).map((cell) => show.length(inInches(cell, system)));
  const pair = PAIRS[id];
  return pair && lengths.length === 2 ? pair(lengths[0], lengths[1]) : lengths.join(" × ");
}
