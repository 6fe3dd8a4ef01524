/** How an answer, its working and its picture look. */
import { ruledText } from "../math/show";
import type { Answered, Refused } from "./answer";
import { type FunctionEntry, measuresOf, type Shown } from "./catalogue";
import { localText } from "./decimals";
import { element, folded } from "./element";
import type { Units } from "./fields";
import type { Sizes } from "./sizes";

/** Tells the maker what was done, or why not. */
export type Tell = (sentence: string) => void;

/** The answer as a cell shows it; a number also as a ruler reads. */
export function answerView(value: Shown | Shown[][], entry: FunctionEntry, units: Units): HTMLElement {
  if (Array.isArray(value)) return tableView(value, `Answer of ${entry.id}`, units);
  if (value === "") return element("p", { className: "answer quiet" }, "The cell stays empty.");
  if (typeof value !== "number") return element("p", { className: "answer words" }, cellText(value));
  const measures = units === "in" ? measuresOf(entry) : undefined;
  const ruled = measures && ruledText(value, measures);
  const unit = unitOf(entry, units);
  return element(
    "p",
    { className: "answer" },
    element("strong", {}, ruled ?? cellText(value)),
    unit === "" ? undefined : ` ${unit}`,
    ruled === undefined ? undefined : element("span", { className: "quiet" }, `, as a decimal ${cellText(value)}`),
  );
}

export function refusalView({ code, sentence }: Refused): HTMLElement {
  return element(
    "p",
    { className: "refusal" },
    code === "" ? undefined : element("strong", {}, code),
    code === "" ? undefined : " ",
    localText(sentence),
  );
}

/**
 * A spilled table; in inches its numbers read as on a ruler. It may be wider than the pane, so it scrolls by itself, with the
 * arrow keys too.
 */
export function tableView(rows: readonly Shown[][], label: string, units: Units): HTMLElement {
  const [first = [], ...others] = rows;
  const headed = rows.length > 1 && first.every((cell) => typeof cell === "string" && cell !== "");
  const line = (cells: readonly Shown[], tag: "td" | "th") =>
    element(
      "tr",
      {},
      ...cells.map((cell) => {
        const ruled = typeof cell === "number" && units === "in" ? ruledText(cell, "length") : undefined;
        const made = element(tag, { className: typeof cell === "number" ? "number" : "" }, ruled ?? cellText(cell));
        if (tag === "th") made.setAttribute("scope", "col");
        return made;
      }),
    );
  const body = element("tbody", {}, ...(headed ? others : rows).map((cells) => line(cells, "td")));
  const table = element("table", {}, headed && element("thead", {}, line(first, "th")), body);
  return element("div", { className: "wide", tabIndex: 0, attributes: { role: "region", "aria-label": label } }, table);
}

/** The arithmetic, a line each, and what was taken as usual. */
export function workingView({ steps, assumptions }: Answered): HTMLElement | undefined {
  if (steps.length + assumptions.length === 0) return undefined;
  const list = (tag: "ol" | "ul", lines: readonly string[], className: string) =>
    element(tag, { className }, ...lines.map((line) => element("li", {}, localText(line))));
  return folded(
    "Show the working",
    true,
    steps.length > 0 && list("ol", steps, "steps"),
    assumptions.length > 0 && element("h4", {}, "Taken as usual, because nothing is given"),
    assumptions.length > 0 &&
      list(
        "ul",
        assumptions.map((line) => line.replace(/, as usual where none (?:is|are) given$/, "")),
        "assumed",
      ),
    steps.length > 0 && assumptions.length === 0 && element("p", { className: "quiet" }, "Nothing was taken as usual."),
  );
}

/** Finished, unfinished and cut beside each other. */
export function sizesView({ finished, unfinished, cut }: Sizes): HTMLElement {
  const pair = (name: string, size: string | undefined, about: string) =>
    size === undefined
      ? []
      : [
          element(
            "div",
            { className: "size" },
            element("dt", {}, name),
            element("dd", {}, localText(size)),
            element("dd", { className: "quiet" }, about),
          ),
        ];
  return element(
    "dl",
    { className: "sizes" },
    ...pair("cut", cut, "from the fabric"),
    ...pair("unfinished", unfinished, "with its seam allowances"),
    ...pair("finished", finished, "in the quilt"),
  );
}

/** Where the rule comes from. */
export function sourcesView({ rules, sources }: FunctionEntry): HTMLElement | undefined {
  if (rules.length + sources.length === 0) return undefined;
  return folded(
    "Where the rule comes from",
    false,
    ...rules.map((rule) => element("p", {}, localText(rule))),
    sources.length > 0 && element("p", {}, "Checked against:"),
    sources.length > 0 && element("ul", {}, ...sources.map((source) => element("li", {}, source))),
  );
}

/** Runs what a button does; a failure becomes a sentence. */
export async function attempt(act: () => Promise<void>, tell: Tell): Promise<void> {
  try {
    await act();
  } catch (thrown) {
    console.warn(thrown);
    tell(thrown instanceof Error && thrown.message !== "" ? thrown.message : "That did not work.");
  }
}

/** A value as a cell of usual width shows it. */
export function cellText(value: Shown): string {
  if (typeof value === "number") return localText(String(Number(value.toFixed(4))));
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}

function unitOf({ measures }: FunctionEntry, units: Units): string {
  if (measures === "fabric") return units === "in" ? "yd" : "m";
  return measures === "length" ? units : "";
}
