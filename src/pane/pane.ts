/** The pane: three views beside a sheet, and the units that all forms use. */
import { byId, type Family, type FunctionEntry } from "./catalogue";
import { CellView } from "./cellView";
import { ClassView, type CopyForClass } from "./classView";
import { element, freshId } from "./element";
import type { Typed, Units } from "./fields";
import { FindView } from "./findView";
import { FormView, type Place } from "./formView";
import type { Sheet } from "./sheet";

export interface PaneOptions {
  families: readonly Family[];
  sheet: Sheet;
  copyForClass?: CopyForClass;
  /** The view that is shown at first: the list of functions, or the selected cell. */
  first?: "find" | "cell";
}

const VIEWS = ["find", "cell", "class"] as const;
type ViewName = (typeof VIEWS)[number];

const TITLES: Record<ViewName, string> = { find: "Find", cell: "This cell", class: "For class" };

/** Where the pane remembers the units. */
const UNITS = "piecewise units";

export class Pane {
  private units: Units = recalledUnits();
  private readonly status = element("p", { className: "told", attributes: { role: "status" } });
  private readonly tabs = new Map<ViewName, HTMLButtonElement>();
  private readonly panels = new Map<ViewName, HTMLElement>();
  private readonly find: FindView;
  private readonly cell: CellView;
  private form: FormView | undefined;

  /** Fills `root`, an empty element, with the pane. */
  constructor(
    root: HTMLElement,
    private readonly options: PaneOptions,
  ) {
    const { families, sheet, copyForClass, first = "find" } = options;
    const functions = byId(families);
    const tell = (sentence: string) => {
      this.tell(sentence);
    };
    this.find = new FindView(families, (entry) => {
      this.open(entry);
    });
    this.cell = new CellView({
      sheet,
      functions,
      tell,
      change: (entry, typed, place, units) => {
        this.setUnits(units);
        this.open(entry, typed, place);
      },
    });
    const forClass = new ClassView({ sheet, functions, tell, copyForClass });
    const views: Record<ViewName, HTMLElement> = { find: this.find.view, cell: this.cell.view, class: forClass.view };
    root.classList.add("pane");
    const tabList = element("div", { className: "views", attributes: { role: "tablist", "aria-label": "Views" } });
    root.append(element("div", { className: "head" }, tabList, this.unitSwitch()));
    for (const name of VIEWS) {
      const [tab, panel] = this.makeView(name, views[name]);
      tabList.append(tab);
      root.append(panel);
    }
    tabList.addEventListener("keydown", (event) => {
      this.walk(event);
    });
    root.append(this.status);
    this.show(first);
    sheet.onChange(() => {
      this.cell.lookSoon();
      this.form?.refresh();
    });
  }

  private makeView(name: ViewName, view: HTMLElement): [HTMLButtonElement, HTMLElement] {
    const [tabId, panelId] = [freshId(name), freshId(`${name}-view`)];
    const tab = element(
      "button",
      {
        type: "button",
        id: tabId,
        onclick: () => {
          this.show(name);
        },
        attributes: { role: "tab", "aria-controls": panelId },
      },
      TITLES[name],
    );
    const panel = element(
      "div",
      { id: panelId, className: "view", attributes: { role: "tabpanel", "aria-labelledby": tabId } },
      view,
    );
    this.tabs.set(name, tab);
    this.panels.set(name, panel);
    return [tab, panel];
  }

  private show(name: ViewName): void {
    for (const [other, tab] of this.tabs) {
      tab.setAttribute("aria-selected", String(other === name));
      tab.tabIndex = other === name ? 0 : -1;
      this.panels.get(other)!.hidden = other !== name;
    }
    if (name === "cell") this.cell.lookSoon();
  }

  /** Arrow keys walk the tabs. */
  private walk(event: KeyboardEvent): void {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    if (step === 0) return;
    const now = VIEWS.findIndex((name) => this.tabs.get(name) === document.activeElement);
    const next = VIEWS.at((now + step) % VIEWS.length)!;
    this.show(next);
    this.tabs.get(next)!.focus();
    event.preventDefault();
  }

  /** Opens a function's form; with a place, to change the formula there. */
  private open(entry: FunctionEntry, typed: Typed = {}, place?: Place): void {
    const panel = this.panels.get("find")!;
    const back = () => {
      this.form = undefined;
      panel.replaceChildren(this.find.view);
      if (place) this.show("cell");
      else this.find.focus();
    };
    const words = place ? `Back to ${place.cell}` : "Back to the list";
    const around = {
      sheet: this.options.sheet,
      units: () => this.units,
      tell: (sentence: string) => {
        this.tell(sentence);
      },
      back: { words, act: back },
    };
    this.form = new FormView(entry, around, place, typed);
    panel.replaceChildren(this.form.view);
    this.tell("");
    this.show("find");
    this.form.focus();
    panel.closest(".pane")?.scrollTo({ top: 0 });
  }

  private unitSwitch(): HTMLElement {
    const name = freshId("units");
    const choices = (["in", "cm"] as const).map((units) =>
      element(
        "label",
        {},
        element("input", {
          type: "radio",
          name,
          value: units,
          checked: units === this.units,
          onchange: () => {
            this.setUnits(units);
            this.form?.refresh();
          },
        }),
        units,
      ),
    );
    return element(
      "fieldset",
      { className: "units" },
      element("legend", { className: "hidden-words" }, "Units of the forms"),
      ...choices,
    );
  }

  private setUnits(units: Units): void {
    this.units = units;
    for (const choice of document.querySelectorAll<HTMLInputElement>(".pane .units input")) {
      choice.checked = choice.value === units;
    }
    try {
      localStorage.setItem(UNITS, units);
    } catch {
      // Where nothing is kept, the units are those of the next visit's start.
    }
  }

  private tell(sentence: string): void {
    this.status.textContent = sentence;
  }
}

function recalledUnits(): Units {
  try {
    return localStorage.getItem(UNITS) === "cm" ? "cm" : "in";
  } catch {
    return "in";
  }
}
