/** The class handout: what it takes from the cells of a plan, in which words and units, and what it leaves out. */
import { catalogue } from "../../scripts/catalogue";
import { byId } from "../../src/pane/catalogue";
import { type Handout, handoutOf } from "../../src/pane/handout";
import type { CellValue, SheetPage } from "../../src/pane/sheet";
import { pageOf, type Worked } from "./pageOf";

const functions = byId(catalogue());

function handout(...pages: SheetPage[]): Promise<Handout> {
  return handoutOf(pages, functions, "Harbor lights", new Date(2026, 10, 25));
}

/** The lines about one cell with a label beside it. */
async function said(formula: string, shows: CellValue, label = "Piece"): Promise<string[]> {
  const { supplies, cutting, measures } = await handout(pageOf("Plan", { A1: label, B1: [formula, shows] }));
  return [supplies, cutting, measures].flatMap((lines, index) =>
    lines.map(({ amount }) => `${["buy", "cut", "measure"][index]}: ${amount}`),
  );
}

test.each([
  ["=QUILT.BACKINGFABRIC(66,77)*12.99", 61.7025],
  ["=QUILT.BACKINGFABRIC(66,77)*36", 171],
  ["=ROUND(QUILT.STRIPFABRIC(5,2.5)*12,2)", 4.5],
  ["=QUILT.STRIPSNEEDED(80,2.5)*2.5", 12.5],
  ["=QUILT.CUTHALFSQUARE(3)*4", 15.5],
  ['="Cut "&QUILT.CUTSQUARE(3)', "Cut 3.5"],
  ["=-QUILT.CUTSQUARE(3)", -3.5],
  ["=QUILT.CUTSQUARE(3)%", 0.035],
])("%s is no longer that call's answer, and is left out", async (formula, shows) => {
  expect(await said(formula, shows)).toEqual([]);
});

test.each([
  ["=QUILT.BACKINGFABRIC(66,77)", 4.75, ["buy: 4 3/4 yd"]],
  ["=+(QUILT.BACKINGFABRIC(66,77))", 4.75, ["buy: 4 3/4 yd"]],
  ["=ROUNDUP(QUILT.BACKINGFABRIC(66,77),0)", 5, ["buy: 5 yd"]],
  ["=IFERROR(QUILT.BACKINGFABRIC(66,77),0)", 4.75, ["buy: 4 3/4 yd"]],
  ["=MAX(QUILT.BACKINGFABRIC(66,77),QUILT.STRIPFABRIC(4,5))", 4.75, ["buy: 4 3/4 yd"]],
  ["=QUILT.FABRICTEXT(QUILT.BACKINGFABRIC(66,77))", "4 3/4 yd", ["buy: 4 3/4 yd"]],
  ["=QUILT.FABRICTEXT(1.5+0.25)", "1 3/4 yd", ["buy: 1 3/4 yd"]],
  ['=QUILT.FABRICTEXT(QUILT.FABRIC(100,,"cm"),"cm")', "1 m", ["buy: 1 m"]],
  ["=QUILT.LENGTHTEXT(QUILT.CUTSQUARE(3))", "3 1/2", ["cut: cut 3 1/2 in"]],
])("%s still is: %j", async (formula, shows, lines) => {
  expect(await said(formula, shows)).toEqual(lines);
});

test.each([
  ["=IF(1=1,QUILT.CUTHALFSQUARE(3),QUILT.CUTQUARTERSQUARE(5))", 3.875],
  ["=IF(1=2,QUILT.CUTQUARTERSQUARE(5),QUILT.CUTHALFSQUARE(3))", 3.875],
  ["=IFS(1=2,QUILT.CUTQUARTERSQUARE(5),1=1,QUILT.CUTHALFSQUARE(3))", 3.875],
])("the branch that the cell shows decides: %s", async (formula, shows) => {
  expect(await said(formula, shows)).toEqual([
    "cut: cut 3 7/8 in",
    "measure: 3 1/2 in sewn and trimmed, 3 in finished",
  ]);
  expect(await said(formula, 6.25)).toEqual(["cut: cut 6 1/4 in"]);
});

