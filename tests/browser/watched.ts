/** What browser tests start before they run, close after each, and must not hear complaints of. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { BUILDING, ROOT, Started } from "../practice/started";
import { launchBrowser } from "./browser";

export const SCREENSHOTS = join(ROOT, "dist/screenshots");

/** A browser for the tests of one `describe`. */
export class Watched {
  /** What the pages of this test should not have thrown, written or asked for. */
  complaints: string[] = [];
  private started: Browser | undefined;

  constructor() {
    beforeAll(async () => {
      mkdirSync(SCREENSHOTS, { recursive: true });
      this.started = await launchBrowser();
    });
    afterAll(() => this.browser.close());
    beforeEach(() => {
      this.complaints = [];
    });
    afterEach(async () => {
      for (const context of this.browser.contexts()) await context.close();
      expect(this.complaints).toEqual([]);
    });
  }

  get browser(): Browser {
    if (this.started === undefined) throw new Error("the browser starts before the first test, not sooner");
    return this.started;
  }

  /** Hears what a page throws, and what it writes to the console at these levels. */
  watch(page: Page, levels: readonly string[] = ["error"]): void {
    page.on("pageerror", (error) => this.complaints.push(error.message));
    page.on("console", (message) => {
      if (levels.includes(message.type())) this.complaints.push(message.text());
    });
  }
}

/** The practice sheet as `npm start` serves it, for the tests of one `describe`; tells its address. */
export function servedPractice(): () => string {
  let started: Started;
  beforeAll(async () => {
    started = await Started.start();
  }, BUILDING);
  afterAll(() => started.stop());
  return () => started.address;
}
