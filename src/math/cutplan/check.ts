import { Cloth, CutList, CutPlan, Patch, Piece, Strip } from "./types";

/**
 * Counts a plan again from the list alone, without anything that made the plan.
 *
 * @returns what is wrong, in sentences; nothing when the plan is right
 */
export function checkPlan(plan: CutPlan, list: CutList, cloth: Cloth): string[] {
  const faults: string[] = [];
  for (const strip of plan.strips) faults.push(...checkStrip(strip, list, cloth));
  list.forEach((patch, row) => faults.push(...checkRow(plan, patch, row, cloth)));
  faults.push(...checkTotals(plan, cloth));
  return faults;
}

function checkStrip(strip: Strip, list: CutList, cloth: Cloth): string[] {
  const faults: string[] = [];
  const where = `strip of ${strip.height}`;
  if (!isCount(strip.times) || !isCount(strip.height)) faults.push(`${where}: not a whole number of strips`);
  let used = 0;
  for (const piece of strip.pieces) {
    used += piece.across * piece.count;
    if (!isCount(piece.count)) faults.push(`${where}: ${piece.count} of ${piece.label}`);
    if (piece.along > strip.height) faults.push(`${where}: ${piece.label} is higher than the strip`);
    if (piece.trimmed !== piece.along < strip.height) faults.push(`${where}: ${piece.label} trimmed or not?`);
    if (piece.trimmed && cloth.trimming === false) faults.push(`${where}: ${piece.label} would need trimming`);
    if (!list[piece.row]) faults.push(`${where}: a piece of no row`);
    else faults.push(...checkPiece(piece, list[piece.row], cloth).map((fault) => `${where}: ${fault}`));
  }
  if (used !== strip.used || cloth.width - used !== strip.left) faults.push(`${where}: width used or left is wrong`);
  if (used > cloth.width) faults.push(`${where}: wider than the cloth`);
  if (strip.pieces.every((piece) => piece.along < strip.height))
    faults.push(`${where}: higher than any of its patches`);
  return faults;
}

function checkPiece(piece: Piece, patch: Patch, cloth: Cloth): string[] {
  const { label, across, along, turned, part } = piece;
  const faults: string[] = [];
  if (label !== patch.label) faults.push(`${label} is not ${patch.label}`);
  if (part) {
    if (along !== patch.height || across > cloth.width || turned) faults.push(`${label} is not a strip to join`);
    if (part === "full width" && across !== cloth.width) faults.push(`${label} is not as wide as the cloth`);
    return faults;
  }
  const asListed = across === patch.width && along === patch.height;
  const otherWay = across === patch.height && along === patch.width;
  if (turned ? !otherWay : !asListed) faults.push(`${label} has the wrong size`);
  const cutAlong = patch.whenLong === "along" && patch.width > cloth.width;
  if (turned && !patch.mayTurn && !cutAlong) faults.push(`${label} must not be turned`);
  return faults;
}

/** Every patch once; of a joined row, enough length for all its patches after what the joins lose. */
function checkRow(plan: CutPlan, patch: Patch, row: number, cloth: Cloth): string[] {
  let whole = 0;
  let partLength = 0;
  let parts = 0;
  for (const strip of plan.strips) {
    for (const piece of strip.pieces) {
      if (piece.row !== row) continue;
      const count = piece.count * strip.times;
      if (piece.part) {
        parts += count;
        partLength += count * piece.across;
      } else whole += count;
    }
  }
  if (parts === 0) return whole === patch.count ? [] : [`${patch.label}: ${whole} cut, ${patch.count} wanted`];
  if (patch.whenLong !== "join" || whole > 0) return [`${patch.label}: joined without being asked`];
  const loss = cloth.joinLoss === "diagonal" ? patch.height : (cloth.joinLoss ?? 0);
  const joined = partLength - (parts - 1) * loss;
  const wanted = patch.width * patch.count;
  return joined === wanted ? [] : [`${patch.label}: ${joined} joined, ${wanted} wanted`];
}

function checkTotals(plan: CutPlan, cloth: Cloth): string[] {
  const faults: string[] = [];
  let length = 0;
  let stripCount = 0;
  let trims = 0;
  let area = 0;
  for (const { height, times, pieces } of plan.strips) {
    length += height * times;
    stripCount += times;
    for (const piece of pieces) {
      area += piece.across * piece.along * piece.count * times;
      if (piece.along < height) trims += piece.count * times;
    }
  }
  const { buyingStep = 1, extraLength = 0 } = cloth;
  if (length !== plan.length) faults.push(`length ${plan.length}, but the strips add up to ${length}`);
  if (stripCount !== plan.stripCount) faults.push(`${plan.stripCount} strips, but there are ${stripCount}`);
  if (trims !== plan.trims) faults.push(`${plan.trims} trims, but there are ${trims}`);
  if (area !== plan.patchArea) faults.push(`patch area ${plan.patchArea}, but the pieces add up to ${area}`);
  if (plan.lengthBound > length) faults.push("the bound is above the length");
  if (plan.lengthBound * cloth.width < area) faults.push("the bound is below the area of the patches");
  if (plan.stripBound > stripCount) faults.push("the bound is above the number of strips");
  if (plan.lengthProved !== (plan.lengthBound === length)) faults.push("proved least, or not?");
  if (plan.stripsProved !== (plan.stripBound === stripCount)) faults.push("proved fewest strips, or not?");
  if (plan.toBuy % buyingStep !== 0 || plan.toBuy < length + extraLength) faults.push("too little to buy");
  if (plan.toBuy - buyingStep >= length + extraLength) faults.push("too much to buy");
  if (plan.toBuyBound > plan.toBuy) faults.push("the bound is above what to buy");
  if (plan.toBuyProved !== (plan.toBuyBound === plan.toBuy)) faults.push("proved least to buy, or not?");
  return faults;
}

function isCount(value: number): boolean {
  return Number.isInteger(value) && value > 0;
}
