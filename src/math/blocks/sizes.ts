/** The same design in several sizes, each counted again from its pieces. */
import { type PlanOptions } from "../plans";
import { Problem } from "../problem";
import { atMost } from "../rounding";
import { blocksFor } from "../settings";
import { type Inches, inches, type Size } from "../units";
import { fabricPlans } from "./amounts";
import type { PieceOptions } from "./pieces";
import { type LaidBlock, MOST_BLOCKS, type Quilt, quiltFabrics, quiltPieces, quiltSize } from "./quilt";

export interface WantedSize extends Size {
  name: string;
}

/** A design laid out for one size. */
export interface SizedLayout {
  name: string;
  across: number;
  down: number;
  quilt: Quilt;
}

/** A design in one size, counted. */
export interface SizedQuilt extends Omit<SizedLayout, "quilt"> {
  size: Size;
  /** Length of each fabric, inches, in the order of `quiltFabrics`. */
  lengths: Inches[];
}

/**
 * A design in several sizes: blocks across and down come nearest to each wanted size, the layout repeats over them, and
 * every piece is counted again.
 *
 * @param design the quilt whose layout repeats
 * @param wanted sizes to come near to, inches
 */
export function sizedQuilts(
  design: Quilt,
  wanted: readonly WantedSize[],
  options: PieceOptions & PlanOptions = {},
): SizedQuilt[] {
  const fabrics = quiltFabrics(design);
  return sizedLayouts(design, wanted).map(({ quilt, ...sized }) => {
    const plans = new Map(
      fabricPlans(quiltPieces(quilt, options), options).map(({ fabric, plan }) => [fabric, plan.length]),
    );
    const lengths = fabrics.map((fabric) => plans.get(fabric) ?? inches(0));
    return { ...sized, size: quiltSize(quilt), lengths };
  });
}

/** The layout of a design repeated for several sizes: blocks across and down come nearest to each. */
export function sizedLayouts(design: Quilt, wanted: readonly WantedSize[]): SizedLayout[] {
  const border = (design.borders ?? []).reduce((sum, { width }) => sum + width, 0);
  return wanted.map(({ name, width, length }) => {
    const inside = { width: inches(width - 2 * border), length: inches(length - 2 * border) };
    if (atMost(inside.width, 0) || atMost(inside.length, 0)) {
      throw new Problem("bad input", `the borders alone are larger than the size “${name}”`);
    }
    const sashing = { sashing: design.sashing?.width, edge: design.edge };
    const [{ across, down }] = blocksFor(inside.width, inside.length, design.size, sashing);
    if (across > MOST_BLOCKS || down > MOST_BLOCKS) {
      throw new Problem("bad input", `the size “${name}” takes ${across} × ${down} blocks; that is no quilt`);
    }
    return { name, across, down, quilt: { ...design, layout: repeated(design.layout, across, down) } };
  });
}

function repeated(layout: Quilt["layout"], across: number, down: number): LaidBlock[][] {
  return Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (_unused, column) => {
      const places = layout[row % layout.length];
      return places[column % places.length];
    }),
  );
}
