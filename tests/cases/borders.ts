import type { Case } from "../cases";

export const borders: Case[] = [
  {
    call: "BORDERUNITS",
    cells: [66, 2],
    gives: 33,
    source: "common practice",
    note: "a 66 in side takes 33 keys that finish 2 in wide",
    example: "Keys that finish 2 in wide along a side of 66 in",
  },
  { call: "BORDERUNITS", cells: [46, 4], gives: 12, source: "derived", note: "11.5 units is no answer" },
  { call: "BORDERUNITS", cells: [28.875, "4 1/8"], gives: 7, source: "derived", note: "7 × 4 1/8 = 28 7/8" },
  { call: "BORDERUNITS", cells: [150, 5, "cm"], gives: 30, source: "derived", note: "150 ÷ 5" },
  { call: "BORDERUNITS", cells: [66, null], fails: "#VALUE!", says: "unit is missing", source: "derived" },
  { call: "BORDERUNITS", cells: [66, 0], fails: "#VALUE!", says: "unit must be more than 0", source: "derived" },

  {
    call: "BORDERGAP",
    cells: [46, 4],
    gives: 2,
    source: "derived",
    note: "12 × 4 − 46",
    example: "Units of 4 in overhang a side of 46 in",
  },
  { call: "BORDERGAP", cells: [66, 2], gives: 0, source: "common practice", note: "33 keys of 2 in fit 66 in" },
  { call: "BORDERGAP", cells: [150, 7, "cm"], gives: 4, source: "derived", note: "22 × 7 − 150" },
  { call: "BORDERGAP", cells: [-1, 2], fails: "#VALUE!", says: "side must be 0 or more", source: "derived" },
];
