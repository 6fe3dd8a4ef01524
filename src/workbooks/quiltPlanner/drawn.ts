/** The sheets Blocks and Layout: blocks drawn in cells, and where each lies. */
import { across, type Entry, heading, lines, nameOf, type Sheet } from "../book";
import { TITLE_ROW } from "../shared";
import { FAULT, MISSING, MOST_ACROSS, MOST_DOWN, q, QUILT, SEAM, unlessMissing } from "./cells";

const STAR = [
  ["star", "B", "goose down: B, A", "<", "B"],
  ["", "goose right: B, A", "A", "<", "goose left: B, A"],
  ["", "^", "^", "<", "^"],
  ["", "B", "goose up: B, A", "<", "B"],
];

const PLAIN = [["plain", "B"]];

export function blocks(): Sheet {
  const cells = new Map<string, string>();
  const draw = (top: number, rows: string[][]) => {
    for (const [r, row] of rows.entries()) {
      for (const [c, text] of row.entries()) cells.set(nameOf(top + r, c), text);
    }
  };
  draw(4, STAR);
  draw(9, PLAIN);
  const grid = Array.from({ length: 16 }, (_, r) => Array.from({ length: 7 }, (_, c) => nameOf(4 + r, c))).flat();
  const check = q("BLOCKCHECK", { block: "B5:E8", size: QUILT.size, seam: SEAM });
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Blocks" },
    ...lines("A2", ["A block's name in the first column, its square cells beside and below it."], "lead"),
    ...across("A4", ["name", "cells", "", "", "", "", ""], "column"),
    ...grid.map((cell): Entry => {
      const content = cells.get(cell);
      return { cell, style: "inputText", ...(content ? { content } : {}) };
    }),
    ...heading("A22", "Check", 7),
    { cell: "A23", style: "label", content: '=A5&""' },
    { cell: "B23", style: "note", content: `=${unlessMissing(check)}` },
    ...heading("A25", "What a cell may hold", 7),
    ...lines("A26", [
      "B  a square of fabric B",
      "B / A  a half-square unit whose seam rises to the right: first the fabric above the seam",
      "B \\ A  a half-square unit whose seam falls to the right",
      "goose up: B, A  a goose of B that flies up in a sky of A; its other cell holds < or ^",
      "<  belongs to the patch on its left        ^  belongs to the patch above",
      "Leave an empty row between two blocks. Fabrics go by the letters of the sheet Design.",
    ]),
  ];
  return {
    name: "Blocks",
    widths: [10, 17, 17, 17, 17, 17, 17],
    entries,
    frozen: { rows: 4 },
    print: "one page",
    heights: TITLE_ROW,
  };
}

export function layout(): Sheet {
  const grid = Array.from({ length: MOST_DOWN }, (_, r) =>
    Array.from({ length: MOST_ACROSS }, (_, c): Entry => ({
      cell: nameOf(3 + r, c),
      style: "inputText",
      content: (r + c) % 2 === 0 ? "star" : "plain",
    })),
  ).flat();
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Layout" },
    {
      cell: "A2",
      style: "lead",
      content:
        '="The "&Design!B7&" × "&Design!B8&" blocks at the upper left count. After a name, 90, 180 or 270 turns a block clockwise."',
    },
    { cell: "A3", style: "caution", content: `=${MISSING}&${FAULT}` },
    ...grid,
  ];
  return {
    name: "Layout",
    widths: Array.from({ length: MOST_ACROSS }, () => 9),
    entries,
    frozen: { rows: 2 },
    print: "one page",
    landscape: true,
    heights: TITLE_ROW,
  };
}
