/** Makes elements of the page. */

type Child = Node | string | undefined | false;

type Properties<Tag extends keyof HTMLElementTagNameMap> = Partial<
  Omit<HTMLElementTagNameMap[Tag], "style" | "children" | "dataset" | "attributes">
> & {
  /** Attributes that are no properties, such as aria-labelledby. */
  attributes?: Readonly<Record<string, string>>;
};

/** An element with its properties and what stands in it. Text is text, never markup. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  given: Properties<Tag> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const { attributes = {}, ...properties } = given;
  const made = document.createElement(tag);
  Object.assign(made, properties);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children.filter(isChild));
  return made;
}

let lastId = 0;

/** An id that nothing else on the page has. */
export function freshId(word: string): string {
  lastId += 1;
  return `piecewise-${word}-${lastId}`;
}

/**
 * Puts new content in the place of the old. What the maker has opened or closed stays so, and a button that marks its place
 * keeps the focus.
 */
export function replaceContent(holder: HTMLElement, ...content: readonly Child[]): void {
  const folds = new Map([...holder.querySelectorAll("details")].map((fold) => [titleOf(fold), fold.open]));
  const focused = holder.querySelector<HTMLElement>(":focus")?.dataset.place;
  holder.replaceChildren(...content.filter(isChild));
  for (const fold of holder.querySelectorAll("details")) fold.open = folds.get(titleOf(fold)) ?? fold.open;
  if (focused !== undefined) holder.querySelector<HTMLElement>(`[data-place="${focused}"]`)?.focus();
}

function titleOf(fold: HTMLDetailsElement): string {
  return fold.querySelector("summary")?.textContent ?? "";
}

function isChild(child: Child): child is Node | string {
  return child !== undefined && child !== false;
}

/** A part that opens and closes. */
export function folded(title: string, open: boolean, ...children: readonly Child[]): HTMLDetailsElement {
  return element("details", { open, className: "fold" }, element("summary", {}, title), ...children);
}

export function button(words: string, act: () => void, className = ""): HTMLButtonElement {
  return element("button", { type: "button", className, onclick: act }, words);
}
