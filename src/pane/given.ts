/** The arguments of one call by their names, read as the function reads them. */
import { cellTexts } from "../../functions/blockCells";
import { type Cell, Door, isEmpty, readSystem } from "../../functions/cells";
import type { FilledCell } from "../math/blocks/cellColors";
import type { Inches, System } from "../math/units";
import type { FunctionEntry } from "./catalogue";

/** Fill colors of the cells that arguments name, by the argument's name; as six digits, such as #c0392b. */
export type Fills = Readonly<Partial<Record<string, readonly (readonly (string | null)[])[]>>>;

/** The units in which a call tells its answer; inches where the function would refuse what is given. */
export function systemOf({ parameters }: FunctionEntry, cells: readonly Cell[]): System {
  return systemNamed(cells[parameters.findIndex(({ takes }) => takes.kind === "units")]);
}

/** The units that a cell names; inches where it names none. */
export function systemNamed(units: Cell): System {
  try {
    return readSystem(units);
  } catch {
    return "in";
  }
}

export class GivenArguments {
  readonly system: System;
  readonly door: Door;

  constructor(
    private readonly entry: FunctionEntry,
    private readonly cells: readonly Cell[],
    private readonly fills: Fills = {},
  ) {
    this.system = systemOf(entry, cells);
    this.door = new Door(this.system);
  }

  cell(name: string): Cell {
    return this.cells[this.entry.parameters.findIndex((parameter) => parameter.name === name)] ?? null;
  }

  /** Rows of an argument's cells with their fills. */
  filledCells(name: string): FilledCell[][] {
    const fills = this.fills[name];
    return cellTexts(this.cell(name)).map((row, r) =>
      row.map((text, c) => ({ text, fill: fills?.at(r)?.at(c) ?? null })),
    );
  }

  has(name: string): boolean {
    return !isEmpty(this.cell(name));
  }

  /** A length that must be there, or the usual one. */
  length(name: string, usual?: Inches): Inches {
    return this.door.length(name, this.cell(name), usual);
  }

  /** A length that may be 0. */
  lengthOrZero(name: string, usual: Inches): Inches {
    return this.door.lengthOrZero(name, this.cell(name), usual);
  }

  /** A length that is left to the mathematics where it is left out. */
  lengthIfGiven(name: string): Inches | undefined {
    return this.has(name) ? this.door.lengthOrZero(name, this.cell(name)) : undefined;
  }

  count(name: string, usual?: number): number {
    return this.door.count(name, this.cell(name), usual);
  }

  choice<C extends string>(name: string, choices: readonly C[], usual?: C): C {
    return this.door.choice(name, this.cell(name), choices, usual);
  }

  flag(name: string, usual: boolean): boolean {
    return this.door.flag(name, this.cell(name), usual);
  }

  /** Seam and mark as all pictures take them; what is left out is left to them. */
  get options(): { seam: Inches | undefined; mark: Inches | undefined; system: System } {
    return { seam: this.lengthIfGiven("seam"), mark: this.lengthIfGiven("mark"), system: this.system };
  }
}
