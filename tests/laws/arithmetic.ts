/** Reads the arithmetic that a line of working tells, and works it out once more: `4 in + 2 × 1/4 in = 4 1/2 in`. */

const TOKEN = /\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?|sin|[-+−×÷√()%°²]/g;

/** The value of `4 1/2`, `1/2`, `4.5`. */
function valueOf(number: string): number {
  return number
    .split(" ")
    .map((part) => part.split("/").map(Number))
    .reduce((sum, [over, under = 1]) => sum + over / under, 0);
}

/** The value of a sum with its words left out; undefined where it is no sum. */
export function worth(text: string): number | undefined {
  const tokens = text.match(TOKEN) ?? [];
  let at = 0;
  const takes = (token: string) => tokens[at] === token && at++ >= 0;

  const atom = (): number => {
    if (takes("-") || takes("−")) return -atom();
    if (takes("√")) return Math.sqrt(atom());
    if (takes("sin")) return Math.sin((atom() * Math.PI) / 180);
    let value: number;
    if (takes("(")) {
      value = sum();
      if (!takes(")")) return NaN;
    } else {
      value = at < tokens.length ? valueOf(tokens[at++]) : NaN;
    }
    if (takes("%")) value /= 100;
    if (takes("²")) value *= value;
    takes("°");
    return value;
  };
  const product = (): number => {
    let value = atom();
    for (;;) {
      if (takes("×")) value *= atom();
      else if (takes("÷")) value /= atom();
      else return value;
    }
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (takes("+")) value += product();
      else if (takes("−") || takes("-")) value -= product();
      else return value;
    }
  };

  const value = sum();
  return at === tokens.length && !Number.isNaN(value) ? value : undefined;
}

/** What is claimed in a line: two sums that are equal, or a quotient and the whole number to which it was rounded. */
export interface Claim {
  readonly left: number;
  readonly right: number;
  readonly rounded?: "up" | "down";
}

export function claimsOf(line: string): Claim[] {
  const claims: Claim[] = [];
  for (const clause of line.split(/[,;:]| on /)) {
    const sides = clause.split("=").map(worth);
    for (let i = 1; i < sides.length; i++) {
      const [left, right] = [sides[i - 1], sides[i]];
      if (left !== undefined && right !== undefined) claims.push({ left, right });
    }
  }
  const rounding = /([^,;:]+), rounded (up|down): (\d+)/.exec(line);
  const quotient = rounding === null ? undefined : worth(rounding[1]);
  if (rounding !== null && quotient !== undefined)
    claims.push({ left: quotient, right: Number(rounding[3]), rounded: rounding[2] as "up" | "down" });
  return claims;
}

/** Lengths in the working are told to four decimals at most. */
const PRINTED = 1e-3;

export function holds({ left, right, rounded }: Claim): boolean {
  const within = PRINTED * Math.max(1, Math.abs(right));
  if (rounded === "up") return left <= right + within && right < left + 1 + within;
  if (rounded === "down") return right <= left + within && left < right + 1 + within;
  return Math.abs(left - right) <= within;
}
