/** The families of worksheet functions: walked by registration, the practice sheet, tests and docs. */
import * as backing from "./backing";
import * as batting from "./batting";
import * as binding from "./binding";
import * as blocks from "./blocks";
import * as quilts from "./quilts";
import * as borders from "./borders";
import * as bundles from "./bundles";
import * as checks from "./checks";
import * as costing from "./costing";
import * as length from "./length";
import * as plans from "./plans";
import * as panels from "./panels";
import * as patches from "./patches";
import * as sewn from "./sewn";
import * as settings from "./settings";
import * as shapes from "./shapes";
import * as strips from "./strips";
import * as thread from "./thread";
import * as tubes from "./tubes";
import * as yardage from "./yardage";

/** A worksheet function as the host calls it. */
export type WorksheetFunction = (...cells: any[]) => any;

/** One file of functions each, in the order in which the reference shows them. */
export const families: Record<string, Record<string, WorksheetFunction>> = {
  length,
  patches,
  shapes,
  sewn,
  strips,
  bundles,
  tubes,
  yardage,
  plans,
  panels,
  blocks,
  quilts,
  settings,
  borders,
  backing,
  batting,
  binding,
  costing,
  thread,
  checks,
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
