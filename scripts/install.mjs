/** Installs the packages this project stands on, where they are missing or not those of the lockfile. Plain Node only. */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = fileURLToPath(new URL("..", import.meta.url));

/** Leaves node_modules complete, or ends the program with a plain sentence. Messages go to standard error. */
export function ensureInstalled() {
  if (isComplete()) return;
  console.error("Installing packages (the first time this takes a minute or two) ...");
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  // Errors only: a package that asks for a newer Node than ours runs on it, as the tests show, and a maker would read a failure.
  const { status } = spawnSync(npm, ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: ROOT,
    stdio: ["ignore", 2, "inherit"],
    shell: process.platform === "win32",
  });
  if (status !== 0) {
    console.error("The packages could not be installed. Look at npm's message above; is this machine online?");
    process.exit(1);
  }
}

/** Whether each package of the lockfile is here in its version. Dates tell nothing: a checkout changes them. */
function isComplete() {
  // npm writes this last, once everything is in place.
  const installed = join(ROOT, "node_modules", ".package-lock.json");
  if (!existsSync(installed)) return false;
  const present = packagesOf(installed);
  return Object.entries(packagesOf(join(ROOT, "package-lock.json"))).every(
    // Packages for other systems are optional and may be absent.
    ([path, { version, optional }]) => path === "" || optional || present[path]?.version === version,
  );
}

function packagesOf(lockfile) {
  return JSON.parse(readFileSync(lockfile, "utf8")).packages;
}
