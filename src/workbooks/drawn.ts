/** Quilts drawn in cells, as planning workbooks hand them to the functions: what is left empty is not wanted. */
import { unlessTooLong } from "./shared";

/** The row of width, fabric and cornerstones; none where the width is empty. */
export function sashingIn(width: string, row: string): string {
  return `IF(${width}="","",${row})`;
}

/** The rows of width and fabric; one whose width is empty is none. */
export function bordersIn(widths: string, fabrics: string): string {
  return `CHOOSE({1,2},IF(${widths}="",0,${widths}),${fabrics}&"")`;
}

/** Whether a width is given whose fabric is not. */
export function lacksFabric(width: string, fabric: string): string {
  return `AND(${width}<>"",${width}<>0,${fabric}="")`;
}

/** How many places of a layout name a block that is not among the drawn ones, whatever its turn. */
export function unknownPlaces(layout: string, names: string): string {
  const name = [90, 180, 270].reduce(
    (text, turn) => `SUBSTITUTE(${text}," ${turn}|","|")`,
    `SUBSTITUTE(TRIM(${layout})&"|","°","")`,
  );
  return `SUMPRODUCT(--ISNA(MATCH(${name},TRIM(${names})&"|",0)))`;
}

/** Why a table of a quilt cannot be worked out, as far as cells can tell; the function's own sentence says the rest. */
export function tableFault(table: string, where: string, layout: string, names: string): string {
  const unknown = unknownPlaces(layout, names);
  const renamed = `"Places of the layout that name no drawn block: "&${unknown}&". A renamed block needs its new name there, too."`;
  const other = `IF(IFERROR(${unknown},0)>0,${renamed},"Something cannot be read: the message of ${where} says what.")`;
  return `IF(ISERROR(${table}),${unlessTooLong(table, other)},"")`;
}
