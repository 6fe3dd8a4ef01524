import fc from "fast-check";
import { checkPlan, CutList, firstFitPlan, ownStripsPlan, Patch, planCuts } from "../../src/math/cutplan";
import { columnOf, Model } from "../../src/math/cutplan/model";
import { Search } from "../../src/math/cutplan/search";
import { tidyPlan } from "../../src/math/cutplan/tidy";
import { Work } from "../../src/math/cutplan/work";

const side = fc.integer({ min: 4, max: 60 });
const patch = fc.record({
  label: fc.constantFrom("square", "strip", "corner", ""),
  width: side,
  height: side,
  count: fc.integer({ min: 0, max: 30 }),
  mayTurn: fc.boolean(),
});
const list = fc.array(patch, { minLength: 1, maxLength: 8 }).filter((rows) => rows.some(({ count }) => count > 0));
const cloth = fc.record({
  width: fc.integer({ min: 60, max: 200 }),
  trimming: fc.boolean(),
  buyingStep: fc.constantFrom(1, 9, 36),
  extraLength: fc.constantFrom(0, 5),
});
const RUNS = { numRuns: 120 };
const BUDGET = { budget: 3e6 };

const border: Patch = { label: "border", width: 480, height: 40, count: 4, mayTurn: true };
const square: Patch = { label: "square", width: 20, height: 20, count: 30, mayTurn: true };

describe("planCuts", () => {
  test("makes plans in which a second count finds nothing wrong", () => {
    fc.assert(
      fc.property(list, cloth, (rows, on) => {
        expect(checkPlan(planCuts(rows, { ...on, ...BUDGET }), rows, on)).toEqual([]);
      }),
      RUNS,
    );
  });

  test("is never longer than plans without planning, nor shorter than the area", () => {
    fc.assert(
      fc.property(list, cloth, (rows, on) => {
        const plan = planCuts(rows, { ...on, ...BUDGET });
        expect(plan.length).toBeLessThanOrEqual(firstFitPlan(rows, on).length);
        expect(plan.length).toBeLessThanOrEqual(ownStripsPlan(rows, on).length);
        expect(plan.length * on.width).toBeGreaterThanOrEqual(plan.patchArea);
      }),
      RUNS,
    );
  });

  test("without planning, patches are trimmed unless that is not allowed", () => {
    const rows: CutList = [50, 46].map((height) => ({ ...square, width: 100, height, count: 1, mayTurn: false }));
    const length = (trimming?: boolean) => firstFitPlan(rows, { width: 336, trimming }).length;
    expect([length(), length(true), length(false)]).toEqual([50, 50, 96]);
    expect(ownStripsPlan(rows, { width: 336 })).toEqual({ length: 96, stripCount: 2 });
  });

  test("needs no more when trimming or turning is allowed, if proved", () => {
    fc.assert(
      fc.property(list, cloth, (rows, on) => {
        const strict = planCuts(rows, { ...on, buyingStep: 1, trimming: false });
        const trimmed = planCuts(rows, { ...on, buyingStep: 1, trimming: true });
        const turned = planCuts(
          rows.map((row) => ({ ...row, mayTurn: true })),
          { ...on, buyingStep: 1, trimming: true },
        );
        expect(trimmed.lengthBound).toBeLessThanOrEqual(strict.length);
        expect(turned.lengthBound).toBeLessThanOrEqual(trimmed.length);
      }),
      { numRuns: 40 },
    );
  });

  test("gives the same plan again, without planning again", () => {
    const rows: CutList = [square, { ...square, label: "other", width: 33 }];
    expect(planCuts(rows, { width: 336 })).toBe(planCuts([...rows], { width: 336 }));
    expect(planCuts(rows, { width: 337 })).not.toBe(planCuts(rows, { width: 336 }));
  });

  test("forgets a plan after 64 others", () => {
    const plan = (width: number) => planCuts([square], { width, budget: 1e5 });
    const first = plan(1000);
    for (let others = 1; others < 64; others++) plan(1000 + others);
    expect(plan(1000)).toBe(first);
    plan(1064);
    expect(plan(1000)).not.toBe(first);
  });

  test("ten times the counts take no more than the budget", () => {
    const rows = [18, 23, 31, 44, 52, 67].map((width, i) => ({ ...square, width, height: 20 + 7 * i, count: 5 + i }));
    const tenfold = rows.map((row) => ({ ...row, count: 10 * row.count }));
    for (const many of [rows, tenfold]) {
      const plan = planCuts(many, { width: 336, budget: 10e6 });
      expect(plan.work).toBeLessThan(11e6);
      expect(checkPlan(plan, many, { width: 336 })).toEqual([]);
    }
  });
});

