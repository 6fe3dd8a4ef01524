import fc from "fast-check";
import { fabricCheck, fabricTotals } from "../../src/math/checks";
import { cutSquare } from "../../src/math/patches";
import { plan } from "../../src/math/plans";
import { sewnTogether } from "../../src/math/seams";
import { showing } from "../../src/math/show";
import { inches } from "../../src/math/units";
import { lengths, seams } from "./arbitraries";

describe("sewnTogether", () => {
  test("patches cut for their finished sizes sew up to the finished sum and two seams", () => {
    fc.assert(
      fc.property(fc.array(lengths(0.25, 20), { minLength: 1, maxLength: 30 }), seams, (finished, seam) => {
        const cut = finished.map((size) => cutSquare(size, seam));
        const sum = finished.reduce((total, size) => total + size, 0);
        expect(sewnTogether("patch", cut, seam)).toBeCloseTo(sum + 2 * seam, 8);
      }),
    );
  });

  test("sewing two rows together is sewing one long row", () => {
    const row = fc.array(lengths(2.5, 12), { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(row, row, seams, (left, right, seam) => {
        const halves = [left, right].map((sizes) => sewnTogether("patch", sizes, seam));
        expect(sewnTogether("patch", halves, seam)).toBeCloseTo(sewnTogether("patch", [...left, ...right], seam), 8);
      }),
    );
  });
});

describe("fabricTotals", () => {
  test("loses nothing and counts every place, however the names are written", () => {
    const names = fc.constantFrom("blue", "Blue", " BLUE ", "dark  red", "Dark red", "white");
    fc.assert(
      fc.property(fc.array(fc.record({ fabric: names, amount: lengths(0, 200) }), { minLength: 1 }), (uses) => {
        const totals = fabricTotals(uses);
        const sum = (list: readonly { amount: number }[]) => list.reduce((total, { amount }) => total + amount, 0);
        expect(sum(totals)).toBeCloseTo(sum(uses), 6);
        expect(totals.reduce((places, total) => places + total.places, 0)).toBe(uses.length);
        expect(totals.length).toBeLessThanOrEqual(3);
      }),
    );
  });

  test("keeps the order of first mention", () => {
    const uses = ["white", "blue", "White"].map((fabric) => ({ fabric, amount: inches(9) }));
    expect(fabricTotals(uses).map(({ fabric }) => fabric)).toEqual(["white", "blue"]);
  });
});

describe("fabricCheck", () => {
  test("says perhaps where a better plan might still do with the fabric", () => {
    const squares = { label: "square", width: inches(9.5), height: inches(9.5), count: 63, grain: "any" } as const;
    const unproved = { ...plan([squares]), length: inches(152), leastLength: inches(149) };
    const says = (amount: number) => fabricCheck(unproved, inches(amount))(showing("in"));
    expect(says(150)).toBe("perhaps short by 2 in: the patches take 152 in by the best plan found, 150 in are there");
    expect(says(148)).toBe("short by 4 in: the patches take 152 in, 148 in are there");
  });
});
