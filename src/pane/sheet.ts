/** What the pane needs of the sheet beside it: an open workbook in the spreadsheet program, or the practice sheet. */

/** What a cell holds; null is an empty one, an error is its code, such as "#VALUE!". */
export type CellValue = number | string | boolean | null;

const ERROR_CODES: ReadonlySet<unknown> = new Set(
  (
    "#NULL! #DIV/0! #VALUE! #REF! #NAME? #NUM! #N/A #GETTING_DATA #SPILL! #CALC! #CYCLE! #FIELD! #CONNECT! #BLOCKED! " +
    "#UNKNOWN! #BUSY! #EXTERNAL! #PYTHON! #TIMEOUT!"
  ).split(" "),
);

/** Whether a cell shows an error. */
export function isErrorCode(value: unknown): value is string {
  return ERROR_CODES.has(value);
}

/** The one cell that is selected, or the first of several. */
export interface SelectedCell {
  /** Such as B5. */
  name: string;
  /** Of the page it is on. */
  page: string;
  /** With its equals sign; of a table the formula that fills it. Empty where there is none. */
  formula: string;
  /** The cell that holds the formula; another one where the cell is part of a table. */
  home: string;
  /** As the cell shows it. */
  shown: string;
}

/** The filled part of one page of the workbook. */
export interface SheetPage {
  name: string;
  /** Row and column of the first cell, from 0. */
  row: number;
  column: number;
  values: CellValue[][];
  /** Formulas with their equals sign, empty text elsewhere. */
  formulas: string[][];
}

export interface Picture {
  title: string;
  /** The same for those who cannot see it. */
  description: string;
  svg: string;
}

/** A picture as the sheet takes it. */
export interface DrawnPicture extends Picture {
  /** PNG in base 64, two pixels for one of the picture. */
  png: string;
  width: number;
  height: number;
}

/** What was put in the place of formulas. */
export interface Replaced {
  /** Such as B5:B9. */
  range: string;
  formulas: number;
  undo(): Promise<void>;
}

/** What the pane can ask for that a sheet may not be able to do. */
export type Task = "select" | "insert" | "picture" | "values" | "file" | "fills" | "write";

export interface Sheet {
  /** A sentence where this sheet cannot do something. */
  whyNot(task: Task): string | undefined;
  selected(): Promise<SelectedCell | undefined>;
  /** Calls back when the selection moves or what cells show may have changed. */
  onChange(listener: () => void): void;
  /** The selected cells as a formula names them. */
  selectedRange(): Promise<string>;
  /**
   * The values of a reference as a formula on `page` names it.
   * @throws SheetProblem where it is none
   */
  values(reference: string, page: string): Promise<CellValue[][]>;
  /** The fill colors of the cells of a reference, such as "#c0392b"; null where a cell has none. The same shape as values(). */
  fills(reference: string, page: string): Promise<(string | null)[][]>;
  /** Puts a text into a cell as if it were typed there; the sheet's own undo takes it back. */
  writeText(at: { cell: string; page: string }, text: string): Promise<void>;
  /** Puts a formula into the selected cell, or into `cell` of `page`, and tells where. */
  insertFormula(formula: string, at?: { cell: string; page: string }): Promise<string>;
  /** Puts a picture on the page beside the selected cell. */
  insertPicture(picture: DrawnPicture): Promise<void>;
  /** Puts values in the place of the selected formulas. */
  replaceByValues(): Promise<Replaced>;
  /** All pages of the workbook. */
  pages(): Promise<SheetPage[]>;
  /** Of the workbook, without its ending. */
  workbookName(): Promise<string>;
  /** The workbook as an .xlsx file. */
  file(): Promise<Uint8Array<ArrayBuffer>>;
}

/** A sentence for the maker. */
export class SheetProblem extends Error {}
