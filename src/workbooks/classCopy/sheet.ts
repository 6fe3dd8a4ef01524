/** The cells of one sheet part: reads those that hold something, and writes other contents into some, the rest untouched. */
import { type Cell, type Cells, readCells, type Row } from "./cells";
import type { Answer, Value } from "./answers";
import { type Area, areaOf, cellName, holds, type Place } from "./places";
import { attributeOf, attributesOf, Changes, encoded, type Tag, withoutAttributes } from "./xml";

/** A cell with a formula. */
export interface FormulaCell extends Place {
  /** As the file holds it, without an equals sign; that of a member of a shared formula is the shared one's. */
  readonly formula: string;
  /** The cell that a shared formula is written for, where it is another one. */
  readonly sharedFrom?: Place;
  readonly isShared: boolean;
  /** A formula over an area, as older programs enter it, or one that fills the area by itself. */
  readonly area?: Area;
  /** The formula may fill an area by itself. */
  readonly isDynamic: boolean;
}

/** What is put into a cell. `null` empties it. */
export type Content = NewFormula | { value: Value } | null;

export interface NewFormula {
  formula: string;
  /** What it comes to; left out where that is not known. */
  value?: Value;
  /** Over the area, and as dynamic, as the formula was that stands there. */
  asItWas: boolean;
}

export class SheetPart {
  private readonly cells: Cells;
  private readonly contents = new Map<number, Map<number, Content>>();

  /** @param name what the sheet is called in a message */
  constructor(
    private readonly xml: string,
    name: string,
  ) {
    this.cells = readCells(xml, name);
  }

  /** The cells with formulas, the members of shared ones with the formula of the first. */
  formulas(): FormulaCell[] {
    const shared = new Map<string, { formula: string; place: Place }>();
    const list: FormulaCell[] = [];
    for (const cell of this.all()) {
      if (!cell.formula) continue;
      const attributes = attributesOf(this.xml, cell.formula.tag);
      const isShared = attributes.get("t") === "shared";
      const group = attributes.get("si") ?? "";
      const { row, column } = cell;
      const { text } = cell.formula;
      if (isShared && text !== "") shared.set(group, { formula: text, place: cell });
      const first = isShared ? shared.get(group) : undefined;
      const formula = text === "" && first ? first.formula : text;
      if (formula === "") continue;
      const isArray = attributes.get("t") === "array";
      list.push({
        row,
        column,
        formula,
        isShared,
        ...(first && text === "" && { sharedFrom: first.place }),
        ...(isArray && { area: areaOf(attributes.get("ref") ?? "") ?? { first: cell, last: cell } }),
        isDynamic: isArray && attributeOf(this.xml, cell.tag, "cm") !== undefined,
      });
    }
    return list;
  }

  /** Whether a cell holds anything. */
  isFilled({ row, column }: Place): boolean {
    return this.cells.rows.get(row)?.cells.get(column)?.isFilled ?? false;
  }

  /** The cells of an area that hold anything. */
  filledIn(area: Area): Place[] {
    return [...this.all()].filter((cell) => cell.isFilled && holds(area, cell));
  }

  put(place: Place, content: Content): void {
    const row = this.contents.get(place.row) ?? new Map<number, Content>();
    this.contents.set(place.row, row.set(place.column, content));
  }

  /** The part with what was put into its cells. */
  made(): string {
    const changes = new Changes(this.xml);
    for (const [number, contents] of inOrder(this.contents)) {
      const row = this.cells.rows.get(number);
      if (row?.tag.kind === "open") this.changeRow(row, number, contents, changes);
      else {
        const cells = inOrder(contents).map(([column, content]) => this.newCell({ row: number, column }, content));
        const closing = `${cells.join("")}</${this.prefix}row>`;
        const next = after(this.cells.rows, number);
        const at = next ? next.tag.start : this.cells.close;
        if (row) changes.replace(row.tag.start, row.tag.end, openTag(this.source(row.tag)) + closing);
        else changes.replace(at, at, `<${this.prefix}row r="${number}">${closing}`);
      }
    }
    return changes.made();
  }

