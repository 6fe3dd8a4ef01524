/** One sheet at a time on the page: which it is, where it is kept, and what the buttons do with it. */
import type { TypedFraction } from "./entry";
import { Grid, type Selected } from "./grid";
import { Keeper } from "./keeper";
import { showList, type Start } from "./list";
import { Notices } from "./notice";
import { starterName, starterWorkbook } from "./starter";
import { StatusLine } from "./status";
import { FORMAT, isReadable, type KeptSheet, type Refusal, Store } from "./store";
import { SheetLock } from "./tabs";
import { emptyWorkbook } from "./workbook";

type OpenedSheet = Pick<KeptSheet, "id" | "name" | "workbook">;

/** Remembers the sheet of this tab over a reload, and the last one for a new tab. */
const LAST = "piecewise sheet";

const REFUSALS: Record<Refusal, string> = {
  full: "The browser has no room left to keep this sheet. Save it as a file, or delete sheets that are no longer needed.",
  unavailable: "This browser keeps nothing for this page. Save the sheet as a file before closing it.",
};

export class Page {
  private readonly notices = new Notices(part("notice"));
  private readonly status = new StatusLine(part("status"));
  private readonly nameField = part("name", HTMLInputElement);
  private readonly fileField = part("file", HTMLInputElement);
  private id = "";
  private grid: Grid | undefined;
  private keeper: Keeper | undefined;
  private lock: SheetLock | undefined;

  private constructor(private readonly store: Store | undefined) {}

  /** Opens the page with the sheet that was open last, or with the starter plan. */
  static async open(): Promise<void> {
    const page = new Page(await Store.open().catch(() => undefined));
    page.listen();
    const last = await page.lastSheet();
    await page.show(last ?? starter(), last !== undefined);
  }

