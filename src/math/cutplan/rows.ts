/** A condition on the strips cut: the sum of `weight` of their levels is at least / at most `bound`. */
export interface CountRow {
  readonly weight: Float64Array;
  readonly bound: number;
  readonly sense: "at least" | "at most";
}

/** Cost of an empty strip of each level, after what the count rows pay or charge for it. */
export function reducedLevelCosts(
  cost: Float64Array,
  rows: readonly CountRow[],
  duals: Float64Array,
  firstRow: number,
): Float64Array {
  const reduced = cost.slice();
  for (let r = 0; r < rows.length; r++) {
    const dual = duals[firstRow + r];
    if (dual === 0) continue;
    for (let level = 0; level < reduced.length; level++) reduced[level] -= dual * rows[r].weight[level];
  }
  return reduced;
}