test("a branch with another kind of answer is told in its own unit, and a branch without a call not at all", async () => {
  const either = "=IF(C1>1,QUILT.BACKINGFABRIC(66,77),QUILT.BACKINGPANELS(66,77))";
  expect(await said(either, 4.75)).toEqual(["buy: 4 3/4 yd"]);
  expect(await said(either, 2)).toEqual(["cut: 2 panels"]);
  expect(await said("=IF(C1>1,QUILT.BACKINGFABRIC(66,77),3)", 3)).toEqual([]);
});

test("a table inside of IF is told, and a refused one is not", async () => {
  const pages = (shows: CellValue) =>
    pageOf("Plan", { A1: "Border pieces", A3: ['=IF(D1="","none",QUILT.BORDERLENGTHS(45,54,5))', shows] });
  expect((await handout(pages("piece"))).cuttingTables).toMatchObject([
    { what: "Border pieces", units: "Sizes in inches.", head: ["piece", "cut width", "cut length", "how many"] },
  ]);
  expect((await handout(pages("none"))).cuttingTables).toEqual([]);
});

test.each([
  ["=QUILT.BATTINGPACK(64,82)", "twin", "buy: twin, 72 in × 90 in"],
  ["=QUILT.BATTINGPACK(82,64)", "twin", "buy: twin, 72 in × 90 in, turned"],
  ["=QUILT.BORDERMEASURED(60,61,61.5)", 60.875, "cut: cut 60 7/8 in; not square: the measurements differ by 1 1/2 in"],
  ["=QUILT.CUTDIAMOND(3)", 2.6213, "cut: cut a strip 2.6213 in wide, slanting cuts 3.7071 in apart along its edge"],
  ["=QUILT.CUTHEXAGON(2)", 3.9641, "cut: cut 3.9641 in from flat side to flat side, each side 2.2887 in"],
  ["=QUILT.CUTTRIANGLE(3,4)", 3.7215, "cut: cut base 3.7215 in, height 4.962 in"],
  ["=QUILT.CUTHALFRECTANGLE(3,4)", 3.75, "cut: cut a rectangle 3 3/4 in × 5 in, once corner to corner"],
  ["=QUILT.BIASSQUARE(300,2.5)", 28, "cut: cut a square of 28 in"],
  ['=QUILT.PANELSNEEDED({"a",8,8,1},18,21)', 1, "buy: 1 panel"],
  ["=QUILT.STRIPSNEEDED(1,2.5)", 1, "cut: 1 strip"],
  ["=QUILT.BINDINGSTRIPS(66,77,2.25)", 8, "cut: 8 strips of 2 1/4 in"],
  ["=QUILT.BINDINGLENGTH(66,77)", 296, "measure: 296 in joined"],
  ["=QUILT.TOPSIZE(4,5,12)", 48, "measure: sewn 48 1/2 in × 60 1/2 in (seams of 1/4 in), finished 48 in × 60 in"],
  ["=QUILT.BORDERSIZE(45,54,5)", 55, "measure: sewn 55 1/2 in × 64 1/2 in (seams of 1/4 in), finished 55 in × 64 in"],
  ['=QUILT.BEDSIZE("twin")', 63, "measure: 63 in × 87 in finished"],
  ['=QUILT.UNITMADE(3.875,"half square")', 3.5214, "measure: 3.5214 in sewn, before it is trimmed"],
  ["=QUILT.CHECKROW({2.5,4.5,2.5})", 8.5, "measure: 8 1/2 in sewn, with its outer seam allowances"],
  ["=QUILT.STRIPSETSIZE({2.5,2.5})", 4.5, "measure: 4 1/2 in sewn, with its outer seam allowances"],
])("%s: %j says what its numbers mean", async (formula, shows, line) => {
  expect(await said(formula, shows)).toEqual([line]);
});

test("a square of a size to trim to is measured, not cut", async () => {
  expect(await said("=QUILT.CUTSQUARE(4)", 4.5, "unit, trimmed")).toEqual([
    "measure: 4 1/2 in sewn and trimmed, 4 in finished",
  ]);
  expect(await said("=QUILT.CUTSQUARE(4)", 4.5, "plain squares")).toEqual(["cut: cut 4 1/2 in"]);
});

test("the corners of a template are no pieces, and have a heading of their own", async () => {
  const { cuttingTables } = await handout(
    pageOf("Plan", { A1: "Kite", A2: ["=QUILT.CUTTEMPLATE({0,0;3,0;0,3})", -0.25] }),
  );
  expect(cuttingTables).toEqual([
    {
      what: "Kite",
      units: "Corners of the cut shape, round it. Sizes in inches.",
      head: ["corner", "to the right", "up"],
      rows: [
        { cells: ["1", "-0.25", "-0.25"], isPiece: false },
        { cells: ["2", "3.6036", "-0.25"], isPiece: false },
        { cells: ["3", "-0.25", "3.6036"], isPiece: false },
      ],
    },
  ]);
});

