/** Nothing but the pages' own files runs, nothing but their own address is asked, whatever stands in a file that is opened. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { assemble } from "../../scripts/release";
import { builtAddin } from "../contract/built";
import { BUILDING, ROOT, Started } from "../practice/started";
import { tryEverything } from "./attempts";
import { describeInBrowser, launchBrowser } from "./browser";
import { hostileWorkbook } from "./hostileWorkbook";
import { serveFolder, type PlainServer } from "./plainServer";
import { cell, go, kept, PATIENCE, ready, type } from "./practicePage";

describeInBrowser("Security", () => {
  const addin = builtAddin();
  let folder: string;
  let browser: Browser;
  let context: BrowserContext;
  /** The practice sheet as `npm start` serves it; a release on a plain server; another address, where nobody must ask. */
  let started: Started;
  let release: PlainServer;
  let elsewhere: PlainServer;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "piecewise-"));
    started = await Started.start();
    const made = (name: string) => join(folder, name);
    for (const name of ["workbooks", "elsewhere", "open"]) mkdirSync(made(name));
    writeFileSync(join(folder, "open/index.html"), "<!doctype html><title>No policy</title><body>");
    for (const file of ["script.js", "page.html", "object.svg", "style.css", "image.png", "base.png"])
      writeFileSync(
        join(folder, "elsewhere", file),
        file.endsWith(".js") ? "window.ran('a script from elsewhere')" : "",
      );
    const practice = join(ROOT, "dist/practice");
    assemble({ addin, practice, workbooks: made("workbooks") }, made("release"));
    release = await serveFolder(made("release"), "/quilts");
    elsewhere = await serveFolder(made("elsewhere"));
    browser = await launchBrowser();
  }, BUILDING);

  afterAll(async () => {
    await browser.close();
    await Promise.all([started.stop(), release.stop(), elsewhere.stop()]);
    rmSync(folder, { recursive: true });
  });

  beforeEach(async () => {
    elsewhere.asked.length = 0;
    context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  });

  afterEach(() => context.close());

  test("the attempts succeed on a page without a policy, so that their failing means something", async () => {
    const open = await serveFolder(join(folder, "open"));
    const page = await context.newPage();
    await page.goto(open.address);
    const ran = await page.evaluate(tryEverything, elsewhere.address);
    expect(ran).toEqual(expect.arrayContaining(["a script in the page", "an attribute", "a link", "eval", "a timer"]));
    expect(ran).toHaveLength(11);
    expect(new Set(elsewhere.asked).size).toBeGreaterThan(10);
    await open.stop();
  });

  test.each(["", "practice/index.html", "pane.html", "about.html"])(
    "a release on a plain server, /%s: no other script runs and no other address is asked",
    async (path) => {
      const page = await context.newPage();
      await page.goto(`${release.address}/${path}`);
      await settled(page, path);
      expect(await page.evaluate(tryEverything, elsewhere.address)).toEqual([]);
      expect(elsewhere.asked).toEqual([]);
    },
  );

  test("the practice sheet as it is started: no other script runs and no other address is asked", async () => {
    const page = await context.newPage();
    await page.goto(started.address);
    await ready(page);
    expect(await page.evaluate(tryEverything, elsewhere.address)).toEqual([]);
    expect(elsewhere.asked).toEqual([]);
  });

  test("the practice sheet asks for nothing beyond itself, whatever is done with it", async () => {
    const page = await watched();
    await page.goto(started.address);
    await ready(page);
    await type(page, "J5", "=QUILT.CUTHALFSQUARE(3)", '=QUILT.CUTSQUARE("x")', "3/8");
    await page.getByRole("button", { name: "Sheets…" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();
    await page.getByRole("tab", { name: "For class" }).click();
    for (const name of ["Save as .xlsx", "Make a class copy"]) {
      await Promise.all([
        page.waitForEvent("download", PATIENCE),
        page.getByRole("button", { name, exact: true }).click(),
      ]);
    }
    await kept(page);
    expect([...strangers, ...refused]).toEqual([]);
  });

  test("a workbook made to do harm does none", async () => {
    const page = await watched();
    await page.addInitScript(() => {
      window.ran = (what) => {
        document.title = `ran: ${what}`;
      };
    });
    await page.goto(started.address);
    await ready(page);
    const file = join(folder, `<img src=x onerror=ran('name')>.xlsx`);
    writeFileSync(file, hostileWorkbook(elsewhere.address));
    await page.locator("#file").setInputFiles(file);
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#name")?.value.startsWith("<img"));
    await ready(page);
    expect(await cell(page, "A1")).toBe(`A1 <img src=x onerror="ran('text')">`);
    expect(await cell(page, "A2")).toBe(`A2 =HYPERLINK("${elsewhere.address}/text","press")`);
    expect(await cell(page, "A3")).toBe("A3 plain and <b>bold</b>");
    for (let row = 4; row <= 16; row++) {
      await go(page, `A${row}`);
      const { x, y } = (await page.locator("#grid canvas").first().boundingBox())!;
      await page.mouse.click(x + 90, y + 30 + 20 * row);
      await page.mouse.dblclick(x + 90, y + 30 + 20 * row);
      await page.keyboard.press("Escape");
    }
    await page.getByRole("button", { name: "Sheets…" }).click();
    await page.getByRole("dialog").getByText("<img src=x").first().waitFor(PATIENCE);
    await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();
    await page.getByRole("tab", { name: "For class" }).click();
    await Promise.all([
      page.waitForEvent("download", PATIENCE),
      page.getByRole("button", { name: "Make a class copy" }).click(),
    ]);
    await page.waitForTimeout(1000);
    await kept(page);
    await page.reload();
    await ready(page);
    await page.screenshot({ path: join(ROOT, "dist/screenshots/practice-hostile.png") });
    expect(await page.title()).toBe("Piecewise practice sheet");
    expect(context.pages()).toHaveLength(1);
    expect([...strangers, ...refused]).toEqual([]);
    expect(elsewhere.asked).toEqual([]);
  }, 180_000);

  /** What was asked of any address but that of the practice sheet, and dialogs; what the page's policy had to refuse. */
  let strangers: string[];
  let refused: string[];

  async function watched(): Promise<Page> {
    strangers = [];
    refused = [];
    const { origin } = new URL(started.address);
    const page = await context.newPage();
    page.on("requestfinished", (request) => {
      const asked = new URL(request.url());
      if (asked.origin !== origin && !["blob:", "data:"].includes(asked.protocol)) strangers.push(request.url());
    });
    page.on("console", (message) => {
      if (/Content Security Policy/i.test(message.text())) refused.push(message.text());
    });
    page.on("dialog", (dialog) => {
      strangers.push(dialog.message());
      void dialog.dismiss();
    });
    return page;
  }
});

async function settled(page: Page, path: string): Promise<void> {
  if (path.startsWith("practice")) await ready(page);
  else if (path === "pane.html") await page.locator(".found").first().waitFor(PATIENCE);
}
