/** Works out a whole workbook without a page. */
import "@univerjs/sheets/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-formula/facade";
import {
  CellValueType,
  type ICellData,
  type IRange,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  type Nullable,
  Univer,
  UniverInstanceType,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, FormulaCalculationSessionService, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import type { Book, WorkedSheet } from "../workbooks/book";
import { cellName } from "./address";
import { engineFunctions } from "./engine";
import { plannedWorkbook } from "./planned";
import { freshId } from "./workbook";

/** Longest wait for a workbook, and for its start: on a busy machine that may take a while. In milliseconds. */
const PATIENCE = 120_000;

/** What every formula of a planning workbook comes to. */
export function evaluateBook(book: Book): Promise<Record<string, WorkedSheet>> {
  return recalculate(plannedWorkbook(book));
}

/** What every formula of a workbook comes to, by the name of the sheet. Errors are their codes. */
export async function recalculate(workbook: Partial<IWorkbookData>): Promise<Record<string, WorkedSheet>> {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: {}, logLevel: LogLevel.SILENT });
  try {
    univer.registerPlugin(UniverFormulaEnginePlugin, { function: engineFunctions });
    univer.registerPlugin(UniverSheetsPlugin);
    univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
    const api = FUniver.newAPI(univer);
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, { ...workbook, id: freshId() });
    await univer.__getInjector().get(FormulaCalculationSessionService).waitForLatestApplied(PATIENCE, PATIENCE);
    return read(univer, api.getActiveWorkbook()!.save());
  } finally {
    univer.dispose();
  }
}

type Matrix<T> = Record<number, Record<number, Nullable<T>>>;

function read(univer: Univer, workbook: IWorkbookData): Record<string, WorkedSheet> {
  const formulas = univer.__getInjector().get(FormulaDataModel);
  const spilled = formulas.getArrayFormulaCellData()[workbook.id] ?? {};
  const ranges = formulas.getArrayFormulaRange()[workbook.id] ?? {};
  return Object.fromEntries(
    workbook.sheetOrder.map((id) => {
      const sheet = workbook.sheets[id];
      const worked: WorkedSheet = { values: {}, tables: {} };
      for (const [cell, data] of cells((spilled[id] ?? {}) as Matrix<ICellData>)) put(worked, cell, data);
      for (const [cell, data] of cells((sheet.cellData ?? {}) as Matrix<ICellData>)) {
        if (data.f || data.si) put(worked, cell, data);
      }
      for (const [cell, range] of cells((ranges[id] ?? {}) as Matrix<IRange>)) {
        worked.tables[cell] = `${cell}:${cellName(range.endRow, range.endColumn)}`;
      }
      return [sheet.name ?? id, worked];
    }),
  );
}

function put(worked: WorkedSheet, cell: string, { v, t }: ICellData): void {
  if (v === undefined || v === null) return;
  worked.values[cell] = t === CellValueType.BOOLEAN ? Boolean(v) : v;
}

function* cells<T>(matrix: Matrix<T>): Generator<[string, T]> {
  for (const [row, line] of Object.entries(matrix)) {
    for (const [column, value] of Object.entries(line)) if (value) yield [cellName(Number(row), Number(column)), value];
  }
}
