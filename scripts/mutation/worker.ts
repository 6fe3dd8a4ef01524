/**
 * Runs tests with one mutant switched on at a time, in one process. First without any, to learn which test passes which mutant;
 * then as the command asks. A mutant that acts while modules load is tried in a fresh process, where it is on from the start;
 * one of the search for cutting plans lies in its file, and everything is loaded anew.
 */
import { Session } from "node:inspector/promises";
import fc from "fast-check";
import { gather, type GatheredTest } from "./harness";
import { type DryRun, type Outcome, type Ran, type Switches, SWITCHES, type Trial } from "./messages";
import { isSearch, MATHEMATICS, SANDBOX } from "./sandbox";

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

/** Tells in which files of the search functions were called since it was last asked. */
async function startCoverage(): Promise<() => Promise<string[]>> {
  const session = new Session();
  session.connect();
  await session.post("Profiler.enable");
  await session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: false });
  return async () => {
    const { result } = await session.post("Profiler.takePreciseCoverage");
    return result
      .filter(({ functions }) =>
        functions.some(({ functionName, ranges }) => functionName !== "" && ranges[0].count > 0),
      )
      .map(({ url }) => url.split(`${MATHEMATICS}/`)[1] ?? "")
      .filter(isSearch);
  };
}

async function dryRun(tests: readonly GatheredTest[], atLoad: readonly string[]): Promise<DryRun> {
  const ran: Ran[] = [];
  const takeReached = await startCoverage();
  for (const [index, test] of tests.entries()) {
    switches.currentTestId = String(index + 1);
    await takeReached();
    const start = performance.now();
    const passed = await passes(test);
    const milliseconds = performance.now() - start;
    const hits = switches.mutantCoverage?.perTest[switches.currentTestId] ?? {};
    ran.push({ name: test.name, milliseconds, passed, hits, reached: await takeReached() });
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

function requireAll(files: readonly string[]): void {
  // eslint-disable-next-line @typescript-eslint/no-require-imports -- in the order given
  for (const file of files) require(file);
}

async function main(): Promise<void> {
  const [fromTheStart, ...files] = process.argv.slice(2);
  if (fromTheStart !== "none") switches.activeMutant = fromTheStart;
  const modules = files.filter((file) => file.startsWith(MATHEMATICS));
  const testFiles = files.slice(modules.length);
  requireAll(modules);
  const atLoad = Object.keys(switches.mutantCoverage?.static ?? {});
  let tests = gather(testFiles);

  const loadAnew = () => {
    for (const path of Object.keys(require.cache)) {
      if (path.startsWith(SANDBOX)) Reflect.deleteProperty(require.cache, path);
    }
    requireAll(modules);
    tests = gather(testFiles);
  };
  const answer = async (trial: Trial): Promise<Outcome> => {
    try {
      if (trial.reload) loadAnew();
    } catch {
      return { id: trial.id, fate: "killed", by: "loading the modules" };
    }
    return tryMutant(tests, trial);
  };
  process.on("message", (trial: Trial) => {
    void answer(trial).then((outcome) => process.send?.(outcome));
  });
  process.send?.(fromTheStart === "none" ? await dryRun(tests, atLoad) : { tests: [], atLoad: [] });
}

void main();
