/**
 * A plan is the same on every machine: work is counted in steps, and chance is drawn from a seed. What one machine found, and
 * in how many steps, any other must find. A change of the search changes what is recorded; once the other tests agree with it,
 * `RECORD=1 npx jest sameEverywhere` writes it anew.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Bolt,
  type BoltPlan,
  checkPlan,
  type Cloth,
  type CutList,
  type CutPlan,
  firstFitPlan,
  ownStripsPlan,
  type PanelPlan,
  type Patch,
  planBolts,
  planCuts,
  planPanels,
  type Strip,
} from "../../src/math/cutplan";
import type { Problem } from "../../src/math/problem";
import { dice, instances, listOf } from "./data";

const FILE = join(__dirname, "../data/cutplan/recorded.json");
const recorded = JSON.parse(readFileSync(FILE, "utf8")) as Record<string, string>;

function expectSame(name: string, found: string): void {
  if (process.env.RECORD) {
    recorded[name] = found;
    writeFileSync(FILE, `${JSON.stringify(recorded, null, 1)}\n`);
  }
  expect(found).toBe(recorded[name]);
}

/**
 * Strips as they are cut: 2 of height 40, each with 3 patches of row 0 and a turned one of row 1, is 2×40(3 of 0, 1 of 1t);
 * f and r stand behind the full strips and the rest of a join.
 */
function told(strips: readonly Strip[]): string {
  return strips
    .map(({ times, height, pieces }) => {
      const inside = pieces.map(
        ({ count, row, turned, part }) => `${count} of ${row}${turned ? "t" : ""}${part?.[0] ?? ""}`,
      );
      return `${times}×${height}(${inside.join(", ")})`;
    })
    .join(" ");
}

function toldPlan({
  length,
  lengthBound,
  stripCount,
  stripBound,
  trims,
  toBuy,
  toBuyBound,
  work,
  strips,
}: CutPlan): string {
  const bounds = `${length}≥${lengthBound} ${stripCount}≥${stripBound} ${toBuy}≥${toBuyBound}`;
  return `${bounds}, ${trims} trims, ${work} steps: ${told(strips)}`;
}

function toldPanels({ panelCount, panelBound, panels }: PanelPlan): string {
  const cut = panels.map(({ times, way, strips }) => `${times} ${way} ${told(strips)}`);
  return `${panelCount}≥${panelBound}: ${cut.join("; ")}`;
}

function toldBolts({ boltCount, boltBound, left, leftBound, proved, bolts }: BoltPlan): string {
  const cut = bolts.map(({ bolt, cuts, left: rest }) => {
    return `${bolt}(${cuts.map(({ count, row }) => `${count} of ${row}`).join(", ")}; ${rest} left)`;
  });
  const proof = proved ? "proved" : "not proved";
  return `${boltCount}≥${boltBound}, ${left}≥${leftBound} left, ${proof}: ${cut.join(" ")}`;
}

/** A list drawn by chance: so many rows, patches of at most so many of each, cut from cloth so wide. */
function drawn(seed: number, rows: number, most: number, widest: number): { list: CutList; cloth: Cloth } {
  const roll = dice(seed);
  const side = () => 3 + roll(Math.ceil(widest / 2));
  const list = Array.from({ length: rows }, (_, row) => ({
    label: `patch ${row}`,
    width: side(),
    height: side(),
    count: 1 + roll(most),
    mayTurn: roll(2) === 0,
  }));
  const cloth = {
    width: widest + roll(widest),
    trimming: roll(3) > 0,
    buyingStep: [1, 1, 9, 36][roll(4)],
    extraLength: [0, 0, 5][roll(3)],
  };
  return { list, cloth };
}

const QUILTS: [string, boolean, number][] = [
  ["HST star background, queen", true, 1],
  ["setting and corner triangles (squares) plus alternate blocks", true, 1],
  ["churn dash, sixteenths", true, 1],
  ["baby quilt, small mixed list", false, 1],
  ["hourglass + sawtooth border, stripe", true, 1],
  ["modern, few big panels", true, 1],
  ["sampler, 24 kinds", true, 1],
  ["sampler, 24 kinds", true, 36],
  ["sampler, 24 kinds", false, 1],
  ["sampler, 24 kinds, directional", true, 36],
  ["scrap background, 30 kinds, 1994 pieces", true, 36],
];

test.each(QUILTS)("%s (trimming: %s, bought by %s)", (name, trimming, buyingStep) => {
  const { W, items, rot } = instances("quilts20.json").find((instance) => instance.name === name)!;
  const [list, cloth] = [listOf(items, rot), { width: W, trimming, buyingStep }];
  const plan = planCuts(list, cloth);
  expect(checkPlan(plan, list, cloth)).toEqual([]);
  expectSame(`${name}, ${trimming ? "trimmed" : "not trimmed"}, by ${buyingStep}`, toldPlan(plan));
});

