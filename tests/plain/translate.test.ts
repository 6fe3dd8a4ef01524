/** Turning formulas: what is turned, what is left and why, and what is never touched. */
import { translate } from "../../src/workbooks/translate";

const turned = (formula: string) => {
  const { formula: plain, left } = translate(formula);
  expect(left).toEqual([]);
  return plain;
};

const left = (formula: string, names?: Set<string>) => {
  const result = translate(formula, names);
  expect(result.formula).toBe(formula);
  return result.left;
};

const SQUARE = "IF(AND(ISNUMBER(B2),B2>=0.001,B2<=1000),B2+2*0.25,NA())";

describe("translate", () => {
  test.each([
    ["=QUILT.CUTSQUARE(B2)", `=${SQUARE}`],
    ["=quilt.cutSquare( B2 )", `=${SQUARE}`],
    ["_xldudf_QUILT_CUTSQUARE(B2)", SQUARE],
    ["=[2]!_xldudf_QUILT_CUTSQUARE(B2)", `=${SQUARE}`],
    ["='C:\\add ins\\quilt (1).xlam'!_xldudf_QUILT_CUTSQUARE(B2)", `=${SQUARE}`],
    ["=@QUILT.CUTSQUARE(B2)", `=${SQUARE}`],
    ["=_xlfn.SINGLE(_xldudf_QUILT_CUTSQUARE(B2))", `=${SQUARE}`],
  ])("reads every spelling: %s", (formula, plain) => {
    expect(turned(formula)).toBe(plain);
  });

  test.each([
    ["=QUILT.CUTSQUARE(3)*2", "=(3+2*0.25)*2"],
    ["=2^QUILT.CUTSQUARE(3)%", "=2^(3+2*0.25)%"],
    ["=SUM(A1:A9,QUILT.CUTSQUARE(3), 1)", "=SUM(A1:A9,3+2*0.25, 1)"],
    ["=(QUILT.CUTSQUARE(3))*2", "=(3+2*0.25)*2"],
    ["=IF(A1>1,QUILT.CUTSQUARE(3),QUILT.CUTSQUARE(4))", "=IF(A1>1,3+2*0.25,4+2*0.25)"],
    ["=QUILT.CUTSQUARE(QUILT.CUTSQUARE(3))", "=(3+2*0.25)+2*0.25"],
  ])("puts the plain formula in its place: %s", (formula, plain) => {
    expect(turned(formula)).toBe(plain);
  });

  test.each([
    "=SUM(A1:B3)",
    '="QUILT.CUTSQUARE(3)"',
    '=A1&"_xldudf_QUILT_CUTSQUARE(3)"',
    "=QUILTING(3)",
    "=MYQUILT.CUTSQUARE(3)",
  ])("leaves alone what is none of ours: %s", (formula) => {
    expect(translate(formula)).toEqual({ formula, turned: [], left: [] });
  });

  test("never touches text, whatever stands around it", () => {
    const text = '"say ""QUILT.CUTSQUARE(3)"", (twice"';
    expect(turned(`=QUILT.CUTSQUARE(3)&${text}`)).toBe(`=(3+2*0.25)&${text}`);
  });

  test.each([
    ['=QUILT.CUTSQUARE("2 1/2")', "=2.5+2*0.25"],
    ['=QUILT.CUTSQUARE("2½ in","6 mm","","cm")', "=6.35+2*0.6"],
    ['=QUILT.CUTSQUARE(7,,,"cm")', "=7+2*0.75"],
    ["=QUILT.CUTSQUARE(-7)", "=NA()"],
    ["=QUILT.CUTSQUARE(0)", "=NA()"],
    ["=QUILT.CUTSQUARE(46089)", "=NA()"],
    ['=QUILT.CUTSQUARE("two")', "=NA()"],
    ["=QUILT.CUTSQUARE(TRUE)", "=NA()"],
    ["=QUILT.CUTSQUARE()", "=NA()"],
    ['=QUILT.CUTSQUARE(3,,,"miles")', "=NA()"],
  ])("works out what is typed into the formula: %s", (formula, plain) => {
    expect(turned(formula)).toBe(plain);
  });

  test("a table gives a formula for each of its cells", () => {
    expect(translate("=QUILT.BORDERSIZE(60,80,6)").table).toEqual([["=60+2*6", "=80+2*6"]]);
  });

  test("INDEX picks a cell of a table", () => {
    expect(turned("=INDEX(QUILT.BORDERSIZE(60,80,6),1,2)*2")).toBe("=(80+2*6)*2");
    expect(turned("=INDEX(QUILT.BORDERSIZE(60,80,6),2)")).toBe("=80+2*6");
  });

  test.each([
    ["=QUILT.PLANFABRIC(A1:D9)", "PLANFABRIC", "search"],
    ["=QUILT.NOSUCH(1)", "NOSUCH", "no function"],
    ["=QUILT.CUTSQUARE(A1:A3)", "CUTSQUARE", "a range where the formula needs one cell"],
    ["=QUILT.CUTSQUARE(A:A)", "CUTSQUARE", "a range where the formula needs one cell"],
    ["=QUILT.CUTSQUARE(A1:A3*2)", "CUTSQUARE", "several cells at once"],
    ["=QUILT.CUTSQUARE(A1#)", "CUTSQUARE", "several cells at once"],
    ["=QUILT.CUTSQUARE(1,2,3,4,5)", "CUTSQUARE", "more arguments"],
    ["=SUM(QUILT.BORDERSIZE(60,80,6))", "BORDERSIZE", "a table where the formula needs one value"],
    ["=INDEX(QUILT.BORDERSIZE(60,80,6),1,A1)", "BORDERSIZE", "does not say which cell"],
    ["=INDEX(QUILT.BORDERSIZE(60,80,6),7,7)", "BORDERSIZE", "does not say which cell"],
    ["=QUILT.CUTSQUARE(QUILT.PLANLENGTH(A1:D9))", "PLANLENGTH", "search"],
  ])("says what is left: %s", (formula, id, why) => {
    const [first] = left(formula);
    expect(first.id).toBe(id);
    expect(first.why).toContain(why);
  });

  test("a name for several cells is a range", () => {
    expect(left("=QUILT.CUTSQUARE(Sizes)", new Set(["sizes"]))).toHaveLength(1);
    expect(turned("=QUILT.STRIPSETSIZE(Sizes)")).toContain("SUM(Sizes)");
  });

  test.each([
    "=QUILT.CUTSQUARE(1",
    "=QUILT.CUTSQUARE(1))",
    "=QUILT.CUTSQUARE({1,2)",
    `=QUILT.CUTSQUARE(${"(".repeat(9000)}`,
  ])("leaves what is no formula: %.40s", (formula) => {
    expect(left(formula)[0].why).toContain("cannot be read");
  });

  test("a plain formula that no cell could hold is left", () => {
    const nested = (depth: number): string => (depth === 0 ? "A1" : `QUILT.LENGTHTEXT(${nested(depth - 1)})`);
    expect(left(`=${nested(8)}`)[0].why).toContain("longer than a cell holds");
    const deep = (depth: number): string => (depth === 0 ? "A1" : `QUILT.CUTSQUARE(${deep(depth - 1)})`);
    expect(turned(`=${deep(60)}`).length).toBeLessThan(8000);
  });

  test("is quick: 5,000 calls well under a second", () => {
    const formulas = Array.from(
      { length: 1250 },
      (_, row) =>
        `=QUILT.STRIPFABRIC(QUILT.STRIPSNEEDED(A${row},QUILT.CUTHALFSQUARE(B${row})),QUILT.CUTSQUARE(B${row}),C${row})`,
    );
    translate(formulas[0]);
    const before = process.cpuUsage();
    const calls = formulas.map((formula) => translate(formula).turned.length).reduce((sum, count) => sum + count, 0);
    expect(calls).toBe(5000);
    // Time of the processor, since others may be at work on the machine.
    expect(process.cpuUsage(before).user / 1e6).toBeLessThan(1);
  });
});
