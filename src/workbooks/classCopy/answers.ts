/** What formulas come to, and how whoever makes a class copy is asked for it. */
import type { Area } from "./places";

/** An error of a cell by its code, such as #N/A. */
export interface CellError {
  readonly error: string;
}

/** What a cell shows. An empty text stands for a cell that stays empty. */
export type Value = number | string | boolean | CellError;

/** The rows of an answer; a single value is one row of one. */
export type Answer = readonly (readonly Value[])[];

/** A formula that is to be worked out as if it stood in a cell of the workbook, all other cells as they are. */
export interface Asked {
  readonly sheet: string;
  readonly cell: string;
  /** As the file stores it, with an equals sign before it. */
  readonly formula: string;
  /** What the formula fills in the file, where it is that of the cell. */
  readonly area?: Area;
  /** It is the plain twin of the formula in the cell, not the formula itself. */
  readonly isTwin: boolean;
}

/** Works out formulas of the workbook, all cells fresh; undefined where one cannot be worked out at all. */
export type WorkOut = (asked: readonly Asked[]) => Promise<readonly (Answer | undefined)[]>;

/** Programs differ in the last binary digits. */
const DUST = 1e-9;

export function isError(value: Value): value is CellError {
  return typeof value === "object";
}

/** Whether a twin shows what its function shows. Which error a cell shows is up to the program. */
export function isSame(one: Answer, other: Answer): boolean {
  return (
    one.length === other.length &&
    one.every((line, row) => {
      const others = other[row];
      return line.length === others.length && line.every((value, column) => isSameValue(value, others[column]));
    })
  );
}

function isSameValue(one: Value, other: Value): boolean {
  if (isError(one) || isError(other)) return isError(one) && isError(other);
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= DUST * Math.max(1, Math.abs(one));
  return one === other;
}

/** Errors that every spreadsheet program knows. */
const KNOWN = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];

/** A value as a file can hold it. */
export function inFile(value: Value): Value {
  if (typeof value === "number" && !Number.isFinite(value)) return { error: "#NUM!" };
  return isError(value) && !KNOWN.includes(value.error) ? { error: "#VALUE!" } : value;
}
