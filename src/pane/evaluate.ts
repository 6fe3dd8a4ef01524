/**
 * Works out what stands in the arguments of a call: numbers, text, cells, arithmetic and a few built-in functions. What is
 * beyond that is said, never guessed.
 */
import { isOperator, type Part, significant } from "../workbooks/syntax";
import { type CellValue, SheetProblem } from "./sheet";

export type Value = CellValue | CellValue[][];

/** What the parts of a formula may name. */
export interface Surroundings {
  /** The values of a reference. */
  cells(reference: string): Promise<CellValue[][]>;
  /** The answer of one of our functions. */
  call(id: string, given: readonly Part[][]): Promise<Value>;
}

const QUILT = /^(?:.*!)?(?:_xldudf_QUILT_|QUILT\.)([A-Z][A-Z0-9]*)$/is;

/** The name of one of our functions in a formula, without what stands before it. */
export function quiltName(name: string): string | undefined {
  return QUILT.exec(name)?.[1]?.toUpperCase();
}

/** From what binds least to what binds most. */
const LEVELS = [["=", "<>", "<", ">", "<=", ">="], ["&"], ["+", "-"], ["*", "/"], ["^"]];

export class Evaluation {
  private parts: Part[] = [];
  private at = 0;

  constructor(private readonly surroundings: Surroundings) {}

  /** The value of an argument; null where nothing is written. */
  async evaluate(parts: readonly Part[]): Promise<Value> {
    const inner = new Evaluation(this.surroundings);
    inner.parts = significant(parts);
    if (inner.parts.length === 0) return null;
    const value = await inner.level(0);
    if (inner.at < inner.parts.length) throw new SheetProblem(`“${textOf(parts)}” cannot be followed here`);
    return value;
  }

  private async level(depth: number): Promise<Value> {
    if (depth === LEVELS.length) return this.signed();
    let value = await this.level(depth + 1);
    for (;;) {
      const operator = this.parts.at(this.at);
      if (!isOperator(operator, ...LEVELS[depth]) || operator?.kind !== "leaf") return value;
      this.at += 1;
      value = operate(operator.text, one(value), one(await this.level(depth + 1)));
    }
  }

  private async signed(): Promise<Value> {
    const part = this.parts.at(this.at);
    if (isOperator(part, "-", "+", "@")) {
      this.at += 1;
      const value = await this.signed();
      return isOperator(part, "-") ? -1 * number(one(value)) : value;
    }
    let value = await this.single();
    while (isOperator(this.parts.at(this.at), "%")) {
      this.at += 1;
      value = number(one(value)) / 100;
    }
    return value;
  }

  private async single(): Promise<Value> {
    const part = this.parts.at(this.at);
    if (part === undefined) throw new SheetProblem("The formula ends too soon");
    this.at += 1;
    if (part.kind === "call") return this.call(part.name, part.given);
    if (part.kind === "group") return part.open === "(" ? this.evaluate(part.parts) : arrayOf(part.parts);
    if (part.type === "number") return Number(part.text);
    if (part.type === "bool") return part.text.toUpperCase() === "TRUE";
    if (part.type === "string") return part.text.slice(1, -1).replaceAll('""', '"');
    if (/^(?:range|structured)/.test(part.type)) {
      const spilled = isOperator(this.parts.at(this.at), "#");
      if (spilled) this.at += 1;
      const values = await this.surroundings.cells(spilled ? `${part.text}#` : part.text);
      return values.length === 1 && values[0].length === 1 ? values[0][0] : values;
    }
    throw new SheetProblem(`“${part.text}” cannot be followed here`);
  }

  private async call(name: string, given: readonly Part[][]): Promise<Value> {
    const id = quiltName(name);
    if (id !== undefined) return this.surroundings.call(id, given);
    const word = name.toUpperCase().replace(/^_XLFN\./, "");
    if (word === "IF") {
      const chosen = one(await this.evaluate(given.at(0) ?? [])) ? given.at(1) : given.at(2);
      return chosen === undefined ? false : this.evaluate(chosen);
    }
    if (word === "SINGLE") return one(await this.evaluate(given.at(0) ?? []));
    const run = BUILT_IN[word];
    if (!run) throw new SheetProblem(`${name} is worked out by the sheet only`);
    const values: Value[] = [];
    for (const argument of given) values.push(await this.evaluate(argument));
    return run(values);
  }
}

