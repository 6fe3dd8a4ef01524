/**
 * Gathers what is known of each function from its one source: arguments from the metadata, rules and results from the doc
 * comments, examples from the check values, worked out by the function itself.
 */
import { families, worksheetFunctions, worksheetName } from "../functions";
import { standInForHost } from "../functions/standIn";
import type { Example, Family, ParameterEntry, Shown } from "../src/pane/catalogue";
import type { Case } from "../tests/cases";
import { cases } from "../tests/cases/index";
import { type Source, type SourceKey, SOURCES } from "../tests/sources";
import { metadataText } from "./metadata";
import { familyTitle, readComments } from "./reference/comments";
import { formula, type FunctionMetadata } from "./reference/page";
import { measures, plainName, takes, usuals } from "./takes";

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
      const rows = Object.values(cases)
        .flat()
        .filter((row) => row.call === id && row.fails === undefined);
      return {
        id,
        description,
        rules,
        gives: returns,
        parameters: describeParameters(id, parameters, rows),
        measures: measures(
          id,
          rows.map(({ cells }) => cells),
        ),
        examples: examples(rows),
        sources: sources(rows),
      };
    }),
  }));
}

function describeParameters(id: string, parameters: FunctionMetadata["parameters"], rows: Case[]): ParameterEntry[] {
  const calls = rows.map(({ cells }) => parameters.map((_, index) => cells[index] ?? null));
  const taken = parameters.map((parameter, index) => takes(id, parameter, index, calls));
  const usual = { in: usuals(id, parameters, taken, calls, "in"), cm: usuals(id, parameters, taken, calls, "cm") };
  // What follows from another argument, such as a depth from the unit's length, stands in no description as a number.
  const stated = ({ name, description }: { name: string; description: string }, units: "in" | "cm") => {
    const value = usual[units].get(plainName(name));
    const [first = ""] = value?.toLowerCase().split(" ") ?? [];
    return value !== undefined && description.toLowerCase().includes(first) ? value : undefined;
  };
  return parameters.map((parameter, index) => ({
    name: parameter.name,
    description: parameter.description,
    ...(parameter.optional ? { optional: true } : {}),
    takes: taken[index],
    usual: { in: stated(parameter, "in"), cm: stated(parameter, "cm") },
  }));
}

/** The published sources among those of the check values. */
function sources(rows: Case[]): string[] {
  const keys = new Set(rows.map(({ source }) => source));
  const published = [...keys].flatMap((key) => {
    if (!(key in SOURCES)) return [];
    const { author, title, year, where }: Source = SOURCES[key as SourceKey];
    return [`${author}: ${title}${year ? `, ${year}` : ""}${where ? ` (${where})` : ""}`];
  });
  return keys.has("common practice") ? [...published, "Common practice of the trade"] : published;
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
