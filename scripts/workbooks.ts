/** Writes the planning workbooks: `npm run workbooks` puts them in dist/workbooks/. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { evaluateBook } from "../src/practice/recalculate";
import { workbooks } from "../src/workbooks";
import { writeBook } from "../src/workbooks/write";

const FOLDER = join(__dirname, "..", "dist", "workbooks");

async function main(): Promise<void> {
  mkdirSync(FOLDER, { recursive: true });
  for (const workbook of workbooks) {
    const file = `${workbook.name}.xlsx`;
    writeFileSync(join(FOLDER, file), await writeBook(workbook.build(), evaluateBook));
    console.log(join("dist", "workbooks", file));
  }
}

void main();
