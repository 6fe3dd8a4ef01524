/** The script that the spreadsheet loads. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { Linter } from "eslint";
import { worksheetFunctions } from "../../functions";
import { builtAddin } from "./built";
import { loadVendorRuntime } from "./vendorRuntime";

describe("dist/addin/functions.js", () => {
  const script = readFileSync(join(builtAddin(), "functions.js"), "utf8");

  test("associates every function, and nothing else", () => {
    const runtime = loadVendorRuntime();
    const before = runtime.associated();
    runtime.run(script);
    const added = runtime.associated().filter((id) => !before.includes(id));
    expect(added.sort()).toEqual([...worksheetFunctions.keys()].sort());
  });

  test("needs nothing but the language and CustomFunctions: no page, no network, no clock", () => {
    const unknown = new Linter().verify(script, {
      languageOptions: { ecmaVersion: 2022, sourceType: "script", globals: { CustomFunctions: "readonly" } },
      linterOptions: { reportUnusedDisableDirectives: "off" },
      rules: { "no-undef": "error", "no-restricted-globals": ["error", "Date", "globalThis", "eval"] },
    });
    expect(unknown.map(({ message }) => message)).toEqual([]);
  });

  test("is small enough to load at once", () => {
    const kilobytes = gzipSync(script).length / 1024;
    process.stdout.write(`functions.js is ${kilobytes.toFixed(1)} KB compressed\n`);
    expect(kilobytes).toBeLessThan(40);
  });
});