describe("patches longer than the cloth is wide", () => {
  const on = { width: 336, joinLoss: 4 };

  test("are joined from full strips and a rest", () => {
    const rows: CutList = [square, { ...border, whenLong: "join" }];
    const plan = planCuts(rows, on);
    // 4 borders of 480 need 1920 + 5 joins of 4 = 1940 = 5 strips of 336 and a rest of 260.
    expect(plan.joins).toEqual([{ row: 1, label: "border", strips: 6, rest: 260, loss: 4 }]);
    expect(checkPlan(plan, rows, on)).toEqual([]);
    // The last strip has room for 3 squares besides; the other 27 need two strips.
    expect(plan.length).toBe(6 * 40 + 2 * 20);
  });

  test("lose a strip's height at a diagonal join", () => {
    const rows: CutList = [{ ...border, whenLong: "join" }];
    const plan = planCuts(rows, { width: 336, joinLoss: "diagonal" });
    // k strips give 336 k - 40 (k - 1) >= 1920: k = 7, rest 1920 - 6 × 296 = 144.
    expect(plan.joins).toEqual([{ row: 0, label: "border", strips: 7, rest: 144, loss: 40 }]);
  });

  test("are cut along the length", () => {
    const rows: CutList = [{ ...border, whenLong: "along" }];
    const plan = planCuts(rows, on);
    expect(plan.length).toBe(480);
    expect(plan.strips[0].pieces).toMatchObject([{ count: 4, across: 40, along: 480, turned: true }]);
    expect(checkPlan(plan, rows, on)).toEqual([]);
  });
});

describe("a plan is easy to cut", () => {
  const kinds = [
    { width: 100, height: 40, count: 12, mayTurn: false },
    { width: 60, height: 40, count: 12, mayTurn: false },
    { width: 60, height: 36, count: 6, mayTurn: false },
  ];
  const strip = (counts: number[], times: number) => ({ column: columnOf(model.heights.indexOf(40), counts), times });
  const model = new Model(320, kinds, true);

  test("strips of the same length and number become fewer kinds, with fewer patches to trim", () => {
    const search = new Search(model, new Work(1e6), 1);
    search.offer([
      strip([3, 0, 0], 3),
      strip([3, 0, 0], 1),
      strip([0, 5, 0], 1),
      strip([0, 4, 1], 1),
      strip([0, 3, 2], 1),
      strip([0, 0, 3], 1),
    ]);
    const before = search.best;
    tidyPlan(search);
    const { best } = search;
    expect(best.length).toBeLessThanOrEqual(before.length);
    expect(best.strips).toBeLessThanOrEqual(before.strips);
    expect(best.trims).toBeLessThan(before.trims);
    expect(before.trims).toBe(3);
  });

  test("kinds of strip are fewer where trims are as few", () => {
    const two = new Model(320, kinds.slice(0, 2), true);
    const level = two.heights.indexOf(40);
    const search = new Search(two, new Work(1e6), 1);
    // 12 of 100 and 12 of 60 in strips of 320: six strips of 2 and 2 fill the width as well as five kinds of strip do.
    search.offer(
      [
        [3, 0],
        [3, 0],
        [1, 3],
        [1, 3],
        [2, 2],
        [2, 2],
        [0, 2],
      ].map((counts) => ({ column: columnOf(level, counts), times: 1 })),
    );
    const before = search.best;
    tidyPlan(search);
    expect(search.best.layers.length).toBeLessThan(before.layers.length);
    expect(search.best.length).toBeLessThanOrEqual(before.length);
  });

  test("the widest patch of a strip comes first, and strips go from high to low", () => {
    fc.assert(
      fc.property(list, cloth, (rows, on) => {
        const { strips } = planCuts(rows, { ...on, ...BUDGET });
        const falls = (values: number[]) => values.every((value, i) => i === 0 || value <= values[i - 1]);
        expect(falls(strips.map(({ height }) => height))).toBe(true);
        for (const { pieces } of strips) expect(falls(pieces.map(({ across }) => across))).toBe(true);
      }),
      RUNS,
    );
  });
});
