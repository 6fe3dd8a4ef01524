/**
 * Takes the pictures for the README from the built pages in Chromium: `npm run screenshots` writes docs/pictures/*.png.
 */
import { existsSync, mkdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import type { Browser, Page } from "playwright-core";
import { launchBrowser } from "../tests/browser/browser";
import { buildMemoryPage, removeMemoryPage } from "../tests/browser/memoryBuild";
import { ROOT, Started } from "../tests/practice/started";

const PICTURES = join(ROOT, "docs/pictures");

/** A README with heavy pictures loads slowly, in bytes. */
const LARGEST = 250 * 1024;

const PATIENCE = { timeout: 60_000 };

const PANE_ADDRESS = "https://localhost:3000";
const TYPES: Record<string, string> = { html: "text/html", js: "text/javascript", css: "text/css" };

type Clip = NonNullable<Parameters<Page["screenshot"]>[0]>["clip"];

async function take(page: Page, name: string, clip?: Clip): Promise<void> {
  const path = join(PICTURES, `${name}.png`);
  await page.screenshot({ path, clip });
  const { size } = statSync(path);
  console.log(`${relative(ROOT, path)}: ${(size / 1024).toFixed(0)} KB`);
  if (size > LARGEST) throw new Error(`${name}.png is larger than ${LARGEST / 1024} KB.`);
}

/** The practice sheet with its starter plan, and the list of functions while one is typed. */
async function practiceSheet(browser: Browser): Promise<void> {
  const started = await Started.start();
  try {
    const page = await browser.newPage({ viewport: { width: 1400, height: 720 } });
    await page.goto(started.address);
    await page.waitForFunction(() => document.querySelector("#status b"), undefined, PATIENCE);
    await go(page, "F9");
    await page.waitForTimeout(1000);
    await take(page, "practice-sheet");
    // Wide enough for the list below the cell.
    await page.setViewportSize({ width: 1180, height: 720 });
    await page.keyboard.press("F8");
    await go(page, "J5");
    await page.keyboard.type("=QUILT.CUT", { delay: 30 });
    await page.waitForTimeout(1000);
    await take(page, "list-while-typing", { x: 180, y: 84, width: 900, height: 572 });
    await page.close();
  } finally {
    await started.stop();
  }
}

async function go(page: Page, cell: string): Promise<void> {
  await page.locator('[data-u-comp="defined-name"] input').click({ delay: 80 });
  await page.keyboard.press("Control+a");
  await page.keyboard.type(cell);
  await page.keyboard.press("Enter");
  await page.locator("#status b").getByText(cell, { exact: true }).waitFor(PATIENCE);
}

/** The pane with a function filled in, its answer and its working. */
async function pane(browser: Browser): Promise<void> {
  const folder = await buildMemoryPage();
  try {
    const page = await browser.newPage({ viewport: { width: 420, height: 860 } });
    await page.route("**/*", async (route) => {
      const path = join(folder, new URL(route.request().url()).pathname);
      if (!existsSync(path)) return route.abort();
      return route.fulfill({ body: readFileSync(path), contentType: TYPES[path.split(".").at(-1)!] });
    });
    await page.goto(`${PANE_ADDRESS}/page.html`);
    await page.getByLabel("Find a function").fill("how many strips");
    await page.locator(".found").first().click();
    await page.getByRole("textbox", { name: "count" }).fill("63");
    await page.getByRole("textbox", { name: "patch" }).fill("9 1/2");
    await page.locator(".result strong").getByText("16", { exact: true }).waitFor(PATIENCE);
    await take(page, "pane");
    await page.close();
  } finally {
    removeMemoryPage(folder);
  }
}

async function main(): Promise<void> {
  mkdirSync(PICTURES, { recursive: true });
  const browser = await launchBrowser();
  try {
    await pane(browser);
    await practiceSheet(browser);
  } finally {
    await browser.close();
  }
}

void main();
