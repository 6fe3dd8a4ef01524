/**
 * Makes everything that is published: `PIECEWISE_ADDRESS=https://quilts.example/piecewise npm run release` builds for that
 * address and writes dist/release, ready for any server of plain files, and the same as one archive, dist/release.zip.
 * `npm run release -- --store` makes the form that the vendor's store accepts. See docs/publishing.md.
 */
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, posix, relative, sep } from "node:path";
import { parseArgs } from "node:util";
import { zipSync } from "fflate";
import { workbooks } from "../src/workbooks";
import { FIRST_GUIDE, guideFiles, plainPage } from "./release/guides";
import { licensesText } from "./release/licenses";
import { publicAddress } from "./webpack/addresses";

const ROOT = join(__dirname, "..");
const RELEASE = join(ROOT, "dist/release");

/** The folder of the guides in a release. */
const GUIDES = "guides";

/** The folders that a release is put together from; the add-in is at the root of the address. */
export interface Parts {
  readonly addin: string;
  readonly practice: string;
  readonly workbooks: string;
}

/** Puts a release together in `folder`, which is emptied first. */
export function assemble({ addin, ...others }: Parts, folder: string): void {
  rmSync(folder, { recursive: true, force: true });
  cpSync(addin, folder, { recursive: true });
  for (const [name, from] of Object.entries(others)) cpSync(from, join(folder, name), { recursive: true });
  const write = (name: string, content: string | Buffer) => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  };
  for (const [name, content] of guideFiles()) write(`${GUIDES}/${name}`, content);
  write("licenses.txt", licensesText());
  write("index.html", startPage());
}

/** Addresses in the manifests of a release, and links of its pages, for which there is no file or no heading. */
export function missingFiles(folder: string): string[] {
  const xml = readFileSync(join(folder, "manifest.xml"), "utf8");
  const base = /<SourceLocation DefaultValue="([^"]*)\/pane\.html"/.exec(xml)?.[1];
  if (base === undefined) return ["the address of pane.html in manifest.xml"];
  const both = xml + readFileSync(join(folder, "manifest.json"), "utf8");
  const named = [...both.matchAll(/"(https:[^"]*)"/g)].map(([, address]) => address);
  const own = named
    .filter((address) => address.startsWith(`${base}/`))
    .map((address) => address.slice(base.length + 1));
  const pages = ["index.html", "about.html", ...[...guideFiles().keys()].map((name) => `${GUIDES}/${name}`)];
  const links = pages.filter((name) => name.endsWith(".html")).flatMap((name) => linksOf(folder, name));
  return [...new Set([...own, ...links])].filter((link) => !isThere(folder, link));
}

/** What a page points at within the release: paths from its root, with the heading that is meant. */
function linksOf(folder: string, page: string): string[] {
  if (!existsSync(join(folder, page))) return [page];
  const links = [...readFileSync(join(folder, page), "utf8").matchAll(/ (?:href|src)="([^"]*)"/g)].map(([, to]) => to);
  return links
    .filter((to) => !/^\w+:/.test(to))
    .map((to) => (to.startsWith("#") ? page + to : posix.join(posix.dirname(page), to)));
}

function isThere(folder: string, link: string): boolean {
  const [path, heading] = link.split("#");
  const file = join(folder, path);
  if (!existsSync(file)) return false;
  return !heading || !path.endsWith(".html") || readFileSync(file, "utf8").includes(` id="${heading}"`);
}

function startPage(): string {
  const books = workbooks.map(({ name, title }) => `<li><a href="workbooks/${name}.xlsx">${title}</a></li>`);
  return plainPage("Piecewise", {
    up: "",
    styles: ["pane.css"],
    kind: "about-page",
    body: `<main>
      <h1>Piecewise: quilting functions for spreadsheets</h1>
      <p><a href="practice/index.html">Open the practice sheet</a>, which needs nothing but this browser.</p>
      <p>For Excel: <a href="manifest.xml" download>download the add-in file</a>, and read <a href="${GUIDES}/docs/publishing.html">how to load it</a>.</p>
      <h2>Workbooks to start from</h2>
      <ul>
        ${books.join("\n        ")}
      </ul>
      <p><a href="pane.html">All functions</a> · <a href="${GUIDES}/${FIRST_GUIDE}">Guides</a> · <a href="about.html">About</a> · <a href="licenses.txt">Licenses</a></p>
    </main>`,
  });
}

/** Every file below a folder, by its path from there. */
function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
    statSync(join(folder, name)).isFile(),
  );
}

function run(program: string, ...words: string[]): void {
  const { status } = spawnSync(process.execPath, [join(ROOT, program), ...words], { cwd: ROOT, stdio: "inherit" });
  if (status !== 0) throw new Error("The release was not made: a step before it failed, as said above.");
}

function main(): void {
  const { values } = parseArgs({ options: { store: { type: "boolean" } } });
  publicAddress();
  if (!process.env.PIECEWISE_ADDRESS)
    console.warn(
      "PIECEWISE_ADDRESS is not set: this release is for https://localhost:3000, to try it on one computer.",
    );
  const building = join(ROOT, "dist/releasing");
  rmSync(building, { recursive: true, force: true });
  const webpack = (bundle: string, ...words: string[]) => {
    const to = ["--output-path", join(building, bundle)];
    run("node_modules/webpack/bin/webpack.js", "--mode", "production", "--config-name", bundle, ...to, ...words);
  };
  webpack("addin", ...(values.store ? ["--env", "store"] : []));
  webpack("practice");
  run("node_modules/tsx/dist/cli.mjs", "scripts/workbooks.ts");
  mkdirSync(RELEASE, { recursive: true });
  assemble(
    {
      addin: join(building, "addin"),
      practice: join(building, "practice"),
      workbooks: join(ROOT, "dist/workbooks"),
    },
    RELEASE,
  );
  rmSync(building, { recursive: true });
  const missing = missingFiles(RELEASE);
  if (missing.length > 0) throw new Error(`The release lacks ${missing.join(", ")}.`);
  const files = filesBelow(RELEASE);
  const content = files.map((name) => [name.split(sep).join("/"), readFileSync(join(RELEASE, name))] as const);
  writeFileSync(`${RELEASE}.zip`, zipSync(Object.fromEntries(content)));
  console.log(`${relative(ROOT, RELEASE)} and ${relative(ROOT, RELEASE)}.zip: ${files.length} files`);
}

if (require.main === module) {
  try {
    main();
  } catch (problem) {
    console.error((problem as Error).message);
    process.exitCode = 1;
  }
}
