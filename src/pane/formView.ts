/** One function with its arguments to fill in: the answer follows, and the formula goes into the sheet. */
import { isAnswered, type Outcome } from "./answer";
import {
  answerView,
  attempt,
  refusalView,
  sizesView,
  sourcesView,
  tableView,
  type Tell,
  workingView,
} from "./answerView";
import { callPicture, type CallPicture } from "./callPicture";
import { type Call, readCalls } from "./calls";
import type { FunctionEntry, ParameterEntry } from "./catalogue";
import { localFormula, localText } from "./decimals";
import { button, element, folded, replaceContent } from "./element";
import { FieldView, titleOf } from "./fieldView";
import { formulaText, isElsewhere, isReference, missing, type Typed, typedText, type Units } from "./fields";
import { firstSentence } from "./findView";
import { systemOf } from "./given";
import { pictureView } from "./pictureView";
import { type Sheet, SheetProblem } from "./sheet";
import { sizesOf } from "./sizes";

/** How long typing rests before the answer is worked out, in milliseconds. */
const REST = 150;

/** The cell whose formula is changed. */
export interface Place {
  cell: string;
  page: string;
}

export interface FormSurroundings {
  sheet: Sheet;
  units: () => Units;
  tell: Tell;
  /** The words on the way back, and what they do. */
  back: { words: string; act: () => void };
}

export class FormView {
  readonly view: HTMLElement;
  private readonly fields: FieldView[];
  private readonly heading: HTMLElement;
  /** What goes into the sheet, and how the maker reads it. */
  private formula = "";
  private readonly formulaShown = element("code");
  private readonly result = element("div", { className: "result", attributes: { role: "status" } });
  private readonly more = element("div");
  private resting: ReturnType<typeof setTimeout> | undefined;
  /** The arguments without which there is no answer. */
  private open: ParameterEntry[] = [];
  /** Answers that come late must not overwrite later ones. */
  private asked = 0;
  /** The cell that holds the units, and which they are: it stays until the pane is switched to others. */
  private readonly given: { cell: string; units: Units | undefined };
  /** The page whose cells the formula names without their page; open until a cell is taken from the sheet. */
  private home: string | undefined;

  /** @param place the cell whose formula is to be changed; the selected one if left out */
  constructor(
    private readonly entry: FunctionEntry,
    private readonly around: FormSurroundings,
    private readonly place?: Place,
    typed: Typed = {},
  ) {
    const { sheet } = around;
    this.home = place?.page;
    const { units = "" } = typed;
    this.given = { cell: units, units: isElsewhere(units) ? around.units() : undefined };
    const surroundings = { ...around, take: () => this.takeCells() };
    this.fields = entry.parameters
      .filter(({ takes }) => takes.kind !== "units")
      .map(
        (parameter) =>
          new FieldView(parameter, surroundings, typed[parameter.name] ?? "", () => {
            this.changed();
          }),
      );
    this.heading = element("h2", { className: "function", tabIndex: -1 }, entry.id);
    const required = this.fields.filter(({ parameter }) => !parameter.optional);
    const optional = this.fields.filter(({ parameter }) => parameter.optional);
    const rest = entry.description.slice(firstSentence(entry.description).length).trim();
    this.view = element(
      "div",
      { className: "form" },
      button(around.back.words, around.back.act, "back"),
      this.heading,
      element("p", {}, localText(entry.description.slice(0, entry.description.length - rest.length).trim())),
      rest !== "" && element("p", {}, localText(rest)),
      element("p", { className: "quiet" }, localText(`Gives: ${entry.gives}`)),
      ...required.map(({ view }) => view),
      optional.length > 0 &&
        folded(
          optional.length === 1 ? "One more choice" : `${optional.length} more choices, each with its usual value`,
          optional.some(({ typed: text }) => text !== ""),
          ...optional.map(({ view }) => view),
        ),
      element("h3", {}, "Answer"),
      this.result,
      element("pre", { className: "formula" }, this.formulaShown),
      this.buttons(sheet),
      this.more,
      this.examplesView(),
      sourcesView(entry),
    );
    void this.answer();
  }

  focus(): void {
    this.heading.focus();
  }

  /** The units or a cell changed. */
  refresh(): void {
    for (const field of this.fields) field.showUsual();
    this.changed();
  }

  private get typed(): Typed {
    const typed = Object.fromEntries(this.fields.map((field) => [field.parameter.name, field.typed]));
    const { units } = this.given;
    return units === this.around.units() ? { ...typed, units: this.given.cell } : typed;
  }

  private buttons(sheet: Sheet): HTMLElement {
    const cannot = sheet.whyNot("insert");
    const copy = async () => {
      await navigator.clipboard.writeText(this.formulaShown.textContent);
      this.around.tell("The formula is copied.");
    };
    return element(
      "div",
      {},
      element(
        "p",
        { className: "buttons" },
        cannot === undefined &&
          button(
            this.place ? `Put into ${this.place.cell}` : "Put into the selected cell",
            () => void attempt(() => this.insert(), this.around.tell),
            "main",
          ),
        button(
          "Copy the formula",
          () =>
            void attempt(copy, () => {
              this.around.tell("Copying is not possible here: select the formula and copy it.");
            }),
        ),
      ),
      cannot === undefined ? undefined : element("p", { className: "quiet" }, cannot),
    );
  }

