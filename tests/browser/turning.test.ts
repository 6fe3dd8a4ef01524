/** Blocks turned on the picture, in a real browser: by mouse and keyboard, beside a sheet in memory and beside a workbook. */
import type { Page } from "playwright-core";
import { builtAddin } from "../contract/built";
import { quiltPlan } from "../pane/plan";
import { describeInBrowser } from "./browser";
import {
  expectAccessible,
  expectText,
  type Look,
  openBesideMemory,
  openForm,
  openInBrowser,
  select,
} from "./paneHarness";
import { HOST_QUERY, insideSpreadsheet } from "./spreadsheetHost";
import { type ModelCells, withWorkbook } from "./workbookModel";

const FILLS = { B1: "#F2D16B", C2: "#A63D2F", C3: "#1D3557" };

describeInBrowser("Turning on the picture", () => {
  const open = openInBrowser();

  describe("beside a sheet in memory", () => {
    const openMemory = openBesideMemory(open);

    async function openQuilt(look: Look = {}): Promise<Page> {
      const page = await openMemory({ ...look, plan: "quilt" });
      await page.evaluate((fills) => Object.assign(window.sheet.colors, fills), FILLS);
      await page.getByRole("tab", { name: "This cell" }).click();
      await select(page, "B10");
      await page.locator(".spot").first().waitFor();
      return page;
    }

    test("a press turns the block under the pointer, and the picture follows", async () => {
      const page = await openQuilt();
      const before = await page.getByRole("img").getAttribute("src");
      const image = (await page.getByRole("img").boundingBox())!;
      const spot = page.getByRole("button", { name: "Row 2, column 2: star, turned half round; press to turn" });
      const box = (await spot.boundingBox())!;
      expect(box.x).toBeGreaterThan(image.x);
      expect(box.y + box.height).toBeLessThan(image.y + image.height);
      await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
      await expectText(page, ".told", "G2 now holds “star 270”.");
      expect(await page.evaluate(() => window.sheet.cells.G2)).toBe("star 270");
      await page.getByRole("button", { name: "Row 2, column 2: star, turned three quarters" }).waitFor();
      expect(await page.getByRole("img").getAttribute("src")).not.toBe(before);
    });

    test("from the keyboard, and the focus stays on the block", async () => {
      const page = await openQuilt();
      await page.locator(".spot").first().focus();
      for (const key of ["ArrowRight", "ArrowRight", "Enter"]) await page.keyboard.press(key);
      await expectText(page, ".told", "H1 now holds “star 180”.");
      await page.getByRole("button", { name: "Row 1, column 3: star, turned half round" }).waitFor();
      expect(await page.locator(":focus").getAttribute("aria-label")).toContain("Row 1, column 3");
      await page.keyboard.press("ArrowDown");
      await page.keyboard.press(" ");
      await expectText(page, ".told", "H2 now holds “plain 90”.");
      // One of the blocks takes part in the order of Tab.
      expect(await page.locator('.spot[tabindex="0"]').count()).toBe(1);
    });

    test("what was opened stays open, and the picture that is saved has no controls", async () => {
      const page = await openQuilt();
      await page.getByText("Where the rule comes from").click();
      await page.locator(".spot").first().click();
      await expectText(page, ".told", "F1 now holds “star 90”.");
      await page.getByRole("button", { name: "Row 1, column 1: star, turned a quarter" }).waitFor();
      expect(await page.getByText("Where the rule comes from").evaluate((fold) => fold.closest("details")!.open)).toBe(
        true,
      );
      await page.getByRole("button", { name: "Put into the sheet" }).click();
      await page.waitForFunction(() => window.sheet.pictures.length === 1);
      expect(await page.evaluate(() => window.sheet.pictures[0].svg)).not.toMatch(/button|press to turn/);
    });

    test("a formula in the layout is not written over", async () => {
      const page = await openQuilt();
      await page.evaluate(() => {
        window.sheet.cells.F1 = "=B1";
      });
      await page.locator(".spot").first().click();
      await expectText(page, ".told", "F1 holds a formula, which is not written over.");
    });

    test("in the form, too", async () => {
      const page = await openMemory({ plan: "quilt" });
      await openForm(page, "BLOCKPIECES");
      await page.getByRole("textbox", { name: "block" }).fill("B1:D3");
      await page.getByRole("textbox", { name: "size" }).fill("6");
      await page.getByRole("button", { name: "Row 1, column 2: sand / slate; press to turn" }).click();
      await expectText(page, ".told", "C1 now holds “sand \\ slate”.");
      await page.getByRole("button", { name: "Row 1, column 2: sand \\ slate; press to turn" }).waitFor();
    });

    test("the working of one cell is never shown for another, however late it comes", async () => {
      const page = await openQuilt();
      await page.evaluate(() => {
        // Cells are handed over the later, the fewer looks have been begun.
        const values = window.sheet.values.bind(window.sheet);
        let delay = 900;
        window.sheet.values = async (reference, from) => {
          delay -= 60;
          await new Promise((resolve) => setTimeout(resolve, Math.max(0, delay)));
          return values(reference, from);
        };
        const wrong: string[] = [];
        Object.assign(window, { wrong });
        new MutationObserver(() => {
          const shown = document.querySelector(".cell h2")?.firstChild?.textContent;
          const call = document.querySelector(".cell h3")?.textContent ?? "";
          const id = { B10: "QUILTFABRICS", B11: "BLOCKPIECES", B12: "SIZETABLE" }[shown ?? ""] ?? "";
          // @ts-expect-error what the sheet keeps to itself
          const selected = window.sheet.selection;
          if (!call.includes(id) || shown !== selected) wrong.push(`${shown}: ${call} while ${selected}`);
        }).observe(document.querySelector(".cell")!, { childList: true });
      });
      for (const [cell, rest] of [
        ["B11", 150],
        ["B12", 140],
        ["B10", 130],
        ["B11", 20],
        ["B12", 160],
        ["B11", 0],
      ] as const) {
        await select(page, cell);
        await page.waitForTimeout(rest);
      }
      await expectText(page, ".cell h3", /^QUILT\.BLOCKPIECES/);
      await page.waitForTimeout(1200);
      await expectText(page, ".cell h3", /^QUILT\.BLOCKPIECES/);
      expect(await page.evaluate("wrong")).toEqual([]);
    });

    test.each([
      ["plain", {}],
      ["dark", { dark: true }],
      ["forced colors", { forced: true }],
      ["at 200 %", { width: 160 }],
    ] as [string, Look][])("is accessible and clips nothing: %s", async (name, look) => {
      const page = await openQuilt(look);
      await page.locator(".spot").nth(2).focus();
      await expectAccessible(page, "quilt", name);
      await select(page, "B11");
      await expectText(page, ".cell h3", /BLOCKPIECES/);
      await expectAccessible(page, "block", name);
      await select(page, "B12");
      await expectText(page, ".cell h3", /SIZETABLE/);
      await expectAccessible(page, "sizes", name);
    });
  });

  describe("in the add-in", () => {
    const folder = builtAddin();

    /** The cells of the quilt's plan as the program holds them. */
    function cells(): ModelCells {
      const model: ModelCells = {};
      for (const [name, content] of Object.entries(quiltPlan())) {
        const isFormula = typeof content === "string" && content.startsWith("=");
        model[name] = isFormula ? { formula: content, value: 0 } : { value: content };
      }
      for (const [name, fill] of Object.entries(FILLS)) model[name]!.fill = fill;
      return model;
    }

    async function openBeside(plan: ModelCells, decimalSeparator = "."): Promise<Page> {
      const page = await open(folder, `pane.html${HOST_QUERY}`, {
        prepare: async (opened) => {
          await insideSpreadsheet(opened);
          await withWorkbook(opened, plan, decimalSeparator);
        },
      });
      await page.getByRole("tab", { name: "This cell" }).click();
      await page.evaluate(() => {
        window.model.select("B10");
      });
      return page;
    }

    test("fills give the colors, and a turn is written as a text", async () => {
      const page = await openBeside(cells());
      await page.locator(".spot").first().waitFor();
      const source = decodeURIComponent((await page.getByRole("img").getAttribute("src"))!);
      for (const fill of Object.values(FILLS)) expect(source).toContain(`fill="${fill.toLowerCase()}"`);
      await page.getByRole("button", { name: "Row 1, column 1: star; press to turn" }).click();
      await expectText(page, ".told", "F1 now holds “star 90”.");
      expect(await page.evaluate(() => window.model.cells.F1)).toEqual({ value: "star 90" });
      await page.getByRole("button", { name: "Row 1, column 1: star, turned a quarter" }).waitFor();
    });

    test("cells that a formula fills are not written into", async () => {
      const plan = cells();
      plan.F1 = { formula: "=TRANSPOSE(L1:M3)", value: "star", spill: "F1:H2" };
      const page = await openBeside(plan);
      await page.getByRole("button", { name: "Row 2, column 2" }).click();
      await expectText(page, ".told", "G2 is part of the table that starts in F1.");
      expect(await page.evaluate(() => window.model.cells.G2?.value)).toBe("star 180");
    });

    test("numbers are shown and read with the program's comma, formulas go to it with points", async () => {
      const page = await openBeside({ A1: { value: 1 } }, ",");
      await page.evaluate(() => {
        window.model.select("C3");
      });
      await page.getByRole("tab", { name: "Find" }).click();
      await openForm(page, "CUTSQUARE");
      await page.getByRole("radio", { name: "cm" }).check();
      await page.getByRole("textbox", { name: "finished" }).fill("2,5");
      await expectText(page, ".result .answer", "4 cm");
      await page.getByRole("textbox", { name: "finished" }).fill("2,25");
      await expectText(page, ".result .answer", "3,75 cm");
      expect(await page.locator(".form > .formula").textContent()).toBe('=QUILT.CUTSQUARE(2,25;;;"cm")');
      await page.getByRole("button", { name: "Put into the selected cell" }).click();
      await expectText(page, ".told", "The formula stands in C3.");
      expect(await page.evaluate(() => window.model.cells.C3?.formula)).toBe('=QUILT.CUTSQUARE(2.25,,,"cm")');
    });
  });
});
