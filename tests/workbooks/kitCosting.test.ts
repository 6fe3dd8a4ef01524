/** Kit costing: money that adds up, and what is said where something is missing. */
import { written } from "./books";
import { errorsIn, type TypedCells, type Worked, workedWith } from "./typed";

const costing = (typed: TypedCells) => workedWith("kit-costing", typed);
const number = ({ Kit }: Worked, cell: string) => Number(Kit.values[cell]);

test("money that is shown adds up to what is shown", async () => {
  const { worked } = await written("kit-costing");
  const shown = (cell: string) => Math.round(number(worked, cell) * 100);
  for (const cell of ["G22", "G23", "G24", "G25", "G32", "H5", "H6", "H7", "H8", "H9", "H13", "I13", "K32"])
    expect(number(worked, cell) * 100).toBeCloseTo(shown(cell), 6);
  // 4.73 + 4.62 + 1.95 + 11.20
  expect(shown("G32")).toBe(2250);
  expect(shown("G22") + shown("G23") + shown("G24") + shown("G25")).toBe(2250);
  expect(shown("H15")).toBe(shown("H14") * 24);
});

test("a cost that is missing is said, and not counted as nothing", async () => {
  const sheets = await costing({ "Kit!D22": undefined });
  expect(errorsIn(sheets)).toEqual([]);
  expect(sheets.Kit.values).toMatchObject({
    E10: "No cost is typed for fabric A: costs and prices wait for it.",
    G22: "",
    G32: "",
    H9: "",
    H13: "",
    K22: "",
    K32: "",
  });
});

test.each([0, undefined])("an amount of %s takes nothing of its fabric", async (amount) => {
  const sheets = await costing({ "Kit!C22": amount });
  expect(errorsIn(sheets)).toEqual([]);
  expect(sheets.Kit.values).toMatchObject({ F22: "", G22: "", I22: "", K22: "", E10: "" });
  expect(number(sheets, "G32")).toBeCloseTo(4.62 + 1.95 + 11.2, 6);
  expect(sheets["Packing list"].values.D5).toBe("");
});

test("a blank generosity is none", async () => {
  const sheets = await costing({ "Kit!B8": undefined });
  expect(errorsIn(sheets)).toEqual([]);
  expect(sheets.Kit.values.F22).toBe(0.625);
  expect(sheets["Packing list"].values.A24).toMatch(/^Each cut is at least 0 in longer/);
});

test.each(["centimeters", "CM"])(
  "labels read %s as the functions do, and lengths are printed as typed",
  async (units) => {
    const sheets = await costing({ "Kit!B6": units, "Kit!B8": 0.75, "Roll!B10": 0.1 });
    expect(sheets.Kit.values.A20).toMatch(/^Amounts in m\./);
    expect(sheets.Kit.values.F22).toBeCloseTo(0.6325, 6);
    expect(sheets["Packing list"].values.A24).toMatch(/^Each cut is at least 0\.75 cm longer/);
    const inInches = await costing({ "Kit!B8": "1 cm" });
    expect(inInches["Packing list"].values.A24).toMatch(/^Each cut is at least 0\.3937 in longer/);
  },
);

test("a roll is compared only where there is something to compare", async () => {
  for (const strips of [0, undefined]) {
    const none = await costing({ "Roll!B5": strips });
    expect(errorsIn(none)).toEqual([]);
    expect(none.Roll.values).toMatchObject({ A43: "Type how many strips are in a roll.", C38: 0, D39: 0, D42: 0 });
  }
  const free = await costing({ "Roll!E5": undefined, "Roll!E6": undefined });
  expect(errorsIn(free)).toEqual([]);
  expect(free.Roll.values).toMatchObject({
    A43: expect.stringMatching(/^A roll serves .*\. Type what a roll and yardage cost to compare them\.$/) as string,
    C42: "",
  });
  const one = await costing({ "Roll!B5": 1 });
  expect(one.Roll.values.A43).toMatch(/^A roll serves 1 kit, each with 42 pieces from yardage\. The roll is /);
});
