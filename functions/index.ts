/** The families of worksheet functions: walked by registration, the practice sheet, tests and docs. */
import * as backing from "./backing";
import * as borders from "./borders";
import * as length from "./length";
import * as patches from "./patches";
import * as strips from "./strips";

/** A worksheet function as the host calls it. */
export type WorksheetFunction = (...cells: any[]) => any;

/** One file of functions each, in the order in which the reference shows them. */
export const families: Record<string, Record<string, WorksheetFunction>> = {
  length,
  patches,
  strips,
  borders,
  backing,
};

/** The name under which a function is registered: cutHalfSquare is CUTHALFSQUARE. */
export function worksheetName(name: string): string {
  return name.toUpperCase();
}

/** Every worksheet function by its registered name, without the namespace. */
export const worksheetFunctions: ReadonlyMap<string, WorksheetFunction> = new Map(
  Object.values(families).flatMap((family) =>
    Object.entries(family).map(([name, run]): [string, WorksheetFunction] => [worksheetName(name), run]),
  ),
);
