/**
 * Reads the tags of an XML part one after the other and changes places in its text; what is not changed stays as it is, white
 * space and all. Nothing is expanded: a part that defines entities is refused.
 */
import { DAMAGED, refuse } from "./zip";

/** A tag, or the place of one. `start` is that of its `<`, `end` follows its `>`. */
export interface Tag {
  /** Without the prefix of its namespace. */
  readonly name: string;
  /** With the colon, or empty. */
  readonly prefix: string;
  readonly kind: "open" | "close" | "empty";
  readonly start: number;
  readonly end: number;
}

/** Deeper than any part of a workbook. */
const DEEPEST = 200;

const NAME = /([^\s/>:]+:)?([^\s/>]+)/y;

/** Every tag of a part, in order. Each closing tag is that of the element which is open. */
export function* tagsOf(xml: string): Generator<Tag, void, undefined> {
  const open: string[] = [];
  for (let start = xml.indexOf("<"); start >= 0;) {
    const next = xml[start + 1];
    if (next === "?" || next === "!") {
      start = xml.indexOf("<", afterOther(xml, start));
      continue;
    }
    const end = endOf(xml, start);
    const isClose = next === "/";
    NAME.lastIndex = start + (isClose ? 2 : 1);
    const found = NAME.exec(xml);
    if (!found) refuse(DAMAGED);
    const [full, prefix = "", name] = found;
    const kind = isClose ? "close" : xml[end - 2] === "/" ? "empty" : "open";
    if (kind === "open" && open.push(full) > DEEPEST) refuse(DAMAGED);
    if (kind === "close" && open.pop() !== full) refuse(DAMAGED);
    yield { name, prefix, kind, start, end };
    start = xml.indexOf("<", end);
  }
  if (open.length > 0) refuse(DAMAGED);
}

/** The end of a comment, a CDATA section or an instruction. */
function afterOther(xml: string, start: number): number {
  const closing = xml.startsWith("<!--", start) ? "-->" : xml.startsWith("<![CDATA[", start) ? "]]>" : "?>";
  if (xml[start + 1] === "!" && closing === "?>")
    refuse("this file holds definitions that no spreadsheet program writes; it is not read");
  const at = xml.indexOf(closing, start);
  return at < 0 ? refuse(DAMAGED) : at + closing.length;
}

/** The end of a tag; a `>` within the quotes of an attribute does not close it. */
function endOf(xml: string, start: number): number {
  let quote = "";
  for (let at = start + 1; at < xml.length; at++) {
    const character = xml[at];
    if (quote) {
      if (character === quote) quote = "";
    } else if (character === ">") return at + 1;
    else if (character === '"' || character === "'") quote = character;
    else if (character === "<") refuse(DAMAGED);
  }
  return refuse(DAMAGED);
}

const ATTRIBUTE = /([^\s=/<>"']+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** The attributes of a tag, decoded, by their names with prefixes. */
export function attributesOf(xml: string, tag: Tag): Map<string, string> {
  const source = xml.slice(tag.start, tag.end);
  return new Map(
    [...source.matchAll(ATTRIBUTE)].map(([, name, double, single]) => [name, decoded(double || single || "")]),
  );
}

/** One attribute of a tag. */
export function attributeOf(xml: string, tag: Tag, name: string): string | undefined {
  for (const [, each, double, single] of xml.slice(tag.start, tag.end).matchAll(ATTRIBUTE))
    if (each === name) return decoded(double || single || "");
  return undefined;
}

/** The source of a tag without some of its attributes. */
export function withoutAttributes(source: string, names: readonly string[]): string {
  return source.replace(/\s+([^\s=/<>"']+)\s*=\s*(?:"[^"]*"|'[^']*')/g, (attribute, name: string) =>
    names.includes(name) ? "" : attribute,
  );
}

const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

/** The text that stands between two tags. */
export function decoded(source: string): string {
  if (!/[<&]/.test(source)) return source;
  return source
    .split(/(<!--[^]*?-->|<!\[CDATA\[[^]*?\]\]>)/)
    .map((piece) => {
      if (piece.startsWith("<!--")) return "";
      if (piece.startsWith("<![CDATA[")) return piece.slice(9, -3);
      return piece.replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|(lt|gt|amp|quot|apos));/gi, (_, decimal, hex, name) => {
        if (name) return ENTITIES[(name as string).toLowerCase()];
        const code = decimal ? Number(decimal) : parseInt(hex as string, 16);
        return code <= 0x10ffff ? String.fromCodePoint(code) : refuse(DAMAGED);
      });
    })
    .join("");
}

const ESCAPES: Readonly<Record<string, string>> = { "<": "&lt;", ">": "&gt;", "&": "&amp;", '"': "&quot;" };

/** Text as it stands in a part; what XML cannot hold becomes a space. */
export function encoded(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, " ")
    .replace(/[<>&"]/g, (character) => ESCAPES[character]);
}

/** Changes to a text, all in terms of the text as it was. */
export class Changes {
  private readonly list: { start: number; end: number; text: string }[] = [];

  constructor(private readonly text: string) {}

  replace(start: number, end: number, text: string): void {
    this.list.push({ start, end, text });
  }

  get isNone(): boolean {
    return this.list.length === 0;
  }

  /** The changed text. What is put into the same place stands in the order in which it was put there. */
  made(): string {
    const pieces: string[] = [];
    let at = 0;
    for (const { start, end, text } of this.list.sort((one, other) => one.start - other.start || one.end - other.end)) {
      pieces.push(this.text.slice(at, start), text);
      at = Math.max(at, end);
    }
    return pieces.join("") + this.text.slice(at);
  }
}
