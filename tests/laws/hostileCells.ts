/** Whatever a cell may hold, and what an answer may never be: shared by the laws and the soak. */
import fc from "fast-check";

const numbers = fc.oneof(
  fc.constantFrom(0, -0, 1, -1, 0.1, 1 / 3, 2.5, 42, 1e-300, 1e300, 46089, 2 ** 53, NaN, Infinity, -Infinity),
  fc.double(),
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.integer({ min: -5, max: 2_000_000 }),
);

const words = fc.oneof(
  fc.constantFrom(
    "cm",
    "in",
    "2 1/2",
    "3/8",
    "5/0",
    "2,5",
    "1e5",
    "any",
    "upright",
    "on point",
    "best",
    "#N/A",
    "=1",
    "🧵",
  ),
  fc.constantFrom(
    "sand / slate",
    "goose up: a, b",
    "<",
    "^",
    "four: a",
    "a + b",
    "queen",
    "half square",
    "45%",
    "1 yd",
  ),
  fc.string({ maxLength: 20 }),
);

export const hostileCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: numbers },
  { weight: 3, arbitrary: words },
  { weight: 2, arbitrary: fc.constantFrom(null, undefined, "", true, false) },
  { weight: 1, arbitrary: fc.constantFrom({}, new Error("#REF!"), [], () => 1) },
);

/** Ranges of any shape, ragged and empty ones included. */
const hostileRange: fc.Arbitrary<unknown> = fc.oneof(
  fc.array(fc.array(hostileCell, { maxLength: 6 }), { maxLength: 6 }),
  fc.array(fc.tuple(words, numbers, numbers, fc.integer({ min: 0, max: 60 })), { minLength: 1, maxLength: 5 }),
);

/** The arguments of one call: ranges where ranges are expected, or anything in any number. */
export function hostileArguments(parameters: readonly object[]): fc.Arbitrary<unknown[]> {
  const expected = fc.tuple(...parameters.map((each) => ("dimensionality" in each ? hostileRange : hostileCell)));
  return fc.oneof(expected, fc.array(fc.oneof(hostileCell, hostileRange), { maxLength: parameters.length + 2 }));
}

/** What is wrong with the value of a cell, or undefined: it must be text, TRUE, FALSE or a finite number. */
export function valueFlaw(value: unknown): string | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? undefined : `the number ${value}`;
  return typeof value === "string" || typeof value === "boolean" ? undefined : `no value but ${String(value)}`;
}

/** What is wrong with the sentence of an error, or undefined. A word that was given, by chance NaN, may be quoted. */
export function sentenceFlaw(sentence: string, given: unknown): string | undefined {
  if (sentence.length <= 8) return `the short sentence “${sentence}”`;
  const [word] = /NaN|undefined|\[object|Infinity/.exec(sentence) ?? [];
  return word && !JSON.stringify(given).includes(word) ? `the sentence “${sentence}”` : undefined;
}
