/** The printed pages of the planning workbooks, as LibreOffice lays them out, on Letter and on A4. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Sheet, WorkedSheet } from "../../src/workbooks/book";
import { isFormula, nameOf, place, roomOf } from "../../src/workbooks/book";
import { LOOKS, type Look, SIZE } from "../../src/workbooks/look";
import { hasLibreOffice } from "../plain/libreOffice";
import { textWidth } from "./textWidth";
import { names, written } from "./books";

/** Codes of paper in a file, and its size in points. */
const PAPERS = [
  ["Letter", 1, 612],
  ["A4", 9, 595],
] as const;

/** Pages of each workbook; another number is a page that runs over, or an empty one. */
const PAGES: Record<string, number> = {
  "quilt-planner": 9,
  "block-designer": 3,
  "kit-costing": 4,
  "class-planner": 5,
  "pattern-checker": 9,
};

const canPrint = hasLibreOffice() && spawnSync("pdftotext", ["-v"]).status !== null;
if (!canPrint) console.warn("LibreOffice or pdftotext is missing: the pages of the workbooks are not tested.");

(canPrint ? describe : describe.skip).each(names)("%s", (name) => {
  test.each(PAPERS)("prints whole on %s", async (_, code, shortSide) => {
    const { bytes } = await written(name);
    const folder = mkdtempSync(join(tmpdir(), "pages-"));
    try {
      const pages = print(folder, onPaper(bytes, code));
      expect(pages).toHaveLength(PAGES[name]);
      for (const { text, sides } of pages) {
        expect(Math.abs(Math.min(...sides) - shortSide)).toBeLessThan(1);
        expect(text).not.toMatch(/#{3}|#NAME|#VALUE|#N\/A|#REF|Err:/);
        // More than its foot.
        expect(
          text
            .replace(/Page \d+ of \d+/, "")
            .trim()
            .split("\n").length,
        ).toBeGreaterThan(5);
      }
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

describe.each(names)("%s", (name) => {
  test("no text is cut off by the next cell or by the edge of the page", async () => {
    const { book, worked } = await written(name);
    expect(book.sheets.flatMap((sheet) => clipped(sheet, worked[sheet.name]))).toEqual([]);
  });

  test("test squares stand on every page that is cut from, at true size", async () => {
    const { book, bytes } = await written(name);
    const parts = unzipSync(bytes);
    const drawn = Object.keys(parts).filter((path) => /^xl\/drawings\/drawing\d+\.xml$/.test(path));
    const trueSize = book.sheets.filter(({ print }) => print === "true size");
    expect(drawn).toHaveLength(trueSize.length);
    for (const path of drawn) {
      const sides = [...strFromU8(parts[path]).matchAll(/<xdr:ext cx="(\d+)" cy="(\d+)"\/>/g)].map(([, x, y]) => [
        x,
        y,
      ]);
      expect(sides.map(([x, y]) => x === y)).toEqual([true, true]);
      // In units of 1/914400 in: a thousandth of a millimeter is 36 of them.
      expect(Math.abs(Number(sides[0][0]) - 914_400)).toBeLessThan(36);
      expect(Math.abs(Number(sides[1][0]) - 900_000)).toBeLessThan(36);
    }
    for (const { testSquares } of trueSize) expect(testSquares).toBeDefined();
  });
});

/** The file with its values only, which LibreOffice cannot work out, set to a paper. */
function onPaper(bytes: Uint8Array, code: number): Uint8Array {
  const parts = unzipSync(bytes);
  for (const path of Object.keys(parts).filter((path) => path.startsWith("xl/worksheets/sheet"))) {
    const values = strFromU8(parts[path]).replace(/<f[ >][^]*?<\/f>/g, "");
    parts[path] = strToU8(values.replace(/paperSize="\d+"/g, `paperSize="${code}"`));
  }
  return zipSync(parts);
}

function print(folder: string, bytes: Uint8Array): { text: string; sides: number[] }[] {
  writeFileSync(join(folder, "book.xlsx"), bytes);
  const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`;
  spawnSync("soffice", [profile, "--headless", "--convert-to", "pdf", "--outdir", folder, join(folder, "book.xlsx")]);
  const file = join(folder, "book.pdf");
  spawnSync("pdftotext", ["-layout", file, join(folder, "book.txt")]);
  const texts = readFileSync(join(folder, "book.txt"), "utf8").split("\f").slice(0, -1);
  const { stdout } = spawnSync("pdfinfo", ["-f", "1", "-l", "99", file], { encoding: "utf8" });
  const sizes = [...stdout.matchAll(/size:\s+([\d.]+) x ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
  return texts.map((text, index) => ({ text, sides: sizes[index] }));
}

/** Texts that need more room than they have: the width of their cell, and of the free cells beside it. */
function clipped(sheet: Sheet, { values }: WorkedSheet): string[] {
  const looks = new Map<string, Look>();
  const texts = new Map<string, string>();
  for (const entry of sheet.entries) {
    for (const { cell, style } of roomOf(entry)) {
      looks.set(cell, LOOKS[style]);
      if (typeof values[cell] === "string") texts.set(cell, values[cell]);
    }
  }
  for (const { cell, content, style, room } of sheet.entries) {
    if (!room) looks.set(cell, LOOKS[style]);
    const shown = isFormula(content) ? values[cell] : content;
    if (typeof shown === "string" && shown !== "") texts.set(cell, shown);
  }
  const width = (column: number) => sheet.widths[column] * 7 + 5;
  return [...texts].flatMap(([cell, text]) => {
    const look = looks.get(cell) ?? {};
    const { row, column } = place(cell);
    let room = width(column) - (look.indent ? 12 : 0) - 4;
    // Answers are to stay in their box; other texts may run over free cells.
    if (look.wrap) room *= 2;
    else if (look.align !== "right" && (look.border !== "box" || look.unlocked)) {
      for (let next = column + 1; next < sheet.widths.length && !texts.has(nameOf(row, next)); next++) {
        const value = values[nameOf(row, next)];
        if (
          typeof value === "number" ||
          sheet.entries.some((entry) => entry.cell === nameOf(row, next) && typeof entry.content === "number")
        )
          break;
        room += width(next);
      }
    }
    const needed = textWidth(text, look.size ?? SIZE, look.bold ?? false);
    return needed > room ? [`${sheet.name}!${cell} ${needed.toFixed(0)} > ${room.toFixed(0)}: ${text}`] : [];
  });
}
