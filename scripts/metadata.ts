/** Writes manifest/functions.json, the public interface of the functions, from their doc comments. */
import { readFileSync, writeFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { parseTree } from "custom-functions-metadata";
import { worksheetFunctions } from "../functions";

const ROOT = join(__dirname, "..");
export const METADATA_FILE = join(ROOT, "manifest", "functions.json");

/** The metadata of every function as text, or an error that lists what the generator refuses or does not see. */
export function metadataText(): string {
  const folder = join(ROOT, "functions");
  const functions = readdirSync(folder)
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .flatMap((file) => {
      const parsed = parseTree(readFileSync(join(folder, file), "utf8"), file);
      const errors = parsed.extras.flatMap((extra) => extra.errors);
      if (errors.length > 0) throw new Error(`${file}: ${errors.join("; ")}`);
      return parsed.functions.map((entry) => ({ ...entry, description: summary(entry.description) }));
    });
  const described = new Set(functions.map(({ id }) => id));
  const missing = [...worksheetFunctions.keys()].filter((id) => !described.has(id));
  if (missing.length > 0) throw new Error(`@customfunction is missing in the doc comment of ${missing.join(", ")}`);
  return `${JSON.stringify({ functions }, null, 2)}\n`;
}

/** The first paragraph of a doc comment, on one line: a spreadsheet shows no more. The rules that follow are for the reference. */
function summary(comment = ""): string {
  return comment
    .split(/\n\s*\n/)[0]
    .replace(/\s+/g, " ")
    .trim();
}

if (require.main === module) {
  if (!process.argv.includes("--check")) {
    writeFileSync(METADATA_FILE, metadataText());
  } else if (readFileSync(METADATA_FILE, "utf8") !== metadataText()) {
    console.error("manifest/functions.json does not match the doc comments in functions/: run `npm run metadata`.");
    process.exitCode = 1;
  }
}
