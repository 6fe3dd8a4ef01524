import type { Case } from "../cases";

const HEADING = ["fabric", "width", "height", "count", "grain", "use", "spare"];

/** Five squares of sand and four of slate. */
const NINE_PATCH = [
  ["sand", "slate", "sand"],
  ["slate", "sand", "slate"],
  ["sand", "slate", "sand"],
];

/** A star whose points are the small triangles of four geese. */
const SAWTOOTH_STAR = [
  ["sand", "goose down: sand, slate", "<", "sand"],
  ["goose right: sand, slate", "slate", "<", "goose left: sand, slate"],
  ["^", "^", "<", "^"],
  ["sand", "goose up: sand, slate", "<", "sand"],
];

/** A square and two rounds of logs on two sides each. */
const LOG_CABIN = [
  ["rust", "sand", "sand"],
  ["slate", "<", "^"],
  ["slate", "<", "<"],
];

export const blocks: Case[] = [
  {
    call: "BLOCKPIECES",
    cells: [NINE_PATCH, 9],
    gives: [HEADING, ["sand", 3.5, 3.5, 5, "any", "square", 0], ["slate", 3.5, 3.5, 4, "any", "square", 0]],
    source: "common practice",
    note: "a nine-patch: five squares and four, finished 3 in, cut 3½",
    example: "A nine-patch that finishes 9 in",
  },
  {
    call: "BLOCKPIECES",
    cells: [SAWTOOTH_STAR, 12],
    gives: [
      HEADING,
      ["sand", 7.25, 7.25, 1, "any", "geese, four at once: the goose", 0],
      ["sand", 3.5, 3.5, 4, "any", "square", 0],
      ["slate", 6.5, 6.5, 1, "any", "square", 0],
      ["slate", 3.875, 3.875, 4, "any", "geese, four at once: the sky", 0],
    ],
    source: "geeseTables",
    note: "geese of 6 × 3 in, four at once: 7¼ and four of 3⅞",
    example: "A saw-tooth star that finishes 12 in",
  },
  {
    call: "BLOCKPIECES",
    cells: [LOG_CABIN, 6, 10],
    gives: [
      HEADING,
      ["rust", 2.5, 2.5, 10, "any", "square", 0],
      ["sand", 4.5, 2.5, 10, "any", "rectangle", 0],
      ["sand", 2.5, 2.5, 10, "any", "square", 0],
      ["slate", 6.5, 2.5, 10, "any", "rectangle", 0],
      ["slate", 4.5, 2.5, 10, "any", "rectangle", 0],
    ],
    source: "derived",
    note: "logs of 2 in: one of each length for each block",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["sand / slate"]], 3, 5],
    gives: [
      HEADING,
      ["sand", 3.875, 3.875, 3, "any", "half-square units, two at once", 1],
      ["slate", 3.875, 3.875, 3, "any", "half-square units, two at once", 1],
    ],
    source: "northHampshire",
    note: "3 in finished: half-square 3 7/8; five units from three pairs, one to spare",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["four: sand, slate"]], 3, 2],
    gives: [
      HEADING,
      ["sand", 4.25, 4.25, 1, "any", "cut twice corner to corner", 0],
      ["slate", 4.25, 4.25, 1, "any", "cut twice corner to corner", 0],
    ],
    source: "northHampshire",
    note: "3 in finished: quarter-square 4 1/4, four triangles from each",
  },
  {
    call: "BLOCKPIECES",
    cells: [
      [
        ["sand + slate nw se", "<"],
        ["^", "<"],
      ],
      4,
      1,
    ],
    gives: [
      HEADING,
      ["sand", 4.5, 4.5, 1, "any", "square", 0],
      ["slate", 2.5, 2.5, 2, "any", "corner, stitched and flipped", 0],
    ],
    source: "derived",
    note: "4 + ½; corners of one cell, 2 + ½",
  },
  {
    call: "BLOCKPIECES",
    cells: [NINE_PATCH, 9, 2, null, null, "SLATE"],
    gives: [HEADING, ["slate", 3.5, 3.5, 8, "any", "square", 0]],
    source: "derived",
    note: "one fabric alone, whatever its capitals",
  },
  {
    call: "BLOCKPIECES",
    cells: [NINE_PATCH, 24, 1, null, "cm"],
    gives: [HEADING, ["sand", 9.5, 9.5, 5, "any", "square", 0], ["slate", 9.5, 9.5, 4, "any", "square", 0]],
    source: "derived",
    note: "8 + 2 × 0.75",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["sand", "sand / sand"]], 6],
    fails: "#VALUE!",
    says: "row 1, column 2: both halves are sand",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["<", "sand"]], 6],
    fails: "#VALUE!",
    says: "row 1, column 1: there is no patch on the left",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [
      [
        ["sand", "slate"],
        ["<", "^"],
      ],
      6,
    ],
    fails: "#VALUE!",
    says: "row 2, column 1: there is no patch on the left",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [
      [
        ["sand", "<"],
        ["slate", "^"],
      ],
      6,
    ],
    fails: "#VALUE!",
    says: "row 1, column 1: the cells that belong to this patch make no rectangle",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["goose up: sand, slate"]], 6],
    fails: "#VALUE!",
    says: "row 1, column 1: a goose that flies up is twice as wide as high",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["sand / slate", "<"]], 6],
    fails: "#VALUE!",
    says: "must be square",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["sand + slate"]], 6],
    fails: "#VALUE!",
    says: "corners are written like",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["four: a, b, c"]], 6],
    fails: "#VALUE!",
    says: "four triangles need two fabrics, or four",
    source: "derived",
  },
  {
    call: "BLOCKPIECES",
    cells: [[["gander: a, b"]], 6],
    fails: "#VALUE!",
    says: "“gander:” is no unit",
    source: "derived",
  },
  { call: "BLOCKPIECES", cells: [[["", ""]], 6], fails: "#VALUE!", says: "the block is empty", source: "derived" },
  {
    call: "BLOCKPIECES",
    cells: [NINE_PATCH, 9, 1, null, null, "rust"],
    fails: "#VALUE!",
    says: "no fabric is called “rust”; there is sand, slate",
    source: "derived",
  },

  {
    call: "BLOCKFABRIC",
    cells: [NINE_PATCH, 9, 20, "slate"],
    gives: 0.75,
    source: "common practice",
    note: "80 squares of 3½ in, 12 a strip, 7 strips: 24½ in",
    example: "Slate for 20 nine-patches of 9 in",
  },
  {
    call: "BLOCKFABRIC",
    cells: [NINE_PATCH, 24, 20, "slate", null, null, null, null, "cm"],
    gives: 0.8,
    source: "derived",
    note: "80 squares of 9.5 cm, 11 a strip, 8 strips: 76 cm",
  },
  {
    call: "BLOCKFABRIC",
    cells: [NINE_PATCH, 9, null, "slate"],
    gives: "",
    source: "derived",
    note: "an empty count stays empty",
  },
  {
    call: "BLOCKFABRIC",
    cells: [NINE_PATCH, 9, 0, "slate"],
    gives: 0,
    source: "derived",
    note: "no blocks, no fabric",
  },
  {
    call: "BLOCKFABRIC",
    cells: [NINE_PATCH, 9, 20, ""],
    fails: "#VALUE!",
    says: "fabric is missing",
    source: "derived",
  },

  {
    call: "BLOCKCHECK",
    cells: [NINE_PATCH, 9],
    gives: "3 × 3 cells of 3 in; all patches on ruler marks; fabrics: sand, slate",
    source: "common practice",
    note: "a nine-patch of 9 in has squares that finish 3 in",
    example: "A nine-patch that cuts cleanly",
  },
  {
    call: "BLOCKCHECK",
    cells: [NINE_PATCH, 10],
    gives: "3 × 3 cells of 3.3333 in; on no ruler mark: 3.8333 in; fabrics: sand, slate",
    source: "derived",
    note: "10 ÷ 3 + ½",
    example: "A size that no ruler has",
  },
  {
    call: "BLOCKCHECK",
    cells: [[["sand", ""]], 6],
    gives: "2 × 1 cells of 3 in; 1 empty; all patches on ruler marks; fabrics: sand",
    source: "derived",
    note: "one cell holds nothing",
  },
  {
    call: "BLOCKCHECK",
    cells: [
      [
        ["sand", "<", "slate"],
        ["^", "<", ""],
      ],
      10,
    ],
    gives: "3 × 2 cells of 3.3333 in; 1 empty; on no ruler mark: 7.1667 in, 3.8333 in; fabrics: sand, slate",
    source: "derived",
    note: "a patch of four cells: 2 × 10 ÷ 3 + ½; 10 ÷ 3 + ½",
  },
  {
    call: "BLOCKCHECK",
    cells: [NINE_PATCH, 24, null, "cm"],
    gives: "3 × 3 cells of 8 cm; all patches on ruler marks; fabrics: sand, slate",
    source: "derived",
    note: "24 ÷ 3",
  },
  { call: "BLOCKCHECK", cells: [NINE_PATCH, 0], fails: "#VALUE!", says: "size must be more than 0", source: "derived" },
];
