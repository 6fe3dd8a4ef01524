/**
 * What the mathematics refuses by itself, whoever calls it: every length and count out of range, with a sentence that names
 * the argument. Worksheet functions meet most of these at their door; the pictures and the workbooks do not.
 */
import { backingWays } from "../../src/math/backing";
import { battingPack, battingSize } from "../../src/math/batting";
import { bedSize } from "../../src/math/beds";
import { biasLength, biasSquare, bindingFabric, bindingLength, bindingStrips } from "../../src/math/binding";
import { readBlock } from "../../src/math/blocks/grammar";
import { blockPieces } from "../../src/math/blocks/pieces";
import { borderFabric, borderStrips } from "../../src/math/borderFabric";
import {
  borderFit,
  type BorderFit,
  borderGap,
  borderLengths,
  borderMeasured,
  borderSize,
  borderUnits,
  type FitOptions,
} from "../../src/math/borders";
import { type Bundle, type BundlePatch, bundleSpare } from "../../src/math/bundles";
import { fabricTotals } from "../../src/math/checks";
import { boltsNeeded, kitCost, kitsPerBolt, priceForMargin, priceForMarkup } from "../../src/math/costing";
import { beforeWashing, fabric, requireFabricWidth } from "../../src/math/fabric";
import { gridPatch } from "../../src/math/grid";
import { joinedStrips } from "../../src/math/joins";
import { lengthMark } from "../../src/math/marks";
import { cutGeese, cutHalfSquare, cutQuarterSquare, cutSquare, cutSquareInSquare } from "../../src/math/patches";
import { refusalOf } from "../refusal";
import { sewnTogether } from "../../src/math/seams";
import { blocksFor, cutCornerTriangle, cutSideTriangle, topSize } from "../../src/math/settings";
import { cutCheck, finishedSize, unitMade } from "../../src/math/sewn";
import { cutDiamond, cutHalfRectangle, cutHexagon, cutStar, cutTriangle } from "../../src/math/shapes";
import { stripFabric, stripPatches, stripSets, stripsFrom, stripsNeeded, stripTriangles } from "../../src/math/strips";
import { stripsFirst } from "../../src/math/stripsFirst";
import { cutTemplate } from "../../src/math/template";
import { seamLength, threadLength } from "../../src/math/thread";
import { topPieces } from "../../src/math/topPieces";
import { tubeLength, tubeUnits } from "../../src/math/tubes";
import { type Inches, inches } from "../../src/math/units";
import { patchFabric, piecesFrom } from "../../src/math/yardage";

const [one, two, three, six, ten, forty, hundred] = [1, 2, 3, 6, 10, 40, 100].map(inches);
const none = inches(0);

const square = readBlock([["sand"]]);
const triangle = [
  { x: none, y: none },
  { x: six, y: none },
  { x: none, y: six },
];

function bundle(patch: Partial<BundlePatch>, strips: Partial<Bundle>): number {
  return bundleSpare([{ patch: three, height: two, count: 4, ...patch }], { strips: 4, stripWidth: three, ...strips });
}

function fit(options: FitOptions): BorderFit {
  return borderFit(hundred, hundred, six, options);
}

type Row = [name: string, what: string, run: (bad: Inches) => unknown];

