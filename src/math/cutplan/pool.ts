import { Column, columnKey } from "./model";

/** Strips found so far, each once; every linear program picks from them. */
export class Pool {
  readonly columns: Column[] = [];
  private readonly known = new Set<string>();

  /** Adds a column; false when it was there. */
  add(column: Column): boolean {
    const key = columnKey(column);
    if (this.known.has(key)) return false;
    this.known.add(key);
    this.columns.push(column);
    return true;
  }
}
