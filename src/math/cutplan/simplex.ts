import { Pool } from "./pool";
import { CountRow, reducedLevelCosts } from "./rows";
import { Work } from "./work";

/** Reduced costs and pivots below this are binary dust. */
const DUST = 1e-9;

/**
 * In the basis, a variable is a column of the pool (its index), the slack of row r (-1 - r), or artificial: it stands for
 * what is missing, at the cost of the penalty. Artificial variables only ever leave, so they need no name of their own.
 */
export const ARTIFICIAL = -1_000_000;

/**
 * Revised simplex with a dense inverse of the basis, for rows are few (kinds of patch and count rows) and columns many.
 * Rows added or strips fixed later leave negative amounts; these are repaired by dual steps, or, where the pool has no
 * column that helps, become artificial.
 */
export class Simplex {
  readonly rowCount: number;
  readonly duals: Float64Array;
  /** what the rows ask for: counts of patches, then the bounds of the count rows */
  readonly needs: Float64Array;
  protected readonly inverse: Float64Array;
  protected readonly amount: Float64Array;
  protected readonly basis: Int32Array;
  /** the columns that may enter the basis, and how many of the pool have been considered; undefined while all may */
  protected allowed: { columns: number[]; considered: number } | undefined;
  /** columns of the basis that are no longer allowed: they cost the penalty, until they are gone */
  protected outcast = new Set<number>();
  private readonly direction: Float64Array;
  private inBasis = new Uint8Array(0);

  constructor(
    protected readonly pool: Pool,
    /** cost of a strip of each level */
    public cost: Float64Array,
    readonly kindCount: number,
    readonly countRows: readonly CountRow[],
    public penalty: number,
    protected readonly work: Work,
  ) {
    const n = (this.rowCount = kindCount + countRows.length);
    this.duals = new Float64Array(n);
    this.needs = new Float64Array(n);
    this.inverse = new Float64Array(n * n);
    this.amount = new Float64Array(n);
    this.basis = new Int32Array(n);
    this.direction = new Float64Array(n);
  }

  /** Solves over the pool as it is. False when the budget ran out first. */
  optimize(): boolean {
    this.markBasis();
    this.allowNew();
    if (!this.makeFeasible()) return false;
    for (;;) {
      if (!this.startIteration()) return false;
      const entering = this.entering();
      if (entering === undefined) return true;
      this.findDirection(entering);
      const leaving = this.leaving();
      if (leaving < 0) throw new Error("the linear program is unbounded");
      this.pivot(leaving, entering);
    }
  }

  /** Dual steps: negative amounts leave the basis, at the least rise of the cost. */
  private makeFeasible(): boolean {
    for (;;) {
      let leaving = -1;
      let lowest = -DUST;
      for (let j = 0; j < this.rowCount; j++) {
        if (this.amount[j] < lowest) {
          lowest = this.amount[j];
          leaving = j;
        }
      }
      if (leaving < 0) return true;
      if (!this.startIteration()) return false;
      const entering = this.enteringFor(leaving);
      if (entering === undefined) this.replaceByArtificial(leaving);
      else {
        this.findDirection(entering);
        // The inverse has lost its precision here: start this row's repair from an artificial variable instead.
        if (this.direction[leaving] > -DUST) this.replaceByArtificial(leaving);
        else this.pivot(leaving, entering);
      }
    }
  }

  private startIteration(): boolean {
    this.computeDuals();
    this.work.done += 2 * this.rowCount * this.rowCount + 4 * (this.allowed?.columns ?? this.pool.columns).length;
    return !this.work.spent;
  }

  protected costOf(variable: number): number {
    if (this.isMissing(variable)) return this.penalty;
    return variable >= 0 ? this.cost[this.pool.columns[variable].level] : 0;
  }

  /** Whether the variable stands for what the solution does not cut in a way that is allowed. */
  protected isMissing(variable: number): boolean {
    return variable === ARTIFICIAL || (this.outcast.size > 0 && this.outcast.has(variable));
  }

  protected wantsMore(row: number): boolean {
    return row < this.kindCount || this.countRows[row - this.kindCount].sense === "at least";
  }

  private markBasis(): void {
    const size = this.pool.columns.length;
    if (this.inBasis.length < size) this.inBasis = new Uint8Array(size + 512);
    else this.inBasis.fill(0);
    for (const variable of this.basis) if (variable >= 0) this.inBasis[variable] = 1;
  }

  /** Columns that came into the pool since are allowed. */
  protected allowNew(): void {
    if (!this.allowed) return;
    const { columns } = this.pool;
    while (this.allowed.considered < columns.length) this.allowed.columns.push(this.allowed.considered++);
  }

  private computeDuals(): void {
    const { rowCount: n, duals, inverse } = this;
    duals.fill(0);
    for (let j = 0; j < n; j++) {
      const cost = this.costOf(this.basis[j]);
      if (cost === 0) continue;
      for (let r = 0, at = j * n; r < n; r++, at++) duals[r] += cost * inverse[at];
    }
  }

