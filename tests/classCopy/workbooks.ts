/** Small workbooks for the tests, and what is looked at in class copies of them. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type CellValueInput, Workbook } from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { workOutIn } from "../../src/practice/workOut";
import { type ClassCopy, classCopy, type Options } from "../../src/workbooks/classCopy";

/** What stands in the cells of a sheet. A text that starts with an equals sign is a formula, as files store it. */
export type Cells = Readonly<Record<string, string | number | boolean>>;

/** What every formula holds before it is worked out; none of it may be left. */
export const STALE = 987654321;

/** A workbook as the spreadsheet program with the add-in stores it, except that its answers are stale. */
export async function workbook(sheets: Readonly<Record<string, Cells>>): Promise<Uint8Array> {
  const file = new Workbook();
  for (const [name, cells] of Object.entries(sheets)) {
    const page = file.addWorksheet(name);
    for (const [cell, content] of Object.entries(cells)) page.getCell(cell).value = valueOf(cell, content);
  }
  return new Uint8Array(await file.xlsx.writeBuffer());
}

function valueOf(cell: string, content: Cells[string]): CellValueInput {
  if (typeof content !== "string" || !content.startsWith("=")) return content;
  const formula = content.slice(1);
  if (!formula.includes("_xldudf_")) return { formula, result: STALE };
  return { formula, result: STALE, shareType: "array", ref: cell, isDynamicArray: true };
}

export function copyOf(bytes: Uint8Array, options?: Options): Promise<ClassCopy> {
  return classCopy(bytes, workOutIn(bytes), options);
}

/** The parts of a workbook as text. */
export function partsOf(bytes: Uint8Array): Map<string, string> {
  return new Map(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part, true)]));
}

/** The workbook with some parts changed; one that is not there is added. */
export function patched(bytes: Uint8Array, changes: Readonly<Record<string, (xml: string) => string>>): Uint8Array {
  const parts = unzipSync(bytes);
  for (const [path, change] of Object.entries(changes))
    parts[path] = strToU8(change(path in parts ? strFromU8(parts[path]) : ""));
  return zipSync(parts);
}

export const SHEET = "xl/worksheets/sheet1.xml";

/** The source of a cell in a sheet part. */
export function cellIn(bytes: Uint8Array, cell: string, path = SHEET): string {
  const found = new RegExp(`<(?:\\w+:)?c r="${cell}"[^>]*?(?:/>|>.*?</(?:\\w+:)?c>)`, "s").exec(
    partsOf(bytes).get(path) ?? "",
  );
  if (!found) throw new Error(`there is no cell ${cell}`);
  return found[0];
}

/** The formula of a cell as it reads, without entities. */
export function formulaIn(bytes: Uint8Array, cell: string): string | undefined {
  const found = /<f[^>]*>([^<]*)<\/f>/.exec(cellIn(bytes, cell))?.[1];
  return found
    ?.replace(/&gt;/g, ">")
    .replace(/&lt;/g, "<")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&");
}

/** What the Open XML validator finds wrong with workbooks. */
export function faultsOf(...files: Uint8Array[]): unknown[] {
  const folder = mkdtempSync(join(tmpdir(), "class-copy-"));
  try {
    const paths = files.map((bytes, index) => {
      const path = join(folder, `${index}.xlsx`);
      writeFileSync(path, bytes);
      return path;
    });
    return JSON.parse(
      execFileSync("node", [join(__dirname, "validate.mjs"), ...paths], { encoding: "utf8" }),
    ) as unknown[];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
