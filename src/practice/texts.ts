/** Keeps text that is typed into a formula from being read as a date or a number: the engine takes "3/8" for a day in March. */
import type { Injector } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";

/** Built-in functions that hand on one of the values they are given. */
const HAND_ON = ["IF", "IFS", "IFERROR", "IFNA", "SWITCH", "CHOOSE"];

export function keepTexts(injector: Injector): void {
  const functions = injector.get(IFunctionService);
  for (const name of HAND_ON) {
    const executor = functions.getExecutor(name);
    if (executor) executor.isArgumentsIgnoreNumberPattern = () => true;
  }
}
