/**
 * Mutation testing of src/math: `npm run mutation`. Changes one operator, condition, literal or statement at a time, as
 * Stryker's mutators do, and looks whether a test fails. All mutants lie in one copy of the code behind switches, so that one
 * process tries thousands; only those of the search for cutting plans are written into its files. Outcomes are kept in
 * dist/mutation, file by file; at the end of a run docs/mutation.md gets its table.
 *
 * `--only patches` takes the files whose path begins so, `--except cutplan` all others; `--left` only the mutants that survived
 * or were never tried, as after new check values; `--sample 100` at most so many of each file, drawn with `--seed 1`;
 * `--longest 1` leaves out tests of more than a second; `--list` tells the survivors and runs nothing.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { parseArgs } from "node:util";
import { Judge } from "./mutation/judge";
import { filesBelow, FOLDER, loadedFiles, type Mutant, ROOT, writeSandbox } from "./mutation/sandbox";
import { TypeChecker } from "./mutation/types";
import { type Kept, keyOf, survivorLines, survives, writeTable } from "./mutation/outcomes";

const OUTCOMES = join(FOLDER, "outcomes.json");

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
      longest: { type: "string" },
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
  const judge = await Judge.start(loadedFiles(files), 1000 * Number(values.longest ?? Infinity));
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
