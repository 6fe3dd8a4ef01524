/** Measures class copies: how fast calls become plain formulas, and how much code a page loads for it. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { Workbook } from "@cj-tech-master/excelts";
import webpack from "webpack";
import { workOutIn } from "../../src/practice/workOut";
import { classCopy } from "../../src/workbooks/classCopy";
import { translate } from "../../src/workbooks/translate";
import { typescriptRule } from "../webpack/typescript.js";

const ROOT = join(__dirname, "../..");

/** Calls that are turned, four in each formula. */
const CALLS = 5_000;

const formulas = Array.from(
  { length: CALLS / 4 },
  (_, at) =>
    `_xldudf_QUILT_STRIPFABRIC(_xldudf_QUILT_STRIPSNEEDED(A${at + 1},_xldudf_QUILT_CUTHALFSQUARE(B${at + 1})),_xldudf_QUILT_CUTSQUARE(B${at + 1}))`,
);

/** A row for each measurement: what, milliseconds of processor time or kilobytes, and the goal. */
export async function benchClassCopies(): Promise<string> {
  const turn = () => Promise.resolve(formulas.map((formula) => translate(formula)));
  await turn();
  const file = await workbook();
  const known = formulas.map(() => [[1]]);
  const rows = [
    [`${CALLS.toLocaleString("en")} calls turned into plain formulas`, `${await timeOf(turn)} ms`, "under 1,000 ms"],
    [
      "a workbook of them copied, its values known",
      `${await timeOf(() => classCopy(file, (asked) => Promise.resolve(asked.map(() => known[0]))))} ms`,
      "",
    ],
    [
      "a workbook of them copied, every value worked out",
      `${await timeOf(() => classCopy(file, workOutIn(file)))} ms`,
      "",
    ],
    ["code of the class copy, compressed", `${(await classCopyKilobytes()).toFixed(1)} KB`, "under 40 KB"],
  ];
  return [
    "| class copies | measured | goal |",
    "| --- | ---: | ---: |",
    ...rows.map((row) => `| ${row.join(" | ")} |`),
  ].join("\n");
}

/** What a page loads to make class copies, everything included, compressed. */
export async function classCopyKilobytes(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "class-copy-code-"));
  try {
    await new Promise<void>((resolve, reject) => {
      webpack(
        {
          mode: "production",
          context: ROOT,
          entry: "./src/workbooks/classCopy/index.ts",
          output: { path: folder, filename: "code.js", library: { type: "module" } },
          experiments: { outputModule: true },
          target: ["web", "es2022"],
          resolve: { extensions: [".ts", ".js"] },
          module: { rules: [typescriptRule] },
          performance: { hints: false },
        },
        (error, stats) => {
          if (error || stats?.hasErrors()) reject(error ?? new Error(stats?.toString("errors-only")));
          else resolve();
        },
      );
    });
    return gzipSync(readFileSync(join(folder, "code.js")), { level: 9 }).length / 1024;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function workbook(): Promise<Uint8Array> {
  const file = new Workbook();
  const page = file.addWorksheet("Plan");
  formulas.forEach((formula, at) => {
    page.getCell(at + 1, 1).value = 1 + (at % 60);
    page.getCell(at + 1, 2).value = 1 + (at % 80) / 8;
    page.getCell(at + 1, 3).value = {
      formula,
      result: 1,
      shareType: "array",
      ref: `C${at + 1}`,
      isDynamicArray: true,
    };
  });
  return new Uint8Array(await file.xlsx.writeBuffer());
}

/** Milliseconds of processor time. */
async function timeOf(run: () => Promise<unknown>): Promise<string> {
  const before = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(before);
  return ((user + system) / 1000).toFixed(0);
}
