/** Validates an .xlsx file against the Open XML standard, in a process of its own: the validator is an ES module. */
import { readFileSync } from "node:fs";
import validate from "@ooxml-tools/validate";

const faults = await validate(readFileSync(process.argv[2]), "xlsx");
process.stdout.write(JSON.stringify(faults), () => process.exit(0));
