/** Reading cutting lists from a range: patches by label, width, height, count and grain; lengths by label, length, count. */
import type { CountedLength } from "../src/math/panels";
import { GRAINS, type ListedPatch } from "../src/math/plans";
import { Problem } from "../src/math/problem";
import { inches } from "../src/math/units";
import { type Cell, type Door, filledRows, isEmpty } from "./cells";

const FEWEST_COLUMNS = 4;

/** A row that asks for nothing; it stays in the list, so that the others keep their numbers. */
const SPARE_ROW: ListedPatch = { label: "", width: inches(1), height: inches(1), count: 0, grain: "any" };

/**
 * The patches of a list, at the place of their row in the range. Empty rows ask for nothing, and so does a row whose count is
 * 0: a planning sheet keeps spare rows. Columns beyond the fifth are the maker's own.
 *
 * @throws Problem "bad input" naming the row
 */
export function readList(door: Door, range: Cell): ListedPatch[] {
  const list: ListedPatch[] = [];
  for (const { number, cells } of filledRows(range)) {
    if (cells.length < FEWEST_COLUMNS) {
      throw new Problem("bad input", "the list needs the columns label, width, height, count and, if need be, grain");
    }
    if (number === 1 && isHeading(cells)) continue;
    while (list.length < number - 1) list.push(SPARE_ROW);
    list.push(readPatch(door, `row ${number}`, cells));
  }
  return list;
}

function readPatch(door: Door, row: string, cells: readonly Cell[]): ListedPatch {
  const [label, width, height, count, grain] = cells;
  if (isEmpty(width) && isEmpty(height) && isEmpty(count)) return SPARE_ROW;
  const patches = door.count(`${row}: count`, count);
  if (patches === 0) return SPARE_ROW;
  return {
    label: isEmpty(label) ? "" : door.text(`${row}: label`, label),
    width: door.length(`${row}: width`, width),
    height: door.length(`${row}: height`, height),
    count: patches,
    grain: door.choice(`${row}: grain`, grain, GRAINS, "any"),
  };
}

/** Whether a row holds the words above the columns: no digit where width, height and count belong. */
function isHeading([, ...measures]: readonly Cell[]): boolean {
  return measures.slice(0, 3).every((cell) => typeof cell === "string" && /^[a-z ]+$/i.test(cell));
}

/** Rows of label, length, count; or of lengths alone, one each. Rows without a length are passed over. */
export function readCountedLengths(door: Door, name: "cuts" | "bolts", range: Cell): CountedLength[] {
  return filledRows(range).flatMap(({ number, cells }) => {
    const row = `${name}, row ${number}`;
    if (cells.length !== 1 && cells.length !== 3) {
      throw new Problem(
        "bad input",
        `${name} needs the columns label, length and count${name === "bolts" ? ", or lengths alone" : ""}`,
      );
    }
    const [label, length, count] = cells.length === 1 ? [`bolt ${number}`, cells[0], 1] : cells;
    if (isEmpty(length)) return [];
    const counted = door.count(`${row}: count`, count);
    if (counted === 0) return [];
    return [
      { label: door.text(`${row}: label`, label, row), length: door.fabric(`${row}: length`, length), count: counted },
    ];
  });
}
