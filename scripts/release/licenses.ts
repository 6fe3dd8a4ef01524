/** The licenses of the programs of others that a release contains. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import lockfile from "../../package-lock.json";

const ROOT = join(__dirname, "../..");

/** Handed out with the pages, though nothing is built from it. */
const COPIED = ["node_modules/@microsoft/office-js"];

interface Locked {
  version?: string;
  license?: string;
  dev?: boolean;
}

/** A list of the packages, and each license text once, with those that it belongs to. */
export function licensesText(): string {
  const locked = Object.entries(lockfile.packages as Record<string, Locked>);
  const shipped = locked.filter(([path, { dev }]) => path !== "" && (dev !== true || COPIED.includes(path)));
  const byText = new Map<string, string[]>();
  for (const [path, { version, license }] of shipped) {
    const name = `${path.replace(/^.*node_modules\//, "")} ${version}`;
    const text =
      textsOf(path) || `${license}, as its package says. The text of this license stands with other packages here.`;
    byText.set(text, [...(byText.get(text) ?? []), name]);
  }
  const parts = [...byText].map(([text, names]) => `${names.join("\n")}\n\n${text}`);
  return [
    "Piecewise contains or is handed out with these programs of others, under these licenses.",
    readFileSync(join(ROOT, "LICENSE"), "utf8").replace(/^/, "Piecewise itself\n\n").trim(),
    ...parts,
  ].join(`\n\n${"-".repeat(80)}\n\n`);
}

function textsOf(path: string): string {
  const folder = join(ROOT, path);
  if (!existsSync(folder)) return "";
  const files = readdirSync(folder).filter((name) => /^(licen[cs]e|notice|copying)/i.test(name));
  return files.map((name) => readFileSync(join(folder, name), "utf8").replaceAll("\r\n", "\n").trim()).join("\n\n");
}
