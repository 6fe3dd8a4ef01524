/** The list that drops down while a formula is typed: which functions it offers, and when a key may choose from it. */
import type { Injector } from "@univerjs/core";
import { IDescriptionService, type ISearchItemWithType } from "@univerjs/sheets-formula";
import { IShortcutService, KeyCode } from "@univerjs/ui";
import { engineDescriptions } from "./engine";

/** The view's shortcuts for the list carry this name, with the editor's id after it. */
const LIST_KEYS = "sheet.formula-embedding-editor.search_function.";

/** The view cuts the list after ten entries, which would hide most of the QUILT functions: this one stays whole. */
class WholeList extends Array<ISearchItemWithType> {
  override slice(): ISearchItemWithType[] {
    return Array.from(this);
  }
}

/**
 * Lets the list find QUILT functions by any part of their names and shows them first. The list follows typing by a moment;
 * until it has, Enter and Tab end the formula as typed rather than choose from a list that is out of date.
 * @returns what ends it
 */
export function improveSuggestions(injector: Injector): () => void {
  let upToDate = false;
  const typing = new AbortController();
  document.addEventListener("input", () => (upToDate = false), { capture: true, signal: typing.signal });

  const descriptions = injector.get(IDescriptionService);
  const search = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  descriptions.getSearchListByNameFirstLetter = (typed) => {
    upToDate = true;
    return suggest(typed, search(typed));
  };

  const shortcuts = injector.get(IShortcutService);
  const register = shortcuts.registerShortcut.bind(shortcuts);
  shortcuts.registerShortcut = (shortcut) => {
    const chooses = shortcut.binding === KeyCode.ENTER || shortcut.binding === KeyCode.TAB;
    if (!chooses || !shortcut.id.startsWith(LIST_KEYS)) return register(shortcut);
    return register({ ...shortcut, preconditions: () => upToDate });
  };
  return () => {
    typing.abort();
  };
}

function suggest(typed: string, found: ISearchItemWithType[]): ISearchItemWithType[] {
  const text = typed.trim().toUpperCase();
  const quilt = engineDescriptions
    .filter(({ functionName }) => functionName.includes(text))
    .map(({ functionName, abstract, functionType }) => ({ name: functionName, desc: abstract, functionType }));
  const others = found.filter(({ name }) => !quilt.some((suggestion) => suggestion.name === name));
  return WholeList.from([...quilt, ...others]);
}
