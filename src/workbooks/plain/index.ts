/** The plain twins: each worksheet function that built-in functions can answer, written in built-in functions. */
import { borders } from "./borders";
import { length } from "./length";
import { patches } from "./patches";
import { strips } from "./strips";
import type { Twin, Twins } from "./template";

/** Every twin by the name of its function, without the namespace. */
export const twins: Twins = { ...length, ...patches, ...strips, ...borders };

/** Why the others have no twin. */
const WHY_NOT: Readonly<Record<string, string>> = {
};

/** The twin of a function, or why it has none. */
export function twinOf(id: string): Twin | { whyNot: string } {
  return twins[id] ?? { whyNot: WHY_NOT[id] ?? "no plain formula is known for it" };
}
