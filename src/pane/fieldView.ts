/** The control of one argument. */
import { readFlag } from "../../functions/cells";
import type { ParameterEntry } from "./catalogue";
import { localText } from "./decimals";
import { button, element, freshId } from "./element";
import { isElsewhere } from "./fields";
import type { FormSurroundings } from "./formView";
import { spaced } from "./search";

export class FieldView {
  readonly view: HTMLElement;
  private readonly control: HTMLInputElement | HTMLSelectElement;
  /** Where TRUE or FALSE comes from another cell or a formula: it stays until the box is ticked here. */
  private elsewhere = "";
  private readonly from = element("span", { className: "quiet" });

  constructor(
    readonly parameter: ParameterEntry,
    private readonly around: Pick<FormSurroundings, "sheet" | "units" | "tell"> & { take: () => Promise<string> },
    typed: string,
    private readonly changed: () => void,
  ) {
    const [id, help] = [freshId("field"), freshId("help")];
    this.control = this.makeControl(id, help);
    this.set(typed);
    this.control.addEventListener("input", () => {
      this.keep("");
      changed();
    });
    const label = element(
      "label",
      { htmlFor: id },
      titleOf(parameter),
      parameter.optional && element("span", { className: "quiet" }, " optional"),
      this.from,
    );
    const about = element("p", { id: help, className: "help" }, localText(parameter.description));
    const isFlag = parameter.takes.kind === "flag";
    this.view = element(
      "div",
      { className: `field ${parameter.takes.kind}` },
      ...(isFlag ? [element("div", { className: "line" }, this.control, label)] : [label, this.line()]),
      about,
    );
    this.showUsual();
  }

  /** What is typed; empty where the usual value is to be taken. */
  get typed(): string {
    const { takes } = this.parameter;
    if (takes.kind !== "flag" || !(this.control instanceof HTMLInputElement)) return this.control.value;
    if (this.elsewhere !== "") return this.elsewhere;
    return this.control.checked === takes.usual ? "" : String(this.control.checked).toUpperCase();
  }

  set(typed: string): void {
    const { takes } = this.parameter;
    if (takes.kind === "flag" && this.control instanceof HTMLInputElement) {
      this.control.checked = readFlag(typed) ?? takes.usual;
      this.keep(isElsewhere(typed) ? typed : "");
      return;
    }
    // A choice may also come from a cell, which stays as it is.
    if (
      this.control instanceof HTMLSelectElement &&
      typed !== "" &&
      ![...this.control.options].some(({ value }) => value === typed)
    ) {
      this.control.append(element("option", { value: typed }, typed));
    }
    this.control.value = typed;
  }

  private keep(elsewhere: string): void {
    this.elsewhere = elsewhere;
    this.from.textContent = elsewhere === "" ? "" : ` from ${elsewhere.replace(/^=/, "")}`;
    if (this.parameter.takes.kind === "flag" && this.control instanceof HTMLInputElement)
      this.control.indeterminate = elsewhere !== "";
  }

  focus(): void {
    this.control.focus();
  }

  /** The usual value in the maker's units, where the field is empty. */
  showUsual(): void {
    const { takes, usual, optional } = this.parameter;
    const known = usual[this.around.units()];
    const value = known === undefined ? undefined : localText(known);
    if (this.control instanceof HTMLSelectElement) {
      const words = optional ? `usual${value ? `: ${value}` : ""}` : "choose";
      this.control.options[0].textContent = words;
    } else if (takes.kind !== "flag") {
      this.control.placeholder = value ? `usual: ${value}` : takes.kind === "range" ? "such as A2:D9" : "";
    }
  }

  private makeControl(id: string, help: string): HTMLInputElement | HTMLSelectElement {
    const { takes, optional = false } = this.parameter;
    const attributes = { "aria-describedby": help };
    if (takes.kind === "choice") {
      const options = takes.choices.map((choice) => element("option", { value: choice }, choice));
      return element("select", { id, required: !optional, attributes }, element("option", { value: "" }), ...options);
    }
    if (takes.kind === "flag") return element("input", { id, type: "checkbox", attributes });
    return element("input", {
      id,
      type: "text",
      autocomplete: "off",
      spellcheck: false,
      required: !optional,
      attributes,
    });
  }

  /** The control, and beside it the way to take cells from the sheet. */
  private line(): HTMLElement {
    const { sheet, tell } = this.around;
    const isChoice = this.parameter.takes.kind === "choice";
    if (isChoice || sheet.whyNot("select") !== undefined) return element("div", { className: "line" }, this.control);
    const words = this.parameter.takes.kind === "range" ? "Use cells" : "Use cell";
    const take = async () => {
      try {
        this.set(await this.around.take());
        this.changed();
      } catch (thrown) {
        tell(thrown instanceof Error ? thrown.message : "The selection cannot be read.");
      }
    };
    const made = button(words, () => void take(), "take");
    made.setAttribute("aria-label", `${words} for ${titleOf(this.parameter)}`);
    return element("div", { className: "line" }, this.control, made);
  }
}

/** fabricWidth is shown as "fabric width". */
export function titleOf({ name }: ParameterEntry): string {
  return spaced(name);
}
