/** Drives the practice sheet in a browser: by its name box, its keyboard, its status line. */
import type { Page } from "playwright-core";

/** On a busy machine the page takes its time. */
export const PATIENCE = { timeout: 30_000 };

/** Waits until the grid answers, and takes keys where this tab works on the sheet. */
export async function ready(page: Page): Promise<void> {
  await page.locator('#grid[aria-busy="false"]').waitFor(PATIENCE);
  await page.waitForFunction(() => document.querySelector("#status b"), undefined, PATIENCE);
}

/** Waits until all is kept. A change is known to the page a moment after its last key. */
export async function kept(page: Page): Promise<void> {
  await page.waitForTimeout(200);
  await page.locator('#kept[aria-busy="false"]').getByText("Kept in this browser").waitFor(PATIENCE);
}

/** Selects a cell by its name. Right after a sheet has been opened, the view may take the field away once more. */
export async function go(page: Page, name: string): Promise<void> {
  const told = page.locator("#status b").getByText(name, { exact: true });
  for (const deadline = Date.now() + PATIENCE.timeout; Date.now() < deadline;) {
    await page.locator('[data-u-comp="defined-name"] input').click({ delay: 80, ...PATIENCE });
    await page.keyboard.press("Control+a");
    await page.keyboard.type(name);
    await page.keyboard.press("Enter");
    const reached = await told.waitFor({ timeout: 2000 }).then(
      () => true,
      () => false,
    );
    if (reached) return;
  }
  throw new Error(`${name} could not be selected`);
}

/** Types into a cell, and the ones below it. */
export async function type(page: Page, first: string, ...contents: string[]): Promise<void> {
  await go(page, first);
  for (const content of contents) {
    await page.keyboard.type(content, { delay: 5 });
    await page.waitForTimeout(30);
    await page.keyboard.press("Enter");
    await page.waitForTimeout(100);
  }
}

export async function status(page: Page): Promise<string> {
  return (await page.locator("#status").textContent()) ?? "";
}

/** What the status line says of a cell. */
export async function cell(page: Page, name: string): Promise<string> {
  await page.waitForTimeout(300);
  await go(page, name);
  await page.waitForTimeout(300);
  return status(page);
}

/** Waits until a cell says this; it may still be worked out. */
export async function expectCell(page: Page, name: string, says: string | RegExp): Promise<void> {
  const deadline = Date.now() + PATIENCE.timeout;
  let said = await cell(page, name);
  while (Date.now() < deadline && !(typeof says === "string" ? said === says : says.test(said)))
    said = await cell(page, name);
  if (typeof says === "string") expect(said).toBe(says);
  else expect(said).toMatch(says);
}

export function sentence(page: Page) {
  return page.locator(".error-sentence");
}
