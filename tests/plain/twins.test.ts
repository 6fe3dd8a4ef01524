/** The plain twins against the worksheet functions, worked out by two spreadsheet programs that are none of ours. */
import { worksheetFunctions } from "../../functions";
import { twinOf, twins } from "../../src/workbooks/plain";
import { recalculate, type Shown } from "./engines";
import { hasLibreOffice, recalculateInLibreOffice } from "./libreOffice";
import { compare, holdsTrue, parametersOf, sample, type Sample } from "./samples";

/** Random calls of each function, in the engine and in LibreOffice. */
const CALLS = 500;
const FEWER_CALLS = 25;

/** On a busy machine, milliseconds. */
const A_WHILE = 300_000;

const ids = Object.keys(twins);
const places = ids.map((id, index): [string, number] => [id, index]);

test.each([...worksheetFunctions.keys()])(
  "%s has a twin in src/workbooks/plain, or WHY_NOT in its index says why there is none",
  (id) => {
    const twin = twinOf(id);
    expect("whyNot" in twin ? twin.whyNot : "").not.toContain("no function");
  },
);

test.each(ids)("%s names the arguments of the function", (id) => {
  expect(twins[id].parameters).toEqual(parametersOf(id).map(({ name }) => name));
});

describe("in a second engine", () => {
  let samples: Sample[] = [];
  let shown: Shown[][][] = [];

  beforeAll(() => {
    samples = ids.map((id) => sample(id, CALLS, 20240229));
    shown = recalculate(samples.map(({ rows }) => rows));
  }, A_WHILE);

  test.each(places)("%s gives what the function gives", (_id, index) => {
    const { difference, answered } = compare(samples[index], shown[index]);
    expect(difference).toBeUndefined();
    expect(answered).toBeGreaterThan(CALLS / 8);
  });
});

const here = hasLibreOffice();
if (!here) console.warn("LibreOffice is not installed: its tests of the plain formulas are skipped");

(here ? describe : describe.skip)("in LibreOffice, every stored value poisoned", () => {
  let samples: Sample[] = [];
  let shown: Shown[][] = [];

  beforeAll(async () => {
    samples = ids.map((id, index) => sample(id, FEWER_CALLS, 4711, 1 + index * FEWER_CALLS));
    shown = await recalculateInLibreOffice(samples.flatMap(({ rows }) => rows));
  }, A_WHILE);

  test.each(places)("%s gives what the function gives", (_id, index) => {
    const first = index * FEWER_CALLS;
    const { difference } = compare(samples[index], shown.slice(first, first + FEWER_CALLS), holdsTrue);
    expect(difference).toBeUndefined();
  });
});
