/** The parts of the page, by their ids in page.html. */

export function part(id: string): HTMLElement;
export function part<E extends HTMLElement>(id: string, kind: new () => E): E;
export function part(id: string, kind: new () => HTMLElement = HTMLElement): HTMLElement {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`the page has no #${id}`);
  return found;
}
