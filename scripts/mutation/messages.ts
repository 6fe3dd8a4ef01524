/** What the command and its worker say to each other, and where the tests of a mutant are found. */

/** How it ended: a test failed, all passed, it never ended, no test reaches it, or no test noticed it but the type checker does. */
export type Fate = "killed" | "survived" | "timeout" | "not reached" | "refused";

/** One test as it ran without any mutant. */
export interface Ran {
  readonly name: string;
  readonly milliseconds: number;
  readonly passed: boolean;
  /** How often it passed the place of each mutant. */
  readonly hits: Readonly<Record<string, number>>;
  /** Files of the search in which it called a function, by their paths below src/math. */
  readonly reached: readonly string[];
}

/** The worker's first report. */
export interface DryRun {
  readonly tests: readonly Ran[];
  /** Mutants whose place is passed while the modules load. */
  readonly atLoad: readonly string[];
}

/** A mutant to try against tests, each with the hits after which it is taken for an endless loop. */
export interface Trial {
  readonly id: string;
  readonly tests: readonly { readonly index: number; readonly limit: number }[];
  /** Whether a file has changed, and everything must be loaded anew before. */
  readonly reload?: boolean;
}

export interface Outcome {
  readonly id: string;
  readonly fate: Fate;
  /** The test that failed. */
  readonly by?: string;
}

/** The switches that the instrumented code reads. */
export interface Switches {
  activeMutant?: string;
  currentTestId?: string;
  hitCount?: number;
  hitLimit?: number;
  mutantCoverage?: { static: Record<string, number>; perTest: Record<string, Record<string, number>> };
}

/** The global name under which Stryker's instrumented code looks for them. */
export const SWITCHES = "__stryker__";
