/** The class handouts of the plans that come along: complete enough to hand out. */
import type { IWorkbookData } from "@univerjs/core";
import { catalogue } from "../../scripts/catalogue";
import { byId } from "../../src/pane/catalogue";
import { type Handout, handoutOf } from "../../src/pane/handout";
import type { CellValue, SheetPage } from "../../src/pane/sheet";
import { plannedWorkbook } from "../../src/practice/planned";
import { recalculate } from "../../src/practice/recalculate";
import { starterWorkbook } from "../../src/practice/starter";
import { workbooks } from "../../src/workbooks";
import { pageOf, type Worked } from "./pageOf";

const functions = byId(catalogue());

function handout(...pages: SheetPage[]): Promise<Handout> {
  return handoutOf(pages, functions, "Harbor lights", new Date(2026, 10, 25));
}

async function pagesOf(workbook: Partial<IWorkbookData>): Promise<SheetPage[]> {
  const worked = await recalculate(workbook);
  return workbook.sheetOrder!.map((id) => {
    const { name = "", cellData = {} } = workbook.sheets![id];
    const cells: Record<string, CellValue | Worked> = { ...worked[name].values };
    for (const [row, line] of Object.entries(cellData))
      for (const [column, { f, v }] of Object.entries(line as Record<string, { f?: string; v?: CellValue }>)) {
        const cell = `${String.fromCharCode(65 + Number(column))}${Number(row) + 1}`;
        if (f) cells[cell] = [f, worked[name].values[cell] ?? null];
        else if (v !== undefined && v !== "") cells[cell] = v;
      }
    return pageOf(name, cells);
  });
}

const planned = (name: string) => plannedWorkbook(workbooks.find((workbook) => workbook.name === name)!.build());
const text = (lines: readonly { what: string; amount: string; page?: string }[]) =>
  lines.map(({ page, what, amount }) => `${page === undefined ? "" : `${page}, `}${what}: ${amount}`);

test("the throw quilt", async () => {
  const { supplies, cutting } = await handout(...(await pagesOf(starterWorkbook())));
  expect(text(supplies)).toHaveLength(5);
  expect(text(cutting)).toEqual(
    expect.arrayContaining([
      "Plan, Squares of each fabric: 40 squares",
      "Plan, Light, strips: 8 strips",
      "Plan, Dark, strips: 8 strips",
      "Plan, Keys and corners, strips: 8 strips",
      "Backing, Backing, pieced both ways: 2 panels, each 68 in long",
    ]),
  );
});

test("the quilt planner: every fabric, every piece, every plan", async () => {
  const { supplies, cutting, cuttingTables } = await handout(...(await pagesOf(planned("quilt-planner"))));
  expect(text(supplies).filter((line) => /^[A-F]: /.test(line))).toHaveLength(5);
  expect(text(supplies)).toContain("B: Cream, tone on tone: 1 7/8 yd");
  expect(text(cutting)).toEqual([
    "Backing panels: 2 panels",
    expect.stringMatching(/^Binding strips: 8 strips(?: of 2 1\/2 in)?$/),
  ]);
  expect(cuttingTables.map(({ what }) => what)).toEqual([
    "Cutting",
    "First border: cut only after measuring the quilt",
    "Second border",
    "Fabric A, Deep rust, small print",
    "Fabric B, Cream, tone on tone",
    "Fabric C, Slate, solid",
    "Fabric D, Gold, fine dots",
    "Fabric E, Plum, large print",
  ]);
});

test("the class planner: each size under its own name", async () => {
  const { supplies, cutting, measures } = await handout(...(await pagesOf(planned("class-planner"))));
  expect(text(supplies)).toContain("Lap, C: medium, larger print, plain blocks: 1 3/8 yd");
  expect(text(cutting).filter((line) => line.startsWith("Wall"))).toEqual([
    "Wall, D: border, from joined strips: 4 strips of 3 1/2 in",
    "Wall, C: plain blocks: 2 strips; 7 pieces; cut 8 1/2 in",
    "Wall, A: squares for units: 2 strips; 16 pieces; cut 4 7/8 in",
    "Wall, B: squares for units: 2 strips; 16 pieces; cut 4 7/8 in",
    "Wall, D: binding: 5 strips of 2 1/2 in",
  ]);
  expect(text(measures)).toContain("Wall, unit, trimmed: 4 1/2 in sewn and trimmed, 4 in finished");
});

test("the block designer: what to buy for the blocks, and for quilts of several sizes", async () => {
  const { supplies, supplyTables } = await handout(...(await pagesOf(planned("block-designer"))));
  expect(text(supplies).map((line) => line.slice(0, 2))).toEqual(["A:", "B:", "C:"]);
  expect(supplyTables[0].head).toEqual(["", "crib", "twin", "full", "queen", "king"]);
  expect(supplyTables[0].units).toBe("Sizes in inches, fabric in yards.");
});
