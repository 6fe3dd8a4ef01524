/** What a class handout says, read from the open plan: its quilting formulas, their labels and their answers. */
import { showing } from "../math/show";
import { fabricUnit, type System, toInches } from "../math/units";
import { type Answered, isAnswered } from "./answer";
import { cellText } from "./answerView";
import { type Call, readCalls } from "./calls";
import type { FunctionEntry, Shown } from "./catalogue";
import { localText } from "./decimals";
import { valuesIn } from "./pages";
import { isDrawn, pictureOf } from "./pictures";
import type { Picture, SheetPage } from "./sheet";
import { sizesOf } from "./sizes";

export interface Handout {
  title: string;
  /** Such as November 25, 2026. */
  date: string;
  /** What to buy. */
  supplies: Line[];
  /** What to cut, in the order of the plan. */
  cutting: Cutting[];
  /** What the pieces must measure on the way. */
  measures: Line[];
  assumptions: string[];
  pictures: Picture[];
}

export interface Line {
  what: string;
  amount: string;
}

/** One size with its count, or a table that a formula fills. */
export type Cutting = Line | { what: string; rows: Shown[][] };

/** Amounts in yards or meters. */
const FABRIC_TO_BUY = /FABRIC$/;
const OTHER_TO_BUY = new Set(["BATTINGSIZE", "BATTINGPACK", "PANELSNEEDED", "BOLTSNEEDED", "QUILTFABRICS"]);
const SIZES_TO_CUT = /^CUT(?!CHECK)/;
const COUNTS_TO_CUT = new Set([
  "STRIPSNEEDED",
  "STRIPSETS",
  "BORDERSTRIPS",
  "BINDINGSTRIPS",
  "PLANSTRIPS",
  "BACKINGPANELS",
]);
const TABLES_TO_CUT = new Set(["PLAN", "TOPPIECES", "BORDERLENGTHS", "BORDERFIT", "QUILTPIECES", "BLOCKPIECES"]);
const TO_MEASURE = new Set([
  "UNITMADE",
  "TOPSIZE",
  "BORDERSIZE",
  "BEDSIZE",
  "STRIPSETSIZE",
  "CHECKROW",
  "BORDERMEASURED",
]);

/** More pictures than these leave no room for the lists. */
const MOST_PICTURES = 3;

/** Pictures that help most in class come first. */
const PICTURE_ORDER = [
  "QUILTPIECES",
  "QUILTFABRICS",
  "TOPSIZE",
  "TOPPIECES",
  "BLOCKPIECES",
  "BORDERFIT",
  "PLAN",
  "CUTHALFSQUARE",
];

/** A cell of the plan with a quilting formula. */
interface Told {
  label: string;
  call: Call & { cells: unknown[]; outcome: Answered };
  entry: FunctionEntry;
  system: System;
  /** What the cell shows; of a table all of it. */
  shown: Shown | Shown[][];
}

export async function handoutOf(
  pages: readonly SheetPage[],
  functions: ReadonlyMap<string, FunctionEntry>,
  title: string,
  date: Date,
): Promise<Handout> {
  const told = await tellAll(pages, functions);
  return {
    title,
    date: date.toLocaleDateString("en-US", { dateStyle: "long" }),
    supplies: told.flatMap(supply),
    cutting: told.flatMap(cutting),
    measures: unrepeated(told.flatMap(measure)),
    assumptions: assumptionsOf(told),
    pictures: picturesOf(told),
  };
}

async function tellAll(pages: readonly SheetPage[], functions: ReadonlyMap<string, FunctionEntry>): Promise<Told[]> {
  const told: Told[] = [];
  for (const page of pages) {
    for (const [row, line] of page.formulas.entries()) {
      for (const [column, formula] of line.entries()) {
        if (!/QUILT[._]/i.test(formula)) continue;
        const calls = await readCalls(formula, (reference) => Promise.resolve(valuesIn(pages, reference, page.name)));
        const call = typeof calls === "string" ? undefined : calls.at(-1);
        const entry = functions.get(call?.id ?? "");
        if (!call?.cells || !entry || !isAnswered(call.outcome)) continue;
        const { cells, outcome } = call;
        const value = call.whole ? outcome.value : (page.values[row][column] ?? "");
        if (value === "" || (typeof value === "string" && value.startsWith("#"))) continue;
        const units = cells[entry.parameters.findIndex(({ takes }) => takes.kind === "units")];
        told.push({
          label: labelOf(page, row, column) ?? entry.description.replace(/[,.:;].*$/s, ""),
          call: { ...call, cells, outcome },
          entry,
          system: typeof units === "string" && /^\s*c/i.test(units) ? "cm" : "in",
          shown: value,
        });
      }
    }
  }
  return told;
}

