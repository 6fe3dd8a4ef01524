/**
 * Works out what stands in the arguments of a call: numbers, text, cells, arithmetic and a few built-in functions. What is
 * beyond that is said, never guessed.
 */
import { isOperator, isReference, type Leaf, type Part, significant } from "../workbooks/syntax";
import { cannotFollow, ComesToError, number, one, operate, signed, sound, type Value } from "./arithmetic";
import { BUILT_INS } from "./builtIns";
import { areaOf, cellName } from "./pages";
import { type CellValue, SheetProblem } from "./sheet";

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

  /**
   * The value of an argument; null where nothing is written. Cells of a table may hold errors.
   *
   * @throws ComesToError where an error goes through all of it
   * @throws SheetProblem where it cannot be followed
   */
  async evaluate(parts: readonly Part[]): Promise<Value> {
    const inner = new Evaluation(this.surroundings);
    inner.parts = significant(parts);
    if (inner.parts.length === 0) return null;
    const value = await inner.level(0);
    if (inner.at < inner.parts.length) cannotFollow(`“${textOf(parts)}”`);
    return value;
  }

  private async level(depth: number): Promise<Value> {
    if (depth === LEVELS.length) return this.signed();
    let value = await this.level(depth + 1);
    for (;;) {
      const operator = this.parts.at(this.at);
      if (!isOperator(operator, ...LEVELS[depth]) || operator?.kind !== "leaf") return value;
      this.at += 1;
      value = await operate(operator.text, one(value), async () => one(await this.level(depth + 1)));
    }
  }

  private async signed(): Promise<Value> {
    const part = this.parts.at(this.at);
    if (isOperator(part, "-", "+", "@")) {
      this.at += 1;
      const value = one(await this.signed());
      return isOperator(part, "-") ? signed("-", value) : value;
    }
    let value = await this.single();
    while (isOperator(this.parts.at(this.at), "%")) {
      this.at += 1;
      value = signed("%", one(value));
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
    if (part.type === "bool" || part.type === "string") return wordOf(part);
    if (part.type === "error") throw new ComesToError(part.text.toUpperCase());
    if (isReference(part)) {
      const spilled = isOperator(this.parts.at(this.at), "#");
      if (spilled) this.at += 1;
      const reference = spilled ? `${part.text}#` : `${part.text}${await this.otherCorner(part.text)}`;
      const values = await this.surroundings.cells(reference);
      return values.length === 1 && values[0].length === 1 ? sound(values[0][0]) : values;
    }
    return cannotFollow(`“${part.text}”`);
  }

  /** The end of a range that INDEX names, such as that of A4:INDEX(A4:L17,B8,B7); empty where there is none. */
  private async otherCorner(from: string): Promise<string> {
    if (!isOperator(this.parts.at(this.at), ":")) return "";
    const part = this.parts.at(this.at + 1);
    const given = part?.kind === "call" && /^INDEX$/i.test(part.name) ? part.given : [];
    const [table = [], row = [], column] = given as (Part[] | undefined)[];
    const [range, ...others] = significant(table) as [Part?, ...Part[]];
    if (range?.kind !== "leaf" || !isReference(range) || others.length > 0) return cannotFollow("A range of this kind");
    this.at += 2;
    const { page, top, left, bottom, right } = areaOf(range.text, "");
    const place = async (given: Part[]) => Math.trunc(number(one(await this.evaluate(given)))) - 1;
    const down = top + (await place(row));
    const across = column === undefined ? left : left + (await place(column));
    const isClear = column !== undefined || left === right;
    if (!isClear || page !== areaOf(from, "").page || down < top || down > bottom || across < left || across > right)
      return cannotFollow("INDEX of more or other cells");
    return `:${cellName(down, across)}`;
  }

  private async call(name: string, given: readonly Part[][]): Promise<Value> {
    const id = quiltName(name);
    if (id !== undefined) return this.surroundings.call(id, given);
    const word = name.toUpperCase().replace(/^_XLFN\./, "");
    const run = BUILT_INS.get(word);
    if (!run) throw new SheetProblem(`${name} is worked out by the sheet only`);
    return run(given, (argument) => this.evaluate(argument));
  }
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
      rows[rows.length - 1].push(part.type === "number" ? sign * Number(part.text) : wordOf(part));
      sign = 1;
    }
  }
  return rows;
}

/** TRUE, FALSE, a text in quotes, or the code of an error. */
function wordOf({ type, text }: Leaf): string | boolean {
  if (type === "bool") return text.toUpperCase() === "TRUE";
  return type === "string" ? text.slice(1, -1).replaceAll('""', '"') : text.toUpperCase();
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
