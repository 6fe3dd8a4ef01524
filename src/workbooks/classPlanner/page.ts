/** A page for one size of quilt, which a student fills in. */
import { across, type Entry, type Format, heading, lines, type Sheet } from "../book";
import {
  AT_THE_IRON,
  BLADES,
  inUnits,
  lengthOrUsual,
  MEASURE_THE_SQUARES,
  NEEDLES,
  shopUnit,
  tickRow,
} from "../shared";
import {
  extra,
  MARGIN,
  q,
  SEAM,
  seam,
  type Size,
  sizeText,
  SQUARING,
  squaring,
  STEP,
  STRIP,
  strip,
  TAIL,
  U,
} from "./cells";

/** Fabrics of a page by letter: row, what it looks like, what it is for. */
const FABRICS = {
  A: { row: 13, what: "light, small print", use: "pinwheels" },
  B: { row: 14, what: "dark, reads as solid", use: "pinwheels" },
  C: { row: 15, what: "medium, larger print", use: "plain blocks" },
  D: { row: 16, what: "darkest, any print", use: "border and binding" },
} as const;

export function page({ name, across: blocksAcross, down, border }: Size): Sheet {
  const width = (letter: keyof typeof FABRICS) => `$C$${FABRICS[letter].row}`;
  const size = { width: "$F$5", length: "$G$5" };
  const inside = { width: "$F$6", length: "$G$6" };
  const borderWidth = lengthOrUsual("$C$8", "none", U);
  /** An answer about the border, of which a quilt without one takes nothing. */
  const ofBorder = (formula: string) => `=IF(${borderWidth}=0,0,${formula})`;
  const half = `${q("LENGTH", { length: "$C$7" })}/2`;
  const strips = (letter: keyof typeof FABRICS, row: number) =>
    q("STRIPSNEEDED", { count: `$E$${row}`, patch: `$F$${row}`, width: width(letter), squaring: SQUARING });
  const used = { A: "$C$24*$D$24", B: "$C$25*$D$25", C: "$C$23*$D$23", D: "$C$22*$D$22+$C$26*$D$26" };
  const needed = (letter: keyof typeof FABRICS) => `=${used[letter]}+${squaring}+${extra}`;
  const backing = { ...size, fabricWidth: "$C$17", margin: MARGIN, step: STEP, squaring: SQUARING };
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: `="${name}: "&Class!C5` },
    ...lines("A2", ["Type your own size and fabrics into the yellow cells; the white cells follow."], "lead"),
    ...heading("A3", "Yours", 8),
    { cell: "A4", style: "label", content: "Your name" },
    { cell: "C4", style: "inputText" },
    ...size4(5, "Blocks across", blocksAcross, "count", "Quilt, finished", `=${inside.width}+2*${borderWidth}`),
    ...size4(
      6,
      "Blocks down",
      down,
      "count",
      "Before the border",
      `=${q("TOPSIZE", { across: "$C$5", down: "$C$6", block: "$C$7" })}`,
    ),
    ...size4(7, "Block, finished", 8, "length", "Pinwheels, plain", "=ROUNDUP($C$5*$C$6/2,0)"),
    ...size4(8, "Border, finished", border, "length", "Half-square units", "=4*$F$7"),
    { cell: "G5", style: "answer", content: `=${inside.length}+2*${borderWidth}`, format: "length" },
    { cell: "G7", style: "answer", content: "=$C$5*$C$6-$F$7", format: "count" },
    { cell: "D9", style: "unit", content: "Batting, at least" },
    {
      cell: "F9",
      style: "answer",
      content: `=${q("BATTINGSIZE", { ...size, margin: MARGIN })}`,
      room: { rows: 1, columns: ["length", "length"], header: false },
    },
    ...["H5", "H6", "H9"].map((cell): Entry => ({ cell, style: "unit", content: inUnits(U) })),
    ...heading("A10", "Fabrics, and what to buy", 8),
    ...across("A12", ["letter", "what it looks like", "usable width", "for", "", "length", "buy", ""], "column"),
    ...lines("A11", ["Measure the usable width, selvages cut off; labels say more."]),
    ...Object.entries(FABRICS).flatMap(([letter, { row, what, use }]) =>
      fabric(row, letter, what, 42, use, needed(letter as keyof typeof FABRICS)),
    ),
    ...fabric(17, "", "backing", 42, `="panels: "&${q("BACKINGPANELS", backing)}`, ""),
    { cell: "G17", style: "buy", content: `=${q("BACKINGFABRIC", backing)}`, format: "amount" },
    { cell: "H17", style: "unit", content: shopUnit(U) },
    ...fabric(18, "", "batting", "", `="at least "&${sizeText("$F$9", "$G$9")}`, ""),
    ...heading("A20", "Cutting, largest first", 8),
    ...across("A21", ["letter", "piece", "strips", "width", "pieces", "size", "then", "done"], "column"),
    ...cut(
      22,
      "D",
      "border, from joined strips",
      ofBorder(q("BORDERSTRIPS", { ...inside, border: "$C$8", fabricWidth: width("D"), seam: SEAM })),
      ofBorder(q("CUTSQUARE", { finished: "$C$8", seam: SEAM })),
      "",
      "",
      "measure first",
    ),
    ...cut(
      23,
      "C",
      "plain blocks",
      `=${strips("C", 23)}`,
      "=$F$23",
      "=$G$7",
      `=${q("CUTSQUARE", { finished: "$C$7", seam: SEAM })}`,
      "",
    ),
    ...cut(
      24,
      "A",
      "squares for units",
      `=${strips("A", 24)}`,
      "=$F$24",
      "=2*$F$7",
      `=${q("CUTHALFSQUARE", { finished: half, seam: SEAM })}`,
      "pair with B",
    ),
    ...cut(25, "B", "squares for units", `=${strips("B", 25)}`, "=$F$25", "=2*$F$7", "=$F$24", "pair with A"),
    ...cut(
      26,
      "D",
      "binding",
      `=${q("BINDINGSTRIPS", { ...size, strip: STRIP, fabricWidth: width("D"), tail: TAIL })}`,
      `=${strip}`,
      "",
      "",
      "diagonally",
    ),
    ...cut(27, "", "", "", "", "", "", ""),
    ...heading("A29", "Check as you sew", 5),
    ...across("A30", ["", "it should measure", "across", "down", "mine"], "column"),
    ...check(31, "seam test: three 1 1/2 in strips", `=3*${q("LENGTH", { length: '"1 1/2 in"' })}-4*${seam}`, ""),
    ...check(
      32,
      "unit before trimming, about",
      `=${q("UNITMADE", { cut: "$F$24", how: '"half square"', seam: SEAM })}`,
      "=$C$32",
      "decimal",
    ),
    ...check(33, "unit, trimmed", `=${q("CUTSQUARE", { finished: half, seam: SEAM })}`, "=$C$33"),
    ...check(34, "two units sewn", `=2*($C$33-${seam})`, "=$C$33"),
    ...check(35, "pinwheel", "=$F$23", "=$F$23"),
    ...check(36, "a row of blocks", `=$F$6+2*${seam}`, "=$F$23"),
    ...check(37, "top before the border", `=$F$6+2*${seam}`, `=$G$6+2*${seam}`),
    ...check(38, "top with its border", `=$F$5+2*${seam}`, `=$G$5+2*${seam}`),
    ...heading("A40", "Border: measure edge, middle, edge, raw edge to raw edge", 8),
    ...measured(41, "length of the top: cut two sides"),
    ...measured(42, "width with the sides on: cut two"),
    ...lines("A43", [BLADES, AT_THE_IRON, NEEDLES, MEASURE_THE_SQUARES], "caution"),
  ];
  return {
    name,
    widths: [7, 28, 9, 10, 9, 10, 13, 7],
    entries: entries.filter(({ content }) => content !== ""),
    frozen: { rows: 2 },
    print: "true size",
    testSquares: ["G29", "G35"],
    heights: { 12: 27 },
  };
}

