/** Random calls of the worksheet functions: what a maker types, and what may go wrong. */
import fc from "fast-check";

/** One argument: what stands in the formula, and what the worksheet function is handed. */
export interface Given {
  how: "left out" | "typed" | "cell" | "range";
  value: Value | Value[][] | null;
}

type Value = string | number | boolean | null;

/** Columns that each argument has for its cells. */
export const COLUMNS_EACH = 4;

/** On ruler marks, in tenths with their binary dust, and anywhere. */
const lengths = (least: number, most: number): fc.Arbitrary<number> => {
  const whole = (parts: number) => fc.integer({ min: Math.ceil(least * parts), max: Math.floor(most * parts) });
  return fc.oneof(
    { weight: 6, arbitrary: whole(8).map((eighths) => eighths / 8) },
    { weight: 2, arbitrary: whole(10).map((tenths) => tenths * 0.1) },
    { weight: 2, arbitrary: whole(10000).map((parts) => parts / 10000) },
  );
};

const one = <T extends string | number | boolean>(...list: T[]): fc.Arbitrary<T> => fc.constantFrom(...list);

interface Usual {
  values: fc.Arbitrary<string | number | boolean>;
  /** ways of writing that only a formula can hold */
  texts?: fc.Arbitrary<string>;
  range?: boolean;
  /** must be typed into the formula, or left out */
  fixed?: boolean;
  leftOut?: boolean;
}

const count = (most: number): Usual => ({ values: fc.integer({ min: 0, max: most }), texts: one("7", "2.5") });
const words = (...list: string[]): Usual => ({ values: one(...list, list[0].toUpperCase()) });
const percents: Usual = { values: lengths(0, 0.9), texts: one("45%", "5 %", "0.2", "120%", "45") };
const amounts: Usual = { values: lengths(0, 20), texts: one("1 7/8", "27 in", "1/3", "2 m") };
const patches: Usual = {
  values: lengths(0.5, 40),
  texts: one("2 1/2", "3 7/8 in", "6.5 cm", "2½", "63.5 mm", "two", "-1"),
};
const quilts: Usual = { values: lengths(10, 120), texts: one("80 1/2", "2 yd", "150 cm") };
const losses: Usual = { values: one(0, 0.5, 1, 2, 50), texts: one("1/2", "1 in") };
const sizes: Usual = { values: lengths(0.5, 12), range: true };
const made = words(
  "half square",
  "half square four",
  "half square eight",
  "hourglass",
  "hourglass from half squares",
  "geese",
  "square in square",
  "tube",
);
const fabrics: Usual = { values: fc.oneof(lengths(30, 120), lengths(15, 60)), texts: one("40 in", "110 cm", "1 yd") };

/** What is usual for an argument by its name, or by the names of function and argument where the name means several things. */
const USUAL: Record<string, Usual | undefined> = {
  seam: { values: fc.oneof(one(0, 0.25, 0.375, 0.5, 0.75, 1), lengths(0, 2)), texts: one("1/4", "6 mm") },
  mark: { values: one(0, 0.125, 0.0625, 0.25, 0.1, 0.5, 1), texts: one("1/8", "1/16", "1 mm") },
  units: { values: one("in", "cm", "CM", "inches", "Centimeters") },
  step: {
    values: fc.oneof({ weight: 5, arbitrary: one(0.125, 0.25, 0.5, 1, 0.1, 0.2, 1 / 3, 2) }, lengths(0, 2)),
    texts: one("1/8", "1/3", "9 in", "10 cm", "0.333"),
  },
  squaring: losses,
  tail: losses,
  insurance: losses,
  generosity: losses,
  sashing: losses,
  tuck: losses,
  drop: { values: lengths(0, 20) },
  margin: { values: lengths(0, 8) },
  "PRICEFORMARGIN.margin": percents,
  markup: percents,
  shrinkage: percents,
  cost: { values: lengths(0, 500), texts: one("60.825", "12") },
  panelSeam: { values: one(0, 0.5, 1, 1.5) },
  repeat: { values: one(0, 6, 12, 24, 25.2) },
  stripCount: count(300),
  count: count(300),
  segments: count(300),
  kits: count(100),
  across: count(15),
  down: count(15),
  madeAtOnce: { values: one(1, 2, 4, 8, 3) },
  denominator: { values: one(8, 16, 4, 10, 2, 32, 3) },
  ratio: { values: lengths(1, 6) },
  angle: { values: lengths(1, 179) },
  width: quilts,
  length: quilts,
  side: quilts,
  block: patches,
  border: { values: lengths(0.5, 14) },
  strip: { values: lengths(0.5, 6), texts: one("2 1/4") },
  stripWidth: { values: lengths(1, 8) },
  trim: { values: lengths(1, 8) },
  fabricWidth: fabrics,
  "STRIPPATCHES.width": fabrics,
  "STRIPTRIANGLES.width": fabrics,
  "STRIPSNEEDED.width": fabrics,
  "STRIPSETS.length": fabrics,
  "PATCHFABRIC.width": patches,
  "PIECESFROM.width": patches,
  "CUTHALFRECTANGLE.width": patches,
  fabric: amounts,
  amount: amounts,
  bolt: amounts,
  each: { values: lengths(0.125, 4), texts: one("1 7/8", "1/3") },
  print: words("any", "upright"),
  grain: words("any", "upright"),
  join: words("diagonal", "straight"),
  ears: words("clipped", "unclipped"),
  edge: words("none", "sashed"),
  "BINDINGLENGTH.edge": words("round", "straight"),
  setting: words("on point", "straight", "two-side"),
  corner: words("butted", "mitered", "cornerstones", "mitred"),
  way: words("best", "across", "along"),
  "LENGTHMARK.way": words("up", "down", "nearest"),
  how: made,
  shape: { values: fc.oneof(made.values, one("square", "corner", "quarter square", "triangle", "diamond", "hexagon")) },
  "CUTGEESE.count": count(20),
  rows: count(4),
  divisions: count(12),
  method: { values: one("four at once", "triangles", "corners"), fixed: true },
  "BORDERLENGTHS.corner": { values: one("butted", "mitered", "cornerstones"), fixed: true },
  first: quilts,
  second: quilts,
  third: quilts,
  spread: losses,
  packs: { values: one("x"), fixed: true, leftOut: true },
  bed: words("queen", "crib", "twin", "twin XL", "California king", "full"),
  mattressWidth: quilts,
  mattressLength: quilts,
  widths: sizes,
  sizes,
  amounts: { values: lengths(0, 10), range: true },
  prices: { values: lengths(0, 30), range: true },
  extras: { values: lengths(0, 20), range: true },
};

