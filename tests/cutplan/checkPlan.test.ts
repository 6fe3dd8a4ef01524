/** The second count of a plan sees every fault that is put in, and finds none in plans that are right. */
import {
  checkPlan,
  type Cloth,
  type CutList,
  type CutPlan,
  type Piece,
  planCuts,
  type Strip,
} from "../../src/math/cutplan";

const rows: CutList = [
  { label: "square", width: 20, height: 20, count: 30, mayTurn: true },
  { label: "tall", width: 33, height: 47, count: 4, mayTurn: true },
  { label: "border", width: 480, height: 40, count: 2, mayTurn: false, whenLong: "along" },
];
const on: Cloth = { width: 336, buyingStep: 36, extraLength: 5 };

const piece = (row: number, count: number, lies: Partial<Piece> = {}): Piece => ({
  row,
  label: rows[row].label,
  count,
  across: rows[row].width,
  along: rows[row].height,
  turned: false,
  trimmed: false,
  ...lies,
});

/** Made by hand: 480 + 47 + 2 × 20 = 567; with 5 more, 16 × 36 = 576 are bought. */
const plan: CutPlan = {
  strips: [
    { height: 480, times: 1, pieces: [piece(2, 2, { across: 40, along: 480, turned: true })], used: 80, left: 256 },
    { height: 47, times: 1, pieces: [piece(1, 4), piece(0, 10, { trimmed: true })], used: 332, left: 4 },
    { height: 20, times: 2, pieces: [piece(0, 10)], used: 200, left: 136 },
  ],
  joins: [],
  length: 567,
  lengthBound: 560,
  lengthProved: false,
  stripCount: 4,
  stripBound: 3,
  stripsProved: false,
  trims: 10,
  toBuy: 576,
  toBuyBound: 576,
  toBuyProved: true,
  patchArea: 30 * 20 * 20 + 4 * 33 * 47 + 2 * 480 * 40,
  work: 0,
};

const withStrip = (index: number, change: Partial<Strip>): CutPlan => ({
  ...plan,
  strips: plan.strips.map((strip, i) => (i === index ? { ...strip, ...change } : strip)),
});
const withPiece = (index: number, change: Partial<Piece>): CutPlan => {
  const [first, ...others] = plan.strips[index].pieces;
  return withStrip(index, { pieces: [{ ...first, ...change }, ...others] });
};

test("a plan that is right has no fault, nor has one as the planner makes it", () => {
  expect(checkPlan(plan, rows, on)).toEqual([]);
  expect(checkPlan({ ...plan, lengthBound: 567, lengthProved: true }, rows, on)).toEqual([]);
  expect(checkPlan({ ...plan, stripBound: 4, stripsProved: true }, rows, on)).toEqual([]);
  expect(checkPlan({ ...plan, toBuyBound: 540, toBuyProved: false }, rows, on)).toEqual([]);
  const turned = {
    pieces: [piece(1, 4, { across: 47, along: 33, turned: true, trimmed: true })],
    used: 188,
    left: 148,
  };
  expect(checkPlan(withStrip(1, turned), rows, on)).not.toContain("strip of 47: tall has the wrong size");
  for (const cloth of [on, { ...on, trimming: false }, { width: 336 }]) {
    expect(checkPlan(planCuts(rows, cloth), rows, cloth)).toEqual([]);
  }
  // One that fits to the last thread is not too wide, nor is its bound below the area.
  const full: CutList = [{ label: "full", width: 56, height: 20, count: 6, mayTurn: false }];
  expect(checkPlan(planCuts(full, { width: 336 }), full, { width: 336 })).toEqual([]);
});

