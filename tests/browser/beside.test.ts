/** The pane beside the grid of the practice sheet, as built and served, in a real browser. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import type { BrowserContextOptions, Page } from "playwright-core";
import { describeInBrowser } from "./browser";
import { expectAccessible, expectText } from "./paneHarness";
import { expectCell, go, PATIENCE, ready, type } from "./practicePage";
import { SCREENSHOTS, servedPractice, Watched } from "./watched";

describeInBrowser("The pane beside the grid", () => {
  const address = servedPractice();
  const watched = new Watched();

  /** The starter sheet, with the pane open where the window has room for both. */
  async function open(look: BrowserContextOptions = {}): Promise<Page> {
    const page = await watched.browser.newPage({ viewport: { width: 1440, height: 900 }, ...look });
    watched.watch(page);
    await page.goto(address());
    await ready(page);
    return page;
  }

  const tab = (page: Page, name: string) => page.getByRole("tab", { name }).click(PATIENCE);

  test("the sentence of an error covers no cells while the pane tells it", async () => {
    const page = await open();
    await type(page, "J5", '=QUILT.CUTHALFSQUARE("x")');
    await expectCell(page, "J5", /^J5 #VALUE! finished size: cannot read a length/);
    await page.waitForTimeout(500);
    expect(await page.locator(".error-sentence").count()).toBe(0);
  });

  test("a question leads to a function, its form reads the selected cell, and the formula stands in the sheet", async () => {
    const page = await open();
    await tab(page, "Find");
    await page.getByLabel("Find a function").fill("half square");
    await page.locator(".found", { hasText: "CUTHALFSQUARE" }).first().click();
    await go(page, "B5");
    await page.getByRole("button", { name: "Use cell for finished" }).click();
    await expectText(page, ".result strong", "6 7/8");
    expect(await page.locator(".form > .formula").textContent()).toBe("=QUILT.CUTHALFSQUARE(B5)");
    await go(page, "J5");
    await page.getByRole("button", { name: "Put into the selected cell" }).click();
    await expectCell(page, "J5", /^J5 6 7\/8 =QUILT\.CUTHALFSQUARE\(B5\)$/);
    await type(page, "B5", "3");
    await expectText(page, ".result strong", "3 7/8");
  });

  test("cells of another page are named with it, and a formula is not put where it would read other cells", async () => {
    const page = await open();
    const sheetTab = (name: string) => page.locator('[data-u-comp="slide-tab-item"]', { hasText: name }).click();
    await tab(page, "Find");
    await page.getByLabel("Find a function").fill("border size");
    await page.locator(".found", { hasText: "BORDERSIZE" }).first().click();
    await go(page, "B5");
    await page.getByRole("button", { name: "Use cell for width" }).click();
    await sheetTab("Backing");
    await go(page, "B6");
    await page.getByRole("button", { name: "Use cell for length" }).click();
    await page.getByRole("textbox", { name: "border" }).fill("3");
    await expectText(page, ".form > .formula", "=QUILT.BORDERSIZE(B5,'Backing'!B6,3)");
    await page.getByRole("button", { name: "Put into the selected cell" }).click();
    await expectText(page, ".told", /^The formula reads cells of the page “Plan”|^Still to fill in/);
  });

  test("the selected cell is explained, and follows the selection and the numbers", async () => {
    const page = await open();
    await tab(page, "This cell");
    await go(page, "F9");
    await expectText(page, "h3.call", /^QUILT\.CUTHALFSQUARE/);
    await page.locator(".steps li").first().waitFor(PATIENCE);
    await type(page, "J5", '=QUILT.CUTSQUARE("three")', "=J5+1");
    await go(page, "J5");
    await expectText(page, ".refusal", /cannot read a length in “three”/);
    await go(page, "J6");
    await expectText(page, ".cell p", /No quilting function/);
  });

  test("a cutting plan is drawn when one of its cells is selected", async () => {
    const page = await open();
    await tab(page, "This cell");
    await type(page, "K5", "light", "dark");
    await type(page, "L5", "6.5", "2.5");
    await type(page, "M5", "6.5", "2.5");
    await type(page, "N5", "14", "40");
    await type(page, "P5", "=QUILT.PLAN(K5:N6)");
    for (const name of ["P5", "P7"]) {
      await go(page, name);
      await page.getByRole("img", { name: /light/ }).waitFor(PATIENCE);
      await expectText(page, "h3.call", "QUILT.PLAN(K5:N6)");
    }
    await page.screenshot({ path: join(SCREENSHOTS, "beside-plan.png") });
  });

  test("a quilt is drawn from its cells, and a block turned on the picture turns in its cell", async () => {
    const page = await open();
    await tab(page, "This cell");
    await type(page, "K5", "star", " ", " ", "plain");
    await type(page, "L5", "sand", "sand \\ slate", "sand", "rust");
    await type(page, "M5", "sand / slate", "rust", "slate / sand");
    await type(page, "N5", "sand", "slate \\ sand", "sand");
    await type(page, "K10", "star", "plain");
    await type(page, "L10", "plain", "star 180");
    await type(page, "K14", "=QUILT.QUILTFABRICS(K10:L11,K5:N8,6)");
    await go(page, "K14");
    const spot = page.getByRole("button", { name: "Row 2, column 2: star, turned half round; press to turn" });
    await spot.click(PATIENCE);
    await expectText(page, ".told", "L11 now holds “star 270”.");
    await page.screenshot({ path: join(SCREENSHOTS, "beside-quilt.png") });
    await expectCell(page, "L11", "L11 star 270");
  });

  test("values take the place of formulas, and the formulas come back", async () => {
    const page = await open();
    await type(page, "J5", "=QUILT.CUTSQUARE(B5)");
    await go(page, "J5");
    await tab(page, "For class");
    await page.getByRole("button", { name: "Replace by values" }).click();
    await expectText(page, ".told", "1 formula is a value now in J5.");
    await expectCell(page, "J5", "J5 6.5");
    await page.getByRole("button", { name: "Put the formulas back into J5" }).click();
    await expectCell(page, "J5", "J5 6 1/2 =QUILT.CUTSQUARE(B5)");
  });

  test("a class copy holds plain formulas, and the report says how many", async () => {
    const page = await open();
    await tab(page, "For class");
    const [download] = await Promise.all([
      page.waitForEvent("download", PATIENCE),
      page.getByRole("button", { name: "Make a class copy" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("Throw quilt for a two-evening class for class.xlsx");
    await expectText(page, ".report", /\d+ formulas turned into plain formulas/);
    const parts = Object.entries(unzipSync(readFileSync(await download.path())));
    const formulas = parts
      .filter(([name]) => name.endsWith(".xml"))
      .flatMap(([, bytes]) => strFromU8(bytes).match(/<f[ >][^<]*/g) ?? []);
    expect(formulas.length).toBeGreaterThan(15);
    expect(formulas.filter((formula) => /QUILT/i.test(formula))).toEqual([]);
  });

  test("the handout is one page on Letter and on A4, without the grid", async () => {
    const page = await open();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await tab(page, "For class");
    await page.getByRole("button", { name: "Make the handout" }).click();
    for (const format of ["Letter", "A4"]) {
      await page.getByRole("button", { name: "Print" }).click();
      const file = join(SCREENSHOTS, `beside-handout-${format}.pdf`);
      await page.pdf({ path: file, format });
      expect(/\/Type\s*\/Pages\s*\/Count (\d+)/.exec(readFileSync(file, "latin1"))?.[1]).toBe("1");
    }
    await page.getByRole("button", { name: "Print" }).click();
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#grid").isVisible()).toBe(false);
  });

  test("F8 opens and closes it, F6 leads there and back, the edge moves by keys, and a reload remembers", async () => {
    const page = await open();
    const beside = page.locator("#beside");
    await beside.getByRole("tab").first().waitFor(PATIENCE);
    await page.keyboard.press("F8");
    expect(await beside.isVisible()).toBe(false);
    await page.keyboard.press("F8");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("role"))).toBe("tab");
    const width = async () => (await beside.boundingBox())!.width;
    const before = await width();
    await page.locator("#edge").focus();
    await page.keyboard.press("ArrowLeft");
    const after = await width();
    expect(after).toBeGreaterThan(before);
    await page.keyboard.press("F8");
    await page.reload();
    await ready(page);
    expect(await beside.isVisible()).toBe(false);
    await page.getByRole("button", { name: "Find and explain" }).click();
    expect(await width()).toBeCloseTo(after, 0);
  });

  test.each([
    ["wide", {}],
    ["dark", { colorScheme: "dark" }],
    ["forced colors", { forcedColors: "active" }],
    ["narrow", { viewport: { width: 320, height: 640 } }],
    ["at 200 %", { viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 }],
  ] as [string, BrowserContextOptions][])("is accessible and clips nothing: %s", async (name, look) => {
    const page = await open(look);
    const beside = page.locator("#beside");
    if (!(await beside.isVisible())) await page.getByRole("button", { name: "Find and explain" }).click();
    await beside.getByRole("tab").first().waitFor(PATIENCE);
    for (const view of ["Find", "This cell", "For class"]) {
      await tab(page, view);
      await expectAccessible(page, `beside-${view}`, name, "#beside");
    }
  });
});
