/** The file of the open workbook, which the spreadsheet program hands out in slices. */
import { SheetProblem } from "./sheet";

const SLICE = 1 << 20;

/** The workbook as the program would save it, an .xlsx file. */
export async function workbookFile(): Promise<Uint8Array<ArrayBuffer>> {
  const file = await new Promise<Office.File>((resolve, reject) => {
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize: SLICE }, (result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve(result.value);
      else
        reject(new SheetProblem("The spreadsheet program did not hand out the workbook. Save it first and try again."));
    });
  });
  try {
    const bytes = new Uint8Array(file.size);
    for (let index = 0; index < file.sliceCount; index += 1) bytes.set(await sliceOf(file, index), index * SLICE);
    return bytes;
  } finally {
    file.closeAsync();
  }
}

function sliceOf(file: Office.File, index: number): Promise<number[]> {
  return new Promise((resolve, reject) => {
    file.getSliceAsync(index, (result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve(result.value.data as number[]);
      else reject(new SheetProblem("The spreadsheet program did not hand out the whole workbook."));
    });
  });
}
