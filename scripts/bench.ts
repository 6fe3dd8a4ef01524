/**
 * Measures the speed of the functions and the sizes of the bundles: `npm run bench`, after `npm run build`, prints the tables
 * and writes docs/benchmarks.md. Times are processor time, so that other programs disturb them little; what counts are the
 * ratios, which come from one run.
 */
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { ICellData } from "@univerjs/core";
import { Evaluator } from "../src/practice/evaluate";
import { recalculate } from "../src/practice/recalculate";
import { workbookOf } from "../src/practice/workbook";
import { twins } from "../src/workbooks/plain";
import { standInForHost } from "../functions/standIn";
import { cases } from "../tests/cases/index";
import { loadVendorRuntime } from "../tests/contract/vendorRuntime";
import { callText } from "../tests/plain/calls";
import { sample } from "../tests/plain/samples";
import { benchFirstFormula } from "./bench/browser";
import { benchClassCopies } from "./bench/classCopy";
import { benchCutPlans } from "./bench/cutplan";
import { table } from "./bench/table";

const ROOT = join(__dirname, "..");

/** Milliseconds of processor time. */
async function timeOf(run: () => Promise<unknown>): Promise<number> {
  const before = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** Calls of each function that are worked out, and how often. */
const CALLS = 8;
const ROUNDS = 12;

/** Each function against the formula of built-in functions that replaces it in class copies. */
async function againstPlain(): Promise<string> {
  const rows: { id: string; own: number; plain: number; ratio: number }[] = [];
  for (const id of Object.keys(twins)) {
    const { calls, rows: cells } = sample(id, CALLS, 7);
    const data = Object.fromEntries(
      cells.map((row, at) => [at, Object.fromEntries(row.map((v, column): [number, ICellData] => [column, { v }]))]),
    );
    const pairs = calls.map((args, at) => ({
      own: callText(id, args, at + 1),
      plain: cells[at].filter((cell): cell is string => typeof cell === "string" && cell.startsWith("=")),
    }));
    const usable = pairs.filter(({ plain }) => plain.length > 0);
    const evaluator = new Evaluator(data);
    const all = async (formulas: readonly string[]) => {
      for (const formula of formulas) await evaluator.evaluate(formula);
    };
    const own = usable.map((pair) => pair.own);
    const plain = usable.flatMap((pair) => pair.plain);
    await all([...own, ...plain]);
    let [ownTime, plainTime] = [0, 0];
    for (let round = 0; round < ROUNDS; round++) {
      ownTime += await timeOf(() => all(own));
      plainTime += await timeOf(() => all(plain));
    }
    evaluator.dispose();
    const each = (time: number) => time / ROUNDS / usable.length;
    rows.push({ id, own: each(ownTime), plain: each(plainTime), ratio: ownTime / plainTime });
  }
  rows.sort((a, b) => b.ratio - a.ratio);
  const within = rows.filter(({ ratio }) => ratio <= 1.2).length;
  const head = `${within} of ${rows.length} functions take at most 1.2 times as long as their plain formulas.`;
  const columns = ["function", "ms a call", "ms plain", "ratio"];
  return `${head}\n\n${table(
    columns,
    rows.map(({ id, own, plain, ratio }) => [id, own.toFixed(2), plain.toFixed(2), ratio.toFixed(2)]),
  )}`;
}

/** Calls a second from the built script, in batches as a spreadsheet sends them. */
async function throughRuntime(): Promise<string> {
  const runtime = loadVendorRuntime();
  runtime.run(readFileSync(join(ROOT, "dist/addin/functions.js"), "utf8"));
  const parameters = new Map(Object.entries(twins).map(([id, twin]) => [id, twin.parameters.length]));
  const call = ([id, cells]: readonly [string, readonly unknown[]]): [string, unknown[]] => [
    id,
    Array.from({ length: parameters.get(id)! }, (_, at) => cells[at] ?? null),
  ];
  const known = Object.values(cases)
    .flat()
    .filter(({ call: id }) => parameters.has(id))
    .map(({ call: id, cells }) => call([id, cells]));
  const batches: [string, [string, unknown[]][]][] = [
    ["CUTHALFSQUARE", Array.from({ length: 10_000 }, (_, at) => call(["CUTHALFSQUARE", [1 + at / 64]]))],
    ["all check values with a plain formula", Array.from({ length: 10_000 }, (_, at) => known[at % known.length])],
  ];
  const rows: string[][] = [];
  for (const [title, calls] of batches) {
    await runtime.call(calls);
    const time = await timeOf(() => runtime.call(calls));
    rows.push([title, String(calls.length), time.toFixed(0), ((calls.length / time) * 1000).toFixed(0)]);
  }
  return table(["batch", "calls", "ms", "calls a second"], rows);
}

/** A sheet of one formula in many rows, each with a number of its own. */
async function recalculation(): Promise<string> {
  const sheet = (rows: number, formula: (row: number) => string) =>
    workbookOf("Measured", [
      {
        name: "Sheet1",
        rowCount: rows,
        columnCount: 3,
        cellData: Object.fromEntries(
          Array.from({ length: rows }, (_, at) => [at, { 0: { v: 1 + at / 128 }, 1: { f: formula(at + 1) } }]),
        ),
      },
    ]);
  const rows: string[][] = [];
  for (const count of [1_000, 10_000, 100_000]) {
    const own = await timeOf(() => recalculate(sheet(count, (row) => `=QUILT.CUTHALFSQUARE(A${row})`)));
    const plain = await timeOf(() => recalculate(sheet(count, (row) => `=ROUNDUP((A${row}+0.25*(2+SQRT(2)))*8,0)/8`)));
    rows.push([
      count.toLocaleString("en"),
      own.toFixed(0),
      plain.toFixed(0),
      (own / plain).toFixed(2),
      ((own / count) * 1000).toFixed(0),
    ]);
  }
  return table(["cells", "ms QUILT.CUTHALFSQUARE", "ms plain formula", "ratio", "µs a cell"], rows);
}

/** What the browser loads, compressed. */
function sizes(): string {
  const kilobytes = (files: readonly string[]) => {
    const size = files.reduce(
      (sum, file) => sum + gzipSync(readFileSync(join(ROOT, "dist", file)), { level: 9 }).length,
      0,
    );
    return (size / 1024).toFixed(1);
  };
  const practice = readdirSync(join(ROOT, "dist/practice"))
    .filter((name) => statSync(join(ROOT, "dist/practice", name)).isFile())
    .map((name) => `practice/${name}`);
  return table(
    ["bundle", "KB compressed"],
    [
      ["functions.js of the add-in (goal: under 40)", kilobytes(["addin/functions.js"])],
      ["the pane: pane.html, pane.css, pane.js", kilobytes(["addin/pane.html", "addin/pane.css", "addin/pane.js"])],
      ["the practice sheet, every file", kilobytes(practice)],
    ],
  );
}

async function main(): Promise<void> {
  standInForHost();
  const parts: [string, () => string | Promise<string>][] = [
    ["Sizes of the bundles", sizes],
    ["Calls through the vendor’s runtime", throughRuntime],
    ["From nothing to the first formula in the browser", benchFirstFormula],
    ["Recalculation in the practice sheet’s engine", recalculation],
    ["Each function against its plain formula, in the practice sheet’s engine", againstPlain],
    ["Class copies", benchClassCopies],
    ["Cut planner", benchCutPlans],
  ];
  const [{ model }] = cpus();
  const machine = `Measured on ${model}, ${cpus().length} processors, Node ${process.version}, shared with other work.`;
  let text = `# Benchmarks\n\nWritten by \`npm run bench\`. ${machine} Times are processor time; compare ratios, not machines.\n`;
  for (const [title, measure] of parts) {
    const section = `\n## ${title}\n\n${(await measure()).trim()}\n`;
    console.log(section);
    text += section;
  }
  writeFileSync(join(ROOT, "docs/benchmarks.md"), text);
}

void main();
