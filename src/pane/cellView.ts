/** The selected cell: what its QUILT calls were given, how each answer comes about, and what an error means. */
import { isAnswered } from "./answer";
import {
  answerView,
  cellText,
  pictureView,
  refusalView,
  sizesView,
  sourcesView,
  type Tell,
  workingView,
} from "./answerView";
import { type Call, readCalls } from "./calls";
import type { FunctionEntry } from "./catalogue";
import { button, element } from "./element";
import { type Typed, typedText, type Units } from "./fields";
import type { Place } from "./formView";
import { pictureOf } from "./pictures";
import type { SelectedCell, Sheet } from "./sheet";
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

  constructor(private readonly around: CellSurroundings) {
    this.lookSoon();
  }

  lookSoon(): void {
    clearTimeout(this.resting);
    this.resting = setTimeout(() => void this.look(), REST);
  }

  /** What stands in the view at last belongs to the last look. */
  private async look(): Promise<void> {
    this.looks += 1;
    const look = this.looks;
    const made = await this.describe().catch((thrown: unknown) => [
      element("p", { className: "refusal" }, thrown instanceof Error ? thrown.message : "The cell cannot be read."),
    ]);
    if (look !== this.looks) return;
    const holder = element("div", {}, ...made);
    // The same again must not close what the maker has opened, or lose the focus.
    if (holder.innerHTML.replace(/piecewise-\w+-\d+/g, "") === this.shown) return;
    this.shown = holder.innerHTML.replace(/piecewise-\w+-\d+/g, "");
    this.view.replaceChildren(...made);
  }

  private async describe(): Promise<HTMLElement[]> {
    const { sheet } = this.around;
    const cannot = sheet.whyNot("select");
    if (cannot !== undefined) return [element("p", {}, cannot)];
    const cell = await sheet.selected();
    if (!cell) return [element("p", {}, "Select a cell to read how its number comes about.")];
    const head = [
      element(
        "h2",
        { className: "function" },
        cell.name,
        cell.shown !== "" && element("span", { className: "quiet" }, ` shows ${cell.shown}`),
      ),
      cell.formula === "" ? undefined : element("pre", { className: "formula" }, element("code", {}, cell.formula)),
      cell.home === cell.name
        ? undefined
        : element("p", { className: "quiet" }, `Part of the table that starts in ${cell.home}.`),
    ].filter((part) => part !== undefined);
    return [...head, ...(await this.explain(cell))];
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
    return calls.map((call) => this.callView(call, cell));
  }

  private callView(call: Call, cell: SelectedCell): HTMLElement {
    const entry = this.around.functions.get(call.id);
    const title = element("h3", { className: "call" }, call.text);
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
        return [element("dt", {}, parameter.name), element("dd", {}, text, valueText(text, call.cells?.[index]))];
      }),
    );
    const change =
      call.whole &&
      button("Change the arguments", () => {
        const typed = Object.fromEntries(
          entry.parameters.map(({ name }, index) => [name, typedText(call.argumentTexts[index] ?? "")]),
        );
        const units =
          call.cells?.[entry.parameters.findIndex(({ takes }) => takes.kind === "units")] === "cm" ? "cm" : "in";
        this.around.change(entry, typed, { cell: cell.home, page: cell.page }, units);
      });
    const about = element("p", {}, entry.description);
    if (!isAnswered(call.outcome) || !call.cells) {
      const refusal = isAnswered(call.outcome) ? undefined : refusalView(call.outcome);
      return element("section", {}, title, about, refusal, given, change, sourcesView(entry));
    }
    const { sheet, tell } = this.around;
    const units = /"cm"|^cm$/.test(
      String(call.cells[entry.parameters.findIndex(({ takes }) => takes.kind === "units")]),
    )
      ? "cm"
      : "in";
    const sizes = sizesOf(entry, call.cells, call.outcome.value);
    const picture = pictureOf(entry, call.cells);
    return element(
      "section",
      {},
      title,
      about,
      answerView(call.outcome.value, entry, units),
      sizes && sizesView(sizes),
      given,
      workingView(call.outcome),
      picture && pictureView(picture, sheet, tell),
      change,
      sourcesView(entry),
    );
  }
}

/** What a cell or a part of the formula came to, after what is written. */
function valueText(text: string, value: unknown): string {
  const isPlain = typeof value === "number" || typeof value === "string" || typeof value === "boolean";
  if (!isPlain && value !== null) return "";
  const plain = value === null ? "empty" : cellText(value);
  return plain === typedText(text) ? "" : ` = ${plain}`;
}
