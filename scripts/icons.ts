/** Draws manifest/icons/*.png from the two drawings beside them. Run it after changing a drawing: `npm run icons`. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { launchBrowser } from "../tests/browser/browser";

const FOLDER = join(__dirname, "..", "manifest", "icons");

/** Every picture, its drawing and its size in pixels. */
export const ICONS: Record<string, { drawing: string; size: number }> = {
  ...Object.fromEntries([16, 32, 64, 80, 128].map((size) => [`icon-${size}.png`, { drawing: "icon.svg", size }])),
  "color.png": { drawing: "icon.svg", size: 192 },
  "outline.png": { drawing: "outline.svg", size: 32 },
};

async function drawIcons(): Promise<void> {
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage();
    for (const [name, { drawing, size }] of Object.entries(ICONS)) {
      const svg = readFileSync(join(FOLDER, drawing), "utf8");
      await page.setViewportSize({ width: size, height: size });
      await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`);
      await page.screenshot({ path: join(FOLDER, name), omitBackground: true });
    }
  } finally {
    await browser.close();
  }
}

if (require.main === module) void drawIcons();
