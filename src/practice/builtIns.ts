/** Fits the engine's own functions to the practice sheet. */
import type { Injector } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";

/** Built-in functions that hand on one of the values they are given. */
const HAND_ON = ["IF", "IFS", "IFERROR", "IFNA", "SWITCH", "CHOOSE"];

/** Built-in functions that load something from another address. */
const REACH_OUT = ["IMAGE"];

export function fitBuiltIns(injector: Injector): void {
  const functions = injector.get(IFunctionService);
  functions.unregisterExecutors(...REACH_OUT);
  functions.unregisterDescriptions(...REACH_OUT);
  // Text that is typed into a formula is no date and no number: the engine takes "3/8" for a day in March.
  for (const name of HAND_ON) {
    const executor = functions.getExecutor(name);
    if (executor) executor.isArgumentsIgnoreNumberPattern = () => true;
  }
}
