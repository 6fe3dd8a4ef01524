/** The picture of a call, drawn from its own arguments by the same mathematics that gives the answer. */
import { readCountedLengths, readList } from "../../functions/cutLists";
import { readLengths } from "../../functions/lengthLists";
import { type Cell, filledRows } from "../../functions/cells";
import { respelled } from "../../functions/typed";
import { PRINTS } from "../math/backing";
import { BEDS, mattressSize, usualDrop } from "../math/beds";
import { biasSquare } from "../math/binding";
import { CORNERS } from "../math/borders";
import { JOINS } from "../math/joins";
import { boltPlan, planInPanels } from "../math/panels";
import { GEESE_METHODS, MADE_AT_ONCE } from "../math/patches";
import { plan } from "../math/plans";
import { Problem } from "../math/problem";
import { UNIT_WAYS } from "../math/sewn";
import { EDGES, SETTINGS } from "../math/settings";
import { DIAMOND_ANGLES } from "../math/shapes";
import { EARS, tubeUnits } from "../math/tubes";
import { inches, toInches } from "../math/units";
import { backingPicture } from "../pictures/backing";
import { bedPicture } from "../pictures/beds";
import { biasSquarePicture, diagonalJoinPicture } from "../pictures/binding";
import { boltPlanPicture } from "../pictures/bolts";
import { borderFitPicture, borderLengthsPicture, borderMeasuredPicture } from "../pictures/borders";
import { cutPlanPicture } from "../pictures/cutPlan";
import {
  cornerPicture,
  geesePicture,
  halfSquarePicture,
  quarterSquarePicture,
  squareInSquarePicture,
  squarePicture,
  unitMadePicture,
} from "../pictures/patches";
import { panelsPicture } from "../pictures/panels";
import { settingTrianglePicture, topPicture } from "../pictures/settings";
import {
  diamondPicture,
  halfRectanglePicture,
  hexagonPicture,
  starPicture,
  templatePicture,
  trianglePicture,
} from "../pictures/shapes";
import { stripPatchesPicture, stripSetPicture, stripTrianglesPicture } from "../pictures/strips";
import { tubePicture } from "../pictures/tubes";
import { drawBlock, drawQuilt, drawSizes } from "./blockPictures";
import type { FunctionEntry } from "./catalogue";
import { localPicture } from "./decimals";
import { type Fills, GivenArguments } from "./given";
import type { Picture } from "./sheet";

type Draw = (given: GivenArguments) => string | undefined;

const NONE = inches(0);

const backing: Draw = (given) =>
  backingPicture(given.length("width"), given.length("length"), {
    fabricWidth: given.length("fabricWidth", given.door.conventions.fabricWidth),
    margin: given.lengthOrZero("margin", given.door.conventions.margin),
    panelSeam: given.lengthOrZero("panelSeam", given.door.conventions.panelSeam),
    print: given.choice("print", PRINTS, "any"),
    repeat: given.lengthOrZero("repeat", NONE),
    shopStep: given.door.shopStep(given.cell("step")),
    squaring: given.lengthOrZero("squaring", NONE),
    system: given.system,
  });

const cutPlan: Draw = (given) => {
  const { conventions } = given.door;
  const planned = plan(readList(given.door, given.cell("list")), {
    fabricWidth: given.length("width", conventions.fabricWidth),
    squaring: given.lengthOrZero("squaring", NONE),
    trimming: given.flag("trimming", true),
    seam: conventions.seam,
    system: given.system,
  });
  return cutPlanPicture("Cutting plan", planned, given.system);
};

const tube: Draw = (given) => {
  const rows = given.has("list")
    ? filledRows(given.cell("list")).map(({ cells: [trim, count] }) => ({
        trim: given.door.length("trim size", trim),
        count: given.door.count("count", count, 0),
      }))
    : undefined;
  const sewn = {
    stripWidth: given.length("stripWidth"),
    seam: given.lengthOrZero("seam", given.door.conventions.seam),
    ears: given.choice("ears", EARS, "clipped"),
  };
  if (rows) return tubePicture(rows, sewn, { system: given.system });
  const [length, trim] = [given.length("length"), given.length("trim")];
  return tubePicture([{ trim, count: tubeUnits(length, trim, sewn) }], sewn, { length, system: given.system });
};

