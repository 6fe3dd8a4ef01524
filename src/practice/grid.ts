/** The spreadsheet grid: one engine and one view for one workbook. Everything the page needs of it goes through here. */
import {
  CellValueType,
  CommandType,
  ICommandService,
  IUniverInstanceService,
  type IWorkbookData,
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
import type { FRange } from "@univerjs/sheets/facade";
import { CalculationMode } from "@univerjs/sheets-formula";
import { NUMBERFORMAT } from "@univerjs/sheets-numfmt";
import { ILayoutService } from "@univerjs/ui";
import { cellName } from "./address";
import { Calculator, type Place } from "./calculator";
import { type Content, contentOf } from "./content";
import { engineDescriptions, engineFunctions } from "./engine";
import { readFraction, type TypedFraction } from "./entry";
import type { OpenEngine } from "./classCopy";
import { Explainer, type Explanation } from "./explain";
import { ErrorPopup } from "./popup";
import { improveSuggestions } from "./suggest";
import { keepTexts } from "./texts";
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

/** How long the view still sets itself up once it is shown, in milliseconds; before that it loses what is typed. */
const SETTLING = 500;

/** What a cell shows; the view hands out 1 and 0 for TRUE and FALSE. */
function shownIn(range: FRange): string {
  const cell = range.getCellData();
  if (cell?.t === CellValueType.BOOLEAN) return cell.v ? "TRUE" : "FALSE";
  return range.getDisplayValue().trim();
}

/** What moves the selection. */
const MOVES = new Set([SetSelectionsOperation.id, SetWorksheetActiveOperation.id]);

// The list of number formats has none for fractions.
for (const pattern of ["# ?/?", "# ??/??"]) NUMBERFORMAT.push({ label: pattern, suffix: pattern });

export class Grid {
  private readonly univer: Univer;
  private readonly api: FUniver;
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
    keepTexts(this.univer.__getInjector());
    this.univer.createUnit(UniverInstanceType.UNIVER_SHEET, { ...data, id: freshId() });
    const injector = this.univer.__getInjector();
    this.explainer = new Explainer(injector);
    this.popup = new ErrorPopup(injector, this.explainer);
    this.stopSuggestions = improveSuggestions(injector);
    this.readFractions();
    this.api.getFormula().calculationEnd(() => {
      this.lookSoon();
    });
    requestIdleCallback(() => {
      setTimeout(() => {
        this.settled = true;
        this.lookSoon();
      }, SETTLING);
    });
    injector.get(ICommandService).onCommandExecuted((command) => {
      if (command.type === CommandType.MUTATION) this.events.change();
      if (!MOVES.has(command.id)) return;
      this.popup.select(undefined, undefined);
      this.lookSoon();
    });
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

  /** Puts the keyboard on the selected cell. */
  focus(): void {
    const injector = this.univer.__getInjector();
    injector.get(IUniverInstanceService).focusUnit(this.book().getId());
    injector.get(ILayoutService).focus();
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
      formula: range.getFormula(),
      shown: shownIn(range),
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
