/** For class: a copy that students can use without the add-in, values in the place of formulas, and the handout. */
import { attempt, type Tell } from "./answerView";
import type { FunctionEntry } from "./catalogue";
import { button, element } from "./element";
import { handoutOf } from "./handout";
import { handoutPage, handoutView, printHandout } from "./handout/view";
import { fileName, saveFile } from "./save";
import type { Replaced, Sheet } from "./sheet";

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Makes the class copy of the open workbook, and tells what became of its formulas. */
export type CopyForClass = () => Promise<{ bytes: Uint8Array<ArrayBuffer>; report: string }>;

export interface ClassSurroundings {
  sheet: Sheet;
  functions: ReadonlyMap<string, FunctionEntry>;
  tell: Tell;
  copyForClass: CopyForClass | undefined;
}

export class ClassView {
  readonly view: HTMLElement;
  private readonly report = element("pre", { className: "report", hidden: true, tabIndex: 0 });
  private readonly undo: HTMLElement = element("p", { className: "buttons" });
  private readonly paper = element("div");

  constructor(private readonly around: ClassSurroundings) {
    const { sheet, tell } = around;
    const cannotCopy = around.copyForClass ? sheet.whyNot("file") : "A class copy cannot be made here.";
    const cannotReplace = sheet.whyNot("values");
    const cannotRead = sheet.whyNot("select");
    const run = (words: string, act: () => Promise<void>) => button(words, () => void attempt(act, tell));
    const or = (why: string | undefined, ...buttons: HTMLElement[]) =>
      why === undefined
        ? element("p", { className: "buttons" }, ...buttons)
        : element("p", { className: "quiet" }, why);
    this.view = element(
      "div",
      {},
      element(
        "section",
        {},
        element("h2", {}, "Class copy"),
        element(
          "p",
          {},
          "A copy of this workbook for students: its quilting formulas become plain ones, or values, so that it works in any spreadsheet program. The workbook itself stays as it is.",
        ),
        or(
          cannotCopy,
          run("Make a class copy", () => this.copy()),
        ),
        this.report,
      ),
      element(
        "section",
        {},
        element("h2", {}, "Keep the values"),
        element(
          "p",
          {},
          "Puts the values that the selected cells show in the place of their formulas. They do not change any more.",
        ),
        or(
          cannotReplace,
          run("Replace by values", () => this.replace()),
        ),
        this.undo,
      ),
      element(
        "section",
        {},
        element("h2", {}, "Handout"),
        element(
          "p",
          {},
          "One page to print from this plan: what to buy, what to cut with boxes to tick, pictures, and what to measure on the way.",
        ),
        or(
          cannotRead,
          run("Make the handout", () => this.handout()),
        ),
        this.paper,
      ),
    );
  }

  private async copy(): Promise<void> {
    const { sheet, tell, copyForClass } = this.around;
    tell("Making the class copy …");
    const { bytes, report } = await copyForClass!();
    const name = `${fileName(await sheet.workbookName())} for class.xlsx`;
    saveFile(bytes, WORKBOOK, name);
    Object.assign(this.report, { textContent: report, hidden: false });
    tell(`The class copy is saved as ${name}.`);
  }

  private async replace(): Promise<void> {
    const replaced = await this.around.sheet.replaceByValues();
    const many = replaced.formulas === 1 ? "1 formula is" : `${replaced.formulas} formulas are`;
    this.around.tell(`${many} a value now in ${replaced.range}.`);
    this.undo.replaceChildren(...(replaced.formulas > 0 ? [this.undoButton(replaced)] : []));
  }

  private undoButton(replaced: Replaced): HTMLElement {
    const undo = async () => {
      await replaced.undo();
      this.undo.replaceChildren();
      this.around.tell(`The formulas are back in ${replaced.range}.`);
    };
    return button(`Put the formulas back into ${replaced.range}`, () => void attempt(undo, this.around.tell));
  }

  private async handout(): Promise<void> {
    const { sheet, functions, tell } = this.around;
    const title = await sheet.workbookName();
    const handout = await handoutOf(await sheet.pages(), functions, title, new Date());
    const { supplies, supplyTables, cutting, cuttingTables, measures } = handout;
    if ([supplies, supplyTables, cutting, cuttingTables, measures].every((list) => list.length === 0)) {
      this.paper.replaceChildren(element("p", {}, "This workbook holds no quilting formula with an answer yet."));
      return;
    }
    const view = handoutView(handout);
    this.paper.replaceChildren(
      element(
        "p",
        { className: "buttons" },
        button(
          "Print",
          () => {
            printHandout(view);
          },
          "main",
        ),
        button("Save as a page", () => {
          saveFile(handoutPage(view, title), "text/html", `${fileName(title)}.html`);
        }),
      ),
      view,
    );
    tell("The handout stands below.");
  }
}
