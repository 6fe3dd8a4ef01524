/** The planning workbooks, opened from the practice sheet's list in a real browser. */
import { workbooks } from "../../src/workbooks";
import { describeInBrowser } from "./browser";
import { servedPractice, Watched } from "./watched";

describeInBrowser("The list of sheets", () => {
  const address = servedPractice();
  const watched = new Watched();

  test("opens every planning workbook", async () => {
    const page = await watched.browser.newPage({ viewport: { width: 1280, height: 800 } });
    watched.watch(page);
    await page.goto(address());
    for (const { title } of workbooks) {
      await page.getByRole("button", { name: "Sheets…" }).click();
      await page.getByRole("dialog").getByRole("button", { name: title, exact: true }).first().click();
      await page.waitForFunction((name) => document.querySelector<HTMLInputElement>("#name")?.value === name, title, {
        timeout: 30_000,
      });
    }
  });
});