function size4(row: number, label: string, content: number, format: Format, result: string, formula: string): Entry[] {
  const pair = row === 6;
  return [
    { cell: `A${row}`, style: "label", content: label },
    { cell: `C${row}`, style: "input", content, format },
    { cell: `D${row}`, style: "unit", content: result },
    {
      cell: `F${row}`,
      style: "answer",
      content: formula,
      format: row < 7 ? "length" : "count",
      ...(pair ? { room: { rows: 1, columns: ["length", "length"] as const, header: false } } : {}),
    },
  ];
}

function fabric(row: number, letter: string, what: string, width: number | "", use: string, needed: string): Entry[] {
  return [
    { cell: `A${row}`, style: "answerText", content: letter },
    { cell: `B${row}`, style: "inputText", content: what },
    { cell: `C${row}`, style: width === "" ? "answer" : "input", content: width, format: "length" },
    { cell: `D${row}`, style: "unit", content: use },
    ...(needed === "" ? [] : toBuy(row, needed)),
  ];
}

/** The exact length of a fabric, and the shop's cut of it. */
function toBuy(row: number, needed: string): Entry[] {
  const amount = q("FABRIC", { length: `$F$${row}`, step: STEP });
  return [
    { cell: `F${row}`, style: "answer", content: needed, format: "length" },
    { cell: `G${row}`, style: "buy", content: `=${q("FABRICTEXT", { amount })}` },
  ];
}

function cut(
  row: number,
  letter: string,
  piece: string,
  strips: string,
  width: string,
  count: string,
  size: string,
  then: string,
): Entry[] {
  const style = piece === "" ? "inputText" : "answerText";
  return [
    { cell: `A${row}`, style, ...(letter ? { content: letter } : {}) },
    { cell: `B${row}`, style, ...(piece ? { content: piece } : {}) },
    { cell: `C${row}`, style: piece ? "answer" : "input", ...(strips ? { content: strips } : {}), format: "count" },
    { cell: `D${row}`, style: piece ? "answer" : "input", ...(width ? { content: width } : {}), format: "length" },
    { cell: `E${row}`, style: piece ? "answer" : "input", ...(count ? { content: count } : {}), format: "count" },
    { cell: `F${row}`, style: piece ? "answer" : "input", ...(size ? { content: size } : {}), format: "length" },
    { cell: `G${row}`, style: "answerText", ...(then ? { content: then } : {}) },
    ...tickRow(`H${row}`),
  ];
}

function check(row: number, what: string, acrossIt: string, downIt: string, format: Format = "length"): Entry[] {
  return [
    ...tickRow(`A${row}`),
    { cell: `B${row}`, style: "answerText", content: what },
    { cell: `C${row}`, style: "answer", content: acrossIt, format },
    { cell: `D${row}`, style: "answer", ...(downIt ? { content: downIt } : {}), format },
    { cell: `E${row}`, style: "input", format: "length" },
  ];
}

function measured(row: number, what: string): Entry[] {
  const three = { first: `$C$${row}`, second: `$D$${row}`, third: `$E$${row}` };
  return [
    { cell: `A${row}`, style: "label", content: what },
    ...["C", "D", "E"].map((column): Entry => ({ cell: `${column}${row}`, style: "input", format: "length" })),
    {
      cell: `F${row}`,
      style: "buy",
      content: `=IF(OR(C${row}="",D${row}="",E${row}=""),"",${q("BORDERMEASURED", three)})`,
      room: { rows: 1, columns: ["length", undefined], header: false },
    },
  ];
}