const BUILT_IN: Partial<Record<string, (values: Value[]) => Value>> = {
  SUM: (values) => numbers(values).reduce((sum, value) => sum + value, 0),
  MAX: (values) => Math.max(...numbers(values)),
  MIN: (values) => Math.min(...numbers(values)),
  ABS: ([value]) => Math.abs(number(one(value))),
  SQRT: ([value]) => Math.sqrt(number(one(value))),
  INT: ([value]) => Math.floor(number(one(value))),
  ROUND: ([value, digits]) => rounded(Math.round, value, digits),
  ROUNDUP: ([value, digits]) => rounded(Math.ceil, value, digits),
  ROUNDDOWN: ([value, digits]) => rounded(Math.floor, value, digits),
  INDEX: ([table, row, column]) => {
    const rows = Array.isArray(table) ? table : [[table]];
    const r = number(one(row));
    const c = (column as Value | undefined) === undefined ? undefined : number(one(column));
    const found = c === undefined && rows.length === 1 ? rows[0].at(r - 1) : rows.at(r - 1)?.at((c ?? 1) - 1);
    if (r < 1 || (c ?? 1) < 1 || found === undefined)
      throw new SheetProblem("INDEX asks for a cell outside of the table");
    return found;
  },
};

/** Away from zero or toward it, as spreadsheets do; dust of binary numbers is passed over. */
function rounded(round: (value: number) => number, value: Value, digits: Value = 0): number {
  const factor = 10 ** number(one(digits));
  const scaled = Number((Math.abs(number(one(value))) * factor).toPrecision(15));
  return (Math.sign(number(one(value))) * round(scaled)) / factor;
}

function operate(operator: string, left: CellValue, right: CellValue): CellValue {
  switch (operator) {
    case "+":
      return number(left) + number(right);
    case "-":
      return number(left) - number(right);
    case "*":
      return number(left) * number(right);
    case "/":
      return number(left) / number(right);
    case "^":
      return number(left) ** number(right);
    case "&":
      return `${left ?? ""}${right ?? ""}`;
    default:
      return compare(operator, left, right);
  }
}

function compare(operator: string, left: CellValue, right: CellValue): boolean {
  const same = (left ?? "") === (right ?? "") || String(left).toLowerCase() === String(right).toLowerCase();
  if (operator === "=") return same;
  if (operator === "<>") return !same;
  const difference = number(left) - number(right);
  return { "<": difference < 0, ">": difference > 0, "<=": difference <= 0, ">=": difference >= 0 }[operator]!;
}

function one(value: Value | undefined): CellValue {
  if (!Array.isArray(value)) return value ?? null;
  if (value.length === 1 && value[0].length === 1) return value[0][0];
  throw new SheetProblem("Several cells at once cannot be followed here");
}

function number(value: CellValue): number {
  if (typeof value === "number") return value;
  if (value === null || typeof value === "boolean") return Number(value);
  const read = Number(value);
  if (value.trim() === "" || Number.isNaN(read)) throw new SheetProblem(`“${value}” is no number`);
  return read;
}

/** The numbers among all cells, as SUM takes them. */
function numbers(values: Value[]): number[] {
  return values.flat(2).filter((value) => typeof value === "number");
}

/** A table typed into the formula, such as {"a",2;"b",3}. */
function arrayOf(parts: readonly Part[]): CellValue[][] {
  const rows: CellValue[][] = [[]];
  let sign = 1;
  for (const part of significant(parts)) {
    if (part.kind !== "leaf") throw new SheetProblem("A table in braces holds only numbers and words");
    if (part.text === ";") rows.push([]);
    else if (part.text === "-") sign = -1;
    else if (part.text !== ",") {
      const isNumber = part.type === "number";
      const word =
        part.type === "bool" ? part.text.toUpperCase() === "TRUE" : part.text.slice(1, -1).replaceAll('""', '"');
      rows[rows.length - 1].push(isNumber ? sign * Number(part.text) : word);
      sign = 1;
    }
  }
  return rows;
}

/** Parts as they were written. */
export function textOf(parts: readonly Part[]): string {
  return parts
    .map((part): string => {
      if (part.kind === "leaf") return part.text;
      if (part.kind === "group") return `${part.open}${textOf(part.parts)}${part.open === "(" ? ")" : "}"}`;
      return `${part.name}(${part.given.map(textOf).join(",")})`;
    })
    .join("")
    .trim();
}
