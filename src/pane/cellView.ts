/** The selected cell: what its QUILT calls were given, how each answer comes about, and what an error means. */
import { isAnswered } from "./answer";
import { answerView, cellText, refusalView, sizesView, sourcesView, type Tell, workingView } from "./answerView";
import { callPicture } from "./callPicture";
import { type Call, readCalls } from "./calls";
import type { FunctionEntry } from "./catalogue";
import { localFormula, localText } from "./decimals";
import { button, element, replaceContent } from "./element";
import { titleOf } from "./fieldView";
import { type Typed, typedText, type Units } from "./fields";
import type { Place } from "./formView";
import { systemOf } from "./given";
import { pictureView } from "./pictureView";
import { type SelectedCell, type Sheet, SheetProblem } from "./sheet";
import { sizesOf } from "./sizes";

/** How long the selection rests before its cell is looked at, in milliseconds. */
const REST = 120;

export interface CellSurroundings {
  sheet: Sheet;
  functions: ReadonlyMap<string, FunctionEntry>;
  tell: Tell;
  /** Opens a call in the form. */
  change: (entry: FunctionEntry, typed: Typed, place: Place, units: Units) => void;
}

export class CellView {
  readonly view = element("div", { className: "cell" });
  private resting: ReturnType<typeof setTimeout> | undefined;
  private shown = "";
  private looks = 0;
  private shownLook = 0;

  constructor(private readonly around: CellSurroundings) {
    this.lookSoon();
  }

  lookSoon(): void {
    clearTimeout(this.resting);
    this.view.setAttribute("aria-busy", "true");
    this.resting = setTimeout(() => void this.look(), REST);
  }

  /** What is shown belongs to the cell that is selected by then, and never gives way to an earlier look. */
  private async look(): Promise<void> {
    this.looks += 1;
    const look = this.looks;
    const cell = await this.selected();
    const made = typeof cell === "string" ? [element("p", {}, cell)] : await this.describe(cell);
    const now = await this.selected();
    if (look < this.shownLook || placeOf(now) !== placeOf(cell)) return;
    this.shownLook = look;
    if (look === this.looks) this.view.removeAttribute("aria-busy");
    const holder = element("div", {}, ...made);
    // The same again must not close what the maker has opened, or lose the focus.
    const content = `${placeOf(cell)} ${holder.innerHTML.replace(/piecewise-\w+-\d+/g, "")}`;
    if (content === this.shown) return;
    this.shown = content;
    replaceContent(this.view, ...made);
  }

  /** The selected cell, or a sentence where there is none. */
  private async selected(): Promise<SelectedCell | string> {
    const { sheet } = this.around;
    const cannot = sheet.whyNot("select");
    if (cannot !== undefined) return cannot;
    try {
      return (await sheet.selected()) ?? "Select a cell to read how its number comes about.";
    } catch (thrown) {
      return reason(thrown);
    }
  }

  private async describe(cell: SelectedCell): Promise<HTMLElement[]> {
    const head = [
      element(
        "h2",
        { className: "function" },
        cell.name,
        cell.shown !== "" && element("span", { className: "quiet" }, ` shows ${cell.shown}`),
      ),
      cell.formula === ""
        ? undefined
        : element("pre", { className: "formula" }, element("code", {}, localFormula(cell.formula))),
      cell.home === cell.name
        ? undefined
        : element("p", { className: "quiet" }, `Part of the table that starts in ${cell.home}.`),
    ].filter((part) => part !== undefined);
    const explained = await this.explain(cell).catch((thrown: unknown) => [
      element("p", { className: "refusal" }, reason(thrown)),
    ]);
    return [...head, ...explained];
  }

  private async explain(cell: SelectedCell): Promise<HTMLElement[]> {
    const { sheet } = this.around;
    if (cell.formula === "") {
      return [
        element(
          "p",
          {},
          cell.shown === "" ? "This cell is empty." : "This cell holds no formula: what it shows was typed.",
        ),
      ];
    }
    const calls = await readCalls(cell.formula, (reference) => sheet.values(reference, cell.page));
    if (typeof calls === "string") return [element("p", {}, calls)];
    if (calls.length === 0) {
      return [element("p", {}, "No quilting function stands in this cell. Its number follows from the formula above.")];
    }
    return Promise.all(calls.map((call) => this.callView(call, cell)));
  }

  private async callView(call: Call, cell: SelectedCell): Promise<HTMLElement> {
    const entry = this.around.functions.get(call.id);
    const title = element("h3", { className: "call" }, localFormula(call.text));
    if (!entry)
      return element(
        "section",
        {},
        title,
        refusalView({ code: "#NAME?", sentence: `There is no function ${call.id}.` }),
      );
    const given = element(
      "dl",
      { className: "given" },
      ...call.argumentTexts.flatMap((text, index) => {
        const parameter = entry.parameters.at(index);
        if (!parameter || text === "") return [];
        return [
          element("dt", {}, titleOf(parameter)),
          element("dd", {}, localFormula(text), valueText(text, call.cells?.[index])),
        ];
      }),
    );
    const change =
      call.whole &&
      button("Change the arguments", () => {
        const typed = Object.fromEntries(
          entry.parameters.map(({ name }, index) => [name, typedText(call.argumentTexts[index] ?? "")]),
        );
        this.around.change(entry, typed, { cell: cell.home, page: cell.page }, systemOf(entry, call.cells ?? []));
      });
    const about = element("p", {}, localText(entry.description));
    if (!isAnswered(call.outcome) || !call.cells) {
      const refusal = isAnswered(call.outcome) ? undefined : refusalView(call.outcome);
      return element("section", {}, title, about, refusal, given, change, sourcesView(entry));
    }
    const { sheet, tell } = this.around;
    const sizes = sizesOf(entry, call.cells, call.outcome.value);
    const picture = await callPicture(entry, call, sheet, cell.page);
    const changed = () => {
      this.lookSoon();
    };
    const drawn = picture && pictureView(picture, { sheet, tell, changed });
    return element(
      "section",
      {},
      title,
      about,
      answerView(call.outcome.value, entry, systemOf(entry, call.cells)),
      sizes && sizesView(sizes),
      picture?.showsAnswer && drawn,
      given,
      workingView(call.outcome),
      picture?.showsAnswer ? undefined : drawn,
      change,
      sourcesView(entry),
    );
  }
}

/** Which cell it is, and with which formula; a sentence is its own. */
function placeOf(cell: SelectedCell | string): string {
  return typeof cell === "string" ? cell : [cell.page, cell.name, cell.home, cell.formula].join("\n");
}

function reason(thrown: unknown): string {
  if (!(thrown instanceof SheetProblem)) console.warn(thrown);
  return thrown instanceof Error ? thrown.message : "The cell cannot be read.";
}

/** What a cell or a part of the formula came to, after what is written. */
function valueText(text: string, value: unknown): string {
  const isPlain = typeof value === "number" || typeof value === "string" || typeof value === "boolean";
  if (!isPlain && value !== null) return "";
  const plain = value === null ? "empty" : cellText(value);
  return plain === typedText(text) ? "" : ` = ${plain}`;
}
