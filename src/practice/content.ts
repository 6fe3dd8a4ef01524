/** All that a file needs of a workbook: whole formulas, and the cells that tables fill. */
import type {
  ICellData,
  Injector,
  IObjectMatrixPrimitiveType,
  IRange,
  IWorkbookData,
  Nullable,
  Workbook,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";

/** The engine that shows a workbook, and the workbook. */
export interface OpenEngine {
  injector: Injector;
  workbook: Workbook;
}

/** By row and column. */
type Matrix<T> = IObjectMatrixPrimitiveType<Nullable<T>>;

export interface Content {
  workbook: IWorkbookData;
  /** Cells filled by the table of another cell, by sheet. */
  spilled: Record<string, Nullable<Matrix<ICellData>>>;
  /** Ranges of tables, by sheet; row and column are the formula's. */
  tables: Record<string, Nullable<Matrix<IRange>>>;
}

/** @param workbook as the engine saves it, where copied formulas are shared */
export function contentOf(workbook: IWorkbookData, injector: Injector): Content {
  const formulas = injector.get(FormulaDataModel);
  for (const [id, sheet] of Object.entries(workbook.sheets)) {
    for (const [row, line] of Object.entries(sheet.cellData ?? {})) {
      for (const [column, cell] of Object.entries(line as Record<number, ICellData>)) {
        if (cell.si) cell.f = formulas.getFormulaStringByCell(Number(row), Number(column), id, workbook.id);
      }
    }
  }
  return {
    workbook,
    spilled: formulas.getArrayFormulaCellData()[workbook.id] ?? {},
    tables: formulas.getArrayFormulaRange()[workbook.id] ?? {},
  };
}
