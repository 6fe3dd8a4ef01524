/** The soak's targets in the built script: every worksheet function, through the vendor's runtime. */
import fc from "fast-check";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { runInThisContext } from "node:vm";
import metadata from "../../manifest/functions.json";
import { cases } from "../../tests/cases/index";
import {
  type Call,
  CODES,
  loadVendorRuntime,
  type Outcome,
  type VendorRuntime,
} from "../../tests/contract/vendorRuntime";
import { sentenceFlaw, valueFlaw } from "../../tests/laws/hostileCells";
import { argumentsFor, type Parameter } from "./draw";
import { LONGEST_CALL, processorTime, type Target, timeFlaw } from "./target";

const BATCH = 100;

const SCRIPT = join(__dirname, "../../dist/addin/functions.js");

/** Notes how long each call takes by a clock that it is handed, in the order of the calls. */
const STOPWATCH = `
  var times = [];
  (clock) => {
    const { associate } = CustomFunctions;
    CustomFunctions.associate = (id, run) => associate.call(CustomFunctions, id, (...cells) => {
      const start = clock();
      try { return run(...cells); } finally { times.push(clock() - start); }
    });
  }`;

class TimedRuntime {
  private readonly runtime: VendorRuntime = loadVendorRuntime();

  constructor(script: string, clock: () => number) {
    (this.runtime.run(STOPWATCH) as (clock: () => number) => void)(clock);
    this.runtime.run(script);
  }

  async call(calls: readonly Call[]): Promise<{ outcomes: Outcome[]; times: number[] }> {
    const outcomes = await this.runtime.call(calls);
    return { outcomes, times: this.runtime.run("times.splice(0)") as number[] };
  }
}

export function worksheetTargets(): Target[] {
  if (!existsSync(SCRIPT)) throw new Error("There is no dist/addin/functions.js: run `npm run build` first.");
  const script = readFileSync(SCRIPT, "utf8");
  // Reading the processor's time for each call would take longer than most calls.
  const runtime = new TimedRuntime(script, () => performance.now());
  const rows = Object.values(cases).flat();
  return metadata.functions.map(({ id, parameters }) => {
    // As a spreadsheet sends them: what is left out is null, and nothing but values travels.
    const call = (cells: readonly unknown[]): Call => {
      const padded = [...cells, ...parameters.slice(cells.length).map(() => null)].slice(0, parameters.length);
      return [id, JSON.parse(JSON.stringify(padded)) as unknown[]];
    };
    const known = rows.filter((row) => row.call === id).map(({ cells }) => cells);
    const drawn = argumentsFor(id, parameters as Parameter[], known);
    return {
      name: id,
      soak: async (seed) => {
        const calls = fc.sample(drawn, { seed, numRuns: BATCH }).map(call);
        const start = processorTime();
        const { outcomes, times } = await runtime.call(calls);
        const quick = processorTime() - start <= LONGEST_CALL;
        const finds = [];
        for (const [at, [, given]] of calls.entries()) {
          let what = outcomeFlaw(outcomes[at], given);
          if (!quick && times[at] > LONGEST_CALL) what ??= timeFlaw(timeWarm(script, calls[at], calls));
          if (what !== undefined) finds.push({ what, given });
        }
        return { calls: calls.length, finds };
      },
    };
  });
}

/**
 * The time of one call once more, by functions loaded anew that have worked out the rest of the batch, so that the engine
 * has compiled what it runs, but nothing is remembered of this call. They run in this program's own context, as in a page:
 * in a context of node:vm every global name, such as Math, is looked up the long way, which doubles the time of a plan.
 * Other programs lengthen the time by the clock, and the engine's own helpers the processor's time: the lesser counts.
 */
function timeWarm(script: string, call: Call, batch: readonly Call[]): number {
  const functions = new Map<string, (...cells: unknown[]) => unknown>();
  const associate = (id: string, run: (...cells: unknown[]) => unknown) => functions.set(id, run);
  Object.assign(globalThis, { CustomFunctions: { Error, ErrorCode: {}, associate } });
  runInThisContext(script);
  const work = ([id, cells]: Call) => {
    try {
      functions.get(id)!(...cells, {});
    } catch {
      // The vendor's runtime has told the outcome before.
    }
  };
  const first = JSON.stringify(call[1][0]);
  batch.filter(([, given]) => JSON.stringify(given[0]) !== first).forEach(work);
  const [clock, processor] = [performance.now(), processorTime()];
  work(call);
  return Math.min(performance.now() - clock, processorTime() - processor);
}

function outcomeFlaw(outcome: Outcome, given: unknown): string | undefined {
  if (outcome.ok) {
    const values = Array.isArray(outcome.value) ? (outcome.value as unknown[][]).flat() : [outcome.value];
    return values.map(valueFlaw).find((flaw) => flaw !== undefined);
  }
  if (outcome.code !== CODES.invalidValue && outcome.code !== CODES.notAvailable)
    return `uncaught error ${outcome.message}`;
  return sentenceFlaw(outcome.message, given);
}
