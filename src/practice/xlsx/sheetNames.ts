/** Names of sheets. The grid takes some that no file may hold, and in the file those sheets get others. */
import { tokenize } from "@borgar/fx";

const LONGEST = 31;

/** Spreadsheet programs keep this name for themselves. */
const RESERVED = "history";

/** The names of the same sheets in a file, in the same order; names that may stay are unchanged. */
export function namesInFile(names: readonly string[]): string[] {
  const taken = new Set([RESERVED]);
  const stays = names.map((name) => fitted(name) === name && take(name));
  return names.map((name, index) => (stays[index] ? name : free(fitted(name))));

  /** Takes a name, unless another sheet has it; capitals make no difference. */
  function take(name: string): boolean {
    const isFree = !taken.has(name.toLowerCase());
    taken.add(name.toLowerCase());
    return isFree;
  }

  function free(name: string): string {
    let tried = name;
    for (let number = 2; !take(tried); number++) tried = `${name.slice(0, LONGEST - ` ${number}`.length)} ${number}`;
    return tried;
  }
}

/** The sheets that have another name in the file: their names in the grid, each with that in the file. */
export function renamedSheets(names: readonly string[]): Map<string, string> {
  const inFile = namesInFile(names);
  return new Map(
    names.flatMap((name, index): [string, string][] => (inFile.includes(name) ? [] : [[name, inFile[index]]])),
  );
}

/** A name that a file may hold, whether or not another sheet has it. */
function fitted(name: string): string {
  const allowed = name.replace(/[*?:/\\[\]\p{Cc}]/gu, "-").slice(0, LONGEST);
  return allowed.replace(/\p{Cs}/gu, "").replace(/^'+|'+$/g, "") || "Sheet";
}

/** The sheet that a reference names, as far as its exclamation mark. */
const SHEET = /^('(?:[^']|'')*'|[^'!]+)!/;

/** A formula in which sheets are called by other names; it may start with an equals sign. */
export function withSheetsRenamed(formula: string, names: ReadonlyMap<string, string>): string {
  if (names.size === 0) return formula;
  return tokenize(formula)
    .map(({ type, value }) => (type.startsWith("range") ? value.replace(SHEET, renamed) : value))
    .join("");

  function renamed(before: string, name: string): string {
    const other = names.get(name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name);
    return other === undefined ? before : `'${other.replaceAll("'", "''")}'!`;
  }
}
