/** The QUILT calls of a formula, each with what it was given and what came out, from the inside out. */
import { callOnly, isReference, type Part, partsOf, significant } from "../workbooks/syntax";
import { type Given, isAnswered, type Outcome, workOut } from "./answer";
import { ComesToError, errorIn, orError, type Value } from "./arithmetic";
import { isAsShown } from "./asShown";
import { Evaluation, quiltName, textOf } from "./evaluate";
import { type CellValue, SheetProblem } from "./sheet";

export interface Call {
  id: string;
  /** As it stands in the formula, such as QUILT.CUTSQUARE(B4). */
  text: string;
  /** The text of each argument. */
  argumentTexts: string[];
  /** What the arguments come to; undefined where one cannot be followed. */
  cells?: Given[];
  outcome: Outcome;
  /** Whether the formula is this call and nothing else. */
  whole: boolean;
}

/**
 * A formula's calls, or a sentence where the formula cannot be read.
 *
 * @param shown what the formula shows in its cell, or in all that it fills, where it stands in one: what comes to anything else is not told
 */
export async function readCalls(
  formula: string,
  cellsOf: (reference: string) => Promise<CellValue[][]>,
  shown?: Value,
): Promise<Call[] | string> {
  const parts = partsOf(formula);
  if (!parts) return "This formula cannot be read.";
  const names = ownNames(parts);
  const calls = new Map<readonly Part[][], Call>();
  const evaluation = new Evaluation({
    cells: (reference) => {
      if (names.has(reference.toLowerCase())) throw new SheetProblem(`“${reference}” stands for a part of the formula`);
      return cellsOf(reference);
    },
    call: async (id, given) => answerOf(await follow(id, given)),
  });

  async function follow(id: string, given: readonly Part[][]): Promise<Call> {
    const before = calls.get(given);
    if (before) return before;
    const call = { id, text: callText(id, given), argumentTexts: given.map(textOf), whole: false };
    const told = { ...call, ...(await workedOut(id, given)) };
    calls.set(given, told);
    return told;
  }

  async function workedOut(id: string, given: readonly Part[][]): Promise<Pick<Call, "cells" | "outcome">> {
    try {
      const cells: Given[] = [];
      let failed: Outcome | undefined;
      for (const argument of given) {
        const value = await orError(evaluation.evaluate(argument));
        const code = value instanceof ComesToError ? value.code : errorIn(value);
        if (code !== undefined) failed ??= handedOver(code, argument);
        cells.push(value instanceof ComesToError ? code : value);
      }
      return { cells, outcome: failed ?? workOut(id, cells) };
    } catch (thrown) {
      if (!(thrown instanceof SheetProblem)) throw thrown;
      return { outcome: untold(thrown.message) };
    }
  }

  /** Looks for calls outside of any other, whatever stands around them. */
  async function search(list: readonly Part[]): Promise<void> {
    for (const part of list) {
      if (part.kind === "group") await search(part.parts);
      if (part.kind !== "call") continue;
      const id = quiltName(part.name);
      if (id === undefined) for (const given of part.given) await search(given);
      else await follow(id, part.given);
    }
  }

  await search(parts);
  const told = [...calls.values()];
  const only = callOnly(parts);
  const last = told.at(-1);
  if (last && only && quiltName(only.name) !== undefined) last.whole = true;
  if (shown === undefined || (await comesTo(shown))) return told;
  const outcome = untold("they come to something else than the sheet shows");
  return told.map((call) => ({ ...call, outcome }));

  /** Whether the formula comes to what the cell shows, as far as it can be followed. */
  async function comesTo(value: Value): Promise<boolean> {
    try {
      return isAsShown(await orError(evaluation.evaluate(parts!)), value);
    } catch (thrown) {
      if (thrown instanceof SheetProblem) return true;
      throw thrown;
    }
  }
}

/** A call as it is told, whatever stands before its name in the formula. */
export function callText(id: string, given: readonly Part[][]): string {
  return `QUILT.${id}(${given.map(textOf).join(", ")})`;
}

function untold(why: string): Outcome {
  return { code: "", sentence: `The steps cannot be told: ${why}.` };
}

/** An error that is handed over stays that error. */
function handedOver(code: string, argument: readonly Part[]): Outcome {
  const parts = significant(argument);
  if (parts.length === 1 && isReference(parts[0]))
    return { code, sentence: `A cell that this formula reads shows ${code}. Mend that cell first.` };
  return { code, sentence: `“${textOf(argument)}” in it comes to ${code}` };
}

function answerOf({ id, outcome }: Call): Value {
  if (isAnswered(outcome)) return outcome.value;
  if (outcome.code === "") throw new SheetProblem(`The call of ${id} in it has no answer`);
  throw new ComesToError(outcome.code);
}

/** The names, in lower case, that LET and LAMBDA give to parts of a formula. */
function ownNames(list: readonly Part[]): Set<string> {
  const names = new Set<string>();
  const look = (parts: readonly Part[]) => {
    for (const part of parts) {
      if (part.kind === "group") look(part.parts);
      if (part.kind !== "call") continue;
      part.given.forEach(look);
      const isLet = /^(?:_xlfn\.)?LET$/i.test(part.name);
      if (!isLet && !/^(?:_xlfn\.)?LAMBDA$/i.test(part.name)) continue;
      for (const given of part.given.slice(0, -1).filter((_, place) => !isLet || place % 2 === 0))
        names.add(textOf(given).toLowerCase());
    }
  };
  look(list);
  return names;
}
