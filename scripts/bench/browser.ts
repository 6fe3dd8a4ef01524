/** How long a browser that has never seen the practice sheet takes until the first QUILT formula stands worked out in its cell. */
import { join } from "node:path";
import type { Browser, CDPSession } from "playwright-core";
import { findBrowser, launchBrowser } from "../../tests/browser/browser";
import { serve } from "../server.mjs";
import { table } from "./table";

/** What the starter plan's cell for cutting half-square units of 6 in shows once it is worked out. */
const ANSWER = "6 7/8";

const RUNS = 3;
const PATIENCE = 120_000;

interface Conditions {
  readonly title: string;
  /** How many times slower the processor is made. */
  readonly slower?: number;
  /** Megabits a second, and milliseconds there and back. */
  readonly network?: { readonly speed: number; readonly delay: number };
}

const CONDITIONS: readonly Conditions[] = [
  { title: "from this computer" },
  { title: "from this computer, processor 4 times slower", slower: 4 },
  { title: "10 Mbit/s, 40 ms", network: { speed: 10, delay: 40 } },
  { title: "10 Mbit/s, 40 ms, processor 4 times slower", slower: 4, network: { speed: 10, delay: 40 } },
];

interface Start {
  /** Milliseconds from the start of the navigation. */
  readonly script: number;
  readonly formula: number;
  readonly kilobytes: number;
}

/** Notes when the grid first draws the answer. */
const WATCH = `{
  const { fillText } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.fillText = function (text, ...place) {
    if (window.formulaTime === undefined && String(text).trim().replace(/\\s+/g, " ") === ${JSON.stringify(ANSWER)}) {
      window.formulaTime = performance.now();
    }
    return fillText.call(this, text, ...place);
  };
}`;

export async function benchFirstFormula(folder = join(__dirname, "../../dist")): Promise<string> {
  if (findBrowser() === undefined) return "Not measured: no browser was found.";
  const server = await serve({ folder, port: 0, start: "/practice/" });
  try {
    const rows: (string | number)[][] = [];
    for (const conditions of CONDITIONS) {
      const starts: Start[] = [];
      for (let run = 0; run < RUNS; run++) starts.push(await freshStart(server.address, conditions));
      const middle = (of: (start: Start) => number) => {
        const sorted = starts.map(of).sort((a, b) => a - b);
        return sorted[RUNS >> 1].toFixed(0);
      };
      rows.push([
        conditions.title,
        middle(({ kilobytes }) => kilobytes),
        middle(({ script }) => script),
        middle(({ formula }) => formula),
      ]);
    }
    return table(["conditions", "KB loaded", "ms to the script", "ms to the first formula"], rows);
  } finally {
    await server.close();
  }
}

/** One start in a browser of its own, with nothing kept from before. */
async function freshStart(address: string, conditions: Conditions): Promise<Start> {
  const browser = await launchBrowser();
  try {
    return await openSheet(browser, address, conditions);
  } finally {
    await browser.close();
  }
}

async function openSheet(browser: Browser, address: string, { slower, network }: Conditions): Promise<Start> {
  const page = await browser.newPage();
  await page.addInitScript(WATCH);
  const devtools: CDPSession = await page.context().newCDPSession(page);
  await devtools.send("Network.enable");
  let bytes = 0;
  devtools.on("Network.loadingFinished", ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  if (network) {
    const perSecond = (network.speed * 1e6) / 8;
    await devtools.send("Network.emulateNetworkConditions", {
      offline: false,
      latency: network.delay,
      downloadThroughput: perSecond,
      uploadThroughput: perSecond,
    });
  }
  if (slower) await devtools.send("Emulation.setCPUThrottlingRate", { rate: slower });
  await page.goto(address, { timeout: PATIENCE });
  await page.waitForFunction(() => "formulaTime" in window, undefined, { timeout: PATIENCE });
  const times = await page.evaluate(() => {
    const files = performance.getEntriesByType("resource") as PerformanceResourceTiming[];
    const script = files.find(({ name }) => name.endsWith("practice.js"))?.responseEnd ?? 0;
    return { script, formula: (window as unknown as { formulaTime: number }).formulaTime };
  });
  return { ...times, kilobytes: bytes / 1024 };
}
