/** Batting: the layer between top and backing, off the roll or in a package. */
import { battingPack as choosePack, battingSize as sizeOfBatting, type Pack, PACKS } from "../src/math/batting";
import { Problem } from "../src/math/problem";
import { assume } from "../src/math/working";
import { answer, type Cell, type Door, filledRows, isEmpty } from "./cells";

/**
 * Size of the batting for a quilt, with a margin on all four sides.
 * @customfunction BATTINGSIZE
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [margin] Extra on each of the four sides: 4 in (usual) or 10 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @returns Width and length, side by side, exact.
 */
export function battingSize(width: any, length: any, margin?: any, units?: any): any[][] {
  return answer(units, (door) => {
    const size = sizeOfBatting(...readQuilt(door, width, length, margin));
    return [size.map((side) => door.showsLength(side))];
  });
}

/**
 * The smallest packaged batting that covers a quilt in one piece, turned if need be.
 *
 * Usual packages, in inches: crib 45 × 60, throw 60 × 60, twin 72 × 90, full 81 × 96, queen 90 × 108, king 120 × 120. They
 * differ from maker to maker: give a list of your own where they do. Of equal areas the first listed is taken. Crib is the
 * name of a package only: no quilt belongs where an infant sleeps.
 * @customfunction BATTINGPACK
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [margin] Extra on each of the four sides: 4 in (usual) or 10 cm. Type 0 for none.
 * @param [units] "in" (usual) or "cm".
 * @param [packs] Sizes to choose from, a row each: name, width, length. Usual: crib 45 × 60 to king 120 × 120 in.
 * @returns Name, width and length of the package, side by side, and "turned" where it lies the other way.
 */
export function battingPack(width: any, length: any, margin?: any, units?: any, packs?: any[][]): any[][] {
  return answer(units, (door) => {
    const pack = choosePack(...readQuilt(door, width, length, margin), readPacks(door, packs));
    return [[pack.name, door.showsLength(pack.width), door.showsLength(pack.length), pack.turned ? "turned" : ""]];
  });
}

function readQuilt(door: Door, width: Cell, length: Cell, margin: Cell) {
  return [
    door.length("width", width),
    door.length("length", length),
    door.lengthOrZero("margin", margin, door.conventions.margin),
  ] as const;
}

function readPacks(door: Door, range: Cell): readonly Pack[] {
  if (isEmpty(range)) {
    assume(() => "packs: crib to king, as usual where none are given");
    return PACKS;
  }
  return filledRows(range).map(({ number, cells }) => {
    if (cells.length !== 3) throw new Problem("bad input", "packs must have three columns: name, width, length");
    const [name, width, length] = cells;
    return {
      name: isEmpty(name) ? "" : door.text(`name in row ${number} of packs`, name),
      width: door.length(`width in row ${number} of packs`, width),
      length: door.length(`length in row ${number} of packs`, length),
    };
  });
}
