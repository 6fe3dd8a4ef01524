/**
 * The working behind an answer: the same computation that yields the number tells its steps in words, so that the two cannot
 * drift apart. Nothing is formatted unless somebody listens.
 */
import { type Line, showing } from "./show";
import type { System } from "./units";

export interface Working<T> {
  answer: T;
  /** The arithmetic, one line a step. */
  steps: string[];
  /** What was taken for granted, one line each. */
  assumptions: string[];
}

interface Listener {
  system: System;
  steps: Line[];
  assumptions: Line[];
}

let listener: Listener | undefined;

/** Runs a computation and collects its working. A Problem passes through. */
export function withWorking<T>(run: () => T): Working<T> {
  const outer = listener;
  const own: Listener = { system: "in", steps: [], assumptions: [] };
  listener = own;
  try {
    const answer = run();
    const tell = (lines: Line[]) => lines.map((line) => line(showing(own.system)));
    return { answer, steps: tell(own.steps), assumptions: tell(own.assumptions) };
  } finally {
    listener = outer;
  }
}

/** Tells one step of the arithmetic: `step((show) => `${show.length(a)} + ${show.length(b)} = …`)`. */
export function step(line: Line): void {
  listener?.steps.push(line);
}

/** Tells what was taken for granted. */
export function assume(line: Line): void {
  listener?.assumptions.push(line);
}

/** Says in which units the working is to be told. */
export function tellIn(system: System): void {
  if (listener) listener.system = system;
}
