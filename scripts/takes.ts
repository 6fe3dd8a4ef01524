/** Learns from a function itself what each argument takes: it is called with nonsense there, and its sentence tells. */
import { worksheetFunctions } from "../functions";
import { Door } from "../functions/cells";
import type { Takes } from "../src/pane/catalogue";
import { withWorking } from "../src/math/working";
import type { FunctionMetadata } from "./reference/page";

type Parameter = FunctionMetadata["parameters"][number];

/** Neither a length nor a word that any function knows. */
const NONSENSE = "?!";
const NO_CHOICE = 123456.789;

/**
 * What an argument takes.
 *
 * @param rows arguments with which the function answers; not every one makes it look at every argument
 */
export function takes(id: string, parameter: Parameter, index: number, rows: readonly (readonly unknown[])[]): Takes {
  if (parameter.name === "units") return { kind: "units" };
  if (parameter.dimensionality === "matrix") return { kind: "range" };
  for (const row of rows) {
    const found = readSentence(id, parameter, index, row);
    if (found) return found;
  }
  return { kind: "text" };
}

function readSentence(id: string, parameter: Parameter, index: number, row: readonly unknown[]): Takes | undefined {
  const sentence = refusal(id, row.with(index, NONSENSE));
  if (sentence.includes("must be TRUE or FALSE")) {
    return { kind: "flag", usual: /TRUE \(usual\)/.test(parameter.description) };
  }
  const words = /must be one of (".*"), not/.exec(sentence)?.[1];
  if (words) return { kind: "choice", choices: [...words.matchAll(/"([^"]+)"/g)].map(([, word]) => word) };
  if (sentence.includes("must be a number")) {
    const numbers = /must be one of ([\d, ]+), not/.exec(refusal(id, row.with(index, NO_CHOICE)))?.[1];
    return numbers ? { kind: "choice", choices: numbers.split(", ") } : { kind: "number" };
  }
  return sentence.includes("cannot read a length") ? { kind: "length" } : undefined;
}

function refusal(id: string, cells: readonly unknown[]): string {
  try {
    worksheetFunctions.get(id)!(...cells);
    return "";
  } catch (thrown) {
    return (thrown as Error).message;
  }
}

/**
 * What each optional argument is taken for where it is left out, by its name in lower case without spaces. What is taken
 * depends on a choice now and then, such as the drop on the bed; that is no usual value, and is left out.
 *
 * @param taken what each argument takes
 * @param rows arguments with which the function answers, in one unit or the other
 */
export function usuals(
  id: string,
  parameters: readonly Parameter[],
  taken: readonly Takes[],
  rows: readonly (readonly unknown[])[],
  units: "in" | "cm",
): Map<string, string> {
  const at = parameters.findIndex(({ name }) => name === "units");
  const inUnits = (row: readonly unknown[]) => (row[at] === "cm" ? "cm" : "in") === units;
  const ordered = [...rows.filter(inUnits), ...rows.filter((row) => !inUnits(row))];
  const required = (row: readonly unknown[]) =>
    parameters.map(({ name, optional }, index) => (name === "units" ? units : optional ? null : row[index]));
  const plain = ordered.map(required).find((cells) => assumed(id, cells) !== undefined);
  if (plain === undefined) return new Map();
  const chosen = taken.flatMap((takes, index) =>
    takes.kind === "choice" ? takes.choices.map((choice) => plain.with(index, choice)) : [],
  );
  const found = new Map<string, Set<string>>();
  for (const cells of [plain, ...chosen]) {
    for (const [name, value] of assumed(id, cells) ?? []) found.set(name, (found.get(name) ?? new Set()).add(value));
  }
  return new Map([...found].flatMap(([name, values]) => (values.size === 1 ? [[name, [...values][0]]] : [])));
}

/** What a call takes for granted, by the name of the argument; undefined where it has no answer. */
function assumed(id: string, cells: readonly unknown[]): [string, string][] | undefined {
  try {
    const { assumptions } = withWorking(() => worksheetFunctions.get(id)!(...cells) as unknown);
    const lines = assumptions.map((line) => /^(.*?): (.*), as usual where none is given$/.exec(line));
    return lines.flatMap((line): [string, string][] => (line ? [[plainName(line[1]), line[2]]] : []));
  } catch {
    return undefined;
  }
}

/** What the door takes off a number as it leaves. */
const DUST = 1e-9;

/**
 * What the number that a function answers with measures: it leaves by one of two ways of the door, or is a count or money.
 *
 * @param rows arguments with which the function answers
 */
export function measures(id: string, rows: readonly (readonly unknown[])[]): "length" | "fabric" | undefined {
  // eslint-disable-next-line @typescript-eslint/unbound-method -- each is called on a door
  const { showsLength, showsFabric } = Door.prototype;
  const shown = { length: NaN, fabric: NaN };
  Door.prototype.showsLength = function (length) {
    return (shown.length = showsLength.call(this, length));
  };
  Door.prototype.showsFabric = function (length) {
    return (shown.fabric = showsFabric.call(this, length));
  };
  try {
    for (const row of rows) {
      const answer: unknown = worksheetFunctions.get(id)!(...row);
      if (typeof answer !== "number") continue;
      for (const way of ["length", "fabric"] as const) if (Math.abs(answer - shown[way]) < DUST) return way;
    }
    return undefined;
  } finally {
    Object.assign(Door.prototype, { showsLength, showsFabric });
  }
}

/** "fabric width" and "fabricWidth" are one argument. */
export function plainName(name: string): string {
  return name.replace(/\s/g, "").toLowerCase();
}
