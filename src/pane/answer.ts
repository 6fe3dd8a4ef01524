/** Works out one call with its working: the same computation tells the steps, so that they cannot differ from the answer. */
import { worksheetFunctions } from "../../functions";
import { withWorking } from "../math/working";
import type { Shown } from "./catalogue";

/** What a cell hands to a function; null where an argument is left out. */
export type Given = unknown;

export interface Answered {
  value: Shown | Shown[][];
  steps: string[];
  /** What was taken as usual because nothing was given. */
  assumptions: string[];
}

export interface Refused {
  /** Such as #VALUE!. */
  code: string;
  sentence: string;
}

export type Outcome = Answered | Refused;

export function isAnswered(outcome: Outcome): outcome is Answered {
  return "value" in outcome;
}

/** Calls a function as a cell would. */
export function workOut(id: string, cells: readonly Given[]): Outcome {
  const run = worksheetFunctions.get(id);
  if (!run) return { code: "#NAME?", sentence: `There is no function QUILT.${id}.` };
  try {
    const { answer, steps, assumptions } = withWorking(() => run(...cells) as Answered["value"]);
    return { value: answer, steps: unrepeated(steps), assumptions: unrepeated(assumptions) };
  } catch (thrown) {
    if (!isCellError(thrown)) throw thrown;
    return { code: thrown.code, sentence: asSentence(thrown.message) };
  }
}

/** The host's own error class, or what stands in for it. */
function isCellError(thrown: unknown): thrown is { code: string; message: string } {
  return typeof thrown === "object" && thrown !== null && "code" in thrown && "message" in thrown;
}

/** A function that tries several ways tells some steps twice. */
function unrepeated(lines: readonly string[]): string[] {
  return [...new Set(lines)];
}

/** With a capital and a full stop. */
export function asSentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.?!]$/.test(text) ? "" : "."}`;
}
