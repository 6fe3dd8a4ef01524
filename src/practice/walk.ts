/** Keys of the page: those that lead from part to part, and those that are held back while a sheet is being opened. */
import type { Panel } from "./panel";
import { part } from "./parts";

/** Leads to the next part. */
const NEXT = "F6";

/** Opens and closes the pane beside the grid. */
const PANE = "F8";

/** The grid keeps the Tab key for moving from cell to cell, so other keys have to lead out of it. */
export function listenForWalk(panel: Panel, focusGrid: () => void): void {
  // Ahead of the grid, which keeps the keys that it knows.
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== NEXT && event.key !== PANE) return;
      event.preventDefault();
      event.stopPropagation();
      if (event.key === PANE) panel.show(!panel.isOpen);
      else walkOn(panel, focusGrid);
    },
    { capture: true },
  );
}

/** Puts the keyboard on the next part: the buttons, a notice, the pane, the grid. */
function walkOn(panel: Panel, focusGrid: () => void): void {
  const parts = [part("commands"), part("notice"), part("beside")].filter((place) => !place.hidden);
  const next = parts.at(parts.findIndex((place) => place.contains(document.activeElement)) + 1);
  if (next?.id === "beside") panel.focus();
  else if (next) next.querySelector("button")?.focus();
  else if (panel.coversGrid) panel.show(false);
  else focusGrid();
}

/** Lets no typing and no pointer reach the grid, which would lose half of a number, until it is released. */
export function holdKeys(grid: HTMLElement): void {
  grid.ariaBusy = "true";
  addEventListener("keydown", swallow, { capture: true });
}

export function releaseKeys(grid: HTMLElement): void {
  grid.ariaBusy = "false";
  removeEventListener("keydown", swallow, { capture: true });
}

function swallow(event: KeyboardEvent): void {
  const { target, key } = event;
  const elsewhere = target instanceof Element && target !== document.body && !part("grid").contains(target);
  if (elsewhere || key === "Tab" || /^F\d/.test(key) || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  event.stopImmediatePropagation();
}
