/** Works out formulas for a class copy: the file is opened in an engine of its own, without a page. */
import {
  type Injector,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  type Nullable,
  Univer,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  ArrayValueObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  UniverFormulaEnginePlugin,
} from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, FormulaCalculationSessionService, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { Problem } from "../math/problem";
import type { Answer, Value, WorkOut } from "../workbooks/classCopy";
import { cellPlace } from "./address";
import { Calculator } from "./calculator";
import { engineFunctions } from "./engine";
import { freshId } from "./workbook";
import { fitBuiltIns } from "./builtIns";
import { fromFile } from "./xlsx/formulas";
import { readXlsx } from "./xlsx/read";
import { renamedSheets, withSheetsRenamed } from "./xlsx/sheetNames";

/** Longest wait for a workbook, and for its start: on a busy machine that may take a while. In milliseconds. */
const PATIENCE = 120_000;

/**
 * Works out formulas of a file, all its cells fresh.
 *
 * @throws Problem where the file cannot be opened
 */
export function workOutIn(bytes: Uint8Array): WorkOut {
  return async (asked) => {
    const read = await readXlsx(bytes);
    if ("refusal" in read)
      throw new Problem("bad input", `its formulas cannot be worked out here: ${read.refusal.replace(/\.$/, "")}`);
    const univer = new Univer({ locale: LocaleType.EN_US, locales: {}, logLevel: LogLevel.SILENT });
    try {
      univer.registerPlugin(UniverFormulaEnginePlugin, { function: engineFunctions });
      univer.registerPlugin(UniverSheetsPlugin);
      univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
      const injector = univer.__getInjector();
      const workbook = univer.createUnit<Partial<IWorkbookData>, Workbook>(UniverInstanceType.UNIVER_SHEET, {
        ...read.workbook,
        id: freshId(),
      });
      fitBuiltIns(injector);
      await injector.get(FormulaCalculationSessionService).waitForLatestApplied(PATIENCE, PATIENCE);
      return await workOutBeside(injector, workbook)(asked);
    } finally {
      univer.dispose();
    }
  };
}

/** Works out formulas beside the cells of a workbook that is open and worked out; they name its sheets as its file does. */
export function workOutBeside(injector: Injector, workbook: Workbook): WorkOut {
  return async (asked) => {
    const calculator = new Calculator(injector);
    const sheetIds = new Map(workbook.getSheets().map((sheet) => [sheet.getName(), sheet.getSheetId()]));
    const names = new Map([...renamedSheets([...sheetIds.keys()])].map(([name, inFile]) => [inFile, name]));
    const unitId = workbook.getUnitId();
    const values = await calculator.calculateAll(
      asked.map(({ sheet, cell, formula }) => ({
        formula: unlike(withSheetsRenamed(fromFile(formula), names)),
        place: { unitId, sheetId: sheetIds.get(names.get(sheet) ?? sheet) ?? "", ...cellPlace(cell) },
      })),
    );
    return values.map(answerOf);
  };
}

/** The formula as the engine has not seen it: of one with LET that it has worked out before it keeps a spoiled copy. */
function unlike(formula: string): string {
  return formula.replace(/^=/, "= ");
}

/** What the engine does not know by name it cannot work out. */
function answerOf(result: BaseValueObject | undefined): Answer | undefined {
  if (!result || (result instanceof ErrorValueObject && result.getErrorType() === ErrorType.NAME)) return undefined;
  if (!(result instanceof ArrayValueObject)) return [[valueOf(result)]];
  return Array.from({ length: result.getRowCount() }, (_, row) =>
    Array.from({ length: result.getColumnCount() }, (_, column) => valueOf(result.get(row, column))),
  );
}

function valueOf(value: Nullable<BaseValueObject>): Value {
  if (!value || value.isNull()) return 0;
  if (value instanceof ErrorValueObject) return { error: value.getErrorType() };
  return value.getValue();
}
