/** Takes out of a workbook what offers the add-in; other add-ins stay. */
import type { Package } from "./package";
import { attributesOf, Changes, tagsOf } from "./xml";

/** Stands in the list of functions that a workbook takes from the add-in. */
const OUR_FUNCTIONS = /_xldudf_QUILT_/i;

/** @param addInId id of the add-in in its manifest */
export function removeAddIn(parts: Package, addInId: string): void {
  for (const { type, target: panes } of parts.relationships("")) {
    if (type !== "webextensiontaskpanes" || panes === undefined || !parts.has(panes)) continue;
    const extensions = parts.relationships(panes).filter(({ target }) => target !== undefined && parts.has(target));
    const ours = extensions.filter(({ target }) => {
      const xml = parts.text(target!);
      return OUR_FUNCTIONS.test(xml) || xml.toLowerCase().includes(addInId.toLowerCase());
    });
    if (ours.length === 0) continue;
    const paths = ours.map(({ target }) => target!);
    if (ours.length === extensions.length) parts.remove([panes, ...paths], [""]);
    else {
      const ids = ours.map(({ id }) => id);
      parts.put(panes, withoutPanes(parts.text(panes), ids));
      parts.remove(paths, [panes]);
    }
  }
}

/** The list of panes without those of some relationships. */
function withoutPanes(xml: string, ids: readonly string[]): string {
  const changes = new Changes(xml);
  let start = 0;
  let isOurs = false;
  for (const tag of tagsOf(xml)) {
    if (tag.name === "taskpane" && tag.kind === "open") [start, isOurs] = [tag.start, false];
    if (tag.name === "webextensionref") isOurs ||= ids.some((id) => attributesOf(xml, tag).get("r:id") === id);
    if (tag.name === "taskpane" && tag.kind === "close" && isOurs) changes.replace(start, tag.end, "");
  }
  return changes.made();
}
