/** The guides of a release in a real browser. */
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { assemble } from "../../scripts/release";
import { builtAddin } from "../contract/built";
import { describeInBrowser } from "./browser";
import { expectNoViolations } from "./paneHarness";
import { type PlainServer, serveFolder } from "./plainServer";
import { SCREENSHOTS, Watched } from "./watched";

describeInBrowser("The guides of a release", () => {
  const addin = builtAddin();
  const watched = new Watched();
  let folder: string;
  let server: PlainServer;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "piecewise-guides-"));
    const empty = join(folder, "empty");
    mkdirSync(empty);
    assemble({ addin, practice: empty, workbooks: empty }, join(folder, "release"));
    server = await serveFolder(join(folder, "release"), "/tools/quilts");
  });

  afterAll(async () => {
    await server.stop();
    rmSync(folder, { recursive: true });
  });

  test.each([
    "README",
    "docs/README",
    "docs/questions",
    "docs/publishing",
    "docs/benchmarks",
    "docs/reference/patches",
  ])("%s is accessible, fits 320 pixels, and loads nothing that is missing or refused", async (name) => {
    for (const colorScheme of ["light", "dark"] as const) {
      const page = await watched.browser.newPage({ viewport: { width: 320, height: 720 }, colorScheme });
      watched.watch(page, ["log", "info", "warning", "error"]);
      page.on("response", (response) => {
        if (response.status() >= 400) watched.complaints.push(response.url());
      });
      await page.goto(`${server.address}/guides/${name}.html`);
      await expectNoViolations(page, `${name}, ${colorScheme}`);
      // Tables may be wider, and scroll by themselves.
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
      await page.screenshot({ path: join(SCREENSHOTS, `guide-${name.replaceAll("/", "-")}-${colorScheme}.png`) });
      await page.close();
    }
  });
});
