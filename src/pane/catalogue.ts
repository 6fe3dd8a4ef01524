/** What the pane tells about the functions: made at build time from their doc comments, check values and own answers. */

export interface Family {
  /** Name of the file, such as "patches". */
  name: string;
  title: string;
  about: string;
  functions: FunctionEntry[];
}

export interface FunctionEntry {
  /** Registered name, without the namespace. */
  id: string;
  description: string;
  /** How the function decides, a paragraph each. */
  rules: string[];
  /** What the cell shows. */
  gives: string;
  parameters: ParameterEntry[];
  examples: Example[];
  /** What a number that the cell shows measures; a count or money if left out. */
  measures?: "length" | "fabric";
  /** Who gives the numbers that the function is checked against. */
  sources: string[];
}

export interface ParameterEntry {
  name: string;
  description: string;
  optional?: boolean;
  takes: Takes;
  /** What is taken where nothing is given, by unit, as a sentence shows it. */
  usual: { in?: string; cm?: string };
}

/** What may stand in an argument. */
export type Takes =
  | { kind: "length" | "number" | "text" | "range" | "units" }
  | { kind: "flag"; usual: boolean }
  | { kind: "choice"; choices: string[] };

export interface Example {
  /** What the example is about; empty where the formula says it all. */
  label: string;
  formula: string;
  shows: Shown | Shown[][];
}

export type Shown = number | string | boolean;

export type Measures = FunctionEntry["measures"];

/** What its numbers measure, so that they read as on a ruler; those of every table are lengths, amounts and counts. */
export function measuresOf({ measures, examples }: FunctionEntry): Measures {
  return measures ?? (examples.some(({ shows }) => Array.isArray(shows)) ? "length" : undefined);
}

/** Every function of every family, by its name. */
export function byId(families: readonly Family[]): Map<string, FunctionEntry> {
  return new Map(families.flatMap(({ functions }) => functions.map((entry) => [entry.id, entry])));
}
