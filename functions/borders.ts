/** Borders: sizes, strips and pieced units. */
import * as plain from "../src/math/borderFabric";
import * as borders from "../src/math/borders";
import { JOINS } from "../src/math/joins";
import { showing } from "../src/math/show";
import { inches, type Inches } from "../src/math/units";
import { answer, type Cell, type Door, isEmpty, type Value } from "./cells";
import { respelled } from "./typed";

/**
 * Finished size of a quilt with a border all round.
 * @customfunction BORDERSIZE
 * @param width Finished width inside the border.
 * @param length Finished length inside the border.
 * @param border Finished width of the border, or of several borders together.
 * @param [units] "in" (usual) or "cm".
 * @returns Width and length, side by side.
 */
export function borderSize(width: any, length: any, border: any, units?: any): any[][] {
  return answer(units, (door) => {
    const size = borders.borderSize(...readInside(door, width, length, border));
    return [[door.showsLength(size.width), door.showsLength(size.length)]];
  });
}

/**
 * Lengths to cut for a plain border, in sewing order. Measure the quilt before cutting: see BORDERMEASURED.
 * Butted corners: sides first, then top and bottom across their ends.
 * @customfunction BORDERLENGTHS
 * @param width Finished width inside the border.
 * @param length Finished length inside the border.
 * @param border Finished width of the border.
 * @param [corner] "butted" (usual), "mitered" or "cornerstones".
 * @param [insurance] Mitered: what to cut over the finished outside, seams included; four seams, 1 in or 3 cm (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Table: piece, width to cut, length to cut, how many.
 */
export function borderLengths(
  width: any,
  length: any,
  border: any,
  corner?: any,
  insurance?: any,
  seam?: any,
  units?: any,
): any[][] {
  return answer(units, (door) => [
    ["piece", "cut width", "cut length", "how many"],
    ...borders
      .borderLengths(...readInside(door, width, length, border), readCorner(door, corner, insurance, seam))
      .map((row) => [row.piece, door.showsLength(row.width), door.showsLength(row.length), row.count]),
  ]);
}

/**
 * Strips to cut across the fabric for a plain border. They are joined and the sides cut from the joined length, or each on
 * its own where that takes fewer. Cornerstones are not counted.
 * @customfunction BORDERSTRIPS
 * @param width Finished width inside the border.
 * @param length Finished length inside the border.
 * @param border Finished width of the border.
 * @param [fabricWidth] Usable width of the fabric: 42 in (usual) or 107 cm.
 * @param [corner] "butted" (usual), "mitered" or "cornerstones".
 * @param [join] "straight" (usual): a join takes two seams. "diagonal": it takes the width of a strip.
 * @param [units] "in" (usual) or "cm".
 * @param [insurance] Mitered: what to cut over the finished outside, seams included; four seams, 1 in or 3 cm (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @returns Strips for sides, top and bottom.
 */
export function borderStrips(
  width: any,
  length: any,
  border: any,
  fabricWidth?: any,
  corner?: any,
  join?: any,
  units?: any,
  insurance?: any,
  seam?: any,
): any {
  return answer(units, (door) =>
    plain.borderStrips(
      ...readInside(door, width, length, border),
      readOptions(door, fabricWidth, corner, join, insurance, seam),
    ),
  );
}

/**
 * Amount of fabric to buy for a plain border. Across: joined strips. Along: strips without joins, as many side by side as the
 * fabric is wide, all of the longest length. Cornerstones are not counted.
 * @customfunction BORDERFABRIC
 * @param width Finished width inside the border.
 * @param length Finished length inside the border.
 * @param border Finished width of the border.
 * @param [fabricWidth] Usable width of the fabric: 42 in (usual) or 107 cm.
 * @param [way] "best" (usual): the way that needs less. "across" or "along" the length of the fabric.
 * @param [corner] "butted" (usual), "mitered" or "cornerstones".
 * @param [join] "straight" (usual): a join takes two seams. "diagonal": it takes the width of a strip.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @param [insurance] Mitered: what to cut over the finished outside, seams included; four seams, 1 in or 3 cm (usual).
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @returns Amount to buy in yards (or meters).
 */
export function borderFabric(
  width: any,
  length: any,
  border: any,
  fabricWidth?: any,
  way?: any,
  corner?: any,
  join?: any,
  step?: any,
  units?: any,
  insurance?: any,
  seam?: any,
): any {
  return answer(units, (door) =>
    door.showsFabric(
      plain.borderFabric(
        ...readInside(door, width, length, border),
        door.choice("way", way, plain.BORDER_WAYS, "best"),
        door.shopStep(step),
        readOptions(door, fabricWidth, corner, join, insurance, seam),
      ),
    ),
  );
}

/**
 * Length to cut a border from three measurements of the quilt, raw edge to raw edge: their mean, so that both sides are eased
 * to the same length.
 * @customfunction BORDERMEASURED
 * @param first Measured along one edge.
 * @param second Measured through the middle.
 * @param third Measured along the other edge.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact mean.
 * @param [units] "in" (usual) or "cm".
 * @param [spread] How far the three may differ before a note warns: 1/2 in (usual) or 1 cm.
 * @returns Length to cut and a note, side by side; the note is empty where the quilt is square enough.
 */
