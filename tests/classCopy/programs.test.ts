/** Class copies in two spreadsheet programs that are none of ours: the values of the functions, also where inputs change. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Workbook } from "@cj-tech-master/excelts";
import { workOutIn } from "../../src/practice/workOut";
import type { Value } from "../../src/workbooks/classCopy";
import { type Input, isError, recalculate, type Shown } from "../plain/engines";
import { convert, hasLibreOffice, shown } from "../plain/libreOffice";
import { type Cells, copyOf, faultsOf, partsOf, patched, SHEET, STALE, workbook } from "./workbooks";

/** Random inputs of each kind, the first as the maker has them. */
const RUNS = 12;

/** The maker's inputs, and what else they may be. */
const INPUTS: Record<string, (random: () => number) => number> = {
  B1: (random) => 1 + Math.round(random() * 80) / 8,
  B2: (random) => 1 + Math.round(random() * 12),
  B3: (random) => 1 + Math.round(random() * 12),
  B4: (random) => 36 + Math.round(random() * 60) / 2,
  B5: (random) => Math.round(random() * 24) / 8,
  B6: (random) => Math.round(random() * 40) / 8 - 1,
};

/** A plan whose formulas read each other, inputs and text; the last two have no twin, or fill several cells. */
const FORMULAS: Cells = {
  D1: "=_xldudf_QUILT_CUTSQUARE(B1)",
  D2: "=_xldudf_QUILT_CUTHALFSQUARE(D1,2)",
  D3: "=_xldudf_QUILT_STRIPSNEEDED(B2*B3,D1,B4)",
  D4: "=_xldudf_QUILT_LENGTHTEXT(D2)",
  D5: '="Cut "&_xldudf_QUILT_LENGTHTEXT(_xldudf_QUILT_CUTSQUARE(B1+B6))&" of "&D3',
  D6: "=IF(B6>0,_xldudf_QUILT_CUTQUARTERSQUARE(B6,,,$B$7),0)",
  D7: "=_xlfn.SINGLE(_xldudf_QUILT_LENGTHMARK(B6,0.25))",
  D8: "=SUM(D1:D3)*2",
  D10: "=_xldudf_QUILT_TOPSIZE(B2,B3,B1,B5)",
  D11: "=_xldudf_QUILT_BATTINGSIZE(D10,E10)",
  D12: "=_xldudf_QUILT_BINDINGSTRIPS(D10,E10)",
};

function inputs(run: number): Cells {
  let state = run * 7919 + 1;
  const random = () => (state = (state * 48271) % 2147483647) / 2147483647;
  const base = { B1: 3, B2: 4, B3: 5, B4: 42, B5: 1, B6: 2.5 };
  const changed = Object.fromEntries(Object.entries(INPUTS).map(([cell, input]) => [cell, input(random)]));
  return { ...(run === 0 ? base : changed), B7: run % 3 === 2 ? "cm" : "in" };
}

interface Run {
  /** What the functions come to, by cell. */
  wanted: Map<string, Value>;
  /** The one class copy, with the inputs of the run in their cells. */
  copy: Uint8Array;
}

let runs: Run[];

beforeAll(async () => {
  const bytes = await workbook({ Plan: { ...inputs(0), ...FORMULAS } });
  const { bytes: copy, report } = await copyOf(bytes);
  expect([report.values, report.left]).toEqual([[], []]);
  expect(faultsOf(copy)).toEqual([]);
  runs = await Promise.all(
    Array.from({ length: RUNS }, async (_, run): Promise<Run> => {
      const wanted = await wantedIn(await workbook({ Plan: { ...inputs(run), ...FORMULAS } }));
      return { wanted, copy: poisoned(withInputs(copy, inputs(run))) };
    }),
  );
}, 60_000);

/** What each formula comes to, worked out with the functions themselves. */
async function wantedIn(bytes: Uint8Array): Promise<Map<string, Value>> {
  const cells = Object.entries(FORMULAS) as [string, string][];
  const asked = cells.map(([cell, formula]) => ({ sheet: "Plan", cell, formula, isTwin: false }));
  const answers = await workOutIn(bytes)(asked);
  return new Map(
    cells.flatMap(([cell], index) =>
      answers[index]![0].map((value, across): [string, Value] => [across === 0 ? cell : cell.replace("D", "E"), value]),
    ),
  );
}

