/** Forms: what is typed becomes a formula, and the formula gives what the function gives. */
import { catalogue } from "../../scripts/catalogue";
import { isAnswered } from "../../src/pane/answer";
import { readCalls } from "../../src/pane/calls";
import { byId } from "../../src/pane/catalogue";
import { formulaText, isReference, missing, typedText } from "../../src/pane/fields";
import { systemOf } from "../../src/pane/given";
import { isDrawn, pictureOf } from "../../src/pane/pictures";

const families = catalogue();
const functions = byId(families);
const entry = (id: string) => functions.get(id)!;
const noCells = () => Promise.reject(new Error("an example reads no cells"));

const EXAMPLES = families.flatMap((family) =>
  family.functions.flatMap(({ id, examples }) =>
    examples.map((example): [string, string, unknown] => [id, example.formula, example.shows]),
  ),
);

test.each(EXAMPLES)("%s: %s is read, answers, and comes back from the form", async (id, formula, shows) => {
  const calls = await readCalls(formula, noCells);
  if (typeof calls === "string") throw new Error(calls);
  expect(calls).toHaveLength(1);
  const [call] = calls;
  expect(call.whole).toBe(true);
  expect(isAnswered(call.outcome) && call.outcome.value).toEqual(shows);
  const { parameters } = entry(id);
  const typed = Object.fromEntries(
    parameters.map(({ name }, index) => [name, typedText(call.argumentTexts[index] ?? "")]),
  );
  // Of a bed, its name or both measures.
  expect(missing(entry(id), typed).map(({ name }) => name)).toEqual(typed.mattressWidth ? ["bed"] : []);
  const again = await readCalls(formulaText(entry(id), typed, typed.units === "cm" ? "cm" : "in"), noCells);
  expect(typeof again !== "string" && isAnswered(again[0].outcome) && again[0].outcome.value).toEqual(shows);
});

test.each([
  [["cm"], "cm"],
  [[" Centimeters "], "cm"],
  [["IN"], "in"],
  [[null], "in"],
  [[], "in"],
  [["furlongs"], "in"],
] as const)("a call with the units %j answers in %s", (units, system) => {
  const { parameters } = entry("CUTSQUARE");
  expect(systemOf(entry("CUTSQUARE"), [...parameters.slice(0, -1).map(() => null), ...units])).toBe(system);
});

test("units that stand in another cell stay there", () => {
  const typed = { finished: "3", units: "Plan!$B$2" };
  expect(formulaText(entry("CUTSQUARE"), typed, "cm")).toBe("=QUILT.CUTSQUARE(3,,,Plan!$B$2)");
  expect(formulaText(entry("CUTSQUARE"), { ...typed, units: '=IF(A1,"in","cm")' }, "in")).toBe(
    '=QUILT.CUTSQUARE(3,,,IF(A1,"in","cm"))',
  );
  expect(formulaText(entry("CUTSQUARE"), { ...typed, units: "cm" }, "in")).toBe("=QUILT.CUTSQUARE(3)");
});

test("every function that has a picture draws it for an example", async () => {
  const drawn = new Set<string>();
  for (const [id, formula] of EXAMPLES) {
    const calls = await readCalls(formula, noCells);
    const call = typeof calls === "string" ? undefined : calls[0];
    if (call?.cells && pictureOf(entry(id), call.cells)) drawn.add(id);
  }
  const expected = [...functions.keys()].filter(isDrawn);
  expect(expected.length).toBeGreaterThan(30);
  expect(expected.filter((id) => !drawn.has(id))).toEqual([]);
});

test("a picture is drawn with the numbers of its call", () => {
  const picture = pictureOf(entry("CUTHALFSQUARE"), [10, null, null, null, "cm"])!;
  expect(picture.description).toContain("12.6 cm");
  expect(pictureOf(entry("TOPSIZE"), [1000, 1000, 1])).toBeUndefined();
});

