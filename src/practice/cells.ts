/** The cells of open workbooks: what they hold, what they show, and which formula fills them. */
import {
  CellValueType,
  type ICellData,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Place } from "./calculator";

/** A formula, and the cell in which it stands. */
export interface Source {
  formula: string;
  home: Place;
}

export class Cells {
  private readonly formulas: FormulaDataModel;
  private readonly instances: IUniverInstanceService;

  constructor(injector: Injector) {
    this.formulas = injector.get(FormulaDataModel);
    this.instances = injector.get(IUniverInstanceService);
  }

  /** What stands in a cell, its own or that of the table that fills it. */
  at({ unitId, sheetId, row, column }: Place): ICellData {
    const own = this.sheet(unitId, sheetId)?.getCellRaw(row, column);
    const spilled = this.formulas.getArrayFormulaCellData()[unitId]?.[sheetId]?.[row]?.[column];
    return { ...own, v: own?.v ?? spilled?.v, t: isEmpty(own?.v) ? spilled?.t : own?.t };
  }

  /** As the cell shows it; the engine has 1 and 0 for TRUE and FALSE. */
  shown({ unitId, sheetId, row, column }: Place): string {
    const cell = this.sheet(unitId, sheetId)?.getCell(row, column);
    if (cell?.t === CellValueType.BOOLEAN) return cell.v ? "TRUE" : "FALSE";
    return (textOf(cell) ?? String(cell?.v ?? "")).trim();
  }

  /** The color that a cell is filled with, as the grid writes it. */
  fill({ unitId, sheetId, row, column }: Place): string | undefined {
    return this.sheet(unitId, sheetId)?.getComposedCellStyle(row, column).bg?.rgb ?? undefined;
  }

  /** The formula that fills a cell: its own, or that of a table. */
  source(place: Place): Source | undefined {
    const { unitId, sheetId, row, column } = place;
    const own = this.formula(place);
    if (own) return { formula: own, home: place };
    const tables = this.formulas.getArrayFormulaRange()[unitId]?.[sheetId] ?? {};
    for (const [homeRow, line] of Object.entries(tables)) {
      for (const [homeColumn, range] of Object.entries((line ?? {}) as Record<string, IRange>)) {
        if (row < range.startRow || row > range.endRow) continue;
        if (column < range.startColumn || column > range.endColumn) continue;
        const home = { unitId, sheetId, row: Number(homeRow), column: Number(homeColumn) };
        const formula = this.formula(home);
        if (formula) return { formula, home };
      }
    }
    return undefined;
  }

  /** The formula that stands in the cell itself; empty where there is none. */
  formula({ unitId, sheetId, row, column }: Place): string {
    return this.formulas.getFormulaStringByCell(row, column, sheetId, unitId) ?? "";
  }

  /** The cells that the table of a formula fills, where it is one. */
  table({ unitId, sheetId, row, column }: Place): IRange | undefined {
    return this.formulas.getArrayFormulaRange()[unitId]?.[sheetId]?.[row]?.[column] ?? undefined;
  }

  workbook(unitId: string): Nullable<Workbook> {
    return this.instances.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  }

  sheet(unitId: string, sheetId: string): Nullable<Worksheet> {
    return this.workbook(unitId)?.getSheetBySheetId(sheetId);
  }
}

/** The plain text of a cell whose parts look different from each other. */
export function textOf(cell: Nullable<ICellData>): string | undefined {
  return cell?.p?.body?.dataStream.replace(/\r\n$/, "").replace(/\r/g, "\n");
}

function isEmpty(value: ICellData["v"]): boolean {
  return value === undefined || value === null;
}
