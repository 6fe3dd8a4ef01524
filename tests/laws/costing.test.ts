import fc from "fast-check";
import { boltsNeeded, kitCost, kitsPerBolt, priceForMargin, priceForMarkup } from "../../src/math/costing";
import { TOLERANCE } from "../../src/math/rounding";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

const money = fc.double({ min: 0.01, max: 10_000, noNaN: true });

describe("prices", () => {
  test("the margin is that part of the price, the markup that part of the cost", () => {
    fc.assert(
      fc.property(money, fc.double({ min: 0, max: 0.95, noNaN: true }), (cost, rate) => {
        const price = priceForMargin(cost, rate);
        expect((price - cost) / price).toBeCloseTo(rate, 9);
        const markedUp = priceForMarkup(cost, rate);
        expect((markedUp - cost) / cost).toBeCloseTo(rate, 9);
        expect(markedUp / price).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  test("a margin m asks the price of a markup m / (1 − m)", () => {
    fc.assert(
      fc.property(money, fc.double({ min: 0, max: 0.9, noNaN: true }), (cost, margin) => {
        const price = priceForMargin(cost, margin);
        expect(priceForMarkup(cost, margin / (1 - margin)) / price).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("kitCost", () => {
  test("counts every line once, in any order, in whole cents as an abacus does", () => {
    const line = fc.record({ amount: fc.integer({ min: 0, max: 50 }), cents: fc.integer({ min: 0, max: 9_999 }) });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 30 }), fc.array(fc.integer({ min: 0, max: 999 })), (lines, extras) => {
        let cents = extras.reduce((sum, extra) => sum + extra, 0);
        for (const { amount, cents: each } of lines) for (let one = 0; one < amount; one++) cents += each;
        const priced = lines.map(({ amount, cents: each }) => ({ amount, price: each / 100 }));
        const sums = extras.map((extra) => extra / 100);
        expect(kitCost(priced, sums)).toBeCloseTo(cents / 100, 6);
        expect(kitCost([...priced].reverse(), [...sums].reverse())).toBeCloseTo(cents / 100, 6);
      }),
    );
  });
});

describe("kitsPerBolt and boltsNeeded", () => {
  const bolts = lengths(100, 700);
  const kits = lengths(9, 100);
  const generosity = lengths(0, 3);

  test("agree with bolts cut one by one", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 80 }), kits, bolts, generosity, (wanted, each, bolt, more) => {
        const [cut, dust] = [each + more, TOLERANCE * each];
        fc.pre(cut <= bolt + dust);
        let [made, opened, left] = [0, 0, 0];
        while (made < wanted) {
          if (left < cut - dust) {
            opened += 1;
            left = bolt;
          }
          left -= cut;
          made += 1;
        }
        expect(boltsNeeded(wanted, each, bolt, more)).toBe(opened);
      }),
    );
  });

  test("a bolt cut to whole kits holds them all", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), kits, (count, each) => {
        expect(kitsPerBolt(inches(count * each), each)).toBe(count);
      }),
    );
  });
});
