/** The working of a formula in a sheet: its calls from the inside out, what cells hand over, what cannot be followed. */
import { catalogue } from "../../scripts/catalogue";
import { isAnswered } from "../../src/pane/answer";
import { type Call, readCalls } from "../../src/pane/calls";
import { byId } from "../../src/pane/catalogue";
import { handoutOf } from "../../src/pane/handout";
import { areaOf, valuesIn } from "../../src/pane/pages";
import type { CellValue } from "../../src/pane/sheet";
import { sizesOf } from "../../src/pane/sizes";
import { MemorySheet } from "./memorySheet";
import { throwPlan } from "./plan";

const functions = byId(catalogue());

const CELLS: Record<string, CellValue[][]> = {
  B4: [[4]],
  B5: [["2 1/2"]],
  C9: [["#N/A"]],
  D1: [[null]],
  "A1:D2": [
    ["x", 3, 3, 5],
    ["y", 4, 4, 7],
  ],
};

async function calls(formula: string): Promise<Call[]> {
  const read = await readCalls(formula, (reference) => Promise.resolve(CELLS[reference]));
  if (typeof read === "string") throw new Error(read);
  return read;
}

test("steps and assumptions come with the answer", async () => {
  const [call] = await calls("=QUILT.CUTHALFSQUARE(B4)");
  expect(call.outcome).toEqual({
    value: 4.875,
    steps: ["4 in + 3.4142 × 1/4 in = 4.8536 in", "up to the next ruler mark of 1/8 in: cut 4 7/8 in"],
    assumptions: [
      "made at once: 2, as usual where none is given",
      "seam: 1/4 in, as usual where none is given",
      "mark: 1/8 in, as usual where none is given",
    ],
  });
});

test("calls inside of others are told first", async () => {
  const told = await calls("=QUILT.FABRIC(QUILT.PLANLENGTH(A1:D2)+36)");
  expect(told.map(({ id }) => id)).toEqual(["PLANLENGTH", "FABRIC"]);
  expect(told.map(({ outcome }) => isAnswered(outcome) && outcome.value)).toEqual([7, 1.25]);
  expect(told.map(({ whole }) => whole)).toEqual([false, true]);
});

test.each([
  ["=ROUNDUP(63/QUILT.STRIPPATCHES(9.5),0)", [9.5]],
  ["=QUILT.CUTSQUARE(B4/2+1)", [3]],
  ["=QUILT.CUTSQUARE(-B4^2+20)", [36]],
  ["=QUILT.CUTSQUARE(IF(B4>3,1,2))", [1]],
  ["=QUILT.CUTSQUARE(SUM(A1:D2))", [26]],
  ["=QUILT.CUTSQUARE(INDEX(A1:D2,2,4))", [7]],
  ["=QUILT.CUTSQUARE(50%)", [0.5]],
  ['=QUILT.CUTSQUARE(B4&" in")', ["4 in"]],
  ["=_xldudf_QUILT_CUTSQUARE(B5)", ["2 1/2"]],
])("%s hands over %j", async (formula, cells) => {
  expect((await calls(formula))[0].cells).toEqual(cells);
});

test("what the sheet alone can work out is said, not guessed", async () => {
  const [{ outcome }] = await calls("=QUILT.CUTSQUARE(VLOOKUP(1,A1:D2,2))");
  expect(outcome).toEqual({ code: "", sentence: "The steps cannot be told: VLOOKUP is worked out by the sheet only." });
});

test("errors are told in the function's own sentence, or lead to the cell they come from", async () => {
  expect((await calls("=QUILT.CUTSQUARE(D1)"))[0].outcome).toEqual({
    code: "#VALUE!",
    sentence: "Finished size is missing.",
  });
  expect((await calls("=QUILT.CUTSQUARE(C9)"))[0].outcome).toMatchObject({ code: "#N/A" });
  expect(await readCalls("=QUILT.CUTSQUARE(", () => Promise.resolve([]))).toBe("This formula cannot be read.");
  expect(await calls("=B4*2")).toEqual([]);
});

test("finished, unfinished and cut are told beside each other", () => {
  const sizes = (id: string, cells: unknown[], answer: number | number[][]) =>
    sizesOf(functions.get(id)!, cells, answer);
  expect(sizes("CUTHALFSQUARE", [3], 3.875)).toEqual({ finished: "3 in", unfinished: "3 1/2 in", cut: "3 7/8 in" });
  expect(sizes("UNITMADE", [5, "half square four"], 3.181980515339)).toEqual({
    finished: "2.682 in",
    unfinished: "3.182 in",
    cut: "5 in",
  });
  expect(sizes("CUTSQUARE", [10, null, null, "cm"], 11.5)).toEqual({
    finished: "10 cm",
    unfinished: "11.5 cm",
    cut: "11.5 cm",
  });
  expect(sizes("BORDERSIZE", [45, 54, 5], [[55, 64]])).toMatchObject({
    finished: "55 in × 64 in",
    unfinished: "55 1/2 in × 64 1/2 in (seams of 1/4 in)",
  });
  expect(sizes("STRIPSNEEDED", [63, 9.5], 16)).toBeUndefined();
});

test("references name rectangles of cells", () => {
  expect(areaOf("'It''s light'!$B$4:C9", "Plan")).toMatchObject({
    page: "It's light",
    top: 3,
    left: 1,
    bottom: 8,
    right: 2,
  });
  expect(areaOf("AA10", "Plan")).toMatchObject({ page: "Plan", top: 9, left: 26 });
  const page = {
    name: "Plan",
    row: 1,
    column: 1,
    values: [
      [1, 2],
      [3, null],
    ],
    formulas: [
      ["", ""],
      ["", ""],
    ],
  };
  expect(valuesIn([page], "A1:C3", "Plan")).toEqual([
    [null, null, null],
    [null, 1, 2],
    [null, 3, null],
  ]);
  expect(valuesIn([page], "B:B", "Plan")).toEqual([[null], [1], [3]]);
  expect(() => valuesIn([page], "Other!A1", "Plan")).toThrow("There is no page “Other”");
});

test("the handout tells what to buy, to cut and to measure", async () => {
  const pages = await new MemorySheet(throwPlan()).pages();
  const handout = await handoutOf(pages, functions, "Harbor lights throw", new Date(2026, 10, 25));
  expect(handout.date).toBe("November 25, 2026");
  expect(handout.supplies).toEqual([
    { what: "Light fabric", amount: "1 3/8 yd" },
    { what: "Dark fabric", amount: "1 3/8 yd" },
    { what: "Border fabric", amount: "1 yd" },
    { what: "Backing", amount: "3 1/2 yd" },
    { what: "Batting", amount: "63 in × 72 in" },
    { what: "Binding", amount: "1/2 yd" },
  ]);
  expect(handout.cutting).toEqual([
    { what: "Squares for the units", amount: "cut 5 3/8 in" },
    { what: "Strips of squares, light", amount: "9 strips" },
    { what: "Border strips", amount: "6 strips of 5 1/2 in" },
  ]);
  expect(handout.cuttingTables.map(({ what }) => what)).toEqual(["Border pieces", "Cutting plan"]);
  expect(handout.measures).toEqual([
    { what: "Squares for the units", amount: "5 in sewn and trimmed, 4 1/2 in finished" },
    { what: "Top without border", amount: "sewn 45 1/2 in × 54 1/2 in (seams of 1/4 in), finished 45 in × 54 in" },
  ]);
  expect(handout.assumptions).toEqual(expect.arrayContaining(["fabric width: 42 in", "seam: 1/4 in"]));
  expect(handout.pictures).toHaveLength(3);
});
