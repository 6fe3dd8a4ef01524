/** The packing list, one page for each bag. */
import { across, type Entry, lines, type Sheet } from "../book";
import { BLADES, exactText, INFANTS, lengthOrUsual, NEEDLES, tickRow, unitWord } from "../shared";
import { GENEROSITY, q, ROWS, U } from "./cells";

export function card(): Sheet {
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "=Kit!B5" },
    ...lines("A2", ["Packing list, one page for each bag"], "lead"),
    ...across("A4", ["", "letter", "fabric", "cut"], "column"),
    ...ROWS.flatMap((row, index): Entry[] => {
      const at = 5 + index;
      return [
        ...tickRow(`A${at}`),
        { cell: `B${at}`, style: "answerText", content: `=Kit!B${row}&""` },
        { cell: `C${at}`, style: "answerText", content: `=Kit!A${row}&""` },
        {
          cell: `D${at}`,
          style: "buy",
          content: `=IF(Kit!F${row}="","",${q("FABRICTEXT", { amount: `Kit!$C$${row}` })})`,
        },
      ];
    }),
    ...["Pattern", "Label with letters", "Bag"].flatMap((what, index): Entry[] => [
      ...tickRow(`A${15 + index}`),
      { cell: `B${15 + index}`, style: "answerText" },
      { cell: `C${15 + index}`, style: "answerText", content: what },
      { cell: `D${15 + index}`, style: "buy", content: 1, format: "count" },
    ]),
    ...Array.from({ length: 3 }, (_, index): Entry[] => [
      ...tickRow(`A${18 + index}`),
      ...["B", "C", "D"].map((column): Entry => ({ cell: `${column}${18 + index}`, style: "inputText" })),
    ]).flat(),
    { cell: "C22", style: "label", content: "Price" },
    { cell: "D22", style: "buy", content: "=Kit!B16", format: "money" },
    {
      cell: "A24",
      style: "note",
      content: `="Each cut is at least "&${exactText(lengthOrUsual(GENEROSITY, "none", U), U)}&" "&${unitWord(U)}&" longer than stated. Not washed. Amounts are for prints that may be turned."`,
    },
    ...lines("A25", ["Fabrics carry their letter: the same in the pattern and on the bag."]),
    ...lines("A27", [BLADES, NEEDLES, INFANTS], "caution"),
    ...lines("A31", ["Packed by: ______________________     Date: ______________"], "label"),
  ];
  return { name: "Packing list", widths: [5, 9, 50, 20], entries, print: "one page" };
}
