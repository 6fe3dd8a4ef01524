/** The class planner where cells are blank, in other words, or a quilt has no border. */
import { errorsIn, type TypedCells, workedWith } from "./typed";

const planner = (typed: TypedCells) => workedWith("class-planner", typed);

test("a blank binding strip is the usual one, in the cutting and in what to buy", async () => {
  const [blank, usual] = [await planner({ "Class!C17": undefined }), await planner({ "Class!C17": 2.5 })];
  expect(blank.Wall.values).toMatchObject({ C26: 5, D26: 2.5 });
  expect(blank).toEqual(usual);
});

test("every other blank setting is the usual one, too", async () => {
  const blanks = ["C12", "C13", "C14", "C15", "C16", "C17", "C18", "C19"].map((cell) => [`Class!${cell}`, undefined]);
  const usual = { "Class!C14": 0, "Class!C15": 0 };
  const blank = await planner(Object.fromEntries(blanks) as TypedCells);
  expect(errorsIn(blank)).toEqual([]);
  expect(blank["Supply list"].values).toEqual((await planner(usual))["Supply list"].values);
  // Three strips of 1 1/2 in sewn with the usual seam of 1/4 in.
  expect(blank.Wall.values).toMatchObject({ C31: 3.5, H5: "in", H17: "yd" });
});

test.each([0, undefined])("a quilt without a border (%s) takes no fabric for it", async (border) => {
  const sheets = await planner({ "Wall!C8": border });
  expect(errorsIn(sheets)).toEqual([]);
  // Three by five blocks of 8 in; four strips of 2 1/2 in bind 128 in and the tail; 1 in and 3 in are kept.
  expect(sheets.Wall.values).toMatchObject({ F5: 24, G5: 40, C22: 0, D22: 0, C26: 4, F16: 14 });
});

test.each(["centimeters", "CM"])("labels read %s as the functions do", async (units) => {
  const sheets = await planner({ "Class!C12": units, "Class!C13": 0.75, "Class!C16": 0.1, "Wall!C7": "8 in" });
  expect(sheets.Wall.values).toMatchObject({ H5: "cm", H17: "m" });
  expect(sheets.Class.values).toMatchObject({ D13: "cm", D16: "m" });
  expect(sheets["Supply list"].values).toMatchObject({ E32: "cm", D12: expect.stringMatching(/ cm$/) as string });
});

test("the list names the width that every size assumes, and lengths as they were typed", async () => {
  const typed = Object.fromEntries(["C13", "C14", "C15", "C16"].map((cell) => [`Wall!${cell}`, 38]));
  const { values } = (await planner({ ...typed, "Class!C13": 0.3, "Class!C15": "2 in" }))["Supply list"];
  expect(values).toMatchObject({ G6: 38, G9: 38, G10: 42, H6: 42, I9: 42, D32: 0.3, D33: 2, D34: 1 });
});
