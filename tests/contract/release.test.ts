/** A release: the folder holds what the manifests and the first page point at. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { assemble, missingFiles } from "../../scripts/release";
import { guidePage } from "../../scripts/release/guides";
import { workbooks } from "../../src/workbooks";
import { builtAddin } from "./built";

const addin = builtAddin();
let folder: string;
let release: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "piecewise-release-"));
  release = join(folder, "release");
  const made = (name: string, files: readonly string[]) => {
    mkdirSync(join(folder, name));
    for (const file of files) writeFileSync(join(folder, name, file), file);
    return join(folder, name);
  };
  assemble(
    {
      addin,
      practice: made("practice", ["index.html"]),
      workbooks: made(
        "workbooks",
        workbooks.map(({ name }) => `${name}.xlsx`),
      ),
    },
    release,
  );
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

test("nothing that is pointed at is missing", () => {
  expect(missingFiles(release)).toEqual([]);
  expect(readFileSync(join(release, "index.html"), "utf8")).toContain('href="practice/index.html"');
});

test.each([
  "functions.js",
  "functions.json",
  "pane.html",
  "icons/icon-80.png",
  "practice/index.html",
  "guides/docs/questions.html",
])("a lost %s is noticed", (file) => {
  const path = join(release, file);
  const content = readFileSync(path);
  rmSync(path);
  expect(missingFiles(release)).toContain(file);
  writeFileSync(path, content);
  expect(missingFiles(release)).toEqual([]);
});

test("a link to a heading that is not there is noticed", () => {
  const path = join(release, "guides/docs/README.html");
  const page = readFileSync(path, "utf8");
  writeFileSync(path, page.replace('href="questions.html"', 'href="questions.html#nowhere"'));
  expect(missingFiles(release)).toEqual(["guides/docs/questions.html#nowhere"]);
  writeFileSync(path, page);
});

test("a guide is a page of its own: its headings are named, its links lead to pages, and it says no script", () => {
  const page = guidePage(
    "docs/a.md",
    "# Sizes & `cuts`\n\n## Cut\n\n[Help](b.md#cut) <script>\n\n## Cut\n\n| A |\n| - |\n| <1 |\n",
  );
  expect(page).toContain("<title>Sizes &amp; cuts · Piecewise</title>");
  expect(page).toContain('<h1 id="sizes--cuts">Sizes &amp; <code>cuts</code></h1>');
  expect(page).toContain('<h2 id="cut-1">Cut</h2>');
  expect(page).toContain('<a href="b.html#cut">Help</a>');
  expect(page).toContain('<link rel="stylesheet" href="../../pane.css" />');
  expect(page).toContain("default-src 'none'");
});

test("whose programs are in it, and under which licenses, is said", () => {
  const text = readFileSync(join(release, "licenses.txt"), "utf8");
  for (const name of ["@univerjs/core", "react", "rxjs", "fflate", "@microsoft/office-js"])
    expect(text).toMatch(new RegExp(`^${name} \\d+\\.`, "m"));
  expect(text).toContain("Apache License");
  expect(text).not.toMatch(/^jest /m);
});

test("nothing is in it that no maker needs", () => {
  const files = readdirSync(release, { recursive: true, encoding: "utf8" });
  expect(files.filter((name) => /\.(map|ts|md|log)$|(^|\/)\./.test(name))).toEqual([]);
});
