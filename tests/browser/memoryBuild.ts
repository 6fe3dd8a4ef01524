/** Builds the page on which the pane stands beside a sheet in memory. */
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { webpack } from "webpack";
import { catalogue } from "../../scripts/catalogue";
// eslint-disable-next-line @typescript-eslint/ban-ts-comment -- a configuration in plain JavaScript
// @ts-ignore
import { typescriptRule } from "../../scripts/webpack/typescript.js";

const ROOT = join(__dirname, "../..");

const PAGE = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>The pane beside a sheet in memory</title>
<link rel="stylesheet" href="pane.css">
<script defer src="page.js"></script>
</head>
<body class="pane-page"><header class="hidden-words"><h1>Piecewise</h1></header><main id="pane"></main></body>
</html>
`;

/** Builds into a folder of its own and tells which. */
export async function buildMemoryPage(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "piecewise-pane-"));
  writeFileSync(join(folder, "page.html"), PAGE);
  writeFileSync(join(folder, "catalogue.json"), JSON.stringify(catalogue()));
  copyFileSync(join(ROOT, "src/pane/pane.css"), join(folder, "pane.css"));
  await new Promise<void>((resolve, reject) => {
    webpack(
      {
        mode: "development",
        devtool: false,
        context: ROOT,
        entry: { page: "./tests/browser/memoryPage.ts" },
        output: { path: folder, filename: "[name].js" },
        target: ["web", "es2022"],
        resolve: { extensions: [".ts", ".js"] },
        module: { rules: [typescriptRule] },
      },
      (error, stats) => {
        if (error) reject(error);
        else if (stats?.hasErrors()) reject(new Error(stats.toString("errors-only")));
        else resolve();
      },
    );
  });
  return folder;
}

export function removeMemoryPage(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
}
