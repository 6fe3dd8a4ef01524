/**
 * The sign between whole and decimal parts, as the spreadsheet program writes it. Formulas go to the program with points and
 * commas whatever the sign; what is shown to the maker and what the maker types follows it.
 */
let sign = ".";

/** Takes over the program's sign, such as a comma. */
export function useDecimalSeparator(separator: string): void {
  sign = separator;
}

/** A text of ours with its decimal numbers as the maker reads them. What stands in quotation marks stays as it is. */
export function localText(text: string): string {
  if (sign === ".") return text;
  return text.replace(
    /“[^”]*”|(?<![\d.\p{L}])(\d+)\.(\d+)(?![\d\p{L}]|\.\d)/gu,
    (all, whole?: string, part?: string) => (whole === undefined ? all : `${whole}${sign}${part}`),
  );
}

/** The words of a picture, with their decimal numbers as the maker reads them. */
export function localPicture(svg: string): string {
  if (sign === ".") return svg;
  return svg.replace(
    /(<(?:text|title|desc)\b[^>]*>)([^<]*)/g,
    (_, tag: string, words: string) => `${tag}${localText(words)}`,
  );
}

/** A number or a length as the maker types it, with a point as functions read it. */
export function usualNumber(text: string): string {
  if (sign === ".") return text;
  return text.replace(/(\d)(\D)(?=\d)/g, (all, digit: string, between: string) => {
    return between === sign ? `${digit}.` : all;
  });
}

/** Parts of a formula that are the same everywhere: texts, names of pages, tables in braces. */
const FIXED = /("(?:[^"]|"")*"|'(?:[^']|'')*'|\{[^}]*\})/;

/** A formula as the program shows it: with a decimal comma, arguments are separated by semicolons. */
export function localFormula(formula: string): string {
  return inFormula(formula, (text) =>
    text.replaceAll(",", ";").replace(/(?<![\p{L}\d_.])(\d*)\.(\d+)/gu, (_, whole: string, part: string) => {
      return `${whole}${sign}${part}`;
    }),
  );
}

/** A formula as the maker types it, in the form in which it goes to the program. */
export function usualFormula(formula: string): string {
  return inFormula(formula, (text) => text.replace(/(\d),(\d)/g, "$1.$2").replaceAll(";", ","));
}

function inFormula(formula: string, change: (text: string) => string): string {
  if (sign !== ",") return formula;
  return formula
    .split(FIXED)
    .map((text, index) => (index % 2 === 1 ? text : change(text)))
    .join("");
}
