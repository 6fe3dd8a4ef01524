/** A class copy of the open sheet: a file for students, who work without the add-in. */
import { Problem } from "../math/problem";
import { classCopy, reportSummary } from "../workbooks/classCopy";
import type { Content } from "./content";
import { workOutIn } from "./workOut";
import { writeXlsx } from "./xlsx/write";

export interface MadeClassCopy {
  /** Of the .xlsx file; none where it could not be made. */
  bytes?: Uint8Array<ArrayBuffer>;
  /** What it is made of, or why there is none. */
  sentence: string;
}

export async function makeClassCopy(content: Content): Promise<MadeClassCopy> {
  try {
    const file = await writeXlsx(content);
    const { bytes, report } = await classCopy(file, workOutIn(file));
    return { bytes, sentence: `The class copy is saved. ${reportSummary(report)}` };
  } catch (thrown) {
    if (!(thrown instanceof Problem)) throw thrown;
    return { sentence: `The class copy could not be made: ${thrown.sentence("in")}.` };
  }
}
