/** What comes from elsewhere: pinned, permissive where it reaches a maker, and installed without running anything. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import lockfile from "../../package-lock.json";
import manifest from "../../package.json";

interface Locked {
  version?: string;
  license?: string;
  dev?: boolean;
  hasInstallScript?: boolean;
}

const ROOT = join(__dirname, "..", "..");
const locked = Object.entries(lockfile.packages as Record<string, Locked>).filter(([path]) => path !== "");

/** Licenses that let anyone use, change and pass on the programs that ship them. */
const PERMISSIVE = ["MIT", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "ISC", "0BSD"];

/** Packages that bring an install script which nothing here needs: each works when scripts are switched off. */
const SCRIPTS_NOT_NEEDED = ["@parcel/watcher", "@swc/core", "core-js-pure", "esbuild", "protobufjs"];

function licenseOf(path: string, { license }: Locked): string {
  if (license !== undefined) return license;
  const text = readFileSync(join(ROOT, path, "LICENSE"), "utf8");
  return /Apache License\s+Version 2\.0/.test(text) ? "Apache-2.0" : "unknown";
}

test("every direct dependency is pinned to one version", () => {
  const wanted = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
  expect(wanted.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});

test("what reaches a maker has a permissive license", () => {
  const shipped = locked.filter(([, entry]) => entry.dev !== true);
  expect(shipped.length).toBeGreaterThan(10);
  const others = shipped.filter(([path, entry]) => !PERMISSIVE.includes(licenseOf(path, entry)));
  expect(others.map(([path]) => path)).toEqual([]);
});

test("no install script is needed but known ones that may stay off", () => {
  const names = locked
    .filter(([, entry]) => entry.hasInstallScript)
    .map(([path]) => path.replace(/^.*node_modules\//, ""));
  expect(names.filter((name) => !SCRIPTS_NOT_NEEDED.includes(name))).toEqual([]);
});