  private changeRow(row: Row, number: number, contents: Map<number, Content>, changes: Changes): void {
    for (const [column, content] of inOrder(contents)) {
      const cell = row.cells.get(column);
      if (cell) changes.replace(cell.tag.start, cell.end, this.changedCell(cell, content));
      else {
        const next = after(row.cells, column);
        const at = next ? next.tag.start : row.close;
        changes.replace(at, at, this.newCell({ row: number, column }, content));
      }
    }
  }

  private *all(): Generator<Cell> {
    for (const row of this.cells.rows.values()) yield* row.cells.values();
  }

  private get prefix(): string {
    const [row] = this.cells.rows.values();
    return row.tag.prefix;
  }

  private source({ start, end }: Tag): string {
    return this.xml.slice(start, end);
  }

  private newCell(place: Place, content: Content): string {
    return cellXml(this.prefix, `<${this.prefix}c r="${cellName(place)}">`, content, `<${this.prefix}f>`);
  }

  private changedCell({ tag, formula }: Cell, content: Content): string {
    const isAsItWas = content !== null && "formula" in content && content.asItWas;
    const source = withoutAttributes(this.source(tag), isAsItWas ? ["t", "vm"] : ["t", "cm", "vm"]);
    const formulaTag = isAsItWas && formula ? this.source(formula.tag) : `<${tag.prefix}f>`;
    return cellXml(tag.prefix, openTag(source), content, formulaTag);
  }
}

/** @param tag the opening tag of the cell, without a type; @param formulaTag that of its formula */
function cellXml(prefix: string, tag: string, content: Content, formulaTag: string): string {
  if (content === null) return `${tag.slice(0, -1)}/>`;
  // Programs take an empty text for a blank cell, which counts as 0, unless a formula gives it.
  if ("value" in content && content.value === "" && !("formula" in content))
    return cellXml(prefix, tag, { formula: '""', value: "", asItWas: false }, `<${prefix}f>`);
  const closing = `</${prefix}c>`;
  if (!("formula" in content))
    return withType(tag, constantType(content.value)) + constantXml(prefix, content.value) + closing;
  const { value } = content;
  const formula = `${formulaTag}${encoded(content.formula)}</${prefix}f>`;
  if (value === undefined) return tag + formula + closing;
  const type = typeof value === "string" ? "str" : constantType(value);
  return `${withType(tag, type)}${formula}<${prefix}v>${encoded(shown(value))}</${prefix}v>${closing}`;
}

/** The first of the rows of a sheet, or the cells of a row, behind a number. Files keep them in order. */
function after<T>(list: ReadonlyMap<number, T>, number: number): T | undefined {
  for (const [other, each] of list) if (other > number) return each;
  return undefined;
}

function inOrder<T>(map: ReadonlyMap<number, T>): [number, T][] {
  return [...map].sort(([one], [other]) => one - other);
}

function openTag(source: string): string {
  return source.replace(/\s*\/>$/, ">");
}

function withType(tag: string, type: string | undefined): string {
  return type === undefined ? tag : `${tag.slice(0, -1)} t="${type}">`;
}

function constantType(value: Value): string | undefined {
  if (typeof value === "number") return undefined;
  if (typeof value === "string") return "inlineStr";
  return typeof value === "boolean" ? "b" : "e";
}

function constantXml(prefix: string, value: Value): string {
  if (typeof value !== "string") return `<${prefix}v>${encoded(shown(value))}</${prefix}v>`;
  return `<${prefix}is><${prefix}t xml:space="preserve">${encoded(value)}</${prefix}t></${prefix}is>`;
}

function shown(value: Value): string {
  if (typeof value === "boolean") return value ? "1" : "0";
  return typeof value === "object" ? value.error : String(value);
}

/** The places of an answer whose first cell is that of the formula. */
export function placesOf(first: Place, answer: Answer): { place: Place; value: Value }[] {
  return answer.flatMap((line, row) =>
    line.map((value, column) => ({ place: { row: first.row + row, column: first.column + column }, value })),
  );
}
