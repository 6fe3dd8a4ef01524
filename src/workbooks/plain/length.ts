/** Lengths and amounts: reading, writing and rounding them. */
import { above, downToMark, either, type Formula, plain, quoted, toNearestMark, upToMark, written } from "./formula";
import type { Reader } from "./reader";
import { fabricToBuy, twin, type Twins } from "./template";

export const length: Twins = {
  LENGTH: twin("length units", "amount", (read) => {
    read.staysEmpty(read.isEmpty("length"));
    return read.emptyIf === true ? NOTHING : read.lengthOrZero("length");
  }),

  LENGTHTEXT: twin("length denominator units", "text", (read) => {
    read.staysEmpty(read.isEmpty("length"));
    if (read.emptyIf === true) return NOTHING;
    const value = read.signedLength("length");
    const isUsual = read.isEmpty("denominator") === true;
    const parts = (usual: number) => (isUsual ? usual : read.count("denominator", { in: 8, cm: 10 }, 1));
    const decimal = plain`ROUND(${nearest(value, parts(10))}/${parts(10)},4)&""`;
    const sign = plain`IF(${nearest(value, parts(8))}<0,"-","")`;
    return either(read.metric, decimal, `${sign}&${fractionText(marks(value, parts(8)), parts(8))}`);
  }),

  LENGTHMARK: twin("length mark way units", "amount", (read) => {
    read.staysEmpty(read.isEmpty("length"));
    if (read.emptyIf === true) return NOTHING;
    const [value, mark] = [read.longLength("length"), read.lengthOrZero("mark", "mark")];
    return read.choose("way", "up", {
      up: () => upToMark(mark, value),
      down: () => downToMark(mark, value),
      nearest: () => toNearestMark(mark, value),
    });
  }),

  FABRIC: twin("length step units", "amount", (read) => fabricToBuy(read, read.longLength("length"))),

  FABRICTEXT: twin("amount units", "text", (read) => {
    read.staysEmpty(read.isEmpty("amount"));
    if (read.emptyIf === true) return NOTHING;
    const amount = read.fabric("amount");
    const decimal = plain`ROUND(${amount},4)`;
    // In forty-eighths, sixteenths are every third and thirds every sixteenth.
    const all = plain`ROUND(48*${amount},7)`;
    const sixteenths = fractionText(plain`INT(${all}/3)`, 16);
    const thirds = fractionText(plain`INT(${all}/16)`, 3);
    const yards = plain`IF(MOD(${all},3)=0,${sixteenths},IF(MOD(${all},16)=0,${thirds},${decimal}))`;
    return either(read.metric, plain`${decimal}&${quoted(" m")}`, plain`${yards}&${quoted(" yd")}`);
  }),

  BEFOREWASHING: twin("length shrinkage units", "amount", (read) => {
    const [length, shrinkage] = [read.longLength("length"), read.rate("shrinkage")];
    read.require(above(shrinkage, 1));
    return plain`${length}/(1-${shrinkage})`;
  }),
};

/** The answer where the argument is left out altogether. */
const NOTHING = '""';

/** A length with its unit as a sentence has it: on a sixteenth as a fraction, else in decimals. */
export function lengthText(read: Reader, length: Formula): string {
  const decimal = plain`ROUND(${length},4)`;
  const onMark = plain`ABS(${length}-ROUND(16*${length},0)/16)<0.000000001`;
  const inches = plain`IF(${onMark},${fractionText(marks(length, 16), 16)},${decimal})&${quoted(" in")}`;
  return written(either(read.metric, plain`${decimal}&${quoted(" cm")}`, inches));
}

/** A value in parts of a unit, the nearest whole number of them. */
function nearest(value: Formula, parts: Formula): string {
  return plain`ROUND(ROUND(${value}*${parts},9),0)`;
}

/** The size of a value in parts of a unit, the nearest whole number of them. */
function marks(value: Formula, parts: Formula): string {
  return plain`INT(ROUND(ABS(${value})*${parts},9)+0.5)`;
}

/** A whole number of parts as a ruler reads, reduced: 18 eighths are 2 1/4. */
function fractionText(all: string, parts: Formula): string {
  if (typeof parts === "number" && parts <= MOST_CHOICES) {
    const fractions = Array.from({ length: parts }, (_, over) => quoted(over === 0 ? "" : ` ${reduced(over, parts)}`));
    // A whole number of 0 is left away before a fraction.
    return plain`TRIM(SUBSTITUTE(" "&INT(${all}/${parts})&CHOOSE(1+MOD(${all},${parts}),${fractions.join(",")})," 0 "," "))`;
  }
  const [whole, over] = [plain`INT(${all}/${parts})`, plain`MOD(${all},${parts})`];
  const divisor = plain`GCD(${over},${parts})`;
  const fraction = plain`${over}/${divisor}&"/"&${parts}/${divisor}`;
  return plain`IF(${over}=0,${whole},IF(${whole}=0,"",${whole}&" ")&${fraction})`;
}

/** Fractions that are spelled out; a formula with more is longer than one that reduces them. */
const MOST_CHOICES = 16;

function reduced(over: number, parts: number): string {
  const divisor = Array.from({ length: over }, (_, less) => over - less).find(
    (each) => over % each === 0 && parts % each === 0,
  )!;
  return `${over / divisor}/${parts / divisor}`;
}