  /** The variable that lowers the cost most per unit, if any does. */
  private entering(): number | undefined {
    const { duals, rowCount: n, inBasis } = this;
    const { columns } = this.pool;
    const levelCost = reducedLevelCosts(this.cost, this.countRows, duals, this.kindCount);
    // High penalties make for coarser dust.
    let least = -DUST * duals.reduce((largest, dual) => Math.max(largest, Math.abs(dual)), 1);
    let entering: number | undefined;
    const allowed = this.allowed?.columns;
    for (let index = 0, length = (allowed ?? columns).length; index < length; index++) {
      const c = allowed ? allowed[index] : index;
      if (inBasis[c] === 1) continue;
      const { level, kinds, counts } = columns[c];
      let reduced = levelCost[level];
      for (let i = 0; i < kinds.length; i++) reduced -= duals[kinds[i]] * counts[i];
      if (reduced < least) {
        least = reduced;
        entering = c;
      }
    }
    for (let row = 0; row < n; row++) {
      const reduced = this.wantsMore(row) ? duals[row] : -duals[row];
      if (reduced < least && !this.basis.includes(-1 - row)) {
        least = reduced;
        entering = -1 - row;
      }
    }
    return entering;
  }

  /** The variable that can replace a negative one, at the least rise of the cost; among equals the largest pivot. */
  private enteringFor(leaving: number): number | undefined {
    const { duals, rowCount: n, inBasis, kindCount } = this;
    const { columns } = this.pool;
    const inverseRow = this.inverse.subarray(leaving * n, leaving * n + n);
    const levelCost = reducedLevelCosts(this.cost, this.countRows, duals, kindCount);
    const levelPivot = new Float64Array(levelCost.length);
    this.countRows.forEach(({ weight }, r) => {
      const factor = inverseRow[kindCount + r];
      if (factor !== 0) for (let level = 0; level < weight.length; level++) levelPivot[level] += factor * weight[level];
    });
    let least = Infinity;
    let largest = 0;
    let entering: number | undefined;
    const consider = (variable: number, pivot: number, reduced: number) => {
      if (pivot > -1e-7) return;
      const ratio = Math.max(0, reduced) / -pivot;
      if (ratio < least - 1e-10 || (ratio < least + 1e-10 && -pivot > largest)) {
        least = ratio;
        largest = -pivot;
        entering = variable;
      }
    };
    const allowed = this.allowed?.columns;
    for (let index = 0, length = (allowed ?? columns).length; index < length; index++) {
      const c = allowed ? allowed[index] : index;
      if (inBasis[c] === 1) continue;
      const { level, kinds, counts } = columns[c];
      let pivot = levelPivot[level];
      let reduced = levelCost[level];
      for (let i = 0; i < kinds.length; i++) {
        pivot += inverseRow[kinds[i]] * counts[i];
        reduced -= duals[kinds[i]] * counts[i];
      }
      consider(c, pivot, reduced);
    }
    for (let row = 0; row < n; row++) {
      const sign = this.wantsMore(row) ? -1 : 1;
      if (inverseRow[row] * sign < 0 && !this.basis.includes(-1 - row)) {
        consider(-1 - row, inverseRow[row] * sign, -duals[row] * sign);
      }
    }
    return entering;
  }

  /** Lets an artificial variable carry what a basic variable would have to be below zero. */
  private replaceByArtificial(j: number): void {
    const n = this.rowCount;
    if (this.basis[j] >= 0) this.inBasis[this.basis[j]] = 0;
    this.basis[j] = ARTIFICIAL;
    this.amount[j] = -this.amount[j];
    for (let r = 0, at = j * n; r < n; r++, at++) this.inverse[at] = -this.inverse[at];
  }

  /** How the basic variables fall when the entering variable grows by one. */
  private findDirection(entering: number): void {
    const { direction, inverse, rowCount: n } = this;
    if (entering < 0) {
      const row = -1 - entering;
      const sign = this.wantsMore(row) ? -1 : 1;
      for (let j = 0; j < n; j++) direction[j] = inverse[j * n + row] * sign;
      return;
    }
    const { level, kinds, counts } = this.pool.columns[entering];
    direction.fill(0);
    for (let i = 0; i < kinds.length; i++) {
      for (let j = 0, at = kinds[i]; j < n; j++, at += n) direction[j] += inverse[at] * counts[i];
    }
    for (let r = 0; r < this.countRows.length; r++) {
      const weight = this.countRows[r].weight[level];
      if (weight === 0) continue;
      for (let j = 0, at = this.kindCount + r; j < n; j++, at += n) direction[j] += inverse[at] * weight;
    }
  }

  /** The basic variable that reaches zero first; among equals the one with the largest pivot. */
  private leaving(): number {
    const { direction, amount } = this;
    let leaving = -1;
    let least = Infinity;
    let pivot = 0;
    for (let j = 0; j < this.rowCount; j++) {
      if (direction[j] <= DUST) continue;
      const ratio = amount[j] / direction[j];
      if (ratio < least - 1e-10 || (ratio < least + 1e-10 && direction[j] > pivot)) {
        least = ratio;
        leaving = j;
        pivot = direction[j];
      }
    }
    return leaving;
  }

  private pivot(leaving: number, entering: number): void {
    const { direction, amount, inverse, rowCount: n, basis, inBasis } = this;
    const scale = 1 / direction[leaving];
    const pivotRow = inverse.subarray(leaving * n, leaving * n + n);
    for (let r = 0; r < n; r++) pivotRow[r] *= scale;
    amount[leaving] *= scale;
    for (let j = 0; j < n; j++) {
      const factor = direction[j];
      if (j === leaving || factor === 0) continue;
      for (let r = 0, at = j * n; r < n; r++, at++) inverse[at] -= factor * pivotRow[r];
      const next = amount[j] - factor * amount[leaving];
      amount[j] = next < 0 && next > -DUST ? 0 : next;
    }
    if (basis[leaving] >= 0) inBasis[basis[leaving]] = 0;
    if (entering >= 0) inBasis[entering] = 1;
    basis[leaving] = entering;
  }
}
