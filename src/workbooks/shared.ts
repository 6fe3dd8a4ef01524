/** What the planning workbooks say and do alike. */
import { type Conventions, CONVENTIONS } from "../math/conventions";
import { fromInches, type System } from "../math/units";
import type { Entry, Format } from "./book";

export const UNITS = ["in", "cm"];

/** Steps in which shops cut, in yards or meters. */
export const STEPS = ["0.05", "0.1", "0.125", "0.25", "0.5", "1"];

export const BLADES = "Blades: close the cutter after every cut, cut away from yourself, keep it from children.";
export const AT_THE_IRON = "Irons: stand it up, mind the cord and the steam, let pieces cool before you handle them.";
export const NEEDLES = "Needles and pins: count them in and out; none on the floor or in the quilt.";
export const INFANTS = "No quilt belongs in the sleep space of an infant, whatever its size is called.";
export const MEASURE_THE_SQUARES =
  "Print at 100 %. The squares must measure 1 in and 25 mm; if not, use no shape of this page as a pattern.";

/** The row of a sheet's title, high enough for its type. */
export const TITLE_ROW = { 1: 24 };

/** Whether a sheet works in centimeters, by any word that the functions take for them; an empty cell is inches. */
export function isMetric(units: string): string {
  return `LOWER(LEFT(TRIM(${units}),1))="c"`;
}

/** The unit of lengths, within a formula. */
export function unitWord(units: string): string {
  return `IF(${isMetric(units)},"cm","in")`;
}

/** The unit of lengths, beside a cell. */
export function inUnits(units: string): string {
  return `=${unitWord(units)}`;
}

/** The unit of fabric, beside a cell. */
export function shopUnit(units: string): string {
  return `=IF(${isMetric(units)},"m","yd")`;
}

/** A label, a yellow cell for the maker's own, and its unit; each in its column. */
export function input(
  row: number,
  label: string,
  content: string | number,
  format?: Format,
  unit = "",
  choices?: Entry["choices"],
  [labels, inputs, units] = ["A", "B", "C"],
): Entry[] {
  return [
    { cell: `${labels}${row}`, style: "label", content: label },
    { cell: `${inputs}${row}`, style: format || choices ? "input" : "inputText", content, format, choices },
    ...(unit ? [{ cell: `${units}${row}`, style: "unit", content: unit } satisfies Entry] : []),
  ];
}

/** An answer that stays empty as long as a cell is. */
export function blank(cell: string, formula: string): string {
  return `=IF(${cell}="","",${formula})`;
}

/** The word behind a number of panels. */
export function panelWord(count: string): string {
  return `IF(${count}=1,"panel","panels")`;
}

/** The number of the error of a table that has no room; some programs have no number for it, but one for each other error. */
const NO_ROOM = 9;

/** What to do where a table is longer than its room; where it is not, what another formula gives. */
export function unlessTooLong(table: string, otherwise = '""'): string {
  return `IF(IF(ISERROR(${table}),IFERROR(ERROR.TYPE(${table}),${NO_ROOM}),0)=${NO_ROOM},"The table is longer than its room: insert rows under it.",${otherwise})`;
}

/** A length as it was given, or the usual one, as a number, where its cell is blank. */
export function lengthOrUsual(cell: string, usual: "none" | keyof Conventions, units: string): string {
  const otherwise = (system: System) =>
    usual === "none" ? 0 : Number(fromInches(CONVENTIONS[system][usual], system).toFixed(4));
  const [inch, metric] = [otherwise("in"), otherwise("cm")];
  const blankOne = inch === metric ? inch : `IF(${isMetric(units)},${metric},${inch})`;
  return `IF(${cell}="",${blankOne},QUILT.LENGTH(${cell},${units}))`;
}

/** Parts of an inch that rulers and tapes know; what lies on none of them is written in decimals. */
const FINEST = 64;

/** A length as it is, not as the nearest mark of a ruler: 5/16, 7.3, in centimeters 0.75. Its unit is another word. */
export function exactText(length: string, units: string): string {
  const decimal = `OR(${isMetric(units)},MOD(ROUND(${FINEST}*${length},7),1)>0)`;
  return `IF(${decimal},ROUND(${length},4)&"",QUILT.LENGTHTEXT(${length},${FINEST},${units}))`;
}

/** Whether two names are one, whatever their capitals and the spaces round them. */
export function sameName(one: string, other: string): string {
  return `LOWER(TRIM(${one}))=LOWER(TRIM(${other}))`;
}

/** How many cells of a range hold a name. */
export function countOf(range: string, name: string): string {
  return `SUMPRODUCT(--(${sameName(range, name)}))`;
}

/** A box to tick by hand. */
export function tickRow(cell: string): Entry[] {
  return [{ cell, style: "tick" }];
}

/** Boxes to tick beside the rows of a table that are filled; the first row is its heading. */
export function tickColumn(column: string, first: number, last: number, beside: string): Entry[] {
  return [
    { cell: `${column}${first}`, style: "tableHead", content: "done" },
    ...Array.from({ length: last - first }, (_, index): Entry => {
      const row = first + 1 + index;
      return { cell: `${column}${row}`, style: "table", content: `=IF(${beside}${row}="","","☐")` };
    }),
  ];
}

/** Of one yard (meter), in inches (centimeters). */
export function yard(units: string): string {
  return `IF(${isMetric(units)},100,36)`;
}

/**
 * An amount of fabric in a cell, as a number in yards (meters): a number, or text such as "1 7/8" or "27 in". Numbers are
 * not written out as text on the way, which in some countries would give them a decimal comma.
 */
export function amountIn(cell: string, units: string): string {
  const typed = `IFERROR(QUILT.LENGTH(${cell}&IF(${isMetric(units)}," m"," yd"),${units}),QUILT.LENGTH(${cell},${units}))`;
  return `IF(ISNUMBER(${cell}),${cell},${typed}/${yard(units)})`;
}
