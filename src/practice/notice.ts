/** Sentences that ask for an answer, above the grid. */

export interface Choice {
  label: string;
  act(): void;
}

export class Notices {
  private readonly shown = new Map<string, HTMLElement>();

  constructor(private readonly place: HTMLElement) {}

  /** Shows a sentence with its choices; a second one of the same kind replaces the first. */
  show(kind: string, sentence: string, choices: Choice[] = []): void {
    this.clear(kind);
    const line = document.createElement("p");
    line.className = "buttons";
    line.append(sentence, " ");
    for (const choice of choices) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = choice.label;
      button.onclick = () => {
        choice.act();
      };
      line.append(button, " ");
    }
    this.shown.set(kind, line);
    this.place.append(line);
    this.place.hidden = false;
  }

  /** As `show`, with a button to put the sentence away. */
  tell(kind: string, sentence: string, choices: Choice[] = []): void {
    const close = {
      label: "Close",
      act: () => {
        this.clear(kind);
      },
    };
    this.show(kind, sentence, [...choices, close]);
  }

  clear(kind: string): void {
    this.shown.get(kind)?.remove();
    this.shown.delete(kind);
    this.place.hidden = this.shown.size === 0;
  }
}
