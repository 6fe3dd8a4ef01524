import type { Case } from "../cases";

export const panels: Case[] = [
  {
    call: "PANELSNEEDED",
    cells: [[["squares", 2.5, 2.5, 100]], 22, 18],
    gives: 2,
    source: "yieldHandout",
    note: "56 squares of 2½ in from a fat quarter of 18 × 22 in",
    example: "Fat quarters of 18 × 22 in for 100 squares of 2 1/2 in",
  },
  {
    call: "PANELSNEEDED",
    cells: [[["squares", 2.5, 2.5, 112]], 22, 18],
    gives: 2,
    source: "yieldHandout",
    note: "2 × 56",
  },
  {
    call: "PANELSNEEDED",
    cells: [[["squares", 2.5, 2.5, 113]], 22, 18],
    gives: 3,
    source: "yieldHandout",
    note: "one more than 2 × 56",
  },
  {
    call: "PANELSNEEDED",
    cells: [[["squares", 5, 5, 13]], 22, 18],
    gives: 2,
    source: "yieldHandout",
    note: "12 squares of 5 in from one",
  },
  {
    call: "PANELSNEEDED",
    cells: [[["strips", 2.5, 18, 8]], 22, 18],
    gives: 1,
    source: "derived",
    note: "8 × 2½ = 20 of 22 in",
  },
  {
    call: "PANELSNEEDED",
    cells: [[["tall", 20, 16, 1, "upright"]], 18, 22],
    fails: "#N/A",
    says: "does not fit a panel of 18 in by 22 in",
    source: "derived",
  },
  {
    call: "PANELSNEEDED",
    cells: [[["squares", 6.5, 6.5, 50]], 55, 45, null, "cm"],
    gives: 2,
    source: "derived",
    note: "8 × 6 = 48 from 55 × 45 cm",
  },
  {
    call: "PANELSNEEDED",
    cells: [[["border", 60, 5, 2, "join"]], 18, 22],
    fails: "#VALUE!",
    says: "not for panels",
    source: "derived",
  },

  {
    call: "BOLTPLAN",
    cells: [
      [
        ["kit", 1.875, 7],
        ["backing", 5, 1],
      ],
      [[15], [10], [5]],
    ],
    gives: [
      ["bolt", "length", "cut from it", "left"],
      ["bolt 1", 15, "7 × kit", 1.875],
      ["bolt 3", 5, "1 × backing", 0],
      ["total", 2, "fewest bolts proved", 1.875],
    ],
    source: "derived",
    note: "7 × 1⅞ = 13⅛ from 15 yd, 5 from 5 yd; 18⅛ yd fit no single bolt",
    example: "Seven kits and a backing from three bolts",
  },
  {
    call: "BOLTPLAN",
    cells: [[["pillow", 0.35, 2]], [[0.7]]],
    gives: [
      [null, null, null, null],
      ["bolt 1", 0.7, "2 × pillow", 0],
      ["total", 1, "fewest bolts proved", 0],
    ],
    source: "derived",
    note: "2 × 0.35 = 0.7 yd; 12.6 in lies on no sixteenth of an inch, and is not rounded up",
  },
  {
    call: "BOLTPLAN",
    cells: [[["pillow", "1 yd", 2]], [["2 yd"]], null, "cm"],
    gives: [
      [null, null, null, null],
      ["bolt 1", 1.8288, "2 × pillow", 0],
      ["total", 1, "fewest bolts proved", 0],
    ],
    source: "derived",
    note: "a yard is 91.44 cm, on no millimeter",
  },
  {
    call: "BOLTPLAN",
    cells: [[["pillow", 1, 2]], [[501]]],
    fails: "#VALUE!",
    says: "bolt 1 is more than 500 yd; no bolt is that long",
    source: "derived",
  },
  {
    call: "BOLTPLAN",
    cells: [
      [["kit", "1 7/8", 8]],
      [
        ["main", 15, 1],
        ["end", 2, 1],
      ],
      0.5,
    ],
    gives: [
      [null, null, null, null],
      ["main", 15, "7 × kit", null],
      ["end", 2, "1 × kit", null],
      ["total", 2, null, null],
    ],
    source: "common practice",
    note: "a 15 yd bolt yields seven cuts of 1⅞ yd with ½ in of generosity each, not eight",
  },
  {
    call: "BOLTPLAN",
    cells: [[["kit", 1.5, 6]], [[10]], null, "cm"],
    gives: [
      [null, null, null, null],
      ["bolt 1", 10, "6 × kit", 1],
      ["total", 1, null, 1],
    ],
    source: "derived",
    note: "6 × 1.5 m from 10 m",
  },
  {
    call: "BOLTPLAN",
    cells: [[["kit", 3, 2]], [[2]]],
    fails: "#N/A",
    says: "longer than the longest bolt",
    source: "derived",
  },
  {
    call: "BOLTPLAN",
    cells: [[["kit", 3, 2]], [[1, 2]]],
    fails: "#VALUE!",
    says: "bolts needs the columns",
    source: "derived",
  },
];
