/** What the spreadsheet program around the pane can do. */
import type { Task } from "./sheet";

/** What each task takes of the program, and what is said where it is too old for it. */
const NEEDS: Record<Task, { set: string; version: string; else: string }> = {
  select: {
    set: "ExcelApi",
    version: "1.7",
    else: "This version of the spreadsheet program does not tell which cell is selected.",
  },
  insert: {
    set: "ExcelApi",
    version: "1.7",
    else: "This version of the spreadsheet program takes no formulas from here: copy the formula and paste it.",
  },
  picture: {
    set: "ExcelApi",
    version: "1.9",
    else: "This version of the spreadsheet program takes no pictures from here: save the picture and insert it.",
  },
  values: {
    set: "ExcelApi",
    version: "1.7",
    else: "This version of the spreadsheet program cannot do that from here: copy the cells and paste only their values.",
  },
  fills: {
    set: "ExcelApi",
    version: "1.9",
    else: "This version of the spreadsheet program does not tell the colors of cells.",
  },
  write: {
    set: "ExcelApi",
    version: "1.7",
    else: "This version of the spreadsheet program takes no words from here: type them into the cell.",
  },
  file: {
    set: "CompressedFile",
    version: "1.1",
    else: "This version of the spreadsheet program does not hand out the workbook.",
  },
};

/** A sentence where the program is too old for a task. */
export function whyProgramCannot(task: Task): string | undefined {
  const { set, version, else: sentence } = NEEDS[task];
  return supports(set, version) ? undefined : sentence;
}

export function supports(set: string, version: string): boolean {
  return Office.context.requirements.isSetSupported(set, version);
}
