/** Working as a maker reads it, word for word: a call of most functions, and of each branch that tells something else. */
export interface Told {
  call: string;
  cells: unknown[];
  steps: string[];
  /** Beside the usual values of arguments that are left out. */
  assumptions?: string[];
}

export const told: Told[] = [
  {
    call: "BACKINGFABRIC",
    cells: [66, 77, 42, 4, "1/2", "any", "8 in", "1/4"],
    steps: [
      "backing with 4 in on each side: 74 in × 85 in",
      "quilt lying along the fabric: 2 × 42 in of fabric covers 83 in, 74 in needed; each panel 85 in long",
      "every panel but the last takes 88 in, whole repeats of 8 in",
      "173 in of fabric; in steps of 1/4 yd buy 5 yd",
      "quilt lying across the fabric: 3 × 42 in of fabric covers 124 in, 85 in needed; each panel 74 in long",
      "every panel but the last takes 80 in, whole repeats of 8 in",
      "234 in of fabric; in steps of 1/4 yd buy 6 1/2 yd",
      "least fabric with the quilt lying along it: buy 5 yd",
    ],
  },
  {
    call: "BACKINGFABRIC",
    cells: [66, 77, 108, 4, "1/2", "any", "8 in", "1/4"],
    steps: [
      "backing with 4 in on each side: 74 in × 85 in",
      "quilt lying along the fabric: 1 × 108 in of fabric covers 108 in, 74 in needed; each panel 85 in long",
      "85 in of fabric; in steps of 1/4 yd buy 2 1/2 yd",
      "quilt lying across the fabric: 1 × 108 in of fabric covers 108 in, 85 in needed; each panel 74 in long",
      "74 in of fabric; in steps of 1/4 yd buy 2 1/4 yd",
      "least fabric with the quilt lying across it: buy 2 1/4 yd",
    ],
  },
  {
    call: "BATTINGPACK",
    cells: [82, 64],
    steps: [
      "batting with 4 in on each side: 90 in × 72 in",
      "smallest pack that covers it: twin, 72 in × 90 in, turned",
    ],
  },
  {
    call: "BATTINGPACK",
    cells: [160, 160, 0, "cm", [["large", 160, 200]]],
    steps: ["batting with 0 cm on each side: 160 cm × 160 cm", "smallest pack that covers it: large, 160 cm × 200 cm"],
  },
  {
    call: "BEDSIZE",
    cells: ["queen"],
    steps: ["width: 60 in + 2 × 12 in = 84 in", "length: 80 in + 12 in + 0 in = 92 in"],
  },
  {
    call: "BEFOREWASHING",
    cells: [90, 0.05],
    steps: ["90 in ÷ (1 − 0.05) = 94.7368 in"],
  },
  {
    call: "BINDINGLENGTH",
    cells: [60, 60, 10, null, "round"],
    steps: ["188.4956 in round the round edge + 10 in to join the ends = 198.4956 in"],
  },
  {
    call: "BINDINGSTRIPS",
    cells: [60, 80],
    steps: [
      "280 in round the straight edge + 10 in to join the ends = 290 in",
      "8 × 42 in − 7 joins × 2 1/2 in = 318 1/2 in, 290 in needed",
    ],
  },
  {
    call: "BIASSQUARE",
    cells: [3, 2.5],
    steps: [
      "√(3 in × 2 1/2 in) = 2.7386 in",
      "one strip needs √2 × 2 1/2 in = 3.5355 in",
      "3.5355 in + 2 × 1/4 in in seams = 4.0355 in",
      "up to the next ruler mark of 1 in: cut 5 in",
    ],
  },
  {
    call: "BIASSQUARE",
    cells: [135, 2.5, null, 0],
    steps: ["√(135 in × 2 1/2 in) = 18.3712 in", "up to the next ruler mark of 1 in: cut 19 in"],
  },
  {
    call: "BIASLENGTH",
    cells: [20.5, 2.5, null, 0.25],
    steps: ["(20 1/2 in − 1/2 in)² ÷ 2 1/2 in = 160 in"],
  },
  {
    call: "BOLTSNEEDED",
    cells: [30, 1.5, 12, 2],
    steps: ["432 in ÷ 56 in a cut, rounded down: 7 kits a bolt", "30 kits ÷ 7 a bolt, rounded up: 5 bolts"],
  },
  {
    call: "BOLTSNEEDED",
    cells: [1, 8, 12],
    steps: ["432 in ÷ 288 in a cut, rounded down: 1 kit a bolt", "1 kit ÷ 1 a bolt, rounded up: 1 bolt"],
  },
  {
    call: "BORDERFABRIC",
    cells: [60, 80, 6, null, "along"],
    steps: [
      "60 in + 2 × 6 in = 72 in",
      "80 in + 2 × 6 in = 92 in",
      "butted: sides 80 1/2 in, top and bottom 72 1/2 in",
      "along: 6 side by side, so 1 × 80 1/2 in",
      "80 1/2 in of fabric; in steps of 1/8 yd buy 2 1/4 yd",
    ],
  },
  {
    call: "BORDERFIT",
    cells: [46, 48, 5],
    steps: [
      "10 units × 5 in = 50 in on 46 in: spacers finish 2 in",
      "10 units × 5 in = 50 in on 48 in: spacers finish 1 in",
      "2 × 10 + 2 × 10 + 4 at the corners = 44 units",
      "50 in + 2 × 5 in = 60 in",
      "50 in + 2 × 5 in = 60 in",
    ],
  },
  {
    call: "BORDERFIT",
    cells: [51.0883, 68, 1, 6],
    steps: [
      "51 units × 1 in = 51 in on 51.0883 in: 0.0883 in shorter, eased in",
      "68 units × 1 in = 68 in on 68 in: they fit",
      "2 × 51 + 2 × 68 + 4 at the corners = 242 units",
      "51 in + 2 × 6 in = 63 in",
      "68 in + 2 × 6 in = 80 in",
    ],
  },
  {
    call: "BORDERFIT",
    cells: [0.9, 1.9, 1],
    steps: [
      "1 unit × 1 in = 1 in on 0.9 in: 0.1 in longer, eased in",
      "2 units × 1 in = 2 in on 1.9 in: 0.1 in longer, eased in",
      "2 × 1 + 2 × 2 + 4 at the corners = 10 units",
      "1 in + 2 × 1 in = 3 in",
      "2 in + 2 × 1 in = 4 in",
    ],
  },
  {
    call: "BORDERUNITS",
    cells: [4, 4],
    steps: ["4 in ÷ 4 in, rounded up: 1 unit"],
  },
  {
    call: "BINDINGSTRIPS",
    cells: [15, 20],
    steps: [
      "70 in round the straight edge + 10 in to join the ends = 80 in",
      "2 × 42 in − 1 join × 2 1/2 in = 81 1/2 in, 80 in needed",
    ],
  },
  {
    call: "BINDINGSTRIPS",
    cells: [5, 5],
    steps: ["20 in round the straight edge + 10 in to join the ends = 30 in", "1 × 42 in = 42 in, 30 in needed"],
  },
  {
    call: "BORDERGAP",
    cells: [46, 4],
    steps: ["46 in ÷ 4 in, rounded up: 12 units", "12 × 4 in − 46 in = 2 in"],
  },
  {
    call: "BORDERMEASURED",
    cells: [60, 60.25, 60.75],
    steps: ["(60 in + 60 1/4 in + 60 3/4 in) ÷ 3 = 60.3333 in, cut 60 3/8 in", "the measurements differ by 3/4 in"],
  },
  {
    call: "BORDERSTRIPS",
    cells: [60, 80, 6, 40, "mitered", "diagonal"],
    steps: [
      "60 in + 2 × 6 in = 72 in",
      "80 in + 2 × 6 in = 92 in",
      "mitered: sides 93 in, top and bottom 73 in",
      "10 × 40 in − 9 joins × 6 1/2 in = 341 1/2 in, 332 in needed",
    ],
  },
  {
    call: "BORDERSTRIPS",
    cells: [37.5, 41.5, 2],
    steps: [
      "37 1/2 in + 2 × 2 in = 41 1/2 in",
      "41 1/2 in + 2 × 2 in = 45 1/2 in",
      "butted: sides 42 in, top and bottom 42 in",
      "1 × 42 in = 42 in, 42 in needed",
      "1 × 42 in = 42 in, 42 in needed",
      "1 × 42 in = 42 in, 42 in needed",
      "1 × 42 in = 42 in, 42 in needed",
      "cut from strips of their own: 1 + 1 + 1 + 1 = 4 strips",
    ],
  },
  {
    call: "BORDERSTRIPS",
    cells: [20.5, 41.5, 2, null, "cornerstones"],
    steps: [
      "20 1/2 in + 2 × 2 in = 24 1/2 in",
      "41 1/2 in + 2 × 2 in = 45 1/2 in",
      "cornerstones: sides 42 in, top and bottom 21 in",
      "1 × 42 in = 42 in, 42 in needed",
      "1 × 42 in = 42 in, 42 in needed",
      "1 × 42 in = 42 in, 42 in needed",
      "cut from strips of their own: 1 + 1 + 1 = 3 strips",
    ],
  },
  {
    call: "BORDERFABRIC",
    cells: [41.5, 41.5, 2, 42, "across", "butted", "straight", "1/4"],
    steps: [
      "41 1/2 in + 2 × 2 in = 45 1/2 in",
      "41 1/2 in + 2 × 2 in = 45 1/2 in",
      "butted: sides 42 in, top and bottom 46 in",
      "5 × 42 in − 4 joins × 1/2 in = 208 in, 176 in needed",
      "across: 5 × 2 1/2 in",
      "12 1/2 in of fabric; in steps of 1/4 yd buy 1/2 yd",
    ],
  },
  {
    call: "BUNDLECHECK",
    cells: [
      [
        [34, 30],
        [5, 136],
      ],
      40,
      2.5,
      44,
    ],
    steps: ["30 × 1 of 34 in, 2 of 5 in", "9 × 8 of 5 in", "1 × 4 of 5 in", "40 − 40 strips = 0"],
  },
  {
    call: "CUTCHECK",
    cells: [3.875, 3.5, "half square"],
    steps: [
      "cut square less √2 seams: from 3 7/8 in with a seam of 1/4 in it is 3.5214 in",
      "0.0214 in to spare over 3 1/2 in",
    ],
  },
  {
    call: "CUTCHECK",
    cells: [3.5, 3.5, "half square"],
    steps: [
      "cut square less √2 seams: from 3 1/2 in with a seam of 1/4 in it is 3.1464 in",
      "impossible: 0.3536 in too small to trim to 3 1/2 in",
    ],
  },
  {
    call: "CUTDIAMOND",
    cells: [3, 60],
    steps: ["strip 3 in × sin 60° + 2 × 1/4 in = 3.0981 in; along its edge 3 in + 2 × 1/4 in ÷ sin 60° = 3.5774 in"],
  },
  {
    call: "CUTHEXAGON",
    cells: [2],
    steps: ["flat to flat √3 × 2 in + 2 × 1/4 in = 3.9641 in; side 2 in + 2 × 1/4 in ÷ √3 = 2.2887 in"],
  },
  {
    call: "CUTTRIANGLE",
    cells: [4, 3],
    steps: [
      "the inscribed circle has a radius of 1.0704 in; with a seam of 1/4 in all lengths grow by the factor 1.233565",
      "4 in × 1.233565 = 4.9343 in",
      "3 in × 1.233565 = 3.7007 in",
    ],
  },
  {
    call: "CUTTRIANGLE",
    cells: [4, null, null, "1/8"],
    steps: [
      "height where all sides are equal: √3 ÷ 2 × 4 in = 3.4641 in",
      "the inscribed circle has a radius of 1.1547 in; with a seam of 1/4 in all lengths grow by the factor 1.216506",
      "4 in × 1.216506 = 4.866 in",
      "up to the next ruler mark of 1/8 in: cut 4 7/8 in",
      "3.4641 in × 1.216506 = 4.2141 in",
      "up to the next ruler mark of 1/8 in: cut 4 1/4 in",
    ],
  },
  {
    call: "CUTHALFRECTANGLE",
    cells: [2, 4],
    steps: [
      "the inscribed circle has a radius of 0.7639 in; with a seam of 1/4 in all lengths grow by the factor 1.327254",
      "2 in × 1.327254 = 2.6545 in",
      "4 in × 1.327254 = 5.309 in",
    ],
  },
  {
    call: "CUTSTAR",
    cells: [12, null, null, null, 2],
    steps: [
      "a point has sides of 12 in ÷ (2 + √2) = 3.5147 in",
      "strip 1.7574 in × sin 45° + 2 × 1/4 in = 1.7426 in; along its edge 1.7574 in + 2 × 1/4 in ÷ sin 45° = 2.4645 in",
      "3.5147 in + 2 × 1/4 in = 4.0147 in",
      "4.9706 in + 4.8284 × 1/4 in = 6.1777 in",
      "12 in + 2 × 1/4 in = 12 1/2 in",
    ],
  },
  {
    call: "CUTGEESE",
    cells: [4, "four at once", null, null, null, 6],
    steps: [
      "4 in + 4.8284 × 1/4 in = 5.2071 in",
      "up to the next ruler mark of 1/8 in: cut 5 1/4 in",
      "2 in + 3.4142 × 1/4 in = 2.8536 in",
      "up to the next ruler mark of 1/8 in: cut 2 7/8 in",
      "a large square makes 4 units: 6 units take 2",
    ],
  },
  {
    call: "CUTGEESE",
    cells: [4, "corners"],
    steps: [
      "2 in + 2 × 1/4 in = 2 1/2 in",
      "4 in + 2 × 1/4 in = 4 1/2 in",
      "waste triangle: 2 1/2 in − √2 × 1/4 in = 2.1464 in",
      "it finishes 2.1464 in − 3.4142 × 1/4 in = 1.2929 in",
    ],
  },
  {
    call: "CUTGEESE",
    cells: [1, "corners"],
    steps: [
      "1/2 in + 2 × 1/4 in = 1 in",
      "1 in + 2 × 1/4 in = 1 1/2 in",
      "waste triangle: 1 in − √2 × 1/4 in = 0.6464 in",
    ],
  },
  {
    call: "CUTGEESE",
    cells: [4, "triangles", null, 0, null, 1],
    steps: [
      "4 in + 4.8284 × 1/4 in = 5.2071 in",
      "2 in + 3.4142 × 1/4 in = 2.8536 in",
      "a large square makes 4 units: 1 unit takes 1",
    ],
  },
  {
    call: "CUTHALFSQUARE",
    cells: [3, 4, 0.25, 0],
    steps: ["√2 × (3 in + 2 × 1/4 in) + 2 × 1/4 in = 5.4497 in"],
  },
  {
    call: "CUTHALFSQUARE",
    cells: [3, 8],
    steps: [
      "3 in + 3.4142 × 1/4 in = 3.8536 in",
      "eight at once take twice that: 7.7071 in",
      "up to the next ruler mark of 1/8 in: cut 7 3/4 in",
    ],
  },
  {
    call: "CUTQUARTERSQUARE",
    cells: [3],
    steps: ["3 in + 4.8284 × 1/4 in = 4.2071 in", "up to the next ruler mark of 1/8 in: cut 4 1/4 in"],
  },
  {
    call: "CUTSQUAREINSQUARE",
    cells: [6],
    steps: [
      "the center square finishes 6 in ÷ √2 = 4.2426 in",
      "4.2426 in + 2 × 1/4 in = 4.7426 in",
      "up to the next ruler mark of 1/8 in: cut 4 3/4 in",
      "3 in + 3.4142 × 1/4 in = 3.8536 in",
      "up to the next ruler mark of 1/8 in: cut 3 7/8 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
    ],
  },
  {
    call: "CUTSIDETRIANGLE",
    cells: [12],
    steps: [
      "long edge of a side triangle: √2 × 12 in = 16.9706 in",
      "16.9706 in + 4.8284 × 1/4 in = 18.1777 in",
      "up to the next ruler mark of 1/8 in: cut 18 1/4 in",
    ],
  },
  {
    call: "CUTCORNERTRIANGLE",
    cells: [12],
    steps: [
      "short edge of a corner triangle: 12 in ÷ √2 = 8.4853 in",
      "8.4853 in + 3.4142 × 1/4 in = 9.3388 in",
      "up to the next ruler mark of 1/8 in: cut 9 3/8 in",
    ],
  },
  {
    call: "FINISHEDSIZE",
    cells: [3.875, "half square"],
    steps: [
      "cut square less √2 seams: from 3 7/8 in with a seam of 1/4 in it is 3.5214 in",
      "less 2 seams: 3.0214 in finished",
    ],
  },
  {
    call: "FINISHEDSIZE",
    cells: [3.5, "square"],
    steps: ["cut square less 2 seams: from 3 1/2 in with a seam of 1/4 in it is 3 in"],
  },
  {
    call: "UNITMADE",
    cells: [6, "geese"],
    steps: ["large square less 2√2 seams, the width of the unit: from 6 in with a seam of 1/4 in it is 5.2929 in"],
  },
  {
    call: "GRIDPATCH",
    cells: [12, 5],
    steps: ["12 in ÷ 5 = 2.4 in; cut 2.9 in exactly", "cut at 2 7/8 in, 5 of them come out -1/8 in off"],
  },
  {
    call: "KITCOST",
    cells: [
      [[1.875], [0.5]],
      [[12.5], [11]],
      [[4], [0.75]],
    ],
    steps: ["1.875 × 12.5 = 23.4375", "0.5 × 11 = 5.5", "+ 4", "+ 0.75", "in all 33.6875"],
  },
  {
    call: "PRICEFORMARGIN",
    cells: [55, 0.45],
    steps: ["55 ÷ (1 − 0.45) = 100"],
  },
  {
    call: "PRICEFORMARKUP",
    cells: [55, 0.45],
    steps: ["55 × (1 + 0.45) = 79.75"],
  },
  {
    call: "LENGTHMARK",
    cells: [3.8, 0.25, "down"],
    steps: ["3.8 in to marks 1/4 in apart, down: 3 3/4 in"],
  },
  {
    call: "LENGTHMARK",
    cells: [3.8, 0],
    steps: ["3.8 in, not rounded: 3.8 in"],
  },
  {
    call: "PATCHFABRIC",
    cells: [63, 9.5, 9.5, 42, null, 1],
    steps: [
      "42 in ÷ 9 1/2 in, rounded down: 4 side by side",
      "63 ÷ 4, rounded up: 16 × 9 1/2 in = 152 in",
      "152 in of fabric; in steps of 1 yd buy 5 yd",
      "spare: 28 in",
    ],
  },
  {
    call: "PATCHFABRIC",
    cells: [42, 2, 3, 42, null, null, 1],
    steps: [
      "42 in ÷ 2 in, rounded down: 21 side by side",
      "42 ÷ 21, rounded up: 2 × 3 in = 6 in",
      "and 1 in to square the end",
      "7 in of fabric; in steps of 1/8 yd buy 1/4 yd",
      "spare: 2 in",
    ],
  },
  {
    call: "PIECESFROM",
    cells: ["6 in", 2, 3, 42],
    steps: ["42 in ÷ 2 in, rounded down: 21 side by side", "6 in ÷ 3 in, rounded down: 2 rows, 42 patches"],
  },
  {
    call: "PIECESFROM",
    cells: ["6 in", 30, 4, 42, "upright", 1],
    steps: [
      "6 in − 1 in to square up = 5 in",
      "42 in ÷ 30 in, rounded down: 1 side by side",
      "5 in ÷ 4 in, rounded down: 1 row, 1 patch",
    ],
  },
  {
    call: "PATCHFABRIC",
    cells: [2, 30, 60, 42],
    steps: [
      "60 in is longer than the fabric is wide: cut along the length, or join strips",
      "42 in ÷ 30 in, rounded down: 1 side by side",
      "2 ÷ 1, rounded up: 2 × 60 in = 120 in",
      "120 in of fabric; in steps of 1/8 yd buy 3 3/8 yd",
      "spare: 1 1/2 in",
    ],
  },
  {
    call: "PIECESFROM",
    cells: ["18 in", 2.5, 2.5, 22],
    steps: ["22 in ÷ 2 1/2 in, rounded down: 8 side by side", "18 in ÷ 2 1/2 in, rounded down: 7 rows, 56 patches"],
    assumptions: ["a piece of 18 in × 22 in, such as a fat quarter"],
  },
  {
    call: "PIECESFROM",
    cells: ["21 in", 2.5, 2.5, 44],
    steps: ["44 in ÷ 2 1/2 in, rounded down: 17 side by side", "21 in ÷ 2 1/2 in, rounded down: 8 rows, 136 patches"],
  },
  {
    call: "SEAMLENGTH",
    cells: [8, 10, 5],
    steps: ["in the rows: 70 seams × 5 1/2 in", "between the rows: 9 seams × 40 1/2 in; in all 749 1/2 in"],
  },
  {
    call: "SEAMLENGTH",
    cells: [2, 1, 5],
    steps: ["in the rows: 1 seam × 5 1/2 in", "between the rows: 0 seams × 10 1/2 in; in all 5 1/2 in"],
  },
  {
    call: "THREADLENGTH",
    cells: [1000],
    steps: ["1000 in × 2.5 = 2500 in of thread"],
  },
  {
    call: "STRIPFABRIC",
    cells: [5, 2.5, null, 1],
    steps: ["5 strips × 2 1/2 in + 1 in to square up", "13 1/2 in of fabric; in steps of 1/8 yd buy 3/8 yd"],
  },
  {
    call: "STRIPFABRIC",
    cells: [5, 2.5],
    steps: ["5 strips × 2 1/2 in", "12 1/2 in of fabric; in steps of 1/8 yd buy 3/8 yd"],
  },
  {
    call: "STRIPFABRIC",
    cells: [1, 2.5],
    steps: ["1 strip × 2 1/2 in", "2 1/2 in of fabric; in steps of 1/8 yd buy 1/8 yd"],
  },
  {
    call: "STRIPPATCHES",
    cells: [2.5, 42, 2],
    steps: ["42 in − 2 in to square up = 40 in", "40 in ÷ 2 1/2 in, rounded down: 16 a strip"],
  },
  {
    call: "STRIPPATCHES",
    cells: [9.5],
    steps: ["42 in ÷ 9 1/2 in, rounded down: 4 a strip"],
  },
  {
    call: "STRIPSNEEDED",
    cells: [63, 2.5, 21],
    steps: ["21 in ÷ 2 1/2 in, rounded down: 8 a strip", "63 ÷ 8 a strip, rounded up: 8"],
    assumptions: ["strips of 21 in, as from fat quarters; fabric measured folded is twice as wide"],
  },
  {
    call: "STRIPSNEEDED",
    cells: [63, 2.5, 42],
    steps: ["42 in ÷ 2 1/2 in, rounded down: 16 a strip", "63 ÷ 16 a strip, rounded up: 4"],
  },
  {
    call: "STRIPSFROM",
    cells: [1, 2.5],
    steps: ["36 in ÷ 2 1/2 in, rounded down: 14"],
  },
  {
    call: "STRIPSFROM",
    cells: [1, 2.5, 2],
    steps: ["36 in − 2 in to square up = 34 in", "34 in ÷ 2 1/2 in, rounded down: 13"],
  },
  {
    call: "STRIPSFROM",
    cells: ["1 in", 2.5, 2],
    steps: ["0 in ÷ 2 1/2 in, rounded down: 0"],
  },
  {
    call: "STRIPTRIANGLES",
    cells: [3, 4, 42],
    steps: ["the first takes 4 in of 42 in, every further one 2 in: 20 a strip"],
  },
  {
    call: "STRIPSETS",
    cells: [40, 2.5],
    steps: ["42 in ÷ 2 1/2 in, rounded down: 16 a set", "40 ÷ 16 a set, rounded up: 3"],
  },
  {
    call: "STRIPSETS",
    cells: [40, 2.5, 42, 2],
    steps: [
      "42 in − 2 in to square up = 40 in",
      "40 in ÷ 2 1/2 in, rounded down: 16 a set",
      "40 ÷ 16 a set, rounded up: 3",
    ],
  },
  {
    call: "STRIPSETSIZE",
    cells: [[[2.5], [2.5], [2.5]]],
    steps: ["7 1/2 in as cut − 2 × 2 × 1/4 in in seams = 6 1/2 in"],
  },
  {
    call: "STRIPSFIRST",
    cells: [
      [
        ["sand", 2.5, 2.5, 20],
        ["slate", 2.5, 4.5, 8],
      ],
      2,
      2.5,
      42,
    ],
    steps: ["sand: 20 from strips, 0 from yardage", "slate: 7 from strips, 1 from yardage"],
  },
  {
    call: "TOPPIECES",
    cells: [4, 5, 12, 2, "none", "on point"],
    steps: [
      "width: √2 × (4 × 14 in − 2 in) = 76.3675 in",
      "length: √2 × (5 × 14 in − 2 in) = 96.1665 in",
      "long edge of a side triangle: √2 × 14 in = 19.799 in",
      "19.799 in + 4.8284 × 1/4 in = 21.0061 in",
      "up to the next ruler mark of 1/8 in: cut 21 1/8 in",
      "short edge of a corner triangle: 12 in ÷ √2 = 8.4853 in",
      "8.4853 in + 3.4142 × 1/4 in = 9.3388 in",
      "up to the next ruler mark of 1/8 in: cut 9 3/8 in",
      "block: 32 of 12 1/2 in × 12 1/2 in",
      "sash: 48 of 2 1/2 in × 12 1/2 in",
      "cornerstone: 17 of 2 1/2 in × 2 1/2 in",
      "square for side triangles: 4 of 21 1/8 in × 21 1/8 in",
      "square for corner triangles: 2 of 9 3/8 in × 9 3/8 in",
    ],
  },
  {
    call: "TOPSIZE",
    cells: [4, 5, 12, 4, "sashed"],
    steps: ["width: (4 × 16 in + 4 in) = 68 in", "length: (5 × 16 in + 4 in) = 84 in"],
  },
  {
    call: "TOPSIZE",
    cells: [3, 4, 12, 2, "none", "on point"],
    steps: ["width: √2 × (3 × 14 in − 2 in) = 56.5685 in", "length: √2 × (4 × 14 in − 2 in) = 76.3675 in"],
  },
  {
    call: "TUBEUNITS",
    cells: [40, 3, 2.5],
    steps: [
      "3 in ÷ √2: the tip stands 2.1213 in above its seam line",
      "from middle to middle at least 2.2426 in head to tail, 4.2426 in on one side",
      "40 in of tube: 16 units",
    ],
  },
  {
    call: "TUBELENGTH",
    cells: [
      [
        [3, 10],
        [2, 5],
      ],
      2.5,
    ],
    steps: [
      "3 in ÷ √2: the tip stands 2.1213 in above its seam line",
      "2 in ÷ √2: the tip stands 1.4142 in above its seam line",
      "15 units, largest first, head to tail: 30.9117 in of tube",
    ],
  },
  {
    call: "TUBELENGTH",
    cells: [
      [
        [3, null],
        [2, 1],
      ],
      2.5,
    ],
    steps: [
      "2 in ÷ √2: the tip stands 1.4142 in above its seam line",
      "1 unit, largest first, head to tail: 2.8284 in of tube",
    ],
  },
  {
    call: "CUTTEMPLATE",
    cells: [
      [
        [0, 0],
        [4, 0],
        [4, 4],
      ],
    ],
    steps: ["every side moves outward by 1/4 in; neighboring sides meet in a mitre"],
  },
  {
    call: "PLANFABRIC",
    cells: [[["sand", 2.5, 2.5, 40]], 42, "1/8", 1],
    steps: [
      "3 strips take 7 5/8 in with squaring up",
      "no plan takes less: least length proved",
      "7 5/8 in of fabric; in steps of 1/8 yd buy 1/4 yd",
    ],
  },
  {
    call: "PLANLENGTH",
    cells: [[["sand", 2.5, 2.5, 4]]],
    steps: ["1 strip takes 2 1/2 in", "no plan takes less: least length proved"],
  },
  {
    call: "PLANSPARE",
    cells: [[["sand", 2.5, 2.5, 40]], 0.5],
    steps: ["3 strips take 7 1/2 in", "no plan takes less: least length proved", "18 in − 7 1/2 in = 10 1/2 in"],
  },
  {
    call: "PANELSNEEDED",
    cells: [[["sand", 5, 5, 40]], 21, 18],
    steps: ["4 panels; no plan takes fewer than 4"],
  },
  {
    call: "PANELSNEEDED",
    cells: [[["sand", 5, 5, 1]], 21, 18],
    steps: ["1 panel; no plan takes fewer than 1"],
  },
  {
    call: "QUILTPIECES",
    cells: [
      [
        ["nine", "nine"],
        ["nine", "nine"],
      ],
      [
        ["nine", "sand", "slate"],
        ["", "slate", "sand"],
      ],
      12,
    ],
    steps: [
      "4 blocks of nine",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "6 in + 2 × 1/4 in = 6 1/2 in",
      "width: (2 × 12 in) = 24 in",
      "length: (2 × 12 in) = 24 in",
      "sand: 8 of 6 1/2 in × 6 1/2 in, square",
      "slate: 8 of 6 1/2 in × 6 1/2 in, square",
    ],
  },
];
