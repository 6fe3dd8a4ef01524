/** Writes docs/reference/ from the same metadata that the spreadsheet reads and the check values that the tests run. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { families, worksheetName } from "../functions";
import { figures } from "../src/pictures/figures";
import { cases } from "../tests/cases/index";
import { metadataText } from "./metadata";
import { familyPage, type FunctionMetadata, GENERATED } from "./reference/page";
import { readingHelp } from "./reference/readingHelp";

const ROOT = join(__dirname, "..");
export const REFERENCE_FOLDER = join(ROOT, "docs", "reference");

/** Every file of the reference by its name. */
export function referenceFiles(): Map<string, string> {
  const metadata = new Map(
    (JSON.parse(metadataText()) as { functions: FunctionMetadata[] }).functions.map((entry) => [entry.id, entry]),
  );
  const returns = readReturns();
  const files = new Map<string, string>();
  const index: string[] = [];
  for (const [family, functions] of Object.entries(families)) {
    const entries = Object.keys(functions).map((name) => metadata.get(worksheetName(name)));
    const title = family[0]!.toUpperCase() + family.slice(1);
    files.set(
      `${family}.md`,
      familyPage({
        family,
        title,
        functions: entries.filter((entry) => entry !== undefined),
        returns,
        cases: cases[family] ?? [],
        figures: new Set(figures.keys()),
      }),
    );
    const list = entries.map((entry) => {
      const { id, description } = entry!;
      return `- [${id}](${family}.md#${id.toLowerCase()}): ${description.split(". ")[0]!.replace(/\.$/, "")}`;
    });
    index.push(`## ${title}\n\n${list.join("\n")}`);
  }
  files.set("README.md", ["# The functions", GENERATED, readingHelp, ...index].join("\n\n") + "\n");
  for (const [id, draw] of figures) files.set(`figures/${id.toLowerCase()}.svg`, draw());
  return files;
}

/** The `@returns` text of every worksheet function, which the metadata leaves out. */
function readReturns(): Map<string, string> {
  const returns = new Map<string, string>();
  const folder = join(ROOT, "functions");
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".ts"))) {
    const source = ts.createSourceFile(file, readFileSync(join(folder, file), "utf8"), ts.ScriptTarget.Latest, true);
    source.forEachChild((node) => {
      if (!ts.isFunctionDeclaration(node) || node.name === undefined) return;
      const tag = ts.getJSDocReturnTag(node);
      const text = ts.getTextOfJSDocComment(tag?.comment);
      if (text) returns.set(worksheetName(node.name.text), text.replace(/\s+/g, " "));
    });
  }
  return returns;
}

if (require.main === module) {
  mkdirSync(join(REFERENCE_FOLDER, "figures"), { recursive: true });
  for (const [name, text] of referenceFiles()) writeFileSync(join(REFERENCE_FOLDER, name), text);
}
