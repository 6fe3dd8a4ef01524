/**
 * Runs tests with one mutant switched on at a time, in one process. First without any, to learn which test passes which mutant;
 * then as the command asks. A mutant that acts while modules load is tried in a fresh process, where it is on from the start.
 */
import fc from "fast-check";
import { gather, type GatheredTest } from "./harness";
import { type DryRun, type Outcome, type Ran, type Switches, SWITCHES, type Trial } from "./messages";

/** The same random inputs in every run; the first failure is enough. */
fc.configureGlobal({ seed: 1, endOnFailure: true });

const switches: Switches = {};
Object.assign(globalThis, { [SWITCHES]: switches });

async function passes(test: GatheredTest): Promise<boolean> {
  try {
    await test.run();
    return true;
  } catch {
    return false;
  }
}

async function dryRun(tests: readonly GatheredTest[], atLoad: readonly string[]): Promise<DryRun> {
  const ran: Ran[] = [];
  for (const [index, test] of tests.entries()) {
    switches.currentTestId = String(index + 1);
    const start = performance.now();
    const passed = await passes(test);
    const hits = switches.mutantCoverage?.perTest[switches.currentTestId] ?? {};
    ran.push({ name: test.name, milliseconds: performance.now() - start, passed, hits });
  }
  return { tests: ran, atLoad };
}

async function tryMutant(tests: readonly GatheredTest[], { id, tests: chosen }: Trial): Promise<Outcome> {
  switches.activeMutant = id;
  switches.currentTestId = "trial";
  for (const { index, limit } of chosen) {
    switches.hitCount = 0;
    switches.hitLimit = limit;
    const passed = await passes(tests[index]);
    if (switches.hitCount > limit) return { id, fate: "timeout" };
    if (!passed) return { id, fate: "killed", by: tests[index].name };
  }
  return { id, fate: "survived" };
}

async function main(): Promise<void> {
  const [fromTheStart, ...files] = process.argv.slice(2);
  if (fromTheStart !== "none") switches.activeMutant = fromTheStart;
  const modules = files.filter((file) => !file.includes("/tests/"));
  // eslint-disable-next-line @typescript-eslint/no-require-imports -- in the order given
  for (const file of modules) require(file);
  const atLoad = Object.keys(switches.mutantCoverage?.static ?? {});
  const tests = gather(files.slice(modules.length));
  process.on("message", (trial: Trial) => {
    void tryMutant(tests, trial).then((outcome) => process.send?.(outcome));
  });
  process.send?.(fromTheStart === "none" ? await dryRun(tests, atLoad) : { tests: [], atLoad: [] });
}

void main();
