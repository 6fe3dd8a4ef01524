/** `npm run class-copy`: makes sure that the packages are there, then runs the program. See scripts/classCopy.ts. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { ensureInstalled, ROOT } from "./install.mjs";

ensureInstalled();
const program = join(ROOT, "scripts/classCopy.ts");
const run = spawnSync(process.execPath, ["--import", "tsx", program, ...process.argv.slice(2)], {
  cwd: ROOT,
  stdio: "inherit",
});
process.exitCode = run.status ?? 1;
