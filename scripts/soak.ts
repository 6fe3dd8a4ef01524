/**
 * Throws random and hostile arguments at every function, through the vendor's runtime and from the built script, and at the
 * readers of texts, blocks and workbooks: `npm run soak -- --minutes 5`, after `npm run build`. A find is an uncaught error,
 * a value that no cell can hold, an error without a plain sentence, or a call that takes too long. `--seed 7` repeats a run,
 * `--only PLAN` throws at one target.
 */
import fc from "fast-check";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import metadata from "../manifest/functions.json";
import { readBlock } from "../src/math/blocks/grammar";
import { parseLength } from "../src/math/length";
import { Problem } from "../src/math/problem";
import { evaluateBook } from "../src/practice/recalculate";
import { readXlsx } from "../src/practice/xlsx/read";
import { workbooks } from "../src/workbooks";
import { classCopy } from "../src/workbooks/classCopy";
import { writeBook } from "../src/workbooks/write";
import { cases } from "../tests/cases/index";
import { CODES, loadVendorRuntime, type Outcome } from "../tests/contract/vendorRuntime";
import { sentenceFlaw, valueFlaw } from "../tests/laws/hostileCells";
import { argumentsFor, blockCells, lengthText, type Parameter } from "./soak/draw";
import { damage } from "./soak/files";

/** Longest time that a call may take, in milliseconds: a sheet recalculates hundreds. */
const LONGEST = 250;

/** A file has many cells, and is opened once. */
const LONGEST_FILE = 10_000;

/** Finds of one target that are told in full. */
const TOLD = 3;

interface Find {
  readonly what: string;
  readonly given: unknown;
}

interface Target {
  readonly name: string;
  /** Throws a batch drawn with a seed; says how many calls that was and what it found. */
  readonly soak: (seed: number) => Promise<{ calls: number; finds: Find[] }>;
}

const SCRIPT = join(__dirname, "../dist/addin/functions.js");

/** Notes how long each function takes by a clock that it is handed, in the order of the calls. */
const STOPWATCH = `
  var times = [];
  (clock) => {
    const { associate } = CustomFunctions;
    CustomFunctions.associate = (id, run) => associate.call(CustomFunctions, id, (...cells) => {
      const start = clock();
      try { return run(...cells); } finally { times.push(clock() - start); }
    });
  }`;

/** Milliseconds of processor time, which other programs on the machine do not lengthen. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function functionTargets(): Target[] {
  const runtime = loadVendorRuntime();
  (runtime.run(STOPWATCH) as (clock: () => number) => void)(processorTime);
  runtime.run(readFileSync(SCRIPT, "utf8"));
  const rows = Object.values(cases).flat();
  return metadata.functions.map(({ id, parameters }) => {
    const known = rows.filter(({ call }) => call === id).map(({ cells }) => cells);
    const drawn = argumentsFor(id, parameters as Parameter[], known);
    return {
      name: id,
      soak: async (seed) => {
        // As a spreadsheet sends them: what is left out is null, and nothing but values travels.
        const lists = fc.sample(drawn, { seed, numRuns: 100 }).map((cells) => {
          const padded = [...cells, ...parameters.slice(cells.length).map(() => null)].slice(0, parameters.length);
          return JSON.parse(JSON.stringify(padded)) as unknown[];
        });
        const outcomes = await runtime.call(lists.map((cells) => [id, cells]));
        const times = runtime.run("times.splice(0)") as number[];
        const finds = lists.flatMap((given, index) => {
          const what = outcomeFlaw(outcomes[index]) ?? timeFlaw(times[index], LONGEST);
          return what === undefined ? [] : [{ what, given }];
        });
        return { calls: lists.length, finds };
      },
    };
  });
}

function outcomeFlaw(outcome: Outcome): string | undefined {
  if (outcome.ok) {
    const values = Array.isArray(outcome.value) ? (outcome.value as unknown[][]).flat() : [outcome.value];
    return values.map(valueFlaw).find((flaw) => flaw !== undefined);
  }
  if (outcome.code !== CODES.invalidValue && outcome.code !== CODES.notAvailable)
    return `uncaught error ${outcome.message}`;
  return sentenceFlaw(outcome.message);
}

function timeFlaw(time: number, longest: number): string | undefined {
  return time > longest ? `${time.toFixed(0)} ms` : undefined;
}

/** Something that answers or refuses with a Problem. */
function reader<T>(
  name: string,
  drawn: fc.Arbitrary<T>,
  { calls = 1000, longest = LONGEST, shown = (given) => given }: ReaderOptions<T>,
  read: (given: T) => unknown,
): Target {
  const judge = async (given: T): Promise<Find[]> => {
    const start = processorTime();
    const what = (await readFlaw(() => read(given))) ?? timeFlaw(processorTime() - start, longest);
    return what === undefined ? [] : [{ what, given: shown(given) }];
  };
  return {
    name,
    soak: async (seed) => {
      const finds: Find[] = [];
      for (const given of fc.sample(drawn, { seed, numRuns: calls })) finds.push(...(await judge(given)));
      return { calls, finds };
    },
  };
}

