/**
 * Lengths and amounts as a ruler reads them: a cell without a number format whose formula is one call, such as
 * =QUILT.CUTHALFSQUARE(3), shows 3 7/8. It holds 3.875 all the same. What is on no mark is a decimal number, also in a cell
 * that is made for fractions.
 */
import { CellValueType, type Injector } from "@univerjs/core";
import { INTERCEPTOR_POINT, InterceptCellContentPriority, SheetInterceptorService } from "@univerjs/sheets";
import { roundNearestTo, same } from "../math/rounding";
import { decimalText, ruledText } from "../math/show";
import { byId, type Family, type FunctionEntry, type Measures, measuresOf } from "../pane/catalogue";
import { quiltName } from "../pane/evaluate";
import { callOnly, partsOf, significant } from "../workbooks/syntax";
import { Cells } from "./cells";
import { readFamilies } from "./families";

/** Whether a number format makes fractions; of a number on no mark it would make another one, such as 5 1/1 of 4.95. */
function isFraction(pattern: string): boolean {
  return /^#* ?\?+\/\?+$/.test(pattern);
}

/** Whether a number is whole, or on a mark that a ruler or a yardstick may have. */
function isOnMark(value: number): boolean {
  return [1 / 64, 1 / 3].some((mark) => same(value, roundNearestTo(mark, value)));
}

export class Ruled {
  private readonly entries: ReadonlyMap<string, FunctionEntry>;
  /** By formula, since a grid asks at each stroke. */
  private readonly known = new Map<string, Measures>();

  constructor(families: readonly Family[]) {
    this.entries = byId(families);
  }

  /** Where it cannot be read which functions answer with a length, all cells show decimals. */
  static async read(): Promise<Ruled | undefined> {
    return readFamilies().then(
      (families) => new Ruled(families),
      () => undefined,
    );
  }

  /** Shows the cells of a grid so. */
  show(injector: Injector): void {
    const cells = new Cells(injector);
    injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      // After the number formats, which would make a fraction of any number.
      priority: InterceptCellContentPriority.NUMFMT - 0.5,
      handler: (cell, { unitId, subUnitId: sheetId, row, col: column, workbook }, next) => {
        if (cell?.t !== CellValueType.NUMBER) return next(cell);
        const place = { unitId, sheetId, row, column };
        const value = cells.at(place).v;
        if (typeof value !== "number" || Number.isInteger(value)) return next(cell);
        const shown = this.textOf(
          value,
          workbook.getStyles().get(cell.s)?.n?.pattern,
          () => cells.source(place)?.formula,
        );
        return next(shown === undefined ? cell : { ...cell, v: shown });
      },
    });
  }

  /** How a number reads that its format would show otherwise. */
  private textOf(value: number, pattern: string | undefined, formula: () => string | undefined): string | undefined {
    if (pattern) return isFraction(pattern) && !isOnMark(value) ? decimalText(value, 3) : undefined;
    const measures = this.measures(formula() ?? "");
    return measures && ruledText(value, measures);
  }

  /** What the answer of a formula measures, where it is in inches or yards. */
  measures(formula: string): Measures {
    if (!this.known.has(formula)) this.known.set(formula, this.read(formula));
    return this.known.get(formula);
  }

  private read(formula: string): Measures {
    const call = callOnly(partsOf(formula) ?? []);
    const entry = this.entries.get(quiltName(call?.name ?? "") ?? "");
    const measures = entry && measuresOf(entry);
    if (!call || !measures) return undefined;
    const place = entry.parameters.findIndex(({ name }) => name === "units");
    const units = significant(call.given.slice(place, place + 1).flat());
    // Another cell may hold the units, and may change.
    const isInches = units.every((part) => part.kind === "leaf" && /^"\s*in\s*"$/i.test(part.text));
    return isInches ? measures : undefined;
  }
}
