/** Settings: quilt tops laid out from blocks, setting triangles, and quilts for beds. */
import * as beds from "../src/math/beds";
import * as settings from "../src/math/settings";
import * as tops from "../src/math/topPieces";
import { inches, type Size } from "../src/math/units";
import { answer, type Cell, type Door, isEmpty } from "./cells";

/**
 * Finished size of a quilt top from its blocks, without borders. On point with a sashed edge, the edge runs through the
 * middle of the outer cornerstones.
 * @customfunction TOPSIZE
 * @param across Blocks in a row. On point: blocks in one of the rows that reach both sides.
 * @param down Rows of blocks, counted in the same way.
 * @param block Finished side of a block.
 * @param [sashing] Finished width of the sashing; 0 (usual) for none.
 * @param [edge] "none" (usual): sashing only between blocks. "sashed": also round the outside.
 * @param [setting] "straight" (usual), "on point", or "two-side": each block carries a strip on two sides.
 * @param [units] "in" (usual) or "cm".
 * @returns Width and length, side by side.
 */
export function topSize(
  across: any,
  down: any,
  block: any,
  sashing?: any,
  edge?: any,
  setting?: any,
  units?: any,
): any[][] {
  return answer(units, (door) =>
    sizeRow(
      door,
      settings.topSize(
        door.count("across", across, undefined, 1),
        door.count("down", down, undefined, 1),
        door.length("block", block),
        readSetting(door, sashing, edge, setting),
      ),
    ),
  );
}

/**
 * What a quilt top is sewn from: blocks, sashes, cornerstones and setting triangles, with cut sizes and counts.
 * The first four columns are a cutting list. On point, the outer cornerstones of a sashed edge are trimmed after sewing.
 * @customfunction TOPPIECES
 * @param across Blocks in a row. On point: blocks in one of the rows that reach both sides.
 * @param down Rows of blocks, counted in the same way.
 * @param block Finished side of a block.
 * @param [sashing] Finished width of the sashing; 0 (usual) for none.
 * @param [edge] "none" (usual): sashing only between blocks. "sashed": also round the outside.
 * @param [setting] "straight" (usual), "on point", or "two-side": each block carries a strip on two sides.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @param [alternate] TRUE counts every second block (on point: those between the rows) apart; FALSE (usual) counts all alike.
 * @param [mark] Ruler mark to round setting triangles up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @returns Table: piece, width and height to cut, how many to cut, how many pieces in the top, how.
 */
export function topPieces(
  across: any,
  down: any,
  block: any,
  sashing?: any,
  edge?: any,
  setting?: any,
  seam?: any,
  units?: any,
  alternate?: any,
  mark?: any,
): any[][] {
  return answer(units, (door) => {
    const pieces = tops.topPieces(
      door.count("across", across, undefined, 1),
      door.count("down", down, undefined, 1),
      door.length("block", block),
      {
        ...readSetting(door, sashing, edge, setting),
        seam: door.seam(seam),
        alternate: door.flag("alternate", alternate, false),
        mark: door.mark(mark),
      },
    );
    return [
      ["piece", "cut width", "cut height", "how many", "in the top", "how"],
      ...pieces.map(({ piece, width, height, count, inTop, how }) => [
        piece,
        door.showsLength(width),
        door.showsLength(height),
        count,
        inTop,
        how,
      ]),
    ];
  });
}

/**
 * Layouts that come nearest to a wanted size, nearest first: with as many blocks as stay within it and with one more.
 * @customfunction BLOCKSFOR
 * @param width Wanted width of the quilt top.
 * @param length Wanted length of the quilt top.
 * @param block Finished side of a block.
 * @param [sashing] Finished width of the sashing; 0 (usual) for none.
 * @param [edge] "none" (usual): sashing only between blocks. "sashed": also round the outside.
 * @param [setting] "straight" (usual), "on point", or "two-side": each block carries a strip on two sides.
 * @param [units] "in" (usual) or "cm".
 * @returns Table: blocks across, down and in all, width and length, what it is wider and longer (below 0: less) than wanted.
 */
export function blocksFor(
  width: any,
  length: any,
  block: any,
  sashing?: any,
  edge?: any,
  setting?: any,
  units?: any,
): any[][] {
  return answer(units, (door) => {
    const layouts = settings.blocksFor(
      door.length("width", width),
      door.length("length", length),
      door.length("block", block),
      readSetting(door, sashing, edge, setting),
    );
    return [
      ["across", "down", "blocks", "width", "length", "wider by", "longer by"],
      ...layouts.map((layout) => [
        layout.across,
        layout.down,
        layout.blocks,
        ...[layout.width, layout.length, layout.wider, layout.longer].map((size) => door.showsLength(size)),
      ]),
    ];
  });
}