const top: Draw = (given) =>
  topPicture(given.count("across"), given.count("down"), given.length("block"), {
    sashing: given.lengthOrZero("sashing", NONE),
    edge: given.choice("edge", EDGES, "none"),
    setting: given.choice("setting", SETTINGS, "straight"),
    alternate: given.flag("alternate", false),
    ...given.options,
  });

const borderLengths: Draw = (given) =>
  borderLengthsPicture(given.length("width"), given.length("length"), given.length("border"), {
    corner: given.door.choice("corner", respelled(given.cell("corner")), CORNERS, "butted"),
    insurance: given.lengthIfGiven("insurance"),
    seam: given.lengthIfGiven("seam"),
    system: given.system,
  });

/** How binding strips are joined, where they are joined on the diagonal. */
const bindingJoin: Draw = (given) => {
  if (given.choice("join", JOINS, "diagonal") === "straight") return undefined;
  const strip = given.length("strip", given.door.conventions.bindingStrip);
  return diagonalJoinPicture(strip, { system: given.system });
};

/** How border strips are joined on the diagonal, or else what they are joined for. */
const borderStrips: Draw = (given) => {
  if (given.choice("join", JOINS, "straight") === "straight") return borderLengths(given);
  const seam = given.lengthOrZero("seam", given.door.conventions.seam);
  return diagonalJoinPicture(inches(given.length("border") + 2 * seam), { seam, system: given.system });
};

