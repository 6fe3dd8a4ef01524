/** What a class handout says, read from the open plan: its quilting formulas, their labels and their answers. */
import { showing } from "../../math/show";
import { fabricUnit, toInches } from "../../math/units";
import type { FunctionEntry } from "../catalogue";
import { isDrawn, pictureOf } from "../pictures";
import type { Picture, SheetPage } from "../sheet";
import { headOf } from "./labels";
import { bestWay, cut, measure, supply } from "./lines";
import { cuttingTable, supplyTable, type Table } from "./tables";
import { type Told, tellAll } from "./told";

export interface Handout {
  title: string;
  /** Such as November 25, 2026. */
  date: string;
  /** What to buy. */
  supplies: Line[];
  /** What to buy for several sizes of the quilt. */
  supplyTables: Table[];
  /** What to cut, in the order of the plan. */
  cutting: Line[];
  cuttingTables: Table[];
  /** What must measure so on the way. */
  measures: Line[];
  assumptions: string[];
  pictures: Picture[];
}

export interface Line {
  what: string;
  amount: string;
  /** The sheet it is from, where several have a part in the list. */
  page?: string;
}

/** Something of a list, and the cell that tells it. */
interface Part<T> {
  told: Told;
  part: T;
}

/** More pictures than these leave no room for the lists. */
const MOST_PICTURES = 3;

/** Pictures that help most in class come first, plain squares last. */
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
const LAST_PICTURES = ["STRIPPATCHES", "CUTSQUARE"];

/** Usual values that several functions name alike, of a binding and of a border. */
const OF_EDGES = /^(?:join|edge|corner|tail|strip|insurance):/;

export async function handoutOf(
  pages: readonly SheetPage[],
  functions: ReadonlyMap<string, FunctionEntry>,
  title: string,
  date: Date,
): Promise<Handout> {
  const told = await tellAll(pages, functions);
  const supplies = unrepeated([...namedApart(linesOf(told, supply)), ...suppliesOfTables(told)]);
  const supplyTables = partsOf(told, supplyTable);
  const cutting = joined(linesOf(told, cut));
  const cuttingTables = partsOf(told, cuttingTable);
  const measures = unrepeated(linesOf(told, measure));
  const used = new Set([supplies, supplyTables, cutting, cuttingTables, measures].flat().map((part) => part.told));
  return {
    title,
    date: date.toLocaleDateString("en-US", { dateStyle: "long" }),
    supplies: withPages(supplies),
    supplyTables: withPages(supplyTables),
    cutting: withPages(cutting),
    cuttingTables: withPages(cuttingTables),
    measures: withPages(measures),
    assumptions: assumptionsOf([...used]),
    pictures: picturesOf(told),
  };
}

function partsOf<T>(told: readonly Told[], read: (told: Told) => T | undefined): Part<T>[] {
  return told.flatMap((cell) => {
    const part = read(cell);
    return part === undefined ? [] : [{ told: cell, part }];
  });
}

function linesOf(told: readonly Told[], read: (told: Told) => string | undefined): Part<Line>[] {
  return partsOf(told, read).map(({ told: cell, part }) => ({ told: cell, part: { what: cell.label, amount: part } }));
}

/** What tables say of amounts: each fabric of a quilt; the backing, where no other cell tells it. */
function suppliesOfTables(told: readonly Told[]): Part<Line>[] {
  return told.flatMap((cell) => {
    const { id, shown, system, label } = cell;
    if (!Array.isArray(shown)) return [];
    const line = (what: string, amount: unknown) =>
      typeof amount === "number"
        ? [{ told: cell, part: { what, amount: showing(system).fabric(toInches(amount, fabricUnit(system))) } }]
        : [];
    if (id === "QUILTFABRICS") return shown.slice(1).flatMap(([fabric, amount]) => line(String(fabric), amount));
    if (id !== "BACKINGPLAN" || told.some((other) => other.id === "BACKINGFABRIC")) return [];
    return line(label, bestWay(shown)[3]);
  });
}

/** Amounts of one row are told apart by the headings of their columns. */
function namedApart(lines: readonly Part<Line>[]): Part<Line>[] {
  return lines.map((line) => {
    const { at, label } = line.told;
    const head = headOf(at);
    const isAlone = lines.filter(({ told }) => isSameRow(told, line.told) && told.label === label).length === 1;
    return isAlone || head === undefined ? line : { ...line, part: { ...line.part, what: `${label}, ${head}` } };
  });
}

/** Strips, pieces and their size of one row stand in one line. */
function joined(lines: readonly Part<Line>[]): Part<Line>[] {
  const rows: Part<Line>[] = [];
  for (const { told, part } of lines) {
    const row = rows.find((other) => isSameRow(other.told, told) && other.part.what === part.what);
    if (!row) rows.push({ told, part: { ...part } });
    else if (!isSaid(row.part.amount, part.amount)) row.part.amount += `; ${part.amount}`;
  }
  return unrepeated(rows);
}

/** Whether a size to cut is named already, as the width of its strips. */
function isSaid(amount: string, size: string): boolean {
  return amount.endsWith(size.replace(/^cut /, "")) && size.startsWith("cut ");
}

function isSameRow(one: Told, other: Told): boolean {
  return one.at.page === other.at.page && one.at.row === other.at.row;
}

function unrepeated(lines: readonly Part<Line>[]): Part<Line>[] {
  const key = ({ told, part }: Part<Line>) => `${told.at.page.name} ${part.what} ${part.amount}`;
  return [...new Map(lines.map((line) => [key(line), line])).values()];
}

/** Names the sheet with each part where several sheets have a part in a list. */
function withPages<T extends Line | Table>(parts: readonly Part<T>[]): T[] {
  const pages = new Set(parts.map(({ told }) => told.at.page));
  return parts.map(({ told, part }) => (pages.size > 1 ? { ...part, page: told.at.page.name } : part));
}

/** What was taken as usual because the maker gave nothing; a mark or a step is no matter for a class. */
function assumptionsOf(told: readonly Told[]): string[] {
  const lines = told.flatMap(({ id, call }) =>
    (call?.outcome.assumptions ?? []).flatMap((line) => {
      const plain = line.replace(/, as usual where none (?:is|are) given$/, "");
      const edge = /^(?:binding|border)/i.exec(id)?.[0].toLowerCase();
      if (plain === line) return [];
      return [
        edge !== undefined && OF_EDGES.test(plain) ? `${edge} ${plain}` : plain.replace(/^width:/, "fabric width:"),
      ];
    }),
  );
  const kept = lines.filter(
    (line) =>
      !/: (?:0 (?:in|cm)|any|none|true|false|best|0|1)$|^(?:mark|step|least|denominator)| in row \d+:/.test(line),
  );
  return [...new Set(kept)].sort();
}

function picturesOf(told: readonly Told[]): Picture[] {
  const rank = (id: string) => {
    const place = PICTURE_ORDER.indexOf(id);
    return place < 0 ? PICTURE_ORDER.length + 1 + LAST_PICTURES.indexOf(id) : place;
  };
  const drawable = told
    .flatMap(({ entry, call }) => (entry && call && isDrawn(entry.id) ? [{ entry, call }] : []))
    .sort((one, other) => rank(one.entry.id) - rank(other.entry.id));
  const pictures = new Map<string, Picture>();
  for (const { entry, call } of drawable) {
    const picture = pictureOf(entry, call.cells);
    if (picture) pictures.set(picture.title, picture);
    if (pictures.size === MOST_PICTURES) break;
  }
  return [...pictures.values()];
}
