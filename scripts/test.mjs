/** `npm test`: every check of the project, in the order in which a failure is cheapest to learn. Arguments go to jest. */
import { spawnSync } from "node:child_process";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";
import { ensureInstalled } from "./install.mjs";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const PROGRAMS = join(ROOT, "node_modules", ".bin");

const CHECKS = [
  ["eslint .", "The code breaks a lint rule."],
  ["prettier --check --log-level warn .", "Some files are not formatted: run `npx prettier --write` on them."],
  ["tsc --noEmit", "The types do not fit."],
  ["tsx scripts/metadata.ts --check", "The committed metadata is not that of the functions."],
  ["npm run --silent build", "The build failed."],
];

/** Runs a program of node_modules, or npm, with its output as it comes. */
function run([program, ...args]) {
  const env = { ...process.env, PATH: `${PROGRAMS}${delimiter}${process.env.PATH}` };
  const shell = process.platform === "win32";
  return spawnSync(program, args, { cwd: ROOT, env, shell, stdio: "inherit" }).status === 0;
}

ensureInstalled();
for (const [command, sentence] of CHECKS) {
  console.log(`> ${command}`);
  if (!run(command.split(" "))) {
    console.error(`${sentence} The tests were not run.`);
    process.exit(1);
  }
}
if (!run(["jest", ...process.argv.slice(2)])) process.exitCode = 1;
