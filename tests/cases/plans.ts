import type { Case } from "../cases";

/** Squares of 2 1/2 in: 16 a strip of 40 in, so 5 strips. */
const SQUARES = [["squares", 2.5, 2.5, 80]];

/** Two strips of 12 1/2 in hold 3 large each; the small ones go under them or into a strip of their own. */
const MIXED = [
  ["large", 12.5, 12.5, 6],
  ["small", 4, 4, 10],
];

export const plans: Case[] = [
  {
    call: "PLANLENGTH",
    cells: [SQUARES, 40],
    gives: 12.5,
    source: "quiltAuthorFaq",
    note: "80 squares of 2½ in, 40 in usable: 5 strips, 12½ in",
    example: "80 squares of 2 1/2 in from fabric 40 in wide",
  },
  {
    call: "PLANLENGTH",
    cells: [[["squares", 9.5, 9.5, 63]]],
    gives: 152,
    source: "derived",
    note: "4 a strip, 16 strips",
  },
  {
    call: "PLANLENGTH",
    cells: [[["squares", 9.5, 9.5, 63]], 37.5],
    gives: 199.5,
    source: "derived",
    note: "3 a strip, 21 strips",
  },
  { call: "PLANLENGTH", cells: [SQUARES, 40, 1], gives: 13.5, source: "derived", note: "12½ in and 1 in to square up" },
  {
    call: "PLANLENGTH",
    cells: [MIXED],
    gives: 29,
    source: "derived",
    note: "two strips of 12½ in for 3 large each and 4 in left beside them for 1 small each, trimmed; the other 8 in a strip of 4 in",
  },
  {
    call: "PLANLENGTH",
    cells: [
      [
        ["bar", 30, 10, 2],
        ["post", 10, 12, 2],
      ],
    ],
    gives: 20,
    source: "derived",
    note: "a post lies turned, 12 in beside 30 in, in each strip of 10 in; upright posts would need a strip of 12 in",
  },
  {
    call: "PLANLENGTH",
    cells: [[["border", 80.5, 6.5, 2, "along"]]],
    gives: 80.5,
    source: "derived",
    note: "2 of 6½ in lie side by side along 80½ in",
  },
  {
    call: "PLANLENGTH",
    cells: [[["border", 60, 5, 2, "join"]]],
    gives: 15,
    source: "derived",
    note: "120 in from strips of 42 in that each lose ½ in in the join: 3 strips hold 125 in",
  },
  {
    call: "PLANLENGTH",
    cells: [[["squares", 6.5, 6.5, 40]], null, null, null, "cm"],
    gives: 19.5,
    source: "derived",
    note: "16 a strip of 107 cm, 3 strips",
  },
  {
    call: "PLANLENGTH",
    cells: [
      [
        ["squares", 2.5, 2.5, 80],
        ["", "", "", ""],
        ["spare", 3, 3, 0],
      ],
      40,
    ],
    gives: 12.5,
    source: "derived",
    note: "spare rows count for nothing",
  },

  {
    call: "PLANFABRIC",
    cells: [SQUARES, 40],
    gives: 0.375,
    source: "quiltAuthorFaq",
    note: "12½ in; 3/8 yd to buy",
    example: "The amount to buy for 80 squares of 2 1/2 in",
  },
  {
    call: "PLANFABRIC",
    cells: [[["squares", 9.5, 9.5, 63]]],
    gives: 4.25,
    source: "derived",
    note: "152 in = 4.222 yd",
  },
  {
    call: "PLANFABRIC",
    cells: [[["squares", 6.5, 6.5, 56]], 42, null, null, "1/4"],
    gives: 2,
    source: "derived",
    note: "65 in = 1.806 yd, in quarters",
  },
  {
    call: "PLANFABRIC",
    cells: [[["squares", 6.5, 6.5, 40]], null, null, null, null, "cm"],
    gives: 0.2,
    source: "derived",
    note: "19.5 cm",
  },

  {
    call: "PLANSTRIPS",
    cells: [SQUARES, 40],
    gives: 5,
    source: "quiltAuthorFaq",
    note: "5 strips",
    example: "Strips for 80 squares of 2 1/2 in",
  },
  {
    call: "PLANSTRIPS",
    cells: [MIXED, null, null, false],
    gives: 3,
    source: "derived",
    note: "without trimming: 2 strips of 12½ in, 10 small in 1 strip of 4 in",
  },
  {
    call: "PLANSTRIPS",
    cells: [[["squares", 6.5, 6.5, 40]], null, null, null, "cm"],
    gives: 3,
    source: "derived",
    note: "16 a strip",
  },

  {
    call: "PLANSPARE",
    cells: [SQUARES, "3/8", 40],
    gives: 1,
    source: "quiltAuthorFaq",
    note: "3/8 yd = 13½ in bought, 12½ in used",
    example: "What 3/8 yd leaves",
  },
  {
    call: "PLANSPARE",
    cells: [[["squares", 3.5, 3.5, 100]], "30 in"],
    gives: -1.5,
    source: "derived",
    note: "9 strips of 3½ in take 31½ in",
  },
  {
    call: "PLANSPARE",
    cells: [[["squares", 6.5, 6.5, 40]], 0.2, null, null, null, "cm"],
    gives: 0.5,
    source: "derived",
    note: "20 cm − 19.5 cm",
  },

  {
    call: "PLAN",
    cells: [SQUARES, 40],
    gives: [
      ["strip", "strips", "from each strip", "left at the end"],
      [2.5, 5, "16 × squares 2 1/2 in", 0],
      ["total", 5, "12 1/2 in of fabric 40 in wide without selvages; 0 % waste; least length proved", ""],
    ],
    source: "quiltAuthorFaq",
    note: "5 strips, 12½ in",
    example: "Strips in cutting order",
  },
  {
    call: "PLAN",
    cells: [[["border", 60, 5, 2, "join"]]],
    gives: [
      [null, null, null, null],
      [5, 2, "1 × border 42 in (full width)", 0],
      [5, 1, "1 × border 37 in (rest of the join)", 5],
      ["join", 3, "border: sew 3 strips end to end, the last 37 in; then cut 2 × 60 in", ""],
      ["total", 3, null, ""],
    ],
    source: "derived",
    note: "2 × 60 + 2 × ½ in for two joins = 121 = 42 + 42 + 37",
  },
  {
    call: "PLAN",
    cells: [[["squares", 6.5, 6.5, 40]], null, null, null, "cm"],
    gives: [
      [null, null, null, null],
      [6.5, 2, "16 × squares 6.5 cm", 3],
      [6.5, 1, "8 × squares 6.5 cm", 55],
      ["total", 3, null, ""],
    ],
    source: "derived",
    note: "16 × 6.5 = 104 of 107 cm",
  },
  { call: "PLAN", cells: [[["a", 45, 44, 1]]], fails: "#N/A", says: "row 1", source: "derived" },
  { call: "PLAN", cells: [[["a", 45, 2, 1]]], fails: "#N/A", says: "along", source: "derived" },
  {
    call: "PLAN",
    cells: [[["a", 2, 2, 1, "sideways"]]],
    fails: "#VALUE!",
    says: "row 1: grain must be one of",
    source: "derived",
  },
  { call: "PLAN", cells: [[["", "", "", ""]]], fails: "#VALUE!", says: "the list is empty", source: "derived" },
  {
    call: "PLAN",
    cells: [
      [
        ["a", 2, 2, 1],
        ["b", 2, 2, 1.5],
      ],
    ],
    fails: "#VALUE!",
    says: "row 2: count must be a whole number",
    source: "derived",
  },
  {
    call: "PLAN",
    cells: [[["a", 2, 2, 5001]]],
    fails: "#VALUE!",
    says: "row 1 (a): more than 5000 patches",
    source: "derived",
  },
  { call: "PLAN", cells: [[["a", 2, 2]]], fails: "#VALUE!", says: "the list needs the columns", source: "derived" },
  { call: "PLAN", cells: [SQUARES, 22], fails: "#VALUE!", says: "measured folded?", source: "derived" },

  {
    call: "STRIPSFIRST",
    cells: [
      [
        ["logs", 2.5, 4.5, 100],
        ["bars", 6.5, 2.5, 80],
        ["squares", 3, 3, 10],
      ],
      20,
    ],
    gives: [
      ["label", "width", "height", "from yardage", "grain", "from strips"],
      ["logs", 2.5, 4.5, 0, "any", 100],
      ["bars", 6.5, 2.5, 20, "any", 60],
      ["squares", 3, 3, 10, "any", 0],
      ["strips used", "", "", "", "", 20],
      ["strips left", "", "", "", "", 0],
    ],
    source: "derived",
    note: "5 logs and 3 bars fill a strip of 42 in exactly: 20 strips hold 100 logs and 60 bars, 840 in",
    example: "Logs first, then bars, from 20 strips of 2 1/2 in",
  },
  {
    call: "STRIPSFIRST",
    cells: [[["squares", 5, 2.5, 336]], 42, null, 40],
    gives: [
      [null, null, null, null, null, null],
      ["squares", 5, 2.5, 0, "any", 336],
      [null, null, null, null, null, 42],
      [null, null, null, null, null, 0],
    ],
    source: "common practice",
    note: "a strip of 40 in gives 8 pieces of 5 in",
  },
  {
    call: "STRIPSFIRST",
    cells: [[["logs", 20, 6.5, 12]], 2, null, null, "cm"],
    gives: [
      [null, null, null, null, null, null],
      ["logs", 20, 6.5, 2, "any", 10],
      [null, null, null, null, null, 2],
      [null, null, null, null, null, 0],
    ],
    source: "derived",
    note: "5 logs of 20 cm from a strip of 107 cm",
  },
  {
    call: "STRIPSFIRST",
    cells: [[["logs", 2.5, 4.5, 100]], -1],
    fails: "#VALUE!",
    says: "strips must be 0 or more",
    source: "derived",
  },
  {
    call: "STRIPSFIRST",
    cells: [
      [
        ["long", 30, 2.5, 10],
        ["short", 7, 2.5, 30],
      ],
      10,
    ],
    gives: [
      ["label", "width", "height", "from yardage", "grain", "from strips"],
      ["long", 30, 2.5, 0, "any", 10],
      ["short", 7, 2.5, 20, "any", 10],
      [null, null, null, null, null, 10],
      [null, null, null, null, null, 0],
    ],
    source: "derived",
    note: "each strip holds one of 30 in and, in the 12 in left, one of 7 in, though 10 × 12 in would be 17 in one piece",
  },
  {
    call: "STRIPSFIRST",
    cells: [[["dust", 2.5, 2.9e-252, 100]], 40],
    fails: "#VALUE!",
    says: "row 1: height must be more than 0",
    source: "derived",
  },
  {
    call: "STRIPSFIRST",
    cells: [[["slip", 2.5, 0.0009, 100]], 40],
    fails: "#VALUE!",
    says: "row 1: height is less than 0.001 in, too little to cut or sew",
    source: "derived",
  },
  {
    call: "STRIPSFIRST",
    cells: [[["slip", 6.5, 0.002, 100]], 40, null, null, "cm"],
    fails: "#VALUE!",
    says: "row 1: height is less than 0.0025 cm, too little to cut or sew",
    source: "derived",
  },
];
