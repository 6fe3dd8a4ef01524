/** Fabric for plain borders: strips across the fabric, joined, or along its length in one piece. */
import { borderLengths, type BorderPiece, type CornerOptions } from "./borders";
import { USUAL } from "./conventions";
import { fabric, requireFabricWidth } from "./fabric";
import { type Join, type JoinedRow, joinedText, joinLoss, requireJoinable, stripsReaching } from "./joins";
import { Problem, requireCount } from "./problem";
import { covers, fits } from "./rounding";
import type { Inches } from "./units";
import { step } from "./working";

/** How the strips lie on the fabric. "best" takes the way that needs less to buy, and of equals the one without joins. */
export const BORDER_WAYS = ["best", "across", "along"] as const;
export type BorderWay = (typeof BORDER_WAYS)[number];

export interface BorderOptions extends CornerOptions {
  /** usable width of the fabric, inches */
  fabricWidth?: Inches;
  join?: Join;
}

/**
 * Strips to cut across the fabric for the sides, top and bottom of a border; cornerstones are not counted.
 *
 * n strips in a row reach n × fabric width − (n − 1) × what a join takes. The four pieces are cut from one such row or from
 * several, whichever takes fewest strips: four pieces that are just a strip long take four, without a join.
 *
 * @param width finished width inside the border, inches
 * @param length finished length inside the border, inches
 * @param border finished width of the border, inches
 * @throws Problem "bad input" where a length is out of range, or a join eats up the strip
 */
export function borderStrips(width: Inches, length: Inches, border: Inches, options: BorderOptions = {}): number {
  return stripsAcross(plainPieces(width, length, border, options), options);
}

function stripsAcross(pieces: readonly BorderPiece[], options: BorderOptions): number {
  const { fabricWidth = USUAL.fabricWidth, join = "straight", seam = USUAL.seam } = options;
  requireFabricWidth(fabricWidth);
  const lost = joinLoss(join, pieces[0].width, seam);
  requireJoinable(fabricWidth, lost);
  const lengths = pieces.flatMap((piece) => Array.from({ length: piece.count }, () => piece.length));
  const rows = fewestStrips(lengths, (total) => stripsReaching(total, fabricWidth, lost));
  const strips = stripsOf(rows);
  requireCount("strips", strips);
  for (const row of rows) step((show) => joinedText(show, row, fabricWidth, lost));
  if (rows.length > 1) {
    step(() => `cut from strips of their own: ${rows.map((row) => row.strips).join(" + ")} = ${strips} strips`);
  }
  return strips;
}

/**
 * Amount of fabric to buy for the sides, top and bottom of a border; cornerstones are not counted.
 *
 * Across: the strips of `borderStrips`. Along: pieces without joins, as many side by side as the fabric is wide, in lengths
 * of the longest piece.
 *
 * @param width finished width inside the border, inches
 * @param length finished length inside the border, inches
 * @param border finished width of the border, inches
 * @param way how the strips lie on the fabric
 * @param shopStep step in which the shop cuts, inches
 * @returns length to buy, inches
 * @throws Problem "no answer" where the strips are to lie along fabric that is narrower than one
 */
export function borderFabric(
  width: Inches,
  length: Inches,
  border: Inches,
  way: BorderWay = "best",
  shopStep = USUAL.shopStep,
  options: BorderOptions = {},
): Inches {
  const { fabricWidth = USUAL.fabricWidth } = options;
  const pieces = plainPieces(width, length, border, options);
  const strip = pieces[0].width;
  const across = (): Inches => {
    const strips = stripsAcross(pieces, options);
    step((show) => `across: ${strips} × ${show.length(strip)}`);
    return fabric((strips * strip) as Inches, shopStep);
  };
  const along = (): Inches => fabric(lengthAlong(pieces, fabricWidth), shopStep);
  if (way === "along") return along();
  if (way === "across" || fits(strip, fabricWidth) === 0) return across();
  return Math.min(across(), along()) as Inches;
}

/** Length of fabric for pieces cut along it without joins. */
function lengthAlong(pieces: readonly BorderPiece[], fabricWidth: Inches): Inches {
  requireFabricWidth(fabricWidth);
  const strip = pieces[0].width;
  const sideBySide = fits(strip, fabricWidth);
  if (sideBySide === 0) {
    throw new Problem(
      "no answer",
      (show) =>
        `the strips are ${show.length(strip)} wide, wider than the ${show.length(fabricWidth)} of usable fabric`,
    );
  }
  const longest = Math.max(...pieces.map((piece) => piece.length));
  const lengths = covers(
    sideBySide,
    pieces.reduce((sum, piece) => sum + piece.count, 0),
  );
  step((show) => `along: ${sideBySide} side by side, so ${lengths} × ${show.length(longest)}`);
  return (lengths * longest) as Inches;
}

/** Sides, top and bottom. */
function plainPieces(width: Inches, length: Inches, border: Inches, options: CornerOptions): BorderPiece[] {
  return borderLengths(width, length, border, options).filter((piece) => piece.piece !== "cornerstones");
}

/**
 * Rows that take fewest strips for some lengths, where each row of joined strips yields one or more of them: every way to
 * choose what shares a row with the first length, and the same again for the rest. Of equals, the fuller first row.
 */
function fewestStrips(lengths: readonly number[], reach: (total: number) => number): JoinedRow[] {
  if (lengths.length === 0) return [];
  const [first, ...others] = lengths;
  const choices = Array.from({ length: 2 ** others.length }, (_, choice) => {
    const shares = (index: number): boolean => ((choice >> index) & 1) === 1;
    const length = others.reduce((sum, other, index) => sum + (shares(index) ? other : 0), first);
    const rest = others.filter((_length, index) => !shares(index));
    return [{ strips: reach(length), length }, ...fewestStrips(rest, reach)];
  });
  return choices.reduce((best, rows) => (stripsOf(rows) <= stripsOf(best) ? rows : best));
}

function stripsOf(rows: readonly JoinedRow[]): number {
  return rows.reduce((sum, row) => sum + row.strips, 0);
}
