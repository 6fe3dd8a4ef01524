/** LibreOffice without a screen, made to work out a whole workbook anew. */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Input, Shown } from "./engines";

/** Always work out formulas anew when a file is opened; it would show the stored values otherwise. */
const SETTINGS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** What each formula shows before it is worked out; none of it may be left. */
const POISON = 987654321;

/** Whether LibreOffice is here. In a build it has to be. */
export function hasLibreOffice(): boolean {
  const found = spawnSync("soffice", ["--version"]).status === 0;
  if (!found && process.env.CI) throw new Error("LibreOffice is missing; install libreoffice-calc-nogui");
  return found;
}

/** Works out a sheet in LibreOffice, through an .xlsx file and back. */
export async function recalculateInLibreOffice(rows: Input[][]): Promise<Shown[][]> {
  const folder = mkdtempSync(join(tmpdir(), "plain-"));
  try {
    const { Workbook } = await import("@cj-tech-master/excelts");
    const book = new Workbook();
    const sheet = book.addWorksheet("Sheet1");
    rows.forEach((row, r) => {
      row.forEach((input, c) => {
        if (input === null) return;
        const isFormula = typeof input === "string" && input.startsWith("=");
        sheet.getCell(r + 1, c + 1).value = isFormula ? { formula: input.slice(1), result: POISON } : input;
      });
    });
    const file = join(folder, "book.xlsx");
    writeFileSync(file, Buffer.from(await book.xlsx.writeBuffer()));
    convert(folder, file);
    const back = new Workbook();
    await back.xlsx.load(readFileSync(join(folder, "out", "book.xlsx")));
    return rows.map((row, r) => row.map((_, c) => shown(back.worksheets[0].getCell(r + 1, c + 1).value)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Works out workbooks anew; they are in the folder "out" afterwards. */
export function convert(folder: string, ...files: string[]): void {
  const profile = join(folder, "profile");
  mkdirSync(join(profile, "user"), { recursive: true });
  writeFileSync(join(profile, "user", "registrymodifications.xcu"), SETTINGS);
  const run = spawnSync(
    "soffice",
    [
      `-env:UserInstallation=${pathToFileURL(profile).href}`,
      "--headless",
      "--convert-to",
      "xlsx",
      "--outdir",
      join(folder, "out"),
      ...files,
    ],
    { encoding: "utf8", timeout: 120_000 },
  );
  if (run.status !== 0) throw run.error ?? new Error(run.stderr);
}

/** A value as the file holds it: a formula with its result, an error, or plain. */
export function shown(value: unknown): Shown {
  if (typeof value === "number" || typeof value === "string") return value;
  if (typeof value === "boolean") return String(value).toUpperCase();
  const { result, error } = (value ?? {}) as { result?: unknown; error?: string };
  return error ?? (result === undefined ? "" : shown(result));
}
