/** A class copy of the open sheet: a file for students, who work without the add-in. */
import type { Injector, Workbook } from "@univerjs/core";
import { Problem } from "../math/problem";
import { classCopy, reportSummary } from "../workbooks/classCopy";
import type { Content } from "./content";
import { workOutBeside } from "./workOut";
import { writeXlsx } from "./xlsx/write";

/** The engine that shows a workbook, and the workbook. */
export interface OpenEngine {
  injector: Injector;
  workbook: Workbook;
}

export interface MadeClassCopy {
  /** Of the .xlsx file; none where it could not be made. */
  bytes?: Uint8Array<ArrayBuffer>;
  /** What it is made of, or why there is none. */
  sentence: string;
}

/** A class copy of what an open workbook holds, worked out by its own engine. */
export async function makeClassCopy(content: Content, engine: OpenEngine): Promise<MadeClassCopy> {
  try {
    const file = await writeXlsx(content);
    const { bytes, report } = await classCopy(file, workOutBeside(engine.injector, engine.workbook));
    return { bytes, sentence: `The class copy is saved. ${reportSummary(report)}` };
  } catch (thrown) {
    if (!(thrown instanceof Problem)) throw thrown;
    return { sentence: `The class copy could not be made: ${thrown.sentence("in")}.` };
  }
}
