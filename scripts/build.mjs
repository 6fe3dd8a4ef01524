/** Builds one bundle with webpack where it is missing or older than what it is made from. */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { ROOT } from "./install.mjs";

/**
 * @param {{ what: string, config: string, made: string, from: string[] }} bundle
 *   `config` is the webpack configuration, `made` the folder it makes, `from` the files and folders it is made from
 * @throws Error with a sentence for the reader where building fails
 */
export function ensureBuilt({ what, config, made, from }) {
  const folder = join(ROOT, made);
  if (changed(folder) >= Math.max(...[config, "package-lock.json", ...from].map((path) => newest(join(ROOT, path)))))
    return;
  console.error(`Building ${what}. This takes half a minute, and again after each change of the source.`);
  mkdirSync(dirname(folder), { recursive: true });
  // Made beside its place and moved there whole: what is there keeps working meanwhile.
  const fresh = mkdtempSync(`${folder}-`);
  const webpack = join(ROOT, "node_modules/webpack/bin/webpack.js");
  const words = [
    "--mode",
    "production",
    "--config",
    join(ROOT, config),
    "--output-path",
    fresh,
    "--stats",
    "errors-only",
  ];
  const run = spawnSync(process.execPath, [webpack, ...words], { cwd: ROOT, stdio: ["ignore", 2, 2] });
  if (run.status !== 0) {
    rmSync(fresh, { recursive: true });
    throw new Error(`${what} could not be built; what is wrong stands above.`);
  }
  try {
    rmSync(folder, { recursive: true, force: true });
    renameSync(fresh, folder);
  } catch {
    // Another run has put its own there meanwhile, which is as good.
    rmSync(fresh, { recursive: true });
  }
}

/** When a file was changed, or 0 where there is none. */
function changed(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

/** When a file, or anything in a folder, was changed last. */
function newest(path) {
  const own = statSync(path);
  if (!own.isDirectory()) return own.mtimeMs;
  return Math.max(own.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}
