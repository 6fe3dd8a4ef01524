/** Builds one bundle with webpack where it is missing or older than what it is made from. */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./install.mjs";

/**
 * @param {{ what: string, config: string, made: string, from: string[] }} bundle
 *   `config` is the webpack configuration, `made` the folder it makes, `from` the files and folders it is made from
 * @throws Error with a sentence for the reader where building fails
 */
export function ensureBuilt({ what, config, made, from }) {
  const folder = join(ROOT, made);
  const sources = [config, "package-lock.json", ...from].map((path) => newest(join(ROOT, path)));
  if (newest(folder) >= Math.max(...sources)) return;
  console.error(`Building ${what}. This takes half a minute, and again after each change of the source.`);
  // Made beside its place and moved there whole: what is there keeps working meanwhile.
  const fresh = `${folder}-${process.pid}`;
  mkdirSync(fresh, { recursive: true });
  const webpack = join(ROOT, "node_modules/webpack/bin/webpack.js");
  const words = ["--mode", "production", "--stats", "errors-only"];
  const places = ["--config", join(ROOT, config), "--output-path", fresh];
  const run = spawnSync(process.execPath, [webpack, ...words, ...places], { cwd: ROOT, stdio: ["ignore", 2, 2] });
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

/** When a file, or anything in a folder, was changed last; 0 where there is none. */
function newest(path) {
  const own = statSync(path, { throwIfNoEntry: false });
  if (!own?.isDirectory()) return own?.mtimeMs ?? 0;
  return Math.max(own.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}
