/** Tries mutants one after the other against the tests that pass their place, in processes that may hang or die. */
import { type ChildProcess, fork } from "node:child_process";
import { join } from "node:path";
import type { DryRun, Outcome, Trial } from "./messages";
import { isSearch, type Mutant, putIn } from "./sandbox";

/** A test that passes the mutant this many times as often as without it runs for ever. */
const ENDLESS = 100;

/** Milliseconds that a mutant gets, beside so many times what its tests take. */
const PATIENCE = 30_000;
const TIMES = 20;

/** The same for one test of a mutant of the search, which carries no switches; a plan that takes longer has lost its budget of work. */
const PATIENCE_IN_SEARCH = 10_000;
const TIMES_IN_SEARCH = 8;

class Worker {
  private readonly child: ChildProcess;

  constructor(fromTheStart: string, loaded: readonly string[]) {
    this.child = fork(join(__dirname, "worker.ts"), [fromTheStart, ...loaded], {
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

export class Judge {
  private worker: Worker | undefined;
  private readonly atLoad: ReadonlySet<string>;
  /** How many mutants of the search each test has killed: what noticed many is asked first. */
  private readonly kills: number[];

  private constructor(
    private readonly loaded: readonly string[],
    private readonly dryRun: DryRun,
    private readonly longest: number,
    worker: Worker,
  ) {
    this.worker = worker;
    this.atLoad = new Set(dryRun.atLoad);
    this.kills = dryRun.tests.map(() => 0);
  }

  /** Runs the tests once without mutants; those that take more than `longest` milliseconds are left out from then on. */
  static async start(loaded: readonly string[], longest: number): Promise<Judge> {
    const worker = new Worker("none", loaded);
    const dryRun = await worker.hears<DryRun>(3_600_000);
    if (dryRun === undefined)
      throw new Error("The tests could not be run without mutants: see them fail with DEBUG=1.");
    const failed = dryRun.tests.filter(({ passed }) => !passed);
    for (const { name } of failed) console.warn(`Fails without any mutant, and is left out: ${name}`);
    const took = dryRun.tests.reduce((sum, { milliseconds }) => sum + milliseconds, 0);
    const long = dryRun.tests.filter(({ milliseconds }) => milliseconds > longest).length;
    console.log(`${dryRun.tests.length} tests in ${(took / 1000).toFixed(0)} s without mutants; ${long} too long`);
    return new Judge(loaded, dryRun, longest, worker);
  }

  /** The fate of a mutant at the tests; `others` are the mutants of its file, whose tests are asked where it acts while modules load. */
  async fate(mutant: Mutant, others: readonly Mutant[]): Promise<Outcome> {
    const { id } = mutant;
    if (isSearch(mutant.file)) {
      const takeOut = putIn(mutant);
      const outcome = await this.searched(mutant);
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
        return { index, milliseconds, passes: passed && milliseconds <= this.longest ? passes : 0 };
      })
      .filter(({ passes }) => passes > 0)
      .sort((a, b) => a.milliseconds - b.milliseconds)
      .map(({ index, passes }) => ({ index, limit: 1000 + ENDLESS * passes }));
  }

  private patience({ tests }: Trial): number {
    return PATIENCE + TIMES * tests.reduce((sum, { index }) => sum + this.dryRun.tests[index].milliseconds, 0);
  }

  /** A mutant of the search is written into its file; the worker loads everything anew, and each test is awaited by itself. */
  private async searched({ id, file }: Mutant): Promise<Outcome> {
    const { tests } = this.dryRun;
    const relevant = [...tests.keys()]
      .filter((index) => tests[index].passed && tests[index].milliseconds <= this.longest)
      .filter((index) => tests[index].reached.includes(file))
      .sort((a, b) => this.kills[b] - this.kills[a] || tests[a].milliseconds - tests[b].milliseconds);
    const reload = await this.tried({ id, tests: [], reload: true });
    if (reload.fate !== "survived") return reload;
    for (const index of relevant) {
      const limit = PATIENCE_IN_SEARCH + TIMES_IN_SEARCH * tests[index].milliseconds;
      const outcome = await this.tried({ id, tests: [{ index, limit: Infinity }] }, limit);
      if (outcome.fate === "survived") continue;
      this.kills[index]++;
      return { ...outcome, by: tests[index].name };
    }
    return { id, fate: relevant.length === 0 ? "not reached" : "survived" };
  }

  private async tried(trial: Trial, patience = this.patience(trial)): Promise<Outcome> {
    if (this.worker === undefined) {
      this.worker = new Worker("", this.loaded);
      // A mutant of the search lies in its file already.
      if ((await this.worker.hears(PATIENCE)) === undefined) {
        this.worker = undefined;
        return { id: trial.id, fate: "killed", by: "loading the modules" };
      }
    }
    const outcome = await this.worker.tries(trial, patience);
    if (outcome === undefined) this.worker = undefined;
    return outcome ?? { id: trial.id, fate: "timeout" };
  }

  private async fresh({ id, tests }: Trial): Promise<Outcome> {
    const worker = new Worker(id, this.loaded);
    const loaded = await worker.hears(PATIENCE);
    if (loaded === undefined) return { id, fate: "killed", by: "loading the modules" };
    const unlimited = { id, tests: tests.map(({ index }) => ({ index, limit: 1e12 })) };
    const outcome = await worker.tries(unlimited, this.patience(unlimited));
    worker.stop();
    return outcome ?? { id, fate: "timeout" };
  }
}
