import { readFileSync } from "node:fs";
import path from "node:path";
import type { Kind } from "../../src/math/cutplan/model";
import type { CutList } from "../../src/math/cutplan";

/** An instance as the files have it: items are [width, height, count]. */
export interface Instance {
  readonly name: string;
  readonly W: number;
  readonly H: number;
  readonly rot: boolean;
  readonly unit: string;
  readonly items: readonly (readonly number[])[];
}

export interface LevelOptimum {
  readonly name: string;
  readonly mode: "no" | "swap" | "rot";
  readonly trim: boolean;
  readonly best: number;
  readonly lb: number;
  readonly optimal: boolean;
}

// eslint-disable-next-line @typescript-eslint/no-unnecessary-type-parameters -- the caller knows what its file holds
export function read<T>(file: string): T {
  return JSON.parse(readFileSync(path.join(__dirname, "../data/cutplan", file), "utf8")) as T;
}

export function instances(file: string): Instance[] {
  return read<{ instances: Instance[] }>(file).instances;
}

export function kindsOf(items: Instance["items"], mayTurn: boolean): Kind[] {
  return items.map(([width, height, count]) => ({ width, height, count, mayTurn }));
}

export function listOf(items: Instance["items"], mayTurn: boolean): CutList {
  return kindsOf(items, mayTurn).map((kind, row) => ({ label: `patch ${row + 1}`, ...kind }));
}

/** A benchmark in the way its row says: width and height exchanged, or turning allowed. */
export function benchmark(row: LevelOptimum, instance: Instance): { width: number; kinds: Kind[] } {
  const kinds = kindsOf(instance.items, row.mode === "rot");
  if (row.mode !== "swap") return { width: instance.W, kinds };
  return { width: instance.H, kinds: kinds.map((kind) => ({ ...kind, width: kind.height, height: kind.width })) };
}

/** The same whole numbers from 0 to `below` on every run. */
export function dice(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * below);
  };
}
