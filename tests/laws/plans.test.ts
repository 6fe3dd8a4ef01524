/** Cut plans in the maker's measures: which ruler marks hold a list, and what is refused before any planning. */
import fc from "fast-check";
import { type Bundle, bundleSpare } from "../../src/math/bundles";
import { countingMark, RULER_MARK } from "../../src/math/counting";
import { isHalfWidth } from "../../src/math/fabric";
import { boltPlan, planInPanels } from "../../src/math/panels";
import { type Grain, type ListedPatch, plan, planSpare } from "../../src/math/plans";
import { Problem } from "../../src/math/problem";
import { type Inches, inches, type System, toInches } from "../../src/math/units";
import { withWorking } from "../../src/math/working";

function patch(width: number, height: number, count = 1, grain: Grain = "upright"): ListedPatch {
  return { label: "sand", width: inches(width), height: inches(height), count, grain };
}

function refusal(run: () => unknown, system: System = "in"): string {
  try {
    run();
  } catch (thrown) {
    if (thrown instanceof Problem) return thrown.sentence(system);
    throw thrown;
  }
  return "accepted";
}

const centimeters = (value: number) => toInches(value, "cm");

describe("countingMark", () => {
  const thirds = 10 / 3;
  test.each<[string, System, number[], number, boolean]>([
    ["eighths", "in", [2.5, 4.125], 1 / 8, false],
    ["sixteenths", "in", [2.5, 2 + 1 / 16], 1 / 16, false],
    ["sixteenths only", "in", [3 / 16, 5 / 16], 1 / 16, false],
    ["tenths", "in", [2.1, 41.9], 1 / 10, false],
    ["thirds", "in", [thirds, 2], 1 / 12, false],
    ["thirds and quarters of halves", "in", [thirds, 2.125], 1 / 24, false],
    ["sums with binary dust", "in", [0.1 + 0.2, 42 - 41.9], 1 / 10, false],
    ["hundredths", "in", [3.33], 1 / 100, false],
    ["sixteenths and tenths", "in", [1 / 16, 0.1], 1 / 80, false],
    ["millimeters on an inch sheet", "in", [centimeters(6.3)], 0.1 / 2.54, false],
    ["inches on a metric sheet", "cm", [3.5], 1 / 8, false],
    ["nothing", "in", [], 1 / 8, false],
    ["millimeters", "cm", [centimeters(6.3), centimeters(6)], 0.1 / 2.54, false],
    ["halves of a millimeter", "cm", [centimeters(6.35), centimeters(6)], 0.05 / 2.54, false],
    ["diagonals, in inches", "in", [4 * Math.SQRT2, 2.5], 1 / 16, true],
    ["diagonals, in centimeters", "cm", [4 * Math.SQRT2, centimeters(6)], 0.1 / 2.54, true],
  ])("%s", (_what, system, lengths, mark, rounded) => {
    const counting = countingMark(
      lengths.map((length) => inches(length)),
      RULER_MARK[system],
    );
    expect(counting.mark).toBeCloseTo(mark, 12);
    expect(counting.rounded).toBe(rounded);
  });

  test("what may be counted too short is counted exactly where that can be, and never makes sizes inexact", () => {
    const mark = (besides: number) => countingMark([inches(2.5)], RULER_MARK.in, inches(0), [inches(besides)]);
    expect(mark(41.9)).toEqual({ mark: 1 / 10, rounded: false });
    expect(mark(29 * Math.SQRT2)).toEqual({ mark: 1 / 8, rounded: false });
  });

  test("no mark is finer than allowed", () => {
    const mark = (finest: number) => countingMark([inches(2.1)], RULER_MARK.in, inches(finest));
    expect(mark(1 / 10)).toEqual({ mark: 1 / 10, rounded: false });
    expect(mark(1 / 9)).toEqual({ mark: 1 / 16, rounded: true });
  });
});

