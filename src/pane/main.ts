/** The add-in's pane: beside the open workbook, or by itself in a browser, where it only reckons. */
import { standInForHost } from "../../functions/standIn";
import type { Family } from "./catalogue";
import { useDecimalSeparator } from "./decimals";
import { element } from "./element";
import { Pane } from "./pane";
import type { Sheet } from "./sheet";
import { NoSheet } from "./noSheet";
import { WorkbookSheet } from "./workbook";

const root = document.querySelector<HTMLElement>("#pane")!;

void open().catch((thrown: unknown) => {
  console.error(thrown);
  root.replaceChildren(element("p", {}, "The pane could not be opened. Close it and open it again."));
});

async function open(): Promise<void> {
  const [{ host }, response] = await Promise.all([Office.onReady(), fetch("catalogue.json")]);
  const families = (await response.json()) as Family[];
  // Outside a spreadsheet the host is null, whatever its type says, and nobody shows the errors of a function.
  const isBeside = host === Office.HostType.Excel;
  if (!isBeside) standInForHost();
  const workbook = isBeside ? new WorkbookSheet() : undefined;
  const sheet: Sheet = workbook ?? new NoSheet();
  // Without an answer, numbers are written as everywhere else.
  if (workbook) useDecimalSeparator(await workbook.decimalSeparator().catch(() => "."));
  // The copy reads and writes whole files, which few visits need.
  const copyForClass = async () => {
    const { copyForClass: copy } = await import(/* webpackChunkName: "classCopy" */ "./classCopy");
    return copy(sheet);
  };
  new Pane(root, { families, sheet, copyForClass });
}
