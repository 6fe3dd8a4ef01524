/**
 * Reads the arguments of a call while its twin is written, as the functions' door does while a function runs; what the
 * arguments must be is gathered on the way and guards the formula: where an argument is missing, out of range or no number,
 * the cell shows #N/A and never a plausible wrong number.
 *
 * What built-in functions cannot do decides these rules:
 * - A text length typed into the formula ("2 1/2") is read when the formula is written. A text in a cell is not read, since
 *   programs disagree about it: the cell shows #N/A.
 * - Everything stays in the maker's units. Units in a cell are asked for in the formula.
 * - A blank cell takes the usual value, or leaves the answer empty where the function does.
 */
import { CONVENTIONS, type Conventions } from "../../math/conventions";
import { parseLength } from "../../math/length";
import { MOST_COUNTED, Problem } from "../../math/problem";
import { fabricUnit, fromInches, type System, toInches } from "../../math/units";
import type { Argument, One } from "./argument";
import { above, all, any, type Condition, either, equal, type Formula, not, plain, quoted, written } from "./formula";

/** Why a call has no twin, in words for the report. */
export class NoTwin extends Error {}

/** What every program shows where there is no answer. */
export const NO_ANSWER = "NA()";

/** A number without a unit above this is a date in disguise, as at the functions' door. */
const LONGEST_BARE = 1000;
const LONGEST = 10_000_000;

const UNIT_WORDS = {
  in: ["in", "inch", "inches"],
  cm: ["cm", "centimeter", "centimeters", "centimetre", "centimetres"],
} as const satisfies Record<System, readonly string[]>;

/** A default: the name of a convention, a number that is the same in both systems, or one number for each. */
export type Usual = keyof Conventions | number | Readonly<Record<System, number>>;

interface Limits {
  /** the least it may be, or what it must be above */
  least?: number;
  above?: number;
  most?: number;
  whole?: boolean;
}

/** Reads the arguments of one call and gathers what they must be. */
export class Reader {
  emptyIf: Condition = false;
  private conditions: Condition[] = [];
  /** Whether the call works in centimeters. */
  readonly metric: Condition;

  constructor(
    private readonly parameters: readonly string[],
    private readonly given: readonly Argument[],
  ) {
    this.metric = parameters.includes("units") ? this.readUnits() : false;
  }

  /** A length above 0; left out, the usual one. */
  length(name: string, usual?: Usual): Formula {
    return this.number(name, { above: 0, most: LONGEST_BARE }, usual);
  }

  /** A length that may be 0. */
  lengthOrZero(name: string, usual?: Usual): Formula {
    return this.number(name, { least: 0, most: LONGEST_BARE }, usual);
  }

  /** A length above 0; left out, what another formula gives. */
  lengthOr(name: string, otherwise: Formula): Formula {
    return this.numberOr(name, { above: 0, most: LONGEST_BARE }, otherwise);
  }

  /** A length that may be 0; left out, what another formula gives. */
  lengthOrZeroOr(name: string, otherwise: Formula): Formula {
    return this.numberOr(name, { least: 0, most: LONGEST_BARE }, otherwise);
  }

  /** A length that may be longer than anything on a quilt. */
  longLength(name: string): Formula {
    return this.number(name, { least: 0, most: LONGEST });
  }

  /** A length that may be below 0. */
  signedLength(name: string): Formula {
    return this.number(name, { least: -LONGEST, most: LONGEST });
  }

  /** An amount of fabric in yards (meters). */
  fabric(name: string): Formula {
    return this.number(name, { least: 0, most: LONGEST_BARE }, undefined, (text) => this.fabricText(text));
  }

  /** A whole number from `least` to a million. */
  count(name: string, usual?: Usual, least = 0): Formula {
    return this.number(name, { least, most: MOST_COUNTED, whole: true }, usual, plainNumber);
  }

  /** A count; where its cell is empty, the answer stays empty. */
  countOrEmpty(name: string): Formula {
    const argument = this.argument(name);
    this.staysEmpty(emptyIf(argument));
    return argument.kind === "one"
      ? this.checked(argument, { least: 0, most: MOST_COUNTED, whole: true })
      : this.count(name);
  }

  /** A plain number, such as a price or a rate. */
  plainNumber(name: string, limits: { least?: number; most?: number } = {}, usual?: number): Formula {
    return this.number(name, { least: 0, most: LONGEST, ...limits }, usual, plainNumber);
  }

