/** The built pane page in a real browser: inside the spreadsheet, as far as office.js can tell, and outside of any. */
import { existsSync, mkdirSync } from "node:fs";
import { extname, join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { worksheetFunctions } from "../../functions";
import { builtAddin } from "../contract/built";
import { describeInBrowser, launchBrowser } from "./browser";
import { expectAccessible, SCREENSHOTS } from "./paneHarness";
import { HOST_QUERY, insideSpreadsheet } from "./spreadsheetHost";

const ADDRESS = "https://localhost:3000";
/** The vendor's library reports to its maker while it thinks that it is in the host. Here it gets no answer. */
const VENDOR_TELEMETRY = "https://telemetryservice.firstpartyapps.oaspapps.com";
const TYPES: Record<string, string> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".png": "image/png",
};

describeInBrowser("The pane page", () => {
  const folder = builtAddin();
  let browser: Browser;
  let complaints: string[];

  beforeAll(async () => {
    mkdirSync(SCREENSHOTS, { recursive: true });
    browser = await launchBrowser();
  });

  afterAll(() => browser.close());

  beforeEach(() => {
    complaints = [];
  });

  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
    expect(complaints).toEqual([]);
  });

  /** A page on which the built files stand at their address, and nothing else is reached. */
  async function open(file: string, { inside = false, width = 320, dark = false } = {}): Promise<Page> {
    const page = await browser.newPage({
      viewport: { width, height: 720 },
      colorScheme: dark ? "dark" : "light",
    });
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    await page.route("**/*", async (route) => {
      const { origin, pathname } = new URL(route.request().url());
      const path = join(folder, pathname);
      if (origin === ADDRESS && existsSync(path)) {
        await route.fulfill({ path, contentType: TYPES[extname(path)] });
      } else {
        if (origin !== VENDOR_TELEMETRY) complaints.push(`asked for ${route.request().url()}`);
        await route.abort();
      }
    });
    if (inside) await insideSpreadsheet(page);
    await page.goto(`${ADDRESS}/${file}${inside ? HOST_QUERY : ""}`);
    return page;
  }

  test("inside the spreadsheet, office.js finds its host and every function answers", async () => {
    const page = await open("pane.html", { inside: true });
    const host = await page.evaluate(async () => (await Office.onReady()).host);
    expect(host).toBe("Excel");
    const mappings = await page.evaluate("Object.keys(CustomFunctions._association.mappings)");
    expect((mappings as string[]).sort()).toEqual([...worksheetFunctions.keys()].sort());
    expect(await call(page, "CUTHALFSQUARE", [3, null, null, null, null])).toEqual({ ok: true, value: 3.875 });
    expect(await call(page, "CUTHALFSQUARE", ["x", null, null, null, null])).toEqual({
      ok: false,
      value: expect.stringContaining("cannot read a length in “x”") as string,
    });
  });

  test("outside any spreadsheet, the page shows every function", async () => {
    const page = await open("pane.html");
    await page.locator(".found").first().waitFor();
    expect(await page.locator(".found").count()).toBe(worksheetFunctions.size);
  });

  test.each([
    ["pane.html", false],
    ["pane.html", true],
    ["about.html", false],
    ["about.html", true],
  ])("%s is accessible and fits 320 pixels (dark: %s)", async (file, dark) => {
    const page = await open(file, { dark });
    if (file === "pane.html") await page.locator(".found").first().waitFor();
    await expectAccessible(page, file, dark ? "dark" : "light");
  });
});

function call(page: Page, id: string, cells: unknown[]) {
  return page.evaluate(([name, values]) => window.callFunction(name, values), [id, cells] as [string, unknown[]]);
}
