import { countRow, countsOf, CountLimits, narrowCounts, noLimits, stripsByLevel } from "./counts";
import { dive } from "./dive";
import { packInto } from "./leaf";
import { Master } from "./master";
import { Relaxed } from "./relaxation";
import { dualWorth, roundSolution } from "./rounded";
import { Goal, Search } from "./search";
import { CountRow } from "./rows";

/** Counts nearer to a whole number than this are whole. */
const WHOLE = 1e-5;
/** Plans made from the fractional solution of each branch. */
const ROUNDINGS = 8;
/** Share of the budget for narrowing the counts down before branching. */
const NARROWING_SHARE = 0.35;

/** A part of the search that is still open. */
interface Branch {
  readonly master: Master;
  /** no plan in this branch costs less */
  readonly bound: number;
  readonly value: number;
}

/** Whole counts that the exact packing has not decided. */
interface Undecided {
  readonly strips: Int32Array;
  readonly bound: number;
  readonly worth: Float64Array;
}

/**
 * Branch and bound on the counts of strips, with column generation in every branch.
 *
 * The branch with the lowest bound comes first. Where its counts are whole, the strips are known and only the packing is
 * open: fractional solutions are rounded, then everything is tried. Counts that cannot be packed are excluded; counts
 * that stay undecided keep the bound down until a longer try.
 *
 * @returns a bound: no plan costs less (up to the cutoff)
 */
export function branchOnCounts(search: Search, goal: Goal, root: Master, rootBound: number): number {
  return new Branching(search, goal, rootBound).run(root);
}

class Branching {
  private open: Branch[] = [];
  private readonly undecided: Undecided[] = [];
  private readonly limits: CountLimits;
  /** least bound of a branch that had to be given up */
  private givenUp = Infinity;

  constructor(
    private readonly search: Search,
    private readonly goal: Goal,
    private readonly rootBound: number,
  ) {
    this.limits = noLimits(search.model);
  }

  run(root: Master): number {
    const { search, goal, limits } = this;
    const { work } = search;
    const feasible = work.within(work.left * NARROWING_SHARE, () => narrowCounts(search, goal, root, limits));
    if (!feasible) return goal.cutoff();
    this.extend(root, [], this.rootBound);
    while (this.open.length > 0 && !work.spent) {
      const next = this.takeLowest();
      if (next.bound < goal.cutoff()) this.explore(next);
    }
    this.packUndecided();
    const bounds = [this.givenUp, ...this.open.map(({ bound }) => bound), ...this.undecided.map(({ bound }) => bound)];
    return Math.max(this.rootBound, Math.min(goal.cutoff(), ...bounds));
  }

  private takeLowest(): Branch {
    let lowest = 0;
    for (let i = 1; i < this.open.length; i++) {
      const [a, b] = [this.open[i], this.open[lowest]];
      if (a.bound < b.bound || (a.bound === b.bound && a.value < b.value)) lowest = i;
    }
    return this.open.splice(lowest, 1)[0];
  }

  private explore(branch: Branch): void {
    const { model } = this.search;
    const counts = countsOf(model, branch.master);
    const level = this.mostFractional(counts);
    if (level === undefined) {
      this.exploreWhole(branch, counts);
      return;
    }
    const whole = Math.floor(counts[level] + WHOLE);
    this.split(branch, [[countRow(model, level, "at least", whole + 1)], [countRow(model, level, "at most", whole)]]);
  }

  private split(branch: Branch, parts: readonly CountRow[][]): void {
    for (const rows of parts) {
      if (this.search.work.spent) {
        this.givenUp = Math.min(this.givenUp, branch.bound);
        return;
      }
      this.extend(branch.master, rows, branch.bound);
    }
  }