const ABOVE_ZERO: Row[] = [
  ["cutSquare", "finished size", (bad) => cutSquare(bad)],
  ["cutHalfSquare", "finished size", (bad) => cutHalfSquare(bad)],
  ["cutQuarterSquare", "finished size", (bad) => cutQuarterSquare(bad)],
  ["cutSquareInSquare", "finished size", (bad) => cutSquareInSquare(bad)],
  ["cutGeese", "width", (bad) => cutGeese(bad)],
  ["cutHalfRectangle", "width", (bad) => cutHalfRectangle(bad, six)],
  ["cutHalfRectangle", "height", (bad) => cutHalfRectangle(six, bad)],
  ["cutTriangle", "base", (bad) => cutTriangle(bad, six)],
  ["cutTriangle", "height", (bad) => cutTriangle(six, bad)],
  ["cutDiamond", "side", (bad) => cutDiamond(bad)],
  ["cutHexagon", "side", (bad) => cutHexagon(bad)],
  ["cutStar", "block", (bad) => cutStar(bad)],
  ["gridPatch", "block", (bad) => gridPatch(bad, 4)],
  ["unitMade", "cut size", (bad) => unitMade(bad, "half square")],
  ["finishedSize", "cut size", (bad) => finishedSize(bad)],
  ["cutCheck", "trim", (bad) => cutCheck(six, bad, "half square")],
  ["stripPatches", "patch", (bad) => stripPatches(bad)],
  ["stripPatches", "width", (bad) => stripPatches(six, bad)],
  ["stripTriangles", "height", (bad) => stripTriangles(bad, six)],
  ["stripTriangles", "base", (bad) => stripTriangles(six, bad)],
  ["stripTriangles", "width", (bad) => stripTriangles(six, six, bad)],
  ["stripsNeeded", "patch", (bad) => stripsNeeded(4, bad)],
  ["stripsFrom", "strip width", (bad) => stripsFrom(hundred, bad)],
  ["stripSets", "segment", (bad) => stripSets(4, bad)],
  ["stripSets", "length", (bad) => stripSets(4, six, bad)],
  ["stripFabric", "strip width", (bad) => stripFabric(4, bad)],
  ["sewnTogether", "strip 2", (bad) => sewnTogether("strip", [two, bad])],
  ["stripsFirst", "strip width", (bad) => stripsFirst([], 4, bad)],
  ["stripsFirst", "strip length", (bad) => stripsFirst([], 4, two, bad)],
  ["patchFabric", "width", (bad) => patchFabric(4, bad, six)],
  ["patchFabric", "height", (bad) => patchFabric(4, six, bad)],
  ["patchFabric", "fabric width", (bad) => patchFabric(4, six, six, { fabricWidth: bad })],
  ["piecesFrom", "width", (bad) => piecesFrom(hundred, bad, six)],
  ["piecesFrom", "height", (bad) => piecesFrom(hundred, six, bad)],
  ["requireFabricWidth", "fabric width", requireFabricWidth],
  ["topSize", "block", (bad) => topSize(4, 5, bad)],
  ["blocksFor", "width", (bad) => blocksFor(bad, hundred, six)],
  ["blocksFor", "length", (bad) => blocksFor(hundred, bad, six)],
  ["cutSideTriangle", "block", (bad) => cutSideTriangle(bad)],
  ["cutCornerTriangle", "block", (bad) => cutCornerTriangle(bad)],
  ["borderSize", "width", (bad) => borderSize(bad, hundred, six)],
  ["borderSize", "length", (bad) => borderSize(hundred, bad, six)],
  ["borderLengths", "border", (bad) => borderLengths(hundred, hundred, bad)],
  ["borderMeasured", "measurement 1", (bad) => borderMeasured([bad, hundred, hundred])],
  ["borderMeasured", "measurement 3", (bad) => borderMeasured([hundred, hundred, bad])],
  ["borderUnits", "side", (bad) => borderUnits(bad, six)],
  ["borderGap", "unit", (bad) => borderGap(hundred, bad)],
  ["borderFit", "width", (bad) => borderFit(bad, hundred, six)],
  ["borderFit", "length", (bad) => borderFit(hundred, bad, six)],
  ["borderFit", "unit", (bad) => borderFit(hundred, hundred, bad, { depth: six })],
  ["borderFit", "depth", (bad) => fit({ depth: bad })],
  ["borderStrips", "border", (bad) => borderStrips(hundred, hundred, bad)],
  ["borderFabric", "border", (bad) => borderFabric(hundred, hundred, bad)],
  ["joinedStrips", "length", (bad) => joinedStrips(bad, forty, one)],
  ["joinedStrips", "width of the fabric", (bad) => joinedStrips(hundred, bad, one)],
  ["bindingLength", "width", (bad) => bindingLength(bad, hundred)],
  ["bindingLength", "length", (bad) => bindingLength(hundred, bad)],
  ["bindingStrips", "strip", (bad) => bindingStrips(hundred, hundred, { strip: bad })],
  ["bindingStrips", "fabric width", (bad) => bindingStrips(hundred, hundred, { fabricWidth: bad })],
  ["bindingFabric", "fabric width", (bad) => bindingFabric(hundred, hundred, { fabricWidth: bad })],
  ["biasSquare", "length", (bad) => biasSquare(bad, two)],
  ["biasSquare", "strip", (bad) => biasSquare(hundred, bad)],
  ["biasLength", "square", (bad) => biasLength(bad, two)],
  ["biasLength", "strip", (bad) => biasLength(forty, bad)],
  ["backingWays", "width", (bad) => backingWays(bad, hundred)],
  ["backingWays", "length", (bad) => backingWays(hundred, bad)],
  ["backingWays", "fabric width", (bad) => backingWays(hundred, hundred, { fabricWidth: bad })],
  ["battingSize", "width", (bad) => battingSize(bad, hundred)],
  ["battingSize", "length", (bad) => battingSize(hundred, bad)],
  ["battingPack", "width of a pack", (bad) => battingPack(six, six, none, [{ name: "", width: bad, length: six }])],
  ["battingPack", "length of a pack", (bad) => battingPack(six, six, none, [{ name: "", width: six, length: bad }])],
  ["bedSize", "mattress width", (bad) => bedSize({ width: bad, length: hundred })],
  ["bedSize", "mattress length", (bad) => bedSize({ width: hundred, length: bad })],
  ["bundleSpare", "patch", (bad) => bundle({ patch: bad }, {})],
  ["bundleSpare", "height", (bad) => bundle({ height: bad }, {})],
  ["bundleSpare", "strip width", (bad) => bundle({}, { stripWidth: bad })],
  ["bundleSpare", "width", (bad) => bundle({}, { width: bad })],
  ["kitsPerBolt", "bolt", (bad) => kitsPerBolt(bad, six)],
  ["kitsPerBolt", "each", (bad) => kitsPerBolt(hundred, bad)],
  ["threadLength", "ratio", (bad) => threadLength(hundred, bad)],
  ["seamLength", "patch", (bad) => seamLength(4, 4, bad)],
  ["tubeUnits", "length", (bad) => tubeUnits(bad, two, { stripWidth: three })],
  ["tubeUnits", "trim size", (bad) => tubeUnits(hundred, bad, { stripWidth: three, seam: none })],
  ["tubeUnits", "strip width", (bad) => tubeUnits(hundred, two, { stripWidth: bad })],
  ["tubeLength", "trim size", (bad) => tubeLength([{ trim: bad, count: 1 }], { stripWidth: three, seam: none })],
  ["blockPieces", "size", (bad) => blockPieces(square, bad)],
];

