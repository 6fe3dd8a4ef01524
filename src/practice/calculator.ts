/** Works out a formula as if it stood in a cell, without touching the sheet. */
import type { Injector } from "@univerjs/core";
import {
  type BaseReferenceObject,
  type BaseValueObject,
  CalculateFormulaService,
  CELL_INVERTED_INDEX_CACHE,
  FormulaExecuteStageType,
  ICalculateFormulaService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
} from "@univerjs/engine-formula";

/** One cell of a workbook. */
export interface Place {
  unitId: string;
  sheetId: string;
  row: number;
  column: number;
}

export function samePlace(one: Place | undefined, other: Place | undefined): boolean {
  return (
    one?.unitId === other?.unitId &&
    one?.sheetId === other?.sheetId &&
    one?.row === other?.row &&
    one?.column === other?.column
  );
}

/** Between two looks whether the engine is at rest, in milliseconds. */
const PAUSE = 30;

export class Calculator {
  private readonly service: CalculateFormulaService;
  private readonly sheets: IFormulaCurrentConfigService;
  private readonly runtime: IFormulaRuntimeService;

  constructor(injector: Injector) {
    const service = injector.get(ICalculateFormulaService);
    if (!(service instanceof CalculateFormulaService)) throw new Error("the engine works out formulas elsewhere");
    this.service = service;
    this.sheets = injector.get(IFormulaCurrentConfigService);
    this.runtime = injector.get(IFormulaRuntimeService);
  }

  /** The value, or undefined where the text is no formula. */
  async calculate(formula: string, place: Place): Promise<BaseValueObject | undefined> {
    await this.prepare();
    return await this.work(formula, place);
  }

  /** The values of many formulas, quickly; nothing may change the sheet meanwhile. */
  async calculateAll(asked: readonly { formula: string; place: Place }[]): Promise<(BaseValueObject | undefined)[]> {
    await this.prepare();
    const values: (BaseValueObject | undefined)[] = [];
    for (const { formula, place } of asked) values.push(await this.work(formula, place));
    return values;
  }

  /** Waits until the engine works out nothing. */
  async rest(): Promise<void> {
    while (this.runtime.getFormulaExecuteStage() !== FormulaExecuteStageType.IDLE) await pause();
  }

  /** The engine keeps one state for all: a recalculation of the sheet must be over, and must find nothing of ours. */
  private async prepare(): Promise<void> {
    await this.rest();
    this.sheets.loadDataLite();
  }

  private async work(formula: string, { unitId, sheetId, row, column }: Place): Promise<BaseValueObject | undefined> {
    const { rowCount, columnCount } = this.sheets.getSheetRowColumnCount(unitId, sheetId);
    this.runtime.reset();
    this.runtime.setCurrent(row, column, rowCount, columnCount, sheetId, unitId);
    try {
      const result = await this.service.calculate(formula);
      if (!result?.isReferenceObject()) return result as BaseValueObject | undefined;
      return (result as BaseReferenceObject).toArrayValueObject(false);
    } catch {
      // The parser throws on some broken formulas.
      return undefined;
    } finally {
      this.runtime.clearArrayObjectCache();
      CELL_INVERTED_INDEX_CACHE.clear();
    }
  }
}

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, PAUSE));
}
