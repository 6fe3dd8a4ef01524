/** The list of sheets to work on: those kept in this browser, and those to start from. */
import type { KeptEntry } from "./store";

export interface Start {
  title: string;
  about: string;
  open(): void;
}

export interface ListActions {
  open(id: string): void;
  remove(id: string): Promise<void>;
}

/** Fills and shows the dialog. */
export function showList(
  dialog: HTMLDialogElement,
  starts: Start[],
  kept: KeptEntry[],
  current: string,
  actions: ListActions,
): void {
  const close = () => {
    dialog.close();
  };
  const closing = button("Close", close);
  dialog.replaceChildren(
    element("h2", "Sheets", "list-title"),
    element("h3", "Start from"),
    list(
      starts.map((start) => [
        button(start.title, () => {
          close();
          start.open();
        }),
        element("span", start.about),
      ]),
    ),
    element("h3", "Kept in this browser"),
    kept.length > 0 ? list(kept.map((entry) => row(entry))) : element("p", "None yet."),
    closing,
  );
  dialog.showModal();

  function row(entry: KeptEntry): HTMLElement[] {
    const when = new Date(entry.changed).toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
    if (entry.id === current) return [element("strong", entry.name), element("span", `${when}, open now`)];
    const remove = button("Delete", () => {
      if (remove.dataset.sure) {
        actions.remove(entry.id).then(
          () => {
            remove.closest("li")?.remove();
            closing.focus();
          },
          () => {
            remove.after(refused);
          },
        );
      } else {
        remove.dataset.sure = "yes";
        remove.textContent = `Delete “${entry.name}” for good?`;
      }
    });
    const refused = element("span", "The browser did not delete it: it stays kept.");
    refused.setAttribute("role", "alert");
    remove.setAttribute("aria-label", `Delete ${entry.name}`);
    const open = button(entry.name, () => {
      close();
      actions.open(entry.id);
    });
    return [open, element("span", when), remove];
  }
}

function element(tag: string, text: string, id = ""): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  made.id = id;
  return made;
}

function button(text: string, act: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = text;
  made.onclick = act;
  return made;
}

function list(rows: HTMLElement[][]): HTMLElement {
  const made = document.createElement("ul");
  for (const cells of rows) {
    const item = document.createElement("li");
    item.append(...cells);
    made.append(item);
  }
  return made;
}
