/** Every check value, through the worksheet function, as a cell would call it. */
import { families, worksheetFunctions, worksheetName } from "../functions";
import { CellError } from "../functions/standIn";
import type { Case, Gives } from "./cases";
import { cases } from "./cases/index";
import { SOURCES } from "./sources";

describe.each(Object.entries(cases))("%s", (_, rows) => {
  test.each(rows.map((row): [string, Case] => [title(row), row]))("%s", (_title, row) => {
    const run = worksheetFunctions.get(row.call);
    expect(run).toBeDefined();
    if (row.fails !== undefined) {
      const error = failure(() => run!(...row.cells));
      expect(error.code).toBe(row.fails);
      expect(error.message).toContain(row.says);
    } else {
      expectCell(run!(...row.cells), row.gives, row.within ?? 1e-9);
    }
  });
});

describe("the rows themselves", () => {
  const all = Object.values(cases).flat();

  test.each(Object.entries(families))(
    "%s: every function has rows, one of them from outside the project",
    (name, family) => {
      for (const id of Object.keys(family).map(worksheetName)) {
        const rows = (cases[name] ?? []).filter((row) => row.call === id);
        const outside = rows.filter((row) => row.source !== "derived");
        expect([id, rows.length > 0, outside.length > 0]).toEqual([id, true, true]);
      }
    },
  );

  test("every row says what it expects and why", () => {
    for (const row of all) {
      const says = row.fails === undefined ? row.gives !== undefined : Boolean(row.says);
      const explained = row.fails !== undefined || row.source === "common practice" || Boolean(row.note);
      expect([title(row), says, explained]).toEqual([title(row), true, true]);
    }
  });

  test("every source is quoted somewhere", () => {
    const quoted = new Set<string>(all.map((row) => row.source));
    expect(Object.keys(SOURCES).filter((key) => !quoted.has(key))).toEqual([]);
  });
});

function title(row: Case): string {
  return `${row.call}(${row.cells.map((cell) => JSON.stringify(cell)).join(", ")})`;
}

function failure(run: () => unknown): CellError {
  try {
    run();
  } catch (thrown) {
    if (thrown instanceof CellError) return thrown;
    throw thrown;
  }
  throw new Error("expected a cell error");
}

function expectCell(got: unknown, gives: Gives | undefined, within: number): void {
  if (gives === undefined) throw new Error("the row gives nothing to compare with");
  if (!Array.isArray(gives)) {
    expectValue(got, gives, within);
    return;
  }
  expect(got).toHaveLength(gives.length);
  gives.forEach((row, r) => {
    expect((got as unknown[][])[r]).toHaveLength(row.length);
    row.forEach((value, c) => {
      if (value !== null) expectValue((got as unknown[][])[r][c], value, within);
    });
  });
}

function expectValue(got: unknown, value: number | string | boolean, within: number): void {
  if (typeof value !== "number") {
    expect(got).toBe(value);
    return;
  }
  expect(typeof got).toBe("number");
  if (Math.abs((got as number) - value) > within) expect(got).toBe(value);
}
