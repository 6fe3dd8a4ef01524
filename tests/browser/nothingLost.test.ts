/** What a maker has typed outlives reloads, crashes, a second tab, a full disk and a newer version of the page. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { ROOT } from "../practice/started";
import { BROWSER_ARGUMENTS, describeInBrowser, findBrowser } from "./browser";
import { expectCell, kept, PATIENCE, ready, type } from "./practicePage";
import { servedPractice, Watched } from "./watched";

/** A sheet as version 0.1.0 kept it. */
const OLD = JSON.parse(readFileSync(join(ROOT, "tests/data/kept-0.1.0.json"), "utf8")) as {
  id: string;
  name: string;
};

/** From the Enter of an edit until it has to be safe, in milliseconds; the page takes a third of a second. */
const SAFE = 1000;

describeInBrowser("Nothing is lost", () => {
  const address = servedPractice();
  const watched = new Watched();
  let context: BrowserContext;

  beforeEach(async () => {
    context = await watched.browser.newContext({ viewport: { width: 1280, height: 800 } });
    context.on("page", (page) => {
      watched.watch(page, []);
    });
  });

  test("over a reload", async () => {
    const page = await open();
    await type(page, "J5", "=QUILT.CUTHALFSQUARE(3)");
    await kept(page);
    await page.reload();
    await ready(page);
    await expectCell(page, "J5", "J5 3 7/8 =QUILT.CUTHALFSQUARE(3)");
  });

  test("when the tab is closed right after an edit", async () => {
    const closed = await open();
    await type(closed, "J5", "not lost");
    await Promise.all([closed.waitForEvent("close"), closed.close({ runBeforeUnload: true })]);
    const page = await open();
    await expectCell(page, "J5", "J5 not lost");
  });

  test("when the tab is killed shortly after an edit, while other changes go on", async () => {
    const killed = await open();
    await kept(killed);
    await type(killed, "J5", "not lost");
    for (const start = Date.now(); Date.now() < start + SAFE;) await killed.keyboard.type("1\n", { delay: 50 });
    const devtools = await context.newCDPSession(killed);
    // Nobody is left to answer.
    void devtools.send("Page.crash").catch(() => undefined);
    await killed.waitForEvent("crash");
    const page = await open();
    await expectCell(page, "J5", "J5 not lost");
  });

  test("when the whole browser is killed shortly after an edit", async () => {
    const folder = mkdtempSync(join(tmpdir(), "piecewise-browser-"));
    const launch = () =>
      chromium.launchPersistentContext(folder, { executablePath: findBrowser(), args: BROWSER_ARGUMENTS });
    try {
      const first = await launch();
      const killed = await open(first);
      await type(killed, "J5", "not lost");
      await killed.waitForTimeout(SAFE);
      const gone = first.waitForEvent("close");
      const devtools = await first.newCDPSession(killed);
      void devtools.send("Browser.crash").catch(() => undefined);
      await gone;
      const second = await launch();
      const page = await open(second);
      await expectCell(page, "J5", "J5 not lost");
      await second.close();
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test("a second tab waits for the first one, and takes the sheet over with its last change", async () => {
    const first = await open();
    await kept(first);
    const second = await open();
    expect(await second.getByRole("alert").textContent()).toMatch(/open in another tab/);
    await type(first, "J5", "the last change");
    await first.keyboard.type("still being typed", { delay: 5 });
    await second.bringToFront();
    // Twice, as impatient people do.
    await second.getByRole("button", { name: "Work on it here" }).dblclick();
    await first.getByRole("alert").getByText("open in another tab").waitFor(PATIENCE);
    await ready(second);
    await expectCell(second, "J5", "J5 the last change");
    await expectCell(second, "J6", "J6 still being typed");
    await type(second, "J6", "from the second");
    await kept(second);
    await second.close();
    await first.bringToFront();
    await first.getByRole("button", { name: "Work on it here" }).click();
    await expectCell(first, "J6", "J6 from the second");
  });

  test("a tab that only looks on takes no typing, and overwrites nothing", async () => {
    const first = await open();
    await kept(first);
    const second = await open();
    await second.getByRole("alert").getByText("open in another tab").waitFor(PATIENCE);
    await second.mouse.click(600, 500);
    await second.keyboard.type("overwritten");
    await second.keyboard.press("Enter");
    await first.bringToFront();
    await type(first, "J5", "the only one");
    await kept(first);
    await second.close();
    await first.reload();
    await ready(first);
    await expectCell(first, "J5", "J5 the only one");
    expect(JSON.stringify(await read(first))).not.toContain("overwritten");
  });

  test("where the browser has no room, the page says so, offers a file and lets nothing go", async () => {
    const page = await context.newPage();
    await page.addInitScript(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
    });
    await page.goto(address());
    await ready(page);
    await type(page, "J5", "mine");
    const alert = page.getByRole("alert");
    await alert.getByText("no room left to keep this sheet").waitFor(PATIENCE);
    await page.getByRole("button", { name: "New" }).click();
    await alert.getByText("not kept and would be lost").waitFor(PATIENCE);
    await expectCell(page, "J5", "J5 mine");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      alert.getByRole("button", { name: "Save as .xlsx", exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.xlsx$/);
  });

  test("once another sheet is deleted, what had no room is kept", async () => {
    await put(OLD);
    const page = await context.newPage();
    await page.addInitScript(() => {
      let full = true;
      IDBObjectStore.prototype.put = new Proxy(Reflect.get(IDBObjectStore.prototype, "put"), {
        apply(put, store: IDBObjectStore, given) {
          if (full) throw new DOMException("no room", "QuotaExceededError");
          return put.apply(store, given as Parameters<typeof put>);
        },
      });
      IDBObjectStore.prototype.delete = new Proxy(Reflect.get(IDBObjectStore.prototype, "delete"), {
        apply(remove, store: IDBObjectStore, given) {
          full = false;
          return remove.apply(store, given as Parameters<typeof remove>);
        },
      });
    });
    await page.goto(address());
    await ready(page);
    await page.getByRole("button", { name: "New" }).click();
    await page.getByRole("alert").getByText("no room left to keep this sheet").waitFor(PATIENCE);
    await page.getByRole("button", { name: "Sheets…" }).click();
    await page.getByRole("button", { name: `Delete ${OLD.name}` }).click();
    await page.getByRole("button", { name: `Delete ${OLD.name}` }).click();
    await kept(page);
    expect(await read(page)).toEqual([expect.objectContaining({ name: "New sheet" })]);
  });

  test("a sheet that the browser does not delete is said to stay, and can be deleted later", async () => {
    await put(OLD);
    const page = await context.newPage();
    await page.addInitScript(() => {
      let refuses = true;
      IDBObjectStore.prototype.delete = new Proxy(Reflect.get(IDBObjectStore.prototype, "delete"), {
        apply(remove, store: IDBObjectStore, given) {
          if (refuses) {
            refuses = false;
            throw new DOMException("refused", "InvalidStateError");
          }
          return remove.apply(store, given as Parameters<typeof remove>);
        },
      });
    });
    await page.goto(address());
    await ready(page);
    await page.getByRole("button", { name: "New" }).click();
    await page.getByRole("button", { name: "Sheets…" }).click();
    const remove = page.getByRole("button", { name: `Delete ${OLD.name}` });
    await remove.click();
    await remove.click();
    await page.getByRole("alert").getByText("it stays kept").waitFor(PATIENCE);
    expect(await read(page)).toContainEqual(expect.objectContaining({ name: OLD.name }));
    await remove.click();
    await remove.waitFor({ state: "detached", timeout: 5000 });
    expect(await read(page)).not.toContainEqual(expect.objectContaining({ name: OLD.name }));
  });

  test("where the browser keeps nothing at all, the page says so and offers a file", async () => {
    const page = await context.newPage();
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("switched off", "SecurityError");
      };
    });
    await page.goto(address());
    await ready(page);
    const alert = page.getByRole("alert");
    await alert.getByText("This browser keeps nothing for this page").waitFor(PATIENCE);
    await alert.getByRole("button", { name: "Save as .xlsx", exact: true }).waitFor();
    await type(page, "J5", "=QUILT.CUTHALFSQUARE(3)");
    await expectCell(page, "J5", "J5 3 7/8 =QUILT.CUTHALFSQUARE(3)");
  });

  test("a sheet that version 0.1.0 kept is opened, with its answers", async () => {
    await put(OLD);
    const page = await open();
    expect(await page.locator("#name").inputValue()).toBe(OLD.name);
    await expectCell(page, "A1", "A1 Old sampler");
    await expectCell(page, "B2", "B2 2 1/2");
    await expectCell(page, "B3", "B3 3 3/8 =QUILT.CUTHALFSQUARE(B2)");
    await expectCell(page, "A5", /^A5 way =QUILT\.BACKINGPLAN\(60,80\)/);
    await expectCell(page, "B6", "B6 2");
    await type(page, "B2", "3");
    await expectCell(page, "B3", "B3 3 7/8 =QUILT.CUTHALFSQUARE(B2)");
  });

  test.each([
    ["was kept by a newer version of this page", { format: 99 }],
    ["is damaged and cannot be shown", { workbook: { sheetOrder: ["x"], sheets: { x: { cellData: { 0: "text" } } } } }],
  ])("a sheet that %s stays as it is", async (says, change) => {
    await put({ ...OLD, ...change });
    const page = await open();
    await page.getByRole("alert").getByText(`“${OLD.name}” ${says}. It stays kept as it is.`).waitFor(PATIENCE);
    await expectCell(page, "F5", /^F5 60 =/);
    await kept(page);
    expect(await read(page)).toContainEqual({ ...OLD, ...change });
  });

  test("a kept sheet without a name or a date is listed like any other", async () => {
    await put({ ...OLD, name: undefined, changed: "never" });
    const page = await open();
    await page.getByRole("button", { name: "New" }).click();
    await page.getByRole("button", { name: "Sheets…" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Sheet without a name", exact: true }).click();
    await expectCell(page, "B3", "B3 3 3/8 =QUILT.CUTHALFSQUARE(B2)");
  });

  test("a newer version of the page in another tab is not held up; this one says that it keeps no more", async () => {
    const page = await open();
    await type(page, "J5", "not lost");
    await kept(page);
    const newer = await context.newPage();
    await newer.goto(new URL("icon.svg", address()).href);
    await newer.evaluate(
      () =>
        new Promise((resolve, reject) => {
          const asked = indexedDB.open("piecewise", 2);
          asked.onsuccess = resolve;
          asked.onblocked = reject;
        }),
    );
    await page.bringToFront();
    await type(page, "J6", "later");
    await page.getByRole("alert").getByText("Save the sheet as a file before closing it").waitFor(PATIENCE);
    expect(JSON.stringify(await read(newer))).toContain("not lost");
  });

  async function open(inside = context): Promise<Page> {
    const page = await inside.newPage();
    await page.goto(address());
    await ready(page);
    return page;
  }

  /** Puts a sheet where the page keeps its sheets, as the one that was open last. */
  async function put(sheet: { id: string; [more: string]: unknown }): Promise<void> {
    const page = await context.newPage();
    await page.goto(address());
    await ready(page);
    await kept(page);
    await page.goto(new URL("icon.svg", address()).href);
    await page.evaluate(replaceKept, sheet);
    await page.close();
  }

  /** Every sheet that is kept. */
  async function read(page: Page): Promise<unknown[]> {
    return page.evaluate(readKept);
  }
});

/** Runs in the page. */
function replaceKept(sheet: { id: string }): Promise<void> {
  localStorage.setItem("piecewise sheet", sheet.id);
  return new Promise((resolve) => {
    indexedDB.open("piecewise").onsuccess = (opened) => {
      const { result } = opened.target as IDBOpenDBRequest;
      const sheets = result.transaction("sheets", "readwrite").objectStore("sheets");
      sheets.clear();
      sheets.put(sheet).onsuccess = () => {
        result.close();
        resolve();
      };
    };
  });
}

/** Runs in the page. */
function readKept(): Promise<unknown[]> {
  return new Promise((resolve) => {
    indexedDB.open("piecewise").onsuccess = (opened) => {
      const { result } = opened.target as IDBOpenDBRequest;
      result.transaction("sheets").objectStore("sheets").getAll().onsuccess = (got) => {
        result.close();
        resolve((got.target as IDBRequest<unknown[]>).result);
      };
    };
  });
}
