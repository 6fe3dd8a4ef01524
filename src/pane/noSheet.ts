/** The pane by itself, without a sheet beside it. */
import { type CellValue, type Replaced, type SelectedCell, type Sheet, type SheetPage, SheetProblem } from "./sheet";

const ALONE = "This page is not open in a spreadsheet. The add-in’s button there opens it beside your sheet.";

export class NoSheet implements Sheet {
  whyNot(): string {
    return ALONE;
  }

  selected(): Promise<SelectedCell | undefined> {
    return Promise.resolve(undefined);
  }

  onChange(): void {
    // Nothing ever changes.
  }

  selectedRange(): Promise<string> {
    return alone();
  }

  values(): Promise<CellValue[][]> {
    return Promise.reject(new SheetProblem("There are no cells here to read from; type the numbers themselves"));
  }

  fills(): Promise<(string | null)[][]> {
    return alone();
  }

  writeText(): Promise<void> {
    return alone();
  }

  insertFormula(): Promise<string> {
    return alone();
  }

  insertPicture(): Promise<void> {
    return alone();
  }

  replaceByValues(): Promise<Replaced> {
    return alone();
  }

  pages(): Promise<SheetPage[]> {
    return alone();
  }

  workbookName(): Promise<string> {
    return alone();
  }

  file(): Promise<Uint8Array<ArrayBuffer>> {
    return alone();
  }
}

function alone(): Promise<never> {
  return Promise.reject(new SheetProblem(ALONE));
}
