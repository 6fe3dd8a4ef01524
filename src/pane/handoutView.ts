/** The handout on the page, and on paper: Letter or A4, whichever is in the printer. */
import { cellText } from "./answerView";
import { localText } from "./decimals";
import { element } from "./element";
import type { Cutting, Handout, Line } from "./handout";
import { pictureAddress } from "./save";

const CAUTIONS = [
  "Rotary cutter: close the blade after every cut, cut away from yourself, keep it from children.",
  "Iron: stand it up, mind the cord and the steam, let pieces cool before you handle them.",
  "Needles and pins: count them in and out; none on the floor or in the quilt.",
  "No quilt belongs in the sleep space of an infant.",
];

export function handoutView(handout: Handout): HTMLElement {
  const { title, date, supplies, cutting, measures, assumptions, pictures } = handout;
  const tables = cutting.filter((part) => "rows" in part);
  const single = cutting.filter((part): part is Line => "amount" in part);
  return element(
    "article",
    { className: "handout" },
    element(
      "header",
      {},
      element("h1", {}, title),
      element("p", {}, `Version of ${date}. Ask for a newer one before you cut.`),
    ),
    element(
      "div",
      { className: "columns" },
      part("To buy", supplies.length > 0 && lines(supplies, false)),
      part("To cut", single.length > 0 && lines(single, true)),
      ...tables.map((table) => part(table.what, cuttingTable(table))),
      part("Measure on the way", measures.length > 0 && lines(measures, true)),
      ...pictures.map((picture) =>
        element("figure", {}, element("img", { src: pictureAddress(picture), alt: picture.description })),
      ),
      part(
        "Taken as usual",
        assumptions.length > 0 &&
          element("p", {}, `${localText(assumptions.join("; "))}. Measure your own fabric and seam first.`),
      ),
      part("Take care", element("ul", {}, ...CAUTIONS.map((caution) => element("li", {}, caution)))),
      element(
        "section",
        { className: "squares" },
        element("div", { className: "inch" }, "1 in"),
        element("div", { className: "millimeters" }, "25 mm"),
        element("p", {}, "Print at 100 %. Measure both squares before anything on this page is used as a pattern."),
      ),
    ),
  );
}

function part(title: string, content: HTMLElement | false): HTMLElement | undefined {
  return content === false ? undefined : element("section", {}, element("h2", {}, title), content);
}

function lines(all: readonly Line[], ticks: boolean): HTMLElement {
  const rows = all.map(({ what, amount }) =>
    element(
      "tr",
      {},
      ticks && tick(),
      element("th", { attributes: { scope: "row" } }, what),
      element("td", {}, localText(amount)),
    ),
  );
  return element("table", {}, element("tbody", {}, ...rows));
}

/** A row of boxes beside the rows; the first row is the heading, and sums are not ticked. */
function cuttingTable({ rows }: Extract<Cutting, { rows: unknown }>): HTMLElement {
  const [head, ...others] = rows;
  return element(
    "table",
    { className: "cuts" },
    element(
      "thead",
      {},
      element("tr", {}, element("td"), ...head.map((cell) => element(cell === "" ? "td" : "th", {}, cellText(cell)))),
    ),
    element(
      "tbody",
      {},
      ...others.map((row) =>
        element(
          "tr",
          {},
          row[0] === "total" ? element("td") : tick(),
          ...row.map((cell) => element("td", {}, cellText(cell))),
        ),
      ),
    ),
  );
}

function tick(): HTMLElement {
  return element("td", { className: "tick" }, "☐");
}

/** Prints the handout and nothing else of the page. */
export function printHandout(handout: HTMLElement): void {
  document.querySelector(".handout-paper")?.remove();
  const paper = element("div", { className: "pane handout-paper" }, handout.cloneNode(true));
  document.body.append(paper);
  addEventListener(
    "afterprint",
    () => {
      paper.remove();
    },
    { once: true },
  );
  window.print();
}

/** The handout as a page that stands by itself, with the rules for its look. */
export function handoutPage(handout: HTMLElement, title: string): string {
  const rules = [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .map(({ cssText }) => cssText)
    .filter((text) => text.includes("handout"));
  const page = document.implementation.createHTMLDocument(title);
  const style = page.createElement("style");
  style.textContent = rules.join("\n");
  page.head.append(style);
  page.body.className = "handout-page";
  page.body.append(page.importNode(handout, true));
  page.documentElement.lang = "en";
  return `<!doctype html>\n${page.documentElement.outerHTML}`;
}
