/** The practice sheet as built and served, in a real browser, by keyboard and mouse. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook } from "@cj-tech-master/excelts";
import type { BrowserContext, Page } from "playwright-core";
import { describeInBrowser } from "./browser";
import { cell, expectCell, go, kept, PATIENCE, ready, sentence, status, type } from "./practicePage";
import { SCREENSHOTS, servedPractice, Watched } from "./watched";

describeInBrowser("The practice sheet", () => {
  const address = servedPractice();
  const watched = new Watched();
  let context: BrowserContext;

  beforeEach(async () => {
    const localStorage = [{ name: "piecewise pane", value: '{"open":false}' }];
    context = await watched.browser.newContext({
      viewport: { width: 1280, height: 800 },
      storageState: { cookies: [], origins: [{ origin: new URL(address()).origin, localStorage }] },
    });
    context.on("page", (page) => {
      watched.watch(page, ["error", "warning"]);
      page.on("request", (request) => {
        const { protocol, hostname } = new URL(request.url());
        const local = hostname === "localhost" || protocol === "blob:" || protocol === "data:";
        if (!local) watched.complaints.push(`asked for ${request.url()}`);
      });
    });
  });

  test("a formula typed in a cell is answered", async () => {
    const page = await open();
    await type(page, "J5", '=QUILT.CUTHALFSQUARE("2 1/2")');
    expect(await cell(page, "J5")).toBe('J5 3 3/8 =QUILT.CUTHALFSQUARE("2 1/2")');
    await page.screenshot({ path: join(SCREENSHOTS, "practice.png") });
  });

  test("the starter plan follows a number that is changed, and can be undone", async () => {
    const page = await open();
    expect(await cell(page, "F9")).toMatch(/^F9 6 {2}7\/8 =/);
    await type(page, "B5", "4 1/2");
    expect(await cell(page, "F9")).toMatch(/^F9 5 {2}3\/8 =/);
    await page.keyboard.press("Control+z");
    await expectCell(page, "F9", /^F9 6 {2}7\/8 =/);
    await expectCell(page, "B5", /^B5 6$/);
  });

  test("fractions become numbers as they are typed; text lengths stay text", async () => {
    const page = await open();
    await type(page, "J5", "2 1/2", "2½", "3/8", "2 1/2 in", "=J5*2", "=ISTEXT(J8)");
    expect(await cell(page, "J9")).toMatch(/J9 5 =J5\*2$/);
    expect(await cell(page, "J6")).toMatch(/J6 2 1\/2$/);
    expect(await cell(page, "J7")).toMatch(/J7 3\/8$/);
    expect(await cell(page, "J10")).toMatch(/J10 TRUE =ISTEXT\(J8\)$/);
    await type(page, "K5", "=J6+J7");
    expect(await cell(page, "K5")).toMatch(/K5 2.875 =J6\+J7$/);
  });

  test("an answer in inches or yards reads as on a ruler, and is a number all the same", async () => {
    const page = await open();
    await page.getByRole("button", { name: "New", exact: true }).click();
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#name")?.value === "New sheet");
    await ready(page);
    await type(page, "A1", "1", "2", "3");
    await type(
      page,
      "B1",
      "=QUILT.CUTHALFSQUARE(3)",
      "=B1*2",
      '=QUILT.CUTSQUARE(7,0.75,,"cm")',
      '=QUILT.UNITMADE(3.875,"half square")',
    );
    await type(page, "C1", "=QUILT.BACKINGFABRIC(57,70,,,,,24)", "=QUILT.CUTSQUARE(A1:A3)", "", "", "3.5");
    await expectCell(page, "B1", "B1 3 7/8 =QUILT.CUTHALFSQUARE(3)");
    await expectCell(page, "B2", "B2 7.75 =B1*2");
    await expectCell(page, "B3", 'B3 8.5 =QUILT.CUTSQUARE(7,0.75,,"cm")');
    await expectCell(page, "B4", /^B4 3\.\d{4,} =QUILT/);
    await expectCell(page, "C1", /^C1 3 7\/8 =QUILT/);
    await expectCell(page, "C4", "C4 3 1/2");
    await expectCell(page, "C5", /^C5 3\.5$/);
    // Typed as fractions, these cells are made for them.
    await type(page, "D1", "1/2", "1/2");
    await type(page, "D1", "4.95", "4.75");
    await expectCell(page, "D1", "D1 4.95");
    await expectCell(page, "D2", /^D2 4 +3\/4$/);
    await page.screenshot({ path: join(SCREENSHOTS, "practice-ruled.png") });
  });

  test("a fraction that a built-in function hands on stays text", async () => {
    const page = await open();
    await type(page, "J5", '=QUILT.CUTSQUARE(IF(1=1,"3/8",""))', '=IFERROR("3/8",0)');
    await expectCell(page, "J5", /^J5 7\/8 =/);
    await expectCell(page, "J6", /^J6 3\/8 =/);
  });

  test("a fraction that other programs take for a date is remarked on", async () => {
    const page = await open();
    await type(page, "J5", "3/8");
    await expect(status(page)).resolves.toMatch(/^3\/8 was read as the fraction 0.375; to enter a date/);
  });

  test("the list of functions appears while typing, whole, and each argument has its help", async () => {
    const page = await open();
    await go(page, "J5");
    await page.keyboard.type("=QUILT.", { delay: 20 });
    const list = page.locator('ul[data-u-comp="sheets-formula-editor"] li');
    await list.nth(11).waitFor(PATIENCE);
    expect(await list.filter({ hasText: "QUILT.STRIPFABRIC" }).count()).toBe(1);
    expect(await list.first().textContent()).toMatch(/^QUILT\./);
    await page.keyboard.type("CUTHALFSQ", { delay: 20 });
    await list.nth(1).waitFor({ state: "detached" });
    expect(await list.textContent()).toContain("Size to cut the squares for half-square units");
    await page.screenshot({ path: join(SCREENSHOTS, "practice-list.png") });
    await page.keyboard.press("Tab");
    const help = page.locator('[data-u-comp="rect-popup"]').filter({ hasText: "Units from one pair of squares" });
    await help.waitFor(PATIENCE);
    await help.getByText("Seam allowance: 1/4 in (usual)").waitFor();
    await page.screenshot({ path: join(SCREENSHOTS, "practice-help.png") });
    await page.keyboard.type("3)");
    await page.keyboard.press("Enter");
    await expectCell(page, "J5", "J5 3 7/8 =QUILT.CUTHALFSQUARE(3)");
  });

  test("a formula typed without a pause is taken as it is, whatever the list shows", async () => {
    const page = await open();
    await go(page, "J5");
    await page.keyboard.type("=QUILT.CUT");
    await page.locator('ul[data-u-comp="sheets-formula-editor"] li').nth(1).waitFor(PATIENCE);
    await page.keyboard.type("SQUARE(3)");
    await page.keyboard.press("Enter");
    await expectCell(page, "J5", "J5 3 1/2 =QUILT.CUTSQUARE(3)");
  });

  test("an error tells its sentence on selection, in the status line and beside the cell", async () => {
    const page = await open();
    await type(page, "J5", '=QUILT.CUTSQUARE("x")', "=J5+1");
    await expectCell(page, "J5", /^J5 #VALUE! finished size: cannot read a length in “x”/);
    expect(await sentence(page).textContent()).toMatch(/^#VALUE! finished size: cannot read a length/);
    await page.screenshot({ path: join(SCREENSHOTS, "practice-error.png") });
    await expectCell(page, "J6", /^J6 #VALUE! From J5: finished size: cannot read a length in “x”/);
    await go(page, "J9");
    await sentence(page).waitFor({ state: "detached" });
  });

  test("an error tells its sentence on hover", async () => {
    const page = await open();
    await type(page, "C6", '=QUILT.CUTSQUARE("x")');
    await go(page, "A1");
    const { x, y } = await middleOf(page, 2, 5);
    await page.mouse.move(x - 8, y);
    await page.mouse.move(x, y);
    await sentence(page).waitFor(PATIENCE);
    expect(await sentence(page).textContent()).toMatch(/^#VALUE! finished size: cannot read a length in “x”/);
    await page.mouse.move(x, y + 200);
    await sentence(page).waitFor({ state: "detached" });
  });

  test("a table spills, and says so where it has no room", async () => {
    const page = await open();
    await type(page, "J5", "=QUILT.BACKINGPLAN(66,77)");
    await expectCell(page, "K6", "K6 2");
    await expectCell(page, "J7", "J7 seams across");
    await type(page, "K6", "mine");
    await expectCell(page, "J5", /^J5 #SPILL! The answer is a table and needs room/);
  });

  test("work survives another sheet, and is found in the list", async () => {
    const page = await open();
    await type(page, "J5", "not lost");
    await page.getByRole("button", { name: "New" }).click();
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#name")?.value === "New sheet");
    await type(page, "A1", "=1+1");
    await kept(page);
    await page.getByRole("button", { name: "Sheets…" }).click();
    const list = page.getByRole("dialog");
    await list.getByText("New sheet").waitFor(PATIENCE);
    // The one changed last comes first.
    expect(await list.locator("ul").last().locator("li").first().textContent()).toMatch(/^New sheet.*, open now$/);
    await page.screenshot({ path: join(SCREENSHOTS, "practice-sheets.png") });
    await list.getByRole("button", { name: "Throw quilt for a two-evening class", exact: true }).click();
    await expectCell(page, "J5", "J5 not lost");
  });

  test("two workbooks with the same formulas are never worked out with each other's numbers", async () => {
    const page = await open();
    await type(page, "B5", "4");
    await kept(page);
    await page.getByRole("button", { name: "Sheets…" }).click();
    await page.getByRole("button", { name: "Throw quilt plan" }).click();
    await expectCell(page, "F5", /^F5 60 =/);
    await type(page, "B6", "9");
    await expectCell(page, "F5", /^F5 66 =/);
    expect(await cell(page, "F9")).toMatch(/^F9 6 {2}7\/8 =/);
  });

  test("a sheet is saved as .xlsx and opened again", async () => {
    const page = await open();
    await type(page, "J5", "=QUILT.CUTHALFSQUARE(3)");
    await type(page, "B5", "5");
    await expectCell(page, "F9", /^F9 5 {2}7\/8 =/);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as .xlsx" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("Throw quilt for a two-evening class.xlsx");
    const file = join(SCREENSHOTS, "opened again.xlsx");
    await download.saveAs(file);
    await page.locator("#file").setInputFiles(file);
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#name")?.value === "opened again");
    await expectCell(page, "J5", "J5 3 7/8 =QUILT.CUTHALFSQUARE(3)");
    await expectCell(page, "F9", /^F9 5 {2}7\/8 =/);
    await kept(page);
    await page.screenshot({ path: join(SCREENSHOTS, "practice-opened.png") });
  });

  test("a fraction stays text in a cell that is made for text", async () => {
    const book = new Workbook();
    book.addWorksheet("Names").getCell("A1").numFmt = "@";
    const file = join(SCREENSHOTS, "made for text.xlsx");
    writeFileSync(file, new Uint8Array(await book.xlsx.writeBuffer()));
    const page = await open();
    await page.locator("#file").setInputFiles(file);
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#name")?.value === "made for text");
    await type(page, "A1", "3/8", "3/8");
    await type(page, "B1", "=ISTEXT(A1)", "=ISTEXT(A2)");
    await expectCell(page, "B1", "B1 TRUE =ISTEXT(A1)");
    await expectCell(page, "B2", "B2 FALSE =ISTEXT(A2)");
  });

  test("a file that cannot be opened is named with the reason, and nothing is lost", async () => {
    const page = await open();
    await type(page, "J5", "still here");
    const file = join(SCREENSHOTS, "no workbook.xlsx");
    writeFileSync(file, "quilt, size");
    await page.locator("#file").setInputFiles(file);
    await expect(page.getByRole("alert").textContent(PATIENCE)).resolves.toMatch(
      /^no workbook.xlsx: this is no .xlsx file/,
    );
    await expectCell(page, "J5", "J5 still here");
  });

  test("everything can be done with the keyboard alone", async () => {
    const page = await open();
    // The plan opens in its first yellow cell.
    await page.keyboard.type("=QUILT.CUTSQUARE(2)");
    await page.keyboard.press("Enter");
    await page.keyboard.press("F6");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("sheets");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("new");
    await page.keyboard.press("F6");
    await page.keyboard.press("ArrowUp");
    await page.waitForFunction(() =>
      /^B5 2 +1\/2 =QUILT.CUTSQUARE\(2\)$/.test(document.querySelector("#status")?.textContent ?? ""),
    );
    await page.keyboard.press("F6");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#name")?.value === "New sheet");
    await ready(page);
    await page.keyboard.type("=QUILT.CUTSQUARE(3)");
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
    await page.waitForFunction(() => document.querySelector("#status")?.textContent === "A1 3 1/2 =QUILT.CUTSQUARE(3)");
  });

  test("at 200 % the page is whole", async () => {
    const page = await open({ width: 640, height: 400 });
    for (const name of ["Sheets…", "New", "Open file…", "Save as .xlsx"]) {
      const box = await page.getByRole("button", { name, exact: true }).boundingBox();
      expect(box && box.x >= 0 && box.x + box.width <= 640).toBe(true);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(640);
    const heights = await page.locator("#grid canvas").evaluateAll((all) => all.map((canvas) => canvas.clientHeight));
    expect(Math.max(...heights)).toBeGreaterThan(150);
    await page.screenshot({ path: join(SCREENSHOTS, "practice-200.png") });
  });

  async function open(viewport?: { width: number; height: number }): Promise<Page> {
    const page = await context.newPage();
    if (viewport) await page.setViewportSize(viewport);
    await page.goto(address());
    await ready(page);
    return page;
  }
});

/** The middle of a cell of the starter plan, on the page. */
async function middleOf(page: Page, column: number, row: number): Promise<{ x: number; y: number }> {
  const box = await page.locator("#grid canvas").evaluateAll((all) => {
    const [largest] = all.map((canvas) => canvas.getBoundingClientRect()).sort((a, b) => b.height - a.height);
    return { x: largest.x, y: largest.y };
  });
  const widths = [46, 215, 76, 54];
  const heights = [20, 34, 22, 22, 22, 22, 22];
  const sum = (sizes: number[]) => sizes.reduce((total, size) => total + size, 0);
  return {
    x: box.x + sum(widths.slice(0, column + 1)) + widths[column + 1] / 2,
    y: box.y + sum(heights.slice(0, row + 1)) + heights[row + 1] / 2,
  };
}
