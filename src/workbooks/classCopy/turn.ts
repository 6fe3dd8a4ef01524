/** Turns the cells that call a QUILT function, or read what one fills: each into its plain twin, or else into its value. */
import { mentionsQuilt, translate, type Turned } from "../translate";
import { type Answer, type Asked, inFile, isError, isSame, type Value, type WorkOut } from "./answers";
import { ownFormula, readsSpilled, withAreas, worksWithSeveral } from "./formulas";
import { type Area, cellName, holds, LAST_COLUMN, LAST_ROW, type Place } from "./places";
import type { KeptSpot, Spot, TurnedSpot } from "./report";
import { type FormulaCell, placesOf, type SheetPart } from "./sheet";

/** One sheet of the workbook whose cells may have to be changed. */
export interface Sheet {
  readonly name: string;
  readonly part: SheetPart;
}

/** What became of formulas; added to as they are turned. */
export interface Outcome {
  readonly turned: TurnedSpot[];
  readonly values: KeptSpot[];
  readonly left: KeptSpot[];
}

/** A formula that is being turned. */
interface Work {
  readonly sheet: Sheet;
  readonly cell: FormulaCell;
  /** As it reads in its cell. */
  readonly formula: string;
  readonly turned: Turned;
  /** Its twin, one formula for each cell that it fills. */
  readonly twins: { place: Place; formula: string }[];
}

/** Larger areas of a single formula are no part of a planning workbook. */
const LARGEST_AREA = 10_000;

/** @param rangeNames names in the workbook, in lower case, that stand for more than one cell */
export async function turnCells(
  sheets: readonly Sheet[],
  rangeNames: ReadonlySet<string>,
  workOut: WorkOut,
  outcome: Outcome,
): Promise<void> {
  const works = worksOf(sheets, rangeNames);
  if (works.length === 0) return;
  const asked = works.flatMap(askedOf);
  const answers = await workOut(asked);
  let at = 0;
  for (const work of works) {
    const [own, ...twins] = answers.slice(at, at + 1 + work.twins.length);
    at += 1 + work.twins.length;
    new Turning(work, outcome, rangeNames).decide(own, twins);
  }
}

function worksOf(sheets: readonly Sheet[], rangeNames: ReadonlySet<string>): Work[] {
  const cells = sheets.flatMap((sheet) => sheet.part.formulas().map((cell) => ({ sheet, cell })));
  const tables = new Map<string, Area>();
  for (const { sheet, cell } of cells) {
    if (cell.area && mentionsQuilt(cell.formula))
      tables.set(`${sheet.name.toLowerCase()}!${cellName(cell)}`, cell.area);
  }
  const areaOf = (sheet: string, place: Place) => tables.get(`${sheet}!${cellName(place)}`);
  return cells.flatMap(({ sheet, cell }): Work[] => {
    if (!mentionsQuilt(cell.formula) && !readsSpilled(cell.formula)) return [];
    const own = ownFormula(cell);
    const formula = withAreas(own, sheet.name, areaOf);
    const turned = translate(formula, rangeNames);
    const isOurs = turned.turned.length + turned.left.length > 0;
    if (!isOurs && formula === own && !cell.isShared) return [];
    return [{ sheet, cell, formula, turned, twins: twinsOf(cell, turned) }];
  });
}

function twinsOf({ row, column }: FormulaCell, { formula, left, table }: Turned): Work["twins"] {
  if (left.length > 0) return [];
  return (table ?? [[formula]]).flatMap((line, down) =>
    line.map((twin, across) => ({ place: { row: row + down, column: column + across }, formula: twin })),
  );
}

function askedOf({ sheet, cell, formula, twins }: Work): Asked[] {
  const one = (place: Place, text: string, isTwin: boolean) => ({
    sheet: sheet.name,
    cell: cellName(place),
    formula: `=${text}`,
    isTwin,
  });
  const own = { ...one(cell, formula, false), area: cell.area ?? { first: cell, last: cell } };
  return [own, ...twins.map((twin) => one(twin.place, twin.formula, true))];
}

class Turning {
  private readonly spot: Spot;
  private readonly isTable: boolean;

  constructor(
    private readonly work: Work,
    private readonly outcome: Outcome,
    private readonly rangeNames: ReadonlySet<string>,
  ) {
    this.spot = { sheet: work.sheet.name, cell: cellName(work.cell) };
    this.isTable = work.turned.table !== undefined;
  }

  /** @param own what the formula comes to; @param twins what its twins come to, undefined where that is not known */
  decide(own: Answer | undefined, twins: readonly (Answer | undefined)[]): void {
    const { cell, turned } = this.work;
    if (cell.area && sizeOf(cell.area) > LARGEST_AREA) this.leave("it fills more cells than a table of a plan");
    else if (own === undefined) {
      if (turned.left.length === 0 && !this.isTable) this.turn();
      else this.leave(`${whyOf(turned) ?? "it is a table"}, and it could not be worked out here`);
    } else {
      const why = whyOf(turned) ?? this.whyDifferent(own, twins);
      const places = this.placesFor(own);
      if (!this.hasRoom(places)) this.showNoRoom();
      else if (why !== undefined) this.keep(places, why);
      else if (this.isTable) {
        const all = cell.isDynamic
          ? this.work.twins.map(({ place }) => ({ place, value: this.ownAt(own, place) }))
          : places;
        if (this.hasRoom(all)) this.turnTable(all);
        else this.keep(places, "its table has no room to grow");
      } else this.turn(own);
    }
  }

