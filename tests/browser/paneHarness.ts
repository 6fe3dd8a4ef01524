/** The pane's pages in a browser: nothing else is reached, and nothing may be complained of. */
import { existsSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import type { Page } from "playwright-core";
import { buildMemoryPage, removeMemoryPage } from "./memoryBuild";
import { SCREENSHOTS, Watched } from "./watched";

export const ADDRESS = "https://localhost:3000";
/** The vendor's library reports to its maker while it thinks that it is in the host. Here it gets no answer. */
const VENDOR_TELEMETRY = "https://telemetryservice.firstpartyapps.oaspapps.com";
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

/** For the tests of one `describe`, each of which opens its own pages. */
export function openInBrowser(): Open {
  const watched = new Watched();
  return async (folder, file, look = {}) => {
    const page = await watched.browser.newPage({
      viewport: { width: look.width ?? 320, height: 800 },
      colorScheme: look.dark ? "dark" : "light",
      forcedColors: look.forced ? "active" : "none",
      acceptDownloads: true,
    });
    watched.watch(page);
    await serveOnly(folder, page, watched, look.headers);
    await look.prepare?.(page);
    await page.goto(`${ADDRESS}/${file}`);
    await page.getByRole("tab").first().waitFor();
    return page;
  };
}

/** Puts the files of a folder at their address, and lets the page reach nothing else. */
export async function serveOnly(
  folder: string,
  page: Page,
  { complaints }: Watched,
  headers?: Record<string, string>,
): Promise<void> {
  await page.route("**/*", async (route) => {
    const { origin, pathname } = new URL(route.request().url());
    const path = join(folder, pathname);
    if (origin === ADDRESS && existsSync(path)) {
      await route.fulfill({ body: readFileSync(path), contentType: TYPES[extname(path)], headers });
    } else {
      if (origin !== VENDOR_TELEMETRY) complaints.push(`asked for ${route.request().url()}`);
      await route.abort();
    }
  });
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
