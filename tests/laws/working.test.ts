/** The working of every check value: plain sentences whose arithmetic holds, and which come to the answer in the cell. */
import { worksheetFunctions } from "../../functions";
import { decimalText, fractionText } from "../../src/math/show";
import { Problem } from "../../src/math/problem";
import { assume, step, tellIn, withWorking } from "../../src/math/working";
import type { Case } from "../cases";
import { cases } from "../cases/index";
import { claimsOf, holds } from "./arithmetic";
import { told } from "./told";

const answered = Object.values(cases)
  .flat()
  .filter(({ fails }) => fails === undefined);
const ids = [...new Set(answered.map(({ call }) => call))];

/** They change the unit or look something up, and have nothing to work out. */
const TELL_NOTHING = new Set(ids.filter((id) => id.startsWith("LENGTH")));

function tell({ call, cells }: Case) {
  return withWorking((): unknown => worksheetFunctions.get(call)!(...cells));
}

function linesOf(row: Case): string[] {
  const { steps, assumptions } = tell(row);
  return [...steps, ...assumptions];
}

describe.each(ids)("%s", (id) => {
  const rows = answered.filter(({ call }) => call === id);

  test("tells plain sentences", () => {
    for (const row of rows) {
      for (const line of linesOf(row)) {
        expect(line).toMatch(/^\S(.*\S)?$/);
        expect(line).not.toMatch(/undefined|NaN|Infinity|\[object|Stryker| {2}|\(\)/);
      }
    }
  });

  test("tells arithmetic that holds", () => {
    for (const row of rows) {
      const wrong = linesOf(row).filter((line) => !claimsOf(line).every(holds));
      expect(wrong).toEqual([]);
    }
  });

  test("comes to the answer, told by step() in src/math", () => {
    for (const row of rows) {
      const { answer, steps } = tell(row);
      if (typeof answer !== "number" || answer <= 0 || TELL_NOTHING.has(id)) continue;
      const shown = [decimalText(answer), ...[3, 8, 16].map((parts) => fractionText(answer, parts))];
      const words = steps.join("\n").split(/[^\d/. ]|(?<!\d) | (?!\d)|\.(?!\d)/);
      expect(shown.some((text) => words.includes(text)) ? "told" : { row: row.cells, shown, steps }).toBe("told");
    }
  });
});

test.each(told)("$call tells it word for word: $cells", ({ call, cells, steps, assumptions = [] }) => {
  const working = withWorking((): unknown => worksheetFunctions.get(call)!(...cells));
  expect(working.steps).toEqual(steps);
  const special = working.assumptions.filter((line) => !/, as usual where none (is|are) given$/.test(line));
  expect(special).toEqual(assumptions);
});

test("a computation inside another has a working of its own, and the outer one goes on after it", () => {
  let inner: string[] = [];
  const outer = withWorking(() => {
    step(() => "before");
    inner = withWorking(() => {
      tellIn("cm");
      step((show) => show.length(1));
      assume(() => "taken for granted");
    }).steps;
    step((show) => `after ${show.length(1)}`);
  });
  expect(inner).toEqual(["2.54 cm"]);
  expect(outer).toEqual({ answer: undefined, steps: ["before", "after 1 in"], assumptions: [] });
});

test("where nobody listens, also after a refusal, nothing is told and nothing fails", () => {
  const refused = () => {
    throw new Problem("bad input", "no");
  };
  expect(() => withWorking(refused)).toThrow("no");
  const fail = () => {
    throw new Error("worked out although nobody listens");
  };
  step(fail);
  assume(fail);
  tellIn("cm");
  const { steps } = withWorking(() => {
    step((show) => show.length(1));
  });
  expect(steps).toEqual(["1 in"]);
});

test("most lines with figures claim something that can be worked out", () => {
  const lines = answered.flatMap(linesOf).filter((line) => line.includes("=") || line.includes(", rounded"));
  const claimed = lines.filter((line) => claimsOf(line).length > 0);
  expect(claimed.length).toBeGreaterThan(500);
  expect(claimed.length / lines.length).toBeGreaterThan(0.99);
});

test.each([
  ["4 in + 2 × 1/4 in = 4 1/2 in", true],
  ["4 in + 2 × 1/4 in = 4 3/4 in", false],
  ["√(2 in × 8 in) = 4 in", true],
  ["(3 in − 1 in)² ÷ 2 in = 2 in", true],
  ["1 in × sin 30° = 1/2 in", true],
  ["7 ÷ 2 a strip, rounded up: 4", true],
  ["7 ÷ 2 a strip, rounded up: 5", false],
  ["7 ÷ 2 a strip, rounded down: 4", false],
])("reads %s", (line, right) => {
  expect(claimsOf(line).map(holds)).toEqual([right]);
});
