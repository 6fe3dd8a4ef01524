/** Writes docs/reference/ from the same metadata that the spreadsheet reads and the check values that the tests run. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { families, worksheetName } from "../functions";
import { figures } from "../src/pictures/figures";
import { cases } from "../tests/cases/index";
import { metadataText } from "./metadata";
import { blockGuide } from "./reference/blockGuide";
import { readComments } from "./reference/comments";
import { familyPage, type FunctionMetadata, GENERATED } from "./reference/page";
import { readingHelp } from "./reference/readingHelp";

const ROOT = join(__dirname, "..");
export const REFERENCE_FOLDER = join(ROOT, "docs", "reference");

const BLOCK_LINK = "Blocks and quilts may be drawn in cells: see [Drawing blocks in cells](drawing-blocks.md).";

/** Every file of the reference by its name. */
export function referenceFiles(): Map<string, string> {
  const metadata = new Map(
    (JSON.parse(metadataText()) as { functions: FunctionMetadata[] }).functions.map((entry) => [entry.id, entry]),
  );
  const comments = readComments();
  const files = new Map<string, string>();
  const index: string[] = [];
  for (const [family, functions] of Object.entries(families)) {
    const entries = Object.keys(functions).map((name) => metadata.get(worksheetName(name))!);
    const title = family[0].toUpperCase() + family.slice(1);
    files.set(
      `${family}.md`,
      familyPage({
        family,
        title,
        functions: entries,
        comments,
        cases: cases[family] ?? [],
        figures: new Set(figures.keys()),
      }),
    );
    const list = entries.map(
      ({ id, description }) =>
        `- [${id}](${family}.md#${id.toLowerCase()}): ${description.split(". ")[0].replace(/\.$/, "")}`,
    );
    index.push(`## ${title}\n\n${list.join("\n")}`);
  }
  files.set("README.md", ["# The functions", GENERATED, readingHelp, BLOCK_LINK, ...index].join("\n\n") + "\n");
  for (const [id, draw] of figures) files.set(`figures/${id.toLowerCase()}.svg`, draw());
  for (const [name, text] of blockGuide()) files.set(name, text);
  return files;
}

if (require.main === module) {
  mkdirSync(join(REFERENCE_FOLDER, "figures"), { recursive: true });
  for (const [name, text] of referenceFiles()) writeFileSync(join(REFERENCE_FOLDER, name), text);
}
