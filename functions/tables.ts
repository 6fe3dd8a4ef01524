/** Tables that several families answer with. */
import type { PatchToCut } from "../src/math/cut";
import type { Door, Value } from "./cells";

/** What to cut, one kind of patch in each row; the last row is what they make. */
export function patchTable(door: Door, patches: readonly PatchToCut[]): Value[][] {
  return [
    ["patch", "finished", "cut width", "cut length", "how many", "how"],
    ...patches.map(({ patch, finished, width, length, count, how }) => [
      patch,
      door.showsLength(finished),
      door.showsLength(width),
      door.showsLength(length),
      count,
      how,
    ]),
  ];
}
