/** The pane's pages in a browser: nothing else is reached, and nothing may be complained of. */
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { launchBrowser } from "./browser";
import { buildMemoryPage, removeMemoryPage } from "./memoryBuild";

const ADDRESS = "https://localhost:3000";
const VENDOR_TELEMETRY = "https://telemetryservice.firstpartyapps.oaspapps.com";
export const SCREENSHOTS = join(__dirname, "../../dist/screenshots");
/** No script or style stands in the page itself, and nothing is fetched from elsewhere. */
const STRICT =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'";
const TYPES: Record<string, string> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".png": "image/png",
};

export interface Look {
  width?: number;
  dark?: boolean;
  forced?: boolean;
  headers?: Record<string, string>;
  prepare?: (page: Page) => Promise<void>;
}

/** Opens a file of a folder as a page. */
export type Open = (folder: string, file: string, look?: Look) => Promise<Page>;

/** Starts a browser before the tests of this `describe`, and closes what each of them opened. */
export function openInBrowser(): Open {
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

  return async (folder, file, look = {}) => {
    const page = await browser.newPage({
      viewport: { width: look.width ?? 320, height: 800 },
      colorScheme: look.dark ? "dark" : "light",
      forcedColors: look.forced ? "active" : "none",
      acceptDownloads: true,
    });
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    await page.route("**/*", async (route) => {
      const { origin, pathname } = new URL(route.request().url());
      const path = join(folder, pathname);
      if (origin === ADDRESS && existsSync(path)) {
        await route.fulfill({ body: readFileSync(path), contentType: TYPES[extname(path)], headers: look.headers });
      } else {
        if (origin !== VENDOR_TELEMETRY) complaints.push(`asked for ${route.request().url()}`);
        await route.abort();
      }
    });
    await look.prepare?.(page);
    await page.goto(`${ADDRESS}/${file}`);
    await page.getByRole("tab").first().waitFor();
    return page;
  };
}

/** Opens the pane beside a sheet in memory: the plan of a throw, or of a quilt drawn in cells. */
export function openBesideMemory(open: Open): (look?: Look & { plan?: "quilt" }) => Promise<Page> {
  let folder: string;

  beforeAll(async () => {
    folder = await buildMemoryPage();
  });

  afterAll(() => {
    removeMemoryPage(folder);
  });

  return ({ plan, ...look } = {}) =>
    open(folder, `page.html${plan ? `#${plan}` : ""}`, { ...look, headers: { "content-security-policy": STRICT } });
}

/** Looks through a view, or a part of it: what axe-core finds, what is cut off, and a picture of it for the eye. */
export async function expectAccessible(page: Page, view: string, name: string, part = "body"): Promise<void> {
  await expectNoViolations(page, view, part);
  expect({ view, clipped: await clipped(page, part) }).toEqual({ view, clipped: [] });
  await page.screenshot({ path: join(SCREENSHOTS, `pane-${view}-${name}.png`), fullPage: true });
}

/** Rules of accessibility that a program can check. */
export async function expectNoViolations(page: Page, view: string, part = "body"): Promise<void> {
  // As the page's own rules would not let a script of ours in, it is evaluated.
  await page.evaluate(readFileSync(require.resolve("axe-core/axe.min.js"), "utf8"));
  const violations = await page.evaluate(`axe.run("${part}").then(({ violations }) => violations)`);
  expect({ view, violations }).toEqual({ view, violations: [] });
}

export async function openForm(page: Page, id: string): Promise<void> {
  await page.getByLabel("Find a function").fill(id);
  await page.locator(".found").first().click();
  await expectText(page, "h2.function", id);
}

export async function select(page: Page, cells: string): Promise<void> {
  await page.evaluate((range) => {
    window.sheet.select(range);
  }, cells);
}

/** Waits until an element reads as wanted. */
export async function expectText(page: Page, part: string, wanted: string | RegExp): Promise<void> {
  const text = () =>
    page
      .locator(part)
      .locator("visible=true")
      .first()
      .textContent({ timeout: 5000 })
      .catch(() => null);
  const fits = (found: string | null) =>
    found !== null && (typeof wanted === "string" ? found.trim() === wanted : wanted.test(found.trim()));
  for (let tries = 0; tries < 40 && !fits(await text()); tries += 1) await page.waitForTimeout(100);
  const found = (await text())?.trim();
  if (typeof wanted === "string") expect(found).toBe(wanted);
  else expect(found).toMatch(wanted);
}

/** What is wider than the page and cannot be scrolled to by itself. */
function clipped(page: Page, part: string): Promise<string[]> {
  return page.evaluate(
    (around) =>
      [...document.querySelectorAll<HTMLElement>(`${around} *`)]
        .filter((element) => !element.closest(".wide") && element.getBoundingClientRect().right > innerWidth + 0.5)
        .map((element) => element.outerHTML.slice(0, 120)),
    part,
  );
}
