/** Sheets kept in this browser (IndexedDB): each one whole, under an id of its own, so that none ever replaces another. */
import type { IWorkbookData } from "@univerjs/core";

/** Raised when the shape of a kept sheet changes; older ones must stay readable. */
export const FORMAT = 1;

export interface KeptSheet {
  id: string;
  name: string;
  /** When it was last changed, in milliseconds since 1970. */
  changed: number;
  format: number;
  workbook: Partial<IWorkbookData>;
}

/** Whether this version of the page can show a kept sheet; one that it cannot show stays as it is. */
export function isReadable({ format, workbook }: KeptSheet): boolean {
  const { sheetOrder, sheets } = (workbook as Partial<IWorkbookData> | null) ?? {};
  if (!(format <= FORMAT) || !Array.isArray(sheetOrder) || sheetOrder.length === 0) return false;
  return sheetOrder.every((id) => isRecord(sheets?.[id]) && hasCells(sheets[id].cellData ?? {}));
}

/** Whether it holds rows of cells, as far as can be told without knowing what is in them. */
function hasCells(rows: unknown): boolean {
  if (!isRecord(rows)) return false;
  return Object.values(rows).every(
    (row) => isRecord(row) && Object.values(row).every((cell) => cell === null || isRecord(cell)),
  );
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}

export type KeptEntry = Pick<KeptSheet, "id" | "name" | "changed" | "format">;

/** Why something could not be kept. */
export type Refusal = "full" | "unavailable";

export class StoreProblem extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal);
  }
}

const DATABASE = "piecewise";
const SHEETS = "sheets";

export class Store {
  private constructor(private readonly database: IDBDatabase) {}

  /** @throws StoreProblem "unavailable" where the browser keeps nothing for this page. */
  static async open(): Promise<Store> {
    return new Promise((resolve, reject) => {
      const refuse = () => {
        reject(new StoreProblem("unavailable"));
      };
      try {
        const request = indexedDB.open(DATABASE, 1);
        request.onupgradeneeded = () => request.result.createObjectStore(SHEETS, { keyPath: "id" });
        request.onsuccess = () => {
          const database = request.result;
          // A newer version of the page, in another tab, must not wait for this one.
          database.onversionchange = () => {
            database.close();
          };
          resolve(new Store(database));
        };
        request.onerror = refuse;
        request.onblocked = refuse;
      } catch {
        refuse();
      }
    });
  }

  /** Keeps a sheet; whole or not at all. @throws StoreProblem */
  async keep(sheet: KeptSheet): Promise<void> {
    await this.run("readwrite", (sheets) => sheets.put(sheet));
  }

  async get(id: string): Promise<KeptSheet | undefined> {
    return (await this.run("readonly", (sheets) => sheets.get(id))) as KeptSheet | undefined;
  }

  async remove(id: string): Promise<void> {
    await this.run("readwrite", (sheets) => sheets.delete(id));
  }

  /** All kept sheets, the one changed last first. */
  async list(): Promise<KeptEntry[]> {
    const sheets = (await this.run("readonly", (all) => all.getAll())) as KeptSheet[];
    return sheets
      .map(({ id, name, changed, format }) => ({
        id,
        name: name || "Sheet without a name",
        changed: changed || 0,
        format,
      }))
      .sort((one, other) => other.changed - one.changed);
  }

  private run(mode: IDBTransactionMode, ask: (sheets: IDBObjectStore) => IDBRequest): Promise<unknown> {
    return new Promise((resolve, reject) => {
      const refuse = (error: DOMException | null) => {
        reject(new StoreProblem(error?.name === "QuotaExceededError" ? "full" : "unavailable"));
      };
      try {
        const transaction = this.database.transaction(SHEETS, mode, { durability: "strict" });
        const request = ask(transaction.objectStore(SHEETS));
        transaction.oncomplete = () => {
          resolve(request.result);
        };
        transaction.onabort = () => {
          refuse(transaction.error);
        };
      } catch (thrown) {
        refuse(thrown instanceof DOMException ? thrown : null);
      }
    });
  }
}
