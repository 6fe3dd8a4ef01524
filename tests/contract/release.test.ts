/** A release: the folder holds what the manifests and the first page point at. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { assemble, missingFiles } from "../../scripts/release";
import { workbooks } from "../../src/workbooks";
import { builtAddin } from "./built";

const ROOT = join(__dirname, "../..");
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
      docs: join(ROOT, "docs"),
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

test.each(["functions.js", "functions.json", "pane.html", "icons/icon-80.png", "practice/index.html"])(
  "a lost %s is noticed",
  (file) => {
    const path = join(release, file);
    const content = readFileSync(path);
    rmSync(path);
    expect(missingFiles(release)).toEqual([file]);
    writeFileSync(path, content);
  },
);
