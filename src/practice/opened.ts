/** Sheets as they are opened, and which one is open in this tab. */
import { starterBegin, starterName, starterWorkbook } from "./starter";
import type { KeptSheet } from "./store";
import { emptyWorkbook } from "./workbook";

export interface OpenedSheet extends Pick<KeptSheet, "id" | "name" | "workbook"> {
  /** The cell to begin in, such as B5; A1 if left out. */
  begin?: string;
}

export function starterSheet(): OpenedSheet {
  return freshSheet(starterName, starterWorkbook(), starterBegin);
}

export function emptySheet(): OpenedSheet {
  return freshSheet("New sheet", emptyWorkbook());
}

/** A sheet that is kept from now on, beside all others. */
export function freshSheet(name: string, workbook: OpenedSheet["workbook"], begin?: string): OpenedSheet {
  return { id: crypto.randomUUID(), name, workbook, begin };
}

/** Remembers the sheet of this tab over a reload, and the last one for a new tab. */
const LAST = "piecewise sheet";

/** The id of the sheet of this tab, over a reload, or else of the last one of any tab. */
export function lastOpened(): string | null {
  try {
    return sessionStorage.getItem(LAST) ?? localStorage.getItem(LAST);
  } catch {
    return null;
  }
}

export function rememberOpened({ id }: OpenedSheet): void {
  try {
    sessionStorage.setItem(LAST, id);
    localStorage.setItem(LAST, id);
  } catch {
    // Then nothing is kept at all, which the page says elsewhere.
  }
}
