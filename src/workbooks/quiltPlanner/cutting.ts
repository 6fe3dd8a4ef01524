/** The sheets Cutting and Plans: every piece, and the strips that it comes from. */
import { type Entry, heading, lines, type Sheet } from "../book";
import { fabricsIn, listedColumn } from "../listed";
import {
  AT_THE_IRON,
  BLADES,
  countOf,
  exactText,
  MEASURE_THE_SQUARES,
  NEEDLES,
  sameName,
  tickColumn,
  TITLE_ROW,
  unitWord,
  unlessTooLong,
} from "../shared";
import {
  BINDING_FABRIC,
  bindingStrip,
  borderWidth,
  CUTTING,
  FABRIC_ROWS,
  FAULT,
  LIST,
  MISSING,
  pieces,
  q,
  SEAM,
  SQUARING,
  toBuy,
  U,
  unlessMissing,
} from "./cells";

export function cutting(): Sheet {
  const { first, last } = CUTTING;
  const [firstBorder, secondBorder] = [last + 2, last + 8];
  const borderTable = (row: number, width: string, length: string, border: number): Entry => ({
    cell: `A${row}`,
    style: "tableHead",
    content: `=IF(IF(${MISSING}<>"",0,${borderWidth(border)})=0,${unlessMissing('"none"')},${q("BORDERLENGTHS", { width, length, border: `Design!$B$${border}`, seam: SEAM })})`,
    room: { rows: 4, columns: [undefined, "length", "length", "count"] },
  });
  const inside = `Design!$H$5+2*${borderWidth(15)}`;
  const insideLength = `Design!$I$5+2*${borderWidth(15)}`;
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Cutting" },
    {
      cell: "A2",
      style: "lead",
      content:
        '=IF(Design!B5="","",Design!B5&": ")&"every piece, cut size. Cut the largest first; see Plans for the strips."',
    },
    { cell: `A${first - 1}`, style: "note", content: `=${MISSING}&${FAULT}` },
    {
      cell: `A${first}`,
      style: "tableHead",
      content: `=${unlessMissing(pieces())}`,
      room: {
        rows: last - first + 1,
        columns: [undefined, "length", "length", "count", undefined, undefined, "count"],
      },
    },
    ...tickColumn("H", first, last, "A"),
    ...listedColumn(LIST),
    ...heading(`A${firstBorder}`, "First border: cut only after measuring the quilt", 8),
    borderTable(firstBorder + 1, "Design!$H$5", "Design!$I$5", 15),
    ...heading(`A${secondBorder}`, "Second border", 4),
    borderTable(secondBorder + 1, inside, insideLength, 16),
    ...lines(`A${secondBorder + 7}`, [BLADES, AT_THE_IRON, NEEDLES, MEASURE_THE_SQUARES], "caution"),
  ];
  return {
    name: "Cutting",
    widths: [15, 10, 10, 10, 7, 29, 6, 6],
    entries,
    frozen: { rows: first },
    print: "true size",
    breaks: [last + 1],
    testSquares: [`F${firstBorder + 1}`, `F${secondBorder + 1}`],
    heights: TITLE_ROW,
  };
}

/** Rows for the cut plan of one fabric, and plans on a page. */
const BAND = 28;
const ON_A_PAGE = 2;

/** Whether nothing is cut from the fabric of a letter, or nothing known of it. */
const noPlan = (letter: string) => `OR(${letter}="",${FAULT}<>"",${countOf(fabricsIn(LIST), letter)}=0)`;

export function plans(): Sheet {
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Plans" },
    ...lines("A2", ["Strips across each fabric, the highest first, and what comes from each."], "lead"),
    ...lines("A3", [BLADES], "caution"),
    ...FABRIC_ROWS.flatMap((fabric, index): Entry[] => {
      const top = 4 + index * BAND;
      const letter = `Design!$B$${fabric}`;
      const binding = `IF(${sameName(BINDING_FABRIC, letter)},", with "&Design!$H$13&" strips of "&${exactText(bindingStrip, U)}&" "&${unitWord(U)}&" for the binding","")`;
      const buy = `IF(${toBuy(fabric)}="not used","Nothing is cut from this fabric.","Buy "&${toBuy(fabric)}&${binding}&".")`;
      return [
        ...heading(`A${top}`, `=IF(${letter}="","","Fabric "&${letter}&", "&Design!$A$${fabric})`, 4),
        {
          cell: `A${top + 1}`,
          style: "note",
          content: `=IF(${toBuy(fabric)}="","",${unlessTooLong(`A${top + 2}`, buy)})`,
        },
        {
          cell: `A${top + 2}`,
          style: "tableHead",
          content: `=IF(${noPlan(letter)},"",${q("PLAN", { list: pieces(letter), width: `Design!$C$${fabric}`, squaring: SQUARING })})`,
          room: { rows: BAND - 4, columns: ["length", "count", undefined, "length"] },
        },
      ];
    }),
  ];
  return {
    name: "Plans",
    widths: [9, 9, 102, 13],
    entries,
    frozen: { rows: 2 },
    print: "fit width",
    lastRow: 3 + FABRIC_ROWS.length * BAND,
    heights: TITLE_ROW,
    breaks: [1, 2].map((page) => 3 + page * ON_A_PAGE * BAND),
  };
}
