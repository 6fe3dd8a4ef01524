/** The sheets Cutting and Plans: every piece, and the strips that it comes from. */
import { type Entry, heading, lines, type Sheet } from "../book";
import { AT_THE_IRON, BLADES, MEASURE_THE_SQUARES, NEEDLES, tickColumn, unlessTooLong } from "../shared";
import { borderWidth, CUTTING, FABRIC_ROWS, pieces, q, SEAM, SQUARING, U } from "./cells";

export function cutting(): Sheet {
  const { first, last } = CUTTING;
  const [firstBorder, secondBorder] = [last + 2, last + 8];
  const borderTable = (row: number, width: string, length: string, border: number): Entry => ({
    cell: `A${row}`,
    style: "tableHead",
    content: `=IF(Design!$B$${border}="","none",${q("BORDERLENGTHS", { width, length, border: `Design!$B$${border}`, seam: SEAM })})`,
    room: { rows: 4, columns: [undefined, "length", "length", "count"] },
  });
  const inside = `Design!$H$5+2*${borderWidth(15)}`;
  const insideLength = `Design!$I$5+2*${borderWidth(15)}`;
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Cutting" },
    {
      cell: "A2",
      style: "lead",
      content: '=Design!B5&": every piece, cut size. Cut the largest first; see Plans for the strips."',
    },
    { cell: `A${first - 1}`, style: "note", content: `=${unlessTooLong(`A${first}`)}` },
    {
      cell: `A${first}`,
      style: "tableHead",
      content: `=${pieces()}`,
      room: {
        rows: last - first + 1,
        columns: [undefined, "length", "length", "count", undefined, undefined, "count"],
      },
    },
    ...tickColumn("H", first, last, "A"),
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
  };
}

/** Rows for the cut plan of one fabric, and plans on a page. */
const BAND = 28;
const ON_A_PAGE = 2;

export function plans(): Sheet {
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Plans" },
    ...lines("A2", ["Strips across each fabric, the highest first, and what comes from each."], "lead"),
    ...lines("A3", [BLADES], "caution"),
    ...FABRIC_ROWS.flatMap((fabric, index): Entry[] => {
      const top = 4 + index * BAND;
      const letter = `Design!$B$${fabric}`;
      return [
        ...heading(`A${top}`, `=IF(${letter}="","","Fabric "&${letter}&", "&Design!$A$${fabric})`, 4),
        {
          cell: `A${top + 1}`,
          style: "note",
          content: `=IF(${letter}="","",${unlessTooLong(`A${top + 2}`, `"Buy "&Design!$I$${fabric}&IF(Design!$B$35=${letter},", with "&Design!$H$13&" strips of "&${q("LENGTHTEXT", { length: "Design!$B$34" })}&" "&${U}&" for the binding","")&"."`)})`,
        },
        {
          cell: `A${top + 2}`,
          style: "tableHead",
          content: `=IF(${letter}="","",${q("PLAN", { list: pieces(letter), width: `Design!$C$${fabric}`, squaring: SQUARING })})`,
          room: { rows: BAND - 4, columns: ["length", "count", undefined, "length"] },
        },
      ];
    }),
  ];
  return {
    name: "Plans",
    widths: [9, 9, 90, 13],
    entries,
    frozen: { rows: 2 },
    print: "fit width",
    lastRow: 3 + FABRIC_ROWS.length * BAND,
    breaks: [1, 2].map((page) => 3 + page * ON_A_PAGE * BAND),
  };
}
