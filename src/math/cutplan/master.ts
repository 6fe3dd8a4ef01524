import { Column } from "./model";
import { Pool } from "./pool";
import { CountRow } from "./rows";
import { ARTIFICIAL, Simplex } from "./simplex";
import { Work } from "./work";

/**
 * The linear program over the columns of the pool: cut every patch, fractions of strips allowed, at least cost.
 *
 * Its result is never taken for a bound: bounds come from the dual values and exact pricing (see relaxation.ts).
 */
export class Master extends Simplex {
  /** The program with nothing cut yet: artificial variables for what must be, slacks for what may be. */
  static start(
    pool: Pool,
    cost: Float64Array,
    demand: Int32Array,
    countRows: readonly CountRow[],
    penalty: number,
    work: Work,
  ): Master {
    const master = new Master(pool, cost, demand.length, countRows, penalty, work);
    const n = master.rowCount;
    for (let row = 0; row < n; row++) {
      master.inverse[row * n + row] = 1;
      master.needs[row] = row < demand.length ? demand[row] : countRows[row - demand.length].bound;
      master.amount[row] = master.needs[row];
      master.basis[row] = master.wantsMore(row) ? ARTIFICIAL : -1 - row;
    }
    return master;
  }

  /** The same program with more rows, started from this one's solution. */
  with(rows: readonly CountRow[]): Master {
    const { rowCount: before, pool } = this;
    const child = new Master(pool, this.cost, this.kindCount, [...this.countRows, ...rows], this.penalty, this.work);
    const n = child.rowCount;
    this.work.done += n * n;
    for (let j = 0; j < before; j++) {
      child.inverse.set(this.inverse.subarray(j * before, j * before + before), j * n);
    }
    child.basis.set(this.basis);
    child.amount.set(this.amount);
    child.needs.set(this.needs);
    if (this.allowed) child.allowed = { ...this.allowed, columns: [...this.allowed.columns] };
    child.outcast = new Set(this.outcast);
    rows.forEach((row, index) => {
      const added = before + index;
      const sign = row.sense === "at least" ? -1 : 1;
      let activity = 0;
      for (let j = 0; j < before; j++) {
        const variable = this.basis[j];
        const weight = variable >= 0 ? row.weight[pool.columns[variable].level] : 0;
        if (weight === 0) continue;
        activity += weight * this.amount[j];
        for (let r = 0; r < before; r++) {
          child.inverse[added * n + r] -= (weight * this.inverse[j * before + r]) / sign;
        }
      }
      child.inverse[added * n + added] = 1 / sign;
      child.basis[added] = -1 - added;
      child.amount[added] = (row.bound - activity) / sign;
      child.needs[added] = row.bound;
    });
    return child;
  }

  /** Cost of the solution, artificial variables included. */
  get value(): number {
    let sum = 0;
    for (let j = 0; j < this.rowCount; j++) sum += this.costOf(this.basis[j]) * this.amount[j];
    return sum;
  }

  /** How much the solution falls short of its rows. */
  get shortfall(): number {
    let sum = 0;
    for (let j = 0; j < this.rowCount; j++) if (this.isMissing(this.basis[j])) sum += this.amount[j];
    return sum;
  }

  /** Whether the strips that were fixed cut everything. */
  get isAllCut(): boolean {
    return this.needs.subarray(0, this.kindCount).every((count) => count <= 0);
  }

  /** The strips of the solution with their fractional number of times. */
  solution(): { column: Column; times: number }[] {
    const strips: { column: Column; times: number }[] = [];
    for (let j = 0; j < this.rowCount; j++) {
      if (this.basis[j] >= 0 && this.amount[j] > 1e-7) {
        strips.push({ column: this.pool.columns[this.basis[j]], times: this.amount[j] });
      }
    }
    return strips;
  }

  /** Sets aside some strips of the solution as cut; the program goes on with what remains. */
  fix(column: Column, times: number): void {
    const { kinds, counts, level } = column;
    for (let i = 0; i < kinds.length; i++) this.needs[kinds[i]] -= counts[i] * times;
    this.countRows.forEach((row, r) => (this.needs[this.kindCount + r] -= row.weight[level] * times));
    for (let j = 0; j < this.rowCount; j++) {
      if (this.basis[j] >= 0 && this.pool.columns[this.basis[j]] === column) this.amount[j] -= times;
    }
  }

  /** Leaves out the columns that cut more patches of a kind than there are: no whole plan can use them. */
  allowOnlyFitting(): void {
    const { columns } = this.pool;
    const fits = ({ kinds, counts }: Column) => kinds.every((kind, i) => counts[i] <= this.needs[kind]);
    this.allowNew();
    const all = this.allowed?.columns ?? columns.keys();
    this.allowed = { columns: [...all].filter((c) => fits(columns[c])), considered: columns.length };
    this.outcast = new Set(this.basis.filter((variable) => variable >= 0 && !fits(columns[variable])));
    this.work.done += 2 * columns.length;
  }
}
