/** Random calls of the worksheet functions: what a maker types, and what may go wrong. */
import fc from "fast-check";

/** One argument: what stands in the formula, and what the worksheet function is handed. */
export interface Given {
  how: "left out" | "typed" | "cell";
  value: string | number | boolean | null;
}

const eighths = (least: number, most: number): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: Math.ceil(least * 8), max: most * 8 }).map((parts) => parts / 8) },
    { weight: 2, arbitrary: fc.integer({ min: Math.ceil(least * 10), max: most * 10 }).map((tenths) => tenths / 10) },
    { weight: 2, arbitrary: fc.double({ min: least, max: most, noNaN: true }) },
  );

const words = (...list: string[]): fc.Arbitrary<string> => fc.constantFrom(...list);

/** What is usual for an argument, by its name; `texts` are ways of writing that only a formula can hold. */
const USUAL: Record<string, { values: fc.Arbitrary<string | number | boolean>; texts?: fc.Arbitrary<string> }> = {
  seam: { values: fc.oneof(fc.constantFrom(0, 0.25, 0.375, 0.5, 0.75, 1), eighths(0, 2)), texts: words("1/4", "6 mm") },
  mark: { values: fc.constantFrom(0, 0.125, 0.0625, 0.25, 0.1, 0.5), texts: words("1/8", "1/16", "1 mm") },
  units: { values: words("in", "cm", "CM", "inches", "Centimeters") },
  step: {
    values: fc.oneof({ weight: 5, arbitrary: fc.constantFrom(0.125, 0.25, 0.5, 1, 0.1, 0.2, 1 / 3, 2) }, eighths(0, 2)),
    texts: words("1/8", "1/3", "9 in", "10 cm", "0.333"),
  },
  squaring: { values: fc.constantFrom(0, 0.5, 1, 2, 50) },
  stripCount: { values: fc.integer({ min: 0, max: 300 }) },
  madeAtOnce: { values: fc.constantFrom(1, 2, 4, 8, 3) },
  denominator: { values: fc.constantFrom(8, 16, 4, 10, 2, 32, 3) },
  width: { values: eighths(10, 120), texts: words("40 in", "110 cm", "1 yd") },
  side: { values: eighths(1, 130) },
};

const LENGTHS = { values: eighths(0.5, 40), texts: words("2 1/2", "3 7/8 in", "6.5 cm", "2½", "63.5 mm", "two", "-1") };

const BAD: fc.Arbitrary<string | number | boolean> = fc.constantFrom(0, -2, 1.37, 46089, 1e9, "many", "3/8", true);

/** One argument of that name. */
export function given(name: string, optional: boolean): fc.Arbitrary<Given> {
  const { values, texts = values } = USUAL[name] ?? LENGTHS;
  const blank: fc.Arbitrary<Given> = fc.constantFrom({ how: "left out", value: null }, { how: "cell", value: null });
  const as = (how: Given["how"], arbitrary: typeof values) => arbitrary.map((value): Given => ({ how, value }));
  return fc.oneof(
    { weight: optional ? 30 : 1, arbitrary: blank },
    { weight: 30, arbitrary: as("cell", values) },
    { weight: 20, arbitrary: as("typed", values) },
    { weight: 8, arbitrary: as("typed", texts) },
    { weight: 1, arbitrary: as("cell", BAD) },
    { weight: 1, arbitrary: as("typed", BAD) },
  );
}

/** A call with its cells in the row that it stands in. */
export function callText(id: string, args: readonly Given[], row: number): string {
  const texts = args.map(({ how, value }, column) => {
    if (how === "left out") return "";
    if (how === "cell") return `${String.fromCharCode(65 + column)}${row}`;
    if (typeof value === "string") return `"${value}"`;
    return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  });
  while (texts.at(-1) === "") texts.pop();
  return `=QUILT.${id}(${texts.join(",")})`;
}
