/** The handout on the page, and on paper: Letter or A4, whichever is in the printer. */
import { localText } from "../decimals";
import { element } from "../element";
import { pictureAddress } from "../save";
import type { Handout, Line } from "./index";
import type { Table } from "./tables";

const CAUTIONS = [
  "Rotary cutter: close the blade after every cut, cut away from yourself, keep it from children.",
  "Iron: stand it up, mind the cord and the steam, let pieces cool before you handle them.",
  "Needles and pins: count them in and out; none on the floor or in the quilt.",
  "No quilt belongs in the sleep space of an infant.",
];

/** A number as a ruler reads, which is not broken between lines. */
const NUMBER = /^[\d /.-]+$/;

export function handoutView(handout: Handout): HTMLElement {
  const { title, date, supplies, supplyTables, cutting, cuttingTables, measures, assumptions, pictures } = handout;
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
      ...supplyTables.map((table) => part(tableTitle(table), tableOf(table))),
      part("To cut", cutting.length > 0 && lines(cutting, true)),
      ...cuttingTables.map((table) => part(tableTitle(table), tableOf(table))),
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

/** Lines of one sheet stand together, below its name where several sheets have a part in the list. */
function lines(all: readonly Line[], ticks: boolean): HTMLElement {
  const pages = [...new Set(all.map(({ page }) => page))];
  const line = ({ what, amount }: Line) =>
    element(
      "tr",
      {},
      ticks && tick(),
      element("th", { attributes: { scope: "row" } }, what),
      element("td", {}, localText(amount)),
    );
  const bodies = pages.map((page) =>
    element(
      "tbody",
      {},
      page !== undefined &&
        element(
          "tr",
          {},
          element("th", { className: "page", colSpan: ticks ? 3 : 2, attributes: { scope: "rowgroup" } }, page),
        ),
      ...all.filter((other) => other.page === page).map(line),
    ),
  );
  return element("table", {}, ...bodies);
}

function tableTitle({ page, what }: Table): string {
  return page === undefined || page === what ? what : `${page}: ${what}`;
}

/** Boxes to tick stand beside the pieces; a table without pieces has none. */
function tableOf({ units, head, rows }: Table): HTMLElement {
  const ticks = rows.some(({ isPiece }) => isPiece);
  return element(
    "table",
    { className: "cuts" },
    element("caption", {}, units),
    element(
      "thead",
      {},
      element(
        "tr",
        {},
        ticks && element("td"),
        ...head.map((cell) =>
          cell === "" ? element("td") : element("th", { attributes: { scope: "col" } }, localText(cell)),
        ),
      ),
    ),
    element(
      "tbody",
      {},
      ...rows.map(({ cells, isPiece }) =>
        element(
          "tr",
          {},
          ticks && (isPiece ? tick() : element("td")),
          ...cells.map((cell) => element("td", { className: NUMBER.test(cell) ? "number" : "" }, localText(cell))),
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
