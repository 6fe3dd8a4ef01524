/**
 * The few names of jest that the tests of the mathematics use, gathered so that one process can run any of them again and again.
 * The matchers are jest's own package.
 */
import { expect } from "expect";

export interface GatheredTest {
  readonly name: string;
  readonly run: () => unknown;
}

let gathered: GatheredTest[] = [];
const groups: string[] = [];

function title(template: string, values: readonly unknown[]): string {
  let next = 0;
  return template.replace(/%[a-z]/g, () => String(values[next++]));
}

function eachOf(register: (name: string, run: (...values: unknown[]) => unknown) => void) {
  return (table: readonly unknown[]) => (template: string, run: (...values: unknown[]) => unknown) => {
    for (const row of table) {
      const values = Array.isArray(row) ? (row as unknown[]) : [row];
      register(title(template, values), () => run(...values));
    }
  };
}

function test(name: string, run: () => unknown): void {
  gathered.push({ name: [...groups, name].join(" > "), run });
}

function describe(name: string, body: () => unknown): void {
  groups.push(name);
  body();
  groups.pop();
}

/** Loads the test files and gives their tests. */
export function gather(files: readonly string[]): GatheredTest[] {
  gathered = [];
  const named = {
    test: Object.assign(test, { each: eachOf(test) }),
    describe: Object.assign(describe, { each: eachOf(describe) }),
  };
  Object.assign(globalThis, { ...named, expect });
  for (const file of files) {
    // eslint-disable-next-line @typescript-eslint/no-require-imports -- in this order, and after the names above
    describe(file, () => require(file));
  }
  return gathered;
}