  /** A rate such as 45 %; a bare number above `largest` most likely lacks its percent sign. */
  rate(name: string, largest = 1): Formula {
    const argument = this.argument(name);
    const percent = argument.kind === "typed" && String(argument.value).includes("%");
    return this.number(name, { least: 0, most: percent ? LONGEST : largest }, undefined, plainNumber);
  }

  /** The shop's steps in a yard (meter), so that an amount is a whole number of steps divided by this. */
  stepsPerUnit(name: string): Formula {
    const argument = this.argument(name);
    const usual = this.bySystem((system) => tidy(toInches(1, fabricUnit(system)) / CONVENTIONS[system].shopStep));
    const step = this.number(
      name,
      { least: 0.01, most: LONGEST_BARE },
      undefined,
      (text) => this.fabricText(text),
      true,
    );
    if (isEmptyAlways(argument)) return usual;
    return either(emptyIf(argument), usual, this.evenSteps(step, emptyIf(argument)));
  }

  /** What one of several words calls for. A branch is written only where it can be chosen. */
  choose(name: string, usual: string | undefined, branches: Readonly<Record<string, () => Formula>>): Formula {
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) return usual === undefined ? this.refuse() : branches[usual]();
    const words = Object.keys(branches);
    if (argument.kind === "typed") {
      const word = plainWord(argument.value);
      return words.includes(word) ? branches[word]() : this.refuse();
    }
    const { text, emptyIf: empty } = this.one(name, argument);
    const known = words.map((word) => plain`${text}=${quoted(word)}`);
    this.require(any([usual === undefined ? false : empty, ...known]));
    const others = words.filter((word) => word !== usual);
    return others.reduce<Formula>(
      (rest, word) => either(plain`${text}=${quoted(word)}`, this.branch(branches[word]), rest),
      usual === undefined ? NO_ANSWER : this.branch(branches[usual]),
    );
  }

  /** One of several words on which the rows of a table depend, so that it must be typed into the formula. */
  word(name: string, usual: string, words: readonly string[]): string {
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) return usual;
    if (argument.kind !== "typed") throw new NoTwin(`the table has other rows where ${name} changes`);
    const word = plainWord(argument.value);
    if (!words.includes(word)) this.refuse();
    return word;
  }

  /** Whether the word that is chosen from several is one of some of them. */
  isChosen(name: string, usual: string, words: readonly string[], some: readonly string[]): Condition {
    const is = (chosen: string): Condition => some.includes(chosen);
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) return is(usual);
    if (argument.kind === "typed") {
      const word = plainWord(argument.value);
      if (!words.includes(word)) this.refuse();
      return is(word);
    }
    const { text, emptyIf: empty } = this.one(name, argument);
    this.require(any([empty, ...words.map((word) => plain`${text}=${quoted(word)}`)]));
    return any([is(usual) === true ? empty : false, ...some.map((word) => plain`${text}=${quoted(word)}`)]);
  }

  /** What one of several numbers calls for. */
  chooseNumber(name: string, usual: number, branches: ReadonlyMap<number, () => Formula>): Formula {
    const argument = this.argument(name);
    const value = this.number(name, { least: -LONGEST, most: LONGEST }, usual, plainNumber);
    if (typeof value === "number") return branches.get(value)?.() ?? this.refuse();
    this.require(any([emptyIf(argument), ...[...branches.keys()].map((number) => plain`${value}=${number}`)]));
    const others = [...branches].filter(([number]) => number !== usual);
    return others.reduce<Formula>(
      (rest, [number, formula]) => either(equal(value, number), this.branch(formula), rest),
      this.branch(branches.get(usual)!),
    );
  }

  /** TRUE or FALSE. */
  flag(name: string, usual: boolean): Condition {
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) return usual;
    if (argument.kind === "typed") {
      const word = String(argument.value).trim().toLowerCase();
      if (["true", "yes", "1"].includes(word)) return true;
      if (!["false", "no", "0"].includes(word)) this.refuse();
      return false;
    }
    const { text, emptyIf: empty } = this.one(name, argument);
    const is = (words: string[]) => any(words.map((word) => plain`${text}=${word}`));
    const [yes, no] = [is(["TRUE", '"yes"', "1"]), is(["FALSE", '"no"', "0"])];
    this.require(any([empty, yes, no]));
    return usual ? not(all([not(empty), no])) : yes;
  }

  /** A range of lengths above 0, at least one; blank cells do not count, text in a cell is refused. */
  lengths(name: string): string {
    const text = this.range(name);
    this.require(`SUMPRODUCT((${text}<>"")*1)=COUNT(${text})`);
    this.require(`MIN(${text})>0`);
    this.require(`MAX(${text})<=${LONGEST_BARE}`);
    return text;
  }

  /** The sum of a range or of one value, 0 where it is left out; text in a cell is refused. */
  sum(name: string): Formula {
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) return 0;
    if (argument.kind === "typed") return this.plainNumber(name);
    const text = written((argument as One).text);
    this.require(`SUMPRODUCT((${text}<>"")*1)=COUNT(${text})`);
    this.require(`MIN(${text})>=0`);
    this.require(`MAX(${text})<=${LONGEST}`);
    return `SUM(${text})`;
  }

  /** A range as it stands, for templates that say themselves what it may hold. */
  range(name: string): string {
    const argument = this.argument(name);
    if (argument.kind === "range") return argument.text;
    if (argument.kind === "one" && argument.emptyIf !== false) {
      const text = written(argument.text);
      this.require(`OR(ROWS(${text})*COLUMNS(${text})>1,COUNTA(${text})>0)`);
      return text;
    }
    if (!isEmptyAlways(argument)) throw new NoTwin(`${name} is no range`);
    return written(this.refuse());
  }

  /** Whether an argument was left out or its cell is empty. */
  isEmpty(name: string): Condition {
    return emptyIf(this.argument(name));
  }

  /** The answer stays empty where this holds. */
  staysEmpty(condition: Condition): void {
    this.emptyIf = any([this.emptyIf, condition]);
  }

  /** Shows #N/A unless the condition holds. */
  require(condition: Condition): void {
    this.conditions.push(condition);
  }

  /** Refuses the call whatever the cells hold. */
  refuse(): Formula {
    this.require(false);
    return NO_ANSWER;
  }

  /** The one value in inches, the other in centimeters. */
  bySystem(value: (system: System) => Formula): Formula {
    return either(this.metric, value("cm"), value("in"));
  }

  /** The length of one yard (meter), 36 in or 100 cm. */
  get fabricLength(): Formula {
    return this.bySystem((system) => (system === "in" ? 36 : 100));
  }

  /** The formula behind the guard of what was required. */
  guarded(formula: Formula): Formula {
    return either(all(this.conditions), formula, NO_ANSWER);
  }

  /** A formula with what it requires for itself, so that one branch does not refuse for the other. */
  branch(formula: () => Formula): Formula {
    const outer = this.conditions;
    this.conditions = [];
    try {
      return this.guarded(formula());
    } finally {
      this.conditions = outer;
    }
  }

  private numberOr(name: string, limits: Limits, otherwise: Formula): Formula {
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) return otherwise;
    const length = this.number(name, limits, undefined, undefined, true);
    return either(emptyIf(argument), otherwise, length);
  }

  /** A number within limits; left out or blank, the usual one. */
  private number(
    name: string,
    limits: Limits,
    usual?: Usual,
    readText: (text: string) => Formula = (text) => this.lengthText(text),
    mayBeEmpty = false,
  ): Formula {
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) {
      if (usual !== undefined) return this.usual(usual);
      return mayBeEmpty ? 0 : this.refuse();
    }
    if (argument.kind === "typed") return this.typed(argument.value, limits, readText);
    const one = this.one(name, argument);
    if (usual === undefined && !mayBeEmpty) {
      if (one.number) this.require(not(one.emptyIf));
      return this.checked(one, limits);
    }
    const value = this.branchConditions(one.emptyIf, () => this.checked(one, limits));
    if (usual === undefined) return value;
    return usual === 0 && one.emptyIf !== false ? plain`N(${value})` : either(one.emptyIf, this.usual(usual), value);
  }

  /** Runs a reading whose conditions need to hold only where `empty` does not. */
  private branchConditions(empty: Condition, reading: () => Formula): Formula {
    if (empty === false) return reading();
    const outer = this.conditions;
    this.conditions = [];
    const value = reading();
    const needed = all(this.conditions);
    this.conditions = outer;
    this.require(any([empty, needed]));
    return value;
  }

  /** A value that is typed into the formula. */
  private typed(value: number | string | boolean, limits: Limits, readText: (text: string) => Formula): Formula {
    if (typeof value === "boolean") return this.refuse();
    if (typeof value === "number") return holds(value, limits) ? value : this.refuse();
    try {
      const read = readText(value);
      const longer = limits.most === LONGEST_BARE ? { ...limits, most: LONGEST } : limits;
      return typeof read === "string" || holds(read, longer) ? read : this.refuse();
    } catch (thrown) {
      if (thrown instanceof Problem) return this.refuse();
      throw thrown;
    }
  }

  /** A value that may change: what is not known of it is required. */
  private checked(one: One, limits: Limits): Formula {
    const { text } = one;
    const known = one.number === true && (one.notNegative === true || one.positive === true);
    if (!one.number) this.require(`ISNUMBER(${written(text)})`);
    if (limits.above === 0 && !one.positive) this.require(above(0, text));
    if (limits.least !== undefined && !(one.notNegative && limits.least === 0)) {
      this.require(plain`${text}>=${limits.least}`);
    }
    if (limits.most !== undefined && !known) this.require(plain`${text}<=${limits.most}`);
    if (limits.whole && !one.whole) this.require(plain`${text}=INT(N(${text}))`);
    return text;
  }

  private argument(name: string): Argument {
    const position = this.parameters.indexOf(name);
    if (position < 0) throw new Error(`the twin has no argument ${name}`);
    return this.given[position] ?? { kind: "left out" };
  }

  private one(name: string, argument: Argument): One {
    if (argument.kind !== "one") throw new NoTwin(`${name} is a range where the formula needs one cell`);
    return argument;
  }

  /** What is taken where nothing is said. */
  usual(usual: Usual): Formula {
    if (typeof usual === "number") return usual;
    return this.bySystem((system) =>
      typeof usual === "string" ? tidy(fromInches(CONVENTIONS[system][usual], system)) : usual[system],
    );
  }

  private readUnits(): Condition {
    const argument = this.argument("units");
    if (isEmptyAlways(argument)) return false;
    if (argument.kind === "typed") {
      const word = String(argument.value).trim().toLowerCase();
      const system = (["in", "cm"] as const).find((each) => (UNIT_WORDS[each] as readonly string[]).includes(word));
      if (system === undefined) this.refuse();
      return system === "cm";
    }
    const { text, emptyIf: empty } = this.one("units", argument);
    this.require(any([empty, ...[...UNIT_WORDS.in, ...UNIT_WORDS.cm].map((word) => plain`${text}=${quoted(word)}`)]));
    return `LEFT(${written(text)})="c"`;
  }

  /** A text length, in the maker's units. */
  private lengthText(text: string): Formula {
    return this.bySystem((system) => tidy(fromInches(parseLength(text, system), system)));
  }

  /** A text amount of fabric, in yards (meters). */
  private fabricText(text: string): Formula {
    return this.bySystem((system) => {
      const unit = fabricUnit(system);
      return tidy(fromInches(parseLength(text, unit), unit));
    });
  }

  /** Steps in a yard (meter) of a step that is an even part of it, or a whole number of them. */
  private evenSteps(step: Formula, empty: Condition): Formula {
    if (typeof step === "number") {
      const parts = Number((step < 1 ? 1 / step : step).toFixed(0));
      const even = step < 1 ? 1 / parts : parts;
      return Math.abs(even - step) < 2e-7 ? (step < 1 ? parts : 1 / parts) : this.refuse();
    }
    const even = plain`IF(${step}<1,1/ROUND(1/${step},0),ROUND(${step},0))`;
    this.require(either(empty, "TRUE", plain`ABS(${even}-${step})<0.0000002`) as Condition);
    return plain`1/${even}`;
  }
}