  private listen(): void {
    part("sheets").onclick = () => void this.list();
    part("new").onclick = () => void this.change(empty());
    part("open").onclick = () => {
      this.fileField.click();
    };
    part("save").onclick = () => void this.saveFile();
    part("class-copy").onclick = () => void this.saveClassCopy();
    this.fileField.onchange = () => void this.openFile();
    this.nameField.onchange = () => this.keeper?.changed();
    // The grid keeps the Tab key for moving from cell to cell, so another key has to lead out of it.
    addEventListener(
      "keydown",
      (event) => {
        if (event.key === "F6") this.focusNext(event);
      },
      { capture: true },
    );
    addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") void this.keeper?.keepNow();
    });
    addEventListener("beforeunload", (event) => {
      if (this.keeper?.behind) event.preventDefault();
      void this.keeper?.keepNow();
    });
  }

  /** Puts the keyboard on the next part of the page: its buttons, a notice, the grid. */
  private focusNext(event: KeyboardEvent): void {
    event.preventDefault();
    event.stopPropagation();
    const parts = [part("commands"), part("notice")].filter((place) => !place.hidden);
    const next = parts[parts.findIndex((place) => place.contains(document.activeElement)) + 1] as
      HTMLElement | undefined;
    if (next) next.querySelector("button")?.focus();
    else this.grid?.focus();
  }

  private async lastSheet(): Promise<OpenedSheet | undefined> {
    const id = recall();
    return id ? this.kept(id) : undefined;
  }

  /** A kept sheet, if there is one that can be shown. */
  private async kept(id: string): Promise<KeptSheet | undefined> {
    const kept = await this.store?.get(id).catch(() => undefined);
    if (!kept || isReadable(kept)) return kept;
    const why = kept.format > FORMAT ? "was kept by a newer version of this page" : "is damaged and cannot be shown";
    this.notices.tell("unreadable", `“${kept.name}” ${why}. It stays kept as it is.`);
    return undefined;
  }

  /** Opens another sheet, unless the one that is open would be lost by that. */
  private async change(sheet: OpenedSheet, kept = false): Promise<void> {
    await this.keeper?.keepNow();
    if (!this.keeper?.behind) {
      await this.show(sheet, kept);
      return;
    }
    const leave = () => {
      this.notices.clear("lost");
      void this.show(sheet, kept);
    };
    this.notices.tell("lost", "The sheet that is open is not kept and would be lost.", [
      { label: "Save it as .xlsx", act: () => void this.saveFile() },
      { label: "Leave it", act: leave },
    ]);
  }

  private async show(sheet: OpenedSheet, kept: boolean): Promise<void> {
    await this.keeper?.stop();
    this.keeper = undefined;
    this.lock?.close();
    this.notices.clear("elsewhere");
    await this.fill(sheet);
    remember(sheet.id);
    this.lock = new SheetLock(sheet.id, () => this.leave());
    if (await this.lock.take()) this.work(kept);
    else this.standBy();
  }

  private async fill(sheet: OpenedSheet): Promise<void> {
    this.status.opening();
    // Nothing may reach the sheet that is being left.
    part("grid").inert = true;
    await this.grid?.close();
    this.grid = undefined;
    const place = part("grid");
    place.replaceChildren();
    this.id = sheet.id;
    this.nameField.value = sheet.name;
    this.grid = new Grid(place, sheet.workbook, {
      select: (selected: Selected | undefined) => {
        this.status.show(selected);
      },
      change: () => this.keeper?.changed(),
      fraction: (typed: string, fraction: TypedFraction) => {
        this.status.fraction(typed, fraction);
      },
    });
  }

  /** This tab works on the sheet and keeps it. */
  private work(kept: boolean): void {
    const grid = this.grid;
    if (!grid) return;
    part("grid").inert = false;
    const read = () => ({ name: this.nameField.value.trim() || "Sheet without a name", workbook: grid.workbook() });
    this.keeper = new Keeper(this.store, this.id, read, kept, (refusal) => {
      this.told(refusal);
    });
    if (!this.store) this.told("unavailable");
    this.keeper.changed();
  }

  /** Another tab works on the sheet: it can be looked at here, and taken over. */
  private standBy(): void {
    part("grid").inert = true;
    const takeOver = async () => {
      await this.lock?.takeOver();
      const kept = await this.kept(this.id);
      if (kept) await this.fill(kept);
      this.notices.clear("elsewhere");
      this.work(true);
    };
    this.notices.show("elsewhere", "This sheet is open in another tab or window, where it can be changed.", [
      { label: "Work on it here", act: () => void takeOver() },
    ]);
  }

  /** Another tab takes the sheet over. */
  private async leave(): Promise<void> {
    await this.keeper?.stop();
    this.keeper = undefined;
    this.standBy();
  }

  private told(refusal: Refusal | undefined): void {
    const kept = part("kept");
    if (refusal) {
      kept.textContent = "Not kept";
      this.notices.show("refused", REFUSALS[refusal], [{ label: "Save as .xlsx", act: () => void this.saveFile() }]);
    } else {
      const time = new Date().toLocaleTimeString([], { timeStyle: "short" });
      kept.textContent = `Kept in this browser ${time}`;
      this.notices.clear("refused");
    }
  }

  private async list(): Promise<void> {
    await this.keeper?.keepNow();
    const { plannedWorkbooks } = await import(/* webpackChunkName: "workbooks" */ "./planned");
    const starts: Start[] = [
      {
        title: "Throw quilt plan",
        about: "Half-square units and a border of keys: change a yellow cell and see what follows.",
        open: () => void this.change(starter()),
      },
      ...plannedWorkbooks.map(({ title, description, workbook }) => ({
        title,
        about: description,
        open: () => void this.change({ id: newId(), name: title, workbook: workbook() }),
      })),
      { title: "Empty sheet", about: "For formulas of your own.", open: () => void this.change(empty()) },
    ];
    const kept = (await this.store?.list().catch(() => [])) ?? [];
    showList(part("list", HTMLDialogElement), starts, kept, this.id, {
      open: (id) => void this.reopen(id),
      remove: async (id) => this.store?.remove(id),
    });
  }

  private async reopen(id: string): Promise<void> {
    const kept = await this.kept(id);
    if (kept) await this.change(kept, true);
  }

  private async saveFile(): Promise<void> {
    if (!this.grid) return;
    const { writeXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/write");
    const bytes = await writeXlsx(this.grid.content());
    download(bytes, `${fileName(this.nameField.value)}.xlsx`);
  }

  /** Saves a copy that works without the functions. */
  private async saveClassCopy(): Promise<void> {
    if (!this.grid) return;
    this.notices.show("class copy", "The class copy is being made …");
    const { makeClassCopy } = await import(/* webpackChunkName: "class-copy" */ "./classCopy");
    const made = await makeClassCopy(this.grid.content(), this.grid.engine());
    if (made.bytes) download(made.bytes, `${fileName(this.nameField.value)} class copy.xlsx`);
    this.notices.tell("class copy", made.sentence);
  }

  private async openFile(): Promise<void> {
    const file = this.fileField.files?.[0];
    this.fileField.value = "";
    if (!file) return;
    const { readXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/read");
    const read = await readXlsx(new Uint8Array(await file.arrayBuffer()));
    if ("refusal" in read) {
      this.notices.tell("file", `${file.name}: ${read.refusal}`);
      return;
    }
    await this.change({ id: newId(), name: file.name.replace(/\.xlsx$/i, ""), workbook: read.workbook });
    if (read.leftOut.length === 0) this.notices.clear("file");
    else
      this.notices.tell(
        "file",
        `${file.name} is open, without its ${read.leftOut.join(", ")}. The file itself is unchanged.`,
      );
  }
}

function starter(): OpenedSheet {
  return { id: newId(), name: starterName, workbook: starterWorkbook() };
}

function empty(): OpenedSheet {
  return { id: newId(), name: "New sheet", workbook: emptyWorkbook() };
}

function newId(): string {
  return crypto.randomUUID();
}

function fileName(name: string): string {
  return name.replace(/[\\/:*?"<>|\p{Cc}]+/gu, " ").trim() || "sheet";
}

function download(bytes: Uint8Array<ArrayBuffer>, name: string): void {
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  Object.assign(document.createElement("a"), { href: address, download: name }).click();
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
}

/** The sheet of this tab, over a reload, or else the last one of any tab. */
function recall(): string | null {
  try {
    return sessionStorage.getItem(LAST) ?? localStorage.getItem(LAST);
  } catch {
    return null;
  }
}

function remember(id: string): void {
  try {
    sessionStorage.setItem(LAST, id);
    localStorage.setItem(LAST, id);
  } catch {
    // Then nothing is kept at all, which the page says elsewhere.
  }
}

function part(id: string): HTMLElement;
function part<E extends HTMLElement>(id: string, kind: new () => E): E;
function part(id: string, kind: new () => HTMLElement = HTMLElement): HTMLElement {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`the page has no #${id}`);
  return found;
}