const faults: [string, CutPlan, string][] = [
  ["a missing strip", { ...plan, strips: plan.strips.slice(1) }, "border: 0 cut, 2 wanted"],
  ["a strip cut too often", withStrip(2, { times: 3 }), "square: 40 cut, 30 wanted"],
  ["half a strip", withStrip(2, { times: 0.5 }), "strip of 20: not a whole number of strips"],
  ["no strip", withStrip(2, { times: 0 }), "strip of 20: not a whole number of strips"],
  ["a strip of no whole height", withStrip(2, { height: 20.5 }), "strip of 20.5: not a whole number of strips"],
  ["half a patch", withPiece(2, { count: 0.5 }), "strip of 20: 0.5 of square"],
  ["no patch", withPiece(2, { count: 0 }), "strip of 20: 0 of square"],
  ["a patch higher than its strip", withStrip(1, { height: 46 }), "strip of 46: tall is higher than the strip"],
  ["a strip higher than its patches", withStrip(1, { height: 48 }), "strip of 48: higher than any of its patches"],
  ["a trim that is none", withPiece(1, { trimmed: true }), "strip of 47: tall trimmed or not?"],
  ["a trim that is not said", withStrip(1, { pieces: [piece(0, 10)] }), "strip of 47: square trimmed or not?"],
  ["a piece of no row", withPiece(1, { row: 9 }), "strip of 47: a piece of no row"],
  ["another label", withPiece(1, { label: "other" }), "strip of 47: other is not tall"],
  ["another size", withPiece(1, { across: 34 }), "strip of 47: tall has the wrong size"],
  ["another height", withPiece(1, { along: 46 }), "strip of 47: tall has the wrong size"],
  ["a turned patch that lies as listed", withPiece(1, { turned: true }), "strip of 47: tall has the wrong size"],
  ["a turned patch of another width", withPiece(0, { across: 41 }), "strip of 480: border has the wrong size"],
  ["a turned patch of another height", withPiece(0, { along: 479 }), "strip of 480: border has the wrong size"],
  ["a wrong width", withStrip(1, { used: 333 }), "strip of 47: width used or left is wrong"],
  ["a wrong rest", withStrip(1, { left: 5 }), "strip of 47: width used or left is wrong"],
  [
    "a strip too wide",
    withStrip(2, { pieces: [piece(0, 17)], used: 340, left: -4 }),
    "strip of 20: wider than the cloth",
  ],
  ["a join that nobody asked for", withPiece(1, { part: "rest" }), "tall: joined without being asked"],
  ["a wrong length", { ...plan, length: 566 }, "length 566, but the strips add up to 567"],
  ["a wrong number of strips", { ...plan, stripCount: 5 }, "5 strips, but there are 4"],
  ["a wrong number of trims", { ...plan, trims: 9 }, "9 trims, but there are 10"],
  ["a wrong area", { ...plan, patchArea: 1 }, `patch area 1, but the pieces add up to ${plan.patchArea}`],
  ["a bound that is too high", { ...plan, lengthBound: 568 }, "the bound is above the length"],
  ["a bound that is too low", { ...plan, lengthBound: 168 }, "the bound is below the area of the patches"],
  ["too high a bound of strips", { ...plan, stripBound: 5 }, "the bound is above the number of strips"],
  ["a proof that is none", { ...plan, lengthProved: true }, "proved least, or not?"],
  ["a proof that is not said", { ...plan, lengthBound: 567 }, "proved least, or not?"],
  ["a count that is not proved", { ...plan, stripsProved: true }, "proved fewest strips, or not?"],
  ["a proof of the count that is not said", { ...plan, stripBound: 4 }, "proved fewest strips, or not?"],
  ["less to buy than a step", { ...plan, toBuy: 575 }, "too little to buy"],
  ["too little to buy", { ...plan, toBuy: 540 }, "too little to buy"],
  ["too much to buy", { ...plan, toBuy: 612 }, "too much to buy"],
  ["a bound above what to buy", { ...plan, toBuyBound: 612, toBuyProved: false }, "the bound is above what to buy"],
  ["an amount that is not proved", { ...plan, toBuyBound: 540 }, "proved least to buy, or not?"],
  ["a proof of the amount that is not said", { ...plan, toBuyProved: false }, "proved least to buy, or not?"],
];

test.each(faults)("%s", (_, broken, says) => {
  expect(checkPlan(broken, rows, on)).toContain(says);
});

test("length that is lost besides the strips counts in what to buy", () => {
  const lost = (extraLength: number) => checkPlan(plan, rows, { ...on, extraLength });
  expect(lost(9)).toEqual([]);
  expect(lost(10)).toEqual(["too little to buy"]);
  expect(checkPlan({ ...plan, toBuy: 612, toBuyBound: 612 }, rows, { ...on, extraLength: 10 })).toEqual([]);
  expect(checkPlan({ ...plan, toBuy: 612, toBuyBound: 612 }, rows, { ...on, extraLength: 9 })).toEqual([
    "too much to buy",
  ]);
});

test("a trim where none is allowed", () => {
  expect(checkPlan(plan, rows, { ...on, trimming: false })).toEqual(["strip of 47: square would need trimming"]);
});

test("a turned patch: one that may not be, one that is too long, one that could lie across", () => {
  const says = (change: Partial<CutList[number]>, width = on.width) =>
    checkPlan(plan, [rows[0], rows[1], { ...rows[2], ...change }], { ...on, width });
  const mustNot = "strip of 480: border must not be turned";
  expect(says({})).not.toContain(mustNot);
  expect(says({ whenLong: undefined })).toContain(mustNot);
  expect(says({ whenLong: "join" })).toContain(mustNot);
  expect(says({ whenLong: undefined, mayTurn: true })).not.toContain(mustNot);
  // As wide as it is long, the cloth takes the border across.
  expect(says({}, 480)).toContain(mustNot);
  expect(says({}, 479)).not.toContain(mustNot);
});

describe("a joined border", () => {
  const border: CutList = [{ label: "border", width: 500, height: 30, count: 2, mayTurn: false, whenLong: "join" }];
  const cloth = { width: 336, joinLoss: 4 };
  const joined = planCuts(border, cloth);
  const change = (to: (piece: Piece) => Piece): string[] =>
    checkPlan(
      { ...joined, strips: joined.strips.map((strip) => ({ ...strip, pieces: strip.pieces.map(to) })) },
      border,
      cloth,
    );

  test("is long enough after what the joins lose", () => {
    expect(checkPlan(joined, border, cloth)).toEqual([]);
    expect(checkPlan(joined, border, { ...cloth, joinLoss: 5 })).toEqual(["border: 998 joined, 1000 wanted"]);
    const diagonal = { ...cloth, joinLoss: "diagonal" as const };
    expect(checkPlan(planCuts(border, diagonal), border, diagonal)).toEqual([]);
    expect(checkPlan(joined, border, { width: 336 })).toEqual(["border: 1008 joined, 1000 wanted"]);
  });

  test("is as high, wide and straight as asked", () => {
    const noStrip = "strip of 30: border is not a strip to join";
    expect(change((part) => ({ ...part, along: 29 }))).toContain(noStrip);
    expect(change((part) => ({ ...part, across: 337 }))).toContain(noStrip);
    expect(change((part) => ({ ...part, turned: true }))).toContain(noStrip);
    expect(change((part) => ({ ...part, across: 300 }))).toContain("strip of 30: border is not as wide as the cloth");
  });

  test("is not joined unless asked, nor joined and cut whole at once", () => {
    const unasked = "border: joined without being asked";
    expect(checkPlan(joined, [{ ...border[0], whenLong: "along" }], cloth)).toContain(unasked);
    expect(change((part) => (part.part === "rest" ? { ...part, part: undefined } : part))).toContain(unasked);
  });
});
