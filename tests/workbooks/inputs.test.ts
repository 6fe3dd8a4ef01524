/** What the planning workbooks say where yellow cells are blank, odd or in other words. */
import { evaluateBook } from "../../src/practice/recalculate";
import { patternOf } from "../../src/workbooks/formats";
import { isFormula, type WorkedSheet } from "../../src/workbooks/book";
import { at, type Typed, typedInto } from "../classCopy/changedInputs";
import { written } from "./books";

type Worked = Record<string, WorkedSheet>;

/** What a workbook comes to with other inputs; undefined empties a cell. */
async function worked(name: string, typed: Record<string, string | number | undefined>): Promise<Worked> {
  const { book } = await written(name);
  const inputs: Typed = new Map(Object.entries(typed));
  const cells = new Set(book.sheets.flatMap((sheet) => sheet.entries.map(({ cell }) => at(sheet.name, cell))));
  expect([...inputs.keys()].filter((cell) => !cells.has(cell))).toEqual([]);
  return evaluateBook(typedInto(book, inputs));
}

function errors(sheets: Worked): string[] {
  return Object.entries(sheets).flatMap(([sheet, { values }]) =>
    Object.entries(values)
      .filter(([, value]) => typeof value === "string" && /^#[A-Z/0!?]+$/.test(value))
      .map(([cell, value]) => `${at(sheet, cell)} ${value}`),
  );
}

/** What the supply list says to buy, by the letter of the fabric. */
function bought({ "Supply list": { values } }: Worked): Record<string, unknown> {
  return Object.fromEntries([7, 8, 9, 10, 11, 12].map((row) => [String(values[`B${row}`]), values[`F${row}`]]));
}

describe("quilt planner", () => {
  const planner = (typed: Record<string, string | number | undefined>) => worked("quilt-planner", typed);

  test("a fabric that is used and not listed is named where one shops", async () => {
    const sheets = await planner({ "Design!B23": undefined, "Blocks!B5": "F", "Design!B35": "velvet" });
    const sentence =
      "Fabric F is used and is not listed. Fabric B is used and is not listed. Fabric velvet binds and is not listed. ";
    expect(sheets["Supply list"].values.A3).toBe(sentence);
    expect(sheets.Design.values.A28).toBe(sentence);
    expect(errors(sheets)).toEqual([]);
  });

  test.each(["centimeters", "CM", " Centimetres "])("labels read %s as the functions do", async (units) => {
    const sheets = await planner({ "Design!B6": units, "Design!B9": 20, "Design!B40": 0.05 });
    expect(sheets.Design.values).toMatchObject({ C9: "cm", J6: "cm", I9: "m", C40: "m" });
    expect(sheets["Supply list"].values).toMatchObject({
      E6: "width, cm",
      A28: "Seam 0.25 cm; 1 cm lost squaring each fabric, 2 cm more for miscuts; nothing for shrinking.",
      F16: expect.stringMatching(/^\d+ m$/),
    });
    expect(sheets["Supply list"].values.A2).toContain("blocks 20 cm");
  });

  test("lengths are printed as they were given, in inches", async () => {
    const sheets = await planner({ "Design!B37": 0.3125, "Design!B38": 0.2, "Design!B39": 1.5, "Design!B9": 7.3 });
    expect(sheets["Supply list"].values.A28).toBe(
      "Seam 5/16 in; 0.2 in lost squaring each fabric, 1 1/2 in more for miscuts; nothing for shrinking.",
    );
    // Five blocks of 7.3 in, six sashes of 1 1/2 in, borders of 1 and 5 in on both sides: 57.5; the length is 75.1.
    expect(sheets["Supply list"].values.A2).toBe("Lap quilt of stars, finished 57 1/2 × 75.1 in, blocks 7.3 in");
  });

  test("blank cells take the usual value, in inches", async () => {
    const blanks = ["B5", "B6", "B11", "B22", "B30", "B31", "B32", "B33", "B34", "B36", "B37", "B38", "B39", "B40"];
    const sheets = await planner({
      ...Object.fromEntries([...blanks, "C23", "C26"].map((cell) => [`Design!${cell}`, undefined])),
      "Design!B22": "A",
    });
    expect(errors(sheets)).toEqual([]);
    expect(sheets.Design.values).toMatchObject({ A3: "", A13: "", A28: "", C9: "in", I9: "yd" });
    expect(sheets["Supply list"].values).toMatchObject({
      A2: expect.stringMatching(/^Quilt, finished 58 × 77 in/),
      A28: "Seam 1/4 in; 0 in lost squaring each fabric, 0 in more for miscuts; nothing for shrinking.",
      E8: 42,
      E11: 42,
      E13: 42,
    });
    expect(sheets.Plans.values.A117).toMatch(/strips of 2 1\/2 in for the binding\.$/);
  });

  test("blank cells take the usual value, in centimeters", async () => {
    const blanks = ["B30", "B31", "B32", "B34", "B36", "B37", "B38", "B39", "B40", "C23", "C26"];
    const sheets = await planner({
      ...Object.fromEntries(blanks.map((cell) => [`Design!${cell}`, undefined])),
      "Design!B6": "cm",
      "Design!B9": 20,
      "Design!B16": 12,
    });
    expect(errors(sheets)).toEqual([]);
    expect(sheets["Supply list"].values).toMatchObject({
      A28: "Seam 0.75 cm; 0 cm lost squaring each fabric, 0 cm more for miscuts; nothing for shrinking.",
      E8: 107,
      E13: 107,
    });
    expect(sheets.Plans.values.A117).toMatch(/strips of 6.5 cm for the binding\.$/);
  });

  test("sashing and borders without a width are none; a fabric that is listed and not used is not bought", async () => {
    const sheets = await planner({ "Design!B10": 0, "Design!B15": 0, "Design!B16": undefined });
    expect(errors(sheets)).toEqual([]);
    expect(bought(sheets)).toMatchObject({ C: "not used", D: "not used", E: expect.stringMatching(/ yd$/) });
    expect(sheets.Cutting.values).toMatchObject({ A47: "none", A53: "none" });
    // 5 × 7 blocks of 8 in, and nothing else.
    expect(sheets.Design.values).toMatchObject({ H6: 40, I6: 56, A28: "" });
    // 4 seams in each of 7 rows, 8 1/2 in long, and 6 between rows, 40 1/2 in long.
    expect(sheets.Design.values.H14).toBe(4 * 7 * 8.5 + 6 * 40.5);
    // The binding's strips, squaring and miscuts.
    expect(sheets.Design.values.G26).toBe((sheets.Design.values.H13 as number) * 2.5 + 1 + 2);
  });

  test("sashing has seams of its own, and a fabric may only bind", async () => {
    const sheets = await planner({
      "Design!B10": undefined,
      "Design!A27": "Black, solid",
      "Design!B27": "F",
      "Design!B35": "f ",
      "Design!C27": 40,
    });
    expect(errors(sheets)).toEqual([]);
    const { H13, G27 } = sheets.Design.values as Record<string, number>;
    expect(G27).toBe(H13 * 2.5 + 1 + 2);
    expect(sheets["Supply list"].values).toMatchObject({ D12: "binding", F12: expect.stringMatching(/ yd$/) });
    expect(sheets.Plans.values.A145).toMatch(/^Buy .+ yd, with \d+ strips of 2 1\/2 in for the binding\.$/);
    // With sashing of 1 1/2 in round 5 × 7 blocks: 11 columns and 15 rows, 49 × 68 in.
    const { worked: asItIs } = await written("quilt-planner");
    expect(asItIs.Design.values.H14).toBe(10 * (68 + 15 * 0.5) + 14 * 49.5);
  });

  test.each([
    ["Design!B7", 0, "Blocks across must be a whole number from 1 to 12."],
    ["Design!B7", 13, "Blocks across must be a whole number from 1 to 12."],
    ["Design!B8", undefined, "Blocks down must be a whole number from 1 to 14."],
    ["Design!B9", undefined, "How large is a block, finished?"],
    ["Design!C10", undefined, "Of which fabric is the sashing?"],
    ["Design!C16", undefined, "A border has a width and no fabric."],
    ["Layout!B5", undefined, "Places of the layout without a block: 1."],
  ])("%s as %s: one sentence, and no errors", async (cell, content, sentence) => {
    const sheets = await planner({ [cell]: content });
    expect(errors(sheets)).toEqual([]);
    for (const [sheet, where] of [
      ["Design", "A3"],
      ["Supply list", "A3"],
      ["Cutting", "A3"],
    ])
      expect(sheets[sheet].values[where]).toBe(sentence);
  });

  test("a renamed block leaves its old name in the layout, and the sheets say so", async () => {
    const sheets = await planner({ "Blocks!A5": "comet" });
    const sentence =
      "Places of the layout that name no drawn block: 18. A renamed block needs its new name there, too.";
    expect(sheets.Design.values.A13).toBe(sentence);
    expect(sheets["Supply list"].values.A3).toBe(sentence);
    expect(errors(sheets)).toEqual(["Cutting!A4 #VALUE!"]);
  });
});

describe("block designer", () => {
  const designer = (typed: Record<string, string | number | undefined>) => worked("block-designer", typed);

  test("a fabric that is used and not listed is named where the fabrics are", async () => {
    const sheets = await designer({ "Block!F6": "D", "Block!I9": "hello", "Block!B18": "c" });
    expect(sheets.Block.values.A21).toBe(
      "Fabric D is used and is not listed. Fabric hello is used and is not listed. ",
    );
    expect(errors(sheets)).toEqual([]);
    const listed = await designer({ "Block!F6": "D", "Block!B18": "d" });
    expect(listed.Block.values).toMatchObject({ A21: "", C18: expect.stringMatching(/ yd$/) });
  });

  test("blank widths are none, blank blocks one, and units may be written out", async () => {
    const sheets = await designer({
      "Block!B5": "centimeters",
      "Block!B6": 30,
      "Block!B7": undefined,
      "Block!B8": undefined,
      "Block!B9": undefined,
      "Block!B10": undefined,
      "Block!B11": undefined,
      "Sizes!E6": undefined,
      "Sizes!E9": undefined,
      "Roll!B7": undefined,
      "Roll!B8": undefined,
    });
    expect(errors(sheets)).toEqual([]);
    expect(sheets.Block.values).toMatchObject({ C6: "cm", C11: "m", C15: expect.stringMatching(/^0\.\d+ m$/) });
    expect(sheets.Block.values.C7).toBe("one, if empty");
    expect(sheets.Sizes.values.A35).toMatch(/^Fabric in meters/);
    expect(sheets.Sizes.values.A14 ?? "").toBe("");
  });

  test.each([
    ["Block!B6", undefined, ["Block", "Sizes", "Roll"], "How large is the block, finished?"],
    ["Block!E6", undefined, ["Sizes"], "The block has no name: type one on Block, and into the layout."],
    ["Sizes!B6", undefined, ["Sizes"], "Every place of the layout needs the name of the block."],
    ["Sizes!F6", undefined, ["Sizes"], "Of which fabric is the sashing?"],
    ["Sizes!F9", undefined, ["Sizes"], "A border has a width and no fabric."],
    ["Roll!B5", undefined, ["Roll"], "Of which fabric is the roll? Type its letter."],
    ["Roll!B5", "Q", ["Roll"], "Fabric Q is not in the block."],
    ["Roll!B6", undefined, ["Roll"], "How many strips are on the roll?"],
  ])("%s as %s: one sentence, and no errors", async (cell, content, where, sentence) => {
    const sheets = await designer({ [cell]: content });
    expect(errors(sheets)).toEqual([]);
    for (const sheet of where) expect(sheets[sheet].values.A3).toBe(sentence);
  });

  test("a renamed block leaves its old name in the layout, and the sheet says so", async () => {
    const sheets = await designer({ "Block!E6": "comet" });
    expect(sheets.Sizes.values.A12).toBe(
      "Places of the layout that name no drawn block: 4. A renamed block needs its new name there, too.",
    );
    expect(sheets.Block.values.A24).toBe("");
  });
});

test("amounts read to a twentieth of a yard", () => {
  // One digit for the denominator shows 4.95 as 5 1/1 and a step of 0.05 as 0.
  expect(patternOf("amount")).toBe("# ??/??");
  expect(patternOf("length")).toBe("# ??/??");
});

test.each(["quilt-planner", "block-designer"])(
  "%s: titles have room, and no label repeats a blank cell",
  async (name) => {
    const { book } = await written(name);
    for (const sheet of book.sheets) {
      expect(sheet.heights?.[1]).toBeGreaterThanOrEqual(22);
      for (const { content } of sheet.entries) if (isFormula(content)) expect(content).not.toMatch(/\$B\$[56]="cm"/);
    }
  },
);
