import { type Line, showing } from "./show";
import type { System } from "./units";

/** Why a question has no answer: the input is wrong, or the input is right and nothing fits it. */
export type ProblemKind = "bad input" | "no answer";

/**
 * The one error that the mathematics throws. Its message is a sentence for the maker: what was expected and what came.
 * Anything else that is thrown is a bug.
 */
export class Problem extends Error {
  constructor(
    readonly kind: ProblemKind,
    private readonly line: string | Line,
  ) {
    super(typeof line === "string" ? line : line(showing("in")));
    this.name = "Problem";
  }

  /** The sentence, with lengths in the maker's units. */
  sentence(system: System): string {
    return typeof this.line === "string" ? this.line : this.line(showing(system));
  }
}

/** The most that is counted of anything; more is a slip of the keyboard, and would only fill memory. */
export const MOST_COUNTED = 1_000_000;

/** Refuses a value that is not a number above zero. */
export function requirePositive(name: string, value: number): void {
  if (!Number.isFinite(value) || value <= 0) {
    throw new Problem("bad input", `${name} must be more than 0`);
  }
}

/** Refuses a value that is not a number, or is below zero. */
export function requireNotNegative(name: string, value: number): void {
  if (!Number.isFinite(value) || value < 0) {
    throw new Problem("bad input", `${name} must be 0 or more`);
  }
}

/** Refuses a count that is not a whole number from `least` to a million. */
export function requireCount(name: string, value: number, least = 0): void {
  if (!Number.isFinite(value)) {
    throw new Problem("bad input", `${name}: more than a million is not counted here`);
  }
  if (!Number.isInteger(value)) {
    throw new Problem("bad input", `${name} must be a whole number, not ${value}`);
  }
  if (value < least) {
    throw new Problem("bad input", `${name} must be ${least} or more, not ${value}`);
  }
  if (value > MOST_COUNTED) {
    throw new Problem("bad input", `${name} is ${value}; more than a million is not counted here`);
  }
}
