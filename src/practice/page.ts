/** One sheet at a time on the page: which it is, where it is kept, and what the buttons do with it. */
import { saveAsFile, sheetOf } from "./files";
import { Grid, type GridEvents } from "./grid";
import { Keeper } from "./keeper";
import { showList } from "./list";
import { Notices } from "./notice";
import { emptySheet, lastOpened, type OpenedSheet, rememberOpened, starterSheet } from "./opened";
import { Panel } from "./panel";
import type { OpenSheet, PaneSheet } from "./paneSheet";
import { part } from "./parts";
import { Ruled } from "./ruled";
import { startsFor } from "./starts";
import { StatusLine } from "./status";
import { FORMAT, isReadable, type KeptSheet, type Refusal, Store } from "./store";
import { SheetLock } from "./tabs";
import { holdKeys, listenForWalk, releaseKeys } from "./walk";

const REFUSALS: Record<Refusal, string> = {
  full: "The browser has no room left to keep this sheet. Save it as a file, or delete sheets that are no longer needed.",
  unavailable: "This browser keeps nothing for this page. Save the sheet as a file before closing it.",
};

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
    await (isSheet(last) ? page.show(last, true) : page.show(starterSheet(), false));
    page.panel.openIfWanted();
  }

  private listen(): void {
    part("sheets").onclick = () => void this.attempt(() => this.list());
    part("new").onclick = () => void this.attempt(() => this.change(emptySheet()));
    part("open").onclick = () => {
      this.fileField.click();
    };
    part("save").onclick = () => void this.attempt(() => this.saveFile());
    this.fileField.onchange = () => void this.attempt(() => this.openFile());
    this.nameField.onchange = () => {
      this.changed();
    };
    listenForWalk(this.panel, () => this.grid?.focus());
    addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") void this.keeper?.keepNow();
    });
    addEventListener("beforeunload", (event) => {
      if (this.keeper?.behind) event.preventDefault();
      void this.keeper?.keepNow();
    });
  }

  /** Does what the maker asks for; a failure becomes a sentence. */
  private async attempt(act: () => Promise<void>): Promise<void> {
    this.notices.clear("failed");
    try {
      await act();
    } catch (thrown) {
      console.warn(thrown);
      const why = thrown instanceof Error ? thrown.message : "";
      this.notices.tell("failed", `That did not work${why && `: ${why}`}. Nothing of the sheet is lost.`);
    }
  }

  /** Which sheet was kept last: a browser that was killed may know that when it has forgotten which one was open. */
  private async lastChanged(): Promise<string | undefined> {
    const entries = await this.store?.list().catch(() => []);
    return entries?.at(0)?.id;
  }

  /** A kept sheet, if there is one; "unreadable" where it cannot be shown, which the maker is told. */
  private async kept(id: string): Promise<KeptSheet | "unreadable" | undefined> {
    const kept = await this.store?.get(id).catch(() => undefined);
    if (!kept || isReadable(kept)) return kept;
    const why = kept.format > FORMAT ? "was kept by a newer version of this page" : "is damaged and cannot be shown";
    this.notices.tell("unreadable", `“${kept.name}” ${why}. It stays kept as it is.`);
    return "unreadable";
  }

  /** Opens another sheet, unless the one that is open would be lost by that: then the maker decides. */
  private async change(sheet: OpenedSheet, kept = false): Promise<void> {
    // What is worked out meanwhile makes the sheet fall behind again, which is no reason to stay.
    if ((await this.keeper?.keepNow()) === false) await this.leaveToDecide();
    await this.show(sheet, kept);
  }

  /** Waits until the maker gives up the open sheet, if ever. */
  private leaveToDecide(): Promise<void> {
    return new Promise((leave) => {
      this.notices.tell("lost", "The sheet that is open is not kept and would be lost.", [
        { label: "Save it as .xlsx", act: () => void this.attempt(() => this.saveFile()) },
        {
          label: "Leave it",
          act: () => {
            this.notices.clear("lost");
            leave();
          },
        },
      ]);
    });
  }

  private show(sheet: OpenedSheet, kept: boolean): Promise<void> {
    return this.inTurn(async () => {
      await this.stopWork();
      this.lock?.close();
      for (const kind of ["elsewhere", "file"]) this.notices.clear(kind);
      const lock: SheetLock = new SheetLock(sheet.id, () => this.inTurn(() => this.leave(lock)));
      this.lock = lock;
      const mine = await lock.take();
      // Another tab may have kept it since it was read.
      const now = mine && kept ? await this.kept(sheet.id) : undefined;
      await this.fill(isSheet(now) ? now : sheet);
      rememberOpened(sheet);
      if (mine && now !== "unreadable") this.work(kept);
      else this.standBy();
      releaseKeys(part("grid"));
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
        this.changed();
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

  /** The sheet may have changed. */
  private changed(): void {
    if (!this.keeper) return;
    this.keeper.changed();
    part("kept").ariaBusy = "true";
  }

  /** Keeps the last change; after it nothing changes the sheet here. */
  private async stopWork(): Promise<void> {
    this.hold();
    const { keeper } = this;
    this.keeper = undefined;
    if (keeper) await this.grid?.endEditing();
    await keeper?.stop();
  }

  /** Another tab works on the sheet: it can be looked at here, and taken over. */
  private standBy(): void {
    part("grid").inert = true;
    const takeOver = async () => {
      this.notices.clear("elsewhere");
      await this.lock?.takeOver();
      const kept = await this.kept(this.id);
      if (kept === "unreadable") return;
      if (kept) await this.fill(kept);
      this.work(true);
      releaseKeys(part("grid"));
    };
    this.notices.show("elsewhere", "This sheet is open in another tab or window, where it can be changed.", [
      { label: "Work on it here", act: () => void this.attempt(() => this.inTurn(takeOver)) },
    ]);
  }

  /** Another tab takes the sheet over, unless another one has been opened here since. */
  private async leave(lock: SheetLock): Promise<void> {
    if (lock !== this.lock) return;
    await this.stopWork();
    this.standBy();
    releaseKeys(part("grid"));
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
    kept.ariaBusy = String(this.keeper?.waiting ?? false);
    if (refusal) {
      kept.textContent = "Not kept";
      this.notices.show("refused", REFUSALS[refusal], [
        { label: "Save as .xlsx", act: () => void this.attempt(() => this.saveFile()) },
      ]);
    } else {
      const time = new Date().toLocaleTimeString([], { timeStyle: "short" });
      kept.textContent = `Kept in this browser ${time}`;
      this.notices.clear("refused");
    }
  }

  private async list(): Promise<void> {
    await this.keeper?.keepNow();
    const starts = await startsFor((sheet) => void this.attempt(() => this.change(sheet)));
    const kept = (await this.store?.list().catch(() => [])) ?? [];
    showList(part("list", HTMLDialogElement), starts, kept, this.id, {
      open: (id) => void this.attempt(() => this.reopen(id)),
      remove: async (id) => {
        await this.store?.remove(id);
        // There may be room now for what could not be kept.
        this.changed();
      },
    });
  }

  private async reopen(id: string): Promise<void> {
    const kept = await this.kept(id);
    if (isSheet(kept)) await this.change(kept, true);
  }

  private async saveFile(): Promise<void> {
    const remark = this.grid && (await saveAsFile(this.grid.content(), this.nameField.value));
    if (remark) this.notices.tell("file", remark);
  }

  private async openFile(): Promise<void> {
    const file = this.fileField.files?.[0];
    this.fileField.value = "";
    if (!file) return;
    const { sheet, remark } = await sheetOf(file);
    if (sheet) await this.change(sheet);
    if (remark) this.notices.tell("file", remark);
  }
}

function isSheet(kept: KeptSheet | "unreadable" | undefined): kept is KeptSheet {
  return typeof kept === "object";
}