const NOT_BELOW_ZERO: Row[] = [
  ["cutSquare", "seam", (bad) => cutSquare(six, bad)],
  ["cutSquare", "mark", (bad) => cutSquare(six, one, bad)],
  ["cutGeese", "seam", (bad) => cutGeese(six, "corners", bad)],
  ["cutTriangle", "mark", (bad) => cutTriangle(six, six, one, bad)],
  ["gridPatch", "mark", (bad) => gridPatch(six, 4, one, none, bad)],
  ["finishedSize", "seam", (bad) => finishedSize(six, "square", bad)],
  ["stripPatches", "squaring", (bad) => stripPatches(six, forty, bad)],
  ["stripsFrom", "fabric", (bad) => stripsFrom(bad, two)],
  ["stripsFrom", "squaring", (bad) => stripsFrom(hundred, two, bad)],
  ["stripFabric", "squaring", (bad) => stripFabric(4, two, one, bad)],
  ["sewnTogether", "seam", (bad) => sewnTogether("patch", [two, two], bad)],
  ["patchFabric", "squaring", (bad) => patchFabric(4, six, six, { squaring: bad })],
  ["piecesFrom", "fabric", (bad) => piecesFrom(bad, six, six)],
  ["piecesFrom", "squaring", (bad) => piecesFrom(hundred, six, six, { squaring: bad })],
  ["fabric", "length", (bad) => fabric(bad)],
  ["beforeWashing", "length", (bad) => beforeWashing(bad, 0)],
  ["beforeWashing", "shrinkage", (bad) => beforeWashing(hundred, bad)],
  ["lengthMark", "length", (bad) => lengthMark(bad)],
  ["lengthMark", "mark", (bad) => lengthMark(six, bad)],
  ["topSize", "sashing", (bad) => topSize(4, 5, six, { sashing: bad })],
  ["topPieces", "seam", (bad) => topPieces(4, 5, six, { seam: bad })],
  ["borderLengths", "seam", (bad) => borderLengths(hundred, hundred, six, { seam: bad })],
  [
    "borderLengths",
    "insurance",
    (bad) => borderLengths(hundred, hundred, six, { corner: "mitered", insurance: bad, seam: none }),
  ],
  ["borderMeasured", "mark", (bad) => borderMeasured([hundred, hundred, hundred], bad)],
  ["borderMeasured", "spread", (bad) => borderMeasured([hundred, hundred, hundred], one, bad)],
  ["borderFit", "least spacer", (bad) => fit({ leastSpacer: bad })],
  ["borderFit", "mark", (bad) => fit({ mark: bad })],
  ["joinedStrips", "loss at a join", (bad) => joinedStrips(hundred, forty, bad)],
  ["bindingLength", "tail", (bad) => bindingLength(hundred, hundred, bad)],
  ["bindingStrips", "seam", (bad) => bindingStrips(hundred, hundred, { seam: bad })],
  ["biasSquare", "seam", (bad) => biasSquare(hundred, two, bad)],
  ["biasSquare", "mark", (bad) => biasSquare(hundred, two, one, bad)],
  ["biasLength", "seam", (bad) => biasLength(forty, two, bad)],
  ["backingWays", "margin", (bad) => backingWays(hundred, hundred, { margin: bad })],
  ["backingWays", "panel seam", (bad) => backingWays(hundred, hundred, { panelSeam: bad })],
  ["backingWays", "repeat", (bad) => backingWays(hundred, hundred, { repeat: bad })],
  ["backingWays", "squaring", (bad) => backingWays(hundred, hundred, { squaring: bad })],
  ["battingSize", "margin", (bad) => battingSize(hundred, hundred, bad)],
  ["bedSize", "drop", (bad) => bedSize({ width: hundred, length: hundred }, bad)],
  ["bedSize", "tuck", (bad) => bedSize({ width: hundred, length: hundred }, one, bad)],
  ["bundleSpare", "squaring", (bad) => bundle({}, { squaring: bad })],
  ["fabricTotals", "amount", (bad) => fabricTotals([{ fabric: "sand", amount: bad }])],
  ["kitCost", "amount", (bad) => kitCost([{ amount: bad, price: 1 }])],
  ["kitCost", "price", (bad) => kitCost([{ amount: 1, price: bad }])],
  ["kitCost", "extra", (bad) => kitCost([], [bad])],
  ["priceForMargin", "cost", (bad) => priceForMargin(bad, 0)],
  ["priceForMargin", "margin", (bad) => priceForMargin(10, bad)],
  ["priceForMarkup", "cost", (bad) => priceForMarkup(bad, 0)],
  ["priceForMarkup", "markup", (bad) => priceForMarkup(10, bad)],
  ["kitsPerBolt", "generosity", (bad) => kitsPerBolt(hundred, six, bad)],
  ["threadLength", "seam length", (bad) => threadLength(bad)],
  ["seamLength", "seam", (bad) => seamLength(4, 4, six, bad)],
  ["cutTemplate", "seam", (bad) => cutTemplate(triangle, bad)],
  ["tubeUnits", "seam", (bad) => tubeUnits(hundred, two, { stripWidth: three, seam: bad })],
];

