/** A whole column or row, given for any range, gets its answer or a sentence. */
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import metadata from "../../manifest/functions.json";
import { cases } from "../cases/index";
import { sentenceFlaw, valueFlaw } from "./hostileCells";

/** More rows than a call can have arguments, and as many columns as a sheet has. */
const ROWS = 200_000;
const COLUMNS = 16_384;

const FILLED: [name: string, cell: (index: number) => unknown][] = [
  ["3 everywhere", () => 3],
  ["another name everywhere", (index) => `fabric ${index}`],
];

const RANGES = FILLED.flatMap(([name, cell]): [string, unknown[][]][] => [
  [`a column, ${name}`, Array.from({ length: ROWS }, (_, index) => [cell(index)])],
  [`a row, ${name}`, [Array.from({ length: COLUMNS }, (_, index) => cell(index))]],
]);

const ASKED = metadata.functions.flatMap(({ id, parameters }) =>
  parameters.flatMap((parameter, at) => ("dimensionality" in parameter ? [{ id, name: parameter.name, at }] : [])),
);

describe.each(ASKED)("$id, $name", ({ id, at }) => {
  const answered = Object.values(cases)
    .flat()
    .filter((row) => row.call === id && row.gives !== undefined);
  const known = (answered.find((row) => Array.isArray(row.cells[at])) ?? answered[0]).cells;
  const asking = (range: unknown) => Object.assign([...known], { [at]: range });

  test.each(RANGES)("%s", (_name, range) => {
    expect(flaw(call(id, asking(range)))).toBeUndefined();
  });

  test("cells, and empty ones to the end of the sheet: the same answer, or a sentence", () => {
    const own = Array.isArray(known[at]) ? (known[at] as unknown[][]) : [[""]];
    const empty = own[0].map(() => "");
    const outcome = call(id, asking([...own, ...Array<unknown[]>(ROWS).fill(empty)]));
    expect(flaw(outcome)).toBeUndefined();
    if (!(outcome instanceof CellError)) expect(outcome).toEqual(call(id, known));
  });
});

/** What is wrong with the outcome of a call, or undefined. */
function flaw(outcome: unknown): string | undefined {
  if (outcome instanceof CellError) return sentenceFlaw(outcome.message, "");
  return [outcome].flat(2).map(valueFlaw).find(Boolean);
}

function call(id: string, cells: readonly unknown[]): unknown {
  try {
    return worksheetFunctions.get(id)!(...cells);
  } catch (thrown) {
    if (thrown instanceof CellError) return thrown;
    throw thrown;
  }
}
