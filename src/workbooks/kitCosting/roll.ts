/** The sheet Roll: a roll of strips instead of yardage. */
import { across, type Entry, heading, lines, type Sheet } from "../book";
import { BLADES, input, inUnits, shopUnit, STEPS } from "../shared";
import { cents, q, U } from "./cells";

const PIECES: (string | number)[][] = [
  ["logs", 2.5, 6.5, 24],
  ["bars", 2.5, 12.5, 12],
  ["centers", 4.5, 4.5, 12],
];

export function roll(): Sheet {
  const list = "$A$14:$E$21";
  const strips = { list, strips: "$B$5", stripWidth: "$B$6", length: "$B$7" };
  const plan = { width: "$B$8", squaring: "$B$9", step: "$B$10" };
  const rest = { list: q("STRIPSFIRST", strips), ...plan };
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "A roll instead of yardage" },
    ...lines("A2", ["The pieces of one kit, cut from yardage alone, or from a roll of strips first."], "lead"),
    ...heading("A4", "Yours to change", 5),
    ...input(5, "Strips in a roll", 40, "count", "strips"),
    ...input(6, "Width of a strip", 2.5, "length", inUnits(U)),
    ...input(7, "Usable length of a strip", 42, "length", inUnits(U)),
    ...input(8, "Usable width of the yardage", 42, "length", inUnits(U)),
    ...input(9, "Lost squaring an end", 1, "length", inUnits(U)),
    ...input(10, "The shop cuts in steps of", 0.125, "amount", shopUnit(U), STEPS),
    { cell: "D5", style: "label", content: "A roll costs" },
    { cell: "E5", style: "input", content: 21, format: "money" },
    { cell: "D6", style: "label", content: "Yardage costs" },
    { cell: "E6", style: "input", content: 7.4, format: "money" },
    ...heading("A12", "Pieces of one kit, cut size; what is wanted first from the strips comes first", 5),
    ...across("A13", ["piece", "width", "height", "count", "grain"], "column"),
    ...Array.from({ length: 8 }, (_, index): Entry[] => {
      const row = 14 + index;
      const piece = PIECES[index] ?? [];
      return [
        { cell: `A${row}`, style: "inputText", content: piece[0] },
        { cell: `B${row}`, style: "input", content: piece[1], format: "length" },
        { cell: `C${row}`, style: "input", content: piece[2], format: "length" },
        { cell: `D${row}`, style: "input", content: piece[3], format: "count" },
        { cell: `E${row}`, style: "inputText", choices: ["any", "upright"] },
      ];
    }).flat(),
    ...heading("A23", "From the roll first", 6),
    {
      cell: "A24",
      style: "tableHead",
      content: `=IF(${noStrips},"",${q("STRIPSFIRST", strips)})`,
      room: { rows: 11, columns: [undefined, "length", "length", "count", undefined, "count"] },
    },
    ...heading("A36", "What changes", 6),
    ...across("A37", ["one kit", "yardage", "roll first", "change"], "column"),
    { cell: "A38", style: "label", content: "Strips of the roll" },
    ...across("B38", [0, `=IF(${noStrips},0,${stripsUsed})`, "=C38-B38"], "answer", "count"),
    { cell: "A39", style: "label", content: `="Yardage to buy, "&${shopUnit(U).slice(1)}` },
    ...across(
      "B39",
      [
        `=${q("PLANFABRIC", { list, ...plan })}`,
        `=IF(${noStrips},B39,IF(${left}=0,0,${q("PLANFABRIC", rest)}))`,
        "=C39-B39",
      ],
      "answer",
      "amount",
    ),
    { cell: "A40", style: "label", content: "Cost of the yardage" },
    ...across(
      "B40",
      [ifYardage(cents("B39*$E$6")), ifYardage(cents("C39*$E$6")), ifYardage("C40-B40")],
      "answer",
      "money",
    ),
    { cell: "A41", style: "label", content: "Cost of the strips used" },
    ...across("B41", [0, ifRoll(`IF(C38=0,0,${cents("C38/$B$5*$E$5")})`), ifRoll("C41-B41")], "answer", "money"),
    { cell: "A42", style: "label", content: "Both" },
    ...across("B42", ["B40+B41", "C40+C41", "C42-B42"].map(ifBoth), "buy", "money"),
    {
      cell: "A43",
      style: "note",
      content: `=IF(${noStrips},"Type how many strips are in a roll.",IF(C38=0,"No piece is as wide as a strip: the roll is of no use here.",${served}&IF(OR($E$5="",$E$6=""),"Type what a roll and yardage cost to compare them.",${compared})))`,
    },
    ...lines("A44", [
      "Strips left on a roll go into other kits; pinked edges are taken as part of the width.",
      "A strip is one color: sort the pieces so that each kit has the colors it should.",
    ]),
    ...lines("A47", [BLADES], "caution"),
  ];
  return { name: "Roll", widths: [30, 12, 12, 14, 12, 14], entries, frozen: { rows: 2 }, print: "one page" };
}

/** Whether there is no roll to cut from. */
const noStrips = "N($B$5)=0";

const stripsUsed = 'INDEX($F$24:$F$34,MATCH("strips used",$A$24:$A$34,0))';

/** Pieces that must come from yardage. */
const left = "SUM($D$25:$D$34)";

const ifRoll = (formula: string) => `=IF($E$5="","",${formula})`;
const ifYardage = (formula: string) => `=IF($E$6="","",${formula})`;
const ifBoth = (formula: string) => `=IF(OR($E$5="",$E$6=""),"",${formula})`;

const kits = "INT($B$5/C38)";
const served = `"A roll serves "&${kits}&IF(${kits}=1," kit"," kits")&IF(${left}=0,"",", each with "&${left}&IF(${left}=1," piece"," pieces")&" from yardage")&". "`;

/** Which costs less, a difference of whole cents. */
const compared =
  'IF(ROUND(D42,2)=0,"Both cost the same.",IF(D42<0,"The roll is cheaper for a kit by ","The roll is dearer for a kit by ")&TEXT(ROUND(ABS(D42),2),"0.00")&".")';
