/** Class copies of the open workbook: its file is turned, and what its formulas come to is read from its own cells. */
import { Problem } from "../math/problem";
import { type Answer, type Asked, classCopy, reportText, type Value, type WorkOut } from "../workbooks/classCopy";
import { partsOf } from "../workbooks/syntax";
import { asSentence, isAnswered, workOut } from "./answer";
import { ComesToError, errorIn, orError, type Value as Evaluated } from "./arithmetic";
import { isAsShown } from "./asShown";
import { Evaluation } from "./evaluate";
import { valuesIn } from "./pages";
import { type CellValue, isErrorCode, type Sheet, type SheetPage, SheetProblem } from "./sheet";

/** Makes the copy, and tells what became of the formulas. */
export async function copyForClass(sheet: Sheet): Promise<{ bytes: Uint8Array<ArrayBuffer>; report: string }> {
  const file = await sheet.file();
  const pages = await sheet.pages();
  try {
    const { bytes, report } = await classCopy(file, workOutFrom(pages));
    return { bytes, report: reportText(report) };
  } catch (thrown) {
    throw thrown instanceof Problem ? new SheetProblem(asSentence(thrown.message)) : thrown;
  }
}

/** Plain twins are not asked for: no spreadsheet program is at hand that would work them out beside the workbook. */
function workOutFrom(pages: readonly SheetPage[]): WorkOut {
  return (asked) => Promise.all(asked.map(async (one) => (one.isTwin ? undefined : answerTo(one, pages))));
}

/** From the functions themselves, where that is what the cell shows; or else what it shows. */
async function answerTo(asked: Asked, pages: readonly SheetPage[]): Promise<Answer | undefined> {
  const shown = shownIn(asked, pages);
  const own = await workedOut(asked, pages);
  if (own === undefined || (shown && !isAsShown(own, shown))) return shown && answerOf(shown, "");
  return own instanceof ComesToError ? [[{ error: own.code }]] : answerOf(own, 0);
}

/** What a formula comes to; undefined where it cannot be followed. */
async function workedOut(
  { formula, sheet }: Asked,
  pages: readonly SheetPage[],
): Promise<Evaluated | ComesToError | undefined> {
  const parts = partsOf(formula);
  if (!parts) return undefined;
  try {
    return await orError(evaluation(sheet, pages).evaluate(parts));
  } catch (thrown) {
    if (thrown instanceof SheetProblem) return undefined;
    throw thrown;
  }
}

function evaluation(sheet: string, pages: readonly SheetPage[]): Evaluation {
  const own: Evaluation = new Evaluation({
    cells: (reference) => Promise.resolve(valuesIn(pages, reference, sheet)),
    call: async (id, given) => {
      const cells: Evaluated[] = [];
      for (const argument of given) {
        const value = await own.evaluate(argument);
        const code = errorIn(value);
        if (code !== undefined) throw new ComesToError(code);
        cells.push(value);
      }
      const outcome = workOut(id, cells);
      if (!isAnswered(outcome)) throw new ComesToError(outcome.code);
      return outcome.value;
    },
  });
  return own;
}

/** What the cells of a formula show; undefined where it stands in no cell that can be read. */
function shownIn({ sheet, area }: Asked, pages: readonly SheetPage[]): CellValue[][] | undefined {
  const page = pages.find(({ name }) => name === sheet);
  if (!page || !area) return undefined;
  const [top, left] = [area.first.row - 1 - page.row, area.first.column - 1 - page.column];
  if (!page.formulas[top]?.[left]) return undefined;
  const values = page.values.slice(top, area.last.row - page.row);
  return values.map((line) => line.slice(left, area.last.column - page.column));
}

/** @param empty what an empty cell counts as: in the answer of a formula a 0 */
function answerOf(value: Evaluated, empty: Value): Answer {
  const plain = (cell: CellValue) => (isErrorCode(cell) ? { error: cell } : (cell ?? empty));
  return Array.isArray(value) ? value.map((row) => row.map(plain)) : [[plain(value)]];
}
