/** Outcomes as they are kept, told and written into the guide. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Fate } from "./messages";
import { type Mutant, ROOT } from "./sandbox";

/** A mutant with its fate; none where it was not drawn. */
export interface Kept extends Mutant {
  readonly fate?: Fate;
  readonly by?: string;
}

const GUIDE = join(ROOT, "docs/mutation.md");
const HEADING = "## Result\n";

/** The same mutant in the next run, as long as its line does not move. */
export function keyOf({ file, line, mutator, original, replacement }: Mutant): string {
  return [file, line, mutator, original, replacement].join(" ");
}

export function survives({ fate }: Pick<Kept, "fate">): boolean {
  return fate === "survived" || fate === "not reached";
}

export function survivorLines(kept: readonly Kept[]): string[] {
  return kept.filter(survives).map(({ file, line, mutator, original, replacement, fate }) => {
    const short = (text: string) => text.replace(/\s+/g, " ").slice(0, 100);
    return `${file}:${line} ${fate === "survived" ? "" : "[not reached] "}${mutator}: ${short(original)} -> ${short(replacement)}`;
  });
}

/** Writes the table of the guide, one line a file. */
export function writeTable(kept: readonly Kept[]): void {
  const count = (group: readonly Kept[]) => {
    const of = (fate: Fate) => group.filter((mutant) => mutant.fate === fate).length;
    const tried = group.filter(({ fate }) => fate !== undefined).length;
    const dead = of("killed") + of("timeout");
    const built = tried - of("refused");
    const rate = built === 0 ? "" : `${((100 * dead) / built).toFixed(1)} %`;
    return [group.length, tried, of("refused"), of("killed"), of("timeout"), of("survived"), of("not reached"), rate];
  };
  const files = [...new Set(kept.map(({ file }) => file))].sort();
  const rows = files.map((file) => [file, ...count(kept.filter((mutant) => mutant.file === file))]);
  const table = [
    ["file", "mutants", "tried", "refused", "killed", "endless", "survived", "not reached", "killed or endless"],
    ["---", ...Array<string>(8).fill("---:")],
    ...rows,
    ["**all**", ...count(kept)],
  ].map((cells) => `| ${cells.join(" | ")} |`);
  if (!existsSync(GUIDE)) return;
  const [before, after] = readFileSync(GUIDE, "utf8").split(HEADING);
  const rest = after.slice(after.indexOf("\n## "));
  writeFileSync(GUIDE, `${before}${HEADING}\n${table.join("\n")}\n${rest}`);
}
