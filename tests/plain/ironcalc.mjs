// Recalculates workbooks in a second spreadsheet engine: for each one its sheets, as JSON on the standard input, each a name and
// rows of cell inputs; for each one the rows of each sheet, what the formulas show, on the standard output. A process of its own,
// since the engine is an ES module with a WebAssembly file.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const engine = createRequire(import.meta.url).resolve("@ironcalc/wasm");
const { default: start, Model } = await import(pathToFileURL(engine));
await start({ module_or_path: readFileSync(engine.replace(/wasm\.js$/, "wasm_bg.wasm")) });

const NUMBER = 1;
const isFormula = (input) => typeof input === "string" && input.startsWith("=");

function work(sheets) {
  const model = new Model("book", "en", "UTC", "en");
  model.pauseEvaluation();
  sheets.forEach(({ name }, sheet) => {
    if (sheet > 0) model.newSheet();
    model.renameSheet(sheet, name);
  });
  sheets.forEach(({ rows }, sheet) => enter(model, sheet, rows));
  model.resumeEvaluation();
  model.evaluate();
  const shown = sheets.map(({ rows }, sheet) => rows.map((row, r) => row.map(shownIn(model, sheet, r))));
  model.free();
  return shown;
}

function enter(model, sheet, rows) {
  const columns = new Set();
  rows.forEach((row, r) =>
    row.forEach((input, c) => {
      if (input !== "") model.setUserInput(sheet, r + 1, c + 1, input);
      if (isFormula(input)) columns.add(c + 1);
    }),
  );
  for (const column of columns) {
    const range = { sheet, row: 1, column, width: 1, height: rows.length };
    model.updateRangeStyle(range, "num_fmt", "0.00000000000000E+00");
  }
}

function shownIn(model, sheet, r) {
  return (input, c) => {
    if (!isFormula(input)) return null;
    const text = model.getFormattedCellValue(sheet, r + 1, c + 1);
    return model.getCellType(sheet, r + 1, c + 1) === NUMBER ? Number(text) : text;
  };
}

process.stdout.write(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(work)));
