/** Finds and starts the browser for browser tests and for drawing icons. */
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

const NAMES = ["chromium", "chromium-browser", "google-chrome"];

/** Nothing leaves the machine, and nothing of a desktop is needed. */
export const BROWSER_ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The browser named by PIECEWISE_BROWSER, or the first of the usual ones on the PATH. */
export function findBrowser(): string | undefined {
  const named = process.env.PIECEWISE_BROWSER;
  const folders = (process.env.PATH ?? "").split(delimiter);
  const candidates = named ? [named] : NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  return candidates.find(isProgram);
}

export async function launchBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(missing());
  return chromium.launch({ executablePath, args: BROWSER_ARGUMENTS });
}

/** Like `describe`. Without a browser the tests are skipped with a plain line; on a build server they fail instead. */
export function describeInBrowser(title: string, tests: () => void): void {
  if (findBrowser() !== undefined) {
    describe(title, tests);
  } else if (process.env.CI === "true") {
    test(title, () => {
      throw new Error(missing());
    });
  } else {
    process.stderr.write(`Skipped: ${title}. ${missing()}\n`);
    describe.skip(title, tests);
  }
}

function missing(): string {
  return `No browser found: install one of ${NAMES.join(", ")}, or name it in PIECEWISE_BROWSER.`;
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
