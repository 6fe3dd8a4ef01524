/** What the planner refuses, in which words, and what it still takes. */
import {
  type Bolt,
  type Cloth,
  type CutList,
  type Patch,
  planBolts,
  planCuts,
  planPanels,
} from "../../src/math/cutplan";
import { refusalOf } from "../refusal";

const square: Patch = { label: "square", width: 20, height: 20, count: 30, mayTurn: true };
const border: Patch = { label: "border", width: 480, height: 40, count: 4, mayTurn: true };

const cutting = (list: CutList, cloth: Partial<Cloth> = {}) =>
  refusalOf(() => planCuts(list, { width: 336, ...cloth }));

describe("a cutting list", () => {
  test.each<[CutList, string]>([
    [[], "bad input: the list is empty"],
    [[{ ...square, count: 0 }], "bad input: the list counts no patches"],
    [[{ ...square, width: 0 }], "bad input: row 1 (square): the width must be more than 0"],
    [[{ ...square, width: -1 }], "bad input: row 1 (square): the width must be more than 0"],
    [[{ ...square, width: 2.5 }], "bad input: row 1 (square): the width must be more than 0"],
    [[square, { ...square, label: "", height: 0 }], "bad input: row 2: the height must be more than 0"],
    [[{ ...square, height: NaN }], "bad input: row 1 (square): the height must be more than 0"],
    [[{ ...square, count: -1 }], "bad input: row 1 (square): the count must be a whole number, not -1"],
    [[{ ...square, count: 0.5 }], "bad input: row 1 (square): the count must be a whole number, not 0.5"],
    [[square, { ...square, count: 4971 }], "bad input: row 2 (square): more than 5000 patches in one plan"],
    [
      Array<Patch>(201).fill({ ...square, count: 1 }),
      "bad input: row 201: a cutting list has at most 200 rows, this one has 201",
    ],
  ])("is refused: %#", (list, sentence) => {
    expect(cutting(list)).toBe(sentence);
    expect(refusalOf(() => planPanels(list, { width: 168, height: 144 }))).toBe(sentence);
  });

  test("may be as long as it is allowed to be, and have rows that ask for nothing", () => {
    expect(cutting([square, { ...square, count: 4970 }], { budget: 1e6 })).toBe("accepted");
    expect(cutting(Array<Patch>(200).fill({ ...square, count: 1 }), { budget: 1e6 })).toBe("accepted");
    expect(cutting([square, { ...border, count: 0 }])).toBe("accepted");
  });

  test.each<[Partial<Patch>, Partial<Cloth>, string]>([
    [
      {},
      {},
      'no answer: row 1 (border): 480 is wider than the 336 of usable cloth; write "join" to sew it together from ' +
        'strips, or "along" to cut it along the length of the cloth',
    ],
    [
      { height: 337 },
      { show: (length) => `${length / 8} in` },
      "no answer: row 1 (border): 60 in is wider than the 42 in of usable cloth, and so is 42.125 in the other way; " +
        'write "join" to sew it from strips',
    ],
    [
      { height: 337, whenLong: "along" },
      {},
      "no answer: row 1 (border): cut along the length it is 337 across, wider than the 336 of usable cloth; " +
        'write "join" to sew it from strips',
    ],
    [
      { height: 337, whenLong: "along", label: "" },
      { show: (length) => `${length / 8} in` },
      "no answer: row 1: cut along the length it is 42.125 in across, wider than the 42 in of usable cloth; " +
        'write "join" to sew it from strips',
    ],
    [
      { height: 336, whenLong: "join" },
      { joinLoss: "diagonal" },
      'bad input: row 1 (border): each join loses as much as a strip is long; make it "along" or straight joins',
    ],
    [
      { whenLong: "join" },
      { joinLoss: 336 },
      'bad input: row 1 (border): each join loses as much as a strip is long; make it "along" or straight joins',
    ],
  ])("with a patch wider than the cloth is refused: %#", (patch, cloth, sentence) => {
    expect(cutting([{ ...border, ...patch }], cloth)).toBe(sentence);
  });

  test("with a patch as wide as the cloth, or as high where it lies along it, is cut", () => {
    expect(planCuts([{ ...border, width: 336 }], { width: 336 }).length).toBe(160);
    expect(planCuts([{ ...border, width: 336, whenLong: "join" }], { width: 336 }).joins).toEqual([]);
    expect(planCuts([{ ...border, height: 336, whenLong: "along" }], { width: 336 }).length).toBe(4 * 480);
    expect(
      planCuts([{ ...border, height: 335, whenLong: "join" }], { width: 336, joinLoss: "diagonal" }).joins,
    ).toEqual([{ row: 0, label: "border", strips: 1585, rest: 336, loss: 335 }]);
  });
});

