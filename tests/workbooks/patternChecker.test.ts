/** The pattern checker: no claim is right that was not checked. */
import { type TypedCells, workedWith } from "./typed";

const checker = (typed: TypedCells) => workedWith("pattern-checker", typed);

test.each(["7/8 yd", "31 1/2 in", 0.875])("amounts of the uses count however they are typed: %s", async (amount) => {
  const { Fabric, Pattern } = await checker({ "Fabric!B49": amount });
  // Seven eighths and five eighths of a yard are cut from one yard.
  expect(Fabric.values).toMatchObject({ H49: 1.5, I49: "cannot be right: short by 1/2 yd" });
  expect(Pattern.values.A13).toBe("17 of 38 claims cannot be right. ");
});

test.each(["some", undefined])("a use without a readable amount (%s) is not passed over", async (amount) => {
  const { Fabric, Pattern } = await checker({ "Fabric!B49": amount });
  expect(Fabric.values.I49).toBe("cannot be checked: a use has no amount, or one that is no length");
  expect(Pattern.values.A13).toBe("16 of 37 claims cannot be right. Not checked: 1. See the rules below.");
});

test("amounts of the supply list count however they are typed", async () => {
  const { Fabric } = await checker({ "Fabric!G49": "36 in", "Fabric!F49": "Blue", "Fabric!G48": undefined });
  expect(Fabric.values).toMatchObject({
    D49: "OK",
    I48: "cannot be checked: type the amount of the supply list",
    I49: "cannot be right: short by 1/2 yd",
  });
});

test("a name with spaces round it is not taken for another fabric", async () => {
  const { Fabric } = await checker({ "Fabric!F49": " blue" });
  expect(Fabric.values.I49).toBe("cannot be checked: type its name alike everywhere, without spaces round it");
});

test("a word that a rule does not know is refused", async () => {
  const { Pieces, Pattern } = await checker({ "Pieces!C13": "long", "Pieces!C14": " Long Edge" });
  expect(Pieces.values).toMatchObject({
    I13: "",
    J13: "cannot be checked: “long” is not short edge or long edge",
    J14: expect.stringMatching(/^cannot be right: /) as string,
  });
  expect(Pattern.values.A13).toMatch(/Not checked: 1\. See the rules below\.$/);
});

test("a patch that is wider than its fabric is counted and named", async () => {
  const { Fabric, Pattern } = await checker({ "Fabric!B7": 45 });
  expect(Fabric.values.F7).toMatch(/^cannot be checked: /);
  expect(Pattern.values.A13).toBe("16 of 37 claims cannot be right. Not checked: 1. See the rules below.");
  const tally = Object.keys(Pattern.values).find((cell) => cell.startsWith("D") && Pattern.values[cell] === 1)!;
  expect(Pattern.values[tally.replace("D", "E")]).toBe("look there");
});

test.each([
  [8.5625, "OK"],
  [8.625, "cannot be right: 1/8 in too large"],
])("8 1/2 in printed as %d: sizes are the same up to 1/16 in", async (claimed, verdict) => {
  const { Pieces } = await checker({ "Pieces!G20": claimed });
  expect(Pieces.values.J20).toBe(verdict);
});

test("in centimeters, by any word, sizes are the same up to 0.1 cm", async () => {
  const typed = { "Pattern!B6": "centimeters", "Pattern!B7": 0.75 };
  const { Pattern, Pieces, Fabric } = await checker({ ...typed, "Pieces!B27": 8, "Pieces!C27": 9.6 });
  expect(Pattern.values).toMatchObject({ C7: "cm", C10: "m", A18: expect.stringContaining("0.1 cm") as string });
  expect(Pieces.values.J27).toBe("OK");
  expect(Fabric.values.E5).toBe("cm");
});

test("a strip is not longer than the usual width where no width is stated", async () => {
  const { Finishing } = await checker({ "Pattern!B8": undefined, "Finishing!F62": undefined, "Finishing!B62": 43 });
  expect(Finishing.values).toMatchObject({ I62: 42, J62: expect.stringMatching(/^cannot be right: longer/) as string });
});
