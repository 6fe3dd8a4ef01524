/** Where the rows and cells of a sheet part stand in its text. */
import { LAST_COLUMN, LAST_ROW, type Place, placeOf } from "./places";
import { attributeOf, decoded, type Tag, tagsOf } from "./xml";
import { DAMAGED, refuse } from "./zip";

export interface Cell extends Place {
  readonly tag: Tag;
  /** Where the cell ends. */
  end: number;
  formula?: { tag: Tag; text: string };
  /** It holds something, not just a look. */
  isFilled: boolean;
}

export interface Row {
  readonly tag: Tag;
  /** Where its closing tag starts. */
  close: number;
  readonly cells: Map<number, Cell>;
}

export interface Cells {
  /** By their numbers, in the order of the file. */
  readonly rows: Map<number, Row>;
  /** Where the closing tag of all rows starts. */
  readonly close: number;
}

const MOST_CELLS = 500_000;

/** What a cell may hold: a value, a text, a formula. */
const CONTENTS = ["v", "is", "f"];

/** @param sheet what the sheet is called in a message */
export function readCells(xml: string, sheet: string): Cells {
  const reading = new Reading(xml, sheet);
  let isData = false;
  let close = -1;
  for (const tag of tagsOf(xml)) {
    if (tag.name === "sheetData") {
      isData = tag.kind === "open";
      if (tag.kind === "close") close = tag.start;
    } else if (isData) reading.take(tag);
  }
  return { rows: reading.rows, close };
}

class Reading {
  readonly rows = new Map<number, Row>();
  private row: Row | undefined;
  private cell: Cell | undefined;
  private formula: Tag | undefined;
  private count = 0;
  /** Rows and cells without a number follow the one before. */
  private lastRow = 0;
  private lastColumn = 0;

  constructor(
    private readonly xml: string,
    private readonly sheet: string,
  ) {}

  take(tag: Tag): void {
    const isClose = tag.kind === "close";
    if (tag.name === "row") {
      if (isClose) this.row!.close = tag.start;
      else this.startRow(tag);
    } else if (tag.name === "c") {
      if (isClose) this.cell!.end = tag.end;
      else this.startCell(tag);
    } else if (CONTENTS.includes(tag.name) && this.cell) {
      this.cell.isFilled = true;
      if (tag.name === "f") this.takeFormula(tag, this.cell);
    }
  }

  private startRow(tag: Tag): void {
    const number = Number(attributeOf(this.xml, tag, "r") ?? this.lastRow + 1);
    if (!Number.isInteger(number) || number < 1 || number > LAST_ROW) refuse(DAMAGED);
    this.row = { tag, close: tag.end, cells: new Map() };
    this.rows.set(number, this.row);
    [this.lastRow, this.lastColumn] = [number, 0];
  }

  private startCell(tag: Tag): void {
    if (++this.count > MOST_CELLS)
      refuse(`${this.sheet} holds more than ${MOST_CELLS.toLocaleString("en-US")} cells, which is too large`);
    const named = attributeOf(this.xml, tag, "r");
    const place = named === undefined ? { row: this.lastRow, column: this.lastColumn + 1 } : placeOf(named);
    if (!this.row || !place || place.row !== this.lastRow || place.column > LAST_COLUMN) return refuse(DAMAGED);
    this.cell = { ...place, tag, end: tag.end, isFilled: false };
    this.row.cells.set(place.column, this.cell);
    this.lastColumn = place.column;
  }

  private takeFormula(tag: Tag, cell: Cell): void {
    if (tag.kind === "empty") cell.formula = { tag, text: "" };
    else if (tag.kind === "open") this.formula = tag;
    else cell.formula = { tag: this.formula!, text: decoded(this.xml.slice(this.formula!.end, tag.start)) };
  }
}
