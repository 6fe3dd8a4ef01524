/** Validates .xlsx files against the Open XML standard, in a process of its own: the validator is an ES module. */
import { readFileSync } from "node:fs";
import validate from "@ooxml-tools/validate";

const faults = [];
for (const path of process.argv.slice(2)) faults.push(...(await validate(readFileSync(path), "xlsx")));
process.stdout.write(JSON.stringify(faults), () => process.exit(0));
