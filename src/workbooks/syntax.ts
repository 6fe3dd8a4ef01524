/** The parts of a formula: calls with their arguments, parentheses and single tokens, nothing of the text lost. */
import { mergeRefTokens, type Token, tokenize } from "@borgar/fx/xlsx";

export type Part = Leaf | Group | Call;

/** One token, white space included. */
export interface Leaf {
  readonly kind: "leaf";
  /** The tokenizer's word for it, such as "number", "string", "range" or "operator". */
  readonly type: string;
  readonly text: string;
}

/** What stands between parentheses or braces. */
export interface Group {
  readonly kind: "group";
  readonly open: "(" | "{";
  readonly parts: Part[];
}

export interface Call {
  readonly kind: "call";
  /** As it stands, with what the file puts before it: `SUM`, `_xldudf_QUILT_LENGTH`, `[2]!_xldudf_QUILT_LENGTH`. */
  readonly name: string;
  readonly given: Part[][];
}

/** Deeper than any formula that a spreadsheet lets a maker write. */
const DEEPEST = 256;

/** The parts of a formula, the equals sign left out; undefined where it is no formula. */
export function partsOf(formula: string): Part[] | undefined {
  const tokens = mergeRefTokens(tokenize(formula, { mergeRefs: false }));
  const first = tokens[0]?.type === "fx_prefix" ? 1 : 0;
  const reading = new Reading(tokens, first);
  const parts = reading.list();
  return reading.done ? parts : undefined;
}

/** The call that parts are, if they are one call and nothing else. */
export function callOnly(parts: readonly Part[]): Call | undefined {
  const [first, ...others] = significant(parts) as [Part?, ...Part[]];
  return others.length === 0 && first?.kind === "call" ? first : undefined;
}

/** The parts that are no white space. */
export function significant(parts: readonly Part[]): Part[] {
  return parts.filter((part) => part.kind !== "leaf" || !["whitespace", "newline"].includes(part.type));
}

/** Whether a part names cells. */
export function isReference(part: Part): boolean {
  return part.kind === "leaf" && /^(?:range|structured)/.test(part.type);
}

/** Whether a part is this operator. */
export function isOperator(part: Part | undefined, ...operators: string[]): boolean {
  return part?.kind === "leaf" && part.type === "operator" && operators.includes(part.text);
}

class Reading {
  private depth = 0;
  private broken = false;

  constructor(
    private readonly tokens: readonly Token[],
    private at: number,
  ) {}

  /** Whether every token has its place, and every parenthesis its other half. */
  get done(): boolean {
    return this.atEnd && !this.broken;
  }

  private get atEnd(): boolean {
    return this.at >= this.tokens.length;
  }

  /** Parts up to the end, or to what closes or separates on this level. */
  list(): Part[] {
    const parts: Part[] = [];
    while (!this.atEnd && !this.isAt(")") && !this.isAt("}") && !(this.depth > 0 && this.isAt(",")))
      parts.push(this.part());
    return parts;
  }

  private part(): Part {
    const { type, value } = this.tokens[this.at];
    if (this.isAt("(") || this.isAt("{")) return this.group(value as "(" | "{");
    const name = this.callName();
    if (name !== undefined) return { kind: "call", name, given: this.given() };
    this.at += 1;
    return { kind: "leaf", type, text: value };
  }

  /** The name of a call that starts here, with the workbook that it comes from. */
  private callName(): string | undefined {
    const skip = this.tokens[this.at].type.startsWith("context") && this.isAt("!", 1) ? 2 : 0;
    const tokens = this.tokens.slice(this.at, this.at + skip + 1);
    if (tokens[skip]?.type !== "func" || !this.isAt("(", skip + 1)) return undefined;
    this.at += skip + 1;
    return tokens.map(({ value }) => value).join("");
  }

  private given(): Part[][] {
    const given: Part[][] = [];
    this.inside(")", () => {
      do {
        given.push(this.list());
      } while (this.skip(","));
    });
    return given.length === 1 && given[0].length === 0 ? [] : given;
  }

  private group(open: "(" | "{"): Group {
    const parts: Part[] = [];
    this.inside(open === "(" ? ")" : "}", () => {
      parts.push(...this.list());
      while (this.skip(",")) parts.push({ kind: "leaf", type: "operator", text: "," }, ...this.list());
    });
    return { kind: "group", open, parts };
  }

  /** Reads what stands between the opening token here and the closing one. */
  private inside(close: string, read: () => void): void {
    this.at += 1;
    this.depth += 1;
    if (this.depth > DEEPEST) this.at = this.tokens.length;
    read();
    this.depth -= 1;
    if (!this.skip(close)) this.broken = true;
  }

  private skip(operator: string): boolean {
    if (!this.isAt(operator)) return false;
    this.at += 1;
    return true;
  }

  private isAt(operator: string, ahead = 0): boolean {
    const token = this.tokens.at(this.at + ahead);
    return token?.type === "operator" && token.value === operator;
  }
}