/** When a value is an empty text or blank. */
function emptyIf(argument: Argument): Condition {
  return argument.kind === "one" ? argument.emptyIf : isEmptyAlways(argument);
}

function isEmptyAlways(argument: Argument): boolean {
  if (argument.kind === "typed") return typeof argument.value === "string" && argument.value.trim() === "";
  return argument.kind === "left out";
}

/** A word as the functions read it: capitals and spaces make no difference. */
function plainWord(value: string | number | boolean): string {
  return String(value).trim().toLowerCase().replace(/\s+/g, " ");
}

function holds(value: number, limits: Limits): boolean {
  const { least = -Infinity, most = Infinity } = limits;
  return (
    Number.isFinite(value) &&
    value >= least &&
    value <= most &&
    (limits.above === undefined || value > limits.above) &&
    (!limits.whole || Number.isInteger(value))
  );
}

/** A number written as text, such as "5" or "45 %". */
function plainNumber(text: string): number {
  const match = /^(-?(?:\d+\.?\d*|\.\d+))\s*(%?)$/.exec(text.trim());
  if (!match) throw new Problem("bad input", "no number");
  return match[2] === "%" ? Number(match[1]) / 100 : Number(match[1]);
}

/** Undoes the dust of converting units. */
function tidy(value: number): number {
  return Number(value.toPrecision(14));
}
