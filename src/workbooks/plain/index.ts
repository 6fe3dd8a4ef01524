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
};

/** Why the others have no twin. */
const WHY_NOT: Readonly<Record<string, string>> = {
};

/** The twin of a function, or why it has none. */
export function twinOf(id: string): Twin | { whyNot: string } {
  return twins[id] ?? { whyNot: WHY_NOT[id] ?? "no plain formula is known for it" };
}
