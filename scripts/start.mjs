/** `npm start`: installs and builds what is missing, serves the practice sheet to this computer and opens it. */
import { spawn } from "node:child_process";
import { join } from "node:path";
import { ensureBuilt } from "./build.mjs";
import { ensureInstalled, ROOT } from "./install.mjs";
import { isServed, serve } from "./server.mjs";

/** PIECEWISE_PORT names another one; 0 takes any that is free. */
const PORT = Number(process.env.PIECEWISE_PORT ?? 3210);
const FOLDER = join(ROOT, "dist");
const START = "/practice/";

const PRACTICE_SHEET = {
  what: "the practice sheet",
  config: "scripts/webpack/practice.js",
  made: "dist/practice",
  from: [
    "src",
    "functions",
    "manifest/functions.json",
    "manifest/icons/icon.svg",
    "scripts/webpack",
    // What the pane tells about the functions.
    "scripts/catalogue.ts",
    "scripts/reference",
    "scripts/takes.ts",
    "tests/cases",
    "tests/sources.ts",
  ],
};

try {
  ensureInstalled();
  ensureBuilt(PRACTICE_SHEET);
  if (PORT !== 0 && (await isServed({ folder: FOLDER, port: PORT }))) {
    const address = `http://localhost:${PORT}${START}`;
    console.log(`\nThe practice sheet is running already:\n\n    ${address}\n`);
    openBrowser(address);
  } else {
    const server = await serve({ folder: FOLDER, port: PORT, start: START });
    console.log(welcome(server));
    openBrowser(server.address);
  }
} catch (problem) {
  console.error(problem.message);
  process.exitCode = 1;
}

function welcome({ address, usualPort }) {
  const elsewhere = `
Port ${PORT} is taken by another program. A browser keeps sheets for each address of its own, so sheets
kept at http://localhost:${PORT} are not shown at this one.
`;
  return `
The practice sheet is ready:

    ${address}

Click any empty cell and type, with the = sign:

    =QUILT.CUTHALFSQUARE(3)
${usualPort ? "" : elsewhere}
Only this computer can see the page. Press Ctrl+C here to stop.`;
}

/** Opens the page where there is a browser to open it in; otherwise the printed address has to do. */
function openBrowser(address) {
  const windowless = process.platform === "linux" && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY;
  if (process.env.CI || process.env.BROWSER === "none" || windowless) return;
  const opener = { darwin: ["open"], win32: ["cmd", "/c", "start", ""] }[process.platform] ?? ["xdg-open"];
  const opening = spawn(opener[0], [...opener.slice(1), address], { stdio: "ignore", detached: true });
  opening.on("error", () => undefined);
  opening.unref();
}
