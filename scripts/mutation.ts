/**
 * Mutation testing of src/math: `npm run mutation`. Changes one operator, condition, literal or statement at a time, as Stryker's
 * mutators do, and looks whether a test fails. All mutants lie in one copy of the code behind switches, so that one process
 * tries thousands; only those of the search for cutting plans get a process each. Outcomes are kept in dist/mutation; when every mutant has one, docs/mutation.md gets its table.
 *
 * `--only patches` takes the files whose path begins so, `--except cutplan` all others; `--left` only the mutants that survived or were never tried, as after
 * new check values; `--sample 100` at most so many of each file, drawn with `--seed 1`; `--list` tells the survivors and runs nothing.
 */
import { type ChildProcess, fork } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { parseArgs } from "node:util";
import type { DryRun, Outcome, Trial } from "./mutation/messages";
import { filesBelow, FOLDER, isSearch, loadedFiles, type Mutant, putIn, ROOT, writeSandbox } from "./mutation/sandbox";
import { TypeChecker } from "./mutation/types";
import { type Kept, keyOf, survivorLines, survives, writeTable } from "./mutation/outcomes";

const OUTCOMES = join(FOLDER, "outcomes.json");

/** A test that passes the mutant this many times as often as without it runs for ever. */
const ENDLESS = 100;

/** Milliseconds that a mutant gets, beside so many times what its tests take. */
const PATIENCE = 30_000;
const TIMES = 20;

/** The same for a mutant of the search, which carries no switches; a plan that takes longer has lost its budget of work. */
const TIMES_IN_SEARCH = 4;

class Worker {
  private readonly child: ChildProcess;

  constructor(fromTheStart: string, loaded: readonly string[]) {
    this.child = fork(join(__dirname, "mutation/worker.ts"), [fromTheStart, ...loaded], {
      execArgv: [...process.execArgv, "--max-old-space-size=2048"],
      stdio: ["ignore", "ignore", process.env.DEBUG ? "inherit" : "ignore", "ipc"],
    });
  }

  /** What the worker says next; nothing where it dies first or says nothing in time. */
  hears<T>(milliseconds: number): Promise<T | undefined> {
    return new Promise((resolve) => {
      const end = (said?: T) => {
        clearTimeout(timer);
        this.child.removeAllListeners();
        if (said === undefined) this.stop();
        resolve(said);
      };
      const timer = setTimeout(end, milliseconds);
      this.child.once("message", (said) => {
        end(said as T);
      });
      this.child.once("exit", () => {
        end();
      });
    });
  }

  tries(trial: Trial, milliseconds: number): Promise<Outcome | undefined> {
    this.child.send(trial);
    return this.hears<Outcome>(milliseconds);
  }

  stop(): void {
    this.child.kill("SIGKILL");
  }
}

/** Tries mutants one after the other; a worker that hangs or dies is replaced. */
class Judge {
  private worker: Worker | undefined;
  private readonly atLoad: ReadonlySet<string>;

  private constructor(
    private readonly loaded: readonly string[],
    private readonly dryRun: DryRun,
    worker: Worker,
  ) {
    this.worker = worker;
    this.atLoad = new Set(dryRun.atLoad);
  }

  static async start(loaded: readonly string[]): Promise<Judge> {
    const worker = new Worker("none", loaded);
    const dryRun = await worker.hears<DryRun>(3_600_000);
    if (dryRun === undefined)
      throw new Error("The tests could not be run without mutants: see them fail with DEBUG=1.");
    const failed = dryRun.tests.filter(({ passed }) => !passed);
    for (const { name } of failed) console.warn(`Fails without any mutant, and is left out: ${name}`);
    const took = dryRun.tests.reduce((sum, { milliseconds }) => sum + milliseconds, 0);
    console.log(`${dryRun.tests.length} tests in ${(took / 1000).toFixed(0)} s without mutants`);
    return new Judge(loaded, dryRun, worker);
  }

  /** The fate of a mutant at the tests; `others` are the mutants of its file, whose tests are asked where it acts while modules load. */
  async fate(mutant: Mutant, others: readonly Mutant[]): Promise<Outcome> {
    const { id } = mutant;
    if (isSearch(mutant.file)) {
      const takeOut = putIn(mutant);
      const outcome = await this.fresh({ id, tests: this.testsOf() }, TIMES_IN_SEARCH);
      takeOut();
      return outcome;
    }
    const reached = this.testsOf([id]);
    const outcome =
      reached.length > 0 ? await this.tried({ id, tests: reached }) : { id, fate: "not reached" as const };
    if (outcome.fate === "killed" || outcome.fate === "timeout") return outcome;
    // What other mutants left behind in the process may have hidden this one.
    if (!this.atLoad.has(id)) return reached.length > 0 ? this.fresh({ id, tests: reached }) : outcome;
    const related = this.testsOf(others.map((other) => other.id));
    return this.fresh({ id, tests: related.length > 0 ? related : this.testsOf() });
  }

