/** Tables of a handout: what to cut, with boxes to tick, and what to buy in several sizes. */
import { ruledText } from "../../math/show";
import type { System } from "../../math/units";
import { cellText } from "../answerView";
import type { Shown } from "../catalogue";
import type { Told } from "./told";

export interface Table {
  what: string;
  /** The sheet it is from, where several have a part in the list. */
  page?: string;
  /** In which units its numbers are. */
  units: string;
  head: string[];
  rows: TableRow[];
}

export interface TableRow {
  cells: string[];
  /** Whether it is a piece to cut, which is ticked when it is done. */
  isPiece: boolean;
}

const TO_CUT =
  /^(?:PLAN|TOPPIECES|BORDERLENGTHS|BORDERFIT|QUILTPIECES|BLOCKPIECES|STRIPSFIRST|CUTGEESE|CUTSQUAREINSQUARE|CUTSTAR|CUTTEMPLATE)$/;

/** Rows of tables that name no piece of fabric. */
const NO_PIECE = /^(?:total|units in all|finished outside|unit made|block made|waste .*|strips used|strips left)$/;
const COUNT = /^(?:how many|count|strips)$/;

const UNITS: Readonly<Record<System, [string, string]>> = {
  in: ["Sizes in inches.", "fabric in yards"],
  cm: ["Sizes in centimeters.", "fabric in meters"],
};

export function cuttingTable(told: Told): Table | undefined {
  const { id, label: what, shown, system } = told;
  if (!Array.isArray(shown) || !TO_CUT.test(id)) return undefined;
  const [units] = UNITS[system];
  if (id === "CUTTEMPLATE") {
    const rows = shown.map((row, index) => ({
      cells: [String(index + 1), ...row.map((cell) => cellText(cell))],
      isPiece: false,
    }));
    return {
      what,
      units: `Corners of the cut shape, round it. ${units}`,
      head: ["corner", "to the right", "up"],
      rows,
    };
  }
  const [head, ...others] = shown.map((row) => row.map((cell) => tableText(cell, system)));
  const count = head.findIndex((word) => COUNT.test(word));
  const isPiece = (cells: string[]) => !NO_PIECE.test(cells[0]) && (count < 0 || cells[count] !== "0");
  return { what, units, head, rows: others.map((cells) => ({ cells, isPiece: isPiece(cells) })) };
}

/** The same quilt in several sizes. */
export function supplyTable({ id, label: what, shown, system }: Told): Table | undefined {
  if (id !== "SIZETABLE" || !Array.isArray(shown)) return undefined;
  const [sizes, fabric] = UNITS[system];
  const isSize = ([name]: Shown[]) => name === "width" || name === "length";
  const rows = shown.map((row) => row.map((cell) => tableText(cell, system, isSize(row) ? "length" : "fabric")));
  const [head, ...others] = rows;
  const units = sizes.replace(".", `, ${fabric}.`);
  return { what, units, head, rows: others.map((cells) => ({ cells, isPiece: false })) };
}

/** A number as a ruler reads, without its unit. */
function tableText(cell: Shown, system: System, measures: "length" | "fabric" = "length"): string {
  return (typeof cell === "number" && system === "in" ? ruledText(cell, measures) : undefined) ?? cellText(cell);
}
