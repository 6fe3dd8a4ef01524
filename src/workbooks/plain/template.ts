/**
 * The vocabulary of the templates. A template asks for the arguments of a call by name and writes one formula, in the units
 * of the maker, from the rule of the trade; it shares no arithmetic with the worksheet functions, so that each checks the
 * other.
 */
import { type Argument, type Gives, NoTwin } from "./argument";
import { above, all, atMost, type Condition, type Formula, minus, not, plain, times, up } from "./formula";
import { Reader } from "./reader";

/** A single formula, or the rows of a small table. */
export type Written = Formula | Formula[][];

/** The plain twin of one worksheet function. */
export interface Twin {
  /** The names of the function's arguments, in order. */
  readonly parameters: readonly string[];
  readonly gives: Gives;
  readonly write: (read: Reader) => Written;
}

/** Describes a twin: the function's arguments in order, separated by spaces; what it gives; how it is written. */
export function twin(parameters: string, gives: Gives, write: Twin["write"]): Twin {
  return { parameters: parameters.split(" "), gives, write };
}

/** What a twin gives for one call. */
export interface Answer {
  /** Without the guard against an empty answer. */
  readonly written: Written;
  /** When the answer is an empty text. */
  readonly emptyIf: Condition;
}

/** Writes the twin of one call. */
export function write(twin: Twin, given: readonly Argument[]): Answer {
  if (given.length > twin.parameters.length) throw new NoTwin("it has more arguments than the function takes");
  const read = new Reader(twin.parameters, given);
  const answer = twin.write(read);
  return {
    written: Array.isArray(answer) ? answer.map((row) => row.map((cell) => read.guarded(cell))) : read.guarded(answer),
    emptyIf: read.emptyIf,
  };
}

/** What a family of functions has for twins, by the names of the functions. */
export type Twins = Readonly<Record<string, Twin>>;

/** The amount to buy for a length, in yards (meters), up to the shop's next step. */
export function fabricToBuy(read: Reader, length: Formula, step = "step"): Formula {
  const steps = read.stepsPerUnit(step);
  const unit = read.fabricLength;
  if (typeof steps !== "number" || typeof unit !== "number")
    return plain`${up(plain`${times(length, steps)}/${unit}`)}/${steps}`;
  const bought = up(plain`${length}/${unit / steps}`);
  return steps < 1 ? plain`${bought}*${1 / steps}` : times(1, steps) === 1 ? bought : plain`${bought}/${steps}`;
}

/** Usable width of opened fabric. */
export function openWidth(read: Reader, name: string): Formula {
  const width = read.length(name, "fabricWidth");
  read.require(not(isFolded(read, width)));
  return width;
}

/** Whether a width was most likely measured on folded fabric: 20 to 23 in. */
export function isFolded(read: Reader, width: Formula): Condition {
  const [least, most] = [20, 23].map((inches) => read.bySystem((system) => (system === "in" ? inches : inches * 2.54)));
  return all([atMost(least, width), atMost(width, most)]);
}

/** Strips that reach a length when they are joined end to end, every join costing `loss`. */
export function joinedStrips(length: Formula, strip: Formula, loss: Formula): Formula {
  return plain`MAX(1,${up(plain`${minus(length, loss)}/${minus(strip, loss)}`)})`;
}

/** Requires that a join leaves something of a strip. */
export function requireJoinable(read: Reader, strip: Formula, loss: Formula): void {
  read.require(above(loss, strip));
}
