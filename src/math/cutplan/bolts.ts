import { Problem } from "../problem";
import { MOST_PATCHES, MOST_ROWS } from "./parts";

/** Lengths to cut, in whole units. */
export interface BoltCut {
  readonly label: string;
  readonly length: number;
  readonly count: number;
}

/** Bolts at hand, in whole units. */
export interface Bolt {
  readonly label: string;
  readonly length: number;
  readonly count: number;
}

/** One bolt and what is cut from it. */
export interface UsedBolt {
  /** row of the list of bolts, from 0 */
  readonly bolt: number;
  readonly label: string;
  readonly length: number;
  /** longest first; `row` is the row of the list of cuts, from 0 */
  readonly cuts: readonly {
    readonly row: number;
    readonly label: string;
    readonly length: number;
    readonly count: number;
  }[];
  readonly left: number;
}

export interface BoltPlan {
  /** longest bolts first */
  readonly bolts: readonly UsedBolt[];
  readonly boltCount: number;
  /** no plan takes fewer bolts */
  readonly boltBound: number;
  /** length left over on the bolts taken */
  readonly left: number;
  /** no plan with this many bolts leaves less */
  readonly leftBound: number;
  readonly proved: boolean;
}

/** Tries of a place for a cut: for one choice of bolts, and for all of them. */
const TRIES_PER_CHOICE = 20_000;
const TRIES = 100_000;

/** Choices of one number of bolts that are looked at. */
const MOST_CHOICES = 20_000;

/** More bolts than this are a slip of the keyboard. */
const MOST_BOLTS = 200;

/** Single bolts, or single cuts, longest first. */
interface Single {
  readonly row: number;
  readonly length: number;
}

/**
 * Which lengths to cut from which bolts: fewest bolts, then least left over.
 *
 * Choices of bolts are tried in just that order, so the first that holds all cuts is the best. Whether one holds them is
 * decided by trying everything, longest cut first; where that takes too long, the choice stays undecided and the bound
 * says so.
 *
 * @throws Problem "bad input" for rows that make no sense, "no answer" when the bolts do not hold the cuts
 */
export function planBolts(cuts: readonly BoltCut[], bolts: readonly Bolt[], tries = TRIES): BoltPlan {
  const wanted = singles("cut", cuts, MOST_PATCHES);
  const stock = singles("bolt", bolts, MOST_BOLTS);
  if (wanted.length === 0) throw new Problem("bad input", "the list counts no cuts");
  if (stock.length === 0) throw new Problem("bad input", "the list counts no bolts");
  if (wanted[0].length > stock[0].length) {
    const { label } = cuts[wanted[0].row];
    throw new Problem("no answer", `row ${wanted[0].row + 1} (${label}) is longer than the longest bolt`);
  }
  const needed = sum(wanted.map(({ length }) => length));
  const usable = usableLengths(stock[0].length, wanted);
  const budget = { left: tries };
  let bound: { count: number; left: number } | undefined;
  for (let count = 1; count <= Math.min(stock.length, wanted.length); count++) {
    const choices = choicesOf(stock, count, needed, usable);
    for (let i = 0; i < choices.length; i++) {
      // Out of budget, only the choice that is likeliest to hold the cuts is tried.
      const { chosen, total } = budget.left > 0 ? choices[i] : choices[(i = choices.length - 1)];
      const packing = new BoltPacking(chosen, usable, wanted, budget);
      const outcome = packing.pack();
      if (outcome === "impossible") continue;
      // The first choice that may hold the cuts is where the bound stops.
      bound ??= { count, left: (choices.length < MOST_CHOICES ? total : needed) - needed };
      if (outcome === "undecided") continue;
      const plan = chosen.map((bolt, b) => usedBolt(bolt, packing.contents[b], cuts, bolts));
      return describe(
        plan.filter((bolt) => bolt.cuts.length > 0),
        bound,
      );
    }
  }
  throw new Problem(
    "no answer",
    bound ? "no way was found to cut all of the list from these bolts" : "the bolts do not hold all the cuts",
  );
}

function describe(bolts: UsedBolt[], bound: { count: number; left: number }): BoltPlan {
  const left = sum(bolts.map((bolt) => bolt.left));
  const leftBound = bound.count < bolts.length ? 0 : bound.left;
  const proved = bound.count === bolts.length && leftBound === left;
  return { bolts, boltCount: bolts.length, boltBound: bound.count, left, leftBound, proved };
}

/** For each length of bolt, the most of it that cuts can fill. */
function usableLengths(longest: number, wanted: readonly Single[]): Int32Array {
  const usable = new Int32Array(longest + 1);
  const fewest = new Int32Array(longest + 1);
  const reachable = new Uint8Array(longest + 1);
  reachable[0] = 1;
  for (let i = 0; i < wanted.length;) {
    const { length } = wanted[i];
    let count = 0;
    for (; i < wanted.length && wanted[i].length === length; i++) count++;
    // How many of this length it takes at least to reach a length.
    for (let at = 0; at <= longest; at++) {
      if (reachable[at] === 1) fewest[at] = 0;
      else if (at >= length && reachable[at - length] === 1 && fewest[at - length] < count) {
        reachable[at] = 1;
        fewest[at] = fewest[at - length] + 1;
      }
    }
  }
  for (let at = 1; at <= longest; at++) usable[at] = reachable[at] === 1 ? at : usable[at - 1];
  return usable;
}

