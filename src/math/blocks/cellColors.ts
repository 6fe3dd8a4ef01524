/** The colors of fabrics, as the fills of the cells tell them that name them. */
import { FabricNames } from "./fabricNames";
import { fabricsInCell } from "./grammar";

/** A cell that names fabrics, with its fill color. */
export interface FilledCell {
  text: string;
  /** Such as #c0392b; null where the cell has no fill. */
  fill: string | null;
}

/**
 * The color of each fabric that has one. A filled cell that names one fabric gives that fabric its color, the first such cell
 * before all others. A fabric that stands alone in no filled cell takes the color of the first filled cell in which it is
 * named first among several.
 *
 * @param cells in reading order
 * @param fabrics the fabrics as the block or quilt spells them
 * @throws Problem "bad input" where a cell cannot be read
 */
export function fabricColors(cells: readonly FilledCell[], fabrics: readonly string[]): Map<string, string> {
  const names = new FabricNames();
  for (const fabric of fabrics) names.spelling(fabric);
  const [alone, among] = [new Map<string, string>(), new Map<string, string>()];
  for (const { text, fill } of cells) {
    if (fill === null) continue;
    const [first, ...others] = fabricsInCell(text, names) as [string?, ...string[]];
    const told = others.length === 0 ? alone : among;
    if (first !== undefined && !told.has(first)) told.set(first, fill);
  }
  return new Map([...among, ...alone]);
}
