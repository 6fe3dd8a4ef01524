import type { Case } from "../cases";

const TITLES = ["fabric", "amount", "places"];

export const checks: Case[] = [
  {
    call: "CHECKROW",
    cells: [[[2.5, 2.5, 2.5, 2.5]]],
    gives: 8.5,
    source: "common practice",
    note: "four squares of 2½ in sewn in a row measure 8½ in",
    example: "Four squares of 2 1/2 in",
  },
  {
    call: "CHECKROW",
    cells: [[[2.5], [2.5]]],
    gives: 4.5,
    source: "common practice",
    note: "two squares of 2½ in; so four of them make a block of 4½ in, never 5½",
  },
  {
    call: "CHECKROW",
    cells: [
      [
        ["2 1/2", null, 4.5],
        ["", 2.5, ""],
      ],
    ],
    gives: 8.5,
    source: "derived",
    note: "2½ + 4½ + 2½ − 2 × ½, empty cells passed over",
  },
  { call: "CHECKROW", cells: [[[8.5]]], gives: 8.5, source: "derived", note: "one patch, no seam" },
  { call: "CHECKROW", cells: [[[2.5, 2.5]], "3/8"], gives: 4.25, source: "derived", note: "5 − 2 × ⅜" },
  { call: "CHECKROW", cells: [[[6.5, 6.5, 6.5]], null, "cm"], gives: 16.5, source: "derived", note: "19.5 − 2 × 1.5" },
  {
    call: "CHECKROW",
    cells: [[[1.5, 1.2]], null, "cm"],
    fails: "#VALUE!",
    says: "patch 1 is 1.5 cm; two seams of 0.75 cm leave nothing of it",
    source: "derived",
  },
  { call: "CHECKROW", cells: [[[2.5, 0]]], fails: "#VALUE!", says: "patch 2 must be more than 0", source: "derived" },
  { call: "CHECKROW", cells: [null], fails: "#VALUE!", says: "no patch is given", source: "derived" },

  {
    call: "CHECKTOTALS",
    cells: [
      [
        ["print", 1.25],
        ["print", 3],
        ["print", "1/4"],
        ["print", 6.25],
        ["print", "1/4"],
        ["print", "5 3/8"],
      ],
    ],
    gives: [TITLES, ["print", 16.375, 6]],
    source: "algebraSum",
    note: "1¼ + 3 + ¼ + 6¼ + ¼ + 5⅜ = 16⅜ yd",
  },
  {
    call: "CHECKTOTALS",
    cells: [
      [
        ["Blue", 1.5],
        ["white", "1 1/3"],
        ["", ""],
        [" blue ", "13.5 in"],
      ],
    ],
    gives: [TITLES, ["Blue", 1.875, 2], ["white", 4 / 3, 1]],
    source: "derived",
    note: "1½ yd for blocks and ⅜ yd for binding",
    example: "Blue for blocks and for binding, added up",
  },
  {
    call: "CHECKTOTALS",
    cells: [
      [
        ["dark  red", 0.5],
        ["Dark Red", 0],
        ["dark red", "25 cm"],
      ],
      "cm",
    ],
    gives: [TITLES, ["dark red", 0.75, 3]],
    source: "derived",
    note: "0.5 m + 0 + 25 cm",
  },
  {
    call: "CHECKTOTALS",
    cells: [
      [
        ["blue", 1],
        ["red", null],
      ],
    ],
    fails: "#VALUE!",
    says: "amount in row 2 is missing",
    source: "derived",
  },
  { call: "CHECKTOTALS", cells: [[["", 1]]], fails: "#VALUE!", says: "fabric in row 1 is missing", source: "derived" },
  {
    call: "CHECKTOTALS",
    cells: [[["fabric", "amount"]]],
    fails: "#VALUE!",
    says: "amount in row 1: cannot read a length",
    source: "derived",
  },
  { call: "CHECKTOTALS", cells: [[["blue"]]], fails: "#VALUE!", says: "amount in row 1 is missing", source: "derived" },
  { call: "CHECKTOTALS", cells: [[["", ""]]], fails: "#VALUE!", says: "the list is empty", source: "derived" },

  {
    call: "CHECKFABRIC",
    cells: [[["square", 2.5, 2.5, 80]], "3/8", 40],
    gives: "enough: the patches take 12 1/2 in of 13 1/2 in, 1 in to spare; buy a little more",
    source: "quiltAuthorFaq",
    note: "80 squares of 2½ in, 40 in usable: 12½ in; ⅜ yd",
    example: "80 squares of 2 1/2 in from 3/8 yd",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 9.5, 9.5, 63]], 5],
    gives: "enough: the patches take 152 in of 180 in, 28 in to spare",
    source: "derived",
    note: "16 strips of 4 squares",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 9.5, 9.5, 63]], 4.125],
    gives: "short by 3 1/2 in: the patches take 152 in, 148 1/2 in are there",
    source: "derived",
    note: "152 − 148½",
    example: "63 squares of 9 1/2 in from 4 1/8 yd",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 3.5, 3.5, 100]], 0.875],
    gives: "enough: the patches take 31 1/2 in of 31 1/2 in, nothing to spare; buy a little more",
    source: "derived",
    note: "9 strips exactly",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 3.5, 3.5, 100]], 0.875, null, 0.5],
    gives: "short by 1/2 in: the patches take 32 in, 31 1/2 in are there",
    source: "derived",
    note: "½ in to square the end",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 3.5, 3.5, 100]], "30 in"],
    gives: "short by 1 1/2 in: the patches take 31 1/2 in, 30 in are there",
    source: "derived",
    note: "30 in give 8 strips, 96 squares: 4 short of 100",
  },
  {
    call: "CHECKFABRIC",
    cells: [
      [
        ["a", 21, 4, 1],
        ["b", 21, 3, 1],
      ],
      "8 in",
      null,
      null,
      false,
    ],
    gives: "enough: the patches take 7 in of 8 in, 1 in to spare; buy a little more",
    source: "derived",
    note: "without trimming a strip for each: 4 + 3 in",
  },
  {
    call: "CHECKFABRIC",
    cells: [
      [
        ["a", 21, 4, 1],
        ["b", 21, 3, 1],
      ],
      "8 in",
    ],
    gives: "enough: the patches take 4 in of 8 in, 4 in to spare",
    source: "derived",
    note: "side by side in one strip of 4 in, one trimmed",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 24, 24, 10]], 0.7, null, null, null, "cm"],
    gives: "short by 2 cm: the patches take 72 cm, 70 cm are there",
    source: "derived",
    note: "4 a strip of 107 cm, 3 strips",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 9.5, 9.5, 63]], null],
    fails: "#VALUE!",
    says: "amount is missing",
    source: "derived",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 9.5, 9.5, 63]], 4, 22],
    fails: "#VALUE!",
    says: "measured folded?",
    source: "derived",
  },
  {
    call: "CHECKFABRIC",
    cells: [[["square", 9.5, null, 63]], 4],
    fails: "#VALUE!",
    says: "height is missing",
    source: "derived",
  },
  { call: "CHECKFABRIC", cells: [[["", "", ""]], 4], fails: "#VALUE!", says: "the list is empty", source: "derived" },
];
