/**
 * The zip container of a workbook file. Entries are unpacked one by one and only when they are read; the others go into the
 * copy as they came, packed. Sizes are checked before anything is unpacked and again while it is.
 */
import { deflateSync, Inflate } from "fflate";
import { Problem } from "../../math/problem";

/** One file within the container. */
export interface Entry {
  readonly name: string;
  /** Date and time of the entry, as the container keeps them. */
  readonly date: number;
  readonly crc: number;
  /** Bytes when unpacked, as the container states them. */
  readonly size: number;
  readonly isDeflated: boolean;
  readonly packed: Uint8Array;
}

const MEGABYTE = 1_000_000;
const MOST_PACKED = 100 * MEGABYTE;
const MOST_ENTRIES = 10_000;
const MOST_UNPACKED = 500 * MEGABYTE;

/** Workbooks of nothing but equal rows are packed some 200 times smaller; larger entries beyond this are no workbook's. */
const TIGHTEST = 400;

/** What is unpacked at a time, at most a thousand times as large. */
const STEP = 8_192;

const LOCAL_HEADER = 0x04034b50;
const CENTRAL_HEADER = 0x02014b50;
const END = 0x06054b50;
const END_SIZE = 22;
const LONGEST_COMMENT = 0xffff;
const IN_ZIP64 = 0xffffffff;
const ENCRYPTED = 1;
const UTF8_NAME = 0x800;
const STORED = 0;
const DEFLATED = 8;

export const DAMAGED = "this file is damaged and cannot be read";
const TOO_LARGE = "this file is too large to be a planning workbook: unpacked it would fill the memory";

export function refuse(sentence: string): never {
  throw new Problem("bad input", sentence);
}

/** The entries in the order of the container's own list. */
export function readZip(bytes: Uint8Array): Entry[] {
  if (bytes.length > MOST_PACKED) refuse(`this file is larger than ${MOST_PACKED / MEGABYTE} MB, which is too large`);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (at === IN_ZIP64 || count === 0xffff)
    refuse("this file is packed in a way that is not read here; open it in a spreadsheet program and save it again");
  if (count > MOST_ENTRIES) refuse(TOO_LARGE);
  const entries: Entry[] = [];
  let [packed, unpacked] = [0, 0];
  for (let index = 0; index < count; index++) {
    const { entry, next } = readEntry(bytes, view, at);
    packed += entry.packed.length;
    unpacked += entry.size;
    if (unpacked > MOST_UNPACKED) refuse(TOO_LARGE);
    if (entry.size > MEGABYTE && entry.size > entry.packed.length * TIGHTEST) refuse(TOO_LARGE);
    entries.push(entry);
    at = next;
  }
  // Entries that share their bytes are how a small file pretends to be a huge one.
  if (packed > bytes.length || hasTwice(entries)) refuse(DAMAGED);
  return entries;
}

function endOf(view: DataView): number {
  const last = view.byteLength - END_SIZE;
  for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--) if (view.getUint32(at, true) === END) return at;
  return refuse(DAMAGED);
}

