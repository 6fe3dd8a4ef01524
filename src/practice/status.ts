/** The line under the grid: the selected cell, read out by a screen reader, and its error in a sentence. */
import type { TypedFraction } from "./entry";
import type { Selected } from "./grid";

const HINT =
  "Type in any cell, such as =QUILT.CUTHALFSQUARE(3). F6 leads around the page; F8 finds functions and explains numbers.";

/** How long a remark about a typed fraction stays, in milliseconds. */
const REMARK = 8000;

export class StatusLine {
  private remark = "";
  private last: Selected | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly line: HTMLElement) {}

  /** While a sheet is being opened. */
  opening(): void {
    clearTimeout(this.timer);
    this.remark = "";
    this.last = undefined;
    this.line.textContent = "Opening the sheet…";
  }

  show(selected: Selected | undefined): void {
    this.last = selected;
    const parts: Node[] = [];
    if (this.remark) parts.push(text("span", `${this.remark} `));
    if (selected) parts.push(...describe(selected));
    if (parts.length === 0 || (selected && !selected.shown && !selected.formula))
      parts.push(text("span", HINT, "hint"));
    this.line.replaceChildren(...parts);
  }

  /** Says how a fraction was read that another program would have taken for a date. */
  fraction(typed: string, fraction: TypedFraction): void {
    if (!fraction.looksLikeDate) return;
    const date = "to enter a date, write it like 2026-03-08";
    this.remark = `${typed.trim()} was read as the fraction ${fraction.value}; ${date}.`;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.remark = "";
      this.show(this.last);
    }, REMARK);
    this.show(this.last);
  }
}

function describe({ name, shown, formula, error }: Selected): Node[] {
  const parts: Node[] = [text("b", name), new Text(" ")];
  if (error) parts.push(text("span", `${error.code} ${error.sentence}`, "error"));
  else parts.push(text("span", shown));
  if (formula) parts.push(new Text(" "), text("code", formula));
  return parts;
}

function text(tag: string, content: string, className = ""): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = content;
  made.className = className;
  return made;
}
