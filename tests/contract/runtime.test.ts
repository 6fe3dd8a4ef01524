/** Every function, called as the spreadsheet calls it: through the vendor's own runtime, from the built script. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { builtAddin } from "./built";
import { callsWithStrangers, direct, ids, isClean, padded, rows, thrownBy } from "./calls";
import { type Call, CODES, loadVendorRuntime } from "./vendorRuntime";

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

describe("a cell that holds something else than meant gets an answer or a sentence", () => {
  test.each(ids)("%s", async (id) => {
    const calls = callsWithStrangers(id);
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
