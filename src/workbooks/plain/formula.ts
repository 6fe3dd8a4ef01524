/**
 * Composing formula text from the built-in functions that every spreadsheet program has. What is known while composing (a
 * number typed into the formula, a condition that always holds) is worked out at once, so that the text stays short.
 *
 * Binary dust is taken off with ROUND(…, 9) before anything is rounded up or down: programs disagree about 42/2.1.
 */

/** A number that is known already, or formula text, without the equals sign. */
export type Formula = number | string;

/** Known already, or formula text that is TRUE or FALSE. */
export type Condition = boolean | string;

/** What holds a formula text together: one word, number or text, or one call or parenthesis. */
const WORD = /^(?:[\w.$!#]+|"[^"]*")$/;
const CALL = /^[\w.]*\(/;

/** Composes formula text; an operand that is itself composed is put into parentheses where it has to be. */
export function plain(strings: TemplateStringsArray, ...operands: Formula[]): string {
  let text = strings[0];
  operands.forEach((operand, index) => {
    const next = strings[index + 1];
    const stands = /(?:^|[(,])$/.test(text) && /^(?:$|[),])/.test(next);
    text += (stands ? written(operand) : joined(operand)) + next;
  });
  return text;
}

/** A formula as text. */
export function written(formula: Formula): string {
  return typeof formula === "string" ? formula : numberText(formula);
}

/** Text typed into a formula. */
export function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** A formula as one operand: in parentheses unless it holds together by itself. */
export function joined(formula: Formula): string {
  const text = written(formula);
  return WORD.test(text) || isOneCall(text) ? text : `(${text})`;
}

function isOneCall(text: string): boolean {
  if (!CALL.test(text)) return false;
  let depth = 0;
  let inText: string | undefined;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (inText !== undefined) {
      if (character === inText) inText = undefined;
    } else if (character === '"' || character === "'") inText = character;
    else if (character === "(") depth += 1;
    else if (character === ")" && --depth === 0) return at === text.length - 1;
  }
  return false;
}

/** Fifteen digits are what every program keeps of a number typed into a formula. */
function numberText(value: number): string {
  return String(Number(value.toPrecision(15))).toUpperCase();
}

/** `a + b`; nothing is written for a 0. */
export function plus(a: Formula, b: Formula): Formula {
  if (typeof a === "number" && typeof b === "number") return a + b;
  if (b === 0) return a;
  return a === 0 ? b : plain`${a}+${b}`;
}

/** `a - b`; nothing is written for a 0. */
export function minus(a: Formula, b: Formula): Formula {
  return b === 0 ? a : plain`${a}-${b}`;
}

/** `a * b`; nothing is written for a 1, and a 0 makes 0. */
export function times(a: Formula, b: Formula): Formula {
  if (a === 0 || b === 0) return 0;
  if (b === 1) return a;
  return a === 1 ? b : plain`${a}*${b}`;
}

/** The quotient up to the next whole number. An exact fit stays one. */
export function up(quotient: Formula): string {
  return plain`ROUNDUP(ROUND(${quotient},9),0)`;
}

/** The quotient down to the whole number below. An exact fit stays one. */
export function down(quotient: Formula): string {
  return plain`INT(ROUND(${quotient},9))`;
}

/** Down to the multiple of `mark` below; a mark of 0 leaves the value exact. */
export function downToMark(mark: Formula, value: Formula): Formula {
  return mark === 0 ? value : plain`IF(${mark}=0,${value},${down(plain`${value}/${mark}`)}*${mark})`;
}

/** To the nearest multiple of `mark`, halves up; a mark of 0 leaves the value exact. */
export function toNearestMark(mark: Formula, value: Formula): Formula {
  return mark === 0 ? value : plain`IF(${mark}=0,${value},INT(ROUND(${value}/${mark},9)+0.5)*${mark})`;
}

/** How many of `each` cover `whole`, where `whole` is not below 0. */
export function covers(each: Formula, whole: Formula): string {
  return up(plain`${whole}/${each}`);
}

/** How many of `each` come out of `whole`, where `whole` is not below 0. */
export function fits(each: Formula, whole: Formula): string {
  return down(plain`${whole}/${each}`);
}

/** Up to the next multiple of `mark`; a mark of 0 leaves the value exact. */
export function upToMark(mark: Formula, value: Formula): Formula {
  if (mark === 0) return value;
  if (typeof mark === "number") {
    const parts = wholeParts(mark);
    return parts === undefined
      ? plain`${up(plain`${value}/${mark}`)}*${mark}`
      : plain`${up(times(value, parts))}/${parts}`;
  }
  return plain`IF(${mark}=0,${value},${up(plain`${value}/${mark}`)}*${mark})`;
}

/** 8 for 1/8: dividing by it is exact where multiplying by the decimal fraction is not. */
function wholeParts(mark: number): number | undefined {
  const parts = 1 / mark;
  const whole = Number(parts.toFixed(0));
  return whole > 1 && Math.abs(parts - whole) < 1e-9 ? whole : undefined;
}

/** `IF`, or the one branch that is known to be taken. */
export function either(condition: Condition, then: Formula, otherwise: Formula): Formula {
  if (typeof condition === "boolean") return condition ? then : otherwise;
  return written(then) === written(otherwise) ? then : plain`IF(${condition},${then},${otherwise})`;
}

/** `AND` of conditions; those that always hold are left out. */
export function all(conditions: readonly Condition[]): Condition {
  const open = [...new Set(conditions.filter((condition) => condition !== true))];
  if (open.length === 0) return true;
  if (open.includes(false)) return false;
  return open.length === 1 ? open[0] : `AND(${open.join(",")})`;
}

/** `OR` of conditions; those that never hold are left out. */
export function any(conditions: readonly Condition[]): Condition {
  const open = [...new Set(conditions.filter((condition) => condition !== false))];
  if (open.length === 0) return false;
  if (open.includes(true)) return true;
  return open.length === 1 ? open[0] : `OR(${open.join(",")})`;
}

/** The opposite of a condition. */
export function not(condition: Condition): Condition {
  return typeof condition === "boolean" ? !condition : `NOT(${condition})`;
}

/** Whether `small` goes into `large`, an exact fit included. */
export function atMost(small: Formula, large: Formula): Condition {
  if (typeof small === "number" && typeof large === "number") return small <= large + 1e-9;
  return `${written(small)}<=${typeof large === "number" ? written(large + 1e-9) : written(plain`${large}+1E-9`)}`;
}

/** Whether a value is above a limit. */
export function above(limit: Formula, value: Formula): Condition {
  return typeof value === "number" && typeof limit === "number" ? value > limit : plain`${value}>${limit}`;
}

/** Whether two numbers are the same; whole numbers only. */
export function equal(a: Formula, b: Formula): Condition {
  return typeof a === "number" && typeof b === "number" ? a === b : plain`${a}=${b}`;
}