/** The copy with other numbers in the cells of the inputs. */
function withInputs(copy: Uint8Array, cells: Cells): Uint8Array {
  return patched(copy, {
    [SHEET]: (xml) =>
      Object.entries(cells).reduce((text, [cell, value]) => {
        const content =
          typeof value === "string" ? ` t="inlineStr"><is><t>${value}</t></is>` : `><v>${String(value)}</v>`;
        return text.replace(new RegExp(`<c r="${cell}"[^>]*>.*?</c>`), `<c r="${cell}"${content}</c>`);
      }, xml),
  });
}

/** The copy with a wrong value in every formula's cell. */
function poisoned(copy: Uint8Array): Uint8Array {
  return patched(copy, {
    [SHEET]: (xml) =>
      xml.replace(/<c r="(\w+)"[^>]*>(<f>[^<]*<\/f>)<v>[^<]*<\/v><\/c>/g, `<c r="$1">$2<v>${STALE}</v></c>`),
  });
}

function agrees(is: Shown | undefined, wanted: Value): boolean {
  if (typeof wanted === "object") return isError(is);
  if (typeof wanted === "number")
    return typeof is === "number" && Math.abs(is - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));
  return is === (typeof wanted === "boolean" ? String(wanted).toUpperCase() : wanted);
}

test("the functions come to values, and to others where inputs change", () => {
  const all = runs.flatMap(({ wanted }) => [...wanted.values()]);
  expect(all.filter((value) => typeof value !== "object").length).toBeGreaterThan(all.length * 0.8);
  expect(new Set(runs.map(({ wanted }) => JSON.stringify([...wanted]))).size).toBe(RUNS);
});

test("IronCalc shows what the functions come to", async () => {
  const sheets = await Promise.all(runs.map(async ({ copy }) => rowsOf(copy)));
  recalculate(sheets).forEach((rows, run) => {
    for (const [cell, value] of runs[run].wanted) {
      const [column, row] = [cell.charCodeAt(0) - 65, Number(cell.slice(1)) - 1];
      expect([run, cell, rows[row][column], value]).toEqual([run, cell, expect.anything(), value]);
      if (!agrees(rows[row][column], value))
        throw new Error(`${run} ${cell}: ${rows[row][column]}, not ${JSON.stringify(value)}`);
    }
  });
});

/** The cells of a workbook as they are typed. */
async function rowsOf(bytes: Uint8Array): Promise<Input[][]> {
  const book = new Workbook();
  await book.xlsx.load(bytes);
  const page = book.worksheets[0];
  return Array.from({ length: 12 }, (_, row) =>
    Array.from({ length: 5 }, (_, column): Input => {
      const { formula, value } = page.getCell(row + 1, column + 1);
      if (formula) return `=${formula}`;
      return typeof value === "number" || typeof value === "string" ? value : null;
    }),
  );
}

(hasLibreOffice() ? describe : describe.skip)("LibreOffice", () => {
  let folder: string;

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "class-copy-"));
  });

  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  test("shows what the functions come to", async () => {
    const files = runs.map(({ copy }, run) => {
      const file = join(folder, `run${run}.xlsx`);
      writeFileSync(file, copy);
      return file;
    });
    convert(folder, ...files);
    for (const [run, { wanted }] of runs.entries()) {
      const back = new Workbook();
      await back.xlsx.load(readFileSync(join(folder, "out", `run${run}.xlsx`)));
      for (const [cell, value] of wanted) {
        const is = shown(back.worksheets[0].getCell(cell).value);
        if (!agrees(is, value)) throw new Error(`${run} ${cell}: ${is}, not ${JSON.stringify(value)}`);
      }
    }
  }, 60_000);

  test("writes workbooks that are turned, too, everything else as it was", async () => {
    const file = join(folder, "made.xlsx");
    const notes = { A1: "Kept & <safe>", B2: "=1/3", C3: true };
    writeFileSync(file, await workbook({ Plan: { ...inputs(0), ...FORMULAS }, Notes: notes }));
    convert(folder, file);
    const made = new Uint8Array(readFileSync(join(folder, "out", "made.xlsx")));
    const { bytes: copy, report } = await copyOf(made);
    expect(report.turned.length).toBeGreaterThan(8);
    const [before, after] = [partsOf(made), partsOf(copy)];
    const changed = [...after].filter(([path, part]) => before.get(path) !== part).map(([path]) => path);
    expect(changed.sort()).toEqual(["xl/workbook.xml", SHEET]);
    const others = (xml: string) => xml.replace(/<c r="[DE]\d+"[^>]*>.*?<\/c>/g, "");
    expect(others(after.get(SHEET)!)).toBe(others(before.get(SHEET)!));
    expect(after.get(SHEET)).not.toMatch(/QUILT/i);
  }, 60_000);
});
