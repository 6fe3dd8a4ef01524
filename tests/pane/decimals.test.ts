/** Numbers with the host's decimal separator: shown and typed with a comma, in formulas always with a point. */
import { catalogue } from "../../scripts/catalogue";
import { cellText } from "../../src/pane/answerView";
import { byId } from "../../src/pane/catalogue";
import { localFormula, localPicture, localText, useDecimalSeparator, usualFormula } from "../../src/pane/decimals";
import { argumentText, formulaText, typedText } from "../../src/pane/fields";
import { pictureOf } from "../../src/pane/pictures";
import { readPicture } from "../pictures/reading";

const functions = byId(catalogue());
const square = functions.get("CUTSQUARE")!;
const finished = square.parameters[0];

afterEach(() => {
  useDecimalSeparator(".");
});

describe("with a comma", () => {
  beforeEach(() => {
    useDecimalSeparator(",");
  });

  test.each([
    ["2,5", "2.5"],
    ["2.5", "2.5"],
    ["6,35 cm", '"6.35 cm"'],
    ["2 1/2", '"2 1/2"'],
    ["B4", "B4"],
    ["=B4*2,5", "B4*2.5"],
    ["=MAX(B4;2,5)", "MAX(B4,2.5)"],
    ['=B4&"1,5"', 'B4&"1,5"'],
  ])("“%s” in the form is %s in the formula, which takes points and commas", (typed, written) => {
    expect(argumentText(finished, typed)).toBe(written);
  });

  test("the formula for the sheet and the one that the maker reads", () => {
    const formula = formulaText(square, { finished: "2,5" }, "cm");
    expect(formula).toBe('=QUILT.CUTSQUARE(2.5,,,"cm")');
    expect(localFormula(formula)).toBe('=QUILT.CUTSQUARE(2,5;;;"cm")');
    expect(localFormula("='Plan 1.2'!B4*.5+QUILT.PLAN({1.5,2;3,4})")).toBe("='Plan 1.2'!B4*,5+QUILT.PLAN({1.5,2;3,4})");
    expect(usualFormula(localFormula(formula))).toBe(formula);
  });

  test("an argument comes back into the form as the maker types it", () => {
    expect(typedText("2.5")).toBe("2,5");
    expect(typedText("B4*2.5")).toBe("=B4*2,5");
    expect(argumentText(finished, typedText("B4*2.5"))).toBe("B4*2.5");
  });

  test("numbers in answers and sentences; words and versions stay", () => {
    expect(cellText(3.25)).toBe("3,25");
    expect(cellText("3.25 cm")).toBe("3.25 cm");
    expect(localText("3 in + 3.4142 × 1/4 in = 3.8536 in.")).toBe("3 in + 3,4142 × 1/4 in = 3,8536 in.");
    expect(localText("cannot read “2.5.x”; write 2.5")).toBe("cannot read “2.5.x”; write 2,5");
    expect(localText("see 1.2.3")).toBe("see 1.2.3");
  });

  test("pictures: the words, never the drawing", () => {
    const picture = pictureOf(functions.get("CUTHALFSQUARE")!, [10, null, null, null, "cm"])!;
    expect(picture.description).toContain("12,6 cm");
    const { words } = readPicture(picture.svg);
    expect(words.join(" ")).toMatch(/\d,\d/);
    expect(words.join(" ")).not.toMatch(/\d\.\d/);
    useDecimalSeparator(".");
    const usual = pictureOf(functions.get("CUTHALFSQUARE")!, [10, null, null, null, "cm"])!;
    expect(picture.svg.replace(/>[^<]*</g, "><")).toBe(usual.svg.replace(/>[^<]*</g, "><"));
    expect(localPicture(usual.svg)).toBe(usual.svg);
  });
});

test("with a point, a comma stays what it is", () => {
  expect(argumentText(finished, "2,5")).toBe('"2,5"');
  expect(argumentText(finished, "=MAX(B4,2.5)")).toBe("MAX(B4,2.5)");
  expect(localFormula("=QUILT.CUTSQUARE(2.5,,0.1)")).toBe("=QUILT.CUTSQUARE(2.5,,0.1)");
});

test.each([
  ["B4*B5/2", "=B4*B5/2"],
  ['"B4"', '="B4"'],
  ['"half square"', "half square"],
  ["TRUE", "TRUE"],
  ["-B4", "=-B4"],
  ["", ""],
])("the argument %s comes back as “%s”, and the formula stays the same", (written, typed) => {
  expect(typedText(written)).toBe(typed);
  expect(argumentText(functions.get("BLOCKFABRIC")!.parameters[3], typedText(written))).toBe(
    written === "TRUE" ? '"TRUE"' : written,
  );
});
