/** Calls of the worksheet functions as a spreadsheet sends them, and what may come back. */
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import type { Case } from "../cases";
import { cases } from "../cases/index";
import { type Call, CODES, type Outcome } from "./vendorRuntime";

export const rows = Object.values(cases).flat();
export const ids = [...worksheetFunctions.keys()];

/** What may stand in a cell where something else is meant. */
const STRANGERS: readonly unknown[] = [
  null,
  "",
  "  ",
  "three",
  "#VALUE!",
  "#N/A",
  { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" },
  { type: "Double", basicType: "Double", basicValue: 2.5 },
  "5/0",
  "2 1/2 x 4 1/2",
  "=1+1",
  "🧵",
  -1,
  0,
  0.5,
  1e-9,
  46089,
  1e300,
  true,
  [[null]],
  [[""]],
  [["a", 1, null]],
  [["#REF!", 1]],
  [[1], [{ type: "Error", basicType: "Error", basicValue: "#N/A", errorType: "NotAvailable" }]],
  [],
  [[]],
  [
    [1, 2],
    [3, 4],
  ],
];

/** Calls with each of the strangers in each place, beside arguments that are good. */
export function callsWithStrangers(id: string): Call[] {
  const row = rows.find(({ call, fails }) => call === id && fails === undefined);
  const [, good] = padded(id, row?.cells ?? []);
  return good.flatMap((_, position) =>
    STRANGERS.map((stranger): Call => [id, good.map((cell, index) => (index === position ? stranger : cell))]),
  );
}

/** The call with null for every argument left out, as a spreadsheet sends it. */
export function padded(id: string, cells: readonly unknown[]): Call {
  const { length } = worksheetFunctions.get(id)!;
  return [id, Array.from({ length }, (_, index) => cells[index] ?? null)];
}

/** What the worksheet function gives by itself, in the form of an outcome. */
export function direct({ call, cells }: Case): Outcome {
  try {
    return { ok: true, value: worksheetFunctions.get(call)!(...cells) as unknown };
  } catch (thrown) {
    if (!(thrown instanceof CellError)) throw thrown;
    const code = thrown.code === "#N/A" ? CODES.notAvailable : CODES.invalidValue;
    return { ok: false, code, message: thrown.message };
  }
}

/** What the function throws by itself, since the runtime swallows it. */
export function thrownBy([id, cells]: Call): string {
  try {
    worksheetFunctions.get(id)!(...cells);
    return "";
  } catch (thrown) {
    return String((thrown as Error).stack);
  }
}

/** A value or a full table that a cell can show, or one of the two errors that can tell why. */
export function isClean(outcome: Outcome): boolean {
  if (!outcome.ok) {
    const { code, message } = outcome;
    const tells = message.length > 10 && !/undefined|NaN|Infinity|null|\[object|Error:/.test(message);
    return tells && (code === CODES.notAvailable || code === CODES.invalidValue);
  }
  if (!Array.isArray(outcome.value)) return isCellValue(outcome.value);
  const table = outcome.value as unknown[][];
  return table.length > 0 && table.every((row) => row.length === table[0].length && row.every(isCellValue));
}

function isCellValue(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  return typeof value === "boolean" || (typeof value === "string" && !/undefined|NaN|Infinity|\[object/.test(value));
}