  private mostFractional(counts: Float64Array): number | undefined {
    const { model } = this.search;
    const { cost } = this.goal;
    const highest = cost[model.levelCount - 1];
    let chosen: number | undefined;
    let best = 0;
    for (let level = model.levelCount - 1; level >= 0; level--) {
      const fraction = counts[level] - Math.floor(counts[level] + WHOLE);
      if (fraction < WHOLE) continue;
      const rise = model.trimming ? cost[level] - (level > 0 ? cost[level - 1] : 0) + highest : cost[level];
      const score = Math.min(fraction, 1 - fraction) * rise;
      if (score > best) {
        best = score;
        chosen = level;
      }
    }
    return chosen;
  }

  /** Opens the branch with these rows, unless it holds nothing of interest. */
  private extend(parent: Master, rows: readonly CountRow[], parentBound: number): void {
    const { search, goal } = this;
    let master = parent;
    let bound = parentBound;
    let added = rows;
    do {
      if (added.length > 0) {
        master = master.with(added);
        const relaxed: Relaxed = search.relax(master, goal);
        if (relaxed.ending === "cut off") return;
        bound = Math.max(bound, goal.roundUp(relaxed.bound));
        if (bound >= goal.cutoff()) return;
        if (relaxed.ending !== "solved") {
          this.givenUp = Math.min(this.givenUp, bound);
          return;
        }
      }
      added = this.violatedLimit(master);
    } while (added.length > 0);
    roundSolution(search, goal, master, ROUNDINGS, bound);
    if (bound < goal.cutoff()) this.open.push({ master, bound, value: master.value });
  }

  /** The row for the limit that the solution violates most. */
  private violatedLimit(master: Master): CountRow[] {
    const { model } = this.search;
    const counts = countsOf(model, master);
    let worst = 1e-6;
    let row: CountRow[] = [];
    for (let level = 0; level < counts.length; level++) {
      const short = this.limits.least[level] - counts[level];
      const over = counts[level] - this.limits.most[level];
      if (Math.max(short, over) <= worst) continue;
      worst = Math.max(short, over);
      row =
        short > over
          ? [countRow(model, level, "at least", this.limits.least[level])]
          : [countRow(model, level, "at most", this.limits.most[level])];
    }
    return row;
  }

  /** The counts are whole: packs the strips, or excludes these counts. */
  private exploreWhole(branch: Branch, counts: Float64Array): void {
    const { search, goal } = this;
    const { model } = search;
    for (let attempt = 0; attempt < 3 && branch.bound < goal.cutoff(); attempt++) {
      dive(search, goal, branch.master, attempt * 0.3);
    }
    if (branch.bound >= goal.cutoff()) return;
    const strips = stripsByLevel(model, counts);
    const worth = dualWorth(search, branch.master);
    const packing = packInto(search, strips, worth, { nodes: 3000, fillings: 400 });
    if (packing === "undecided") this.undecided.push({ strips, bound: branch.bound, worth });
    if (branch.bound < goal.cutoff()) this.split(branch, this.allOtherCounts(counts));
  }

  /** Parts that together hold all counts but these: equal on the levels above, then more or fewer. */
  private allOtherCounts(counts: Float64Array): CountRow[][] {
    const { model } = this.search;
    const parts: CountRow[][] = [];
    const equal: CountRow[] = [];
    for (let level = model.levelCount - 1; level >= 0; level--) {
      const count = Math.round(counts[level]);
      parts.push([...equal, countRow(model, level, "at least", count + 1)]);
      if (count > 0) parts.push([...equal, countRow(model, level, "at most", count - 1)]);
      equal.push(countRow(model, level, "at least", count), countRow(model, level, "at most", count));
    }
    return parts;
  }

  /** Longer and longer tries at the counts that stayed undecided. */
  private packUndecided(): void {
    const { search, goal, undecided } = this;
    undecided.sort((a, b) => a.bound - b.bound);
    for (let factor = 1; factor <= 64 && undecided.length > 0; factor *= 4) {
      for (let i = 0; i < undecided.length && !search.work.spent; i++) {
        const { strips, bound, worth } = undecided[i];
        const limits = { nodes: 8000 * factor, fillings: 1000 * factor };
        const decided = bound >= goal.cutoff() || packInto(search, strips, worth, limits) !== "undecided";
        if (decided) undecided.splice(i--, 1);
      }
    }
  }
}