describe("a cloth", () => {
  test.each<[Partial<Cloth>, string]>([
    [{ width: 0 }, "bad input: the cloth's width must be more than 0"],
    [{ width: 33.5 }, "bad input: the cloth's width must be more than 0"],
    [{ buyingStep: 0 }, "bad input: the step to buy must be more than 0"],
    [{ buyingStep: 0.5 }, "bad input: the step to buy must be more than 0"],
    [{ extraLength: -1 }, "bad input: the extra length must be 0 or more"],
    [{ extraLength: 0.5 }, "bad input: the extra length must be 0 or more"],
    [{ buyingStep: 1, extraLength: 0 }, "accepted"],
  ])("of %j is refused: %s", (cloth, sentence) => {
    expect(cutting([square], cloth)).toBe(sentence);
  });
});

test("a panel that does not hold a patch is refused, and one that just holds it is taken", () => {
  const strip: Patch = { label: "strip", width: 168, height: 10, count: 1, mayTurn: false };
  const panel = (patch: Partial<Patch>, show?: Cloth["show"]) =>
    refusalOf(() => planPanels([{ ...strip, ...patch }], { width: 168, height: 144 }, { show }));
  expect(panel({})).toBe("accepted");
  expect(panel({ width: 10, height: 144 })).toBe("accepted");
  expect(panel({ width: 10, height: 168, mayTurn: true })).toBe("accepted");
  expect(panel({ width: 169 })).toBe("no answer: row 1 (strip): 169 by 10 does not fit a panel of 168 by 144");
  expect(panel({ width: 10, height: 168 })).toBe(
    "no answer: row 1 (strip): 10 by 168 does not fit a panel of 168 by 144",
  );
  expect(panel({ width: 145, height: 145, mayTurn: true }, (length) => `${length / 8} in`)).toBe(
    "no answer: row 1 (strip): 18.125 in by 18.125 in does not fit a panel of 21 in by 18 in",
  );
});

describe("bolts", () => {
  const row: Bolt = { label: "red", length: 100, count: 2 };
  test.each<[readonly Bolt[], readonly Bolt[], string]>([
    [[], [row], "bad input: the list counts no cuts"],
    [[{ ...row, count: 0 }], [row], "bad input: the list counts no cuts"],
    [[row], [], "bad input: the list counts no bolts"],
    [[{ ...row, length: 0 }], [row], "bad input: cut 1 (red): the length must be more than 0"],
    [[row, { ...row, length: 1.5, label: "" }], [row], "bad input: cut 2: the length must be more than 0"],
    [[row], [{ ...row, length: -1 }], "bad input: bolt 1 (red): the length must be more than 0"],
    [[{ ...row, count: -1 }], [row], "bad input: cut 1 (red): the count must be a whole number, not -1"],
    [[row], [{ ...row, count: 1.5 }], "bad input: bolt 1 (red): the count must be a whole number, not 1.5"],
    [[row], [row, { ...row, count: 199 }], "bad input: bolt 2 (red): more than 200 bolts in one plan"],
    [[{ ...row, count: 5001 }], [row], "bad input: cut 1 (red): more than 5000 cuts in one plan"],
    [Array<Bolt>(201).fill(row), [row], "bad input: a list of cuts has at most 200 rows"],
    [[row], Array<Bolt>(201).fill({ ...row, count: 0 }), "bad input: a list of bolts has at most 200 rows"],
    [[row, { ...row, label: "long", length: 101 }], [row], "no answer: row 2 (long) is longer than the longest bolt"],
    [[{ ...row, length: 60, count: 3 }], [row], "no answer: the bolts do not hold all the cuts"],
    [[row], [{ ...row, count: 200 }], "accepted"],
    [[row], Array<Bolt>(200).fill({ ...row, count: 1 }), "accepted"],
    [[{ ...row, length: 1, count: 5000 }], [{ ...row, count: 50 }], "accepted"],
  ])("are refused: %#", (cuts, stock, sentence) => {
    expect(refusalOf(() => planBolts(cuts, stock))).toBe(sentence);
  });
});
