/** Installs the packages this project stands on, where they are missing or older than the lockfile. Plain Node only. */
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));

/** What npm writes last, once everything is in place. */
const INSTALLED = join(ROOT, "node_modules", ".package-lock.json");
const LOCKFILE = join(ROOT, "package-lock.json");

/** Leaves node_modules complete, or ends the program with a plain sentence. Messages go to standard error. */
export function ensureInstalled() {
  if (existsSync(INSTALLED) && statSync(INSTALLED).mtimeMs >= statSync(LOCKFILE).mtimeMs) return;
  console.error("Installing packages (the first time this takes a minute or two) ...");
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  const { status } = spawnSync(npm, ["ci", "--no-audit", "--no-fund"], {
    cwd: ROOT,
    stdio: ["ignore", 2, "inherit"],
    shell: process.platform === "win32",
  });
  if (status !== 0) {
    console.error("The packages could not be installed. Look at npm's message above; is this machine online?");
    process.exit(1);
  }
}
