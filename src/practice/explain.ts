/** Why a cell shows an error, in a sentence: worked out again from its formula, so that it can never be out of date. */
import {
  type ICellData,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  ArrayValueObject,
  type BaseValueObject,
  deserializeRangeWithSheet,
  ErrorValueObject,
  FormulaDataModel,
  LexerTreeBuilder,
  sequenceNodeType,
} from "@univerjs/engine-formula";
import { cellName } from "./address";
import { Calculator, type Place } from "./calculator";
import { engineSentence, isErrorCode, NOT_A_FORMULA } from "./errors";

export interface Explanation {
  code: string;
  sentence: string;
}

/** How many cells an error is followed through, from a formula to the cell that it reads. */
const DEEPEST = 20;

/** How many cells of one range are searched for an error. */
const MOST_CELLS = 20_000;

export class Explainer {
  private readonly formulas: FormulaDataModel;
  private readonly lexer: LexerTreeBuilder;
  private readonly instances: IUniverInstanceService;
  private readonly calculator: Calculator;

  constructor(injector: Injector) {
    this.formulas = injector.get(FormulaDataModel);
    this.lexer = injector.get(LexerTreeBuilder);
    this.instances = injector.get(IUniverInstanceService);
    this.calculator = new Calculator(injector);
  }

  /** The error that a cell shows and what it means; undefined where the cell shows none. */
  async explain(place: Place, depth = 0): Promise<Explanation | undefined> {
    const code = this.shown(place);
    const source = this.formulaOf(place);
    if (!isErrorCode(code) || !source) return undefined;
    const { formula, home } = source;
    const result = await this.calculator.calculate(formula, home);
    if (result === undefined) return { code, sentence: NOT_A_FORMULA };
    const own = errorText(cellOf(result, place.row - home.row, place.column - home.column), code);
    if (own) return { code, sentence: own };
    const read = depth < DEEPEST ? this.readError(formula, home, code) : undefined;
    const deeper = read && (await this.explain(read, depth + 1));
    if (!read || !deeper) return { code, sentence: engineSentence(code, formula) };
    const from = /^From /.test(deeper.sentence) ? "" : `From ${this.name(read, place)}: `;
    return { code, sentence: `${from}${deeper.sentence}` };
  }

  /** What stands in the cell, spilled or its own. */
  private shown({ unitId, sheetId, row, column }: Place): ICellData["v"] {
    const spilled = this.formulas.getArrayFormulaCellData()[unitId]?.[sheetId]?.[row]?.[column];
    const own = this.workbook(unitId)?.getSheetBySheetId(sheetId)?.getCellRaw(row, column);
    return own?.v ?? spilled?.v;
  }

  /** The formula that fills a cell, and the cell in which it stands. */
  private formulaOf(place: Place): { formula: string; home: Place } | undefined {
    const { unitId, sheetId, row, column } = place;
    const own = this.formulas.getFormulaStringByCell(row, column, sheetId, unitId);
    if (own) return { formula: own, home: place };
    const tables = this.formulas.getArrayFormulaRange()[unitId]?.[sheetId] ?? {};
    for (const [homeRow, line] of Object.entries(tables)) {
      for (const [homeColumn, range] of Object.entries((line ?? {}) as Record<string, IRange>)) {
        if (row < range.startRow || row > range.endRow) continue;
        if (column < range.startColumn || column > range.endColumn) continue;
        const home = { unitId, sheetId, row: Number(homeRow), column: Number(homeColumn) };
        const formula = this.formulas.getFormulaStringByCell(home.row, home.column, sheetId, unitId);
        if (formula) return { formula, home };
      }
    }
    return undefined;
  }

  /** The first cell that the formula reads and that shows this error. */
  private readError(formula: string, home: Place, code: string): Place | undefined {
    for (const node of this.lexer.sequenceNodesBuilder(formula) ?? []) {
      if (typeof node === "string" || node.nodeType !== sequenceNodeType.REFERENCE) continue;
      const { range, sheetName } = deserializeRangeWithSheet(node.token);
      const book = this.workbook(home.unitId);
      const sheet = sheetName ? book?.getSheetBySheetName(sheetName) : book?.getSheetBySheetId(home.sheetId);
      if (!sheet) continue;
      const lastRow = Math.min(range.endRow || sheet.getLastRowWithContent(), sheet.getRowCount() - 1);
      const lastColumn = Math.min(range.endColumn || sheet.getLastColumnWithContent(), sheet.getColumnCount() - 1);
      let searched = 0;
      for (let row = range.startRow || 0; row <= lastRow; row++) {
        for (let column = range.startColumn || 0; column <= lastColumn; column++) {
          const place = { unitId: home.unitId, sheetId: sheet.getSheetId(), row, column };
          if (this.shown(place) === code) return place;
          if (++searched > MOST_CELLS) return undefined;
        }
      }
    }
    return undefined;
  }

  private name(place: Place, seenFrom: Place): string {
    const name = cellName(place.row, place.column);
    if (place.sheetId === seenFrom.sheetId) return name;
    return `${this.workbook(place.unitId)?.getSheetBySheetId(place.sheetId)?.getName() ?? ""}!${name}`;
  }

  private workbook(unitId: string): Nullable<Workbook> {
    return this.instances.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  }
}

function cellOf(result: BaseValueObject, row: number, column: number): Nullable<BaseValueObject> {
  return result instanceof ArrayValueObject ? result.get(row, column) : result;
}

/** The sentence that an error carries, if it is the error shown. */
function errorText(value: Nullable<BaseValueObject>, code: string): string {
  return value instanceof ErrorValueObject && value.getErrorType().toString() === code ? value.getErrorContent() : "";
}