/** Rows, most patches of a row, least width of the cloth, steps of work. */
const SIZES: [number, number, number, number][] = [
  [1, 9, 20, 1e6],
  [3, 5, 30, 1e6],
  [5, 9, 50, 2e6],
  [8, 20, 90, 3e6],
  [14, 30, 200, 3e6],
  [27, 9, 150, 4e6],
];
const LISTS = SIZES.flatMap((size) => [1, 2, 3, 4, 5, 6].map((seed) => [seed, ...size] as const));

test.each(LISTS)("list %i of %i rows", (seed, rows, most, widest, budget) => {
  const { list, cloth } = drawn(seed, rows, most, widest);
  const plan = planCuts(list, { ...cloth, budget });
  expect(checkPlan(plan, list, cloth)).toEqual([]);
  expectSame(`list ${seed} of ${rows} rows`, toldPlan(plan));
});

test.each([1, 2, 3, 4, 5, 6, 7, 8])("list %i with patches longer than the cloth is wide", (seed) => {
  const roll = dice(seed);
  const patches = Array.from({ length: 5 }, (_, row): Patch => {
    const sides = { width: 5 + roll(60), height: 5 + roll(220) };
    return { label: `patch ${row}`, ...sides, count: 1 + roll(9), mayTurn: roll(3) > 0 };
  });
  const borders = (["join", "along"] as const).map((whenLong): Patch => {
    const sides = { width: 110 + roll(300), height: 10 + roll(20) };
    return { label: whenLong, ...sides, count: 1 + roll(4), mayTurn: false, whenLong };
  });
  const list = [...patches, ...borders];
  const joinLoss = ([0, 4, "diagonal"] as const)[roll(3)];
  const cloth: Cloth = { width: 100, trimming: roll(3) > 0, joinLoss };
  const plan = planCuts(list, { ...cloth, budget: 2e6 });
  expect(checkPlan(plan, list, cloth)).toEqual([]);
  const joins = plan.joins.map(
    ({ row, strips, rest, loss }) => `row ${row} from ${strips} strips, rest ${rest}, loss ${loss}`,
  );
  expectSame(`list ${seed} with long patches`, `${joins.join()}; ${toldPlan(plan)}`);
});

test.each([104, 181, 321, 422])("list %i, some of whose counts of strips are hard to pack", (seed) => {
  const roll = dice(seed);
  const width = 40 + roll(60);
  const list = Array.from({ length: 3 + roll(6) }, () => ({
    label: "",
    width: 8 + roll(width / 2),
    height: 4 + roll(20),
    count: 1 + roll(12),
    mayTurn: roll(2) === 0,
  }));
  const cloth = { width, trimming: roll(3) > 0 };
  const plan = planCuts(list, cloth);
  expect(checkPlan(plan, list, cloth)).toEqual([]);
  expectSame(`list ${seed}, hard to pack`, toldPlan(plan));
});

test.each(LISTS.filter(([, rows]) => rows < 20))("list %i of %i rows, from panels", (seed, rows, most, widest) => {
  const { list, cloth } = drawn(seed, rows, most, widest);
  const plan = planPanels(list, { width: cloth.width, height: widest }, { trimming: cloth.trimming, budget: 3e6 });
  expectSame(`list ${seed} of ${rows} rows, from panels`, toldPanels(plan));
});

test.each(LISTS.filter(([, rows]) => rows > 1))("list %i of %i rows, without planning", (seed, rows, most, widest) => {
  const { list, cloth } = drawn(seed, rows, most, widest);
  const [first, own] = [firstFitPlan(list, cloth), ownStripsPlan(list, cloth)];
  const strips = ({ length, stripCount }: typeof first) => `${length} in ${stripCount} strips`;
  expectSame(`list ${seed} of ${rows} rows, without planning`, `${strips(first)}; of their own ${strips(own)}`);
});

/** Rows of cuts, rows of bolts, bolts of a row, tries. */
const BOLTS: [number, number, number, number][] = [
  [2, 2, 20, 5000],
  [5, 4, 20, 5000],
  [7, 5, 5, 3000],
  [7, 5, 5, 60],
  [9, 4, 10, 300],
];
const CUTS = BOLTS.flatMap((size) => [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => [seed, ...size] as const));

test.each(CUTS)("list %i of %i lengths, from %i rows of up to %i bolts, %i tries", (seed, cuts, rows, most, tries) => {
  const roll = dice(seed);
  const lengths = (count: number, shortest: number, longest: number, each: number): Bolt[] =>
    Array.from({ length: count }, (_, row) => ({
      label: `row ${row}`,
      length: shortest + roll(longest - shortest),
      count: 1 + roll(each),
    }));
  const wanted = lengths(cuts, 10, 60, 3 + seed);
  const stock = lengths(rows, 60, 150, most);
  let found: string;
  try {
    found = toldBolts(planBolts(wanted, stock, tries));
  } catch (thrown) {
    found = (thrown as Problem).message;
  }
  expectSame(`list ${seed} of ${cuts} lengths, from ${rows} rows of bolts, ${tries} tries`, found);
});
