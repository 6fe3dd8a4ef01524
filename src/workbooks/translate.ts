/**
 * Turns the QUILT calls of a formula into built-in functions: every call is written from the inside out and put in its place;
 * whatever else the formula holds stays as it is, text in quotes above all.
 */
import { type Argument, GIVES, NO_ANSWER, NoTwin, type One } from "./plain/argument";
import { either, type Formula, joined, plain, written } from "./plain/formula";
import { twinOf } from "./plain/index";
import { type Answer, type Twin, write, type Written } from "./plain/template";
import { type Call, callOnly, isOperator, type Part, partsOf, significant } from "./syntax";

/** What became of the calls of one formula. */
export interface Turned {
  /** The formula in built-in functions; as it was where a call is left. With an equals sign if it came with one. */
  formula: string;
  /** The functions that were turned, one entry a call. */
  turned: string[];
  /** The calls that have no twin as they stand, and why. Where there are any, only the value of the cell can be kept. */
  left: { id: string; why: string }[];
  /** Where the whole formula is one call that fills a small table: a formula for each of its cells. */
  table?: string[][];
}

/** The longest formula that a cell holds is 8,192 characters; the rest is left for what the program adds. */
const LONGEST_FORMULA = 8000;

/** `QUILT.X` or `_xldudf_QUILT_X`, either one behind the number or the path of the add-in's workbook. */
const QUILT_NAME = /^(?:.*!)?(?:_xldudf_QUILT_|QUILT\.)([A-Z][A-Z0-9]*)$/is;

/** How a file keeps an @ before a call: take one value. A twin has only one. */
const SINGLE = /^_xlfn\.SINGLE$/i;

/** Built-in functions that give a number or an error, whatever they are given. */
const GIVE_NUMBERS =
  /^(?:SUM|ROUND|ROUNDUP|ROUNDDOWN|INT|MAX|MIN|ABS|SQRT|COUNT|COUNTA|PRODUCT|SUMPRODUCT|CEILING|FLOOR|MOD|AVERAGE)$/i;

const ARITHMETIC = ["+", "-", "*", "/", "^", "%"];
const NO_ARITHMETIC = ["&", "=", "<", ">", "<=", ">=", "<>"];

/** Whether a formula may hold a QUILT call at all; quick, and TRUE also where the name only stands in a text. */
export function mentionsQuilt(formula: string): boolean {
  return /QUILT[._]/i.test(formula);
}

/**
 * Turns every QUILT call of a formula that has a plain twin.
 *
 * @param formula as a cell or a file holds it, in the English spelling with commas
 * @param rangeNames names in the workbook, in lower case, that stand for more than one cell
 */
export function translate(formula: string, rangeNames: ReadonlySet<string> = new Set()): Turned {
  if (!mentionsQuilt(formula)) return { formula, turned: [], left: [] };
  const parts = partsOf(formula);
  if (!parts) return { formula, turned: [], left: [{ id: "", why: "it cannot be read as a formula" }] };
  return new Translation(rangeNames).run(formula, parts);
}

/** A call that was turned. */
interface TurnedCall extends Answer {
  twin: Twin;
}

class Translation {
  private readonly turned: string[] = [];
  private readonly left: Turned["left"] = [];

  constructor(private readonly rangeNames: ReadonlySet<string>) {}

  run(formula: string, parts: Part[]): Turned {
    const opening = formula.startsWith("=") ? "=" : "";
    const only = callOnly(parts);
    const whole = isQuilt(only) ? this.answer(this.call(only)) : (this.chosenTable(only) ?? this.text(parts));
    const cells = Array.isArray(whole) ? whole : [[whole]];
    const table = cells.map((row) => row.map((cell) => opening + written(cell)));
    if (this.turned.length > 0 && table.flat().some((cell) => cell.length > LONGEST_FORMULA))
      this.leave(this.turned[0], TOO_LONG);
    const { turned, left } = this;
    if (left.length > 0) return { formula, turned: [], left };
    return { formula: table[0][0], turned, left, ...(table.flat().length > 1 && { table }) };
  }