/** The nearest words to the left of a cell, or else above it. */
function labelOf({ values, formulas }: SheetPage, row: number, column: number): string | undefined {
  const isLabel = (r: number, c: number) => {
    const value = values[r][c];
    return (
      typeof value === "string" &&
      value.trim().length > 2 &&
      formulas[r][c] === "" &&
      !/^(?:in|cm|yd|m)$/i.test(value.trim())
    );
  };
  for (let left = column - 1; left >= 0; left -= 1) if (isLabel(row, left)) return String(values[row][left]).trim();
  for (let above = row - 1; above >= Math.max(0, row - 2); above -= 1) {
    if (isLabel(above, column)) return String(values[above][column]).trim();
  }
  return undefined;
}

function supply({ label, entry: { id }, system, shown }: Told): Line[] {
  if (FABRIC_TO_BUY.test(id) && typeof shown === "number") {
    return [{ what: label, amount: showing(system).fabric(toInches(shown, fabricUnit(system))) }];
  }
  if (!OTHER_TO_BUY.has(id)) return [];
  if (id === "QUILTFABRICS" && Array.isArray(shown)) {
    return shown
      .slice(1)
      .flatMap(([fabric, amount]) =>
        typeof amount === "number"
          ? [{ what: String(fabric), amount: showing(system).fabric(toInches(amount, fabricUnit(system))) }]
          : [],
      );
  }
  return [{ what: label, amount: sizeText(shown, system, id === "BATTINGSIZE" || id === "BATTINGPACK") }];
}

function cutting({ label, entry: { id }, system, shown }: Told): Cutting[] {
  if (Array.isArray(shown) && shown.length > 1 && (TABLES_TO_CUT.has(id) || SIZES_TO_CUT.test(id))) {
    return [{ what: label, rows: shown.map((row) => row.map((cell) => ruled(cell, system))) }];
  }
  if (SIZES_TO_CUT.test(id)) return [{ what: label, amount: `cut ${sizeText(shown, system, true)}` }];
  if (COUNTS_TO_CUT.has(id) && typeof shown === "number") {
    const piece = id === "BACKINGPANELS" ? "panel" : id === "STRIPSETS" ? "strip set" : "strip";
    return [{ what: label, amount: `${cellText(shown)} ${piece}${shown === 1 ? "" : "s"}` }];
  }
  return [];
}

function measure({ label, entry, call, system, shown }: Told): Line[] {
  if (TO_MEASURE.has(entry.id)) return [{ what: label, amount: sizeText(shown, system, true) }];
  const sizes = sizesOf(entry, call.cells, call.outcome.value);
  if (!sizes?.unfinished || !sizes.finished) return [];
  return [{ what: label, amount: `${sizes.unfinished} sewn and trimmed, ${sizes.finished} finished` }];
}

/** The names and sizes of one row, lengths as a ruler reads. */
function sizeText(shown: Shown | Shown[][], system: System, lengths: boolean): string {
  const show = showing(system);
  const word = (cell: Shown) =>
    typeof cell === "number" && lengths ? show.length(toInches(cell, system)) : cellText(cell);
  if (!Array.isArray(shown)) return word(shown);
  return (shown.at(0) ?? [])
    .filter((cell) => cell !== "")
    .map(word)
    .join(" × ");
}

/** A number of a table as a ruler reads, without its unit. */
function ruled(cell: Shown, system: System): Shown {
  if (typeof cell !== "number" || Number.isInteger(cell)) return cell;
  return localText(showing(system).length(toInches(cell, system))).replace(/ (?:in|cm)$/, "");
}

/** What is the same in the whole plan stands once; a mark or a step is no matter for a class. */
function assumptionsOf(told: readonly Told[]): string[] {
  const lines = told.flatMap(({ call }) => call.outcome.assumptions);
  const plain = lines.map((line) => line.replace(/, as usual where none is given$/, ""));
  const kept = plain.filter(
    (line) => !/: (?:0 (?:in|cm)|any|none|true|false|best|1)$|^(?:mark|step|row|least|denominator)/.test(line),
  );
  return [...new Set(kept.map((line) => line.replace(/^width:/, "fabric width:")))].sort();
}

function picturesOf(told: readonly Told[]): Picture[] {
  const rank = (id: string) => {
    const place = PICTURE_ORDER.indexOf(id);
    return place < 0 ? PICTURE_ORDER.length : place;
  };
  const drawable = told
    .filter(({ entry }) => isDrawn(entry.id))
    .sort((one, other) => rank(one.entry.id) - rank(other.entry.id));
  const pictures = new Map<string, Picture>();
  for (const { entry, call } of drawable) {
    const picture = pictureOf(entry, call.cells);
    if (picture) pictures.set(picture.title, picture);
    if (pictures.size === MOST_PICTURES) break;
  }
  return [...pictures.values()];
}

function unrepeated(lines: readonly Line[]): Line[] {
  return [...new Map(lines.map((line) => [`${line.what} ${line.amount}`, line])).values()];
}
