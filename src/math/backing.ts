/** Backing: panels of fabric sewn side by side under the quilt. */
import { USUAL } from "./conventions";
import { fabric, requireFabricWidth } from "./fabric";
import { Problem, requireCount, requireNotNegative, requirePositive } from "./problem";
import { atMost, covers, difference, roundUpTo } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** How a print lets the fabric be turned: an upright print must run along the length of the quilt. */
export const PRINTS = ["any", "upright"] as const;
export type Print = (typeof PRINTS)[number];

/** The most that fabric may lack and still be called a little too narrow: the usual margins, which a maker may trim. */
const A_LITTLE = 2 * USUAL.margin;

/** What a backing is made of and how much larger than the quilt it is to be. */
export interface BackingOptions {
  /** usable width of the fabric, inches */
  fabricWidth?: Inches;
  /** extra on each of the four sides, inches */
  margin?: Inches;
  /** seam allowance between panels, inches */
  panelSeam?: Inches;
  print?: Print;
  /** length after which the print repeats along the fabric, inches; 0 for none to match */
  repeat?: Inches;
  /** step in which the shop cuts, inches */
  shopStep?: Inches;
  /** length lost once where the end of the fabric is squared, inches */
  squaring?: Inches;
}

/** One way to lay the fabric under the quilt. */
export interface BackingWay {
  /** Whether the length of the quilt lies along the length of the fabric (seams up and down) or across it. */
  lies: "along" | "across";
  /** Panels side by side; one panel has no seam. */
  panels: number;
  /** Length to cut each panel, inches. */
  cutLength: Inches;
  /** Length of fabric that the panels take, with matching and squaring, inches. */
  length: Inches;
  /** Length to buy, inches. */
  amount: Inches;
  /** Width of the sewn panels beyond what the backing needs, inches. */
  spareWidth: Inches;
  /** Where one panel fewer would only just not do: how much too narrow it is, inches. */
  tooNarrow?: Inches;
  /** Why this way cannot be used, if it cannot. */
  refused?: "upright print";
}

/**
 * Both ways to lay the fabric: along the length of the quilt (seams up and down) and across it (seams across).
 *
 * n panels cover n × width − (n − 1) × 2 × panel seam. With a repeat to match, each panel starts a whole number of repeats
 * after the one before it, so every panel but the last takes its length rounded up to whole repeats.
 *
 * @param width finished width of the quilt, inches
 * @param length finished length of the quilt, inches
 * @returns the two ways; `along` first
 * @throws Problem "bad input" where a length is out of range or the panel seams eat up the fabric
 */
export function backingWays(width: Inches, length: Inches, options: BackingOptions = {}): [BackingWay, BackingWay] {
  requirePositive("width", width);
  requirePositive("length", length);
  const margin = options.margin ?? USUAL.margin;
  requireNotNegative("margin", margin);
  const [wide, long] = [width + 2 * margin, length + 2 * margin];
  step((show) => `backing with ${show.length(margin)} on each side: ${show.length(wide)} × ${show.length(long)}`);
  return [way("along", wide, long, options), way("across", long, wide, options)];
}

/** The way that takes least fabric; of equals, the one with fewer panels, then less length, then seams up and down. */
export function bestBacking(ways: readonly BackingWay[]): BackingWay {
  const allowed = ways.filter((way) => way.refused === undefined);
  const best = allowed.reduce((least, way) => {
    const order =
      difference(way.amount, least.amount) || way.panels - least.panels || difference(way.length, least.length);
    return order < 0 ? way : least;
  });
  step((show) => `least fabric with the quilt lying ${best.lies} it: buy ${show.fabric(best.amount)}`);
  return best;
}

/**
 * One way: panels side by side until they cover `covered`, each cut to `cut`.
 */
function way(lies: BackingWay["lies"], covered: number, cut: number, options: BackingOptions): BackingWay {
  const { fabricWidth = USUAL.fabricWidth, panelSeam = USUAL.panelSeam, squaring = 0 as Inches } = options;
  const { print = "any", repeat = 0 as Inches, shopStep = USUAL.shopStep } = options;
  requireUsable(fabricWidth, panelSeam);
  requireNotNegative("repeat", repeat);
  requireNotNegative("squaring", squaring);
  const lost = 2 * panelSeam;
  const panels = Math.max(1, covers(fabricWidth - lost, covered - lost));
  requireCount("panels", panels);
  const sewnWidth = panels * fabricWidth - (panels - 1) * lost;
  const lacking = covered - (sewnWidth - fabricWidth + lost);
  const start = roundUpTo(repeat, cut);
  const length = ((panels - 1) * start + cut + squaring) as Inches;
  step(
    (show) =>
      `quilt lying ${lies} the fabric: ${panels} × ${show.length(fabricWidth)} of fabric covers ${show.length(sewnWidth)}, ` +
      `${show.length(covered)} needed; each panel ${show.length(cut)} long`,
  );
  if (panels > 1 && repeat > 0) {
    step((show) => `every panel but the last takes ${show.length(start)}, whole repeats of ${show.length(repeat)}`);
  }
  return {
    lies,
    panels,
    cutLength: cut as Inches,
    length,
    amount: fabric(length, shopStep),
    spareWidth: difference(sewnWidth, covered) as Inches,
    ...(panels > 1 && atMost(lacking, A_LITTLE) ? { tooNarrow: lacking as Inches } : {}),
    ...(lies === "across" && print === "upright" ? { refused: "upright print" } : {}),
  };
}

/** Refuses fabric that the seams between panels would eat up, and a width that was measured on folded fabric. */
function requireUsable(fabricWidth: Inches, panelSeam: Inches): void {
  requireNotNegative("panel seam", panelSeam);
  requireFabricWidth(fabricWidth);
  if (fabricWidth <= 2 * panelSeam) {
    throw new Problem("bad input", "fabric width must be more than two panel seams");
  }
}
