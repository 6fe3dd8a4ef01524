/** The plain twins against the worksheet functions, worked out by a spreadsheet engine that is none of ours. */
import fc from "fast-check";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import { twins } from "../../src/workbooks/plain";
import { translate } from "../../src/workbooks/translate";
import { callText, type Given, given } from "./calls";
import { type Input, isError, recalculate, type Shown } from "./engines";

interface Metadata {
  functions: { id: string; parameters: { name: string; optional?: boolean }[] }[];
}

const metadata = JSON.parse(readFileSync(join(__dirname, "../../manifest/functions.json"), "utf8")) as Metadata;
const parametersOf = (id: string) => metadata.functions.find((entry) => entry.id === id)!.parameters;

const CALLS = 1200;

interface Try {
  id: string;
  args: Given[];
  formula: string;
  cells: string[];
}

/** What the worksheet function answers, as one row of cells after another; undefined where it refuses. */
function expected(id: string, args: readonly Given[]): unknown[] | undefined {
  try {
    const answer: unknown = worksheetFunctions.get(id)!(...args.map(({ value }) => value));
    return Array.isArray(answer) ? (answer as unknown[][]).flat() : [answer];
  } catch (thrown) {
    if (thrown instanceof CellError) return undefined;
    throw thrown;
  }
}

/** A text in a cell is read by the function and refused by its twin. */
const holdsTextLength = (args: readonly Given[]) =>
  args.some(({ how, value }) => how === "cell" && typeof value === "string" && /\d/.test(value));

/** In some programs TRUE in a cell is the number 1. */
const agrees = (shown: Shown, wanted: unknown) =>
  typeof wanted === "number"
    ? typeof shown === "number" && Math.abs(shown - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted))
    : shown === wanted;

describe("every twin", () => {
  const ids = Object.keys(twins);
  let shownBy: Map<string, { tries: Try[]; shown: Shown[][] }>;

  beforeAll(() => {
    const tries = ids.flatMap((id) => {
      const args = fc.tuple(...parametersOf(id).map(({ name, optional = false }) => given(name, optional)));
      return fc.sample(args, { numRuns: CALLS, seed: 20240229 }).map((sample): Omit<Try, "formula" | "cells"> => ({
        id,
        args: sample,
      }));
    });
    const rows: Input[][] = [];
    const all = tries.map((one, index): Try => {
      const formula = callText(one.id, one.args, index + 1);
      const turned = translate(formula);
      expect(turned.left).toEqual([]);
      const cells = turned.table?.flat() ?? [turned.formula];
      const inputs = Array.from({ length: 16 }, (_, column) => {
        const arg = one.args[column];
        return arg?.how === "cell" ? arg.value : null;
      });
      rows.push([...inputs, ...cells]);
      return { ...one, formula, cells };
    });
    const shown = recalculate(rows).map((row) => row.slice(16));
    shownBy = new Map(
      ids.map((id) => {
        const places = all.flatMap((one, index) => (one.id === id ? [index] : []));
        return [id, { tries: places.map((at) => all[at]!), shown: places.map((at) => shown[at]!) }];
      }),
    );
  });

  test.each(ids)("%s names the arguments of the function", (id) => {
    expect(twins[id]!.parameters).toEqual(parametersOf(id).map(({ name }) => name));
  });

  test.each(ids)("%s gives what the function gives", (id) => {
    const { tries, shown } = shownBy.get(id)!;
    let answered = 0;
    tries.forEach((one, index) => {
      const wanted = expected(id, one.args);
      const got = shown[index]!;
      const refused = got.every(isError);
      if (wanted === undefined || (refused && holdsTextLength(one.args))) {
        if (!refused) throw new Error(difference(one, "a refusal", got));
      } else {
        answered += 1;
        if (wanted.length !== got.length || !wanted.every((value, at) => agrees(got[at]!, value))) {
          throw new Error(difference(one, wanted, got));
        }
      }
    });
    expect(answered).toBeGreaterThan(CALLS / 3);
  });
});

function difference(one: Try, wanted: unknown, got: unknown): string {
  return `${one.formula} with ${JSON.stringify(one.args)}: wanted ${JSON.stringify(wanted)}, got ${JSON.stringify(got)} from ${one.cells[0]!}`;
}
