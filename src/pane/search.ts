/** Finds the function that answers a question asked in the maker's own words. */
import type { Family, FunctionEntry } from "./catalogue";
import { ASKED, DETAILS, EMPTY_WORDS, SAME_WORDS } from "./synonyms";

/** What a word counts by where it is found; a question that makers ask counts most. */
const WEIGHTS = { asked: 6, name: 5, description: 3, arguments: 1.2, rules: 0.8 };

/** Of a question that is asked in just these words. */
const WHOLE_QUESTION = 24;

/** What a word counts by what it is: empty words and details only decide between functions that the other words find. */
const EMPTY = 0.1;
const DETAIL = 0.3;

/** Part of the best score that a function needs to be named at all. */
const WORTH_NAMING = 0.2;

interface Indexed {
  entry: FunctionEntry;
  /** Every word of the function with what it counts there. */
  words: ReadonlyMap<string, number>;
  /** The questions, each as its words. */
  asked: string[][];
}

export class Finder {
  private readonly all: readonly Indexed[];
  /** In how many functions a word occurs. */
  private readonly known = new Map<string, number>();
  /** Every word as it is written. */
  private readonly written: ReadonlySet<string>;
  /** Those that a word may be completed or put right to, commonest first. */
  private readonly spellings: readonly string[];

  constructor(families: readonly Family[]) {
    const entries = families.flatMap(({ functions }) => functions);
    this.all = entries.map(indexed);
    for (const { words } of this.all) count(words.keys(), this.known);
    const phrases = [...PHRASES.keys()].flatMap((phrase) => phrase.split(" "));
    const spellings = new Map(phrases.map((word) => [word, 1]));
    const written = [...EMPTY_WORDS, ...phrases];
    for (const { asked, name, description, ...rest } of entries.map(texts)) {
      const trade = [...asked, ...name, ...description].flatMap(tokensOf);
      count(new Set(trade), spellings);
      written.push(...trade, ...Object.values(rest).flat().flatMap(tokensOf));
    }
    this.written = new Set(written);
    this.spellings = [...spellings]
      .sort(([one, often], [other, more]) => more - often || one.length - other.length)
      .map(([word]) => word)
      .filter((word) => !isEmpty(stem(word)) && !isDetail(stem(word)));
  }

  /** The functions that fit a question, best first; none where too few of its words are known. */
  find(question: string): FunctionEntry[] {
    const wanted = [...new Set(called(tokensOf(question).map((token) => this.spelled(token))))];
    const telling = wanted.filter((word) => !isEmpty(word));
    const known = telling.filter((word) => this.known.has(word));
    const answerable = known.length > 0 && known.length * 3 >= telling.length;
    const words = answerable ? wanted.filter((word) => this.known.has(word)) : [];
    const scored = this.all.map((one) => ({
      entry: one.entry,
      score: this.score(one, words) + named(one.entry, question),
    }));
    const best = Math.max(0, ...scored.map(({ score }) => score).filter(Number.isFinite));
    return scored
      .filter(({ score }) => score > 0 && score >= best * WORTH_NAMING)
      .sort((one, other) => other.score - one.score)
      .map(({ entry }) => entry);
  }

  private score({ words, asked }: Indexed, wanted: readonly string[]): number {
    let [sum, found, all] = [0, 0, 0];
    for (const word of wanted) {
      const weight = this.weight(word);
      const here = words.get(word) ?? 0;
      sum += here * weight;
      if (here > 0) found += weight;
      all += weight;
    }
    if (sum === 0) return 0;
    const covered = found / all;
    return sum * covered * covered + WHOLE_QUESTION * Math.max(0, ...asked.map((one) => this.likeness(one, wanted)));
  }

  /** Of two questions: 1 where all words are shared, a little more in the same order, 0 where less than half is. */
  private likeness(one: readonly string[], other: readonly string[]): number {
    if (one.join(" ") === other.join(" ")) return 1.1;
    const sum = (words: readonly string[]) => words.reduce((total, word) => total + this.weight(word), 0);
    const share = (2 * sum(one.filter((word) => other.includes(word)))) / (sum(one) + sum(other));
    return share > 0.5 ? share * share : 0;
  }

  /** Rare words tell more than common ones. */
  private weight(word: string): number {
    const rarity = Math.log2(1 + this.all.length / (1 + (this.known.get(word) ?? 0)));
    return rarity * (isEmpty(word) ? EMPTY : isDetail(word) ? DETAIL : 1);
  }

  /** A word as it is known: one still being typed is completed, one letter that slipped is put right. */
  private spelled(token: string): string {
    if (this.written.has(token) || token.length < 3) return token;
    return (
      this.spellings.find((one) => one.startsWith(token)) ?? this.spellings.find((one) => isSlip(token, one)) ?? token
    );
  }
}

