/** The plan that the practice sheet opens with. */
import type { ICellData } from "@univerjs/core";
import { quiltFunctions } from "../../src/practice/catalogue";
import { starterWorkbook } from "../../src/practice/starter";
import { Recalculated } from "./recalculate";

let plan: Recalculated;

beforeAll(async () => {
  plan = await Recalculated.open(starterWorkbook());
});

afterAll(() => {
  plan.close();
});

test.each<[string, string, string | number]>([
  ["quilt width: 8 units of 6 in and two borders of 6 in", "F5", 60],
  ["quilt length: 10 units of 6 in and two borders", "F6", 72],
  ["units", "F8", 80],
  ["squares for units of 6 in: 6 + 3.414 × 1/4 = 6.854, up to an eighth", "F9", 6.875],
  ["pairs of squares", "F10", 40],
  ["strips: 5 squares of 6 7/8 fit into 41 in, 40 / 5", "F11", 8],
  ["keys of 2 in along 60 in", "F14", 30],
  ["keys of 2 in along 48 in", "F15", 24],
  ["width of a key as cut", "F16", 2.5],
  ["length of a key as cut", "F17", 6.5],
  ["strips of 6 1/2: 108 keys, 16 from a strip, and 4 corners, 6 from a strip", "F18", 8],
  ["light: 8 × 6 7/8 + 1 = 56 in", "F20", 1.625],
  ["keys: 8 × 6 1/2 + 1 = 53 in", "F22", 1.5],
  ["backing: 2 panels of 68 in across, and 1 in, are 137 in", "F23", 3.875],
  ["batting: the shorter side and two margins, 68 in", "F24", 2],
  ["trim", "H8", "Trim each to 6 1/2 in after sewing."],
])("%s", (_, cell, value) => {
  expect(plan.value("Plan", cell)).toBe(value);
});

test("the sheet Backing shows both ways", () => {
  expect(plan.value("Backing", "A4")).toBe("way");
  expect(plan.value("Backing", "A6")).toBe("seams across");
  expect(plan.value("Backing", "D6")).toBe(3.875);
});

test("no cell shows an error, and every function called exists", () => {
  const { workbook, spilled } = plan.content();
  const names = new Set(quiltFunctions.map(({ name }) => name));
  for (const id of workbook.sheetOrder) {
    const cells = [workbook.sheets[id].cellData, spilled[id]].flatMap((matrix) =>
      Object.values((matrix ?? {}) as Record<string, Record<string, ICellData>>).flatMap((line) => Object.values(line)),
    );
    for (const cell of cells) {
      expect(String(cell.v)).not.toMatch(/^#/);
      for (const [name] of (cell.f ?? "").matchAll(/QUILT\.\w+/g)) expect(names).toContain(name);
    }
  }
});

test("every answer follows when a number is changed", async () => {
  const changed = await Recalculated.open(starterWorkbook());
  await changed.type("Plan", "B5", 4);
  expect(changed.value("Plan", "F5")).toBe(44);
  expect(changed.value("Plan", "F9")).toBe(4.875);
  await changed.type("Plan", "B9", 5);
  expect(changed.value("Plan", "F14")).toBe(8);
  expect(changed.value("Plan", "F15")).toBe(7);
  expect(changed.value("Plan", "H15")).toBe("Together 3 in too long: use a spacer or another key.");
  changed.close();
});

test("a length may be typed as text with its unit", async () => {
  const changed = await Recalculated.open(starterWorkbook());
  await changed.type("Plan", "B5", "15.24 cm");
  expect(changed.value("Plan", "F5")).toBe(60);
  expect(changed.value("Plan", "F9")).toBe(6.875);
  changed.close();
});

test("a number that cannot be used says so in the cells that need it", async () => {
  const changed = await Recalculated.open(starterWorkbook());
  await changed.type("Plan", "B5", "six");
  expect(await changed.explain("Plan", "F9")).toEqual({
    code: "#VALUE!",
    sentence: expect.stringMatching(/^finished size: cannot read a length in “six”/) as string,
  });
  changed.close();
});

test.each([0, ""])("a quilt without a border (%p) has no keys", async (border) => {
  const changed = await Recalculated.open(starterWorkbook());
  await changed.type("Plan", "B8", border);
  const wanted = { F5: 48, F6: 60, F14: 0, F15: 0, F16: 0, F17: 0, F18: 0, F22: 0, H14: "There is no border." };
  for (const [cell, value] of Object.entries(wanted))
    expect([cell, changed.value("Plan", cell)]).toEqual([cell, value]);
  changed.close();
});

test("a blank margin and blank widths are the usual ones", async () => {
  const changed = await Recalculated.open(starterWorkbook());
  for (const cell of ["B10", "B11", "B12", "B13", "B14", "B16"]) await changed.type("Plan", cell, "");
  for (const cell of ["F9", "F11", "F12", "F23", "F24", "H10", "H24"])
    expect([cell, changed.value("Plan", cell)]).toEqual([cell, plan.value("Plan", cell)]);
  changed.close();
});

test("sizes in words are as exact as they are, and one panel is one", async () => {
  const changed = await Recalculated.open(starterWorkbook());
  await changed.type("Plan", "B5", "6.5 cm");
  await changed.type("Plan", "B14", 108);
  expect(changed.value("Plan", "H8")).toBe("Trim each to 3.0591 in after sewing.");
  expect(changed.value("Plan", "H23")).toBe("1 panel; both ways are on the sheet Backing.");
  changed.close();
});