  /** A formula that is nothing but a choice between one value and a table, its last argument. */
  private chosenTable(only: Call | undefined): Formula[][] | undefined {
    if (only?.name.toUpperCase() !== "IF" || only.given.length !== 3) return undefined;
    const [condition, value, last] = only.given;
    const call = callOnly(last);
    const twin = isQuilt(call) ? twinOf(quiltId(call)!) : undefined;
    if (!isQuilt(call) || !twin || "whyNot" in twin) return undefined;
    const before = this.turned.length;
    const table = this.answer(this.call(call));
    if (!Array.isArray(table)) {
      this.turned.length = before;
      return undefined;
    }
    const [chosen, one] = [this.text(condition), this.text(value)];
    return table.map((line, row) =>
      line.map((cell, column) => plain`IF(${chosen},${row + column === 0 ? one : '""'},${cell})`),
    );
  }

  /** The parts as text, with their calls turned. */
  private text(parts: readonly Part[]): string {
    const alone = significant(parts).length === 1;
    return parts
      .map((part, index) => {
        if (part.kind === "leaf") return isOperator(part, "@") && isQuilt(parts[index + 1]) ? "" : part.text;
        if (part.kind === "group") return `${part.open}${this.text(part.parts)}${part.open === "(" ? ")" : "}"}`;
        const turned = this.turn(part);
        if (turned === undefined) return `${part.name}(${part.given.map((given) => this.text(given)).join(",")})`;
        return alone ? written(turned) : joined(turned);
      })
      .join("");
  }

  /** What a call becomes; undefined for a call that is none of ours. */
  private turn(call: Call): Formula | undefined {
    const id = quiltId(call);
    if (id !== undefined) return this.oneValue(id, this.answer(this.call(call)));
    const inner = callOnly(call.given.at(0) ?? []);
    if (!isQuilt(inner)) return undefined;
    if (SINGLE.test(call.name)) return this.text([inner]);
    if (call.name.toUpperCase() !== "INDEX") return undefined;
    const answer = this.answer(this.call(inner));
    if (!Array.isArray(answer)) return answer;
    const at = call.given.slice(1).map((given) => this.argument(given));
    return this.pick(quiltId(inner)!, answer, at);
  }

  /** One cell of a table, as INDEX picks it. */
  private pick(id: string, table: Formula[][], at: readonly Argument[]): Formula {
    const places = at.map((argument) => (argument.kind === "typed" ? Number(argument.value) : NaN));
    const [row, column] = places.length === 1 && table.length === 1 ? [1, places[0]] : [places[0], places[1] ?? 1];
    const cell = table.find((_, index) => index === row - 1)?.find((_, index) => index === column - 1);
    return cell ?? this.leave(id, "INDEX does not say which cell of the table");
  }

  private oneValue(id: string, answer: Written): Formula {
    return Array.isArray(answer) ? this.leave(id, "a table where the formula needs one value") : answer;
  }

  /** A turned call as it stands in a cell: empty where the function stays empty. */
  private answer(call: TurnedCall | undefined): Written {
    if (!call) return NO_ANSWER;
    const one = (formula: Formula) => either(call.emptyIf, '""', formula);
    return Array.isArray(call.written) ? call.written.map((row) => row.map(one)) : one(call.written);
  }

  private call(call: Call): TurnedCall | undefined {
    const id = quiltId(call)!;
    const twin = twinOf(id);
    try {
      if ("whyNot" in twin) throw new NoTwin(twin.whyNot);
      const answer = write(
        twin,
        call.given.map((given) => this.argument(given)),
      );
      if (cellsOf(answer.written).some((cell) => written(cell).length > LONGEST_FORMULA)) throw new NoTwin(TOO_LONG);
      this.turned.push(id);
      return { ...answer, twin };
    } catch (thrown) {
      if (!(thrown instanceof NoTwin)) throw thrown;
      this.leave(id, thrown.message);
      return undefined;
    }
  }

  private leave(id: string, why: string): Formula {
    this.left.push({ id, why });
    return NO_ANSWER;
  }

