/**
 * Makes a class copy of a workbook, for students who work without the add-in: `npm run class-copy -- plan.xlsx copy.xlsx`.
 * The workbook itself stays as it is.
 */
import { existsSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { Problem } from "../src/math/problem";
import { workOutIn } from "../src/practice/workOut";
import { classCopy, reportText } from "../src/workbooks/classCopy";

const USAGE = `Makes a class copy: every QUILT formula becomes a plain formula, or its value.
  npm run --silent class-copy -- plan.xlsx copy.xlsx
  --replace   writes over a copy that is there already
  --no-list   adds no sheet that lists the values`;

const OPTIONS = ["--replace", "--no-list"];
const LARGEST = 100_000_000;

/** Answers with the code that the program ends with. */
async function main(words: readonly string[]): Promise<number> {
  const options = words.filter((word) => word.startsWith("--"));
  const [from, to, ...more] = words.filter((word) => !word.startsWith("--"));
  if (!from || !to || more.length > 0 || options.some((option) => !OPTIONS.includes(option))) {
    console.error(USAGE);
    return 2;
  }
  try {
    const [source, target] = [from, to].map((file) => resolve(process.env.INIT_CWD ?? process.cwd(), file));
    refuseTarget(source, target, to, options.includes("--replace"));
    const bytes = readFileSync(source);
    const copy = await classCopy(bytes, workOutIn(bytes), { list: !options.includes("--no-list") });
    write(target, copy.bytes);
    console.log(`${to}\n${reportText(copy.report)}`);
    return 0;
  } catch (thrown) {
    if (!(thrown instanceof Problem)) throw thrown;
    console.error(`${from}: ${thrown.sentence("in")}.`);
    return 1;
  }
}

function refuseTarget(source: string, target: string, name: string, mayReplace: boolean): void {
  const file = statSync(source, { throwIfNoEntry: false });
  if (!file?.isFile()) throw new Problem("bad input", "there is no such file");
  if (file.size > LARGEST) throw new Problem("bad input", "this file is too large for a class copy");
  if (!name.toLowerCase().endsWith(".xlsx")) throw new Problem("bad input", "the copy must be named .xlsx");
  const there = statSync(target, { throwIfNoEntry: false });
  if (source === target || (there?.ino === file.ino && there.dev === file.dev))
    throw new Problem("bad input", "the copy must have another name, so that the workbook itself stays");
  if (existsSync(target) && !mayReplace)
    throw new Problem("bad input", `${name} is there already; add --replace to write over it`);
}

/** Written beside its place and moved there whole, so that a file is never there in part. */
function write(target: string, bytes: Uint8Array): void {
  const fresh = `${target}.${process.pid}.part`;
  try {
    writeFileSync(fresh, bytes, { flag: "wx" });
    renameSync(fresh, target);
  } catch {
    rmSync(fresh, { force: true });
    throw new Problem("bad input", "the copy cannot be written there");
  }
}

void main(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
});
