import type { Case } from "../cases";

const PIECES = ["piece", "cut width", "cut height", "how many", "in the top", "how"];
const BLOCK = "size before it is sewn in";
const TWICE = "cut twice, corner to corner";
const ONCE = "cut once, corner to corner";

export const topPieces: Case[] = [
  {
    call: "TOPPIECES",
    cells: [4, 5, 12, 4, "sashed"],
    gives: [
      PIECES,
      ["block", 12.5, 12.5, 20, 20, BLOCK],
      ["vertical sash", 4.5, 12.5, 25, 25, ""],
      ["horizontal sash", 12.5, 4.5, 24, 24, ""],
      ["cornerstone", 4.5, 4.5, 30, 30, ""],
    ],
    source: "common practice",
    note: "5 × 5 upright, 4 × 6 lying, 5 × 6 crossings",
    example: "4 × 5 blocks of 12 in, sashed all round with 4 in",
  },
  {
    call: "TOPPIECES",
    cells: [4, 5, 12, 4],
    gives: [
      PIECES,
      ["block", 12.5, 12.5, 20, 20, BLOCK],
      ["vertical sash", 4.5, 12.5, 15, 15, ""],
      ["horizontal sash", 12.5, 4.5, 16, 16, ""],
      ["cornerstone", 4.5, 4.5, 12, 12, ""],
    ],
    source: "derived",
    note: "only between: 3 × 5, 4 × 4, 3 × 4",
  },
  {
    call: "TOPPIECES",
    cells: [24, 29, 3],
    gives: [PIECES, ["block", null, null, 696, 696, BLOCK]],
    source: "smithsonianNinePatch",
    note: "696 blocks of 3 in",
  },
  {
    call: "TOPPIECES",
    cells: [4, 5, 6, null, null, "on point"],
    gives: [
      PIECES,
      ["block", 6.5, 6.5, 32, 32, BLOCK],
      ["square for side triangles", 9.75, 9.75, 4, 14, TWICE],
      ["square for corner triangles", 5.125, 5.125, 2, 4, ONCE],
    ],
    source: "guildOnPoint",
    note: "squares of 9 3/4 and 5 1/8; counts: 4 × 5 + 3 × 4, 2 × 3 + 2 × 4 triangles",
    example: "4 × 5 blocks of 6 in on point",
  },
  {
    call: "TOPPIECES",
    cells: [4, 5, 12, null, null, "on point", null, null, true],
    gives: [
      PIECES,
      ["block", 12.5, 12.5, 20, 20, BLOCK],
      ["alternate block", 12.5, 12.5, 12, 12, BLOCK],
      ["square for side triangles", 18.25, 18.25, 4, 14, TWICE],
      ["square for corner triangles", 9.375, 9.375, 2, 4, ONCE],
    ],
    source: "derived",
    note: "16.9706 + 1.2071 = 18.1777 and 8.4853 + 0.8536 = 9.3388, up to the eighth",
    example: "The blocks between the rows counted apart",
  },
  {
    call: "TOPPIECES",
    cells: [4, 5, 10, 2, null, "on point", null, null, null, 0],
    gives: [
      PIECES,
      ["block", 10.5, 10.5, 32, 32, BLOCK],
      ["sash", 2.5, 10.5, 48, 48, ""],
      ["cornerstone", 2.5, 2.5, 17, 17, ""],
      ["square for side triangles", 18.177669529, 18.177669529, 4, 14, TWICE],
      ["square for corner triangles", 7.924621203, 7.924621203, 2, 4, ONCE],
    ],
    within: 5e-9,
    source: "derived",
    note: "12 blocks between × 4 sashes; 2 × 4 + 3 × 3 cornerstones; side triangles with legs of 12: 12√2 + 2(1 + √2)/4",
  },
  {
    call: "TOPPIECES",
    cells: [4, 5, 10, 2, "sashed", "on point"],
    gives: [
      PIECES,
      ["block", 10.5, 10.5, 32, 32, BLOCK],
      ["sash", 2.5, 10.5, 80, 80, ""],
      ["cornerstone", 2.5, 2.5, 49, 49, "18 of them lie across the edge; trim them there after sewing"],
      ["square for side triangles", 15.375, 15.375, 4, 14, TWICE],
      ["square for corner triangles", 8, 8, 2, 4, ONCE],
    ],
    source: "derived",
    note: "20 blocks in the rows × 4 sides; 4 × 6 + 5 × 5 corners; triangles as for the blocks alone",
  },
  {
    call: "TOPPIECES",
    cells: [4, 5, 6, 2, null, "two-side"],
    gives: [
      PIECES,
      ["block", 6.5, 6.5, 20, 20, BLOCK],
      ["short strip", 2.5, 6.5, 20, 20, "sewn to the block first"],
      ["long strip", 2.5, 8.5, 20, 20, "sewn to the next side"],
    ],
    source: "derived",
    note: "block 6 + 1/2; strips 2 + 1/2 by 6 + 1/2 and 6 + 2 + 1/2",
  },
  {
    call: "TOPPIECES",
    cells: [5, 5, 12, null, null, null, null, null, "yes"],
    gives: [PIECES, ["block", 12.5, 12.5, 13, 13, BLOCK], ["alternate block", 12.5, 12.5, 12, 12, BLOCK]],
    source: "derived",
    note: "25 blocks in a checkerboard with a block in each corner",
  },
  {
    call: "TOPPIECES",
    cells: [1, 1, 6, null, null, "on point"],
    gives: [PIECES, ["block", 6.5, 6.5, 1, 1, BLOCK], ["square for corner triangles", 5.125, 5.125, 2, 4, ONCE]],
    source: "derived",
    note: "one block framed by four triangles, 6 ÷ √2 + 0.8536 = 5.0962",
  },
  {
    call: "TOPPIECES",
    cells: [3, 3, 20, 5, null, "on point", null, "cm"],
    gives: [
      PIECES,
      ["block", 21.5, 21.5, 13, 13, BLOCK],
      ["sash", 6.5, 21.5, 16, 16, ""],
      ["cornerstone", 6.5, 6.5, 4, 4, ""],
      ["square for side triangles", 39, 39, 2, 8, TWICE],
      ["square for corner triangles", 16.8, 16.8, 2, 4, ONCE],
    ],
    source: "derived",
    note: "25√2 + 4.8284 × 0.75 = 38.9766 and 20 ÷ √2 + 3.4142 × 0.75 = 16.7028, up to the millimeter",
  },
  {
    call: "TOPPIECES",
    cells: [2, 3, 10, null, null, null, 0.375],
    gives: [PIECES, ["block", 10.75, 10.75, 6, 6, BLOCK]],
    source: "derived",
    note: "10 + 2 × 3/8",
  },
  { call: "TOPPIECES", cells: [4, 5, null], fails: "#VALUE!", says: "block is missing", source: "derived" },
  {
    call: "TOPPIECES",
    cells: [4, 5, 12, null, null, null, null, null, "every"],
    fails: "#VALUE!",
    says: "alternate must be TRUE or FALSE",
    source: "derived",
  },
];
