/** A copy of the project whose mathematics carries every mutant, each behind a switch, but for the search for cutting plans. */
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";

export interface Mutant {
  readonly id: string;
  readonly file: string;
  readonly line: number;
  /** Where in the text of the file it stands. */
  readonly start: number;
  readonly end: number;
  readonly mutator: string;
  readonly original: string;
  readonly replacement: string;
}

export const ROOT = join(__dirname, "..", "..");
export const FOLDER = join(ROOT, "dist", "mutation");
export const SANDBOX = join(FOLDER, "sandbox");
export const MATHEMATICS = join(SANDBOX, "src/math");

const COPIED = ["functions", "manifest", "scripts", "src", "tests", "package.json", "tsconfig.json"];

/** Tests of the mathematics, and those that pass the search for cutting plans, which take longer. */
const TESTS = ["tests/cases.test.ts", "tests/pane/working.test.ts", "tests/laws"];
const TESTS_OF_SEARCH = ["tests/cases.test.ts", "tests/laws", "tests/cutplan"];

/** Proofs on published benchmarks, which take many minutes. */
const LEFT_OUT = "tests/cutplan/benchmarks.test.ts";

export function filesBelow(path: string, ending: string): string[] {
  if (path.endsWith(ending)) return [path];
  return readdirSync(path, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(path, name))
    .sort();
}

/**
 * Whether a file, by its path below src/math, belongs to the search for cutting plans. Switches would slow it down a hundred
 * times: its mutants are written into its files, one at a time.
 */
export function isSearch(file: string): boolean {
  return file.startsWith("cutplan/");
}

/** Writes one mutant into a file that carries no switches, until the function that comes back is called. */
export function putIn({ file, start, end, replacement }: Mutant): () => void {
  const path = join(MATHEMATICS, file);
  const clean = readFileSync(path, "utf8");
  writeFileSync(path, clean.slice(0, start) + replacement + clean.slice(end));
  return () => {
    writeFileSync(path, clean);
  };
}

/** What a worker loads to try mutants of these files: the mathematics, then the tests. */
export function loadedFiles(mutated: readonly string[]): string[] {
  const testsOf = (file: string) => (isSearch(relative("src/math", file)) ? TESTS_OF_SEARCH : TESTS);
  const tests = [...new Set(mutated.flatMap(testsOf))]
    .flatMap((path) => filesBelow(join(SANDBOX, path), ".test.ts"))
    .filter((file) => file !== join(SANDBOX, LEFT_OUT));
  return [...filesBelow(MATHEMATICS, ".ts"), join(SANDBOX, "tests/setup.ts"), ...tests];
}

/** Writes the sandbox and tells every mutant of the files, which are given from the root of the project. */
export async function writeSandbox(files: readonly string[]): Promise<Mutant[]> {
  // A package of modules only.
  const { Instrumenter } = await import("@stryker-mutator/instrumenter");
  rmSync(SANDBOX, { recursive: true, force: true });
  mkdirSync(SANDBOX, { recursive: true });
  for (const name of COPIED) cpSync(join(ROOT, name), join(SANDBOX, name), { recursive: true });

  const sources = files.map((name) => ({ name, mutate: true, content: readFileSync(join(SANDBOX, name), "utf8") }));
  const quiet = { isDebugEnabled: () => false, debug: () => undefined, info: () => undefined, warn: console.warn };
  const instrumenter = new Instrumenter(quiet as never);
  const { files: written, mutants } = await instrumenter.instrument(sources, {
    plugins: null,
    excludedMutations: [],
    ignorers: [],
  });
  for (const { name, content } of written) {
    if (isSearch(relative("src/math", name))) continue;
    // Hits are counted in the run without mutants only; counting takes most of the time.
    const quick = content.replace(
      "function cover() {",
      "function cover() { if (ns.activeMutant !== undefined) return;",
    );
    writeFileSync(join(SANDBOX, name), quick);
  }
  const texts = new Map(sources.map(({ name, content }) => [name, content]));
  return mutants.map(({ id, fileName, location, mutatorName, replacement }) => {
    const text = texts.get(fileName)!;
    const [start, end] = [location.start, location.end].map(({ line, column }) => placeIn(text, line, column));
    return {
      id,
      file: relative("src/math", fileName),
      line: location.start.line + 1,
      start,
      end,
      mutator: mutatorName,
      original: text.slice(start, end),
      replacement,
    };
  });
}

/** The place of a line and column, both counted from 0. */
function placeIn(text: string, line: number, column: number): number {
  const before = text.split("\n").slice(0, line);
  return before.reduce((sum, { length }) => sum + length + 1, column);
}
