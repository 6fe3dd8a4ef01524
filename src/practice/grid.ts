/** The spreadsheet grid: one engine and one view for one workbook. Everything the page needs of it goes through here. */
import {
  CellValueType,
  CommandType,
  ICommandService,
  IUniverInstanceService,
  type IWorkbookData,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import locale from "@univerjs/preset-sheets-core/locales/en-US";
import {
  AFTER_CELL_EDIT,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
  SheetInterceptorService,
} from "@univerjs/sheets";
import { CalculationMode } from "@univerjs/sheets-formula";
import { NUMBERFORMAT } from "@univerjs/sheets-numfmt";
import { ILayoutService } from "@univerjs/ui";
import { cellName } from "./address";
import { Calculator, type Place } from "./calculator";
import { Cells } from "./cells";
import { type Content, contentOf, type OpenEngine } from "./content";
import { engineDescriptions, engineFunctions } from "./engine";
import { readFraction, type TypedFraction } from "./entry";
import { Explainer, type Explanation } from "./explain";
import { ErrorPopup } from "./popup";
import type { Ruled } from "./ruled";
import { improveSuggestions } from "./suggest";
import { fitBuiltIns } from "./builtIns";
import { followTables } from "./tables";
import { freshId } from "./workbook";

/** What is told of the one cell that is selected. */
export interface Selected {
  /** Such as B5. */
  name: string;
  formula: string;
  /** As the cell shows it. */
  shown: string;
  error: Explanation | undefined;
}

export interface GridEvents {
  /** The selection moved, or what the selected cell shows may have changed. */
  select(selected: Selected | undefined): void;
  /** The workbook may have changed. */
  change(): void;
  /** A fraction was typed and became a number. */
  fraction(typed: string, fraction: TypedFraction): void;
}

/** How long the selection rests before its cell is looked at, in milliseconds. */
const REST = 60;

/** What moves the selection. */
const MOVES = new Set([SetSelectionsOperation.id, SetWorksheetActiveOperation.id]);

// The list of number formats has none for fractions.
for (const pattern of ["# ?/?", "# ??/??"]) NUMBERFORMAT.push({ label: pattern, suffix: pattern });

export class Grid {
  private readonly univer: Univer;
  private readonly api: FUniver;
  private readonly cells: Cells;
  private readonly explainer: Explainer;
  private readonly popup: ErrorPopup;
  private readonly stopSuggestions: () => void;
  private settled = false;
  private closed = false;
  private looking: ReturnType<typeof setTimeout> | undefined;

  constructor(
    container: HTMLElement,
    data: Partial<IWorkbookData>,
    private readonly events: GridEvents,
    ruled?: Ruled,
  ) {
    this.univer = new Univer({
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: locale },
      logLevel: LogLevel.ERROR,
    });
    const { plugins } = UniverSheetsCorePreset({
      container,
      ribbonType: "simple",
      formula: {
        function: engineFunctions,
        description: engineDescriptions,
        initialFormulaComputing: CalculationMode.FORCED,
      },
      footer: { addSheetButtonConfig: { defaultRowCount: 1000, defaultColumnCount: 50 } },
    });
    for (const plugin of plugins) {
      if (Array.isArray(plugin)) this.univer.registerPlugin(plugin[0], plugin[1]);
      else this.univer.registerPlugin(plugin);
    }
    this.api = FUniver.newAPI(this.univer);
    this.univer.createUnit(UniverInstanceType.UNIVER_SHEET, { ...data, id: freshId() });
    const injector = this.univer.__getInjector();
    // The engine knows its functions once there is a sheet.
    fitBuiltIns(injector);
    this.cells = new Cells(injector);
    this.explainer = new Explainer(injector);
    this.popup = new ErrorPopup(injector, this.explainer);
    this.stopSuggestions = improveSuggestions(injector);
    this.readFractions();
    ruled?.show(injector);
    followTables(injector);
    this.api.getFormula().calculationEnd(() => {
      this.lookSoon();
    });
    injector.get(ICommandService).onCommandExecuted((command) => {
      if (command.type === CommandType.MUTATION) this.events.change();
      if (!MOVES.has(command.id)) return;
      this.popup.select(undefined, undefined);
      this.lookSoon();
    });
  }

  /** Waits until the view takes keys: it sets up its parts one after the other, and misses what comes before the last. */
  async ready(): Promise<void> {
    await this.univer.__getInjector().get(LifecycleService).onStage(LifecycleStages.Rendered);
    this.settled = true;
    this.lookSoon();
  }

  /** The workbook as it stands, to be kept. */
  workbook(): IWorkbookData {
    return { ...this.book().save(), id: "book" };
  }

  /** The workbook with all that a file needs. */
  content(): Content {
    return contentOf(this.book().save(), this.univer.__getInjector());
  }

  /** What works out formulas here, for those that stand in no cell. */
  engine(): OpenEngine {
    return { injector: this.univer.__getInjector(), workbook: this.book().getWorkbook() };
  }

  /** Whether the sentence of an error stands beside its cell once that is selected. */
  tellErrors(beside: boolean): void {
    this.popup.onSelection = beside;
    this.lookSoon();
  }

  /** Selects a cell of the page that is shown, such as B5. */
  select(cell: string): void {
    this.book().getActiveSheet().getRange(cell).activate();
  }

  /** Puts the keyboard on the selected cell. */
  focus(): void {
    const injector = this.univer.__getInjector();
    injector.get(IUniverInstanceService).focusUnit(this.book().getId());
    injector.get(ILayoutService).focus();
  }

  /** Puts what is being typed into its cell. */
  async endEditing(): Promise<void> {
    await this.book().endEditingAsync(true);
  }

  /** Ends the engine and the view, once they are at rest. */
  async close(): Promise<void> {
    this.closed = true;
    clearTimeout(this.looking);
    this.stopSuggestions();
    await new Calculator(this.univer.__getInjector()).rest();
    this.univer.dispose();
  }

  private book() {
    const book = this.api.getActiveWorkbook();
    if (!book) throw new Error("the grid holds no workbook");
    return book;
  }

  private lookSoon(): void {
    clearTimeout(this.looking);
    if (this.settled && !this.closed) this.looking = setTimeout(() => void this.look(), REST);
  }

  private async look(): Promise<void> {
    const range = this.book().getActiveRange();
    if (!range) {
      this.events.select(undefined);
      return;
    }
    const place: Place = {
      unitId: range.getUnitId(),
      sheetId: range.getSheetId(),
      row: range.getRow(),
      column: range.getColumn(),
    };
    const error = await this.explainer.explain(place);
    if (this.closed) return;
    this.popup.select(place, error);
    this.events.select({
      name: cellName(place.row, place.column),
      formula: this.cells.formula(place),
      shown: this.cells.shown(place),
      error,
    });
  }

  /** Makes numbers of fractions as they are typed, before anything takes them for a date or for text. */
  private readFractions(): void {
    this.univer
      .__getInjector()
      .get(SheetInterceptorService)
      .writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
        priority: 1000,
        handler: (cell, context, next) => {
          if (!cell || cell.f || cell.t === CellValueType.FORCE_STRING) return next(cell);
          const typed = cell.p?.body?.dataStream.replace(/\r\n$/, "") ?? (typeof cell.v === "string" ? cell.v : "");
          const fraction = readFraction(typed);
          const style = context.worksheet.getComposedCellStyle(context.row, context.col);
          const pattern = style.n?.pattern ?? "General";
          if (!fraction || pattern === "@") return next(cell);
          this.events.fraction(typed, fraction);
          const number = { v: fraction.value, t: CellValueType.NUMBER, f: null, si: null, p: null };
          return pattern === "General" ? { ...number, s: { n: { pattern: fraction.pattern } } } : number;
        },
      });
  }
}
