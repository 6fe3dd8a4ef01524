/** The pane in a real browser: beside a sheet in memory, and in the add-in beside a stand-in for the open workbook. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { builtAddin } from "../contract/built";
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
import { SCREENSHOTS } from "./watched";
import { HOST_QUERY, insideSpreadsheet } from "./spreadsheetHost";
import { type ModelCells, withWorkbook } from "./workbookModel";

/** The most that the pane's script may weigh, compressed. */
const MOST_BYTES = 120 * 1024;

describeInBrowser("The pane", () => {
  const open = openInBrowser();

  describe("beside a sheet in memory", () => {
    const openMemory = openBesideMemory(open);

    test("a question leads to a form, its answer, its working and a formula in the sheet", async () => {
      const page = await openMemory();
      await page.evaluate(() => {
        window.sheet.select("D10");
      });
      await page.getByLabel("Find a function").fill("how many strips");
      await page.locator(".found").first().click();
      expect(await page.locator(".form h2.function").textContent()).toBe("STRIPSNEEDED");
      expect(await page.locator(".result").textContent()).toBe("Still to fill in: count, patch.");
      await page.getByRole("textbox", { name: "count" }).fill("63");
      await page.getByRole("textbox", { name: "patch" }).fill("9 1/2");
      await expectText(page, ".result strong", "16");
      expect(await page.locator(".steps li").allTextContents()).toEqual([
        "42 in ÷ 9 1/2 in, rounded down: 4 a strip",
        "63 ÷ 4 a strip, rounded up: 16",
      ]);
      await page.getByRole("button", { name: "Put into the selected cell" }).click();
      expect(await page.evaluate(() => window.sheet.cells.D10)).toBe('=QUILT.STRIPSNEEDED(63,"9 1/2")');
      expect(await page.locator(".told").textContent()).toBe("The formula stands in D10.");
    });

    test("cells of the sheet feed the form, and the answer follows them", async () => {
      const page = await openMemory();
      await openForm(page, "CUTHALFSQUARE");
      await page.evaluate(() => {
        window.sheet.select("B3");
      });
      await page.getByRole("button", { name: "Use cell for finished" }).click();
      await expectText(page, ".result strong", "5 3/8");
      await page.evaluate(() => {
        window.sheet.type("B3", 6);
      });
      await expectText(page, ".result strong", "6 7/8");
      expect(await page.locator(".sizes dd").allTextContents()).toEqual(
        expect.arrayContaining(["6 7/8 in", "6 1/2 in", "6 in"]),
      );
    });

    test("in centimeters the units go into the formula, and the usual values follow", async () => {
      const page = await openMemory();
      await openForm(page, "CUTSQUARE");
      await page.getByRole("radio", { name: "cm" }).check();
      await page.getByRole("textbox", { name: "finished" }).fill("10");
      await expectText(page, ".result .answer", "11.5 cm");
      expect(await page.locator(".form > .formula").textContent()).toBe('=QUILT.CUTSQUARE(10,,,"cm")');
      await page.getByText("2 more choices").click();
      expect(await page.getByRole("textbox", { name: "seam" }).getAttribute("placeholder")).toBe("usual: 0.75 cm");
    });

    test("choices are lists, and TRUE or FALSE is a box", async () => {
      const page = await openMemory();
      await openForm(page, "TOPPIECES");
      await page.getByText("more choices").click();
      await page.getByRole("textbox", { name: "across" }).fill("4");
      await page.getByRole("textbox", { name: "down" }).fill("5");
      await page.getByRole("textbox", { name: "block" }).fill("12");
      await page.getByRole("combobox", { name: "setting" }).selectOption("on point");
      await page.getByRole("checkbox", { name: "alternate" }).check();
      await expectText(page, ".form > .formula", '=QUILT.TOPPIECES(4,5,12,,,"on point",,,TRUE)');
      await page.locator(".result table").waitFor();
      expect(await page.locator(".result").textContent()).toContain("side triangles");
    });

    test("what is wrong is said in a sentence", async () => {
      const page = await openMemory();
      await openForm(page, "CUTSQUARE");
      await page.getByRole("textbox", { name: "finished" }).fill("three");
      await expectText(page, ".refusal", /^#VALUE! Finished size: cannot read a length in “three”/);
    });

    test("the selected cell is explained, its slip too", async () => {
      const page = await openMemory();
      await page.getByRole("tab", { name: "This cell" }).click();
      await select(page, "B8");
      await expectText(page, "h3.call", "QUILT.STRIPSNEEDED(B4*B5/2, B7)");
      expect(await page.locator(".given dd").allTextContents()).toEqual(["B4*B5/2 = 60", "B7 = 5.375"]);
      expect(await page.locator(".steps li").last().textContent()).toBe("60 ÷ 7 a strip, rounded up: 9");
      expect(await page.locator(".assumed li").allTextContents()).toContain("width: 42 in");
      await select(page, "B22");
      await expectText(page, ".refusal", /cannot read a length in “three”/);
      await select(page, "B23");
      await expectText(page, ".cell p", /^No quilting function/);
      await select(page, "B4");
      await expectText(page, ".cell p", /holds no formula/);
    });

    test("the arguments of a cell are changed in the form and go back into that cell", async () => {
      const page = await openMemory();
      await page.getByRole("tab", { name: "This cell" }).click();
      await select(page, "B7");
      await page.getByRole("button", { name: "Change the arguments" }).click();
      await select(page, "E9");
      await page.getByText("3 more choices").click();
      await page.getByRole("combobox", { name: "made at once" }).selectOption("8");
      await expectText(page, ".result strong", "10 3/4");
      await page.getByRole("button", { name: "Put into B7" }).click();
      expect(await page.evaluate(() => window.sheet.cells.B7)).toBe("=QUILT.CUTHALFSQUARE(B3,8)");
    });

    test("units and ticks that another cell holds stay in the formula until they are changed here", async () => {
      const page = await openMemory();
      await page.evaluate(() => {
        const { cells } = window.sheet;
        [cells.B27, cells.B28] = ["Centimeters", "yes"];
        cells.B26 = "=QUILT.TOPPIECES(3,3,12,2,,,,B27,B28)";
      });
      const change = page.getByRole("button", { name: "Change the arguments" });
      await page.getByRole("tab", { name: "This cell" }).click();
      await select(page, "B26");
      await change.click();
      await expectText(page, ".form .formula", "=QUILT.TOPPIECES(3,3,12,2,,,,B27,B28)");
      expect(await page.getByRole("radio", { name: "cm" }).isChecked()).toBe(true);
      await page.getByRole("checkbox", { name: "alternate optional from B28" }).click();
      await expectText(page, ".form .formula", "=QUILT.TOPPIECES(3,3,12,2,,,,B27,TRUE)");
      await page.getByRole("radio", { name: "in", exact: true }).click();
      await expectText(page, ".form .formula", "=QUILT.TOPPIECES(3,3,12,2,,,,,TRUE)");
    });

    test("a picture is saved as SVG and PNG and put into the sheet", async () => {
      const page = await openMemory({ width: 400 });
      await page.getByRole("tab", { name: "This cell" }).click();
      await select(page, "B20");
      await page.getByRole("img").waitFor();
      expect(await page.getByRole("img").getAttribute("alt")).toContain("light 5 1/2 in");
      for (const [kind, start] of [
        ["SVG", "<svg"],
        ["PNG", "\u0089PNG"],
      ]) {
        const [download] = await Promise.all([
          page.waitForEvent("download"),
          page.getByRole("button", { name: `Save ${kind}` }).click(),
        ]);
        expect(download.suggestedFilename()).toBe(`Cutting plan.${kind.toLowerCase()}`);
        expect(
          readFileSync(await download.path())
            .toString("latin1")
            .slice(0, start.length),
        ).toBe(start);
      }
      await page.getByRole("button", { name: "Put into the sheet" }).click();
      await page.waitForFunction(() => window.sheet.pictures.length === 1);
      expect(await page.evaluate(() => atob(window.sheet.pictures[0].png).slice(1, 4))).toBe("PNG");
    });

    test("values take the place of formulas, and the formulas come back", async () => {
      const page = await openMemory();
      await page.getByRole("tab", { name: "For class" }).click();
      await select(page, "B7:B9");
      await page.getByRole("button", { name: "Replace by values" }).click();
      await expectText(page, ".told", "3 formulas are a value now in B7:B9.");
      expect(await page.evaluate(() => [window.sheet.cells.B7, window.sheet.cells.B8])).toEqual([5.375, 9]);
      await page.getByRole("button", { name: "Put the formulas back into B7:B9" }).click();
      await expectText(page, ".told", "The formulas are back in B7:B9.");
      expect(await page.evaluate(() => window.sheet.cells.B7)).toBe("=QUILT.CUTHALFSQUARE(B3)");
    });

    test("a class copy is a new file", async () => {
      const page = await openMemory();
      await page.getByRole("tab", { name: "For class" }).click();
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Make a class copy" }).click(),
      ]);
      expect(download.suggestedFilename()).toBe("Harbor lights throw for class.xlsx");
      await expectText(page, ".report", "12 formulas turned.");
    });

    test("the handout is one page on Letter and on A4, with squares true to size", async () => {
      const page = await openMemory({ width: 400 });
      await page.evaluate(() => {
        window.print = () => undefined;
      });
      await page.getByRole("tab", { name: "For class" }).click();
      await page.getByRole("button", { name: "Make the handout" }).click();
      for (const format of ["Letter", "A4"]) {
        await page.getByRole("button", { name: "Print" }).click();
        const file = join(SCREENSHOTS, `handout-${format}.pdf`);
        await page.pdf({ path: file, format });
        expect(pagesOf(file)).toBe(1);
      }
      await page.getByRole("button", { name: "Print" }).click();
      await page.emulateMedia({ media: "print" });
      const paper = page.locator(".handout-paper");
      const text = (await paper.innerText()).replace(/\s+/g, " ");
      for (const words of [
        "Light fabric 1 3/8 yd",
        "Backing 3 1/2 yd",
        "cut 5 3/8 in",
        "9 strips",
        "5 in sewn and trimmed",
        "seam: 1/4 in",
        "sleep space of an infant",
        "Version of ",
      ]) {
        expect(text).toContain(words);
      }
      expect(await paper.locator(".tick").count()).toBeGreaterThan(5);
      const box = async (part: string) => (await paper.locator(part).boundingBox())!;
      expect((await box(".inch")).width).toBeCloseTo(96, 1);
      expect((await box(".millimeters")).height).toBeCloseTo((25 / 25.4) * 96, 1);
      expect(await page.locator("#pane").isVisible()).toBe(false);
    });

    test("works from the keyboard alone", async () => {
      const page = await openMemory();
      await page.keyboard.press("Tab");
      await page.keyboard.press("ArrowRight");
      expect(await page.locator(":focus").textContent()).toBe("This cell");
      await page.keyboard.press("ArrowLeft");
      await page.keyboard.press("Tab");
      await page.keyboard.press("Tab");
      await page.keyboard.type("cutsquare");
      await page.keyboard.press("Enter");
      await page.keyboard.press("Enter");
      expect(await page.locator(":focus").textContent()).toBe("CUTSQUARE");
      await page.keyboard.press("Tab");
      await page.keyboard.type("3");
      await expectText(page, ".result strong", "3 1/2");
    });

    test.each([
      ["plain", {}],
      ["dark", { dark: true }],
      ["forced colors", { forced: true }],
      ["dark at 400 pixels", { dark: true, width: 400 }],
      // At 200 % a pane of 320 pixels has room for 160.
      ["at 200 %", { width: 160 }],
    ] as [string, Look][])("is accessible and clips nothing: %s", async (name, look) => {
      const page = await openMemory(look);
      const check = (view: string) => expectAccessible(page, view, name);
      await check("list");
      await openForm(page, "BACKINGPLAN");
      await page.getByText("more choices").click();
      await page.getByText("Examples").click();
      await page.getByRole("textbox", { name: "width", exact: true }).fill("66");
      await page.getByRole("textbox", { name: "length", exact: true }).fill("77");
      await page.getByRole("img").waitFor();
      await check("form");
      await page.getByRole("tab", { name: "This cell" }).click();
      await select(page, "B7");
      await page.locator(".sizes").last().waitFor();
      await check("cell");
      await page.getByRole("tab", { name: "For class" }).click();
      await page.getByRole("button", { name: "Make the handout" }).click();
      await page.locator(".handout").waitFor();
      await check("class");
    });
  });

  describe("in the add-in", () => {
    const folder = builtAddin();

    const PLAN: ModelCells = {
      A2: { value: "Half-square unit" },
      B2: { value: "4 1/2" },
      A3: { value: "Squares to cut" },
      B3: { formula: "=QUILT.CUTHALFSQUARE(B2)", value: 5.375 },
      A4: { value: "Size with border" },
      B4: { formula: "=QUILT.BORDERSIZE(45,54,5)", value: 55, spill: "B4:C4" },
      C4: { value: 64 },
    };

    const openBeside = (cells: ModelCells) =>
      open(folder, `pane.html${HOST_QUERY}`, {
        prepare: async (page) => {
          await insideSpreadsheet(page);
          await withWorkbook(page, structuredClone(cells));
        },
      });

    test("its script stays light", () => {
      const bytes = gzipSync(readFileSync(join(folder, "pane.js")), { level: 9 }).length;
      process.stderr.write(`pane.js: ${bytes} bytes compressed\n`);
      expect(bytes).toBeLessThan(MOST_BYTES);
    });

    test("explains the selected cell, a cell of a table by its formula", async () => {
      const page = await openBeside(PLAN);
      await page.getByRole("tab", { name: "This cell" }).click();
      await page.evaluate(() => {
        window.model.select("B3");
      });
      await expectText(page, "h3.call", "QUILT.CUTHALFSQUARE(B2)");
      expect(await page.locator(".steps li").first().textContent()).toBe("4 1/2 in + 3.4142 × 1/4 in = 5.3536 in");
      await page.evaluate(() => {
        window.model.select("C4");
      });
      await expectText(page, "h3.call", "QUILT.BORDERSIZE(45, 54, 5)");
      expect(await page.locator(".cell").textContent()).toContain("Part of the table that starts in B4.");
    });

    test("puts formulas, pictures and values into the workbook", async () => {
      const page = await openBeside(PLAN);
      await page.evaluate(() => {
        window.model.select("E5");
      });
      await openForm(page, "CUTSQUARE");
      await page.getByRole("textbox", { name: "finished" }).fill("B2");
      await expectText(page, ".result strong", "5");
      await page.getByRole("button", { name: "Put into the selected cell" }).click();
      await expectText(page, ".told", "The formula stands in E5.");
      expect(await page.evaluate(() => window.model.cells.E5?.formula)).toBe("=QUILT.CUTSQUARE(B2)");
      await page.getByRole("button", { name: "Put into the sheet" }).click();
      await page.waitForFunction(() => window.model.images.length === 1);
      expect(await page.evaluate(() => window.model.images[0])).toMatchObject({
        left: 48,
        top: 30,
        altTextTitle: "A square that finishes 4 1/2 in",
      });
      await page.evaluate(() => {
        window.model.select("B3:B4");
      });
      await page.getByRole("tab", { name: "For class" }).click();
      await page.getByRole("button", { name: "Replace by values" }).click();
      await expectText(page, ".told", "2 formulas are a value now in B3:B4.");
      expect(await page.evaluate(() => [window.model.cells.B3, window.model.cells.C4])).toEqual([
        { value: 5.375 },
        { value: 64 },
      ]);
      await page.getByRole("button", { name: "Put the formulas back into B3:B4" }).click();
      await expectText(page, ".told", "The formulas are back in B3:B4.");
      expect(await page.evaluate(() => window.model.cells.B4?.formula)).toBe("=QUILT.BORDERSIZE(45,54,5)");
    });

    test("reads the plan for the handout", async () => {
      const page = await openBeside(PLAN);
      await page.getByRole("tab", { name: "For class" }).click();
      await page.getByRole("button", { name: "Make the handout" }).click();
      await expectText(page, ".handout h1", "Harbor lights throw");
      expect(await page.locator(".handout").innerText()).toContain("cut 5 3/8 in");
    });

    test("outside any spreadsheet it reckons, and says what it cannot do", async () => {
      const page = await open(folder, "pane.html");
      await openForm(page, "CUTHALFSQUARE");
      await page.getByRole("textbox", { name: "finished" }).fill("3");
      await expectText(page, ".result strong", "3 7/8");
      expect(await page.getByRole("button", { name: "Put into the selected cell" }).count()).toBe(0);
      expect(await page.locator(".form").innerText()).toContain("not open in a spreadsheet");
    });
  });
});

function pagesOf(pdf: string): number {
  return Number(/\/Type\s*\/Pages\s*\/Count (\d+)/.exec(readFileSync(pdf, "latin1"))?.[1]);
}
