/** Damaged workbooks for the soak: bytes of the archive changed, and parts changed within a sound archive. */
import fc from "fast-check";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

export type Damage = (file: Uint8Array) => Uint8Array;

const flipped = fc
  .array(fc.tuple(fc.nat(), fc.nat({ max: 255 })), { minLength: 1, maxLength: 12 })
  .map((changes): Damage => (file) => {
    const bytes = file.slice();
    for (const [at, value] of changes) bytes[at % bytes.length] = value;
    return bytes;
  });

const shortened = fc.nat().map(
  (length): Damage =>
    (file) =>
      file.slice(0, length % file.length),
);

const repeated = fc.tuple(fc.nat(), fc.nat()).map(
  ([from, to]): Damage =>
    (file) =>
      Uint8Array.from([...file.slice(0, to % file.length), ...file.slice(from % file.length)]),
);

const ODD = [
  "",
  "<",
  ">",
  '"',
  "&#0;",
  "&a;",
  "-1",
  "1e999",
  "99999999",
  "A0",
  "=1/0",
  "]]>",
  "\u0000",
  "<row>",
  "NaN",
];

/** A number, a name or a tag of a part replaced, doubled or left out. */
const rewritten = fc
  .array(fc.tuple(fc.nat(), fc.nat(), fc.constantFrom(...ODD)), { minLength: 1, maxLength: 4 })
  .map((changes): Damage => (file) => {
    const parts = unzipSync(file);
    const names = Object.keys(parts);
    for (const [part, at, text] of changes) {
      const name = names[part % names.length];
      const words = strFromU8(parts[name]).split(/(\b\w+\b|<[^>]*>)/);
      words[at % words.length] = text;
      parts[name] = strToU8(words.join(""));
    }
    return zipSync(parts, { level: 1 });
  });

export const damage: fc.Arbitrary<Damage> = fc.oneof(flipped, shortened, repeated, rewritten, rewritten);
