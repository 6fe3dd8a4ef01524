/** The figures of the reference: one drawn example for each function that a picture explains better than words. */
import { mattressSize } from "../math/beds";
import { readBlock } from "../math/blocks/grammar";
import { FabricNames } from "../math/blocks/fabricNames";
import type { Quilt } from "../math/blocks/quilt";
import { sizedLayouts } from "../math/blocks/sizes";
import { boltPlan, planInPanels } from "../math/panels";
import { plan } from "../math/plans";
import { inches } from "../math/units";
import { backingPicture } from "./backing";
import { bedPicture } from "./beds";
import { biasSquarePicture, diagonalJoinPicture } from "./binding";
import { borderFitPicture, borderLengthsPicture, borderMeasuredPicture } from "./borders";
import { boltPlanPicture } from "./bolts";
import { cutPlanPicture } from "./cutPlan";
import { panelsPicture } from "./panels";
import {
  cornerPicture,
  geesePicture,
  halfSquarePicture,
  quarterSquarePicture,
  squareInSquarePicture,
  squarePicture,
  unitMadePicture,
} from "./patches";
import { blockPicture, quiltPicture } from "./quiltTop";
import { settingTrianglePicture, topPicture } from "./settings";
import { sizesPicture } from "./sizes";
import {
  diamondPicture,
  halfRectanglePicture,
  hexagonPicture,
  starPicture,
  templatePicture,
  trianglePicture,
} from "./shapes";
import { stripPatchesPicture, stripSetPicture, stripTrianglesPicture } from "./strips";
import { tubePicture, tubeUnitsPicture } from "./tubes";

/** Draws the figure of a function, by its registered name. */
export const figures: ReadonlyMap<string, () => string> = new Map([
  ["CUTSQUARE", () => squarePicture(inches(3))],
  ["CUTHALFSQUARE", () => halfSquarePicture(inches(3), 1)],
  ["CUTQUARTERSQUARE", () => quarterSquarePicture(inches(3))],
  ["CUTGEESE", () => geesePicture(inches(4))],
  ["CUTSQUAREINSQUARE", () => squareInSquarePicture(inches(4))],
  ["CUTCORNER", () => cornerPicture(inches(1.5))],
  ["CUTHALFRECTANGLE", () => halfRectanglePicture(inches(2), inches(4))],
  ["CUTTRIANGLE", () => trianglePicture(inches(4), inches(6))],
  ["CUTDIAMOND", () => diamondPicture(inches(3))],
  ["CUTHEXAGON", () => hexagonPicture(inches(2))],
  ["CUTSTAR", () => starPicture(inches(14))],
  ["CUTTEMPLATE", template],
  ["UNITMADE", () => unitMadePicture(inches(5), "half square four") ?? ""],
  ["STRIPPATCHES", () => stripPatchesPicture(inches(4.5))],
  ["STRIPTRIANGLES", () => stripTrianglesPicture(inches(4.5), undefined, { width: inches(30) })],
  ["STRIPSETSIZE", () => stripSetPicture(Array(6).fill(inches(2.5)))],
  ["STRIPSETS", () => stripSetPicture([inches(2.5), inches(2.5)], { segment: inches(2.5), width: inches(21) })],
  ["TUBEUNITS", () => tubeUnitsPicture(inches(34), inches(2.5), TUBE)],
  ["TUBELENGTH", () => tubePicture([units(3, 4), units(2.5, 6)], TUBE)],
  ["PLAN", cutPlan],
  ["PANELSNEEDED", panels],
  ["BOLTPLAN", bolts],
  ["BLOCKPIECES", () => blockPicture("A star in cells", star().block)],
  ["QUILTPIECES", quilt],
  ["SIZETABLE", sizes],
  ["TOPSIZE", () => topPicture(4, 5, inches(12), { sashing: inches(4), edge: "sashed" })],
  ["TOPPIECES", () => topPicture(4, 5, inches(10), { sashing: inches(2), edge: "sashed", setting: "on point" })],
  ["CUTSIDETRIANGLE", () => settingTrianglePicture("side triangle", inches(10))],
  ["CUTCORNERTRIANGLE", () => settingTrianglePicture("corner triangle", inches(10))],
  ["BEDSIZE", () => bedPicture(mattressSize("twin"), { tuck: inches(10) })],
  ["BORDERLENGTHS", () => borderLengthsPicture(inches(60), inches(80), inches(6))],
  ["BORDERMEASURED", () => borderMeasuredPicture([inches(60.25), inches(59.75), inches(60)])],
  ["BORDERFIT", () => borderFitPicture(inches(46), inches(58), inches(5))],
  ["BACKINGPLAN", () => backingPicture(inches(60), inches(72))],
  ["BINDINGSTRIPS", () => diagonalJoinPicture(inches(2.5))],
  ["BIASSQUARE", () => biasSquarePicture(inches(36), inches(2.25))],
]);

