/** Finding a function: the search box and the list. */
import type { Family, FunctionEntry } from "./catalogue";
import { localText } from "./decimals";
import { element, freshId } from "./element";
import { Finder } from "./search";

/** More answers than these help nobody. */
const MOST_FOUND = 14;

export class FindView {
  readonly view: HTMLElement;
  private readonly finder: Finder;
  private readonly box: HTMLInputElement;
  private readonly told: HTMLElement;
  private readonly list: HTMLElement;

  constructor(
    private readonly families: readonly Family[],
    private readonly choose: (entry: FunctionEntry) => void,
  ) {
    this.finder = new Finder(families);
    const [box, told] = [freshId("find"), freshId("found")];
    this.box = element("input", {
      id: box,
      type: "search",
      autocomplete: "off",
      spellcheck: false,
      placeholder: "how many strips, backing, HST",
      attributes: { "aria-describedby": told },
    });
    this.told = element("p", { id: told, className: "quiet", attributes: { role: "status" } });
    this.list = element("div", { className: "functions" });
    this.view = element(
      "div",
      {},
      element("search", {}, element("label", { htmlFor: box }, "Find a function"), this.box, this.told),
      this.list,
    );
    this.box.addEventListener("input", () => {
      this.show();
    });
    this.box.addEventListener("keydown", (event) => {
      if (event.key === "Escape") this.box.value = "";
      if (event.key === "Escape") this.show();
      if (event.key === "Enter" || event.key === "ArrowDown") {
        event.preventDefault();
        this.list.querySelector("button")?.focus();
      }
    });
    this.list.addEventListener("keydown", (event) => {
      this.move(event);
    });
    this.show();
  }

  focus(): void {
    this.box.focus();
  }

  private show(): void {
    const question = this.box.value;
    if (question.trim() === "") {
      const count = this.families.reduce((sum, { functions }) => sum + functions.length, 0);
      this.told.textContent = `${count} functions. Ask in your own words.`;
      this.list.replaceChildren(...this.families.map((family) => this.familyView(family)));
      return;
    }
    const found = this.finder.find(question);
    this.told.textContent =
      found.length === 0
        ? "No function fits these words. Try fewer, or other ones."
        : found.length > MOST_FOUND
          ? `The ${MOST_FOUND} best of ${found.length}`
          : found.length === 1
            ? "1 function"
            : `${found.length} functions, best first`;
    this.list.replaceChildren(...(found.length > 0 ? [this.listView(found.slice(0, MOST_FOUND))] : []));
  }

  private familyView({ title, about, functions }: Family): HTMLElement {
    return element(
      "section",
      {},
      element("h2", {}, title),
      about !== "" && element("p", { className: "quiet" }, about),
      this.listView(functions),
    );
  }

  private listView(functions: readonly FunctionEntry[]): HTMLElement {
    const rows = functions.map((entry) =>
      element(
        "li",
        {},
        element(
          "button",
          {
            type: "button",
            className: "found",
            onclick: () => {
              this.choose(entry);
            },
          },
          element("span", { className: "name" }, entry.id),
          " ",
          element("span", { className: "says" }, localText(firstSentence(entry.description))),
        ),
      ),
    );
    return element("ul", { className: "plain" }, ...rows);
  }

  /** Arrow keys walk the list, and back into the box. */
  private move(event: KeyboardEvent): void {
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const buttons = [...this.list.querySelectorAll("button")];
    const index = buttons.indexOf(document.activeElement as HTMLButtonElement) + step;
    if (index < 0) this.box.focus();
    else buttons.at(index)?.focus();
  }
}

export function firstSentence(text: string): string {
  return text.split(/(?<=\.) (?=[A-Z])/)[0];
}
