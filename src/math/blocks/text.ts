/** Writes a unit as its cell holds it: the other way round of what grammar.ts reads. */
import { CORNERS, type Unit } from "./grammar";

export function unitText(unit: Unit): string {
  switch (unit.kind) {
    case "plain":
      return unit.fabric;
    case "half square":
      return `${unit.above} ${unit.seam === "rising" ? "/" : "\\"} ${unit.below}`;
    case "four triangles": {
      const [top, right, bottom, left] = unit.fabrics;
      return `four: ${(top === bottom && right === left ? [top, right] : unit.fabrics).join(", ")}`;
    }
    case "goose":
      return `goose ${unit.flies}: ${unit.goose}, ${unit.sky}`;
    case "corners": {
      const places = unit.at.length === CORNERS.length ? "all" : CORNERS.filter((at) => unit.at.includes(at)).join(" ");
      return `${unit.fabric} + ${unit.corner} ${places}`;
    }
  }
}
