/** The pane beside a sheet in memory, for tests in the browser. */
import { standInForHost } from "../../functions/standIn";
import type { Family } from "../../src/pane/catalogue";
import { Pane } from "../../src/pane/pane";
import { MemorySheet } from "../pane/memorySheet";
import { quiltPlan, throwPlan } from "../pane/plan";

declare global {
  interface Window {
    sheet: MemorySheet;
  }
}

standInForHost();
window.sheet = new MemorySheet(location.hash === "#quilt" ? quiltPlan() : throwPlan());
void fetch("catalogue.json")
  .then(async (response) => (await response.json()) as Family[])
  .then((families) => {
    const copyForClass = async () => ({ bytes: await window.sheet.file(), report: "12 formulas turned." });
    return new Pane(document.querySelector<HTMLElement>("#pane")!, { families, sheet: window.sheet, copyForClass });
  });
