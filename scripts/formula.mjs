/** `npm run formula`: makes sure that the program behind it is there, then runs it. See scripts/formula.ts. */
import { createRequire } from "node:module";
import { ensureBuilt } from "./build.mjs";
import { ensureInstalled } from "./install.mjs";

const PROGRAM = {
  what: "the formula command",
  config: "scripts/webpack/formula.js",
  made: "node_modules/.cache/piecewise/formula",
  from: [
    "src/practice",
    "src/math",
    "functions",
    "manifest/functions.json",
    "scripts/formula.ts",
    "scripts/webpack/typescript.js",
  ],
};

try {
  ensureInstalled();
  ensureBuilt(PROGRAM);
  createRequire(import.meta.url)(`../${PROGRAM.made}/formula.cjs`);
} catch (problem) {
  console.error(problem.message);
  process.exitCode = 1;
}
