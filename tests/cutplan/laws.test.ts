import fc from "fast-check";
import { checkPlan, CutList, firstFitPlan, ownStripsPlan, Patch, planCuts } from "../../src/math/cutplan";
import { Problem } from "../../src/math/problem";

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

  test("are refused otherwise, with both ways out", () => {
    expect(() => planCuts([square, border], on)).toThrow(
      'row 2 (border): 480 is wider than the 336 of usable cloth; write "join" to sew it together from strips, ' +
        'or "along" to cut it along the length of the cloth',
    );
  });
});

describe("bad lists", () => {
  const fails = (rows: CutList, sentence: string) => {
    expect(() => planCuts(rows, { width: 336 })).toThrow(new Problem("bad input", sentence));
  };

  test("are refused with a sentence that names the row", () => {
    fails([], "the list is empty");
    fails([{ ...square, count: 0 }], "the list counts no patches");
    fails([square, { ...square, count: 2.5 }], "row 2 (square): the count must be a whole number, not 2.5");
    fails([{ ...square, label: "", height: 0 }], "row 1: the height must be more than 0");
    fails([square, { ...square, count: 4990 }], "row 2 (square): more than 5000 patches in one plan");
    fails(Array<Patch>(201).fill(square), "row 201: a cutting list has at most 200 rows, this one has 201");
    fails(
      [{ ...border, height: 400, whenLong: "along" }],
      "row 1 (border): cut along the length it is 400 across, wider than the 336 of usable cloth; " +
        'write "join" to sew it from strips',
    );
  });
});

describe("checkPlan", () => {
  const rows: CutList = [square, { ...square, label: "tall", height: 47, mayTurn: false }];
  const on = { width: 336 };
  const plan = planCuts(rows, on);

  test.each([
    ["a missing strip", { ...plan, strips: plan.strips.slice(1) }],
    ["a wrong length", { ...plan, length: plan.length - 1 }],
    ["a bound that is too high", { ...plan, lengthBound: plan.length + 1 }],
    [
      "a turned one-way patch",
      {
        ...plan,
        strips: plan.strips.map((strip) => ({
          ...strip,
          pieces: strip.pieces.map((piece) => ({ ...piece, turned: true })),
        })),
      },
    ],
    ["a strip cut too often", { ...plan, strips: plan.strips.map((strip) => ({ ...strip, times: strip.times + 1 })) }],
  ])("sees %s", (_, broken) => {
    expect(checkPlan(broken, rows, on)).not.toEqual([]);
  });
});
