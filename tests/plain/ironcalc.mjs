// Recalculates workbooks in a second spreadsheet engine: for each one rows of cell inputs, as JSON on the standard input; for
// each one rows of what the formulas show, on the standard output. A process of its own, since the engine is an ES module with a WebAssembly file.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const engine = createRequire(import.meta.url).resolve("@ironcalc/wasm");
const { default: start, Model } = await import(pathToFileURL(engine));
await start({ module_or_path: readFileSync(engine.replace(/wasm\.js$/, "wasm_bg.wasm")) });

const NUMBER = 1;
const isFormula = (input) => typeof input === "string" && input.startsWith("=");

function work(rows) {
  const model = new Model("book", "en", "UTC", "en");
  model.pauseEvaluation();
  const columns = new Set();
  rows.forEach((row, r) =>
    row.forEach((input, c) => {
      if (input !== "") model.setUserInput(0, r + 1, c + 1, input);
      if (isFormula(input)) columns.add(c + 1);
    }),
  );
  for (const column of columns) {
    const range = { sheet: 0, row: 1, column, width: 1, height: rows.length };
    model.updateRangeStyle(range, "num_fmt", "0.00000000000000E+00");
  }
  model.resumeEvaluation();
  model.evaluate();
  const shown = rows.map((row, r) =>
    row.map((input, c) => {
      if (!isFormula(input)) return null;
      const text = model.getFormattedCellValue(0, r + 1, c + 1);
      return model.getCellType(0, r + 1, c + 1) === NUMBER ? Number(text) : text;
    }),
  );
  model.free();
  return shown;
}

process.stdout.write(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(work)));