const COUNTS: [name: string, what: string, least: 0 | 1, run: (bad: number) => unknown][] = [
  ["cutGeese", "units", 1, (bad) => cutGeese(six, "corners", one, one, bad)],
  ["cutStar", "rows", 1, (bad) => cutStar(six, bad)],
  ["gridPatch", "divisions", 1, (bad) => gridPatch(six, bad)],
  ["stripsNeeded", "count", 0, (bad) => stripsNeeded(bad, two)],
  ["stripSets", "segments", 0, (bad) => stripSets(bad, two)],
  ["stripFabric", "strips", 0, (bad) => stripFabric(bad, two)],
  ["stripsFirst", "strips", 0, (bad) => stripsFirst([], bad, two)],
  ["patchFabric", "count", 0, (bad) => patchFabric(bad, six, six)],
  ["topSize", "across", 1, (bad) => topSize(bad, 1, six)],
  ["topSize", "down", 1, (bad) => topSize(1, bad, six)],
  ["bundleSpare", "strips", 0, (bad) => bundle({}, { strips: bad })],
  ["bundleSpare", "count", 0, (bad) => bundle({ count: bad }, {})],
  ["boltsNeeded", "kits", 0, (bad) => boltsNeeded(bad, six, hundred)],
  ["seamLength", "across", 0, (bad) => seamLength(bad, 4, six)],
  ["seamLength", "down", 0, (bad) => seamLength(4, bad, six)],
  ["tubeLength", "count", 0, (bad) => tubeLength([{ trim: two, count: bad }], { stripWidth: three })],
  ["blockPieces", "count", 0, (bad) => blockPieces(square, six, bad)],
];

test.each(ABOVE_ZERO)("%s: %s must be more than 0", (_name, what, run) => {
  for (const bad of [0, -1, NaN, Infinity].map(inches)) {
    expect(refusalOf(() => run(bad))).toBe(`bad input: ${what} must be more than 0`);
  }
});

test.each(NOT_BELOW_ZERO)("%s: %s must be 0 or more", (_name, what, run) => {
  for (const bad of [-1, -0.001, NaN].map(inches)) {
    expect(refusalOf(() => run(bad))).toBe(`bad input: ${what} must be 0 or more`);
  }
});

