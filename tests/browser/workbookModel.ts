/**
 * Stands in for the object model that the spreadsheet program offers to the pane. As in the program, what is read must have
 * been loaded and synchronized before, what is written counts from the next synchronization on, and a formula that fills a
 * table is known to the cells of the table.
 */
import type { Page } from "playwright-core";

export interface ModelCell {
  formula?: string;
  value: string | number;
  spill?: string;
  /** Fill color, such as #C0392B. */
  fill?: string;
}
export type ModelCells = Partial<Record<string, ModelCell>>;

declare global {
  interface Window {
    /** The open workbook, for the test to look at and to change as a maker would. */
    model: {
      cells: ModelCells;
      images: Record<string, unknown>[];
      select: (address: string) => void;
    };
  }
}

/** Prepares a page, before it goes anywhere. */
export async function withWorkbook(page: Page, cells: ModelCells, decimalSeparator = "."): Promise<void> {
  await page.addInitScript(playWorkbook, { cells, decimalSeparator });
}

/** Runs in the page before its own scripts, so it must stand by itself. */
function playWorkbook({ cells, decimalSeparator }: { cells: ModelCells; decimalSeparator: string }): void {
  const PAGE = "Plan";
  let selection = "A1";
  const listeners: (() => Promise<void>)[] = [];
  const images: Record<string, unknown>[] = [];
  let waiting: (() => void)[] = [];

  const corner = (name: string) => {
    const [, letters, digits] = /^([A-Z]+)(\d+)$/.exec(name)!;
    let column = 0;
    for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
    return { row: Number(digits) - 1, column: column - 1 };
  };
  const nameOf = (row: number, column: number) => `${String.fromCharCode(65 + column)}${row + 1}`;
  const spilled = (name: string) =>
    Object.entries(cells).find(
      ([home, cell]) => cell?.spill && home !== name && names(cell.spill).flat().includes(name),
    )?.[0];
  function names(address: string): string[][] {
    const [first, last = first] = address.split(":").map(corner);
    return Array.from({ length: last.row - first.row + 1 }, (_, row) =>
      Array.from({ length: last.column - first.column + 1 }, (_c, column) =>
        nameOf(first.row + row, first.column + column),
      ),
    );
  }

  /** Reading what was not loaded is an error, as in the program. */
  function guarded<T extends object>(target: T, readable: readonly string[]): T {
    const loaded = new Set<string>();
    return new Proxy(target, {
      get(object, key) {
        const property = String(key);
        if (property === "load") {
          return (list: string) => {
            for (const one of list.split(",")) {
              if (!readable.includes(one)) throw new Error(`${one} cannot be loaded`);
              waiting.push(() => loaded.add(one));
            }
          };
        }
        if (readable.includes(property) && !loaded.has(property)) {
          throw Object.assign(new Error(`${property} was read before it was loaded`), { code: "PropertyNotLoaded" });
        }
        return Reflect.get(object, key) as unknown;
      },
      set(object, key, value) {
        waiting.push(() => Reflect.set(object, key, value));
        return true;
      },
    });
  }

  const NO_OBJECT = () => guarded({ isNullObject: true }, ["isNullObject", "address", "formulas", "values"]);

  function range(address: string): object {
    const grid = names(address);
    const [[first]] = grid;
    const read = (take: (name: string) => unknown) => grid.map((line) => line.map(take));
    const write = (content: unknown[][], take: (name: string, value: unknown) => void) => {
      grid.forEach((line, row) => {
        line.forEach((name, column) => {
          take(name, content[row][column]);
        });
      });
    };
    const target = {
      get address() {
        return `${PAGE}!${address}`;
      },
      get rowIndex() {
        return corner(first).row;
      },
      get columnIndex() {
        return corner(first).column;
      },
      get values() {
        return read((name) => cells[name]?.value ?? "");
      },
      set values(content: unknown[][]) {
        write(content, (name, value) => {
          // An apostrophe before a text keeps it a text and is not part of it.
          const kept = typeof value === "string" ? value.replace(/^'/, "") : (value as number);
          cells[name] = { fill: cells[name]?.fill, value: kept };
        });
      },
      get valueTypes() {
        return read((name) => (cells[name] === undefined || cells[name].value === "" ? "Empty" : "String"));
      },
      get formulas() {
        return read((name) => cells[name]?.formula ?? cells[name]?.value ?? "");
      },
      set formulas(content: unknown[][]) {
        write(content, (name, value) => (cells[name] = { formula: String(value), value: 0 }));
      },
      get text() {
        return read((name) => String(cells[name]?.value ?? ""));
      },
      isNullObject: false,
      left: 48,
      top: 30,
      worksheet: undefined as unknown,
      getCell: (row: number, column: number) => range(grid[row][column]),
      getOffsetRange: () => range(address),
      // A cell without a fill is called white, and its pattern none.
      getCellProperties: () => {
        const found: { value?: unknown } = {};
        waiting.push(() => {
          found.value = read((name) => {
            const fill = cells[name]?.fill;
            return { format: { fill: { color: fill ?? "#FFFFFF", pattern: fill === undefined ? "None" : "Solid" } } };
          });
        });
        return found;
      },
      getSpillParentOrNullObject: () => {
        const home = spilled(first);
        return home === undefined ? NO_OBJECT() : range(home);
      },
      getSpillingToRangeOrNullObject: () => {
        const spill = cells[first]?.spill;
        return spill === undefined ? NO_OBJECT() : range(spill);
      },
      clear: () => {
        waiting.push(() => {
          for (const name of grid.flat()) Reflect.deleteProperty(cells, name);
        });
      },
    };
    target.worksheet = sheet;
    return guarded(target, [
      "address",
      "values",
      "valueTypes",
      "formulas",
      "text",
      "rowIndex",
      "columnIndex",
      "isNullObject",
      "left",
      "top",
    ]);
  }

  const sheet: object = guarded(
    {
      name: PAGE,
      visibility: "Visible",
      isNullObject: false,
      getRange: (address: string) => range(address),
      getUsedRangeOrNullObject: () => range("A1:H30"),
      names: { getItemOrNullObject: NO_OBJECT },
      shapes: {
        addImage: (png: string) => {
          const image = { png };
          images.push(image);
          return image;
        },
      },
    },
    ["name", "visibility", "isNullObject"],
  );
  const event = { add: (listener: () => Promise<void>) => listeners.push(listener) };
  const worksheets = {
    items: [sheet],
    load: () => {
      for (const one of ["name", "visibility"]) (sheet as { load(list: string): void }).load(one);
    },
    getItem: () => sheet,
    getItemOrNullObject: (name: string) => (name === PAGE ? sheet : NO_OBJECT()),
    onChanged: event,
    onCalculated: event,
    onFormatChanged: event,
  };
  const workbook = guarded(
    {
      name: "Harbor lights throw.xlsx",
      getSelectedRange: () => range(selection),
      worksheets,
      application: guarded({ decimalSeparator }, ["decimalSeparator"]),
      onSelectionChanged: event,
      names: { getItemOrNullObject: NO_OBJECT },
    },
    ["name"],
  );
  const context = {
    workbook,
    sync: () => {
      const due = waiting;
      waiting = [];
      for (const act of due) act();
      return Promise.resolve();
    },
  };
  const run = (batch: (given: unknown) => Promise<unknown>) => batch(context);
  // The vendor's library fills this object with its own model; only `run` stays ours.
  const model = new Proxy<Record<PropertyKey, unknown>>(
    {},
    {
      get: (object, key) => (key === "run" ? run : object[key]),
      set: (object, key, value) => {
        object[key] = value;
        return true;
      },
    },
  );
  Object.defineProperty(window, "Excel", { get: () => model, set: () => undefined });
  window.model = {
    cells,
    images,
    select: (address) => {
      selection = address;
      for (const listener of listeners) void listener();
    },
  };
}
