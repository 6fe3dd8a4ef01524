/** The plain twins: each worksheet function that built-in functions can answer, written in built-in functions. */
import { backing, batting } from "./backing";
import { binding } from "./binding";
import { borders } from "./borders";
import { costing } from "./costing";
import { length } from "./length";
import { patches } from "./patches";
import { settings } from "./settings";
import { sewn } from "./sewn";
import { shapes } from "./shapes";
import { strips } from "./strips";
import { tables } from "./tables";
import type { Twin, Twins } from "./template";
import { thread } from "./thread";
import { tubes } from "./tubes";
import { yardage } from "./yardage";

/** Every twin by the name of its function, without the namespace. */
export const twins: Twins = {
  ...length,
  ...patches,
  ...shapes,
  ...sewn,
  ...strips,
  ...tubes,
  ...yardage,
  ...settings,
  ...borders,
  ...backing,
  ...batting,
  ...binding,
  ...costing,
  ...thread,
  ...tables,
};

const A_SEARCH = "the least is found by a search, which no built-in function does";
const A_LIST = "it goes through a list of any length, row by row";
const A_TABLE = "it answers with a table whose rows depend on the numbers";

const LONG_NOTES = "its notes, with lengths in words, would be longer than a cell holds";

/** Why the others have none. */
const WHY_NOT: Readonly<Record<string, string>> = {
  PLAN: A_SEARCH,
  PLANFABRIC: A_SEARCH,
  PLANSTRIPS: A_SEARCH,
  PLANLENGTH: A_SEARCH,
  PLANSPARE: A_SEARCH,
  PANELSNEEDED: A_SEARCH,
  BOLTPLAN: A_SEARCH,
  BUNDLECHECK: A_SEARCH,
  CHECKFABRIC: A_SEARCH,
  BLOCKFABRIC: A_SEARCH,
  SIZETABLE: A_SEARCH,
  QUILTFABRICS: A_SEARCH,
  QUILTPIECES: A_LIST,
  STRIPSFIRST: A_LIST,
  TUBELENGTH: A_LIST,
  CHECKTOTALS: A_LIST,
  CUTTEMPLATE: A_LIST,
  BLOCKPIECES: A_LIST,
  BLOCKCHECK: A_LIST,
  BLOCKSFOR: A_TABLE,
  BORDERFIT: LONG_NOTES,
  TOPPIECES: A_TABLE,
};

/** The twin of a function, or why it has none. */
export function twinOf(id: string): Twin | { whyNot: string } {
  return twins[id] ?? { whyNot: WHY_NOT[id] ?? `no function ${id} is known` };
}
