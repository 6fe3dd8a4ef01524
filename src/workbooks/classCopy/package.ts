/** The parts of a workbook file, their content types and relationships. Parts that nobody changes are copied as they came. */
import { attributesOf, Changes, type Tag, tagsOf } from "./xml";
import { DAMAGED, type Entry, pack, readZip, refuse, unpack, writeZip } from "./zip";

export interface Relationship {
  readonly id: string;
  /** The last word of its type, such as worksheet. */
  readonly type: string;
  /** Path of the part that it leads to; undefined where it leads out of the file. */
  readonly target: string | undefined;
  readonly tag: Tag;
}

/** Unpacked text of one part; a sheet of 500,000 cells has about this much. */
const LONGEST_PART = 60_000_000;
const LONGEST_READ = 150_000_000;

const CONTENT_TYPES = "[Content_Types].xml";
const OLD_FILE = [0xd0, 0xcf, 0x11, 0xe0];
const PLAIN_WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

export class Package {
  private readonly entries: Map<string, Entry>;
  private readonly changed = new Map<string, string>();
  private readonly texts = new Map<string, string>();
  private readLength = 0;
  /** Path of the part that lists the sheets. */
  readonly workbook: string;

  constructor(bytes: Uint8Array) {
    refuseOtherFiles(bytes);
    this.entries = new Map(readZip(bytes).map((entry) => [entry.name, entry]));
    this.workbook = this.findWorkbook();
  }

  private findWorkbook(): string {
    const office = this.has(CONTENT_TYPES) && this.relationships("").find(({ type }) => type === "officeDocument");
    const path = office ? office.target : undefined;
    if (path === undefined || !this.has(path))
      return refuse("this is no .xlsx workbook; save it as .xlsx in a spreadsheet program first");
    const type = this.contentType(path);
    if (/macroEnabled|ms-excel/i.test(type)) {
      const kind = type.includes("binary") ? "is a binary workbook (.xlsb)" : "holds macros";
      refuse(`this workbook ${kind}; save it as .xlsx first`);
    }
    if (type !== PLAIN_WORKBOOK) refuse("this is no .xlsx workbook; save it as .xlsx in a spreadsheet program first");
    return path;
  }

  has(path: string): boolean {
    return this.entries.has(path);
  }

  get paths(): string[] {
    return [...this.entries.keys()];
  }

  /** The text of a part as it stands now. */
  text(path: string): string {
    const known = this.changed.get(path) ?? this.texts.get(path);
    if (known !== undefined) return known;
    const entry = this.entries.get(path) ?? refuse(DAMAGED);
    this.readLength += entry.size;
    if (entry.size > LONGEST_PART || this.readLength > LONGEST_READ)
      refuse("this workbook is too large: its sheets hold more than can be read at once");
    const text = textOf(unpack(entry));
    this.texts.set(path, text);
    return text;
  }

  put(path: string, text: string): void {
    if (this.has(path) && this.text(path) === text) return;
    this.changed.set(path, text);
    if (!this.has(path)) this.entries.set(path, pack(path, new Uint8Array(), dateOf(this.entries)));
  }