/** A name that is typed, whole or its beginning. */
function named({ id }: FunctionEntry, question: string): number {
  const name = /^=?(?:QUILT\.)?(\w{3,})\(?$/.exec(question.trim().toUpperCase())?.[1];
  if (name === undefined) return 0;
  return id === name ? Infinity : id.startsWith(name) ? 4 : 0;
}

function texts({
  id,
  description,
  gives,
  parameters,
  rules,
}: FunctionEntry): Record<keyof typeof WEIGHTS, readonly string[]> {
  const [first, ...others] = description.split(/(?<=\.) (?=[A-Z])/);
  return {
    asked: ASKED[id] ?? [],
    name: [splitName(id)],
    description: [first],
    arguments: [gives, ...parameters.map(({ name, description }) => `${spaced(name)} ${description}`)],
    rules: [...others, ...rules],
  };
}

function indexed(entry: FunctionEntry): Indexed {
  const words = new Map<string, number>();
  for (const [field, parts] of Object.entries(texts(entry))) {
    for (const word of parts.flatMap(wordsOf)) {
      words.set(word, Math.max(words.get(word) ?? 0, WEIGHTS[field as keyof typeof WEIGHTS]));
    }
  }
  return { entry, words, asked: (ASKED[entry.id] ?? []).map(wordsOf) };
}

function count(words: Iterable<string>, counts: Map<string, number>): void {
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
}

/** Trade words that function names are made of. */
const NAME_WORDS =
  /cut|strips?|plan|top|border|backing|binding|batting|blocks?|quilt|bundle|tube|panels?|pieces?|patch(?:es)?|bolts?|kits?|price|seam|thread|check|lengths?|fabrics?|half|quarter|square|rectangle|triangles?|diamond|hexagon|star|template|geese|corner|side|sized?|sets?|text|mark(?:up)?|units?|fit|gap|measured|pack|bias|first|spare|needed|from|for|in|per|made|finished|bed|row|totals?|cost|margin|grid|before|washing|table/g;

function splitName(id: string): string {
  return (id.toLowerCase().match(NAME_WORDS) ?? []).join(" ");
}

/** Whether two words of some length differ by one letter: changed, left out, put in, or swapped with the next. */
function isSlip(one: string, other: string): boolean {
  const [short, long] = one.length < other.length ? [one, other] : [other, one];
  if (long.length < 5 || long.length - short.length > 1 || short[0] !== long[0]) return false;
  let start = 0;
  while (start < short.length && short[start] === long[start]) start += 1;
  const ends = (from: number, to: number) => short.slice(from) === long.slice(to);
  if (short.length < long.length) return ends(start, start + 1);
  const swapped = short[start] === long[start + 1] && short[start + 1] === long[start];
  return ends(start + 1, start + 1) || (swapped && ends(start + 2, start + 2));
}

/** The words of a text as the functions call them, each in its plain form. */
function wordsOf(text: string): string[] {
  return [...new Set(called(tokensOf(text)))];
}

/** The words of a text as it is written, in lower case and singular, without articles. */
function tokensOf(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[^\p{L}\p{N}./½¼¾⅛]+/u)
    .map((word) => singular(word.replace(/^[./]+|[./]+$/g, "")))
    .filter((word) => word !== "" && word !== "a" && word !== "an" && word !== "the");
}

/** Phrases of SAME_WORDS in the form of tokens, with the words they stand for. */
const PHRASES = new Map(
  Object.entries(SAME_WORDS).flatMap(([words, phrases]) =>
    phrases.split(", ").map((phrase) => [tokensOf(phrase).join(" "), tokensOf(words)] as const),
  ),
);
const LONGEST_PHRASE = Math.max(...[...PHRASES.keys()].map((phrase) => phrase.split(" ").length));

/** Tokens with the trade's many words for one thing made one, the longest phrases first; numbers left out. */
function called(tokens: readonly string[]): string[] {
  const words: string[] = [];
  for (let at = 0; at < tokens.length;) {
    let length = Math.min(LONGEST_PHRASE, tokens.length - at);
    while (length > 0 && !PHRASES.has(tokens.slice(at, at + length).join(" "))) length -= 1;
    words.push(
      ...(PHRASES.get(tokens.slice(at, at + length).join(" ")) ?? PHRASES.get(stem(tokens[at])) ?? [tokens[at]]),
    );
    at += Math.max(1, length);
  }
  return words.filter((word) => !/^[\d½¼¾⅛]/.test(word)).map(stem);
}

function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is)$/.test(word)) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}${word.length > 5 ? "y" : "ie"}`;
  if (/(?:sh|ch|x|ss)es$/.test(word)) return word.slice(0, -2);
  return word.replace(/s$/, "");
}

/** What the forms of a word have in common: "piec" of piece, pieced and piecing, "trim" of trimming. */
function stem(word: string): string {
  const ending = /^(.*[aeiouy].*?)(?:ing|ed|ment)$/.exec(word)?.[1] ?? "";
  const start = ending.length < 3 || /eed$|^setting$/.test(word) ? word : ending;
  return start.length < 4 ? start : start.replace(/e$/, "").replace(/([^aeiou])\1$/, "$1");
}

const EMPTY_STEMS = new Set([...EMPTY_WORDS].map(stem));
const isEmpty = (word: string) => EMPTY_STEMS.has(word);
const DETAIL_STEMS = new Set([...DETAILS].map(stem));
const isDetail = (word: string) => DETAIL_STEMS.has(word);

/** fabricWidth as "fabric width". */
export function spaced(name: string): string {
  return name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
}
