/** What a class copy was made of, and how the maker is told. */

/** A cell, or another place that holds a formula, such as the name "Seam". */
export interface Spot {
  readonly sheet?: string;
  readonly cell?: string;
  /** In words, where it is no cell. */
  readonly place?: string;
}

/** A formula that works in every spreadsheet program now. */
export interface TurnedSpot extends Spot {
  /** Names of the QUILT functions, one for each call. */
  readonly functions: readonly string[];
  readonly was: string;
  readonly now: string;
}

/** A formula that became what it came to, or that stays as it was. */
export interface KeptSpot extends Spot {
  readonly functions: readonly string[];
  readonly was: string;
  readonly why: string;
}

export interface Report {
  readonly turned: readonly TurnedSpot[];
  /** These cells do not change any more when their inputs do. */
  readonly values: readonly KeptSpot[];
  /** Nothing right could be put here. */
  readonly left: readonly KeptSpot[];
  /** Other things that a maker should know. */
  readonly notes: readonly string[];
}

/** Places named for one reason; the rest is counted. */
const MOST_NAMED = 12;

/** The report in plain lines. */
export function reportText({ turned, values, left, notes }: Report): string {
  if (turned.length + values.length + left.length === 0)
    return ["No QUILT function is called in this workbook.", ...notes].join("\n");
  const lines = [`${formulas(turned.length)} turned into plain formulas, which work in any spreadsheet program.`];
  const counts = new Map<string, number>();
  for (const name of turned.flatMap(({ functions }) => functions)) counts.set(name, (counts.get(name) ?? 0) + 1);
  lines.push(...[...counts].sort().map(([name, count]) => `  ${name}: ${count}`));
  if (values.length > 0) {
    const one = values.length === 1;
    lines.push(
      `${formulas(values.length)} became ${one ? "a value that does" : "values that do"} not change any more:`,
    );
    lines.push(...spotLines(values));
  }
  if (left.length > 0) lines.push(`${formulas(left.length)} could not be turned:`, ...spotLines(left));
  return [...lines, ...notes].join("\n");
}

function formulas(count: number): string {
  return `${count} formula${count === 1 ? "" : "s"}`;
}

/** A line for each reason, with the places that it is true of. */
function spotLines(spots: readonly KeptSpot[]): string[] {
  const places = new Map<string, string[]>();
  for (const spot of spots) places.set(reason(spot), [...(places.get(reason(spot)) ?? []), nameOf(spot)]);
  return [...places].map(([why, names]) => {
    const more = names.length > MOST_NAMED ? ` and ${names.length - MOST_NAMED} more` : "";
    return `  ${why}: ${names.slice(0, MOST_NAMED).join(", ")}${more}`;
  });
}

/** A spot by its name: Plan!B5, or the name "Seam". */
export function nameOf({ sheet, cell, place }: Spot): string {
  if (place !== undefined) return sheet === undefined ? place : `${place} on ${sheet}`;
  return `${sheet ?? ""}!${cell ?? ""}`;
}

/** Why, with the functions that it is about. */
export function reason({ functions, why }: KeptSpot): string {
  const names = [...new Set(functions)].join(", ");
  return names ? `${names} (${why})` : why;
}
