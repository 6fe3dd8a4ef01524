/** The sheet Class: what the teacher settles. */
import { across, type Entry, heading, lines, type Sheet } from "../book";
import { AT_THE_IRON, BLADES, INFANTS, input, inUnits, NEEDLES, shopUnit, STEPS, tickRow, UNITS } from "../shared";
import { U } from "./cells";

export function classSheet(): Sheet {
  const told: [string, string][] = [
    ["Class", "Pinwheels and plain squares"],
    ["Teacher, and how to reach me", "type your name and address here"],
    ["When and where", "two Tuesdays, 6 to 9 pm, shop classroom"],
    ["This version, corrections", "Version 1; corrections hang on the classroom door"],
    ["For whom", "you can sew a straight seam and have used a rotary cutter"],
    ["Time", "two evenings and about four hours at home"],
  ];
  const evenings: [string, number, string, string][] = [
    ["1", 90, "Check the seam. Cut, sew and trim the half-square units.", "all pieces cut but the border"],
    ["", 60, "Sew the first pinwheel and measure it.", ""],
    ["at home", 180, "Sew the other pinwheels.", "all pinwheels measure alike"],
    ["2", 90, "Join blocks into rows, rows into the top.", "top pressed"],
    ["", 45, "Measure the top, cut the border, sew it on.", "backing and batting ready"],
    ["", 30, "Layer, and how to bind.", ""],
  ];
  const entries: Entry[] = [
    { cell: "A1", style: "title", content: "Class planner" },
    ...lines(
      "A2",
      ["For the teacher. Each size of quilt has a page for students; the supply list is to be sent out."],
      "lead",
    ),
    ...heading("A4", "Yours to change", 4),
    ...told.flatMap(([label, content], index): Entry[] => [
      { cell: `A${5 + index}`, style: "label", content: label },
      { cell: `C${5 + index}`, style: "inputText", content },
    ]),
    ...setting(12, "Units of bare numbers", "in", undefined, "", UNITS),
    ...setting(13, "Seam allowance", 0.25, "length", inUnits(U)),
    ...setting(14, "Lost squaring an end", 1, "length", inUnits(U)),
    ...setting(15, "For miscuts, each fabric", 3, "length", inUnits(U)),
    ...setting(16, "The shop cuts in steps of", 0.125, "amount", shopUnit(U), STEPS),
    ...setting(17, "Binding strip, cut", 2.5, "length", inUnits(U)),
    ...setting(18, "Binding tail", 10, "length", inUnits(U)),
    ...setting(19, "Backing and batting, more each side", 4, "length", inUnits(U)),
    ...heading("A21", "The design", 4),
    ...lines("A22", [
      "Pinwheel blocks and plain blocks take turns, like a checkerboard; the first block is a pinwheel.",
      "A pinwheel is four half-square units of fabrics A and B, sewn two at a time from squares.",
      "Plain blocks are of fabric C; border and binding are of fabric D.",
    ]),
    ...heading("A26", "What is done when", 4),
    ...across("A27", ["evening", "minutes", "what", "to be ready by then"], "column"),
    ...Array.from({ length: 9 }, (_, index): Entry[] => {
      const [evening, minutes, what, ready] = evenings.at(index) ?? [];
      return [
        { cell: `A${28 + index}`, style: "inputText", content: evening },
        { cell: `B${28 + index}`, style: "input", content: minutes, format: "count" },
        { cell: `C${28 + index}`, style: "inputText", content: what },
        { cell: `D${28 + index}`, style: "inputText", content: ready },
      ];
    }).flat(),
    ...heading("A38", "Before the list goes out", 4),
    ...[
      "Sew a sample in another size than the one on the wall; every page counts anew.",
      "Let a second quilter check the cutting table.",
      "Measure the usable width of the fabrics on the shelf and type it on each page.",
      "Send the list well ahead, and link it from the booking.",
    ].flatMap((text, index): Entry[] => [
      ...tickRow(`A${39 + index}`),
      { cell: `B${39 + index}`, style: "item", content: text },
    ]),
    ...heading("A44", "Say it aloud", 4),
    ...lines("A45", [BLADES, AT_THE_IRON, NEEDLES, INFANTS], "caution"),
  ];
  return { name: "Class", widths: [9, 25, 56, 30], entries, frozen: { rows: 2 }, print: "one page" };
}

/** A label and a yellow cell; the second column is the labels' too. */
function setting(...[row, label, content, format, unit, choices]: Parameters<typeof input>): Entry[] {
  return input(row, label, content, format, unit, choices, ["A", "C", "D"]);
}
