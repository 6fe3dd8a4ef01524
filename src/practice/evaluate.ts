/** Works out single formulas with the practice sheet's engine, without a page. */
import { type IWorksheetData, LocaleType, LogLevel, type Nullable, Univer, UniverInstanceType } from "@univerjs/core";
import {
  ArrayValueObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  UniverFormulaEnginePlugin,
} from "@univerjs/engine-formula";
import { Calculator, type Place } from "./calculator";
import { engineFunctions } from "./engine";
import { engineSentence, NOT_A_FORMULA } from "./errors";
import { fitBuiltIns } from "./builtIns";

export type Scalar = number | string | boolean;

const HOME: Place = { unitId: "book", sheetId: "sheet", row: 0, column: 0 };
const ROWS = 10_000;
const COLUMNS = 100;

/** The longest formula that spreadsheet programs keep, in characters. */
const LONGEST = 8192;

/** What a cell with the formula would show. A table holds errors as their codes. */
export type Outcome = { value: Scalar | Scalar[][] } | { error: string; message: string };

/** An engine with one sheet, empty unless cells are given. Formulas are worked out beside the sheet, so no answer can run into another. */
export class Evaluator {
  private readonly univer = new Univer({ locale: LocaleType.EN_US, locales: {}, logLevel: LogLevel.SILENT });
  private readonly calculator: Calculator;

  constructor(cellData: IWorksheetData["cellData"] = {}) {
    this.univer.registerPlugin(UniverFormulaEnginePlugin, { function: engineFunctions });
    const sheet = { id: HOME.sheetId, name: "Sheet1", rowCount: ROWS, columnCount: COLUMNS, cellData };
    this.univer.createUnit(UniverInstanceType.UNIVER_SHEET, {
      id: HOME.unitId,
      sheetOrder: [sheet.id],
      sheets: { [sheet.id]: sheet },
    });
    fitBuiltIns(this.univer.__getInjector());
    this.calculator = new Calculator(this.univer.__getInjector());
  }

  async evaluate(formula: string): Promise<Outcome> {
    const text = formula.trim();
    if (text === "") return refusal("There is no formula here. One starts with =, such as =QUILT.CUTHALFSQUARE(3).");
    if (!text.startsWith("=")) return refusal(`A formula starts with =. Write =${text}`);
    if (text.length > LONGEST) return refusal(`A formula may be at most ${LONGEST} characters long.`);
    return read(await this.calculator.calculate(text, HOME), text);
  }

  dispose(): void {
    this.univer.dispose();
  }
}

function read(result: BaseValueObject | undefined, formula: string): Outcome {
  if (result === undefined) return refusal(NOT_A_FORMULA);
  if (!(result instanceof ArrayValueObject)) return readValue(result, formula);
  const array = result;
  if (array.getRowCount() === 1 && array.getColumnCount() === 1) return readValue(array.getFirstCell(), formula);
  return {
    value: Array.from({ length: array.getRowCount() }, (_, row) =>
      Array.from({ length: array.getColumnCount() }, (_, column) => {
        const outcome = readValue(array.get(row, column), formula);
        return "error" in outcome ? outcome.error : (outcome.value as Scalar);
      }),
    ),
  };
}

function readValue(value: Nullable<BaseValueObject>, formula: string): Outcome {
  if (value === null || value === undefined || value.isNull()) return { value: 0 };
  if (value.isLambda()) return refusal("A LAMBDA needs arguments in brackets after it.", ErrorType.CALC);
  if (value instanceof ErrorValueObject) {
    return refusal(value.getErrorContent() || engineSentence(value.getErrorType(), formula), value.getErrorType());
  }
  const plain = value.getValue();
  if (typeof plain === "number" && !Number.isFinite(plain))
    return refusal(engineSentence(ErrorType.NUM, formula), ErrorType.NUM);
  return { value: plain };
}

function refusal(message: string, error: string = ErrorType.VALUE): Outcome {
  return { error, message };
}
