import type { Case } from "../cases";

const HEADING = ["fabric", "width", "height", "count", "grain", "use", "spare"];

/** Two blocks under each other: a name, then the cells. */
const BLOCKS = [
  ["nine", "sand", "slate", "sand"],
  ["", "slate", "sand", "slate"],
  ["", "sand", "slate", "sand"],
  ["", "", "", ""],
  ["plain", "Sand", "", ""],
];

const LAYOUT = [
  ["nine", "plain", "nine"],
  ["plain", "nine 90", "plain"],
];

/** Plain blocks all over. */
const plainBlocks = (across: number, down: number) =>
  Array.from({ length: down }, () => Array.from({ length: across }, () => "plain"));

export const quilts: Case[] = [
  {
    call: "QUILTPIECES",
    cells: [LAYOUT, BLOCKS, 9],
    gives: [
      HEADING,
      ["sand", 9.5, 9.5, 3, "any", "square", 0],
      ["sand", 3.5, 3.5, 15, "any", "square", 0],
      ["slate", 3.5, 3.5, 12, "any", "square", 0],
    ],
    source: "common practice",
    note: "three nine-patches, five and four squares each, and three plain blocks",
    example: "Three nine-patches and three plain blocks",
  },
  {
    call: "QUILTPIECES",
    cells: [LAYOUT, BLOCKS, 9, [[1.5, "rust", "slate"]], "sashed", [[2, "rust"]]],
    gives: [
      HEADING,
      ["sand", 9.5, 9.5, 3, "any", "square", 0],
      ["sand", 3.5, 3.5, 15, "any", "square", 0],
      ["slate", 3.5, 3.5, 12, "any", "square", 0],
      ["slate", 2, 2, 12, "any", "cornerstone", 0],
      ["rust", 37.5, 2.5, 2, "join", "border", 0],
      ["rust", 23, 2.5, 2, "join", "border", 0],
      ["rust", 9.5, 2, 17, "any", "sashing", 0],
    ],
    source: "derived",
    note: "3 × 2 blocks: 4 × 2 + 3 × 3 sashes, 4 × 3 cornerstones; inside 33 × 22½; sides 22½, top and bottom 33 + 4",
  },
  {
    call: "QUILTPIECES",
    cells: [[["plain"]], BLOCKS, 20, null, null, null, null, "cm"],
    gives: [HEADING, ["sand", 21.5, 21.5, 1, "any", "square", 0]],
    source: "derived",
    note: "20 + 2 × 0.75",
  },
  {
    call: "QUILTPIECES",
    cells: [
      [["night"]],
      [
        ["night", "dark blue", "Sand"],
        ["", "sand", "Dark  blue"],
      ],
      12,
      null,
      null,
      null,
      null,
      null,
      " Dark  BLUE ",
    ],
    gives: [HEADING, ["dark blue", 6.5, 6.5, 2, "any", "square", 0]],
    source: "derived",
    note: "capitals and spaces make no other fabric",
  },
  {
    call: "QUILTPIECES",
    cells: [LAYOUT, BLOCKS, 9, null, null, null, null, null, "Moss Green"],
    fails: "#VALUE!",
    says: "no fabric is called “Moss Green”; there is sand, slate",
    source: "derived",
  },
  {
    call: "QUILTPIECES",
    cells: [[["plain"]], BLOCKS, 9, [[2, "slate", "rust"]], null, null, null, null, "rust"],
    gives: [HEADING],
    source: "derived",
    note: "a fabric of cornerstones, of which one block has none",
  },
  {
    call: "QUILTPIECES",
    cells: [[["nin"]], BLOCKS, 9],
    fails: "#VALUE!",
    says: "layout, row 1, column 1: no block is called “nin”; there is nine, plain",
    source: "derived",
  },
  {
    call: "QUILTPIECES",
    cells: [[["nine", ""]], BLOCKS, 9],
    fails: "#VALUE!",
    says: "layout, row 1, column 2: no block stands there",
    source: "derived",
  },
  {
    call: "QUILTPIECES",
    cells: [[["nine"]], [["nine", "sand", "<", "^"]], 9],
    fails: "#VALUE!",
    says: "block “nine”, row 1, column 3",
    source: "derived",
  },
  {
    call: "QUILTPIECES",
    cells: [[["nine"]], [["", "sand"]], 9],
    fails: "#VALUE!",
    says: "no name in the first column",
    source: "derived",
  },

  {
    call: "QUILTFABRICS",
    cells: [LAYOUT, BLOCKS, 9],
    gives: [
      ["fabric", "amount", "length", "strips", "patches"],
      ["sand", 0.375, 13, 2, 18],
      ["slate", 0.125, 3.5, 1, 12],
    ],
    source: "derived",
    note: "sand: 3 of 9½ in one strip with 3 small ones beside them, 12 more in a strip of 3½: 13 in",
    example: "What to buy for them",
  },
  {
    call: "QUILTFABRICS",
    cells: [[["plain", "plain"]], BLOCKS, 20, null, null, null, null, null, null, null, "cm"],
    gives: [
      ["fabric", "amount", "length", "strips", "patches"],
      ["sand", 0.3, 21.5, 1, 2],
    ],
    source: "derived",
    note: "2 × 21.5 of 107 cm in one strip",
  },
  {
    call: "QUILTFABRICS",
    cells: [plainBlocks(6, 7), BLOCKS, 12, null, null, [[4, "slate"]], null, null, null, 0.375],
    gives: [
      [null, null, null, null, null],
      [null, null, null, null, null],
      ["slate", 1.25, 42.75, 9, 4],
    ],
    source: "derived",
    note:
      "72 × 84 in inside; a join takes 3/4 in. Sides 2 × 84 3/4: 4 strips and 4 1/2 in; top and bottom 2 × 80 3/4: 3 strips " +
      "and 37 3/4 in. 4 1/2 and 37 3/4 share no strip: 9 of 4 3/4 in",
  },
  {
    call: "QUILTFABRICS",
    cells: [plainBlocks(6, 7), BLOCKS, 12, null, null, [[4, "slate"]], null, null, null, 0.25],
    gives: [
      [null, null, null, null, null],
      [null, null, null, null, null],
      ["slate", 1, 36, 8, 4],
    ],
    source: "derived",
    note: "as above with joins of 1/2 in: rests of 3 and 36 1/2 in share a strip: 8 of 4 1/2 in",
  },
  {
    call: "QUILTFABRICS",
    cells: [plainBlocks(8, 9), BLOCKS, 30, null, null, [[8, "slate"]], null, null, null, null, "cm"],
    gives: [
      [null, null, null, null, null],
      [null, null, null, null, null],
      ["slate", 1.1, 104.5, 11, 4],
    ],
    source: "derived",
    note:
      "240 × 270 cm inside; a join takes 1.5 cm. Sides 2 × 271.5: 5 strips of 107 and 15.5; top and bottom 2 × 257.5: " +
      "4 strips and 93; 15.5 and 93 share no strip: 11 of 9.5 cm. Joins of 2 × 1/4 in would make it 10",
  },
  { call: "QUILTFABRICS", cells: [LAYOUT, BLOCKS, null], fails: "#VALUE!", says: "size is missing", source: "derived" },

  {
    call: "QUILTFABRICS",
    cells: [plainBlocks(8, 10), BLOCKS, 2, null, null, null, 40],
    gives: [
      ["fabric", "amount", "length", "strips", "patches"],
      ["sand", 0.375, 12.5, 5, 80],
    ],
    source: "quiltAuthorFaq",
    note: "80 squares of 2½ in, 40 in usable: 5 strips, 12½ in, 3/8 yd",
  },
  {
    call: "SIZETABLE",
    cells: [
      LAYOUT,
      BLOCKS,
      9,
      null,
      null,
      null,
      [
        ["wall", 27, 18],
        ["throw", 54, 63],
      ],
    ],
    gives: [
      ["", "wall", "throw"],
      ["blocks across", 3, 6],
      ["blocks down", 2, 7],
      ["width", 27, 54],
      ["length", 18, 63],
      ["sand", null, null],
      ["slate", 0.125, 0.875],
    ],
    source: "derived",
    note: "throw: the layout twice across, its rows by turns: 4 × 4 + 3 × 2 nine-patches, 88 slate squares, 8 strips of 3½: 28 in",
    example: "A wall quilt and a throw",
  },
  {
    call: "SIZETABLE",
    cells: [[["nine"]], BLOCKS, 9, null, null, null, null, null, null, null, null],
    gives: [
      ["", "crib", "twin", "full", "queen", "king"],
      ["blocks across", 3, 7, 9, 9, 11],
      ["blocks down", 6, 10, 10, 10, 10],
      ["width", 27, 63, 81, 81, 99],
      ["length", 54, 90, 90, 90, 90],
      ["sand", null, null, null, null, null],
      ["slate", null, null, null, null, null],
    ],
    source: "bedCoverings",
    note: "mattress + 2 drops by mattress + drop: twin 63 × 87 with 12 in drops, in blocks of 9 in 7 × 10",
  },
  {
    call: "SIZETABLE",
    cells: [[["plain"]], BLOCKS, 20, null, null, null, [["wall", 60, 41]], null, null, null, "cm"],
    gives: [
      ["", "wall"],
      ["blocks across", 3],
      ["blocks down", 2],
      ["width", 60],
      ["length", 40],
      ["sand", 0.5],
    ],
    source: "derived",
    note: "6 squares of 21.5 cm, 4 a strip: 43 cm",
  },
  {
    call: "SIZETABLE",
    cells: [[["plain"]], BLOCKS, 9, null, null, [[30, "rust"]], [["wall", 27, 18]]],
    fails: "#VALUE!",
    says: "the borders alone are larger than the size “wall”",
    source: "derived",
  },
  {
    call: "SIZETABLE",
    cells: [[["plain"]], BLOCKS, 9, null, null, [[3, "rust"]], [["wall", 33, 24]]],
    gives: [
      ["", "wall"],
      ["blocks across", 3],
      ["blocks down", 2],
      ["width", 33],
      ["length", 24],
      ["sand", null],
      ["rust", null],
    ],
    source: "derived",
    note: "33 − 2 × 3 = 27 is 3 blocks, 24 − 2 × 3 = 18 is 2",
  },
  {
    call: "SIZETABLE",
    cells: [[["plain"]], BLOCKS, 9, [[1, "slate"]], null, null, [["wall", 59, 39]]],
    gives: [
      ["", "wall"],
      ["blocks across", 6],
      ["blocks down", 4],
      ["width", 59],
      ["length", 39],
      ["sand", null],
      ["slate", null],
    ],
    source: "derived",
    note: "6 × 9 + 5 × 1 = 59; without the sashing 59 ÷ 9 would come to 7",
  },
  {
    call: "SIZETABLE",
    cells: [[["plain"]], BLOCKS, 9, [[1, "slate", "rust"]], null, null, [["runner", 59, 9]]],
    gives: [
      ["", "runner"],
      ["blocks across", 6],
      ["blocks down", 1],
      ["width", 59],
      ["length", 9],
      ["sand", null],
      ["slate", null],
      ["rust", 0],
    ],
    source: "derived",
    note: "a single row of blocks has sashes between them and no cornerstones",
  },
  {
    call: "SIZETABLE",
    cells: [[["plain"]], BLOCKS, 9, null, null, [[10, "rust"]], [["runner", 54, 18]]],
    fails: "#VALUE!",
    says: "the borders alone are larger than the size “runner”",
    source: "derived",
  },
  {
    call: "SIZETABLE",
    cells: [[["plain"]], BLOCKS, 3, null, null, null, [["banner", 30, 303]]],
    fails: "#VALUE!",
    says: "takes 10 × 101 blocks",
    source: "derived",
  },
];
