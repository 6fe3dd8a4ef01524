/**
 * Throws random and hostile arguments at every function, through the vendor's runtime and from the built script, and at the
 * readers of texts, blocks and workbooks: `npm run soak -- --minutes 5`, after `npm run build`. A find is an uncaught error,
 * a value that no cell can hold, an error without a plain sentence, or a call that takes too long. Every target gets the
 * same time. Each draws its batches by seeds of its own, counted up from `--seed`; `--only PLAN` throws at one target.
 */
import { parseArgs } from "node:util";
import { readerTargets } from "./soak/readers";
import { type Find, processorTime, type Target } from "./soak/target";
import { worksheetTargets } from "./soak/worksheet";

/** Finds of one target that are told in full. */
const TOLD = 3;

interface Tally {
  readonly target: Target;
  seed: number;
  calls: number;
  found: number;
  time: number;
}

async function main(): Promise<number> {
  const { values } = parseArgs({
    options: { minutes: { type: "string" }, seed: { type: "string" }, only: { type: "string" } },
  });
  const seed = Number(values.seed ?? Date.now() % 1_000_000);
  const tallies = [...worksheetTargets(), ...(await readerTargets())]
    .filter(({ name }) => values.only === undefined || name === values.only)
    .map((target): Tally => ({ target, seed, calls: 0, found: 0, time: 0 }));
  if (tallies.length === 0) throw new Error(`There is no target called ${values.only}.`);
  const end = performance.now() + 60_000 * Number(values.minutes ?? 1);
  while (performance.now() < end) await soak(tallies.reduce((one, other) => (other.time < one.time ? other : one)));
  return report(tallies, seed);
}

async function soak(tally: Tally): Promise<void> {
  const { target, seed } = tally;
  const start = processorTime();
  const { calls, finds } = await target.soak(seed);
  tally.time += processorTime() - start;
  finds.slice(0, Math.max(0, TOLD - tally.found)).forEach((find) => {
    tell(find, target.name, seed);
  });
  tally.calls += calls;
  tally.found += finds.length;
  tally.seed += 1;
}

function tell({ what, given }: Find, name: string, seed: number): void {
  console.log(`${name}: ${what}\n  with ${JSON.stringify(given)}\n  again with --only "${name}" --seed ${seed}`);
}

/** Prints the sums; the exit code is 1 where anything was found. */
function report(tallies: readonly Tally[], first: number): number {
  for (const { target, seed, calls, found } of tallies) {
    const finds = found === 0 ? "" : `, ${found} finds`;
    console.log(`${target.name}: ${calls} calls, seeds ${first} to ${seed - 1}${finds}`);
  }
  const calls = tallies.reduce((sum, tally) => sum + tally.calls, 0);
  const found = tallies.reduce((sum, tally) => sum + tally.found, 0);
  console.log(`${calls} calls of ${tallies.length} targets from seed ${first}: ${found} finds`);
  return found > 0 ? 1 : 0;
}

void main().then((code) => {
  process.exitCode = code;
});
