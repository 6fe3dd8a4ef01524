/** The pane page at work: the search box, and what the page says outside a spreadsheet. */
import { countText } from "./page";

const find = document.querySelector<HTMLInputElement>("#find")!;
const found = document.querySelector<HTMLElement>("#found")!;
const families = [...document.querySelectorAll<HTMLElement>("main section")].map((section) => ({
  section,
  entries: [...section.querySelectorAll("details")].map((entry) => ({
    entry,
    text: words(entry.textContent).join(" "),
  })),
}));

find.addEventListener("input", showMatches);
find.addEventListener("keydown", (event) => {
  if (event.key !== "Escape") return;
  find.value = "";
  showMatches();
});

void Office.onReady(({ host }) => {
  // Outside a spreadsheet the host is null, whatever its type says.
  document.querySelector<HTMLElement>("#outside")!.hidden = Boolean(host);
});

/** Shows the functions that have every word that is typed, in any order. */
function showMatches(): void {
  const wanted = words(find.value);
  let count = 0;
  for (const { section, entries } of families) {
    for (const { entry, text } of entries) {
      entry.hidden = !wanted.every((word) => text.includes(word));
      if (!entry.hidden) count += 1;
    }
    section.hidden = entries.every(({ entry }) => entry.hidden);
  }
  found.textContent = countText(count);
}

function words(text: string): string[] {
  return text.toLowerCase().split(/\s+/).filter(Boolean);
}