  /** Why the twin is not to be trusted here; undefined where it shows what the function shows. */
  private whyDifferent(own: Answer, twins: readonly (Answer | undefined)[]): string | undefined {
    const { turned } = this.work;
    if (turned.table && (turned.table.length < own.length || turned.table[0].length < own[0].length))
      return "its table has other rows with other numbers";
    const isOne = !turned.table;
    for (const [index, twin] of twins.entries()) {
      const wanted: Answer = isOne ? own : [[this.ownAt(own, this.work.twins[index].place)]];
      if (twin === undefined || isSame(wanted, twin) || staysEmpty(wanted, twin)) continue;
      return difference(wanted[0][0], twin[0][0]);
    }
    return undefined;
  }

  /** What the function shows where a formula of the twin stands: a smaller table leaves the others empty. */
  private ownAt(own: Answer, { row, column }: Place): Value {
    const { cell } = this.work;
    return own.at(row - cell.row)?.at(column - cell.column) ?? "";
  }

  /**
   * The places that an answer fills. A formula that is not dynamic fills its area, or just its cell, whatever it comes to; over
   * an area it repeats a single row, column or value.
   */
  private placesFor(own: Answer): { place: Place; value: Value }[] {
    const { cell } = this.work;
    if (cell.isDynamic) return placesOf(cell, own);
    const area = cell.area ?? { first: cell, last: cell };
    const answer = Array.from({ length: area.last.row - area.first.row + 1 }, (_, row) =>
      Array.from({ length: area.last.column - area.first.column + 1 }, (_, column): Value => {
        const line = own.length === 1 ? own[0] : own.at(row);
        return (line?.length === 1 ? line[0] : line?.[column]) ?? { error: "#N/A" };
      }),
    );
    return placesOf(cell, answer);
  }

  private hasRoom(places: readonly { place: Place }[]): boolean {
    const { cell, sheet } = this.work;
    return places.every(({ place }) => {
      if (place.row > LAST_ROW || place.column > LAST_COLUMN) return false;
      const isOurs = (cell.row === place.row && cell.column === place.column) || (cell.area && holds(cell.area, place));
      return isOurs || !sheet.part.isFilled(place);
    });
  }

  private turn(own?: Answer): void {
    const { cell, sheet, formula, turned } = this.work;
    const isOne = own?.length === 1 && own[0].length === 1;
    const isSeveral = own !== undefined && !isOne;
    const asItWas =
      cell.area !== undefined && (!cell.isDynamic || isSeveral || worksWithSeveral(formula, this.rangeNames));
    const value = own && inFile(own[0][0]);
    sheet.part.put(cell, { formula: turned.formula, asItWas, ...(value !== undefined && { value }) });
    this.turned(turned.formula);
  }

  private turnTable(places: readonly { place: Place; value: Value }[]): void {
    const { sheet, twins, turned } = this.work;
    this.clear();
    const formulas = new Map(twins.map(({ place, formula }) => [cellName(place), formula]));
    for (const { place, value } of places) {
      const formula = formulas.get(cellName(place));
      sheet.part.put(place, { value: inFile(value), ...(formula !== undefined && { formula, asItWas: false }) });
    }
    this.turned(turned.formula);
  }

  private turned(now: string): void {
    const { cell, formula, turned } = this.work;
    if (turned.turned.length === 0 && formula === ownFormula(cell)) return;
    this.outcome.turned.push({ ...this.spot, functions: turned.turned, was: formula, now });
  }

  private keep(places: readonly { place: Place; value: Value }[], why: string): void {
    this.clear();
    for (const { place, value } of places) this.work.sheet.part.put(place, { value: inFile(value) });
    const [{ value }] = places;
    const says = isError(value) ? `${why}; it shows ${value.error}` : why;
    this.outcome.values.push(this.kept(says));
  }

  private showNoRoom(): void {
    this.clear();
    this.work.sheet.part.put(this.work.cell, { value: { error: "#VALUE!" } });
    this.outcome.left.push(this.kept("its table needs room: empty the cells below it and to its right"));
  }

  /** A formula stays; where it is shared it is written out, since the others that share it change. */
  private leave(why: string): void {
    const { cell, formula, sheet } = this.work;
    if (cell.isShared) sheet.part.put(cell, { formula, asItWas: false });
    this.outcome.left.push(this.kept(why));
  }

  private kept(why: string): KeptSpot {
    const { formula, turned } = this.work;
    return { ...this.spot, functions: [...turned.turned, ...turned.left.map(({ id }) => id)], was: formula, why };
  }

  /** Empties what the formula filled before. */
  private clear(): void {
    const { area } = this.work.cell;
    if (!area) return;
    for (const place of this.work.sheet.part.filledIn(area)) this.work.sheet.part.put(place, null);
  }
}

function sizeOf({ first, last }: Area): number {
  return (last.row - first.row + 1) * (last.column - first.column + 1);
}

function whyOf({ left }: Turned): string | undefined {
  return left.length > 0 ? [...new Set(left.map(({ why }) => why))].join("; ") : undefined;
}

/** A twin may stay empty where something is still to be filled in and its function says so by an error. */
function staysEmpty(own: Answer, twin: Answer): boolean {
  return own.flat().every(isError) && twin.flat().every((value) => value === "");
}

function difference(own: Value, twin: Value): string {
  if (isError(twin))
    return `a plain formula shows ${twin.error} here, most likely because it reads a length that is text, such as 2 1/2 or 1 yd`;
  const text = (value: Value) => (isError(value) ? value.error : String(value));
  return `a plain formula would show ${text(twin)} here, and the function shows ${text(own)}`;
}
