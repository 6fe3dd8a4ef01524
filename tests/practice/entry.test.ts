/** Fractions as they are typed into a cell. */
import fc from "fast-check";
import { readFraction } from "../../src/practice/entry";

test.each([
  ["2 1/2", 2.5],
  ["2-1/2", 2.5],
  ["2½", 2.5],
  ["2 ½", 2.5],
  ["½", 0.5],
  [" 1 7/8 ", 1.875],
  ["93⅛", 93.125],
  ["1⁄3", 1 / 3],
  ["0 3/8", 0.375],
  ["3/8", 0.375],
  ["12\u00a05/16", 12.3125],
  ["-2 1/2", -2.5],
])("%p is the number %p", (typed, value) => {
  expect(readFraction(typed)?.value).toBeCloseTo(value, 12);
});

test.each([
  "2 1/2 in",
  '2 1/2"',
  "2 1/2 x 4 1/2",
  "1/2/3",
  "5/0",
  "8/8",
  "12/25",
  "2026-03-08",
  "2.5",
  "two",
  "",
  "=1/2",
])("%p stays what it is", (typed) => {
  expect(readFraction(typed)).toBeUndefined();
});

test("only what other programs take for a date is remarked on", () => {
  expect(readFraction("3/8")?.looksLikeDate).toBe(true);
  expect(readFraction("2 1/2")?.looksLikeDate).toBe(false);
  expect(readFraction("½")?.looksLikeDate).toBe(false);
});

test("the format shows the fraction that was typed", () => {
  expect(readFraction("2 1/2")?.pattern).toBe("# ?/?");
  expect(readFraction("2 5/16")?.pattern).toBe("# ??/??");
});

test("every mark of a ruler reads back, however it is joined", () => {
  const parts = fc.constantFrom(2, 4, 8, 16, 32);
  const joint = fc.constantFrom(" ", "-", " - ", "\u2009");
  fc.assert(
    fc.property(fc.nat(200), parts, fc.nat(1000), joint, (whole, below, seed, between) => {
      const above = 1 + (seed % (below - 1));
      expect(readFraction(`${whole}${between}${above}/${below}`)?.value).toBe(whole + above / below);
    }),
  );
});
