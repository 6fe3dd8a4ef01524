/** Backing: panels of fabric under the quilt. */
import { backingWays, bestBacking, type BackingWay, PRINTS } from "../src/math/backing";
import { showing } from "../src/math/show";
import { inches } from "../src/math/units";
import { answer, type Cell, type Door, type Value } from "./cells";

/**
 * Both ways to piece a backing: seams up and down, and seams across; with the best marked.
 *
 * Where the fabric is at most 8 in too narrow to save a panel, or the seam, the note says by how much: a smaller margin may
 * do. To match a print, each panel starts a whole number of repeats after the one before it.
 * @customfunction BACKINGPLAN
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [fabricWidth] Usable width of the backing fabric: 42 in (usual) or 107 cm.
 * @param [margin] Extra on each of the four sides: 4 in (usual) or 10 cm. Type 0 for none.
 * @param [panelSeam] Seam allowance between panels: 1/2 in (usual) or 1.5 cm. Type 0 for none.
 * @param [print] "any" (usual) or "upright" for a print that must run along the length of the quilt.
 * @param [repeat] Length after which the print repeats along the fabric, where panels are to match; 0 (usual) for none.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [units] "in" (usual) or "cm"; amounts come back in yards or meters.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @returns Table: way, panels, length to cut each, amount to buy, spare width, spare length, note.
 */
export function backingPlan(
  width: any,
  length: any,
  fabricWidth?: any,
  margin?: any,
  panelSeam?: any,
  print?: any,
  repeat?: any,
  step?: any,
  units?: any,
  squaring?: any,
): any[][] {
  return answer(units, (door) => {
    const ways = readWays(door, [width, length, fabricWidth, margin, panelSeam, print, repeat, step, squaring]);
    const best = bestBacking(ways);
    return [
      ["way", "panels", "cut each", "amount", "spare width", "spare length", "note"],
      ...ways.map((way) => wayRow(door, way, way === best)),
    ];
  });
}

/**
 * Amount of fabric to buy for a backing, the way that takes least.
 *
 * To match a print, each panel starts a whole number of repeats after the one before it. BACKINGPLAN shows both ways.
 * @customfunction BACKINGFABRIC
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [fabricWidth] Usable width of the backing fabric: 42 in (usual) or 107 cm.
 * @param [margin] Extra on each of the four sides: 4 in (usual) or 10 cm. Type 0 for none.
 * @param [panelSeam] Seam allowance between panels: 1/2 in (usual) or 1.5 cm. Type 0 for none.
 * @param [print] "any" (usual) or "upright" for a print that must run along the length of the quilt.
 * @param [repeat] Length after which the print repeats along the fabric, where panels are to match; 0 (usual) for none.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [units] "in" (usual) or "cm"; the amount comes back in yards or meters.
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @returns Amount to buy in yards (or meters).
 */
export function backingFabric(
  width: any,
  length: any,
  fabricWidth?: any,
  margin?: any,
  panelSeam?: any,
  print?: any,
  repeat?: any,
  step?: any,
  units?: any,
  squaring?: any,
): any {
  return answer(units, (door) => {
    const cells = [width, length, fabricWidth, margin, panelSeam, print, repeat, step, squaring];
    return door.showsFabric(bestBacking(readWays(door, cells)).amount);
  });
}

/**
 * Panels that a backing is pieced from, the way that takes least fabric.
 * @customfunction BACKINGPANELS
 * @param width Finished width of the quilt.
 * @param length Finished length of the quilt.
 * @param [fabricWidth] Usable width of the backing fabric: 42 in (usual) or 107 cm.
 * @param [margin] Extra on each of the four sides: 4 in (usual) or 10 cm. Type 0 for none.
 * @param [panelSeam] Seam allowance between panels: 1/2 in (usual) or 1.5 cm. Type 0 for none.
 * @param [print] "any" (usual) or "upright" for a print that must run along the length of the quilt.
 * @param [repeat] Length after which the print repeats along the fabric, where panels are to match; 0 (usual) for none.
 * @param [step] Step in which the shop cuts: 1/8 yard (usual), 1/4, 1/3, 1/2 or 1; 0.1 meter (usual).
 * @param [units] "in" (usual) or "cm".
 * @param [squaring] Length lost once where the end of the fabric is squared; 0 (usual).
 * @returns Panels side by side; 1 is a backing without a seam.
 */
export function backingPanels(
  width: any,
  length: any,
  fabricWidth?: any,
  margin?: any,
  panelSeam?: any,
  print?: any,
  repeat?: any,
  step?: any,
  units?: any,
  squaring?: any,
): any {
  return answer(units, (door) => {
    const cells = [width, length, fabricWidth, margin, panelSeam, print, repeat, step, squaring];
    return bestBacking(readWays(door, cells)).panels;
  });
}

function readWays(door: Door, cells: Cell[]): BackingWay[] {
  const [width, length, fabricWidth, margin, panelSeam, print, repeat, step, squaring] = cells;
  return backingWays(door.length("width", width), door.length("length", length), {
    fabricWidth: door.fabricWidth("fabric width", fabricWidth),
    margin: door.lengthOrZero("margin", margin, door.conventions.margin),
    panelSeam: door.lengthOrZero("panel seam", panelSeam, door.conventions.panelSeam),
    print: door.choice("print", print, PRINTS, "any"),
    repeat: door.lengthOrZero("repeat", repeat, inches(0)),
    shopStep: door.shopStep(step),
    squaring: door.squaring(squaring),
  });
}

function wayRow(door: Door, way: BackingWay, best: boolean): Value[] {
  const seams = way.lies === "along" ? "seams up and down" : "seams across";
  const noSeam = way.lies === "along" ? "no seam" : "no seam, turned";
  return [
    way.panels === 1 ? noSeam : seams,
    way.panels,
    door.showsLength(way.cutLength),
    door.showsFabric(way.amount),
    door.showsLength(way.spareWidth),
    door.showsLength(way.amount - way.length),
    note(door, way, best),
  ];
}

function note(door: Door, way: BackingWay, best: boolean): string {
  if (way.refused !== undefined) return "turns an upright print";
  const remarks = best ? ["best"] : [];
  if (way.tooNarrow !== undefined) {
    const aim = way.panels === 2 ? "to go without a seam" : `for ${way.panels - 1} panels`;
    remarks.push(`${showing(door.system).length(way.tooNarrow)} too narrow ${aim}`);
  }
  return remarks.join("; ");
}
