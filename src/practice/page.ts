/** One sheet at a time on the page: which it is, where it is kept, and what the buttons do with it. */
import { fileName, saveFile } from "../pane/save";
import { Grid, type GridEvents } from "./grid";
import { Keeper } from "./keeper";
import { showList, type Start } from "./list";
import { Notices } from "./notice";
import { emptySheet, freshSheet, lastOpened, type OpenedSheet, rememberOpened, starterSheet } from "./opened";
import { Panel } from "./panel";
import type { OpenSheet, PaneSheet } from "./paneSheet";
import { part } from "./parts";
import { Ruled } from "./ruled";
import { StatusLine } from "./status";
import { FORMAT, isReadable, type KeptSheet, type Refusal, Store } from "./store";
import { SheetLock } from "./tabs";
import { holdKeys, listenForWalk, releaseKeys } from "./walk";

const REFUSALS: Record<Refusal, string> = {
  full: "The browser has no room left to keep this sheet. Save it as a file, or delete sheets that are no longer needed.",
  unavailable: "This browser keeps nothing for this page. Save the sheet as a file before closing it.",
};

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

export class Page {
  private readonly notices = new Notices(part("notice"));
  private readonly status = new StatusLine(part("status"));
  private readonly nameField = part("name", HTMLInputElement);
  private readonly fileField = part("file", HTMLInputElement);
  private readonly panel = new Panel(
    async (place) => {
      const { showBeside } = await import(/* webpackChunkName: "pane" */ "./beside");
      this.beside = await showBeside(place, () => this.openSheet());
    },
    () => this.grid?.focus(),
    (open) => {
      // The pane tells the errors then.
      this.grid?.tellErrors(!open);
    },
  );
  private beside: PaneSheet | undefined;
  private turn = Promise.resolve();
  private id = "";
  private grid: Grid | undefined;
  private keeper: Keeper | undefined;
  private lock: SheetLock | undefined;

  private constructor(
    private readonly store: Store | undefined,
    private readonly ruled: Ruled | undefined,
  ) {}

  /** Opens the page with the sheet that was open last, or with the starter plan. */
  static async open(): Promise<void> {
    const store = Store.open().catch(() => undefined);
    const page = new Page(...(await Promise.all([store, Ruled.read()])));
    const id = lastOpened() ?? (await page.lastChanged());
    const last = id ? await page.kept(id) : undefined;
    // Not sooner: a sheet that is asked for has to come after this one.
    page.listen();
    await page.show(last ?? starterSheet(), last !== undefined);
    page.panel.openIfWanted();
  }

  private listen(): void {
    part("sheets").onclick = () => void this.list();
    part("new").onclick = () => void this.change(emptySheet());
    part("open").onclick = () => {
      this.fileField.click();
    };
    part("save").onclick = () => void this.saveFile();
    this.fileField.onchange = () => void this.openFile();
    this.nameField.onchange = () => this.keeper?.changed();
    listenForWalk(this.panel, () => this.grid?.focus());
    addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") void this.keeper?.keepNow();
    });
    addEventListener("beforeunload", (event) => {
      if (this.keeper?.behind) event.preventDefault();
      void this.keeper?.keepNow();
    });
  }

  /** Which sheet was kept last: a browser that was killed may know that when it has forgotten which one was open. */
  private async lastChanged(): Promise<string | undefined> {
    const entries = await this.store?.list().catch(() => []);
    return entries?.at(0)?.id;
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
    // What is worked out meanwhile makes the sheet fall behind again, which is no reason to stay.
    if ((await this.keeper?.keepNow()) ?? true) {
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

  private show(sheet: OpenedSheet, kept: boolean): Promise<void> {
    return this.inTurn(async () => {
      this.hold();
      await this.keeper?.stop();
      this.keeper = undefined;
      this.lock?.close();
      this.notices.clear("elsewhere");
      await this.fill(sheet);
      rememberOpened(sheet);
      this.lock = new SheetLock(sheet.id, () => this.leave());
      if (await this.lock.take()) this.work(kept);
      else this.standBy();
    });
  }

  /** Opens sheets one after the other: each is open to its end before it gives way to the next. */
  private inTurn(open: () => Promise<void>): Promise<void> {
    this.turn = this.turn.then(open, open);
    return this.turn;
  }

  /** Nothing may reach the sheet that is being left, or the new one before it takes keys. */
  private hold(): void {
    this.status.opening();
    holdKeys(part("grid"));
    part("grid").inert = true;
  }

  /** Puts a sheet into the grid. */
  private async fill(sheet: OpenedSheet): Promise<void> {
    this.hold();
    const place = part("grid");
    await this.grid?.close();
    this.grid = undefined;
    place.replaceChildren();
    // The grid would take no keys at all where it cannot have the focus from its start.
    place.inert = false;
    this.id = sheet.id;
    this.nameField.value = sheet.name;
    const events: GridEvents = {
      select: (selected) => {
        this.status.show(selected);
        this.beside?.changed();
      },
      change: () => {
        this.keeper?.changed();
        this.beside?.changed();
      },
      fraction: (typed, fraction) => {
        this.status.fraction(typed, fraction);
      },
    };
    const grid = new Grid(place, sheet.workbook, events, this.ruled);
    grid.tellErrors(!this.panel.isOpen);
    this.grid = grid;
    await grid.ready();
    if (sheet.begin) grid.select(sheet.begin);
    releaseKeys(place);
  }

  /** This tab works on the sheet and keeps it. */
  private work(kept: boolean): void {
    const grid = this.grid;
    if (!grid) return;
    part("grid").inert = false;
    grid.focus();
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
    const takeOver = () =>
      this.inTurn(async () => {
        await this.lock?.takeOver();
        const kept = await this.kept(this.id);
        if (kept) await this.fill(kept);
        this.notices.clear("elsewhere");
        this.work(true);
      });
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

  /** What the pane may read and change. */
  private openSheet(): OpenSheet | undefined {
    const { grid } = this;
    if (!grid) return undefined;
    return {
      engine: grid.engine(),
      content: () => grid.content(),
      name: this.nameField.value,
      mine: this.keeper !== undefined,
    };
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
        open: () => void this.change(starterSheet()),
      },
      ...plannedWorkbooks.map(({ title, description, sheet }) => ({
        title,
        about: description,
        open: () => void this.change(sheet()),
      })),
      { title: "Empty sheet", about: "For formulas of your own.", open: () => void this.change(emptySheet()) },
    ];
    const kept = (await this.store?.list().catch(() => [])) ?? [];
    showList(part("list", HTMLDialogElement), starts, kept, this.id, {
      open: (id) => void this.reopen(id),
      remove: async (id) => {
        await this.store?.remove(id);
        // There may be room now for what could not be kept.
        this.keeper?.changed();
      },
    });
  }

  private async reopen(id: string): Promise<void> {
    const kept = await this.kept(id);
    if (kept) await this.change(kept, true);
  }

  private async saveFile(): Promise<void> {
    if (!this.grid) return;
    const { writeXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/write");
    saveFile(await writeXlsx(this.grid.content()), WORKBOOK, `${fileName(this.nameField.value)}.xlsx`);
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
    await this.change(freshSheet(file.name.replace(/\.xlsx$/i, ""), read.workbook));
    if (read.leftOut.length === 0) this.notices.clear("file");
    else
      this.notices.tell(
        "file",
        `${file.name} is open, without its ${read.leftOut.join(", ")}. The file itself is unchanged.`,
      );
  }
}