test.each([
  ["=QUILT.BORDERFIT(45,54,6)", ["side spacers", "side units", "top and bottom units", "corner units"]],
  ["=QUILT.CUTGEESE(4)", ["large square", "small square"]],
  ['=QUILT.CUTGEESE(4,"corners")', ["rectangle", "square"]],
  ["=QUILT.CUTSTAR(12)", ["diamond", "corner square", "side square"]],
  ['=QUILT.PLAN({"a",5.5,5.5,6})', ["5 1/2"]],
  ['=QUILT.STRIPSFIRST({"a",2.5,5.5,60;"b",4,4,3},10,2.5)', ["a", "b"]],
])("%s: boxes stand beside %j only", async (formula, pieces) => {
  const { cuttingTables } = await handout(pageOf("Plan", { A1: "Pieces", A2: [formula, null] }));
  expect(cuttingTables[0].rows.filter(({ isPiece }) => isPiece).map(({ cells }) => cells[0])).toEqual(pieces);
});

test("a quilt in several sizes is a table of what to buy, without boxes", async () => {
  const { supplyTables } = await handout(
    pageOf("Plan", { A1: "To buy", A2: ['=QUILT.SIZETABLE({"s"},{"s","A"},6,,,,{"crib",30,54})', ""] }),
  );
  expect(supplyTables).toMatchObject([
    { what: "To buy", units: "Sizes in inches, fabric in yards.", head: ["", "crib"] },
  ]);
  expect(supplyTables[0].rows.at(-1)).toEqual({ cells: ["A", "1 1/2"], isPiece: false });
});

test("a table in centimeters says so", async () => {
  const page = pageOf("Plan", { A1: "Border", A2: ['=QUILT.BORDERLENGTHS(100,120,10,,,,"cm")', "piece"] });
  expect((await handout(page)).cuttingTables[0].units).toBe("Sizes in centimeters.");
});

test("a backing pieced both ways says what to buy where nothing else does, and how long its panels are", async () => {
  const plan: Worked = ["=QUILT.BACKINGPLAN(66,77)", "way"];
  const alone = await handout(pageOf("Plan", { A1: "Backing", A2: plan }));
  expect(alone.supplies).toEqual([{ what: "Backing", amount: "4 3/4 yd" }]);
  expect(alone.cutting).toEqual([{ what: "Backing", amount: "2 panels, each 85 in long" }]);
  const both = await handout(
    pageOf("Plan", { A1: "Backing", A2: plan, A9: "Backing fabric", B9: ["=QUILT.BACKINGFABRIC(66,77)", 4.75] }),
  );
  expect(both.supplies).toEqual([{ what: "Backing fabric", amount: "4 3/4 yd" }]);
});

test("lines name their page where several have a part in the list, and not elsewhere", async () => {
  const page = (name: string) =>
    pageOf(name, { A1: "Squares", B1: ["=QUILT.CUTSQUARE(3)", 3.5], A2: "Top", B2: ["=QUILT.TOPSIZE(4,5,12)", 48] });
  const wall = pageOf("Wall", { A1: "Squares", B1: ["=QUILT.CUTSQUARE(3)", 3.5] });
  const { cutting, measures } = await handout(wall, page("Lap"));
  expect(cutting).toEqual([
    { what: "Squares", amount: "cut 3 1/2 in", page: "Wall" },
    { what: "Squares", amount: "cut 3 1/2 in", page: "Lap" },
  ]);
  expect(measures.map((line) => "page" in line)).toEqual([false]);
});

