/** How a block is read: what each text in a cell means, and with which sentence the rest is refused. */
import { FabricNames, refuseFabric } from "../../src/math/blocks/fabricNames";
import { fabricsInCell, readBlock } from "../../src/math/blocks/grammar";

function refusal(cells: string[][]): string {
  try {
    readBlock(cells);
  } catch (thrown) {
    return String(thrown);
  }
  return "accepted";
}

/** What stands in a block of one cell. */
function unitOf(text: string): unknown {
  return readBlock([[text]]).units[0].unit;
}

describe("readBlock", () => {
  test("reads up to 100 cells across and down", () => {
    const grid = (rows: number, columns: number) =>
      Array.from({ length: rows }, () => Array<string>(columns).fill("sand"));
    expect(readBlock(grid(100, 1)).rows).toBe(100);
    expect(readBlock(grid(1, 100)).columns).toBe(100);
    expect(refusal(grid(101, 1))).toBe("Problem: the block is 1 × 101 cells; at most 100 × 100 are read");
    expect(refusal(grid(1, 101))).toBe("Problem: the block is 101 × 1 cells; at most 100 × 100 are read");
  });

  test("a shorter row ends in empty cells, and spaces round a text mean nothing", () => {
    const whole = readBlock([
      ["sand", "<"],
      ["four: slate, rust", ""],
    ]);
    expect(readBlock([[" sand ", " < "], [" four: slate, rust "]])).toEqual(whole);
  });

  test.each([
    ["no patch above", [["^"]], "row 1, column 1: there is no patch above to belong to"],
    ["no patch on the left", [["<"]], "row 1, column 1: there is no patch on the left to belong to"],
    ["nothing sewn there", [["", "<"]], "row 1, column 2: there is no patch on the left to belong to"],
    [
      "a corner of three cells",
      [
        ["sand", "<"],
        ["^", ""],
      ],
      "row 1, column 1: the cells that belong to this patch make no rectangle",
    ],
    [
      "steps of four cells",
      [
        ["sand", "<", ""],
        ["", "^", "<"],
      ],
      "row 1, column 1: the cells that belong to this patch make no rectangle",
    ],
  ])("refuses joined cells: %s", (_what, cells, sentence) => {
    expect(refusal(cells)).toBe(`Problem: ${sentence}`);
  });

  test.each([
    ["half squares", [["sand / slate", "<"]], "a unit of two triangles must be square"],
    ["four triangles", [["four: sand, slate", "<"]], "a unit of four triangles must be square"],
    [
      "geese up",
      [["goose up: slate, sand"]],
      "a goose that flies up is twice as wide as high: two cells wide and one high (join the right one with <)",
    ],
    [
      "geese left",
      [["goose left: slate, sand", "<"]],
      "a goose that flies left is twice as wide as high: two cells high and one wide (join the lower one with ^)",
    ],
  ])("refuses a wrong shape of %s", (_what, cells, sentence) => {
    expect(refusal(cells)).toBe(`Problem: row 1, column 1: ${sentence}`);
  });

  test("larger units keep their shape", () => {
    const wide = ["<", "<", "<"];
    expect(
      refusal([
        ["goose up: slate, sand", ...wide],
        ["^", ...wide],
      ]),
    ).toBe("accepted");
    expect(refusal([["goose up: slate, sand", ...wide]])).not.toBe("accepted");
    expect(
      refusal([
        ["sand / slate", "<"],
        ["^", "<"],
      ]),
    ).toBe("accepted");
  });

  test.each([
    ["Goose  Up : slate, sand", { kind: "goose", flies: "up", goose: "slate", sky: "sand" }],
    ["FOUR : a, b, c, d", { kind: "four triangles", fabrics: ["a", "b", "c", "d"] }],
    ["sand + dark slate nw se", { kind: "corners", fabric: "sand", corner: "dark slate", at: ["nw", "se"] }],
    ["sand + slate SE  NW", { kind: "corners", fabric: "sand", corner: "slate", at: ["nw", "se"] }],
    ["sand + nw all", { kind: "corners", fabric: "sand", corner: "nw", at: ["nw", "ne", "se", "sw"] }],
  ])("reads “%s”", (text, unit) => {
    const cells = text.startsWith("Goose") ? [[text, "<"]] : [[text]];
    expect(readBlock(cells).units[0].unit).toEqual(unit);
  });

  const corners = "corners are written like sand + slate nw se: the patch, then the corner's fabric and places";
  test.each([
    ["goose up: slate", "a goose needs two fabrics: the goose, then the sky"],
    ["goose up: slate, sand, rust", "a goose needs two fabrics: the goose, then the sky"],
    ["duck up: slate, sand", "“duck up:” is no unit; write four: or goose up: (right, down, left)"],
    ["sand + slate", corners],
    ["sand + nw", corners],
    ["sand + slate nw + rust se", corners],
    ["sand / slate / rust", "“sand / slate / rust” is no fabric's name: / \\ + , : < and ^ draw units"],
    ["1 four: sand, slate", "“1 four: sand, slate” is no fabric's name: / \\ + , : < and ^ draw units"],
    ["four: sand, slate\nrust", "“four: sand, slate\nrust” is no fabric's name: / \\ + , : < and ^ draw units"],
    ["sand ^", "“sand ^” is no fabric's name: / \\ + , : < and ^ draw units"],
    ["/ slate", "a fabric's name is missing"],
    ["four: sand,  ", "a fabric's name is missing"],
  ])("refuses “%s”", (text, sentence) => {
    expect(refusal([[text, "<"]])).toBe(`Problem: row 1, column 1: ${sentence}`);
  });

  test("names the fabrics of every unit, each once", () => {
    const names = readBlock([["sand + slate nw", "rust", "rust / sand", "four: a, b, c, d"]]).fabrics;
    expect(names).toEqual(["sand", "slate", "rust", "a", "b", "c", "d"]);
    expect(fabricsInCell(" sand + slate nw ")).toEqual(["sand", "slate"]);
    expect(fabricsInCell(" ^ ")).toEqual([]);
    expect(() => fabricsInCell("sand ^")).toThrow("row 1, column 1: “sand ^” is no fabric's name");
  });

  test("knows a fabric by its first spelling, whatever the capitals and spaces", () => {
    const names = new FabricNames();
    expect(names.spelling(" Dark   Slate ")).toBe("Dark Slate");
    expect(names.spelling("dark slate")).toBe("Dark Slate");
    expect(names.find("  DARK \t slate ")).toBe("Dark Slate");
    expect(names.find("darkslate")).toBeUndefined();
    expect(unitOf("DARK  slate")).toEqual({ kind: "plain", fabric: "DARK slate" });
    expect(refuseFabric("  ")).toBe("a fabric's name is missing");
    expect(refuseFabric(" Dark Slate 2 ")).toBeUndefined();
  });
});
