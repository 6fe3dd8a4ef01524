import type { Case } from "../cases";

/** Corners written in one line: `0 0, 4 0, 0 3`. */
function corners(line: string): number[][] {
  return line.split(", ").map((corner) => corner.split(" ").map(Number));
}

/** A square of 6 in with a notch in its upper side, 4 in deep. */
function notched(left: number, right: number): number[][] {
  return corners(`0 0, 6 0, 6 6, ${right} 6, ${right} 2, ${left} 2, ${left} 6, 0 6`);
}

/** A room of 4 in inside a square of 10 in, with a door through the upper wall: narrow, but no side of it is short. */
function room(door: number): number[][] {
  const [left, right] = [5 - door / 2, 5 + door / 2];
  return corners(`0 0, 10 0, 10 10, ${right} 10, ${right} 7, 7 7, 7 3, 3 3, 3 7, ${left} 7, ${left} 10, 0 10`);
}

/** What is refused, and a part of the sentence. */
const REFUSED: [unknown, string][] = [
  [corners("0 0, 4 4, 4 0, 0 4"), "side 1–2 and side 3–4 cross or touch"],
  [corners("0 0, 4 0, 4 4, 2 0, 0 4"), "side 1–2 and side 4–5 cross or touch"],
  [corners("2 0, 0 4, 0 0, 4 0, 4 4"), "side 1–2 and side 3–4 cross or touch"],
  [corners("0 0, 0 5, 4 5, 5 -1, 6 5, 10 5, 10 0"), "side 3–4 and side 7–1 cross or touch"],
  [corners("0 0, 4 0, 2 0, 2 3"), "side 1–2 and side 2–3 cross or touch"],
  [corners("0 0, 4 0"), "3 or more, not 2"],
  [corners("0 0, 4 0, 4 0, 0 3"), "corners 2 and 3 are the same point; leave one out"],
  [corners("0 0, 4 0, 0 3, 0 0"), "corners 4 and 1 are the same point; the shape closes by itself"],
  [corners("0 0, 1 1, 3 3"), "all lie on one line"],
  [corners("0 0, 100 1, 100 0"), "corner 1 is sharper than 3 degrees"],
  [corners("0 0 1, 4 0 1, 0 3 1"), "two columns"],
  [[...corners("0 0, 4 0"), [0, null]], "row 3, distance up is missing"],
  [[...corners("0 0, 4 0"), [0, "high"]], "row 3, distance up: cannot read a length"],
  [corners("0 0, 46089 0, 0 3"), "looks like a date"],
  [7, "two columns"],
];

export const templates: Case[] = [
  {
    call: "CUTTEMPLATE",
    cells: [corners("0 0, 4 0, 0 3"), 1],
    gives: corners("-1 -1, 7 -1, -1 5"),
    source: "schoolGeometry",
    note: "sides 3, 4, 5: inscribed circle of radius 1; a seam of 1 doubles the triangle",
    example: "A right triangle of 3 × 4 in, with a seam of 1 in",
  },
  {
    call: "CUTTEMPLATE",
    cells: [corners("0 0, 0 3, 4 0"), 1],
    gives: corners("-1 -1, -1 5, 7 -1"),
    source: "derived",
    note: "the same the other way round",
  },
  {
    call: "CUTTEMPLATE",
    cells: [notched(2, 4)],
    gives: corners("-0.25 -0.25, 6.25 -0.25, 6.25 6.25, 3.75 6.25, 3.75 2.25, 2.25 2.25, 2.25 6.25, -0.25 6.25"),
    source: "derived",
    note: "every side moves outward by 1/4: a notch 2 in wide is cut 1 1/2 in wide",
    example: "A square with a notch",
  },
  {
    call: "CUTTEMPLATE",
    cells: [notched(2.8, 3.2)],
    fails: "#N/A",
    says: "a seam of 1/4 in does not fit into the notch at side 5–6",
    source: "derived",
  },
  {
    call: "CUTTEMPLATE",
    cells: [notched(2.75, 3.25)],
    fails: "#N/A",
    says: "a seam of 1/4 in does not fit into the notch",
    source: "derived",
  },
  {
    call: "CUTTEMPLATE",
    cells: [[...notched(2.8, 3.2).slice(4), ...notched(2.8, 3.2).slice(0, 4)]],
    fails: "#N/A",
    says: "does not fit into the notch at side 1–2; make the notch wider, or split the shape into pieces",
    source: "derived",
  },
  {
    call: "CUTTEMPLATE",
    cells: [room(0.4)],
    fails: "#N/A",
    says: "a seam of 1/4 in does not fit into the notch",
    source: "derived",
  },
  {
    call: "CUTTEMPLATE",
    cells: [room(1)],
    gives: corners(
      "-0.25 -0.25, 10.25 -0.25, 10.25 10.25, 5.25 10.25, 5.25 6.75, 6.75 6.75, 6.75 3.25, 3.25 3.25, 3.25 6.75, " +
        "4.75 6.75, 4.75 10.25, -0.25 10.25",
    ),
    source: "derived",
    note: "every side moves outward by 1/4: a door 1 in wide is cut 1/2 in wide",
  },
  { call: "CUTTEMPLATE", cells: [notched(2.8, 3.2), 0], gives: notched(2.8, 3.2), source: "derived", note: "no seam" },
  {
    call: "CUTTEMPLATE",
    cells: [
      [
        ["-1/2", 0],
        ["1 1/2", 0],
        ["", null],
        [1.5, "2 1/2"],
        [-0.5, 2.5],
      ],
    ],
    gives: corners("-0.75 -0.25, 1.75 -0.25, 1.75 2.75, -0.75 2.75"),
    source: "derived",
    note: "a rectangle 2 × 2 1/2 on both sides of 0; an empty row is skipped",
  },
  {
    call: "CUTTEMPLATE",
    cells: [corners("0 0, 2 0, 4 0, 4 3, 0 3")],
    gives: corners("-0.25 -0.25, 2 -0.25, 4.25 -0.25, 4.25 3.25, -0.25 3.25"),
    source: "derived",
    note: "a point in the middle of a side moves straight outward",
  },
  {
    call: "CUTTEMPLATE",
    cells: [corners("0 0, 8 0, 0 6"), null, "cm"],
    gives: corners("-0.75 -0.75, 10.25 -0.75, -0.75 7.5"),
    source: "derived",
    note: "sides 6, 8, 10: radius 2; seam 0.75: factor 1.375, to 8.25 × 11",
  },
  ...REFUSED.map(([range, says]): Case => ({
    call: "CUTTEMPLATE",
    cells: [range],
    fails: "#VALUE!",
    says,
    source: "derived",
  })),
];