interface ReaderOptions<T> {
  readonly calls?: number;
  readonly longest?: number;
  readonly shown?: (given: T) => unknown;
}

async function readFlaw(read: () => unknown): Promise<string | undefined> {
  try {
    const value = await read();
    return typeof value === "number" ? valueFlaw(value) : undefined;
  } catch (thrown) {
    if (thrown instanceof Problem) return sentenceFlaw(thrown.sentence("in"));
    return `uncaught ${thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown)}`;
  }
}

async function readerTargets(): Promise<Target[]> {
  const files: Uint8Array[] = [];
  for (const workbook of workbooks) files.push(await writeBook(workbook.build(), evaluateBook));
  const damaged = fc.tuple(fc.constantFrom(...files), damage).map(([file, spoil]) => spoil(file));
  const shown = (file: Uint8Array) => `a file of ${file.length} bytes`;
  const options = { calls: 5, longest: LONGEST_FILE, shown };
  return [
    reader("length texts", fc.tuple(lengthText, fc.constantFrom("in", "cm")), {}, ([text, unit]) =>
      parseLength(text, unit),
    ),
    reader("block cells", blockCells, {}, (cells) => {
      readBlock(cells);
    }),
    reader("files to the practice sheet", damaged, options, (file) => readXlsx(file)),
    reader("files to a class copy", damaged, options, (file) =>
      classCopy(file, (asked) => Promise.resolve(asked.map(() => [[3.5]]))),
    ),
  ];
}

async function main(): Promise<number> {
  const { values } = parseArgs({
    options: { minutes: { type: "string" }, seed: { type: "string" }, only: { type: "string" } },
  });
  if (!existsSync(SCRIPT)) throw new Error("There is no dist/addin/functions.js: run `npm run build` first.");
  const first = Number(values.seed ?? Date.now() % 1_000_000);
  const all = [...functionTargets(), ...(await readerTargets())];
  const targets = all.filter(({ name }) => values.only === undefined || name === values.only);
  const end = performance.now() + 60_000 * Number(values.minutes ?? 1);
  let calls = 0;
  const found = new Map<string, number>();
  let seed = first;
  for (; performance.now() < end; seed++) {
    for (const { name, soak } of targets) {
      const batch = await soak(seed);
      calls += batch.calls;
      const before = found.get(name) ?? 0;
      batch.finds.slice(0, Math.max(0, TOLD - before)).forEach(({ what, given }) => {
        console.log(`${name}: ${what}\n  with ${JSON.stringify(given)}\n  again with --only "${name}" --seed ${seed}`);
      });
      if (batch.finds.length > 0) found.set(name, before + batch.finds.length);
      if (performance.now() >= end) break;
    }
  }
  console.log(`${calls.toLocaleString("en")} calls of ${targets.length} targets, seeds ${first} to ${seed - 1}`);
  for (const [name, count] of found) console.log(`${name}: ${count} finds`);
  return found.size > 0 ? 1 : 0;
}

void main().then((code) => {
  process.exitCode = code;
});
