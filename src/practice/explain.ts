/** Why a cell shows an error, in a sentence: worked out again from its formula, so that it can never be out of date. */
import type { Injector, Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  type BaseValueObject,
  deserializeRangeWithSheet,
  ErrorValueObject,
  LexerTreeBuilder,
  sequenceNodeType,
} from "@univerjs/engine-formula";
import { cellName } from "./address";
import { Calculator, type Place } from "./calculator";
import { Cells } from "./cells";
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
  private readonly cells: Cells;
  private readonly lexer: LexerTreeBuilder;
  private readonly calculator: Calculator;

  constructor(injector: Injector) {
    this.cells = new Cells(injector);
    this.lexer = injector.get(LexerTreeBuilder);
    this.calculator = new Calculator(injector);
  }

  /** The error that a cell shows and what it means; undefined where the cell shows none. */
  async explain(place: Place, depth = 0): Promise<Explanation | undefined> {
    const code = this.cells.at(place).v;
    const source = this.cells.source(place);
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

  /** The first cell that the formula reads and that shows this error. */
  private readError(formula: string, home: Place, code: string): Place | undefined {
    for (const node of this.lexer.sequenceNodesBuilder(formula) ?? []) {
      if (typeof node === "string" || node.nodeType !== sequenceNodeType.REFERENCE) continue;
      const { range, sheetName } = deserializeRangeWithSheet(node.token);
      const book = this.cells.workbook(home.unitId);
      const sheet = sheetName ? book?.getSheetBySheetName(sheetName) : book?.getSheetBySheetId(home.sheetId);
      if (!sheet) continue;
      const lastRow = lastOf(range.endRow, sheet.getLastRowWithContent(), sheet.getRowCount());
      const lastColumn = lastOf(range.endColumn, sheet.getLastColumnWithContent(), sheet.getColumnCount());
      let searched = 0;
      for (let row = range.startRow || 0; row <= lastRow; row++) {
        for (let column = range.startColumn || 0; column <= lastColumn; column++) {
          const place = { unitId: home.unitId, sheetId: sheet.getSheetId(), row, column };
          if (this.cells.at(place).v === code) return place;
          if (++searched > MOST_CELLS) return undefined;
        }
      }
    }
    return undefined;
  }

  private name(place: Place, seenFrom: Place): string {
    const name = cellName(place.row, place.column);
    if (place.sheetId === seenFrom.sheetId) return name;
    return `${this.cells.sheet(place.unitId, place.sheetId)?.getName() ?? ""}!${name}`;
  }
}

/** The last row or column of a range; of whole columns and rows the end is left open, and they are read as far as they are filled. */
function lastOf(end: number, filled: number, count: number): number {
  return Math.min(Number.isNaN(end) ? filled : end, count - 1);
}

function cellOf(result: BaseValueObject, row: number, column: number): Nullable<BaseValueObject> {
  return result instanceof ArrayValueObject ? result.get(row, column) : result;
}

/** The sentence that an error carries, if it is the error shown. */
function errorText(value: Nullable<BaseValueObject>, code: string): string {
  return value instanceof ErrorValueObject && value.getErrorType().toString() === code ? value.getErrorContent() : "";
}