const DRAWS: Readonly<Record<string, Draw>> = {
  CUTSQUARE: (given) => squarePicture(given.length("finished"), given.options),
  CUTHALFSQUARE: (given) => {
    const madeAtOnce = given.door.oneOf("madeAtOnce", given.cell("madeAtOnce"), MADE_AT_ONCE, 2);
    return halfSquarePicture(given.length("finished"), madeAtOnce, given.options);
  },
  CUTQUARTERSQUARE: (given) => quarterSquarePicture(given.length("finished"), given.options),
  CUTGEESE: (given) => {
    const method = given.choice("method", GEESE_METHODS, "four at once");
    return geesePicture(given.length("width"), method, given.options, given.count("count", 4));
  },
  CUTSQUAREINSQUARE: (given) => squareInSquarePicture(given.length("finished"), given.options),
  CUTCORNER: (given) => cornerPicture(given.length("finished"), given.options),
  CUTHALFRECTANGLE: (given) => halfRectanglePicture(given.length("width"), given.length("height"), given.options),
  CUTTRIANGLE: (given) => trianglePicture(given.length("base"), given.lengthIfGiven("height"), given.options),
  CUTDIAMOND: (given) => {
    const angle = given.door.number("angle", given.cell("angle"), DIAMOND_ANGLES);
    return diamondPicture(given.length("side"), angle, given.options);
  },
  CUTHEXAGON: (given) => hexagonPicture(given.length("side"), given.options),
  CUTSTAR: (given) => starPicture(given.length("block"), given.count("rows", 1), given.options),
  CUTTEMPLATE: (given) => {
    const corners = filledRows(given.cell("corners")).map(({ cells: [x, y] }) => ({
      x: given.door.place("distance to the right", x),
      y: given.door.place("distance up", y),
    }));
    return templatePicture(corners, given.options);
  },
  UNITMADE: (given) => unitMadePicture(given.length("cut"), given.choice("how", UNIT_WAYS), given.options),
  STRIPPATCHES: (given) =>
    stripPatchesPicture(given.length("patch"), {
      width: given.length("width", given.door.conventions.fabricWidth),
      squaring: given.lengthOrZero("squaring", NONE),
      system: given.system,
    }),
  STRIPTRIANGLES: (given) =>
    stripTrianglesPicture(given.length("height"), given.lengthIfGiven("base"), {
      width: given.length("width", given.door.conventions.fabricWidth),
      squaring: given.lengthOrZero("squaring", NONE),
      system: given.system,
    }),
  STRIPSETSIZE: (given) => stripSetPicture(readLengths(given.door, "strip", given.cell("widths")), given.options),
  TUBEUNITS: tube,
  TUBELENGTH: tube,
  PLAN: cutPlan,
  PLANFABRIC: cutPlan,
  PLANSTRIPS: cutPlan,
  PLANLENGTH: cutPlan,
  TOPSIZE: top,
  TOPPIECES: top,
  CUTSIDETRIANGLE: (given) => settingTrianglePicture("side triangle", given.length("block"), given.options),
  CUTCORNERTRIANGLE: (given) => settingTrianglePicture("corner triangle", given.length("block"), given.options),
  BEDSIZE: (given) => {
    if (given.has("mattressWidth") || given.has("mattressLength")) return undefined;
    const bed = given.choice("bed", BEDS);
    return bedPicture(mattressSize(bed), {
      drop: given.lengthOrZero("drop", usualDrop(bed, given.door.conventions.drop)),
      tuck: given.lengthOrZero("tuck", NONE),
      system: given.system,
    });
  },
  BORDERLENGTHS: borderLengths,
  BORDERSIZE: borderLengths,
  BORDERFIT: (given) =>
    borderFitPicture(given.length("width"), given.length("length"), given.length("unit"), {
      depth: given.length("depth", given.length("unit")),
      leastSpacer: given.lengthOrZero("leastSpacer", NONE),
      ...given.options,
    }),
  BACKINGPLAN: backing,
  BACKINGFABRIC: backing,
  BACKINGPANELS: backing,
  BORDERMEASURED: (given) =>
    borderMeasuredPicture([given.length("first"), given.length("second"), given.length("third")], {
      mark: given.lengthOrZero("mark", given.door.conventions.mark),
      spread: given.lengthOrZero("spread", given.door.conventions.spread),
      system: given.system,
    }),
  BORDERSTRIPS: borderStrips,
  BORDERFABRIC: borderStrips,
  BINDINGSTRIPS: bindingJoin,
  BINDINGFABRIC: bindingJoin,
  BIASSQUARE: (given) => {
    const [strip, seam] = [given.length("strip"), given.lengthOrZero("seam", given.door.conventions.seam)];
    const mark = given.lengthOrZero("mark", toInches(1, given.system));
    const square = biasSquare(given.door.longLength("length", given.cell("length")), strip, seam, mark);
    return biasSquarePicture(square, strip, { seam, system: given.system });
  },
  BIASLENGTH: (given) =>
    biasSquarePicture(given.length("square"), given.length("strip"), {
      seam: given.lengthOrZero("seam", NONE),
      system: given.system,
    }),
  PANELSNEEDED: (given) => {
    const planned = planInPanels(
      readList(given.door, given.cell("list")),
      given.length("panelWidth"),
      given.length("panelHeight"),
      { trimming: given.flag("trimming", true), system: given.system },
    );
    return panelsPicture("Patches from panels", planned, given.system);
  },
  BOLTPLAN: (given) => {
    const planned = boltPlan(
      readCountedLengths(given.door, "cuts", given.cell("list")),
      readCountedLengths(given.door, "bolts", given.cell("bolts")),
      given.lengthOrZero("generosity", NONE),
      given.system,
    );
    return boltPlanPicture("Lengths from bolts", planned, given.system);
  },
  BLOCKPIECES: drawBlock,
  BLOCKFABRIC: drawBlock,
  BLOCKCHECK: drawBlock,
  QUILTPIECES: drawQuilt,
  QUILTFABRICS: drawQuilt,
  SIZETABLE: drawSizes,
};

/** Whether a function has a picture. */
export function isDrawn(id: string): boolean {
  return id in DRAWS;
}

/** The picture of a call that has an answer; undefined where there is none, or it would be too small to read. */
export function pictureOf(entry: FunctionEntry, cells: readonly Cell[], fills: Fills = {}): Picture | undefined {
  const draw = DRAWS[entry.id] as Draw | undefined;
  try {
    const drawn = draw?.(new GivenArguments(entry, cells, fills));
    if (drawn === undefined) return undefined;
    const svg = localPicture(drawn);
    return { title: textIn(svg, "title"), description: textIn(svg, "desc"), svg };
  } catch (thrown) {
    if (thrown instanceof Problem) return undefined;
    throw thrown;
  }
}

function textIn(svg: string, tag: string): string {
  const text = new RegExp(`<${tag}>(.*?)</${tag}>`, "s").exec(svg)?.[1] ?? "";
  return text
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&");
}
