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
import { CONVENTIONS } from "../../math/conventions";
import { MOST_COUNTED, Problem } from "../../math/problem";
import { fabricUnit, toInches } from "../../math/units";
import { NO_ANSWER, NoTwin, type One } from "./argument";
import { any, type Condition, either, equal, type Formula, plain, quoted, written } from "./formula";
import {
  emptyIf,
  isEmptyAlways,
  type Limits,
  LONGEST,
  LONGEST_BARE,
  NumberReader,
  SHORTEST,
  tidy,
  type Usual,
} from "./numbers";

/** How far a typed step may miss an even part, in yards (meters). */
const STEP_DUST = 2e-7;

/** Reads the arguments of one call. */
export class Reader extends NumberReader {
  /** A length above 0; left out, the usual one. */
  length(name: string, usual?: Usual): Formula {
    return this.number(name, { above: 0, most: LONGEST_BARE, cut: true }, usual);
  }

  /** A length that may be 0. */
  lengthOrZero(name: string, usual?: Usual): Formula {
    return this.number(name, { least: 0, most: LONGEST_BARE, cut: true }, usual);
  }

  /** A length above 0; left out, what another formula gives. */
  lengthOr(name: string, otherwise: Formula): Formula {
    return this.numberOr(name, { above: 0, most: LONGEST_BARE, cut: true }, otherwise);
  }

  /** A length that may be 0; left out, what another formula gives. */
  lengthOrZeroOr(name: string, otherwise: Formula): Formula {
    return this.numberOr(name, { least: 0, most: LONGEST_BARE, cut: true }, otherwise);
  }

  /** A length that may be longer than anything on a quilt. */
  longLength(name: string): Formula {
    return this.number(name, { least: 0, most: LONGEST });
  }

  /** A length that may be below 0. */
  signedLength(name: string): Formula {
    return this.number(name, { least: -LONGEST, most: LONGEST }, undefined, (text) => this.signedText(text));
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
    const withUnit = argument.kind === "typed" && /[a-z'"]/i.test(String(argument.value));
    const step = this.number(
      name,
      { least: 0.01, most: withUnit ? LONGEST_BARE : 1 + STEP_DUST },
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

  /** A range of lengths above 0, at least one; blank cells do not count, text in a cell is refused. */
  lengths(name: string): string {
    const text = this.range(name);
    this.require(`SUMPRODUCT((${text}<>"")*1)=COUNT(${text})`);
    this.require(plain`MIN(${text})>=${this.bySystem((system) => SHORTEST[system])}`);
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

  private numberOr(name: string, limits: Limits, otherwise: Formula): Formula {
    const argument = this.argument(name);
    if (isEmptyAlways(argument)) return otherwise;
    const length = this.number(name, limits, undefined, undefined, true);
    return either(emptyIf(argument), otherwise, length);
  }

  /** Steps in a yard (meter) of a step that is an even part of it, or a whole number of them. */
  private evenSteps(step: Formula, empty: Condition): Formula {
    if (typeof step === "number") {
      const parts = Number((step < 1 ? 1 / step : step).toFixed(0));
      const even = step < 1 ? 1 / parts : parts;
      return Math.abs(even - step) < STEP_DUST ? (step < 1 ? parts : 1 / parts) : this.refuse();
    }
    const even = plain`IF(${step}<1,1/ROUND(1/${step},0),ROUND(${step},0))`;
    this.require(either(empty, "TRUE", plain`ABS(${even}-${step})<${STEP_DUST}`) as Condition);
    return plain`1/${even}`;
  }
}

/** A word as the functions read it: capitals and spaces make no difference. */
function plainWord(value: string | number | boolean): string {
  return String(value).trim().toLowerCase().replace(/\s+/g, " ");
}

/** A number written as text, such as "5" or "45 %". */
function plainNumber(text: string): number {
  const match = /^(-?(?:\d+\.?\d*|\.\d+))\s*(%?)$/.exec(text.trim());
  if (!match) throw new Problem("bad input", "no number");
  return match[2] === "%" ? Number(match[1]) / 100 : Number(match[1]);
}
