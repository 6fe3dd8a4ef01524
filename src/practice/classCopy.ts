/** A class copy of the open sheet: a file for students, who work without the add-in. */
import { Problem } from "../math/problem";
import { asSentence } from "../pane/answer";
import { SheetProblem } from "../pane/sheet";
import { classCopy, reportText } from "../workbooks/classCopy";
import type { Content, OpenEngine } from "./content";
import { workOutBeside } from "./workOut";
import { writeXlsx } from "./xlsx/write";

/**
 * Makes the copy of what an open workbook holds, worked out by its own engine, and tells what became of the formulas.
 *
 * @throws SheetProblem where it cannot be made
 */
export async function copyForClass(
  content: Content,
  engine: OpenEngine,
): Promise<{ bytes: Uint8Array<ArrayBuffer>; report: string }> {
  try {
    const file = await writeXlsx(content);
    const { bytes, report } = await classCopy(file, workOutBeside(engine.injector, engine.workbook));
    return { bytes, report: reportText(report) };
  } catch (thrown) {
    throw thrown instanceof Problem ? new SheetProblem(asSentence(thrown.sentence("in"))) : thrown;
  }
}
