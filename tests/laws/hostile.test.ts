/** Whatever a cell holds, every function answers with clean values or with an error that has a sentence. */
import fc from "fast-check";
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import metadata from "../../manifest/functions.json";
import { hostileArguments, sentenceFlaw, valueFlaw } from "./hostileCells";

describe.each(metadata.functions)("$id", ({ id, parameters }) => {
  const run = worksheetFunctions.get(id);

  test("answers or explains", () => {
    fc.assert(
      fc.property(hostileArguments(parameters), (cells) => {
        const outcome = call(run!, cells);
        if (outcome instanceof CellError) {
          expect(["#VALUE!", "#N/A"]).toContain(outcome.code);
          expect(sentenceFlaw(outcome.message, cells)).toBeUndefined();
        } else {
          for (const value of Array.isArray(outcome) ? (outcome as unknown[][]).flat() : [outcome])
            expect(valueFlaw(value)).toBeUndefined();
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