test.each([
  ["BORDERSTRIPS", [60, 80, 6, null, null, "diagonal"], "Strips of 6 1/2 in joined on the diagonal"],
  ["BORDERSTRIPS", [60, 80, 6], "Border of 6 in, corners butted"],
  ["BORDERFABRIC", [60, 80, 6, null, null, "mitered"], "Border of 6 in, corners mitered"],
  ["BORDERFABRIC", [60, 80, 6, null, null, " Mitred"], "Border of 6 in, corners mitered"],
  ["BORDERLENGTHS", [60, 80, 6, "mitred"], "Border of 6 in, corners mitered"],
  ["BORDERSTRIPS", [60, 80, 6, null, "mitred"], "Border of 6 in, corners mitered"],
  [
    "TUBELENGTH",
    [
      [
        [3, null],
        [2, 4],
      ],
      2.5,
    ],
    "Half-square units from a tube of 2 1/2 in strips",
  ],
  ["BINDINGSTRIPS", [60, 72, 2.25], "Strips of 2 1/4 in joined on the diagonal"],
  ["BINDINGFABRIC", [150, 180, null, null, null, null, "cm"], "Strips of 6.5 cm joined on the diagonal"],
  ["BORDERMEASURED", [60.25, 59.75, 60.5], "Borders cut 60 1/4 in from three measurements"],
  ["BIASSQUARE", [648, 2, null, 0], "Continuous bias from a square of 36 in"],
  ["BIASLENGTH", [36, 2], "Continuous bias from a square of 36 in"],
])("%s of %j: %s", (id, cells, title) => {
  expect(pictureOf(entry(id), cells)?.title).toBe(title);
});

test("strips joined straight across need no picture of a join", () => {
  expect(pictureOf(entry("BINDINGSTRIPS"), [60, 72, null, null, null, null, "straight"])).toBeUndefined();
});

test("a quilt in centimeters is measured in centimeters", () => {
  const cells = [[["plain", "plain"]], [["plain", "sand"]], 30, null, null, null, null, "cm"];
  expect(pictureOf(entry("QUILTPIECES"), cells)?.description).toContain("60 cm × 30 cm");
});

test.each([
  ["B4", "B4"],
  ["$b$4", "$B$4"],
  ["'Light fabric'!b4:c9", "'Light fabric'!B4:C9"],
  ["2 1/2", '"2 1/2"'],
  ["2.5", "2.5"],
  ["7.5 cm", '"7.5 cm"'],
  ["=B4*2", "B4*2"],
  ["", ""],
])("“%s” for a length is written %s", (typed, written) => {
  expect(formulaText(entry("CUTSQUARE"), { finished: typed }, "in")).toBe(`=QUILT.CUTSQUARE(${written})`);
});

test("units and arguments between are kept in their places", () => {
  expect(formulaText(entry("CUTSQUARE"), { finished: "10" }, "cm")).toBe('=QUILT.CUTSQUARE(10,,,"cm")');
  expect(formulaText(entry("TOPPIECES"), { across: "4", down: "5", block: "12", alternate: "TRUE" }, "in")).toBe(
    "=QUILT.TOPPIECES(4,5,12,,,,,,TRUE)",
  );
});

test("a quotation mark in a text is doubled", () => {
  expect(formulaText(entry("BLOCKFABRIC"), { fabric: 'the "good" blue' }, "in")).toContain('"the ""good"" blue"');
});

test.each(["2 1/2", "B", "1A", "half square", "A1:"])("“%s” names no cells", (text) => {
  expect(isReference(text)).toBe(false);
});

test("every argument has a control that fits it", () => {
  const kinds = (id: string) => entry(id).parameters.map(({ takes }) => takes.kind);
  expect(kinds("BACKINGFABRIC").slice(0, 6)).toEqual(["length", "length", "length", "length", "length", "choice"]);
  expect(kinds("PLAN")).toEqual(["range", "length", "length", "flag", "units"]);
  const texts = families.flatMap((family) =>
    family.functions.flatMap(({ id, parameters }) =>
      parameters.filter(({ takes }) => takes.kind === "text").map(({ name }) => `${id} ${name}`),
    ),
  );
  expect(texts.sort()).toEqual(["BLOCKFABRIC fabric", "BLOCKPIECES fabric", "QUILTPIECES fabric"]);
});

test("usual values are told in the maker's units", () => {
  const usual = (id: string, name: string) => entry(id).parameters.find((one) => one.name === name)!.usual;
  expect(usual("BACKINGFABRIC", "margin")).toEqual({ in: "4 in", cm: "10 cm" });
  expect(usual("STRIPSNEEDED", "width")).toEqual({ in: "42 in", cm: "107 cm" });
  expect(usual("BORDERFIT", "depth")).toEqual({ in: undefined, cm: undefined });
});