/** One entry for each bolt or cut, longest first. */
function singles(what: string, rows: readonly (BoltCut | Bolt)[], most: number): Single[] {
  if (rows.length > MOST_ROWS) throw new Problem("bad input", `a list of ${what}s has at most ${MOST_ROWS} rows`);
  let all = 0;
  rows.forEach(({ label, length, count }, row) => {
    const name = label === "" ? `${what} ${row + 1}` : `${what} ${row + 1} (${label})`;
    if (!Number.isSafeInteger(length) || length <= 0) {
      throw new Problem("bad input", `${name}: the length must be more than 0`);
    }
    if (!Number.isSafeInteger(count) || count < 0) {
      throw new Problem("bad input", `${name}: the count must be a whole number, not ${count}`);
    }
    all += count;
    if (all > most) throw new Problem("bad input", `${name}: more than ${most} ${what}s in one plan`);
  });
  return rows
    .flatMap(({ length, count }, row) => Array.from({ length: count }, () => ({ row, length })))
    .sort((a, b) => b.length - a.length || a.row - b.row);
}

/** A choice of bolts. */
interface Choice {
  readonly chosen: readonly Single[];
  readonly total: number;
}

/** All choices of `count` bolts of which enough is usable, least in total first. */
function choicesOf(stock: readonly Single[], count: number, needed: number, usable: Int32Array): Choice[] {
  const choices: Choice[] = [];
  const sums = [0];
  for (const { length } of stock) sums.push(sums[sums.length - 1] + usable[length]);
  const choose = (start: number, chosen: readonly Single[], total: number, filled: number): void => {
    const more = count - chosen.length;
    if (choices.length >= MOST_CHOICES || start + more > stock.length) return;
    if (filled + sums[start + more] - sums[start] < needed) return;
    if (more === 0) {
      choices.push({ chosen, total });
      return;
    }
    const { length } = stock[start];
    choose(start + 1, [...chosen, stock[start]], total + length, filled + usable[length]);
    // Without this bolt, bolts of its length are passed over, or the same choice would come again.
    let next = start + 1;
    while (next < stock.length && stock[next].length === stock[start].length) next++;
    choose(next, chosen, total, filled);
  };
  choose(0, [], 0, 0);
  return choices.sort((a, b) => a.total - b.total);
}

/** Puts cuts into bolts, trying everything. */
class BoltPacking {
  readonly contents: number[][];
  private readonly left: number[];
  /** length that may be wasted in all */
  private spare: number;
  private tries = TRIES_PER_CHOICE;
  private readonly shortest: number;

  constructor(
    bolts: readonly Single[],
    usable: Int32Array,
    private readonly wanted: readonly Single[],
    private readonly budget: { left: number },
  ) {
    this.left = bolts.map(({ length }) => usable[length]);
    this.contents = bolts.map(() => []);
    this.shortest = wanted[wanted.length - 1].length;
    this.spare = sum(this.left) - sum(wanted.map(({ length }) => length));
  }

  pack(): "packed" | "impossible" | "undecided" {
    if (this.fitTightly() || this.place(0, 0)) return "packed";
    return this.tries > 0 && this.budget.left > 0 ? "impossible" : "undecided";
  }

  /** A first try: each cut into the bolt that it fits most tightly. */
  private fitTightly(): boolean {
    const start = [...this.left];
    for (const { row, length } of this.wanted) {
      let tightest = -1;
      this.left.forEach((left, bolt) => {
        if (left >= length && (tightest < 0 || left < this.left[tightest])) tightest = bolt;
      });
      if (tightest < 0) {
        this.left.splice(0, start.length, ...start);
        for (const content of this.contents) content.length = 0;
        return false;
      }
      this.left[tightest] -= length;
      this.contents[tightest].push(row);
    }
    return true;
  }

  /** Places the cuts from `index` on; a cut as long as the one before goes into the same bolt or a later one. */
  private place(index: number, firstBolt: number): boolean {
    if (index === this.wanted.length) return true;
    const { length, row } = this.wanted[index];
    const order = this.left
      .map((left, bolt) => ({ left, bolt }))
      .filter(({ left, bolt }) => left >= length && bolt >= firstBolt)
      .sort((a, b) => a.left - b.left || a.bolt - b.bolt)
      .filter(({ left }, i, all) => i === 0 || left !== all[i - 1].left);
    for (const { left, bolt } of order) {
      this.tries--;
      this.budget.left--;
      const rest = left - length;
      const wasted = rest < this.shortest ? rest : 0;
      if (wasted > this.spare) continue;
      this.spare -= wasted;
      this.left[bolt] = rest;
      this.contents[bolt].push(row);
      const same = this.wanted[index + 1]?.length === length;
      if (this.place(index + 1, same ? bolt : 0)) return true;
      this.contents[bolt].pop();
      this.left[bolt] = left;
      this.spare += wasted;
      if (this.tries <= 0 || this.budget.left <= 0) return false;
    }
    return false;
  }
}

function usedBolt(
  bolt: Single,
  contents: readonly number[],
  cuts: readonly BoltCut[],
  bolts: readonly Bolt[],
): UsedBolt {
  const rows = [...new Set(contents)];
  const used = rows.map((row) => {
    const { label, length } = cuts[row];
    return { row, label, length, count: contents.filter((other) => other === row).length };
  });
  const left = bolt.length - sum(used.map(({ length, count }) => length * count));
  return { bolt: bolt.row, label: bolts[bolt.row].label, length: bolt.length, cuts: used, left };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
