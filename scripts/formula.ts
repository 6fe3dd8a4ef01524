/**
 * Works out formulas with the practice sheet's engine: `npm run --silent formula -- '=QUILT.CUTHALFSQUARE(3)'`.
 * With --json, formulas come from standard input, one a line, and each gives one line of JSON.
 */
import { createInterface } from "node:readline";
import { Evaluator, type Outcome, type Scalar } from "../src/practice/evaluate";

const USAGE = `Works out formulas.
  npm run --silent formula -- '=QUILT.CUTHALFSQUARE(3)' ['=...']
  npm run --silent formula -- --json < formulas.txt`;

async function main(words: string[]): Promise<number> {
  if (words.length === 0 || words.includes("--help")) {
    console.error(USAGE);
    return words.length === 0 ? 2 : 0;
  }
  if (words.includes("--json")) return await answerLines();
  const evaluator = new Evaluator();
  let failed = false;
  for (const formula of words) {
    const outcome = await evaluator.evaluate(formula);
    failed ||= "error" in outcome;
    console.log(plain(outcome));
  }
  evaluator.dispose();
  return failed ? 1 : 0;
}

async function answerLines(): Promise<number> {
  const evaluator = new Evaluator();
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
    const outcome = await evaluator.evaluate(line);
    process.stdout.write(`${JSON.stringify({ formula: line, ...outcome })}\n`);
  }
  evaluator.dispose();
  return 0;
}

function plain(outcome: Outcome): string {
  if ("error" in outcome) return `${outcome.error} ${outcome.message}`;
  const rows = Array.isArray(outcome.value) ? outcome.value : [[outcome.value]];
  return rows.map((row) => row.map(shown).join("\t")).join("\n");
}

function shown(value: Scalar): string {
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}

void main(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
});