test.each(COUNTS)("%s: %s is a count", (_name, what, least, run) => {
  expect(refusalOf(() => run(least))).toBe("accepted");
  expect(refusalOf(() => run(least - 1))).toBe(`bad input: ${what} must be ${least} or more, not ${least - 1}`);
  expect(refusalOf(() => run(1.5))).toBe(`bad input: ${what} must be a whole number, not 1.5`);
  expect(refusalOf(() => run(1_000_001))).toBe(
    `bad input: ${what} is 1000001; more than a million is not counted here`,
  );
  expect(refusalOf(() => run(NaN))).toBe(`bad input: ${what}: more than a million is not counted here`);
});

test.each<[name: string, what: string, run: () => unknown]>([
  ["stripsFrom", "strips", () => stripsFrom(inches(2e6), one)],
  ["piecesFrom", "the number of patches", () => piecesFrom(inches(1e5), one, one)],
  ["kitsPerBolt", "kits per bolt", () => kitsPerBolt(inches(2e6), one)],
  ["borderUnits", "units", () => borderUnits(inches(2e6), one)],
  ["borderFit", "units", () => borderFit(inches(1e6), inches(1e6), one)],
  ["joinedStrips", "strips", () => joinedStrips(inches(1e8), ten, one)],
  ["borderStrips", "strips", () => borderStrips(inches(1e8), inches(1e8), six)],
  ["backingWays", "panels", () => backingWays(inches(1e8), inches(1e8))],
  ["tubeUnits", "the number of units", () => tubeUnits(inches(1e7), two, { stripWidth: three })],
  ["topSize", "blocks", () => topSize(1001, 1000, six)],
  ["cutStar", "number of diamonds", () => cutStar(six, 1000)],
])("%s counts no more than a million %s", (_name, what, run) => {
  expect(refusalOf(run)).toMatch(new RegExp(`^bad input: ${what} is \\d+; more than a million is not counted here$`));
});

test.each<[name: string, sentence: string, run: () => unknown]>([
  ["fabricTotals", "a fabric has no name", () => fabricTotals([{ fabric: "  ", amount: six }])],
  [
    "beforeWashing",
    "shrinkage 1: write a percentage such as 5%, or a part of 1 such as 0.05",
    () => beforeWashing(hundred, 1),
  ],
  ["cutDiamond", "angle must be from 1 to 179 degrees, not 0.5", () => cutDiamond(six, 0.5)],
  ["cutDiamond", "angle must be from 1 to 179 degrees, not 179.5", () => cutDiamond(six, 179.5)],
  ["cutDiamond", "angle must be from 1 to 179 degrees, not NaN", () => cutDiamond(six, NaN)],
  [
    "cutTemplate",
    "corners: at most 200 can be used, not 201",
    () => cutTemplate(Array.from({ length: 201 }, () => triangle[0])),
  ],
  [
    "tubeLength",
    "the list has 10001 units; at most 10000 are laid out at once",
    () => tubeLength([{ trim: two, count: 10_001 }], { stripWidth: three }),
  ],
  [
    "topSize",
    'blocks on point in a single row touch only at their corners, so no sashing lies between; try edge "sashed"',
    () => topSize(1, 3, six, { sashing: one, setting: "on point" }),
  ],
  [
    "sewnTogether",
    "patch 2 is 1/4 in; two seams of 1/4 in leave nothing of it",
    () => sewnTogether("patch", [one, inches(1 / 4)], inches(1 / 4)),
  ],
])("%s refuses: %s", (_name, sentence, run) => {
  expect(refusalOf(run)).toBe(`bad input: ${sentence}`);
});

test.each<[name: string, run: () => unknown]>([
  ["cutDiamond, 1 degree", () => cutDiamond(six, 1)],
  ["cutDiamond, 179 degrees", () => cutDiamond(six, 179)],
  ["tubeLength, 10,000 units", () => tubeLength([{ trim: two, count: 10_000 }], { stripWidth: three })],
  ["sewnTogether, one narrow strip", () => sewnTogether("strip", [inches(1 / 4)], inches(1 / 4))],
])("accepts %s", (_name, run) => {
  expect(refusalOf(run)).toBe("accepted");
});

test("a pack without a name is told by its size", () => {
  const packs = [{ name: "", width: six, length: ten }];
  expect(refusalOf(() => battingPack(forty, forty, none, packs))).toContain("; the largest is 6 in × 10 in: join two");
});

test("a count of exactly a million is counted", () => {
  expect(stripsFrom(inches(1e6), one)).toBe(1_000_000);
});