test("what only the sheet works out is read from its cells, where no other branch is shown", async () => {
  const table = { A2: ['=IF(D1<>"","",QUILT.BORDERLENGTHS(VLOOKUP(1,F1:G2,2),54,5,,,,E1))', "piece"] as Worked };
  const page = (A2: Worked) =>
    pageOf("Plan", {
      ...{ A1: "Border", A2, B2: "cut width", C2: "cut length", D2: "how many", E1: "cm" },
      ...{ A3: "sides", B3: 5.5, C3: 54.5, D3: 2, E3: "beside it" },
    });
  expect((await handout(page(table.A2))).cuttingTables).toEqual([
    {
      what: "Border",
      units: "Sizes in centimeters.",
      head: ["piece", "cut width", "cut length", "how many"],
      rows: [{ cells: ["sides", "5.5", "54.5", "2"], isPiece: true }],
    },
  ]);
  expect((await handout(page(["=QUILT.PLAN(VLOOKUP(1,F1:G2,2))*2", "piece"]))).cuttingTables).toEqual([]);
  expect(await said("=QUILT.STRIPSNEEDED(VLOOKUP(1,F1:G2,2),2.5)", 5)).toEqual(["cut: 5 strips"]);
  expect(await said("=IF(D1=1,QUILT.STRIPSNEEDED(VLOOKUP(1,F1:G2,2),2.5),5)", 5)).toEqual([]);
});

test("a table that a formula fills is read where another formula names it", async () => {
  const page = pageOf("Plan", {
    ...{ A1: "Pieces", A2: ["=SORT(F1:I9)", "a"], B2: 5.5, C2: 5.5, D2: 60, A3: "b", B3: 2.5, C3: 12.5, D3: 24 },
    ...{ A6: "Strips", B6: ["=QUILT.PLANSTRIPS(A2#)", 10] },
  });
  expect((await handout(page)).cutting).toEqual([{ what: "Strips", amount: "10 strips" }]);
});

test("an amount that is only written out again is told once", async () => {
  const plan = pageOf("Plan", { A1: "Backing", B1: ["=QUILT.BACKINGFABRIC(66,77)", 4.75] });
  const list = pageOf("List", { A1: "Backing", B1: ["=QUILT.FABRICTEXT(Plan!B1)", "4 3/4 yd"] });
  expect((await handout(plan, list)).supplies).toEqual([{ what: "Backing", amount: "4 3/4 yd" }]);
});

test("in a table a row is one line, with the letter of its fabric, and sizes of other rows are repeated", async () => {
  const { cutting } = await handout(
    pageOf("Plan", {
      ...{ A1: "letter", B1: "piece", C1: "strips", D1: "pieces", E1: "size" },
      ...{ A2: "A", B2: "squares", C2: ["=QUILT.STRIPSNEEDED(16,4.875)", 2], D2: ["=2*8", 16] },
      E2: ["=QUILT.CUTHALFSQUARE(4)", 4.875],
      ...{ A3: "B", B3: "squares", C3: ["=QUILT.STRIPSNEEDED(16,4.875)", 2], D3: ["=2*8", 16], E3: ["=$E$2", 4.875] },
    }),
  );
  expect(cutting).toEqual([
    { what: "A: squares", amount: "2 strips; 16 pieces; cut 4 7/8 in" },
    { what: "B: squares", amount: "2 strips; 16 pieces; cut 4 7/8 in" },
  ]);
});

test("strips and pieces that a plain formula counts are told by the word beside them", async () => {
  const { cutting } = await handout(
    pageOf("Plan", {
      ...{ A1: "Light", B1: ["=ROUNDUP(40/QUILT.STRIPPATCHES(6.875),0)", 7], C1: "strips" },
      ...{ A2: "Of each fabric", B2: ["=80/2", 40], C2: "squares" },
      ...{ A3: "One more", B3: ["=1", 1], C3: "patches" },
      ...{ A4: "To pay", B4: ["=7*2", 14], C4: "dollars" },
    }),
  );
  expect(cutting).toEqual([
    { what: "Light", amount: "7 strips" },
    { what: "Of each fabric", amount: "40 squares" },
    { what: "One more", amount: "1 patch" },
  ]);
});

test("usual values are those that the maker left out, without the words of the working", async () => {
  const { assumptions } = await handout(
    pageOf("Plan", {
      ...{
        A1: "Batting",
        B1: ["=QUILT.BATTINGPACK(64,82)", "twin"],
        A2: "Squares",
        B2: ["=QUILT.CUTHALFSQUARE(3)", 3.875],
      },
      ...{ A3: "Strips", B3: ["=QUILT.STRIPSNEEDED(7,2.5)", 1] },
    }),
  );
  expect(assumptions).toEqual([
    "fabric width: 42 in",
    "made at once: 2",
    "margin: 4 in",
    "packs: crib to king",
    "seam: 1/4 in",
  ]);
});