export function borderMeasured(first: any, second: any, third: any, mark?: any, units?: any, spread?: any): any[][] {
  return answer(units, (door) => {
    const measured = borders.borderMeasured(
      [door.length("first", first), door.length("second", second), door.length("third", third)],
      door.mark(mark),
      door.lengthOrZero("spread", spread, door.conventions.spread),
    );
    const note = `not square: the measurements differ by ${showing(door.system).length(measured.spread)}`;
    return [[door.showsLength(measured.length), measured.outOfSquare ? note : ""]];
  });
}

/**
 * Whole units, such as piano keys, that cover one side of a quilt, rounded up.
 * @customfunction BORDERUNITS
 * @param side Finished length of the side, without its seam allowances.
 * @param unit Finished length that one unit takes along the side.
 * @param [units] "in" (usual) or "cm".
 * @returns Units for the side; BORDERGAP tells what they overhang.
 */
export function borderUnits(side: any, unit: any, units?: any): any {
  return answer(units, (door) => borders.borderUnits(door.length("side", side), door.length("unit", unit)));
}

/**
 * What the whole units that cover a side overhang; 0 where they fit.
 * @customfunction BORDERGAP
 * @param side Finished length of the side, without its seam allowances.
 * @param unit Finished length that one unit takes along the side.
 * @param [units] "in" (usual) or "cm".
 * @returns Overhang of the units beyond the side.
 */
export function borderGap(side: any, unit: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(borders.borderGap(door.length("side", side), door.length("unit", unit))),
  );
}

/**
 * Fits a border of whole units, such as stars or piano keys, round a quilt. Plain strips, the spacers, bring the quilt to a
 * whole number of units each way; a difference of no more than a ruler mark is eased in instead.
 * @customfunction BORDERFIT
 * @param width Finished width inside the border.
 * @param length Finished length inside the border.
 * @param unit Finished length that one unit takes along the side.
 * @param [depth] Finished depth of the border; as long as the unit (usual). The corner units are squares of it.
 * @param [leastSpacer] Narrowest finished spacer that is wanted; 0 (usual) for none where the units fit.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark that a spacer should be on: 1/8 in (usual) or 0.1 cm. Type 0 for no notes and no easing.
 * @param [units] "in" (usual) or "cm".
 * @returns Table of spacers in sewing order, units, units in all, finished outside: size before sewing in, how many, note.
 */
export function borderFit(
  width: any,
  length: any,
  unit: any,
  depth?: any,
  leastSpacer?: any,
  seam?: any,
  mark?: any,
  units?: any,
): any[][] {
  return answer(units, (door) => {
    const [insideWidth, insideLength, along] = readInside(door, width, length, unit, "unit");
    const deep = door.length("depth", depth, along);
    const allowances = 2 * door.seam(seam);
    const options = {
      depth: deep,
      leastSpacer: door.lengthOrZero("least spacer", leastSpacer, inches(0)),
      mark: door.mark(mark),
    };
    const fit = borders.borderFit(insideWidth, insideLength, along, options);
    const sewnIn = (length: number): number => door.showsLength(length + allowances);
    const spacers = (name: string, side: borders.FittedSide, long: Inches): Value[] => {
      const note = spacerNote(door, side, inches(side.spacer + allowances), options.mark);
      return side.spacer === 0 ? [name, "", "", 0, note] : [name, sewnIn(side.spacer), sewnIn(long), 2, note];
    };
    return [
      ["piece", "cut width", "cut length", "how many", "note"],
      spacers("side spacers", fit.across, insideLength),
      spacers("top and bottom spacers", fit.down, fit.across.covered),
      ["side units", sewnIn(deep), sewnIn(along), 2 * fit.down.units, `${fit.down.units} on each side`],
      ["top and bottom units", sewnIn(along), sewnIn(deep), 2 * fit.across.units, `${fit.across.units} on each`],
      ["corner units", sewnIn(deep), sewnIn(deep), 4, ""],
      ["units in all", "", "", fit.units, ""],
      ["finished outside", door.showsLength(fit.outside.width), door.showsLength(fit.outside.length), "", ""],
    ];
  });
}

function spacerNote(door: Door, side: borders.FittedSide, cut: Inches, mark: Inches): string {
  const show = showing(door.system);
  if (side.eased !== 0) {
    const way = side.eased > 0 ? "longer" : "shorter";
    return `none: ease in units that are ${show.length(Math.abs(side.eased))} ${way} than the quilt`;
  }
  if (side.spacer === 0) return "none: the units fit";
  return borders.onMark(cut, mark) ? "" : `${show.length(cut)} is on no ruler mark of ${show.length(mark)}`;
}

function readInside(door: Door, width: Cell, length: Cell, border: Cell, name = "border") {
  return [door.length("width", width), door.length("length", length), door.length(name, border)] as const;
}

function readCorner(door: Door, corner: Cell, insurance: Cell, seam: Cell): borders.CornerOptions {
  return {
    corner: door.choice("corner", respelled(corner), borders.CORNERS, "butted"),
    ...(isEmpty(insurance) ? {} : { insurance: door.lengthOrZero("insurance", insurance) }),
    seam: door.seam(seam),
  };
}

function readOptions(
  door: Door,
  fabricWidth: Cell,
  corner: Cell,
  join: Cell,
  insurance: Cell,
  seam: Cell,
): plain.BorderOptions {
  return {
    fabricWidth: door.fabricWidth("fabric width", fabricWidth),
    join: door.choice("join", join, JOINS, "straight"),
    ...readCorner(door, corner, insurance, seam),
  };
}
