/** Class copies of the open workbook: its file is turned, and what its formulas come to is read from its own cells. */
import { Problem } from "../math/problem";
import { type Answer, type Asked, classCopy, reportText, type Value, type WorkOut } from "../workbooks/classCopy";
import { partsOf } from "../workbooks/syntax";
import { asSentence, isAnswered, workOut } from "./answer";
import { Evaluation, type Value as Evaluated } from "./evaluate";
import { areaOf, valuesIn } from "./pages";
import { type CellValue, type Sheet, type SheetPage, SheetProblem } from "./sheet";

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

/** From the functions themselves, or else what the cell shows. */
async function answerTo({ formula, sheet, cell }: Asked, pages: readonly SheetPage[]): Promise<Answer | undefined> {
  try {
    const parts = partsOf(formula.replace(/^=/, ""));
    if (parts) return answerOf(await evaluation(sheet, pages).evaluate(parts));
  } catch (thrown) {
    if (thrown instanceof CellRefused) return [[{ error: thrown.code }]];
    if (!(thrown instanceof SheetProblem)) throw thrown;
  }
  return shownIn(cell, sheet, pages);
}

/** A function that refused, whose error the whole formula shows. */
class CellRefused extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

function evaluation(sheet: string, pages: readonly SheetPage[]): Evaluation {
  const own: Evaluation = new Evaluation({
    cells: (reference) => Promise.resolve(valuesIn(pages, reference, sheet)),
    call: async (id, given) => {
      const cells: Evaluated[] = [];
      for (const argument of given) cells.push(await own.evaluate(argument));
      const outcome = workOut(id, cells);
      if (!isAnswered(outcome)) throw new CellRefused(outcome.code);
      return outcome.value;
    },
  });
  return own;
}

/** The value of a cell with a formula; one that fills a table could not be told from one that does not. */
function shownIn(cell: string, sheet: string, pages: readonly SheetPage[]): Answer | undefined {
  const page = pages.find(({ name }) => name === sheet);
  const { top, left } = areaOf(cell, sheet);
  const formula = page?.formulas.at(top - page.row)?.at(left - page.column);
  if (!page || !formula || top < page.row || left < page.column) return undefined;
  return answerOf(page.values[top - page.row][left - page.column]);
}

function answerOf(value: Evaluated): Answer {
  return Array.isArray(value) ? value.map((row) => row.map(plain)) : [[plain(value)]];
}

function plain(value: CellValue): Value {
  if (typeof value === "string" && /^#[A-Z][A-Z0-9/]*[!?]?$/.test(value)) return { error: value };
  return value ?? "";
}
