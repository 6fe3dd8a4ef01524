/** Fractions typed into a cell, as quilters write them: 2 1/2, 2-1/2, 2½ and 3/8 are numbers here. */

export interface TypedFraction {
  value: number;
  /** Number format that shows the value as a fraction. */
  pattern: string;
  /** Whether other spreadsheet programs would have made a date of it, such as 3/8. */
  looksLikeDate: boolean;
}

/** Parts of an inch or yard. With any other number below it, a bare fraction such as 3/25 may well be a date. */
const PARTS = new Set([2, 3, 4, 5, 6, 8, 16, 32, 64]);

/** Fractions that are one character. */
const SIGNS = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** Reads a fraction without a unit. A length with a unit, such as 2 1/2 in, stays the text that it is. */
export function readFraction(typed: string): TypedFraction | undefined {
  const text = typed
    .replace(/[\u00a0\u2007\u2009\u202f]/g, " ")
    .replace(/\u2044/g, "/")
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${SIGNS[sign as keyof typeof SIGNS]}`)
    .trim();
  const parts = /^(-?)(?:(\d{1,6})(?: +| *- *))?(\d{1,4})\/(\d{1,4})$/.exec(text);
  if (!parts) return undefined;
  const [, minus, whole, above, below] = parts as (string | undefined)[];
  const [numerator, denominator] = [Number(above), Number(below)];
  if (denominator === 0 || numerator >= denominator) return undefined;
  const bare = whole === undefined;
  if (bare && !PARTS.has(denominator)) return undefined;
  return {
    value: (minus ? -1 : 1) * (Number(whole ?? 0) + numerator / denominator),
    pattern: denominator < 10 ? "# ?/?" : "# ??/??",
    looksLikeDate: bare && typed.includes("/"),
  };
}
