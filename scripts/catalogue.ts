/**
 * Gathers what is known of each function from its one source: arguments from the metadata, rules and results from the doc
 * comments, examples from the check values, worked out by the function itself.
 */
import { families, worksheetFunctions, worksheetName } from "../functions";
import { standInForHost } from "../functions/standIn";
import type { Example, Family, Shown } from "../src/pane/catalogue";
import type { Case } from "../tests/cases";
import { cases } from "../tests/cases/index";
import { metadataText } from "./metadata";
import { familyTitle, readComments } from "./reference/comments";
import { formula, type FunctionMetadata } from "./reference/page";

export const NAMESPACE = "QUILT";

/** Every family with its functions, in the order of functions/index.ts. */
export function catalogue(): Family[] {
  standInForHost();
  const { functions } = JSON.parse(metadataText()) as { functions: FunctionMetadata[] };
  const metadata = new Map(functions.map((entry) => [entry.id, entry]));
  const comments = readComments();
  return Object.entries(families).map(([name, members]) => ({
    name,
    ...familyTitle(name),
    functions: Object.keys(members).map((member) => {
      const id = worksheetName(member);
      const { description, parameters } = metadata.get(id)!;
      const { rules, returns } = comments.get(id)!;
      const rows = (cases[name] ?? []).filter((row) => row.call === id && row.fails === undefined);
      return { id, description, rules, gives: returns, parameters, examples: examples(rows) };
    }),
  }));
}

/** The check values that carry a label, or else the first one. */
function examples(rows: Case[]): Example[] {
  const labeled = rows.filter((row) => row.example !== undefined);
  return (labeled.length > 0 ? labeled : rows.slice(0, 1)).map((row) => ({
    label: row.example ?? "",
    formula: formula(row),
    shows: worksheetFunctions.get(row.call)!(...row.cells) as Shown | Shown[][],
  }));
}
