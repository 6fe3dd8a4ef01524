/**
 * Lengths and amounts as a ruler reads them: a cell without a number format whose formula is one call, such as
 * =QUILT.CUTHALFSQUARE(3), shows 3 7/8. It holds 3.875 all the same, and what is on no mark stays a decimal number.
 */
import { CellValueType, type Injector } from "@univerjs/core";
import { INTERCEPTOR_POINT, InterceptCellContentPriority, SheetInterceptorService } from "@univerjs/sheets";
import { ruledText } from "../math/show";
import { byId, type Family, type FunctionEntry, type Measures, measuresOf } from "../pane/catalogue";
import { quiltName } from "../pane/evaluate";
import { callOnly, partsOf, significant } from "../workbooks/syntax";
import { Cells } from "./cells";
import { readFamilies } from "./families";

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
      // Before the number formats, which know of no mark.
      priority: InterceptCellContentPriority.NUMFMT + 0.5,
      handler: (cell, { unitId, subUnitId: sheetId, row, col: column, workbook }, next) => {
        if (typeof cell?.v !== "number" || cell.t === CellValueType.BOOLEAN) return next(cell);
        if (workbook.getStyles().get(cell.s)?.n) return next(cell);
        const source = Number.isInteger(cell.v) ? undefined : cells.source({ unitId, sheetId, row, column });
        const measures = source && this.measures(source.formula);
        const shown = measures && ruledText(cell.v, measures);
        return next(shown ? { ...cell, v: shown } : cell);
      },
    });
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
