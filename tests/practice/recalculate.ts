/** A workbook recalculated by the practice sheet's engine, without a page. */
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets/facade";
import {
  IUniverInstanceService,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { cellPlace } from "../../src/practice/address";
import { type Content, contentOf, type OpenEngine } from "../../src/practice/content";
import { engineDescriptions, engineFunctions } from "../../src/practice/engine";
import { Explainer, type Explanation } from "../../src/practice/explain";
import { followTables } from "../../src/practice/tables";
import { freshId } from "../../src/practice/workbook";

export class Recalculated {
  private constructor(
    private readonly univer: Univer,
    private readonly api: FUniver,
  ) {}

  static async open(workbook: Partial<IWorkbookData>): Promise<Recalculated> {
    const univer = new Univer({ locale: LocaleType.EN_US, locales: {}, logLevel: LogLevel.SILENT });
    univer.registerPlugin(UniverFormulaEnginePlugin, { function: engineFunctions });
    univer.registerPlugin(UniverSheetsPlugin);
    univer.registerPlugin(UniverSheetsFormulaPlugin, {
      initialFormulaComputing: CalculationMode.FORCED,
      description: engineDescriptions,
    });
    univer.registerPlugin(UniverSheetsNumfmtPlugin);
    followTables(univer.__getInjector());
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, { ...workbook, id: freshId() });
    const opened = new Recalculated(univer, FUniver.newAPI(univer));
    await opened.settle();
    return opened;
  }

  /** What a cell holds, spilled or its own. */
  value(sheet: string, cell: string): unknown {
    const { row, column } = cellPlace(cell);
    const { workbook, spilled } = this.content();
    const id = workbook.sheetOrder.find((sheetId) => workbook.sheets[sheetId].name === sheet)!;
    return workbook.sheets[id].cellData?.[row]?.[column]?.v ?? spilled[id]?.[row]?.[column]?.v;
  }

  /** Types into a cell. */
  async type(sheet: string, cell: string, content: string | number): Promise<void> {
    const { row, column } = cellPlace(cell);
    const range = this.book().getSheetByName(sheet)!.getRange(row, column);
    range.setValue(typeof content === "string" && content.startsWith("=") ? { f: content } : { v: content });
    await this.settle();
  }

  /** Why a cell shows an error. */
  async explain(sheet: string, cell: string): Promise<Explanation | undefined> {
    const { row, column } = cellPlace(cell);
    const sheetId = this.book().getSheetByName(sheet)!.getSheetId();
    return new Explainer(this.univer.__getInjector()).explain({ unitId: this.book().getId(), sheetId, row, column });
  }

  content(): Content {
    return contentOf(this.book().save(), this.univer.__getInjector());
  }

  engine(): OpenEngine {
    return { injector: this.univer.__getInjector(), workbook: this.book().getWorkbook() };
  }

  /** Selects a range of a sheet, such as B5:B9. */
  select(sheet: string, range: string): void {
    const page = this.book().getSheetByName(sheet)!;
    this.book().setActiveSheet(page);
    page.getRange(range).activate();
  }

  async undo(): Promise<void> {
    // The focused workbook is the one that undoes; nothing is focused without a page.
    this.univer.__getInjector().get(IUniverInstanceService).focusUnit(this.book().getId());
    await this.api.undo();
    await this.settle();
  }

  close(): void {
    this.univer.dispose();
  }

  private book() {
    return this.api.getActiveWorkbook()!;
  }

  /** Waits until all is worked out. */
  async settle(): Promise<void> {
    await this.api.getFormula().onCalculationResultApplied();
  }
}
