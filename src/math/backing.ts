/** Backing: panels of fabric sewn side by side under the quilt. */
import { USUAL } from "./conventions";
import { fabric, requireFabricWidth } from "./fabric";
import { Problem, requireNotNegative, requirePositive } from "./problem";
import { covers, roundUpTo } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** How a print lets the fabric be turned: an upright print must run along the length of the quilt. */
export const PRINTS = ["any", "upright"] as const;
export type Print = (typeof PRINTS)[number];

/** What a backing is made of and how much larger than the quilt it is to be. */
export interface BackingOptions {
  /** usable width of the fabric, inches */
  fabricWidth?: Inches;
  /** extra on each of the four sides, inches */
  margin?: Inches;
  /** seam allowance between panels, inches */
  panelSeam?: Inches;
  print?: Print;
  /** length after which the print repeats, inches; 0 for none to match */
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
  /** Width by which one panel alone is too narrow, inches; 0 where there is no seam. */
  shortOfOnePanel: Inches;
  /** Why this way cannot be used, if it cannot. */
  refused?: "upright print";
}

/**
 * Both ways to lay the fabric: along the length of the quilt (seams up and down) and across it (seams across).
 *
 * n panels cover n × width − (n − 1) × 2 × panel seam. With a repeat to match, each panel after the first starts a whole
 * number of repeats after the one before it.
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
  return allowed.reduce((best, way) => {
    const order = way.amount - best.amount || way.panels - best.panels || way.length - best.length;
    return order < 0 ? way : best;
  });
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
  const sewnWidth = panels * fabricWidth - (panels - 1) * lost;
  const length = ((panels - 1) * roundUpTo(repeat, cut) + cut + squaring) as Inches;
  step(
    (show) =>
      `quilt lying ${lies}: ${panels} × ${show.length(fabricWidth)} of fabric covers ${show.length(sewnWidth)}, ` +
      `${show.length(covered)} needed; ${panels} × ${show.length(cut)} takes ${show.length(length)}`,
  );
  return {
    lies,
    panels,
    cutLength: cut as Inches,
    length,
    amount: fabric(length, shopStep),
    spareWidth: (sewnWidth - covered) as Inches,
    shortOfOnePanel: Math.max(0, covered - fabricWidth) as Inches,
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