  /** What is known of an argument before any number is typed. */
  private argument(given: readonly Part[]): Argument {
    const parts = bare(given);
    if (parts.length === 0) return { kind: "left out" };
    const typed = typedValue(parts);
    if (typed !== undefined) return { kind: "typed", value: typed };
    const [only, ...more] = parts;
    if (more.length === 0 && only.kind === "leaf") return this.reference(only.type, only.text);
    if (more.length === 0 && only.kind === "group") return { kind: "range", text: this.text(parts) };
    if (more.length === 0 && isQuilt(only)) return this.nested(only);
    if (holdsRange(parts)) throw new NoTwin("an argument works with several cells at once");
    return this.computed(parts);
  }

  private reference(type: string, text: string): Argument {
    const many =
      type === "structured" ? !/@|#This Row/i.test(text) : type !== "range_named" && /:/.test(text.replace(/^.*!/, ""));
    if (many || this.rangeNames.has(text.toLowerCase())) return { kind: "range", text };
    return { kind: "one", text, emptyIf: plain`${text}=""` };
  }

  private nested(call: Call): One {
    const turned = this.call(call);
    if (!turned) return { kind: "one", text: NO_ANSWER, emptyIf: false };
    const text = this.oneValue(quiltId(call)!, turned.written);
    return { kind: "one", text, emptyIf: turned.emptyIf, failsEmpty: true, ...GIVES[turned.twin.gives] };
  }

  private computed(parts: readonly Part[]): One {
    const text = this.text(parts);
    const has = (operators: string[]) => parts.some((part) => isOperator(part, ...operators));
    const number = (has(ARITHMETIC) && !has(NO_ARITHMETIC)) || GIVE_NUMBERS.test(callOnly(parts)?.name ?? "");
    return { kind: "one", text, emptyIf: number ? false : plain`${text}=""`, number };
  }
}

const TOO_LONG = "the plain formula would be longer than a cell holds";

function quiltId(call: Call): string | undefined {
  return QUILT_NAME.exec(call.name)?.[1]?.toUpperCase();
}

function isQuilt(part: Part | undefined): part is Call {
  return part?.kind === "call" && quiltId(part) !== undefined;
}

function cellsOf(written: Written): Formula[] {
  return Array.isArray(written) ? written.flat() : [written];
}

/** The parts without white space and without parentheses around the whole. */
function bare(given: readonly Part[]): Part[] {
  const parts = significant(given);
  if (parts.length === 2 && isOperator(parts[0], "@")) return parts.slice(1);
  if (parts.length !== 1 || parts[0].kind !== "group" || parts[0].open === "{") return parts;
  return bare(parts[0].parts);
}

/** A number, text, TRUE or FALSE that is typed into the formula. */
function typedValue(parts: readonly Part[]): number | string | boolean | undefined {
  if (isOperator(parts[0], "+", "-") && parts.length > 1) {
    const value = typedValue(parts.slice(1));
    return typeof value === "number" ? (isOperator(parts[0], "-") ? -value : value) : undefined;
  }
  const [first] = parts;
  const isPercent = parts.length === 2 && isOperator(parts[1], "%");
  if (first.kind !== "leaf" || parts.length > (isPercent ? 2 : 1)) return undefined;
  if (first.type === "number") return Number(first.text) / (isPercent ? 100 : 1);
  if (isPercent) return undefined;
  if (first.type === "string") return first.text.slice(1, -1).replaceAll('""', '"');
  return first.type === "bool" ? first.text.toUpperCase() === "TRUE" : undefined;
}

/** Whether several cells are worked with outside of any call, so that the answer would be several, too. */
function holdsRange(parts: readonly Part[]): boolean {
  return parts.some((part) => {
    if (part.kind === "call") return false;
    if (part.kind === "group") return part.open === "{" || holdsRange(part.parts);
    if (isOperator(part, ":", ",", "#")) return true;
    return part.type.startsWith("range_beam") || (part.type === "range" && part.text.replace(/^.*!/, "").includes(":"));
  });
}
