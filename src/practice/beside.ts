/** The pane beside the grid. It is loaded by itself, so that the grid need not wait for it. */
import { Pane } from "../pane/pane";
import { readFamilies } from "./families";
import { type OpenSheet, PaneSheet } from "./paneSheet";

/**
 * Fills an element with the pane.
 *
 * @param open the sheet that is open now
 * @returns the pane's own way to the sheet, to be told of changes
 */
export async function showBeside(place: HTMLElement, open: () => OpenSheet | undefined): Promise<PaneSheet> {
  const families = await readFamilies();
  const sheet = new PaneSheet(open);
  place.replaceChildren();
  new Pane(place, { families, sheet, copyForClass: () => sheet.copyForClass(), first: "cell" });
  return sheet;
}
