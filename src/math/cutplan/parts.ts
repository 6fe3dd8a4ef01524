import { Problem } from "../problem";
import { Kind } from "./model";
import { Cloth, CutList, Join, Patch } from "./types";

/** The most that is planned; larger lists are slips of the keyboard. */
export const MOST_PATCHES = 5000;
export const MOST_ROWS = 200;

/** Patches that are cut alike: a row of the list, or a part of a row that is joined. */
export interface Part extends Kind {
  readonly row: number;
  readonly label: string;
  /** already lies the other way than its row says, for it is cut along the length */
  readonly turned: boolean;
  readonly part?: "full width" | "rest";
}

export interface Parts {
  readonly parts: readonly Part[];
  readonly joins: readonly Join[];
}

/**
 * Reads a cutting list: refuses what cannot be cut, naming the row, and resolves patches wider than the cloth.
 *
 * @throws Problem "bad input" for rows that make no sense, "no answer" for a row that cannot be cut
 */
export function partsOf(list: CutList, cloth: Cloth): Parts {
  checkCloth(cloth);
  checkPatches(list);
  const parts: Part[] = [];
  const joins: Join[] = [];
  list.forEach((patch, row) => {
    if (patch.count === 0) return;
    if (patch.whenLong === undefined || patch.width <= cloth.width) {
      checkFits(patch, row, cloth);
      parts.push({ ...dimensionsOf(patch), row, label: patch.label, turned: false });
    } else if (patch.whenLong === "along") parts.push(cutAlong(patch, row, cloth));
    else {
      const join = joinOf(patch, row, cloth);
      joins.push(join);
      parts.push(...joinedParts(patch, join, cloth));
    }
  });
  return { parts, joins };
}

/** Refuses a list that makes no sense whatever the cloth. */
export function checkPatches(list: CutList): void {
  if (list.length === 0) throw bad("the list is empty");
  if (list.length > MOST_ROWS) {
    throw bad(`row ${MOST_ROWS + 1}: a cutting list has at most ${MOST_ROWS} rows, this one has ${list.length}`);
  }
  let patches = 0;
  list.forEach((patch, row) => {
    checkPatch(patch, row);
    patches += patch.count;
    if (patches > MOST_PATCHES) throw bad(`${nameOf(patch, row)}: more than ${MOST_PATCHES} patches in one plan`);
  });
  if (patches === 0) throw bad("the list counts no patches");
}

function dimensionsOf({ width, height, count, mayTurn }: Patch): Kind {
  return { width, height, count, mayTurn };
}

function checkCloth(cloth: Cloth): void {
  if (!Number.isSafeInteger(cloth.width) || cloth.width <= 0) throw bad("the cloth's width must be more than 0");
  const { buyingStep = 1, extraLength = 0 } = cloth;
  if (!Number.isSafeInteger(buyingStep) || buyingStep <= 0) throw bad("the step to buy must be more than 0");
  if (!Number.isSafeInteger(extraLength) || extraLength < 0) throw bad("the extra length must be 0 or more");
}

function checkPatch(patch: Patch, row: number): void {
  const name = nameOf(patch, row);
  for (const side of ["width", "height"] as const) {
    if (!Number.isSafeInteger(patch[side]) || patch[side] <= 0) throw bad(`${name}: the ${side} must be more than 0`);
  }
  if (!Number.isSafeInteger(patch.count) || patch.count < 0) {
    throw bad(`${name}: the count must be a whole number, not ${patch.count}`);
  }
}

function checkFits(patch: Patch, row: number, cloth: Cloth): void {
  if (patch.width <= cloth.width) return;
  const show = cloth.show ?? String;
  const name = nameOf(patch, row);
  const tooWide = `${show(patch.width)} is wider than the ${show(cloth.width)} of usable cloth`;
  if (patch.height > cloth.width) {
    throw noAnswer(
      `${name}: ${tooWide}, and so is ${show(patch.height)} the other way; write "join" to sew it from strips`,
    );
  }
  throw noAnswer(
    `${name}: ${tooWide}; write "join" to sew it together from strips, or "along" to cut it along the length of the cloth`,
  );
}

/** A patch longer than the cloth is wide, laid along the length of the cloth. */
function cutAlong(patch: Patch, row: number, cloth: Cloth): Part {
  const { label, width, height, count } = patch;
  if (height > cloth.width) {
    const show = cloth.show ?? String;
    throw noAnswer(
      `${nameOf(patch, row)}: cut along the length it is ${show(height)} across, wider than the ${show(cloth.width)} ` +
        `of usable cloth; write "join" to sew it from strips`,
    );
  }
  return { row, label, width: height, height: width, count, mayTurn: false, turned: true };
}

/**
 * How many strips of the full width make the length, one joined to the next and the patches cut from the joined strip:
 * k strips give k widths less k - 1 losses.
 */
function joinOf(patch: Patch, row: number, cloth: Cloth): Join {
  const loss = cloth.joinLoss === "diagonal" ? patch.height : (cloth.joinLoss ?? 0);
  if (loss >= cloth.width) {
    throw bad(`${nameOf(patch, row)}: each join loses as much as a strip is long; make it "along" or straight joins`);
  }
  const total = patch.width * patch.count;
  const strips = Math.ceil((total - loss) / (cloth.width - loss));
  return { row, label: patch.label, strips, rest: total - (strips - 1) * (cloth.width - loss), loss };
}

/** The strips of a join as parts to cut; joined strips stay across the cloth, so that they all match. */
function joinedParts(patch: Patch, { row, label, strips, rest }: Join, cloth: Cloth): Part[] {
  const common = { row, label, height: patch.height, mayTurn: false, turned: false };
  const full: Part = { ...common, width: cloth.width, count: strips - 1, part: "full width" };
  const last: Part = { ...common, width: rest, count: 1, part: "rest" };
  return [full, last];
}

/** A row in a sentence. */
export function nameOf(patch: Patch, row: number): string {
  return patch.label === "" ? `row ${row + 1}` : `row ${row + 1} (${patch.label})`;
}

function noAnswer(sentence: string): Problem {
  return new Problem("no answer", sentence);
}

function bad(sentence: string): Problem {
  return new Problem("bad input", sentence);
}
