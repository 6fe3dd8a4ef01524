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
  made.append(...children.filter((child): child is Node | string => child !== undefined && child !== false));
  return made;
}

let lastId = 0;

/** An id that nothing else on the page has. */
export function freshId(word: string): string {
  lastId += 1;
  return `piecewise-${word}-${lastId}`;
}

/** A part that opens and closes. */
export function folded(title: string, open: boolean, ...children: readonly Child[]): HTMLDetailsElement {
  return element("details", { open, className: "fold" }, element("summary", {}, title), ...children);
}

export function button(words: string, act: () => void, className = ""): HTMLButtonElement {
  return element("button", { type: "button", className, onclick: act }, words);
}
