/** The built pane page in a real browser: inside the spreadsheet, as far as office.js can tell, and outside of any. */
import type { Page } from "playwright-core";
import { worksheetFunctions } from "../../functions";
import { builtAddin } from "../contract/built";
import { callsWithStrangers, direct, ids, isClean, padded, rows } from "../contract/calls";
import type { Call, Outcome } from "../contract/vendorRuntime";
import { describeInBrowser } from "./browser";
import { ADDRESS, expectAccessible, serveOnly } from "./paneHarness";
import { HOST_QUERY, insideSpreadsheet } from "./spreadsheetHost";
import { Watched } from "./watched";

describeInBrowser("The pane page", () => {
  const folder = builtAddin();
  const watched = new Watched();

  /** A page on which the built files stand at their address, and nothing else is reached. */
  async function open(file: string, { inside = false, width = 320, dark = false } = {}): Promise<Page> {
    const page = await watched.browser.newPage({
      viewport: { width, height: 720 },
      colorScheme: dark ? "dark" : "light",
    });
    watched.watch(page);
    await serveOnly(folder, page, watched);
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
  });

  test("inside the spreadsheet, every check value comes back as the worksheet function gives it", async () => {
    const page = await open("pane.html", { inside: true });
    const outcomes = await call(
      page,
      rows.map((row) => padded(row.call, row.cells)),
    );
    const failures = rows.flatMap((row, index) =>
      JSON.stringify(outcomes[index]) === JSON.stringify(direct(row)) ? [] : [{ row, got: outcomes[index] }],
    );
    expect(failures).toEqual([]);
  });

  test("inside the spreadsheet, cells that hold something else than meant get an answer or a sentence", async () => {
    const page = await open("pane.html", { inside: true });
    const calls = ids.flatMap((id) => [padded(id, []), ...callsWithStrangers(id)]);
    const outcomes = await call(page, calls);
    const failures = outcomes.flatMap((outcome, index) => (isClean(outcome) ? [] : [{ call: calls[index], outcome }]));
    expect(failures).toEqual([]);
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

async function call(page: Page, calls: readonly Call[]): Promise<Outcome[]> {
  await page.evaluate(async () => {
    await Office.onReady();
  });
  const outcomes = await page.evaluate(
    async (text) => JSON.stringify(await window.callFunctions(JSON.parse(text) as Call[])),
    JSON.stringify(calls),
  );
  return JSON.parse(outcomes) as Outcome[];
}