function readEntry(bytes: Uint8Array, view: DataView, at: number): { entry: Entry; next: number } {
  if (at + 46 > bytes.length || view.getUint32(at, true) !== CENTRAL_HEADER) refuse(DAMAGED);
  const [flags, method] = [view.getUint16(at + 8, true), view.getUint16(at + 10, true)];
  if (flags & ENCRYPTED) refuse("this file has a password; save it without one first");
  if (method !== STORED && method !== DEFLATED)
    refuse("this file is packed in a way that is not read here; open it in a spreadsheet program and save it again");
  const [packedSize, size] = [view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
  const nameEnd = at + 46 + view.getUint16(at + 28, true);
  const next = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  const local = view.getUint32(at + 42, true);
  if (next > bytes.length || local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL_HEADER) refuse(DAMAGED);
  const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (start + packedSize > bytes.length) refuse(DAMAGED);
  const entry = {
    name: new TextDecoder().decode(bytes.subarray(at + 46, nameEnd)),
    date: view.getUint32(at + 12, true),
    crc: view.getUint32(at + 16, true),
    size,
    isDeflated: method === DEFLATED,
    packed: bytes.subarray(start, start + packedSize),
  };
  return { entry, next };
}

function hasTwice(entries: readonly Entry[]): boolean {
  return new Set(entries.map(({ name }) => name.toLowerCase())).size < entries.length;
}

/** The bytes of an entry, unless they are not what the container says. */
export function unpack(entry: Entry): Uint8Array {
  const unpacked = entry.isDeflated ? inflate(entry) : entry.packed;
  if (unpacked.length !== entry.size || crcOf(unpacked) !== entry.crc) refuse(DAMAGED);
  return unpacked;
}

function inflate({ packed, size }: Entry): Uint8Array {
  const unpacked = new Uint8Array(size);
  let at = 0;
  const inflater = new Inflate((chunk) => {
    if (at + chunk.length > size) refuse(DAMAGED);
    unpacked.set(chunk, at);
    at += chunk.length;
  });
  try {
    for (let from = 0; from < packed.length; from += STEP)
      inflater.push(packed.subarray(from, from + STEP), from + STEP >= packed.length);
  } catch (thrown) {
    if (thrown instanceof Problem) throw thrown;
    refuse(DAMAGED);
  }
  return unpacked.subarray(0, at);
}

/** A new content, packed, under a name. */
export function pack(name: string, content: Uint8Array, date: number): Entry {
  return { name, date, crc: crcOf(content), size: content.length, isDeflated: true, packed: deflateSync(content) };
}

export function writeZip(entries: readonly Entry[]): Uint8Array<ArrayBuffer> {
  const names = entries.map(({ name }) => new TextEncoder().encode(name));
  const headers = names.reduce((size, name) => size + 30 + 46 + 2 * name.length, 0);
  const bytes = new Uint8Array(entries.reduce((size, { packed }) => size + packed.length, headers) + END_SIZE);
  const view = new DataView(bytes.buffer);
  const offsets: number[] = [];
  let at = 0;
  entries.forEach((entry, index) => {
    offsets.push(at);
    view.setUint32(at, LOCAL_HEADER, true);
    at = describe(bytes, view, at + 4, entry, names[index], 0);
    bytes.set(entry.packed, at);
    at += entry.packed.length;
  });
  const directory = at;
  entries.forEach((entry, index) => {
    view.setUint32(at, CENTRAL_HEADER, true);
    view.setUint16(at + 4, 20, true);
    view.setUint32(at + 42, offsets[index], true);
    at = describe(bytes, view, at + 6, entry, names[index], 14);
  });
  view.setUint32(at, END, true);
  view.setUint16(at + 8, entries.length, true);
  view.setUint16(at + 10, entries.length, true);
  view.setUint32(at + 12, at - directory, true);
  view.setUint32(at + 16, directory, true);
  return bytes;
}

/** The fields that both headers of an entry share, then its name after a gap. */
function describe(bytes: Uint8Array, view: DataView, at: number, entry: Entry, name: Uint8Array, gap: number): number {
  view.setUint16(at, 20, true);
  view.setUint16(at + 2, UTF8_NAME, true);
  view.setUint16(at + 4, entry.isDeflated ? DEFLATED : STORED, true);
  view.setUint32(at + 6, entry.date, true);
  view.setUint32(at + 10, entry.crc, true);
  view.setUint32(at + 14, entry.packed.length, true);
  view.setUint32(at + 18, entry.size, true);
  view.setUint16(at + 22, name.length, true);
  bytes.set(name, at + 26 + gap);
  return at + 26 + gap + name.length;
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

function crcOf(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crc >>> 8) ^ CRC_TABLE[(crc ^ byte) & 0xff];
  return (crc ^ 0xffffffff) >>> 0;
}
