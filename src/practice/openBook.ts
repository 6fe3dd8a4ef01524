/** The workbook that is open in the grid: its sheets, its selection, the cells that a reference names, and changes. */
import {
  BooleanNumber,
  type ICellData,
  ICommandService,
  type IRange,
  ObjectMatrix,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { FormulaDataModel, IDefinedNamesService } from "@univerjs/engine-formula";
import { SetRangeValuesCommand, SheetsSelectionsService } from "@univerjs/sheets";
import { areaOf } from "../pane/pages";
import { SheetProblem } from "../pane/sheet";
import { cellName, cellPlace, columnName } from "./address";
import { Calculator, type Place } from "./calculator";
import { Cells } from "./cells";
import type { OpenEngine } from "./content";

/** By row and column. */
export type Matrix = Record<number, Record<number, ICellData>>;

export class OpenBook {
  readonly cells: Cells;
  private readonly injector: OpenEngine["injector"];
  private readonly workbook: Workbook;

  constructor({ injector, workbook }: OpenEngine) {
    this.injector = injector;
    this.workbook = workbook;
    this.cells = new Cells(injector);
  }

  get id(): string {
    return this.workbook.getUnitId();
  }

  get activeSheet(): Worksheet {
    return this.workbook.getActiveSheet();
  }

  /** All but the hidden ones. */
  get sheets(): Worksheet[] {
    return this.workbook.getSheets().filter((sheet) => sheet.isSheetHidden() !== BooleanNumber.TRUE);
  }

  /** @throws SheetProblem where there is none */
  sheetCalled(name: string): Worksheet {
    const found = this.workbook.getSheets().find((sheet) => sheet.getName().toLowerCase() === name.toLowerCase());
    if (!found) throw new SheetProblem(`There is no page “${name}”`);
    return found;
  }

  /** The selected ranges of the active sheet, the one selected last at the end. */
  get selection(): IRange[] {
    return this.injector
      .get(SheetsSelectionsService)
      .getCurrentSelections()
      .map(({ range }) => this.inside(this.activeSheet, range));
  }

  /** The cells of a range, row by row. */
  places(sheet: Worksheet, { startRow, endRow, startColumn, endColumn }: IRange): Place[][] {
    const [unitId, sheetId] = [this.id, sheet.getSheetId()];
    return Array.from({ length: endRow - startRow + 1 }, (_, row) =>
      Array.from({ length: endColumn - startColumn + 1 }, (_cell, column) => ({
        unitId,
        sheetId,
        row: startRow + row,
        column: startColumn + column,
      })),
    );
  }

  /** A range of the active sheet as a formula names it, such as B5:B9, or B:B where it is the whole column. */
  rangeName({ startRow, endRow, startColumn, endColumn }: IRange): string {
    if (startRow === 0 && endRow === this.activeSheet.getRowCount() - 1)
      return `${columnName(startColumn)}:${columnName(endColumn)}`;
    const [first, last] = [cellName(startRow, startColumn), cellName(endRow, endColumn)];
    return first === last ? first : `${first}:${last}`;
  }

  /**
   * The cells of a reference as a formula on `page` names it: a range, whole columns as far as they are filled, a table
   * such as B4#, or a name.
   * @throws SheetProblem where it is none
   */
  placesOf(reference: string, page: string): Place[][] {
    const area = areaOf(this.meaning(reference), page);
    const sheet = this.sheetCalled(area.page);
    const [startRow, startColumn] = [area.top, area.left];
    if (area.spilled) {
      const [[home]] = this.places(sheet, { startRow, startColumn, endRow: startRow, endColumn: startColumn });
      const table = this.cells.table(home);
      if (!table) throw new SheetProblem(`No table starts in ${cellName(startRow, startColumn)}`);
      return this.places(sheet, table);
    }
    const range = { startRow, startColumn, endRow: area.bottom, endColumn: area.right };
    const isWhole = area.bottom >= sheet.getRowCount();
    const inside = this.inside(sheet, range);
    if (isWhole) inside.endRow = Math.max(inside.startRow, Math.min(inside.endRow, this.filled(sheet).endRow));
    return this.places(sheet, inside);
  }

  /** From the first cell to the last row and column in which something stands. */
  filled(sheet: Worksheet): IRange {
    const tables = this.injector.get(FormulaDataModel).getArrayFormulaRange()[this.id]?.[sheet.getSheetId()] ?? {};
    const ranges = Object.values(tables).flatMap((line) =>
      Object.values<IRange>((line ?? {}) as Record<string, IRange>),
    );
    return {
      startRow: 0,
      startColumn: 0,
      endRow: Math.max(0, sheet.getLastRowWithContent(), ...ranges.map(({ endRow }) => endRow)),
      endColumn: Math.max(0, sheet.getLastColumnWithContent(), ...ranges.map(({ endColumn }) => endColumn)),
    };
  }

  /**
   * Changes cells in one step, which the sheet's own undo takes back.
   * @throws SheetProblem where the sheet refuses
   */
  async change(sheet: Worksheet, value: Matrix): Promise<void> {
    const range = new ObjectMatrix(value).getStartEndScope();
    const params = { unitId: this.id, subUnitId: sheet.getSheetId(), range, value };
    const done = await this.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, params);
    if (!done) throw new SheetProblem("The sheet did not take that.");
  }

  /** Waits until nothing is being worked out. */
  rest(): Promise<void> {
    return new Calculator(this.injector).rest();
  }

  /** What a name stands for; anything else as it is. */
  private meaning(reference: string): string {
    const named = this.injector.get(IDefinedNamesService).getValueByName(this.id, reference);
    return named ? named.formulaOrRefString.replace(/^=/, "") : reference;
  }

  /** The part of a range that is on the sheet; of whole rows and columns the ends may be left open. */
  private inside(sheet: Worksheet, range: IRange): IRange {
    const within = (value: number, most: number) => Math.max(0, Math.min(value, most));
    const [rows, columns] = [sheet.getRowCount() - 1, sheet.getColumnCount() - 1];
    return {
      ...range,
      startRow: within(range.startRow || 0, rows),
      endRow: within(Number.isNaN(range.endRow) ? rows : range.endRow, rows),
      startColumn: within(range.startColumn || 0, columns),
      endColumn: within(Number.isNaN(range.endColumn) ? columns : range.endColumn, columns),
    };
  }
}

/** One cell to be changed. */
export function cellToChange(cell: string, data: ICellData): Matrix {
  const { row, column } = cellPlace(cell);
  return { [row]: { [column]: data } };
}