  private async insert(): Promise<void> {
    await this.answer();
    const first = this.open.at(0);
    if (first) {
      this.around.tell(`Still to fill in: ${titleOf(first)}.`);
      this.fields.find(({ parameter }) => parameter === first)?.focus();
      return;
    }
    const { sheet, tell } = this.around;
    if (this.home !== (this.place ?? (await sheet.selected()))?.page && this.home !== undefined) {
      tell(`The formula reads cells of the page “${this.home}”: select the cell for it on that page.`);
      return;
    }
    const where = await sheet.insertFormula(this.formula, this.place);
    tell(`The formula stands in ${where}.`);
  }

  /** The selected cells as the formula names them: with their page, where the other cells are on another one. */
  private async takeCells(): Promise<string> {
    const { sheet } = this.around;
    const cells = await sheet.selectedRange();
    const page = (await sheet.selected())?.page ?? "";
    if (!this.place && !this.fields.some(({ typed }) => isReference(typed))) this.home = undefined;
    this.home ??= page;
    return page === this.home ? cells : `'${page.replaceAll("'", "''")}'!${cells}`;
  }

  private changed(): void {
    clearTimeout(this.resting);
    this.resting = setTimeout(() => void this.answer(), REST);
  }

  /** Works out what is typed, by way of the formula that would stand in the cell. */
  private async answer(): Promise<void> {
    this.asked += 1;
    const asked = this.asked;
    const { entry, typed } = this;
    const formula = formulaText(entry, typed, this.around.units());
    this.formula = formula;
    this.formulaShown.textContent = localFormula(formula);
    const page = this.home ?? (await this.around.sheet.selected().catch(() => undefined))?.page ?? "";
    const call = await this.call(formula, page);
    const picture = isAnswered(call.outcome) ? await callPicture(entry, call, this.around.sheet, page) : undefined;
    if (asked !== this.asked) return;
    // The function itself knows whether it can do without an argument.
    const isOpen = !isAnswered(call.outcome) || call.outcome.value === "";
    this.open = isOpen ? missing(entry, typed) : [];
    if (this.open.length === 0) this.showOutcome(call, picture);
    else {
      const words = `Still to fill in: ${this.open.map(titleOf).join(", ")}.`;
      this.result.replaceChildren(element("p", { className: "quiet" }, words));
      this.more.replaceChildren();
    }
  }

  private async call(formula: string, page: string): Promise<Pick<Call, "argumentTexts" | "cells" | "outcome">> {
    const { sheet } = this.around;
    const refused = (sentence: string) => ({ argumentTexts: [], outcome: { code: "", sentence } });
    try {
      const calls = await readCalls(formula, (reference) => sheet.values(reference, page));
      const last = typeof calls === "string" ? undefined : calls.at(-1);
      if (last) return last;
    } catch (thrown) {
      if (!(thrown instanceof SheetProblem)) throw thrown;
      return refused(thrown.message);
    }
    return refused("What is typed makes no formula: look for a quotation mark or a bracket.");
  }

  private showOutcome({ cells, outcome }: { cells?: unknown[]; outcome: Outcome }, picture?: CallPicture): void {
    const { entry, around } = this;
    if (!isAnswered(outcome) || !cells) {
      this.result.replaceChildren(refusalView(isAnswered(outcome) ? { code: "", sentence: "" } : outcome));
      this.more.replaceChildren();
      return;
    }
    this.result.replaceChildren(answerView(outcome.value, entry, systemOf(entry, cells)));
    const sizes = sizesOf(entry, cells, outcome.value);
    const { sheet, tell } = around;
    const changed = () => {
      this.changed();
    };
    const drawn = picture && pictureView(picture, { sheet, tell, changed });
    replaceContent(
      this.more,
      sizes && sizesView(sizes),
      picture?.showsAnswer && drawn,
      workingView(outcome),
      picture?.showsAnswer ? undefined : drawn,
    );
  }

  /** Examples with their answers, each to be taken over into the form. */
  private examplesView(): HTMLElement | undefined {
    const { examples } = this.entry;
    if (examples.length === 0) return undefined;
    return folded(
      examples.length === 1 ? "Example" : "Examples",
      false,
      ...examples.map(({ label, formula, shows }) => {
        const units = /"cm"/.test(formula) ? "cm" : "in";
        return element(
          "div",
          { className: "example" },
          label !== "" && element("p", {}, localText(label)),
          element("pre", { className: "formula" }, element("code", {}, localFormula(formula))),
          Array.isArray(shows)
            ? tableView(shows, `What ${formula} shows`, units)
            : answerView(shows, this.entry, units),
          button("Fill in this example", () => void this.take(formula)),
        );
      }),
    );
  }

  private async take(formula: string): Promise<void> {
    const calls = await readCalls(formula, () => Promise.resolve([[null]]));
    const call = typeof calls === "string" ? undefined : calls.at(-1);
    if (!call) return;
    for (const field of this.fields) {
      field.set(typedText(call.argumentTexts[this.entry.parameters.indexOf(field.parameter)] ?? ""));
    }
    const units = call.argumentTexts[this.entry.parameters.findIndex(({ takes }) => takes.kind === "units")];
    if (units === '"cm"' && this.around.units() === "in")
      this.around.tell("This example is in centimeters: switch to cm above.");
    this.changed();
    this.view.scrollIntoView({ block: "start" });
    this.focus();
  }
}
