/** What the planning workbooks say and do alike. */
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

/** The unit of lengths, beside a cell. */
export function inUnits(units: string): string {
  return `=${units}`;
}

/** The unit of fabric, beside a cell. */
export function shopUnit(units: string): string {
  return `=IF(${units}="cm","m","yd")`;
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

/** What to do where a table is longer than its room; where it is not, what another formula gives. */
export function unlessTooLong(table: string, otherwise = '""'): string {
  return `IF(ISERROR(${table}),"If #SPILL! stands below, the table is longer than its room: insert rows under it.",${otherwise})`;
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
  return `IF(${units}="cm",100,36)`;
}

/**
 * An amount of fabric in a cell, as a number in yards (meters): a number, or text such as "1 7/8" or "27 in". Numbers are
 * not written out as text on the way, which in some countries would give them a decimal comma.
 */
export function amountIn(cell: string, units: string): string {
  const typed = `IFERROR(QUILT.LENGTH(${cell}&IF(${units}="cm"," m"," yd"),${units}),QUILT.LENGTH(${cell},${units}))`;
  return `IF(ISNUMBER(${cell}),${cell},${typed}/${yard(units)})`;
}
