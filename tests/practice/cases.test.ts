/** Every check value again, typed into the practice sheet: cells for arguments, a formula that reads them. */
import { CellValueType, type ICellData } from "@univerjs/core";
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import { cellName } from "../../src/practice/address";
import { quiltFunctions } from "../../src/practice/catalogue";
import { Evaluator, type Outcome } from "../../src/practice/evaluate";
import type { Case } from "../cases";
import { cases } from "../cases/index";

const cellData: Record<number, Record<number, ICellData>> = {};
let nextRow = 0;

/** Only what a cell can hold, and no range where the sheet would answer cell by cell. */
const rows = Object.values(cases)
  .flat()
  .filter((row) => row.cells.flat(2).every(fitsCell) && !liftsRange(row))
  .map((row): [string, Case] => [typed(row), row]);

const evaluator = new Evaluator(cellData);

afterAll(() => {
  evaluator.dispose();
});

test.each(rows)("%s", async (formula, row) => {
  expect(await evaluator.evaluate(formula)).toEqual(expected(row));
});

/** Writes the arguments into cells below those of the row before, and gives the formula that reads them. */
function typed({ call, cells }: Case): string {
  const top = nextRow;
  let column = 0;
  const written = cells.map((cell) => {
    if (cell === null || cell === undefined) return "";
    const block = (Array.isArray(cell) ? cell : [[cell]]) as unknown[][];
    const first = column;
    const width = Math.max(...block.map((line) => line.length));
    block.forEach((line, r) => {
      line.forEach((value, c) => {
        (cellData[top + r] ??= {})[first + c] = cellOf(value);
      });
    });
    column += width + 1;
    nextRow = Math.max(nextRow, top + block.length);
    const last = cellName(top + block.length - 1, first + width - 1);
    return Array.isArray(cell) ? `${cellName(top, first)}:${last}` : cellName(top, first);
  });
  return `=QUILT.${call}(${written.join(",")})`;
}

function cellOf(value: unknown): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return typeof value === "string" ? { v: value, t: CellValueType.STRING } : {};
}

function fitsCell(value: unknown): boolean {
  if (value === null || value === undefined || typeof value === "boolean") return true;
  return typeof value === "string" ? value !== "" : typeof value === "number" && Number.isFinite(value);
}

function liftsRange({ call, cells }: Case): boolean {
  const described = quiltFunctions.find(({ name }) => name === `QUILT.${call}`);
  return cells.some((cell, index) => Array.isArray(cell) && !described?.arguments[index]?.range);
}

function expected({ call, cells }: Case): Outcome {
  try {
    const value = worksheetFunctions.get(call)!(...cells) as Extract<Outcome, { value: unknown }>["value"];
    const single = Array.isArray(value) && value.length === 1 && value[0].length === 1;
    return { value: single ? value[0][0] : value };
  } catch (thrown) {
    if (thrown instanceof CellError) return { error: thrown.code, message: thrown.message };
    throw thrown;
  }
}
