/** Whatever a cell holds, every function answers with clean values or with an error that has a sentence. */
import fc from "fast-check";
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import metadata from "../../manifest/functions.json";

const numbers = fc.oneof(
  fc.constantFrom(0, -0, 1, -1, 0.1, 1 / 3, 2.5, 42, 1e-300, 1e300, 46089, 2 ** 53, NaN, Infinity, -Infinity),
  fc.double(),
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.integer({ min: -5, max: 2_000_000 }),
);

const words = fc.oneof(
  fc.constantFrom(
    "cm",
    "in",
    "2 1/2",
    "3/8",
    "5/0",
    "2,5",
    "1e5",
    "any",
    "upright",
    "on point",
    "best",
    "#N/A",
    "=1",
    "🧵",
  ),
  fc.constantFrom(
    "sand / slate",
    "goose up: a, b",
    "<",
    "^",
    "four: a",
    "a + b",
    "queen",
    "half square",
    "45%",
    "1 yd",
  ),
  fc.string({ maxLength: 20 }),
);

const cell = fc.oneof(
  { weight: 4, arbitrary: numbers },
  { weight: 3, arbitrary: words },
  { weight: 2, arbitrary: fc.constantFrom(null, undefined, "", true, false) },
  { weight: 1, arbitrary: fc.constantFrom({}, new Error("#REF!"), [], () => 1) },
);

/** Ranges of any shape, ragged and empty ones included. */
const range = fc.oneof(
  fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 6 }),
  fc.array(fc.tuple(words, numbers, numbers, fc.integer({ min: 0, max: 60 })), { minLength: 1, maxLength: 5 }),
);

describe.each(metadata.functions)("$id", ({ id, parameters }) => {
  const run = worksheetFunctions.get(id);
  const likely = (parameter: (typeof parameters)[number]) => ("dimensionality" in parameter ? range : cell);
  const expected = fc.tuple(...parameters.map(likely));
  const anything = fc.array(fc.oneof(cell, range), { maxLength: parameters.length + 2 });

  test("answers or explains", () => {
    fc.assert(
      fc.property(fc.oneof(expected, anything), (cells) => {
        const outcome = call(run!, cells);
        if (outcome instanceof CellError) {
          expect(["#VALUE!", "#N/A"]).toContain(outcome.code);
          expect(outcome.message.length).toBeGreaterThan(8);
          expect(outcome.message).not.toMatch(/NaN|undefined|\[object|Infinity/);
        } else {
          for (const value of Array.isArray(outcome) ? (outcome as unknown[][]).flat() : [outcome]) expectClean(value);
        }
      }),
      { numRuns: 200 },
    );
  });
});

function call(run: (...cells: unknown[]) => unknown, cells: readonly unknown[]): unknown {
  try {
    return run(...cells);
  } catch (thrown) {
    if (thrown instanceof CellError) return thrown;
    throw thrown;
  }
}

function expectClean(value: unknown): void {
  expect(["number", "string", "boolean"]).toContain(typeof value);
  if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
}
