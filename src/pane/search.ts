/** Finds the function that answers a question asked in the maker's own words. */
import type { Family, FunctionEntry } from "./catalogue";
import { ASKED, SAME_WORDS } from "./synonyms";

/** Words that say nothing of what is wanted. */
const EMPTY_WORDS = new Set(
  "a an and are at be big by can cut do does for from get have how i if in is it long many me much my need number of on or out per should size sizes so than that the them there to want what when which will with work you".split(
    " ",
  ),
);

/** What a word counts where it is found; a question that makers ask counts most. */
const WEIGHTS = { asked: 6, name: 5, description: 3, arguments: 1.2, rules: 0.8 };
type Field = keyof typeof WEIGHTS;

/** Of a question that is asked in just these words. */
const WHOLE_QUESTION = 14;

interface Indexed {
  entry: FunctionEntry;
  fields: Record<Field, ReadonlySet<string>>;
  /** The questions, each as its words. */
  asked: string[][];
}

export class Finder {
  private readonly all: readonly Indexed[];
  private readonly known = new Map<string, number>();

  constructor(families: readonly Family[]) {
    this.all = families.flatMap((family) => family.functions.map((entry) => indexed(entry)));
    for (const { fields } of this.all) {
      for (const word of new Set(Object.values(fields).flatMap((words) => [...words]))) {
        this.known.set(word, (this.known.get(word) ?? 0) + 1);
      }
    }
  }

  /** The functions that fit a question, best first. */
  find(question: string): FunctionEntry[] {
    const wanted = wordsOf(question);
    if (wanted.length === 0) return [];
    return this.all
      .map((one) => ({ entry: one.entry, score: this.score(one, wanted, question) }))
      .filter(({ score }) => score > 0)
      .sort((one, other) => other.score - one.score)
      .map(({ entry }) => entry);
  }

  private score({ entry, fields, asked }: Indexed, wanted: readonly string[], question: string): number {
    if (/^=?(?:QUILT\.)?(\w+)\(?$/.exec(question.trim().toUpperCase())?.[1] === entry.id) return Infinity;
    let [sum, found] = [0, 0];
    for (const word of wanted) {
      const best = Math.max(
        ...(Object.keys(WEIGHTS) as Field[]).map((field) => WEIGHTS[field] * fit(word, fields[field])),
      );
      if (best === 0) continue;
      // Empty words only decide between questions; they do not find anything by themselves.
      const weight = EMPTY_WORDS.has(word) ? 0.1 : this.rarity(word);
      sum += best * weight;
      if (!EMPTY_WORDS.has(word)) found += 1;
    }
    const telling = wanted.filter((word) => !EMPTY_WORDS.has(word)).length;
    if (found * 2 < telling || sum === 0) return 0;
    const covered = telling === 0 ? 1 : found / telling;
    return sum * covered * covered + WHOLE_QUESTION * Math.max(0, ...asked.map((words) => likeness(words, wanted)));
  }

  private rarity(word: string): number {
    return Math.log2(1 + this.all.length / (1 + (this.known.get(word) ?? 0)));
  }
}

function indexed(entry: FunctionEntry): Indexed {
  const asked = (ASKED[entry.id] ?? []).map(wordsOf);
  const set = (...texts: string[]) => new Set(texts.flatMap(wordsOf));
  return {
    entry,
    asked,
    fields: {
      asked: new Set(asked.flat()),
      name: new Set([entry.id.toLowerCase(), ...splitName(entry.id)]),
      description: set(entry.description),
      arguments: set(entry.gives, ...entry.parameters.map(({ name, description }) => `${spaced(name)} ${description}`)),
      rules: set(...entry.rules),
    },
  };
}

/** Trade words that function names are made of. */
const NAME_WORDS =
  /^(?:cut|strip|plan|top|border|backing|binding|batting|block|quilt|bundle|tube|panel|piece|bolt|kit|price|seam|thread|check|length|fabric|half|quarter|square|rectangle|triangle|diamond|hexagon|star|template|geese|corner|side|size|set|text|mark|unit|fit|gap|measured|pack|bias|first|spare|need|from|for|in|per|made|finished|bed|row|total|cost|margin|markup|patch|grid|before|washing|table|needed|s)/;

function splitName(id: string): string[] {
  const words: string[] = [];
  let rest = id.toLowerCase();
  while (rest !== "") {
    const word = NAME_WORDS.exec(rest)?.[0] ?? rest;
    if (word.length > 1) words.push(singular(word));
    rest = rest.slice(word.length);
  }
  return words;
}

/** How well a word fits: whole 1, as a beginning that is still being typed less. */
function fit(word: string, words: ReadonlySet<string>): number {
  if (words.has(word)) return 1;
  if (word.length < 3) return 0;
  for (const one of words) if (one.startsWith(word)) return 0.6;
  return 0;
}

/** Of two questions: 1 where all words are shared, a little more in the same order, 0 where fewer than two thirds are. */
function likeness(one: readonly string[], other: readonly string[]): number {
  if (one.join(" ") === other.join(" ")) return 1.1;
  const shared = one.filter((word) => other.includes(word)).length;
  const share = (2 * shared) / (one.length + other.length);
  return share > 2 / 3 ? share * share : 0;
}

/** The words of a text as the functions call them, in lower case, singular. */
export function wordsOf(text: string): string[] {
  let plain = ` ${text.toLowerCase().replace(/[^\p{L}\p{N}./½¼¾⅛-]+/gu, " ")} `;
  for (const [asked, called] of SAME_WORDS) plain = plain.replaceAll(` ${asked} `, ` ${called} `);
  return plain
    .split(/[\s-]+/)
    .map((word) => word.replace(/^[./]+|[./]+$/g, ""))
    .filter((word) => word !== "")
    .map(singular);
}

function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is|geese)$/.test(word)) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (/(?:sh|ch|x)es$/.test(word)) return word.slice(0, -2);
  return word.replace(/s$/, "");
}

/** fabricWidth as "fabric width". */
export function spaced(name: string): string {
  return name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
}
