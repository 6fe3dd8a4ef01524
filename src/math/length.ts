/** Reading a length written any usual way. */
import { Problem } from "./problem";
import { type Inches, inches, toInches, type Unit, UNIT_INCHES } from "./units";

const UNIT_WORDS: ReadonlyMap<string, Unit> = new Map([
  ...words("in", 'in inch inches "'),
  ...words("ft", "ft foot feet '"),
  ...words("yd", "yd yds yard yards"),
  ...words("mm", "mm millimeter millimeters millimetre millimetres"),
  ...words("cm", "cm centimeter centimeters centimetre centimetres"),
  ...words("m", "m meter meters metre metres"),
]);

const NUMBER = String.raw`(\d+(?: | ?- ?)\d+\/\d+|\d+\/\d+|\d+(?:\.\d*)?|\.\d+)`;
const MEASURE = new RegExp(String.raw`^${NUMBER}\s*([a-z]+|["'])?\s*`);
const LONGEST_TEXT = 60;

/** What follows the minus of a length below 0; undefined where no minus stands before it. */
export function afterMinus(text: string): string | undefined {
  return /^\s*[-−–](.*)/s.exec(text)?.[1];
}

/**
 * Reads a length written any usual way: `2 1/2`, `2-1/2`, `2½`, `1 7/8"`, `12 1/2 in`, `1¹⁄3`, `3' 6"`, `1 1/4 yd`, `63.5 mm`.
 *
 * @param written what the maker wrote
 * @param bareUnit unit of a number that carries none
 * @returns the length in inches
 * @throws Problem "bad input" with what to write instead
 */
export function parseLength(written: string, bareUnit: Unit): Inches {
  const text = plain(written);
  const parts = readParts(text, written);
  let total = 0;
  let previous = Infinity;
  parts.forEach((part, index) => {
    const unit = part.unit ?? (index === 0 ? bareUnit : "in");
    const imperial = ["yd", "ft", "in"].includes(unit);
    if (parts.length > 1 && (!imperial || UNIT_INCHES[unit] >= previous || (index === 0 && part.unit === undefined))) {
      throw unreadable(written);
    }
    previous = UNIT_INCHES[unit];
    total += toInches(part.value, unit);
  });
  return inches(total);
}

interface Part {
  value: number;
  unit?: Unit;
}

function readParts(text: string, written: string): Part[] {
  if (text.length > LONGEST_TEXT) throw unreadable(`${written.slice(0, 30)}…`);
  if (/\d\s*(?:x|×|\*|by)\s*\.?\d/.test(text)) {
    throw bad(`“${written}” holds two sizes; put width and height in cells of their own`);
  }
  if (/\d,\d/.test(text)) {
    throw bad(`“${written}” has a comma; write a point, such as ${text.replace(",", ".")}`);
  }
  if (/^[-−–]\s*[\d.]/.test(text)) throw bad(`“${written}” is negative; a length cannot be less than 0`);
  if (/\b(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/.test(text)) throw bad(dateSentence(written));
  const parts: Part[] = [];
  let rest = text;
  while (rest !== "") {
    const match = MEASURE.exec(rest);
    if (!match) throw unreadable(written);
    const [read, number, word] = match as unknown as [string, string, string?];
    const unit = word === undefined ? undefined : UNIT_WORDS.get(word);
    if (word !== undefined && unit === undefined) throw unreadable(written);
    parts.push({ value: readNumber(number, written), unit });
    rest = rest.slice(read.length);
  }
  if (parts.length === 0) throw unreadable(written);
  return parts;
}

function readNumber(text: string, written: string): number {
  const fraction = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text);
  if (!fraction) return Number(text);
  const [, whole, over, under] = fraction as unknown as [string, string | undefined, string, string];
  if (Number(under) === 0) throw bad(`“${written}” divides by 0`);
  if (whole !== undefined && Number(over) >= Number(under)) {
    throw bad(`“${written}” has a fraction of 1 or more after the whole number; check it`);
  }
  return Number(whole ?? 0) + Number(over) / Number(under);
}

/** The same text in plain letters: fraction characters, raised and lowered digits, curly quotes and odd spaces undone. */
function plain(written: string): string {
  return written
    .replace(/[¼-¾⅐-⅞↉]/g, (character) => ` ${character.normalize("NFKC").replace("⁄", "/")}`)
    .replace(/[⁰¹²³⁴-⁹]+/g, (raised) => ` ${raised.normalize("NFKC")}`)
    .replace(/[₀-₉]/g, (lowered) => lowered.normalize("NFKC"))
    .replace(/\s*[⁄∕]\s*/g, "/")
    .replace(/(\d)\s*\/\s*(\d)/g, "$1/$2")
    .replace(/[“”„″‟]|''|’’|′′/g, '"')
    .replace(/[‘’‚′`´]/g, "'")
    .replace(/[‐‑–]/g, "-")
    .replace(/[\s\u200b\ufeff]+/g, " ")
    .trim()
    .toLowerCase()
    .replace(/(?<=\d ?)(in|ft|yds?)\.(?= |$)/g, "$1");
}

/** What to say where a number is so large that the spreadsheet has most likely turned a fraction into a date. */
export function dateSentence(written: string | number): string {
  return `${written} looks like a date: a spreadsheet turns 3/8 into one; type 0 3/8 or '3/8`;
}

function words(unit: Unit, list: string): [string, Unit][] {
  return list.split(" ").map((word) => [word, unit]);
}

function bad(sentence: string): Problem {
  return new Problem("bad input", sentence);
}

function unreadable(written: string): Problem {
  return bad(`cannot read a length in “${written}”; write it like 2 1/2, 2.5, 2 1/2 in or 6.5 cm`);
}
