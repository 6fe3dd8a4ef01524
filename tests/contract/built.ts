/** The built add-in. `npm test` builds it before the tests; a test run by itself builds its own where that one is old. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const ROOT = join(__dirname, "../..");
const BUILT = join(ROOT, "dist/addin");
const SOURCES = ["functions", "src/math", "src/pane", "src/pictures", "src/workbooks", "manifest", "scripts/webpack"];

/** The folder of the built add-in. */
export function builtAddin(): string {
  return isFresh() ? BUILT : buildAddin({});
}

/** Builds the add-in into a folder of its own, which goes when the tests of this file end. */
export function buildAddin({ address, store = false }: { address?: string; store?: boolean }): string {
  const folder = mkdtempSync(join(tmpdir(), "piecewise-"));
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });
  const webpack = join(ROOT, "node_modules/webpack-cli/bin/cli.js");
  const options = ["--mode", "production", "--config-name", "addin", "--output-path", folder];
  const env = { ...process.env, PIECEWISE_ADDRESS: address ?? "" };
  execFileSync(process.execPath, [webpack, ...options, ...(store ? ["--env", "store"] : [])], {
    cwd: ROOT,
    env,
    stdio: ["ignore", "ignore", "inherit"],
  });
  return folder;
}

function isFresh(): boolean {
  const script = join(BUILT, "functions.js");
  if (!existsSync(script)) return false;
  const built = statSync(script).mtimeMs;
  return SOURCES.every((source) =>
    readdirSync(join(ROOT, source), { recursive: true, encoding: "utf8" }).every(
      (name) => statSync(join(ROOT, source, name)).mtimeMs <= built,
    ),
  );
}
