/** The reference is what the functions say, and every formula in the guides gives what stands beside it. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { REFERENCE_FOLDER, referenceFiles } from "../../scripts/docs";
import { Evaluator } from "../../src/practice/evaluate";

const ROOT = join(__dirname, "..", "..");
const GUIDES = [
  "README.md",
  "DEVELOPERS.md",
  ...readdirSync(join(ROOT, "docs"))
    .filter(isPage)
    .map((name) => `docs/${name}`),
];
const GIVES = /`(=[^`]+)`\s+gives\s+`([^`]+)`/g;

function isPage(name: string): boolean {
  return name.endsWith(".md");
}

describe("docs/reference", () => {
  const files = referenceFiles();

  test.each([...files.keys()])("%s is as generated (npm run docs)", (name) => {
    const path = join(REFERENCE_FOLDER, name);
    expect(existsSync(path)).toBe(true);
    expect(readFileSync(path, "utf8")).toBe(files.get(name));
  });

  test("holds nothing else", () => {
    const found = readdirSync(REFERENCE_FOLDER, { recursive: true, encoding: "utf8" });
    const known = new Set([...files.keys(), "figures"]);
    expect(found.map((name) => name.replace(/\\/g, "/")).filter((name) => !known.has(name))).toEqual([]);
  });
});

describe("guides", () => {
  const evaluator = new Evaluator();
  afterAll(() => {
    evaluator.dispose();
  });

  const promises = GUIDES.flatMap((guide) =>
    [...readFileSync(join(ROOT, guide), "utf8").matchAll(GIVES)].map(([, formula, gives]) => ({
      guide,
      formula,
      gives,
    })),
  );

  test("promise answers to formulas", () => {
    expect(promises.length).toBeGreaterThan(20);
  });

  test.each(promises)("$guide: $formula gives $gives", async ({ formula, gives }) => {
    const outcome = await evaluator.evaluate(formula);
    expect("value" in outcome && String(outcome.value)).toBe(gives);
  });

  test.each(GUIDES)("%s links to files that are there", (guide) => {
    const folder = join(ROOT, guide, "..");
    const links = [...readFileSync(join(ROOT, guide), "utf8").matchAll(/\]\((?!https?:)([^)#]+)/g)].map(
      ([, link]) => link,
    );
    expect(links.filter((link) => !existsSync(join(folder, link)))).toEqual([]);
  });
});