const DESIGN_FABRICS = ["sand", "slate", "rust"];

const TUBE = { stripWidth: inches(2.5) };

function units(trim: number, count: number) {
  return { trim: inches(trim), count };
}

function template(): string {
  const outline = [
    [0, 0],
    [6, 0],
    [6, 4],
    [3, 2.5],
    [0, 4],
  ];
  return templatePicture(outline.map(([x, y]) => ({ x: inches(x), y: inches(y) })));
}

function cutPlan(): string {
  const rows: [string, number, number, number][] = [
    ["block", 12.5, 12.5, 6],
    ["sash", 12.5, 2.5, 17],
    ["cornerstone", 2.5, 2.5, 12],
    ["corner", 6.5, 4.5, 8],
  ];
  const list = rows.map(([label, width, height, count]) => {
    return { label, width: inches(width), height: inches(height), count, grain: "any" as const };
  });
  return cutPlanPicture("A cut plan", plan(list));
}

function panels(): string {
  const rows: [string, number, number, number][] = [
    ["leaf", 6.5, 3.5, 24],
    ["stem", 2, 6.5, 12],
    ["square", 3.5, 3.5, 20],
  ];
  const list = rows.map(([label, width, height, count]) => {
    return { label, width: inches(width), height: inches(height), count, grain: "any" as const };
  });
  return panelsPicture("Patches from fat quarters", planInPanels(list, inches(21), inches(17.5)));
}

function bolts(): string {
  const yards = (count: number) => inches(36 * count);
  const cuts = [
    { label: "backing", length: yards(4.5), count: 3 },
    { label: "kit", length: yards(1.25), count: 9 },
    { label: "sample", length: yards(0.5), count: 4 },
  ];
  const stock = [
    { label: "full bolt", length: yards(15), count: 2 },
    { label: "part bolt", length: yards(7), count: 1 },
  ];
  return boltPlanPicture("Lengths from bolts", boltPlan(cuts, stock));
}

function star() {
  const names = new FabricNames();
  const block = readBlock(
    [
      ["sand", "goose up: sand, slate", "<", "sand"],
      ["goose left: sand, slate", "rust", "<", "goose right: sand, slate"],
      ["^", "^", "<", "^"],
      ["sand", "goose down: sand, slate", "<", "sand"],
    ],
    names,
  );
  return { names, block };
}

function design(): Quilt {
  const { block, names } = star();
  const plain = readBlock([["rust"]], names);
  const layout = Array.from({ length: 4 }, (_, row) =>
    Array.from({ length: 3 }, (_c, column) => ({
      name: (row + column) % 2 === 0 ? "star" : "plain",
      turns: 0 as const,
    })),
  );
  return {
    layout,
    blocks: new Map([
      ["star", block],
      ["plain", plain],
    ]),
    size: inches(12),
    sashing: { width: inches(2), fabric: "slate", cornerstone: "rust" },
    edge: "sashed",
    borders: [{ width: inches(4), fabric: "sand" }],
  };
}

function quilt(): string {
  return quiltPicture("A quilt in cells", design(), DESIGN_FABRICS);
}

function sizes(): string {
  const wanted = [
    { name: "crib", width: inches(36), length: inches(52) },
    { name: "throw", width: inches(60), length: inches(76) },
  ];
  return sizesPicture("A quilt in two sizes", sizedLayouts(design(), wanted), DESIGN_FABRICS);
}
