/** What a planning workbook is made of, whatever writes or shows it: sheets of cells, each with a style and a content. */
import metadata from "../../manifest/functions.json";
import type { StyleName } from "./look";

/** How a number reads. Lengths read as on a ruler, and as decimals where the workbook is set to centimeters. */
export type Format = "length" | "amount" | "count" | "decimal" | "money" | "percent" | "text";

export interface Entry {
  /** Such as B5. */
  cell: string;
  style: StyleName;
  /** A number, a text, or a formula that starts with an equals sign; none for a cell left free. */
  content?: string | number;
  format?: Format;
  /** Words of a drop-down list, or the range that holds them. Other words may be typed, too. */
  choices?: readonly string[] | string;
  /** For a formula that answers with a table: how much room is kept, and how its columns read. Its first row is a heading (usual) or not. */
  room?: { rows: number; columns: readonly (Format | undefined)[]; header?: boolean };
}

export interface Sheet {
  name: string;
  /** Width of each column, in digits of the usual type. */
  widths: readonly number[];
  entries: readonly Entry[];
  /** Rows that stay in sight, and columns. */
  frozen?: { rows: number; columns?: number };
  /** "one page": made smaller to fit; "fit width": as many pages long as it takes; "true size": never scaled. */
  print: "one page" | "fit width" | "true size";
  landscape?: boolean;
  /** Rows repeated on every page, such as "1:4". */
  repeat?: string;
  /** The last row that is printed; the last that holds anything otherwise. */
  lastRow?: number;
  /** A new page begins below these rows. */
  breaks?: readonly number[];
  /** Where the 1 in and the 25 mm test squares stand: the cells at their upper left. */
  testSquares?: readonly [inch: string, millimeters: string];
  /** Rows higher than usual, in points. */
  heights?: Readonly<Record<number, number>>;
}

export interface Book {
  /** Of the file, without its ending. */
  name: string;
  title: string;
  description: string;
  sheets: readonly Sheet[];
  /** The cell that says "in" or "cm", with its sheet. */
  units: string;
}

export type CellValue = number | string | boolean;

/** What the formulas of a sheet come to: the value of each cell, and the range of each table by the cell it starts in. */
export interface WorkedSheet {
  values: Record<string, CellValue>;
  tables: Record<string, string>;
}

/** Works out every formula of a book; by the name of the sheet. */
export type Evaluate = (book: Book) => Promise<Record<string, WorkedSheet>>;

interface Described {
  id: string;
  parameters: { name: string; optional?: boolean }[];
}

const FUNCTIONS = new Map((metadata.functions as Described[]).map((described) => [described.id, described]));

/** Arguments of a call by their names, as they stand in the formula. */
export type Given = Readonly<Record<string, string | number>>;

/**
 * Writes calls for sheets whose units stand in one cell: `quilt("CUTSQUARE", { finished: "B4" })` is
 * `QUILT.CUTSQUARE(B4,,,$B$2)`.
 */
export function callsIn(units: string): (id: string, given: Given) => string {
  return (id, given) => {
    const described = FUNCTIONS.get(id);
    if (!described) throw new Error(`there is no function ${id}`);
    const names = described.parameters.map(({ name }) => name);
    const all: Given = names.includes("units") ? { units, ...given } : given;
    const unknown = Object.keys(all).find((name) => !names.includes(name));
    if (unknown) throw new Error(`${id} has no argument ${unknown}; it has ${names.join(", ")}`);
    const missing = described.parameters.find(({ name, optional }) => !optional && !(name in all));
    if (missing) throw new Error(`${id} needs the argument ${missing.name}`);
    const last = Math.max(...Object.keys(all).map((name) => names.indexOf(name)));
    return `QUILT.${id}(${names
      .slice(0, last + 1)
      .map((name) => all[name] ?? "")
      .join(",")})`;
  };
}

/** A whole line of a heading, so that its line runs across the columns. */
export function heading(cell: string, text: string, columns: number): Entry[] {
  return across(cell, [text, ...Array.from({ length: columns - 1 }, () => "")], "heading");
}

/** Cells side by side in one style; an empty text leaves its cell free. */
export function across(
  cell: string,
  contents: readonly (string | number)[],
  style: StyleName,
  format?: Format,
): Entry[] {
  const { row, column } = place(cell);
  return contents.map((content, index) => ({
    cell: nameOf(row, column + index),
    style,
    ...(content === "" ? {} : { content }),
    ...(format ? { format } : {}),
  }));
}

/** Lines of text one below the other. */
export function lines(cell: string, texts: readonly string[], style: StyleName = "note"): Entry[] {
  const { row, column } = place(cell);
  return texts.map((content, index) => ({ cell: nameOf(row + index, column), style, content }));
}

/** Row and column of a cell's name, from 0; none of our sheets is wider than Z. */
export function place(cell: string): { row: number; column: number } {
  const parts = /^([A-Z])(\d+)$/.exec(cell);
  if (!parts) throw new Error(`${cell} is no cell`);
  return { row: Number(parts[2]) - 1, column: parts[1].charCodeAt(0) - 65 };
}

/** The name of a cell, from row and column. */
export function nameOf(row: number, column: number): string {
  return `${String.fromCharCode(65 + column)}${row + 1}`;
}

/** Whether an entry's content is worked out. */
export function isFormula(content: Entry["content"]): content is string {
  return typeof content === "string" && content.startsWith("=");
}

/** The room kept for a table: every cell of it, with its style and the format of its column. */
export function roomOf(entry: Entry): { cell: string; style: StyleName; format: Format | undefined }[] {
  if (!entry.room) return [];
  const { row, column } = place(entry.cell);
  const { rows, columns, header = true } = entry.room;
  return Array.from({ length: rows }, (_, r) =>
    columns.map((format, c) => ({
      cell: nameOf(row + r, column + c),
      style: header ? (r === 0 ? ("tableHead" as const) : ("table" as const)) : entry.style,
      format,
    })),
  ).flat();
}