/**
 * Square to cut twice, corner to corner, for the side triangles of blocks set on point: four triangles from a square.
 * Worked out from the block and rounded once. For a triangle known by its long edge, use CUTQUARTERSQUARE.
 * @customfunction CUTSIDETRIANGLE
 * @param block Finished side of a block; with sashing between the blocks but none at the edge, block and sashing.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @param [units] "in" (usual) or "cm".
 * @returns Side of the square to cut.
 */
export function cutSideTriangle(block: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) => door.showsLength(settings.cutSideTriangle(...readTriangle(door, block, seam, mark))));
}

/**
 * Square to cut once, corner to corner, for the corner triangles of blocks set on point: two triangles from a square.
 * Also for the four triangles that frame a single block on point, whose long edges are as long as the block.
 * @customfunction CUTCORNERTRIANGLE
 * @param block Finished side of a block.
 * @param [seam] Seam allowance: 1/4 in (usual) or 0.75 cm. Type 0 for none.
 * @param [mark] Ruler mark to round up to: 1/8 in (usual) or 0.1 cm. Type 0 for the exact size.
 * @param [units] "in" (usual) or "cm".
 * @returns Side of the square to cut.
 */
export function cutCornerTriangle(block: any, seam?: any, mark?: any, units?: any): any {
  return answer(units, (door) =>
    door.showsLength(settings.cutCornerTriangle(...readTriangle(door, block, seam, mark))),
  );
}

/**
 * Finished size of a quilt for a bed: the mattress, a drop on both sides and at the foot, and a tuck at the head.
 * Mattress in inches: crib 28 × 52 3/8, twin 39 × 75, twin XL 39 × 80, full 54 × 75, queen 60 × 80, king 76 × 80,
 * California king 72 × 84. Makers and countries differ: measure the bed, or type another mattress width and length.
 * Caution: a crib quilt is for the wall, the floor or an older child. Nothing soft, and no quilt, belongs in an infant's
 * sleep space (American Academy of Pediatrics 2022; US CPSC).
 * @customfunction BEDSIZE
 * @param bed "crib", "twin", "twin XL", "full", "queen", "king" or "California king".
 * @param [drop] How far it hangs down at both sides and the foot: 12 in (usual) or 30 cm; for a crib 0. Type 0 for none.
 * @param [tuck] Extra length to tuck under the pillows; 0 (usual).
 * @param [units] "in" (usual) or "cm".
 * @param [mattressWidth] Width of the mattress, if another than that of the named bed.
 * @param [mattressLength] Length of the mattress, if another than that of the named bed. With both, bed may stay empty.
 * @returns Width and length, side by side.
 */
export function bedSize(
  bed: any,
  drop?: any,
  tuck?: any,
  units?: any,
  mattressWidth?: any,
  mattressLength?: any,
): any[][] {
  return answer(units, (door) => {
    const measured = isEmpty(bed) && !isEmpty(mattressWidth) && !isEmpty(mattressLength);
    const named = measured ? undefined : door.choice("bed", bed, beds.BEDS);
    const usual = named && beds.mattressSize(named);
    const mattress = {
      width: door.length("mattress width", mattressWidth, usual?.width),
      length: door.length("mattress length", mattressLength, usual?.length),
    };
    return sizeRow(
      door,
      beds.bedSize(
        mattress,
        door.lengthOrZero("drop", drop, beds.usualDrop(named, door.conventions.drop)),
        door.lengthOrZero("tuck", tuck, inches(0)),
      ),
    );
  });
}

function readTriangle(door: Door, block: Cell, seam: Cell, mark: Cell) {
  return [door.length("block", block), door.seam(seam), door.mark(mark)] as const;
}

function readSetting(door: Door, sashing: Cell, edge: Cell, setting: Cell): settings.SettingOptions {
  return {
    sashing: door.lengthOrZero("sashing", sashing, inches(0)),
    edge: door.choice("edge", edge, settings.EDGES, "none"),
    setting: door.choice("setting", setting, settings.SETTINGS, "straight"),
  };
}

function sizeRow(door: Door, size: Size): number[][] {
  return [[door.showsLength(size.width), door.showsLength(size.length)]];
}
