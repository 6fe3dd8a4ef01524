/** Spreadsheet files, from the maker's computer and to it. What reads and writes them is loaded when it is needed. */
import { fileName, saveFile } from "../pane/save";
import type { Content } from "./content";
import { freshSheet, type OpenedSheet } from "./opened";

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Saves a sheet as a file; tells what is different in it, or nothing. */
export async function saveAsFile(content: Content, name: string): Promise<string> {
  const { renamedIn, writeXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/write");
  saveFile(await writeXlsx(content), WORKBOOK, `${fileName(name)}.xlsx`);
  const renamed = [...renamedIn(content)].map(([before, inFile]) => `“${before}” is “${inFile}”`);
  return renamed.length === 0 ? "" : `No file can hold all names of these pages: in the file ${renamed.join(", ")}.`;
}

/** A file as a sheet of its own, and what the maker should know of it: what was left out, or why it cannot be opened. */
export async function sheetOf(file: File): Promise<{ sheet?: OpenedSheet; remark: string }> {
  const { readXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/read");
  const read = await readXlsx(new Uint8Array(await file.arrayBuffer()));
  if ("refusal" in read) return { remark: `${file.name}: ${read.refusal}` };
  const leftOut = read.leftOut.join(", ");
  return {
    sheet: freshSheet(file.name.replace(/\.xlsx$/i, ""), read.workbook),
    remark: leftOut && `${file.name} is open, without its ${leftOut}. The file itself is unchanged.`,
  };
}