describe("plan", () => {
  test("a height in sixteenths or twentieths takes no more than it is; a diagonal takes the next mark", () => {
    expect(plan([patch(40, 2 + 1 / 16, 16)]).length).toBe(33);
    expect(plan([patch(40, 2.05, 16)]).length).toBeCloseTo(32.8, 9);
    expect(plan([patch(40, 1.45 * Math.SQRT2, 16)]).length).toBe(33);
    expect(plan([patch(40, 2.125, 16)]).length).toBe(34);
  });

  test("a width in sixteenths that goes into the fabric to a hair's breadth goes into it", () => {
    expect(plan([patch(2 + 5 / 16, 2, 18)], { fabricWidth: inches(18 * (2 + 5 / 16)) }).cuts.stripCount).toBe(1);
    expect(plan([patch(2 + 5 / 16, 2, 18)], { fabricWidth: inches(18 * (2 + 5 / 16) - 1 / 16) }).cuts.stripCount).toBe(
      2,
    );
  });

  test("squaring is lost once, and rows that ask for nothing take nothing", () => {
    const squaring = inches(1);
    const list = [patch(40, 2, 3), patch(40, 5, 0)];
    expect(plan(list, { squaring })).toMatchObject({ length: 7, leastLength: 7 });
    expect(refusal(() => plan([patch(40, 2, 0)], { squaring }))).toBe("the list counts no patches");
  });

  test("a border longer than the fabric is wide keeps its height along the selvage, or lies along it", () => {
    expect(plan([patch(50, 2, 1, "join")]).length).toBe(4);
    expect(plan([patch(50, 2, 20, "along")]).length).toBe(50);
    // Turned, 16 would stand beside one another in 30 in of fabric.
    expect(plan([patch(30, 2.5, 16, "join")]).length).toBe(40);
  });

  test("refuses in the maker's units, and lengths as they were written", () => {
    const wide = (system: System) => plan([patch(centimeters(127), centimeters(5))], { system });
    expect(refusal(() => wide("in"))).toContain("50 in");
    expect(refusal(() => wide("cm"), "cm")).toContain("127 cm");
    expect(refusal(() => plan([patch(2, 2)], { fabricWidth: inches(150) }))).toBe("accepted");
    const sentence = (system: System) =>
      refusal(() => plan([patch(2, 2)], { fabricWidth: inches(150.125), system }), system);
    expect(sentence("in")).toBe("width is more than 150 in; no quilting fabric is that wide");
    expect(sentence("cm")).toBe("width is more than 381 cm; no quilting fabric is that wide");
    expect(refusal(() => plan([patch(2, 2)], { squaring: inches(-1) }))).toBe("squaring must be 0 or more");
    expect(refusal(() => planSpare(plan([patch(2, 2)]), inches(-1)))).toBe("amount must be 0 or more");
  });
});

describe("sizes that fit exactly", () => {
  /** Sizes on the marks that lists are counted in, as a cell computes them. */
  const sizes = fc
    .tuple(fc.constantFrom(8, 10, 12, 16, 20, 24, 25.4, 32, 48, 50.8, 64, 100, 120), fc.integer({ min: 150, max: 600 }))
    .map(([parts, marks]) => marks / parts)
    .filter((size) => size >= 1.5 && size <= 12);
  const counts = fc.integer({ min: 2, max: 8 });

  test("fill a strip, a panel and a bolt", () => {
    fc.assert(
      fc.property(sizes, counts, counts, (size, across, down) => {
        const [width, height] = [inches(across * size), inches(down * size)];
        fc.pre(!isHalfWidth(width));
        const list = [patch(size, size, across * down)];
        expect(plan(list, { fabricWidth: width }).length).toBeCloseTo(height, 9);
        expect(planInPanels(list, width, height).cuts.panelCount).toBe(1);
        const cut = { label: "cut", length: inches(size), count: across };
        expect(boltPlan([cut], [{ label: "bolt", length: width, count: 1 }]).left).toBe(0);
      }),
      { numRuns: 60 },
    );
  });

  test("do not where a hair is missing", () => {
    fc.assert(
      fc.property(sizes, counts, (size, across) => {
        const width = inches(across * size - 1e-6);
        fc.pre(!isHalfWidth(width));
        expect(plan([patch(size, 2, across)], { fabricWidth: width }).cuts.stripCount).toBe(2);
        const cut = { label: "cut", length: inches(size), count: across };
        const stock = [{ label: "bolt", length: width, count: 1 }];
        expect(refusal(() => boltPlan([cut], stock))).toBe("the bolts do not hold all the cuts");
      }),
      { numRuns: 60 },
    );
  });
});

