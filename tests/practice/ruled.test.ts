/** Which cells of the practice sheet read as a ruler does. */
import { ruledText } from "../../src/math/show";
import { catalogue } from "../../scripts/catalogue";
import { byId, type Family, type FunctionEntry, measuresOf } from "../../src/pane/catalogue";
import { Ruled } from "../../src/practice/ruled";

test.each([
  [3.875, "3 7/8"],
  [0.5, "1/2"],
  [-1.25, "-1 1/4"],
  [2.0625, "2 1/16"],
])("%s reads %s", (value, shown) => {
  expect(ruledText(value, "length")).toBe(shown);
  expect(ruledText(value, "fabric")).toBe(shown);
});

test("a third is one of a yard, and on no mark of a ruler", () => {
  expect(ruledText(1.333333333333, "fabric")).toBe("1 1/3");
  expect(ruledText(1.333333333333, "length")).toBeUndefined();
});

test.each([0, 3, -7, 3.853553, 0.1, 2.03125])("%s stays as it is", (value) => {
  expect(ruledText(value, "fabric")).toBeUndefined();
});

const entry = (id: string, names: string, measures?: FunctionEntry["measures"], shows: unknown = 1) =>
  ({ id, measures, examples: [{ shows }], parameters: names.split(" ").map((name) => ({ name })) }) as FunctionEntry;
const functions = [
  entry("TOPSIZE", "width length units", undefined, [[60.5, 72.5]]),
  entry("CUTSQUARE", "finished seam units", "length"),
  entry("STRIPFABRIC", "width strips units", "fabric"),
  entry("STRIPSNEEDED", "count units"),
];
const all = byId(catalogue());

test.each([
  ["CUTSQUARE", "length"],
  ["STRIPSETSIZE", "length"],
  ["CHECKROW", "length"],
  ["TUBELENGTH", "length"],
  ["THREADLENGTH", "length"],
  ["PLANLENGTH", "length"],
  ["FABRIC", "fabric"],
  ["STRIPFABRIC", "fabric"],
  ["PLANFABRIC", "fabric"],
  ["LENGTHTEXT", undefined],
  ["STRIPSNEEDED", undefined],
  ["KITCOST", undefined],
  ["PRICEFORMARGIN", undefined],
])("the number of %s measures: %s", (id, measures) => {
  expect(all.get(id)?.measures).toBe(measures);
  expect(measuresOf(all.get(id)!)).toBe(measures);
});

test("no table holds money, shares or hours, so all of its numbers read as on a ruler", () => {
  const tables = [...all.values()].filter(({ examples }) => examples.some(({ shows }) => Array.isArray(shows)));
  expect(tables.length).toBeGreaterThan(20);
  expect(tables.filter(({ gives }) => /price|cost|money|hour|percent|share/i.test(gives))).toEqual([]);
  expect(tables.filter((entry) => measuresOf(entry) !== "length")).toEqual([]);
});

const ruled = new Ruled([{ functions } as Family]);

test.each([
  "=QUILT.CUTSQUARE(3)",
  "= quilt.cutsquare( 3 )",
  "=QUILT.CUTSQUARE(A1,)",
  "=QUILT.CUTSQUARE(A1,B1*2,)",
  '=QUILT.CUTSQUARE(A1,,"in")',
  "=QUILT.TOPSIZE(A1,B1)",
  '=QUILT.STRIPFABRIC(2.5,IF(A1>1,4,5), "IN" )',
])("the answer of %s is in inches or yards", (formula) => {
  expect(ruled.measures(formula)).toBe(formula.includes("FABRIC") ? "fabric" : "length");
});

test.each([
  "",
  "=A1",
  "=3.5",
  "=SUM(A1:A3)",
  "=QUILT.STRIPSNEEDED(3)",
  "=QUILT.NOSUCH(3)",
  "=QUILT.CUTSQUARE(3)*2",
  "=QUILT.CUTSQUARE(3",
  '=QUILT.CUTSQUARE(A1,,"cm")',
  "=QUILT.CUTSQUARE(A1,,B1)",
  '=QUILT.CUTSQUARE(A1,,IF(B1,"in","cm"))',
])("that of %s is not, or need not be", (formula) => {
  expect(ruled.measures(formula)).toBeUndefined();
});
