/** Formulas in the practice sheet's engine, without a page. */
import { Evaluator, type Outcome } from "../../src/practice/evaluate";

const evaluator = new Evaluator();

afterAll(() => {
  evaluator.dispose();
});

async function value(formula: string): Promise<unknown> {
  const outcome = await evaluator.evaluate(formula);
  return "error" in outcome ? outcome : outcome.value;
}

async function failure(formula: string): Promise<Extract<Outcome, { error: string }>> {
  const outcome = await evaluator.evaluate(formula);
  if (!("error" in outcome)) throw new Error(`${formula} gives ${JSON.stringify(outcome.value)}`);
  return outcome;
}

test.each<[string, unknown]>([
  ["=QUILT.CUTHALFSQUARE(3)", 3.875],
  ['=QUILT.CUTHALFSQUARE("2 1/2")', 3.375],
  ["=quilt.cuthalfsquare( 3 )", 3.875],
  ['=QUILT.LENGTH("1/4")', 0.25],
  ['=IF(TRUE,"3/8","")', "3/8"],
  ["=QUILT.LENGTHTEXT(2.25)", "2 1/4"],
  ["=QUILT.CUTHALFSQUARE(3)*2", 7.75],
  ["=SUM(QUILT.CUTSQUARE(3),QUILT.CUTSQUARE(4))", 8],
  ["=QUILT.CUTSQUARE(QUILT.CUTSQUARE(3))", 4],
  ["=INDEX(QUILT.BACKINGPLAN(66,77),2,4)", 4.75],
  ["=SUM({1;2;3})", 6],
  ['=QUILT.CHECKROW({"3/4","1 1/2"},0)', 2.25],
  ['=INDEX({"1/4",2},1,1)', "1/4"],
  ["=LET(x,3,QUILT.CUTSQUARE(x))", 3.5],
  ['="a"&"b"', "ab"],
  ["=1=1", true],
])("%s gives %p", async (formula, expected) => {
  expect(await value(formula)).toEqual(expected);
});

test("an argument left out, in the middle or at the end, takes its usual value", async () => {
  expect(await value("=QUILT.CUTHALFSQUARE(3,,,0)")).toBeCloseTo(3.853553, 6);
  expect(await value("=QUILT.CUTHALFSQUARE(3,,,)")).toBe(3.875);
  expect(await value("=QUILT.CUTHALFSQUARE(3,A1,A1)")).toBe(3.875);
});

test("an empty cell where something is needed is missing", async () => {
  expect(await failure("=QUILT.CUTSQUARE(A1)")).toEqual({ error: "#VALUE!", message: "finished size is missing" });
  expect(await failure("=QUILT.CUTSQUARE()")).toEqual({ error: "#VALUE!", message: "finished size is missing" });
});

describe("a range where one value is expected", () => {
  test("is answered cell by cell", async () => {
    expect(await value("=QUILT.CUTSQUARE({1,2;3,4})")).toEqual([
      [1.5, 2.5],
      [3.5, 4.5],
    ]);
  });

  test("goes with ranges of the same size, and a row goes with a column", async () => {
    expect(await value("=QUILT.CUTSQUARE({1;2},{0;1})")).toEqual([[1], [4]]);
    expect(await value("=QUILT.CUTSQUARE({1;2},{0,1})")).toEqual([
      [1, 3],
      [2, 4],
    ]);
  });

  test("that is shorter than another has no answer at its end", async () => {
    expect(await value("=QUILT.CUTSQUARE({1;2;3},{0;1})")).toEqual([[1], [4], ["#N/A"]]);
  });

  test("spoils only the cells that cannot be answered", async () => {
    expect(await value('=QUILT.CUTSQUARE({1;"x";3})')).toEqual([[1.5], ["#VALUE!"], [3.5]]);
  });

  test("is refused in words where each answer would be a table", async () => {
    expect((await failure("=QUILT.BACKINGPLAN({60;66},77)")).message).toMatch(/answers with a table/);
  });
});

describe("errors", () => {
  test("an error in an argument becomes the answer", async () => {
    expect((await failure("=QUILT.CUTSQUARE(1/0)")).error).toBe("#DIV/0!");
    expect((await failure("=QUILT.CUTSQUARE(NA())")).error).toBe("#N/A");
  });

  test.each([
    '=QUILT.CUTSQUARE("x")',
    '=QUILT.CUTSQUARE("x")+1',
    '=-QUILT.CUTSQUARE("x")',
    '=ROUND(SUM(1,QUILT.CUTSQUARE("x")),2)',
    '=INDEX(QUILT.CUTSQUARE("x"),1,1)',
    '=QUILT.CUTSQUARE(QUILT.CUTSQUARE("x"))',
    '=IF(TRUE,QUILT.CUTSQUARE("x"),QUILT.CUTSQUARE("y"))',
  ])("%s tells which call failed", async (formula) => {
    const { error, message } = await failure(formula);
    expect(error).toBe("#VALUE!");
    expect(message).toMatch(/^finished size: cannot read a length in “x”/);
  });

  test("of the branch that is taken, not of the other", async () => {
    expect((await failure('=IF(FALSE,QUILT.CUTSQUARE("x"),QUILT.CUTSQUARE("y"))')).message).toMatch(/“y”/);
    expect(await value('=IFERROR(QUILT.CUTSQUARE("x"),7)')).toBe(7);
  });

  test.each([
    ["=QUILT.CUTSQUARE(1,2,3,4,5,6)", "#VALUE!", /at most 4 arguments, not 6/],
    ["=QUILT.CUTSQUARE(LAMBDA(x,x))", "#VALUE!", /not a LAMBDA/],
    ["=QUILT.NOSUCHTHING(1)", "#NAME?", /check the spelling/],
    ["=QUILT.CUTSQUARE(1;2)", "#NAME?", /commas/],
    ["=1/0", "#DIV/0!", /divided by 0/],
    ["=1+", "#VALUE!", /cannot be read as a formula/],
    ["=(((", "#VALUE!", /cannot be read as a formula/],
    ["QUILT.CUTSQUARE(3)", "#VALUE!", /starts with =/],
    ["  ", "#VALUE!", /no formula here/],
    [`="${"x".repeat(9000)}"`, "#VALUE!", /at most 8192 characters/],
  ])("%s says what is wrong", async (formula, error, message) => {
    expect(await failure(formula)).toEqual({ error, message: expect.stringMatching(message) as string });
  });
});

test("tables of many formulas never run into each other", async () => {
  const tables = await Promise.all(
    Array.from({ length: 200 }, (_, index) => value(`=QUILT.BACKINGPLAN(${50 + index / 4},77)`)),
  );
  for (const table of tables) expect(table).toHaveLength(3);
  expect(tables[64]).toEqual(await value("=QUILT.BACKINGPLAN(66,77)"));
});

test("nothing is left in the engine by a formula that fails", async () => {
  await evaluator.evaluate("=1+");
  await evaluator.evaluate('=QUILT.CUTSQUARE("x")');
  expect(await value("=QUILT.CUTSQUARE(3)")).toBe(3.5);
});