  /** The relationships of a part, or of the package as a whole. */
  relationships(path: string): Relationship[] {
    const from = relationshipsPath(path);
    if (!this.has(from)) return [];
    const xml = this.text(from);
    return [...tagsOf(xml)]
      .filter(({ name, kind }) => name === "Relationship" && kind !== "close")
      .map((tag) => {
        const attributes = attributesOf(xml, tag);
        const isOutside = attributes.get("TargetMode") === "External";
        return {
          id: attributes.get("Id") ?? "",
          type: attributes.get("Type")?.replace(/^.*\//, "") ?? "",
          target: isOutside ? undefined : this.resolved(path, attributes.get("Target") ?? ""),
          tag,
        };
      });
  }

  /** The path of a part as this file spells it. Capitals do not count in paths. */
  private resolved(from: string, target: string): string {
    const folders = target.startsWith("/") ? [] : from.split("/").slice(0, -1);
    for (const step of target.split("/")) {
      if (step === "..") folders.pop();
      else if (step !== "." && step !== "") folders.push(step);
    }
    const path = folders.join("/");
    if (this.has(path)) return path;
    return this.paths.find((other) => other.toLowerCase() === path.toLowerCase()) ?? path;
  }

  /** Takes parts out, with what leads to them from these parts. */
  remove(paths: readonly string[], from: readonly string[]): void {
    const gone = new Set(paths);
    this.cut(CONTENT_TYPES, (attributes) => gone.has(attributes.get("PartName")?.slice(1) ?? ""));
    for (const path of from) {
      const ids = this.relationships(path).filter(({ target }) => target !== undefined && gone.has(target));
      this.cut(relationshipsPath(path), (attributes) => ids.some(({ id }) => id === attributes.get("Id")));
    }
    for (const path of paths) {
      for (const each of [path, relationshipsPath(path)]) {
        this.entries.delete(each);
        this.changed.delete(each);
      }
    }
  }

  /** Cuts elements without content out of a part. */
  private cut(path: string, isGone: (attributes: Map<string, string>) => boolean): void {
    if (!this.has(path)) return;
    const xml = this.text(path);
    const changes = new Changes(xml);
    for (const tag of tagsOf(xml)) {
      if (tag.kind === "empty" && isGone(attributesOf(xml, tag))) changes.replace(tag.start, tag.end, "");
    }
    if (!changes.isNone) this.put(path, changes.made());
  }

  /** Adds a part that another one leads to; answers with the id of the relationship. */
  add(path: string, text: string, contentType: string, from: string, type: string): string {
    this.put(path, text);
    this.append(CONTENT_TYPES, (prefix) => `<${prefix}Override PartName="/${path}" ContentType="${contentType}"/>`);
    const ids = new Set(this.relationships(from).map(({ id }) => id));
    let number = ids.size + 1;
    while (ids.has(`rId${number}`)) number++;
    const id = `rId${number}`;
    this.append(
      relationshipsPath(from),
      (prefix) => `<${prefix}Relationship Id="${id}" Type="${type}" Target="/${path}"/>`,
    );
    return id;
  }

  /** Puts an element before the end of a part. */
  private append(path: string, element: (prefix: string) => string): void {
    const xml = this.text(path);
    const last = [...tagsOf(xml)].at(-1);
    if (last?.kind !== "close") return refuse(DAMAGED);
    this.put(path, xml.slice(0, last.start) + element(last.prefix) + xml.slice(last.start));
  }

  private contentType(path: string): string {
    const xml = this.text(CONTENT_TYPES);
    let usual = "";
    for (const tag of tagsOf(xml)) {
      const attributes = attributesOf(xml, tag);
      const type = attributes.get("ContentType") ?? "";
      if (attributes.get("PartName")?.toLowerCase() === `/${path}`.toLowerCase()) return type;
      if (path.toLowerCase().endsWith(`.${attributes.get("Extension")?.toLowerCase() ?? " "}`)) usual = type;
    }
    return usual;
  }

  bytes(): Uint8Array<ArrayBuffer> {
    const entries = [...this.entries.values()].map((entry) => {
      const text = this.changed.get(entry.name);
      return text === undefined ? entry : pack(entry.name, new TextEncoder().encode(text), entry.date);
    });
    return writeZip(entries);
  }
}

function refuseOtherFiles(bytes: Uint8Array): void {
  if (bytes.length === 0) refuse("this file is empty");
  if (startsWith(bytes, OLD_FILE)) {
    const isEncrypted = includes(bytes, "EncryptedPackage");
    refuse(
      isEncrypted
        ? "this workbook has a password; save it without one first"
        : "this is a workbook of the older kind (.xls), or no workbook at all; save it as .xlsx first",
    );
  }
  if (!startsWith(bytes, [0x50, 0x4b]))
    refuse("this is no .xlsx workbook; save it as .xlsx in a spreadsheet program first");
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

/** Whether the bytes hold a word in two bytes a letter, as the older kind of file spells its parts. */
function includes(bytes: Uint8Array, word: string): boolean {
  const wanted = Array.from(word).flatMap((letter) => [letter.charCodeAt(0), 0]);
  for (let at = bytes.indexOf(wanted[0]); at >= 0; at = bytes.indexOf(wanted[0], at + 1)) {
    if (startsWith(bytes.subarray(at), wanted)) return true;
  }
  return false;
}

/** Byte order marks stay in the text, so that they come out again. */
function textOf(bytes: Uint8Array): string {
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff]))
    refuse(
      "this file is written in UTF-16, which is not read here; open it in a spreadsheet program and save it again",
    );
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refuse(DAMAGED);
  }
}

function relationshipsPath(path: string): string {
  const parts = path.split("/");
  const name = parts.pop() ?? "";
  return [...parts, "_rels", `${name}.rels`].join("/");
}

function dateOf(entries: ReadonlyMap<string, Entry>): number {
  const [first] = entries.values();
  return first.date;
}