const BAD: fc.Arbitrary<string | number | boolean> = one<string | number | boolean>(
  0,
  -2,
  1.37,
  46089,
  1e9,
  "many",
  "3/8",
  true,
);

const blank: fc.Arbitrary<Given> = fc.constantFrom({ how: "left out", value: null }, { how: "cell", value: null });

/** One argument of that name. */
export function given(id: string, name: string, optional: boolean): fc.Arbitrary<Given> {
  const { values, texts = values, range, fixed, leftOut } = USUAL[`${id}.${name}`] ?? USUAL[name] ?? patches;
  if (range) return fc.oneof({ weight: 9, arbitrary: cells(values) }, { weight: optional ? 9 : 1, arbitrary: blank });
  if (leftOut) return fc.constant({ how: "left out", value: null });
  if (fixed) return values.map((value): Given => ({ how: "typed", value }));
  const as = (how: Given["how"], arbitrary: typeof values) => arbitrary.map((value): Given => ({ how, value }));
  return fc.oneof(
    { weight: optional ? 40 : 1, arbitrary: blank },
    { weight: 40, arbitrary: as("cell", values) },
    { weight: 25, arbitrary: as("typed", values) },
    { weight: 8, arbitrary: as("typed", texts) },
    { weight: 1, arbitrary: as("cell", BAD) },
    { weight: 1, arbitrary: as("typed", BAD) },
  );
}

/** A row of three cells, some of them empty. */
function cells(values: Usual["values"]): fc.Arbitrary<Given> {
  const cell: fc.Arbitrary<Value> = fc.oneof(
    { weight: 30, arbitrary: values },
    { weight: 6, arbitrary: fc.constant(null) },
    { weight: 1, arbitrary: BAD },
  );
  return fc.tuple(cell, cell, cell).map((row): Given => ({ how: "range", value: [row] }));
}

/** What stands in the cells of a call, in the row that it stands in. */
export function cellsOf(args: readonly Given[]): Value[] {
  return args.flatMap(({ how, value }) => {
    const row = how === "range" ? (value as Value[][])[0] : how === "cell" ? [value as Value] : [];
    return [...row, ...Array.from({ length: COLUMNS_EACH - row.length }, () => null)];
  });
}

/** A call with its cells in the row that it stands in. */
export function callText(id: string, args: readonly Given[], row: number): string {
  const texts = args.map(({ how, value }, index) => {
    const at = (column: number) => `${columnName(index * COLUMNS_EACH + column)}${row}`;
    if (how === "left out") return "";
    if (how === "cell") return at(0);
    if (how === "range") return `${at(0)}:${at(2)}`;
    return typeof value === "string" ? `"${value}"` : String(value).toUpperCase();
  });
  while (texts.at(-1) === "") texts.pop();
  return `=QUILT.${id}(${texts.join(",")})`;
}

/** A, B, … Z, AA, … */
export function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}
