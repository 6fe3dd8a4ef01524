/** The arguments of a call as they stand in a formula, and what is known of each before any number is typed. */
import type { Condition, Formula } from "./formula";

/** What an argument is made of. */
export type Argument =
  | { readonly kind: "left out" }
  | { readonly kind: "typed"; readonly value: number | string | boolean }
  | { readonly kind: "range"; readonly text: string }
  | One;

/** An argument that stands for one value that may change: a cell, a name, a computation. */
export interface One extends Facts {
  readonly kind: "one";
  readonly text: Formula;
  /** When the value is an empty text. */
  readonly emptyIf: Condition;
  /** Whether the text is an error where the value is empty, so that it must not be asked for there. */
  readonly failsEmpty?: boolean;
}

/** What is known of a value, unless it is an error. */
export interface Facts {
  /** It is a number. */
  readonly number?: boolean;
  /** It is not below 0. */
  readonly notNegative?: boolean;
  /** It is above 0. */
  readonly positive?: boolean;
  /** It is a whole number. */
  readonly whole?: boolean;
}

/** What the twin of a function gives, unless it gives an error. */
export const GIVES = {
  /** a count, 0 included */
  count: { number: true, notNegative: true, whole: true },
  /** a count above 0 */
  someCount: { number: true, notNegative: true, positive: true, whole: true },
  /** a length or an amount above 0 */
  size: { number: true, notNegative: true, positive: true },
  /** a length or an amount, 0 included */
  amount: { number: true, notNegative: true },
  number: { number: true },
  text: {},
} as const satisfies Record<string, Facts>;

export type Gives = keyof typeof GIVES;

/** Why a call has no twin, in words for the report. */
export class NoTwin extends Error {}

/** What every program shows where there is no answer. */
export const NO_ANSWER = "NA()";