describe("a patch to join", () => {
  const sides = fc.integer({ min: 12, max: 400 }).map((eighths) => eighths / 4);

  test("takes as much whichever side is called its width, unless both are longer than the fabric is wide", () => {
    fc.assert(
      fc.property(sides, sides, fc.integer({ min: 1, max: 4 }), (one, other, count) => {
        fc.pre(Math.min(one, other) <= 42);
        const length = (...size: [number, number]) => plan([patch(...size, count, "join")]).length;
        expect(length(one, other)).toBe(length(other, one));
      }),
      { numRuns: 60 },
    );
  });

  test("of which no strip is joined is not told to be least for a joined border", () => {
    const told = (list: ListedPatch[]) => withWorking(() => plan(list)).steps.at(-1);
    expect(told([patch(30, 6.5, 2, "join")])).toBe("no plan takes less: least length proved without joins");
    expect(told([patch(50, 6.5, 2, "join")])).toBe("no plan takes less: least length proved with these joins");
    expect(told([patch(30, 6.5, 2), patch(30, 6.5, 0, "join")])).toBe("no plan takes less: least length proved");
  });
});

describe("planInPanels", () => {
  test("trims patches from higher strips unless told not to", () => {
    // 12 × 6 beside 8 × 5, and 11 × 4 beside 9 × 4, fill a panel of 20 × 10 but for what is trimmed.
    const list = [patch(12, 6), patch(8, 5), patch(11, 4), patch(9, 4)];
    const panels = (options?: { trimming: boolean }) =>
      planInPanels(list, inches(20), inches(10), options).cuts.panelCount;
    expect([panels(), panels({ trimming: true }), panels({ trimming: false })]).toEqual([1, 1, 2]);
  });

  test("refuses lengths that only fabric from the bolt has, naming the row", () => {
    const sentence = (grain: Grain) =>
      refusal(() => planInPanels([patch(2, 2), patch(60, 2, 1, grain)], inches(22), inches(18)));
    expect(sentence("along")).toBe("row 2: “along” is for lengths of fabric, not for panels");
    expect(sentence("join")).toBe("row 2: “join” is for lengths of fabric, not for panels");
  });
});

describe("boltPlan", () => {
  test("tells in yards what is left over, and counts in sixteenths unless told otherwise", () => {
    const cut = { label: "kit", length: inches(40 + 1 / 16), count: 3 };
    const bolt = { label: "bolt", length: inches(144 + 3 / 16), count: 1 };
    const { answer, steps } = withWorking(() => boltPlan([cut], [bolt]));
    expect(answer.mark).toBe(1 / 16);
    expect(steps).toEqual(["1 bolt, 2/3 yd left over"]);
  });
});

describe("bundleSpare", () => {
  const spare = (list: [patch: Inches, count: number][], bundle: Partial<Bundle> = {}) =>
    bundleSpare(
      list.map(([length, count]) => ({ patch: length, height: inches(2), count })),
      { strips: 40, stripWidth: inches(2.5), ...bundle },
    );

  test("patches in centimeters that fill a strip to a hair's breadth fill it", () => {
    const width = centimeters(33.3);
    expect(spare([[centimeters(3.33), 100]], { width })).toBe(30);
    // An inch lies on the marks of both rulers.
    expect(
      spare(
        [
          [centimeters(3.33), 100],
          [inches(1), 1],
        ],
        { width },
      ),
    ).toBe(29);
  });

  test("strips are as long as fabric is wide, at most", () => {
    const two: [Inches, number][] = [[inches(75), 80]];
    expect(spare(two, { width: inches(150) })).toBe(0);
    expect(refusal(() => spare(two, { width: inches(150.01) }))).toBe(
      "width is more than 150 in; no strip is that long",
    );
  });

  test("up to 40 sizes and 5000 patches are planned at once; rows that ask for nothing do not count", () => {
    const sizes = (rows: number, count = 1) =>
      Array.from({ length: rows }, (_, row): [Inches, number] => [inches(1 + row / 8), count]);
    expect(spare([...sizes(40), [inches(9), 0]], { strips: 200 })).toBeLessThan(200);
    expect(refusal(() => spare(sizes(41)))).toBe(
      "the list has 41 patches in 41 rows; at most 5000 in 40 rows are planned at once",
    );
    expect(spare([[inches(1), 5000]], { width: inches(100), strips: 50 })).toBe(0);
    expect(refusal(() => spare([[inches(1), 5001]]))).toBe(
      "the list has 5001 patches in 1 rows; at most 5000 in 40 rows are planned at once",
    );
  });
});
