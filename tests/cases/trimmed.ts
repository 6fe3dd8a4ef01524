import type { Case } from "../cases";

const HEAD = ["patch", "finished", "cut width", "cut length", "how many", "how"];

/** Flying geese four at once: finished width, large square, small square. */
const GEESE: [number, number, number][] = [
  [4, 5.25, 2.875],
  [6, 7.25, 3.875],
  [3, 4.25, 2.375],
  [2, 3.25, 1.875],
  [5, 6.25, 3.375],
  [8, 9.25, 4.875],
];

/** Units that are trimmed after sewing: flying geese and square-in-square. */
export const trimmed: Case[] = [
  ...GEESE.map(([width, large, small]): Case => ({
    call: "CUTGEESE",
    cells: [width],
    gives: [
      HEAD,
      ["large square", width, large, large, 1, null],
      ["small square", width / 2, small, small, 4, null],
      ["unit made", width, width + 0.5, width / 2 + 0.5, 4, null],
    ],
    source: "geeseTables",
    note: `${width} × ${width / 2}: ${large} and ${small}`,
    ...(width === 4 ? { example: "Flying geese that finish 4 × 2 in, four at once" } : {}),
  })),
  {
    call: "CUTGEESE",
    cells: [4, null, null, null, null, 10],
    gives: [
      HEAD,
      ["large square", 4, 5.25, 5.25, 3, "one for four units"],
      ["small square", 2, 2.875, 2.875, 12, "sew to the corners on both sides of the diagonal"],
      ["unit made", 4, 4.5, 2.5, 12, "trim to this size"],
    ],
    source: "derived",
    note: "10 units are 3 sets of 4, 2 to spare",
    example: "Ten units",
  },
  {
    call: "CUTGEESE",
    cells: [4, "triangles", null, 0, null, 10],
    gives: [
      HEAD,
      ["large square", 4, 4 + 2 * (1 + Math.SQRT2) * 0.25, null, 3, "cut twice, corner to corner"],
      ["small square", 2, 2 + (2 + Math.SQRT2) * 0.25, null, 10, "cut once, corner to corner"],
      ["unit made", 4, 4.5, 2.5, 10, null],
    ],
    source: "derived",
    note: "10 large triangles from 3 squares, 20 small ones from 10; exact, without a mark",
  },
  {
    call: "CUTGEESE",
    cells: [4, "corners", null, null, null, 1],
    gives: [
      HEAD,
      ["rectangle", 4, 4.5, 2.5, 1, "one for each unit"],
      ["square", 2, 2.5, 2.5, 2, "sew across two corners, trim and flip"],
      [
        "waste triangle",
        2 - Math.SQRT1_2,
        2.5 - Math.SQRT2 / 4,
        2.5 - Math.SQRT2 / 4,
        4,
        "cut away; a pair makes a half-square unit",
      ],
      ["unit made", 4, 4.5, 2.5, 1, null],
    ],
    source: "derived",
    note: "the line of cutting lies a seam outside the diagonal of the square: leg 2.5 − √2 / 4; half-square units of 2 − √2 / 2",
    example: "Squares sewn across the corners of a rectangle, one unit",
  },
  {
    call: "CUTGEESE",
    cells: [4.2, "corners"],
    gives: [
      HEAD,
      ["rectangle", 4.2, 4.7, 2.6, 4, null],
      ["square", 2.1, 2.6, 2.6, 8, null],
      ["waste triangle", null, null, null, 16, null],
      ["unit made", 4.2, 4.7, 2.6, 4, null],
    ],
    source: "derived",
    note: "sewn as cut, so without a mark",
  },
  {
    call: "CUTGEESE",
    cells: [1, "corners"],
    gives: [
      HEAD,
      ["rectangle", 1, 1.5, 1, 4, null],
      ["square", 0.5, 1, 1, 8, null],
      ["waste triangle", 0, 1 - Math.SQRT2 / 4, null, 16, "cut away; too small to sew"],
      ["unit made", 1, 1.5, 1, 4, null],
    ],
    source: "derived",
    note: "1/2 − √2 / 2 is below 0",
  },
  {
    call: "CUTGEESE",
    cells: [10, null, null, null, "cm"],
    gives: [
      HEAD,
      ["large square", 10, 13.7, 13.7, 1, null],
      ["small square", 5, 7.6, 7.6, 4, null],
      ["unit made", 10, 11.5, 6.5, 4, null],
    ],
    source: "derived",
    note: "10 + 4.8284 × 0.75 = 13.62; 5 + 3.4142 × 0.75 = 7.56",
  },
  { call: "CUTGEESE", cells: [4, "six at once"], fails: "#VALUE!", says: "method must be one of", source: "derived" },
  {
    call: "CUTGEESE",
    cells: [4, null, null, null, null, 2.5],
    fails: "#VALUE!",
    says: "count must be a whole number",
    source: "derived",
  },
  { call: "CUTGEESE", cells: [null], fails: "#VALUE!", says: "width is missing", source: "derived" },

  {
    call: "CUTSQUAREINSQUARE",
    cells: [6],
    gives: [
      HEAD,
      ["center square", 6 / Math.SQRT2, 4.75, 4.75, 1, "stands on point"],
      ["corner square", 3, 3.875, 3.875, 2, "cut once, corner to corner"],
      ["unit made", 6, 6.5, 6.5, 1, "trim to this size"],
    ],
    source: "derived",
    note: "6 / √2 + 1/2 = 4.7426; 3 + 0.8536 = 3.8536",
    example: "A unit that finishes 6 in",
  },
  {
    call: "CUTSQUAREINSQUARE",
    cells: [6 * Math.SQRT2],
    gives: [
      HEAD,
      ["center square", 6, 6.5, 6.5, 1, null],
      ["corner square", 3 * Math.SQRT2, 5.125, 5.125, 2, null],
      ["unit made", 6 * Math.SQRT2, null, null, 1, null],
    ],
    source: "guildOnPoint",
    note: "a 6 in block on point: corner square 5 1/8",
  },
  {
    call: "CUTSQUAREINSQUARE",
    cells: [15, null, 0, "cm"],
    gives: [
      HEAD,
      ["center square", 15 / Math.SQRT2, 15 / Math.SQRT2 + 1.5, null, 1, null],
      ["corner square", 7.5, 7.5 + 0.75 * (2 + Math.SQRT2), null, 2, null],
      ["unit made", 15, 16.5, 16.5, 1, null],
    ],
    source: "derived",
    note: "15 / √2 + 2 × 0.75; 7.5 + 3.4142 × 0.75; exact",
  },
  { call: "CUTSQUAREINSQUARE", cells: ["six"], fails: "#VALUE!", says: "cannot read a length", source: "derived" },
];
