// Recalculates cells in a second spreadsheet engine: rows of cell inputs as JSON on the standard input, rows of what the
// cells show on the standard output. A process of its own, since the engine is an ES module with a WebAssembly file.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const engine = createRequire(import.meta.url).resolve("@ironcalc/wasm");
const { default: start, Model } = await import(pathToFileURL(engine));
await start({ module_or_path: readFileSync(engine.replace(/wasm\.js$/, "wasm_bg.wasm")) });

const rows = JSON.parse(readFileSync(0, "utf8"));
const model = new Model("book", "en", "UTC", "en");
model.pauseEvaluation();
rows.forEach((row, r) =>
  row.forEach((input, c) => {
    if (input !== "") model.setUserInput(0, r + 1, c + 1, input);
  }),
);
const width = Math.max(...rows.map((row) => row.length));
const everyDigit = "0.00000000000000E+00";
model.updateRangeStyle({ sheet: 0, row: 1, column: 1, width, height: rows.length }, "num_fmt", everyDigit);
model.resumeEvaluation();
model.evaluate();
const NUMBER = 1;
const shown = rows.map((row, r) =>
  row.map((_, c) => {
    const text = model.getFormattedCellValue(0, r + 1, c + 1);
    return model.getCellType(0, r + 1, c + 1) === NUMBER && text !== "" ? Number(text) : text;
  }),
);
process.stdout.write(JSON.stringify(shown));
