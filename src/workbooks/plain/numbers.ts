/** The part of reading arguments that has to do with numbers, units and guards; reader.ts has what templates ask for. */
import { CONVENTIONS, type Conventions } from "../../math/conventions";
import { afterMinus, parseLength } from "../../math/length";
import { Problem } from "../../math/problem";
import { fabricUnit, fromInches, type System } from "../../math/units";
import { type Argument, NO_ANSWER, NoTwin, type One } from "./argument";
import { above, all, any, type Condition, either, type Formula, not, plain, quoted, written } from "./formula";

/** A number without a unit above this is a date in disguise, as at the functions' door. */
export const LONGEST_BARE = 1000;
export const LONGEST = 10_000_000;

/** A length below this is a slip of the keyboard, as at the functions' door: a thousandth of an inch. */
export const SHORTEST = { in: 0.001, cm: 0.00254 };

const UNIT_WORDS = {
  in: ["in", "inch", "inches"],
  cm: ["cm", "centimeter", "centimeters", "centimetre", "centimetres"],
} as const satisfies Record<System, readonly string[]>;

/** A default: the name of a convention, a number that is the same in both systems, or one number for each. */
export type Usual = keyof Conventions | number | Readonly<Record<System, number>>;

/** What a number must be. */
export interface Limits {
  /** the least it may be, or what it must be above */
  least?: number;
  above?: number;
  most?: number;
  whole?: boolean;
  /** it is a length of something that is cut or sewn: 0 where it may be, else not below the shortest */
  cut?: boolean;
}

/** Reads numbers from the arguments of one call and gathers what they must be. */
export class NumberReader {
  /** When the answer stays empty. */
  emptyIf: Condition = false;
  /** Whether the call works in centimeters. */
  readonly metric: Condition;
  private conditions: Condition[] = [];

  constructor(
    private readonly parameters: readonly string[],
    private readonly given: readonly Argument[],
  ) {
    this.metric = parameters.includes("units") ? this.readUnits() : false;
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

  /** A number within limits; left out or blank, the usual one. */
  protected number(
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
    const value = this.checkedUnlessEmpty(one, limits);
    if (usual === undefined) return value;
    const isCell = one.emptyIf !== false && !one.failsEmpty;
    return usual === 0 && isCell ? plain`N(${value})` : either(one.emptyIf, this.usual(usual), value);
  }

  /** A value of which something is required only where it is not empty. */
  private checkedUnlessEmpty(one: One, limits: Limits): Formula {
    const outer = this.conditions;
    this.conditions = [];
    const value = this.checked(one, limits);
    const needed = all(this.conditions);
    this.conditions = outer;
    const lazily = one.failsEmpty && typeof needed === "string" && typeof one.emptyIf === "string";
    this.require(lazily ? plain`IF(${one.emptyIf},TRUE,${needed})` : any([one.emptyIf, needed]));
    return value;
  }

  /** A value that is typed into the formula. */
  private typed(value: number | string | boolean, limits: Limits, readText: (text: string) => Formula): Formula {
    if (typeof value === "boolean") return this.refuse();
    if (typeof value === "number") {
      if (limits.cut && value > 0 && value < SHORTEST.cm) this.require(value < SHORTEST.in ? false : not(this.metric));
      return holds(value, limits) ? value : this.refuse();
    }
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
  protected checked(one: One, limits: Limits): Formula {
    const { text } = one;
    const known = one.number === true && (one.notNegative === true || one.positive === true);
    if (!one.number) this.require(`ISNUMBER(${written(text)})`);
    if (limits.cut && !one.notNegative) {
      const longEnough = plain`${text}>=${this.bySystem((system) => SHORTEST[system])}`;
      this.require(limits.above === 0 ? longEnough : `OR(${plain`${text}=0`},${longEnough})`);
    } else if (limits.above === 0 && !one.positive) this.require(above(0, text));
    else if (limits.least !== undefined && !(one.notNegative && limits.least === 0)) {
      this.require(plain`${text}>=${limits.least}`);
    }
    if (limits.most !== undefined && !known) this.require(plain`${text}<=${limits.most}`);
    if (limits.whole && !one.whole) this.require(plain`${text}=INT(N(${text}))`);
    return text;
  }

  protected argument(name: string): Argument {
    const position = this.parameters.indexOf(name);
    if (position < 0) throw new Error(`the twin has no argument ${name}`);
    return this.given[position] ?? { kind: "left out" };
  }

  protected one(name: string, argument: Argument): One {
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
  protected lengthText(text: string): Formula {
    return this.bySystem((system) => tidy(fromInches(parseLength(text, system), system)));
  }

  /** A text length that may be below 0. */
  protected signedText(text: string): Formula {
    const size = afterMinus(text);
    if (size === undefined) return this.lengthText(text);
    return this.bySystem((system) => tidy(-fromInches(parseLength(size, system), system)));
  }

  /** A text amount of fabric, in yards (meters). */
  protected fabricText(text: string): Formula {
    return this.bySystem((system) => {
      const unit = fabricUnit(system);
      return tidy(fromInches(parseLength(text, unit), unit));
    });
  }
}

/** When a value is an empty text or blank. */
export function emptyIf(argument: Argument): Condition {
  return argument.kind === "one" ? argument.emptyIf : isEmptyAlways(argument);
}

/** Whether an argument is left out, or an empty text is typed. */
export function isEmptyAlways(argument: Argument): boolean {
  if (argument.kind === "typed") return typeof argument.value === "string" && argument.value.trim() === "";
  return argument.kind === "left out";
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

/** Undoes the dust of converting units. */
export function tidy(value: number): number {
  return Number(value.toPrecision(14));
}
