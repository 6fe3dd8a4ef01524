/** Every function, called as the spreadsheet calls it: through the vendor's own runtime, from the built script. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import type { Case } from "../cases";
import { cases } from "../cases/index";
import { builtAddin } from "./built";
import { type Call, CODES, loadVendorRuntime, type Outcome } from "./vendorRuntime";

const rows = Object.values(cases).flat();
const ids = [...worksheetFunctions.keys()];
const script = readFileSync(join(builtAddin(), "functions.js"), "utf8");
const runtime = loadVendorRuntime();
runtime.run(script);

test("every check value comes back as the worksheet function gives it", async () => {
  const outcomes = await runtime.call(rows.map((row) => padded(row.call, row.cells)));
  const failures = rows.flatMap((row, index) => {
    const wanted = direct(row);
    const same = JSON.stringify(outcomes[index]) === JSON.stringify(wanted);
    return same ? [] : [{ row, got: outcomes[index], wanted }];
  });
  expect(failures).toEqual([]);
});

test("every function is among the check values", () => {
  const called = new Set(rows.map((row) => row.call));
  expect(ids.filter((id) => !called.has(id))).toEqual([]);
});

/** What may stand in a cell where something else is meant. */
const STRANGERS: unknown[] = [
  null,
  "",
  "  ",
  "three",
  "#VALUE!",
  "#N/A",
  { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" },
  { type: "Double", basicType: "Double", basicValue: 2.5 },
  "5/0",
  "2 1/2 x 4 1/2",
  "=1+1",
  "🧵",
  -1,
  0,
  0.5,
  1e-9,
  46089,
  1e300,
  true,
  [[null]],
  [[""]],
  [["a", 1, null]],
  [["#REF!", 1]],
  [[1], [{ type: "Error", basicType: "Error", basicValue: "#N/A", errorType: "NotAvailable" }]],
  [],
  [[]],
  [
    [1, 2],
    [3, 4],
  ],
];

describe("a cell that holds something else than meant gets an answer or a sentence", () => {
  test.each(ids)("%s", async (id) => {
    const row = rows.find(({ call, fails }) => call === id && fails === undefined);
    const [, good] = padded(id, row?.cells ?? []);
    const calls = good.flatMap((_, position) =>
      STRANGERS.map((stranger): Call => [id, good.map((cell, index) => (index === position ? stranger : cell))]),
    );
    const outcomes = await runtime.call(calls);
    const failures = outcomes.flatMap((outcome, index) =>
      isClean(outcome) ? [] : [{ call: calls[index], outcome, thrown: thrownBy(calls[index]) }],
    );
    expect(failures).toEqual([]);
  });

  test.each(ids)("%s with every cell left out", async (id) => {
    const [outcome] = await runtime.call([padded(id, [])]);
    expect([outcome, isClean(outcome)]).toEqual([outcome, true]);
  });
});

test("#VALUE! is for bad input, #N/A for a question without an answer, and both carry their sentence", async () => {
  const failing = rows.filter((row) => row.fails !== undefined);
  const outcomes = await runtime.call(failing.map((row) => padded(row.call, row.cells)));
  outcomes.forEach((outcome, index) => {
    const { fails, says } = failing[index];
    const code = fails === "#N/A" ? CODES.notAvailable : CODES.invalidValue;
    expect(outcome).toEqual({ ok: false, code, message: expect.stringContaining(says!) as string });
  });
  expect(failing.length).toBeGreaterThan(0);
});

describe("a script and metadata that are not of the same version", () => {
  test("a name that is not registered fails, and the calls beside it are answered", async () => {
    const good = padded("CUTSQUARE", [3]);
    const outcomes = await runtime.call([good, ["NOSUCHFUNCTION", [1]], good]);
    const answer = { ok: true, value: 3.5 };
    expect(outcomes).toEqual([answer, { ok: false, code: CODES.thrown, message: "" }, answer]);
  });

  test("metadata that know fewer arguments of each function get the answer without them", async () => {
    const shorter = rows.flatMap((row): Call[] => {
      const [id, cells] = padded(row.call, row.cells);
      return row.cells.length < cells.length ? [[id, row.cells]] : [];
    });
    const outcomes = await runtime.call(shorter);
    expect(outcomes).toEqual(await runtime.call(shorter.map(([id, cells]) => padded(id, cells))));
    expect(new Set(shorter.map(([id]) => id)).size).toBeGreaterThan(60);
  });

  test("metadata that know one argument more get the answer without it", async () => {
    const longer = rows.map((row): Call => [row.call, [...padded(row.call, row.cells)[1], null]]);
    expect(await runtime.call(longer)).toEqual(await runtime.call(rows.map((row) => padded(row.call, row.cells))));
  });
});

test("a script that is loaded twice answers as before, and registers each function once", async () => {
  const twice = loadVendorRuntime();
  twice.run(script);
  const calls = rows.map((row) => padded(row.call, row.cells));
  const before = await twice.call(calls);
  twice.run(script);
  expect(twice.associated().sort()).toEqual([...ids].sort());
  expect(await twice.call(calls)).toEqual(before);
});

test("a sheet full of calls is answered in one batch, each by its own answer", async () => {
  const sizes = Array.from({ length: 10_000 }, (_, index) => (index + 1) / 64);
  const started = performance.now();
  const outcomes = await runtime.call(sizes.map((size) => padded("CUTSQUARE", [size])));
  const milliseconds = performance.now() - started;
  process.stdout.write(`${sizes.length} calls in one batch took ${Math.round(milliseconds)} ms\n`);
  expect(outcomes).toEqual(sizes.map((size) => ({ ok: true, value: size + 0.5 })));
});

/** The call with null for every argument left out, as a spreadsheet sends it. */
function padded(id: string, cells: readonly unknown[]): Call {
  const { length } = worksheetFunctions.get(id)!;
  return [id, Array.from({ length }, (_, index) => cells[index] ?? null)];
}

/** What the worksheet function gives by itself, in the form of an outcome. */
function direct({ call, cells }: Case): Outcome {
  try {
    return { ok: true, value: worksheetFunctions.get(call)!(...cells) as unknown };
  } catch (thrown) {
    if (!(thrown instanceof CellError)) throw thrown;
    const code = thrown.code === "#N/A" ? CODES.notAvailable : CODES.invalidValue;
    return { ok: false, code, message: thrown.message };
  }
}

/** What the function throws by itself, since the runtime swallows it. */
function thrownBy([id, cells]: Call): string {
  try {
    worksheetFunctions.get(id)!(...cells);
    return "";
  } catch (thrown) {
    return String((thrown as Error).stack);
  }
}

/** A value or a full table that a cell can show, or one of the two errors that can tell why. */
function isClean(outcome: Outcome): boolean {
  if (!outcome.ok) {
    const { code, message } = outcome;
    const tells = message.length > 10 && !/undefined|NaN|Infinity|null|\[object|Error:/.test(message);
    return tells && (code === CODES.notAvailable || code === CODES.invalidValue);
  }
  if (!Array.isArray(outcome.value)) return isCellValue(outcome.value);
  const table = outcome.value as unknown[][];
  return table.length > 0 && table.every((row) => row.length === table[0].length && row.every(isCellValue));
}

function isCellValue(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  return typeof value === "boolean" || (typeof value === "string" && !/undefined|NaN|Infinity|\[object/.test(value));
}
