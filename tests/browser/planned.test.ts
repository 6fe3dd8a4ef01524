/** The planning workbooks, opened from the practice sheet's list in a real browser. */
import type { Browser } from "playwright-core";
import { workbooks } from "../../src/workbooks";
import { BUILDING, Started } from "../practice/started";
import { describeInBrowser, launchBrowser } from "./browser";

describeInBrowser("The list of sheets", () => {
  let started: Started;
  let browser: Browser;

  beforeAll(async () => {
    started = await Started.start();
    browser = await launchBrowser();
  }, BUILDING);

  afterAll(async () => {
    await browser.close();
    await started.stop();
  });

  test("opens every planning workbook", async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(error.message));
    await page.goto(started.address);
    for (const { title } of workbooks) {
      await page.getByRole("button", { name: "Sheets…" }).click();
      await page.getByRole("dialog").getByRole("button", { name: title, exact: true }).first().click();
      await page.waitForFunction((name) => document.querySelector<HTMLInputElement>("#name")?.value === name, title, {
        timeout: 30_000,
      });
    }
    expect(complaints).toEqual([]);
    await page.close();
  });
});
