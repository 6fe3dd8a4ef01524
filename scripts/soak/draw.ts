/** Draws what the soak throws: everything follows from a seed, so that a find can be repeated. */
import fc from "fast-check";
import { hostileArguments, hostileCell } from "../../tests/laws/hostileCells";
import { given } from "../../tests/plain/calls";

export interface Parameter {
  readonly name: string;
  readonly description?: string;
  readonly optional?: boolean;
}

/** Sizes on a ruler's eighths, as most cutting lists hold them, or anywhere. */
const cutSize = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 4, max: 240 }).map((eighths) => eighths / 8) },
  { weight: 3, arbitrary: fc.constantFrom(2.5, 4.5, 6.5) },
  { weight: 1, arbitrary: fc.double({ min: 0.5, max: 60, noNaN: true }) },
);
const cutCount = fc.oneof(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 500 }));
const grain = fc.constantFrom(null, "any", "upright", "join", "along");

/** A cutting list as long as a scrap quilt's. */
const cuttingList = fc.array(fc.tuple(fc.constant("patch"), cutSize, cutSize, cutCount, grain), {
  minLength: 1,
  maxLength: 30,
});

/**
 * Arguments for a function: anything; what is usual by the names of its parameters; and what its check values hold, with a
 * part of it replaced, doubled or left out, which reaches deeper than chance. Cutting lists come in every length.
 *
 * @param known arguments that the function answers
 */
export function argumentsFor(
  id: string,
  parameters: readonly Parameter[],
  known: readonly (readonly unknown[])[],
): fc.Arbitrary<unknown[]> {
  const usual = fc
    .tuple(...parameters.map(({ name, optional = false }) => given(id, name, optional)))
    .map((args) => args.map(({ value }): unknown => value));
  const changes = fc.array(fc.tuple(fc.nat(), fc.nat(), hostileCell, fc.boolean()), { maxLength: 3 });
  const changed = fc
    .tuple(fc.constantFrom(...known), fc.constantFrom(...known), changes)
    .map(([cells, other, list]) => list.reduce((now, change) => changedAt(now, other, change), [...cells]));
  const spoiled = fc
    .tuple(usual, changes)
    .map(([cells, list]) => list.reduce((now, change) => changedAt(now, cells, change), cells));
  const drawn = [hostileArguments(parameters), changed, changed, usual, spoiled];
  if (!parameters[0].description?.startsWith("Rows of label, width, height, count")) return fc.oneof(...drawn);
  const listed = fc.tuple(cuttingList, usual).map(([list, cells]) => [list, ...cells.slice(1)]);
  return fc.oneof(...drawn, listed, listed);
}

/** One argument replaced by any cell or by what another call has there; of a range, one of its cells. */
function changedAt(
  cells: readonly unknown[],
  other: readonly unknown[],
  [at, within, value, exchange]: [number, number, unknown, boolean],
): unknown[] {
  if (cells.length === 0) return [value];
  const place = at % cells.length;
  const old = cells[place];
  if (exchange) return cells.with(place, other[place]);
  if (!isRange(old)) return cells.with(place, value);
  const row = within % old.length;
  const line = old[row];
  if (line.length === 0) return cells.with(place, [...old, [value]]);
  return cells.with(place, old.with(row, line.with(at % line.length, value)));
}

function isRange(value: unknown): value is unknown[][] {
  return Array.isArray(value) && value.length > 0 && value.every((row) => Array.isArray(row));
}

const CHARACTERS = Array.from("0123456789 /.,-½¾⅛⅞\"'′″ incmydftIN+*()%eE\u00a0\u2044\t_x°");
const PIECES = [
  "in",
  "inches",
  "cm",
  "mm",
  "yd",
  "yards",
  "m",
  "ft",
  "1/2",
  "3/8",
  "½",
  " ",
  "-",
  "12",
  "1e3",
  "0",
  ".",
];

/** Texts near to lengths. */
export const lengthText: fc.Arbitrary<string> = fc.oneof(
  fc.array(fc.constantFrom(...PIECES), { maxLength: 8 }).map((parts) => parts.join("")),
  fc.array(fc.constantFrom(...CHARACTERS), { maxLength: 12 }).map((parts) => parts.join("")),
  fc.array(fc.constantFrom(...CHARACTERS), { minLength: 500, maxLength: 5000 }).map((parts) => parts.join("")),
  fc.string({ maxLength: 40 }),
);

const SIGNS = [
  "/",
  "\\",
  "+",
  ",",
  ":",
  "<",
  "^",
  " ",
  "goose",
  "up",
  "four",
  "square",
  "in",
  "left",
  "a",
  "b",
  "Ä",
  "🧵",
];

/** Blocks drawn in cells: signs of the block language in any order. */
export const blockCells: fc.Arbitrary<string[][]> = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }))
  .chain(([rows, columns]) => {
    const sign = fc.constantFrom(...SIGNS);
    const cell = fc.oneof(
      fc.constantFrom("", "<", "^", "a", "a / b", "a \\ b", "a + b", "goose up: a, b", "four: a, b, c, d"),
      fc.array(sign, { maxLength: 7 }).map((parts) => parts.join("")),
      fc.array(sign, { maxLength: 7 }).map((parts) => parts.join(" ")),
    );
    const row = fc.array(cell, { minLength: columns, maxLength: columns });
    return fc.array(row, { minLength: rows, maxLength: rows });
  });
