/** What the pane and the reference tell about the functions. */

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
}

export interface ParameterEntry {
  name: string;
  description: string;
  optional?: boolean;
}

export interface Example {
  /** What the example is about; empty where the formula says it all. */
  label: string;
  formula: string;
  shows: Shown | Shown[][];
}

export type Shown = number | string | boolean;