  stop(): void {
    this.worker?.stop();
  }

  /** Tests that pass any of the mutants, or all tests, the quickest first. */
  private testsOf(ids?: readonly string[]): Trial["tests"] {
    return this.dryRun.tests
      .map(({ passed, milliseconds, hits }, index) => {
        const passes = ids?.reduce((sum, id) => sum + (hits[id] ?? 0), 0) ?? 1;
        return { index, milliseconds, passes: passed ? passes : 0 };
      })
      .filter(({ passes }) => passes > 0)
      .sort((a, b) => a.milliseconds - b.milliseconds)
      .map(({ index, passes }) => ({ index, limit: 1000 + ENDLESS * passes }));
  }

  private patience({ tests }: Trial, times = TIMES): number {
    return PATIENCE + times * tests.reduce((sum, { index }) => sum + this.dryRun.tests[index].milliseconds, 0);
  }

  private async tried(trial: Trial): Promise<Outcome> {
    if (this.worker === undefined) {
      this.worker = new Worker("", this.loaded);
      await this.worker.hears(PATIENCE);
    }
    const outcome = await this.worker.tries(trial, this.patience(trial));
    if (outcome === undefined) this.worker = undefined;
    return outcome ?? { id: trial.id, fate: "timeout" };
  }

  private async fresh({ id, tests }: Trial, times = TIMES): Promise<Outcome> {
    const worker = new Worker(id, this.loaded);
    const loaded = await worker.hears(PATIENCE);
    if (loaded === undefined) return { id, fate: "killed", by: "loading the modules" };
    const unlimited = { id, tests: tests.map(({ index }) => ({ index, limit: 1e12 })) };
    const outcome = await worker.tries(unlimited, this.patience(unlimited, times));
    worker.stop();
    return outcome ?? { id, fate: "timeout" };
  }
}

/** The first `size` of the mutants in an order shuffled by a seed. */
function sampleOf(mutants: readonly Mutant[], size: number, seed: number): Mutant[] {
  let state = seed;
  const draw = () => (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0);
  return mutants
    .map((mutant) => ({ mutant, rank: draw() }))
    .sort((a, b) => a.rank - b.rank)
    .slice(0, size)
    .map(({ mutant }) => mutant);
}

function readKept(): Kept[] {
  return existsSync(OUTCOMES) ? (JSON.parse(readFileSync(OUTCOMES, "utf8")) as Kept[]) : [];
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      only: { type: "string", multiple: true },
      except: { type: "string", multiple: true },
      left: { type: "boolean" },
      sample: { type: "string" },
      seed: { type: "string" },
      list: { type: "boolean" },
    },
  });
  const begins = (file: string) => (start: string) => file.startsWith(start);
  const chosen = (file: string) =>
    (values.only?.some(begins(file)) ?? true) && !(values.except?.some(begins(file)) ?? false);
  let kept = readKept();
  if (values.list) {
    console.log(survivorLines(kept.filter(({ file }) => chosen(file))).join("\n"));
    return;
  }
  mkdirSync(FOLDER, { recursive: true });
  const base = join(ROOT, "src/math");
  const files = filesBelow(base, ".ts")
    .filter((path) => chosen(relative(base, path)))
    .map((path) => relative(ROOT, path));
  const mutants = await writeSandbox(files);
  const judge = await Judge.start(loadedFiles(files));
  const types = new TypeChecker();
  for (const file of new Set(mutants.map((mutant) => mutant.file))) {
    const own = mutants.filter((mutant) => mutant.file === file);
    const drawn = new Set(sampleOf(own, Number(values.sample ?? own.length), Number(values.seed ?? 1)));
    const known = new Map(kept.map((mutant) => [keyOf(mutant), mutant]));
    const judged: Kept[] = [];
    for (const mutant of own) {
      const before = known.get(keyOf(mutant));
      const again = values.left !== true || before?.fate === undefined || survives(before);
      const outcome = again && drawn.has(mutant) ? await judge.fate(mutant, own) : before;
      const fate = outcome !== undefined && survives(outcome) && types.refuses(mutant) ? "refused" : outcome?.fate;
      judged.push({ ...mutant, fate, by: outcome?.by });
    }
    kept = [...kept.filter((mutant) => mutant.file !== file), ...judged];
    writeFileSync(OUTCOMES, JSON.stringify(kept, null, 1));
    const tried = judged.filter(({ fate }) => fate !== undefined);
    const alive = tried.filter(survives);
    console.log(`${file}: ${tried.length} of ${own.length} mutants tried, ${alive.length} survive`);
  }
  judge.stop();
  writeTable(kept);
}

void main();
