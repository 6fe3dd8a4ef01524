/** The shape of a check value: what is typed, what the cell shows, and who says so. */
import type { SourceKey } from "./sources";

export type Gives = number | string | boolean | (number | string | boolean | null)[][];

export interface Case {
  /** Registered name, without the namespace. */
  call: string;
  /** What stands in the argument cells; null is an argument left out. */
  cells: unknown[];
  /** What the cell shows; in a table, null is a cell that the source says nothing about. */
  gives?: Gives;
  /** The cell error, and a part of its sentence. */
  fails?: "#VALUE!" | "#N/A";
  says?: string;
  /** Half the last digit that the source prints; 1e-9 where left out. */
  within?: number;
  /** Who says so; "derived" needs the arithmetic in the note, the last two say where the value stands without a source. */
  source: SourceKey | "derived" | "common practice" | "from memory";
  /** Page, section, case or arithmetic. */
  note?: string;
  /** The label of a case to show as an example in the reference. */
  example?: string;
}
