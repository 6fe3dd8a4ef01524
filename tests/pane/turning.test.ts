/** Pictures of blocks and quilts in a sheet: in the colors of their cells, and turned by writing them. */
import { catalogue } from "../../scripts/catalogue";
import { type CallPicture, callPicture } from "../../src/pane/callPicture";
import { readCalls } from "../../src/pane/calls";
import { byId } from "../../src/pane/catalogue";
import { neighbor } from "../../src/pane/pictureView";
import { areaOf, boxOf, readPicture } from "../pictures/reading";
import { MemorySheet } from "./memorySheet";
import { quiltPlan } from "./plan";

const functions = byId(catalogue());

async function pictureIn(sheet: MemorySheet, cell: string): Promise<CallPicture> {
  const calls = await readCalls(String(sheet.cells[cell]), (reference) => sheet.values(reference, "Plan"));
  if (typeof calls === "string") throw new Error(calls);
  const call = calls.at(-1)!;
  return (await callPicture(functions.get(call.id)!, call, sheet, "Plan"))!;
}

const quilt = "B10";
const block = "B11";

async function spotAt(sheet: MemorySheet, cell: string, row: number, column: number) {
  const { turns } = await pictureIn(sheet, cell);
  const spot = turns?.spots.find((one) => one.row === row && one.column === column);
  if (!turns || !spot) throw new Error(`nothing can be turned at ${row}, ${column}`);
  return { spot, turn: () => turns.turning.turn(spot) };
}

describe("the blocks of a quilt", () => {
  test("each place of the layout can be turned, where it lies on the picture", async () => {
    const { picture, turns } = await pictureIn(new MemorySheet(quiltPlan()), quilt);
    expect(turns!.spots.map(({ words }) => words)).toEqual([
      "Row 1, column 1: star; press to turn",
      "Row 1, column 2: plain; press to turn",
      "Row 1, column 3: star, turned a quarter; press to turn",
      "Row 2, column 1: plain; press to turn",
      "Row 2, column 2: star, turned half round; press to turn",
      "Row 2, column 3: plain; press to turn",
    ]);
    const shapes = readPicture(picture.svg).shapes("block");
    const [left, top, width, height] = / viewBox="([^"]+)"/.exec(picture.svg)![1].split(" ").map(Number);
    turns!.spots.forEach(({ box }, index) => {
      const drawn = boxOf(shapes[index]);
      expect(box.left * width + left).toBeCloseTo(drawn.left, 6);
      expect(box.top * height + top).toBeCloseTo(drawn.top, 6);
      expect(box.width * width * box.height * height).toBeCloseTo(areaOf(shapes[index]), 3);
    });
  });

  test("a turn is written into the block's own cell, and nowhere else", async () => {
    const sheet = new MemorySheet(quiltPlan());
    const before = { ...sheet.cells };
    const { turn } = await spotAt(sheet, quilt, 1, 1);
    expect(await turn()).toBe("G2 now holds “star 270”.");
    expect(sheet.cells).toEqual({ ...before, G2: "star 270" });
  });

  test("quick presses follow one another", async () => {
    const sheet = new MemorySheet(quiltPlan());
    const { turn } = await spotAt(sheet, quilt, 0, 0);
    const told = await Promise.all([turn(), turn(), turn(), turn(), turn()]);
    expect(told.map((sentence) => /“(.*)”/.exec(sentence)![1])).toEqual([
      "star 90",
      "star 180",
      "star 270",
      "star",
      "star 90",
    ]);
    expect(sheet.cells.F1).toBe("star 90");
  });

  test("the picture shows the turn", async () => {
    const sheet = new MemorySheet(quiltPlan());
    const corners = (svg: string) => readPicture(svg).shapes("piece");
    const before = corners((await pictureIn(sheet, quilt)).picture.svg);
    await (await spotAt(sheet, quilt, 0, 0)).turn();
    const after = corners((await pictureIn(sheet, quilt)).picture.svg);
    expect(after).toHaveLength(before.length);
    expect(after).not.toEqual(before);
  });

  test("a formula is not written over, nor what has changed in the meantime", async () => {
    const sheet = new MemorySheet(quiltPlan());
    const { turn } = await spotAt(sheet, quilt, 0, 1);
    sheet.cells.G1 = "star 90";
    await expect(turn()).rejects.toThrow("G1 has changed in the meantime and stays as it is.");
    expect(sheet.cells.G1).toBe("star 90");
    sheet.cells.G1 = '="plain"';
    await expect(turn()).rejects.toThrow("G1 holds a formula, which is not written over.");
    expect(sheet.cells.G1).toBe('="plain"');
  });

  test("a turn that would name another block is refused in a sentence", async () => {
    const sheet = new MemorySheet({ ...quiltPlan(), A4: "star 90", B4: "rust", G1: "star", F2: "star", H2: "star" });
    const { turn } = await spotAt(sheet, quilt, 0, 0);
    await expect(turn()).rejects.toThrow(
      "“star 90” is the name of another block, so that this turn cannot be written.",
    );
    expect(sheet.cells.F1).toBe("star");
  });

  test.each([
    ['{"star","plain"}', /^The layout stands in the formula itself\. Put it into cells/],
    ["F:H", /^Name the cells of the layout, such as B2:D5/],
  ])("a layout given as %s cannot be turned, and the pane says so", async (layout, sentence) => {
    const sheet = new MemorySheet({ ...quiltPlan(), ...(layout === "F:H" ? cellsBelow() : {}) });
    sheet.cells[quilt] = `=QUILT.QUILTPIECES(${layout},A1:D4,6)`;
    const { turns, remarks } = await pictureIn(sheet, quilt);
    expect(turns).toBeUndefined();
    expect(remarks.at(-1)).toMatch(sentence);
  });

  /** Whole columns must be filled as far as the sheet reaches. */
  function cellsBelow(): Record<string, string> {
    const rows = Array.from({ length: 60 }, (_, row) => row + 1);
    return Object.fromEntries(rows.flatMap((row) => ["F", "G", "H"].map((column) => [`${column}${row}`, "plain"])));
  }

  test("a layout on another page is written there", async () => {
    const sheet = new MemorySheet(quiltPlan());
    sheet.cells[quilt] = "=QUILT.QUILTPIECES(Plan!$F$1:$H$2,A1:D4,6)";
    await (await spotAt(sheet, quilt, 1, 2)).turn();
    expect(sheet.cells.H2).toBe("plain 90");
  });

  test("where the program cannot write, or tells no colors, a sentence says so", async () => {
    const sheet = new MemorySheet(quiltPlan(), { write: "No writing here.", fills: "No colors here." });
    const { turns, remarks } = await pictureIn(sheet, quilt);
    expect(turns).toBeUndefined();
    expect(remarks).toEqual(["No colors here.", "No writing here."]);
  });

  test("blocks too small to press are turned in their cells", async () => {
    const sheet = new MemorySheet({ ...quiltPlan(), ...cellsBelow() });
    sheet.cells.B10 = "=QUILT.QUILTPIECES(F1:F60,A1:D4,6)";
    const { turns, remarks } = await pictureIn(sheet, quilt);
    expect(turns).toBeUndefined();
    expect(remarks).toEqual([expect.stringContaining("too small to be pressed")]);
  });
});

describe("the patches of a block", () => {
  test("those that look different once turned, and only those", async () => {
    const { turns } = await pictureIn(new MemorySheet(quiltPlan()), block);
    expect(turns!.spots.map(({ words }) => words)).toEqual([
      "Row 1, column 2: sand / slate; press to turn",
      "Row 2, column 1: sand \\ slate; press to turn",
      "Row 2, column 3: slate \\ sand; press to turn",
      "Row 3, column 2: slate / sand; press to turn",
    ]);
  });

  test("a half-square unit turns by a quarter, a goose half round", async () => {
    const cells = {
      A1: "Sand / slate",
      B1: "goose up: slate, sand",
      C1: "<",
      A2: "sand",
      B2: "sand + slate nw",
      C2: "sand + slate all",
      A4: "=QUILT.BLOCKPIECES(A1:C2,9)",
    };
    const sheet = new MemorySheet(cells);
    for (const [row, column, cell, written] of [
      [0, 0, "A1", "Sand \\ slate"],
      [0, 1, "B1", "goose down: slate, Sand"],
      [1, 1, "B2", "Sand + slate ne"],
    ] as const) {
      await (await spotAt(sheet, "A4", row, column)).turn();
      expect(sheet.cells[cell]).toBe(written);
    }
    await expect(spotAt(sheet, "A4", 1, 2)).rejects.toThrow("nothing can be turned");
  });

  test("a patch over several cells is pressed as a whole", async () => {
    const sheet = new MemorySheet({
      A1: "a / b",
      B1: "<",
      A2: "^",
      B2: "<",
      C1: "a",
      C2: "b",
      A4: "=QUILT.BLOCKCHECK(A1:C2,6)",
    });
    const { turns } = await pictureIn(sheet, "A4");
    expect(turns!.spots).toHaveLength(1);
    const [{ box }] = turns!.spots;
    const { picture } = await pictureIn(sheet, "A4");
    const [, , width, height] = / viewBox="([^"]+)"/.exec(picture.svg)![1].split(" ").map(Number);
    expect(box.width * width).toBeCloseTo(box.height * height, 1);
  });
});

describe("colors", () => {
  test("fabrics take the fills of the cells that name them; hatches stay", async () => {
    const sheet = new MemorySheet(quiltPlan());
    Object.assign(sheet.colors, { B1: "#F2D16B", C7: "#1D3557", A4: "#00FF00", F1: "#FF0000", C1: "#0000FF" });
    const { svg } = (await pictureIn(sheet, quilt)).picture;
    expect(svg).toContain('fill="#f2d16b"');
    expect(svg).toContain('fill="#1d3557"');
    for (const other of ["#00ff00", "#ff0000", "#0000ff"]) expect(svg).not.toContain(other);
    expect(svg).toContain("url(#hatch1white)");
  });

  test("a block's name tells no color, though a fabric may be called the same", async () => {
    const sheet = new MemorySheet({ ...quiltPlan(), A4: "rust", G1: "rust", F2: "rust", H2: "rust" });
    Object.assign(sheet.colors, { A4: "#00FF00" });
    expect((await pictureIn(sheet, quilt)).picture.svg).not.toContain("#00ff00");
  });

  test("the cells of the block itself, and other sizes of the quilt", async () => {
    const sheet = new MemorySheet(quiltPlan());
    Object.assign(sheet.colors, { C2: "#A63D2F" });
    expect((await pictureIn(sheet, block)).picture.svg).toContain('fill="#a63d2f"');
    const sizes = (await pictureIn(sheet, "B12")).picture;
    expect(sizes.svg).toContain('fill="#a63d2f"');
    expect(sizes.description).toContain("queen");
  });

  test("only what is drawn in cells has their colors", async () => {
    const sheet = new MemorySheet({ A1: "=QUILT.TOPSIZE(4,5,12)" }, { fills: "No colors here." });
    expect(await pictureIn(sheet, "A1")).toMatchObject({ showsAnswer: false, remarks: [] });
    expect(await pictureIn(new MemorySheet(quiltPlan()), "B12")).toMatchObject({ showsAnswer: true, remarks: [] });
  });

  test("what is no color is no color", async () => {
    const sheet = new MemorySheet(quiltPlan());
    Object.assign(sheet.colors, { B1: 'red"/><script>alert(1)</script>' });
    const { svg } = (await pictureIn(sheet, quilt)).picture;
    expect(svg).not.toContain("script");
    readPicture(svg);
  });

  test("a fabric's name is words, whatever stands in it", async () => {
    const name = "b>&\"'";
    const sheet = new MemorySheet({ A1: name, B1: "sand", A3: "=QUILT.BLOCKPIECES(A1:B1,4)" });
    const { picture } = await pictureIn(sheet, "A3");
    expect(readPicture(picture.svg).words).toContain(name);
    expect(picture.description).toContain(name);
  });
});

test("arrow keys lead to the nearest part on that side", () => {
  const at = (left: number, top: number, width = 0.1, height = 0.1) => ({ box: { left, top, width, height } });
  const spots = [at(0, 0), at(0.2, 0), at(0, 0.2), at(0.2, 0.2), at(0.4, 0, 0.1, 0.3)];
  expect(neighbor(spots, 0, "ArrowRight")).toBe(1);
  expect(neighbor(spots, 0, "ArrowDown")).toBe(2);
  expect(neighbor(spots, 3, "ArrowUp")).toBe(1);
  expect(neighbor(spots, 3, "ArrowLeft")).toBe(2);
  expect(neighbor(spots, 1, "ArrowRight")).toBe(4);
  expect(neighbor(spots, 0, "ArrowLeft")).toBeUndefined();
  expect(neighbor(spots, 0, "Enter")).toBeUndefined();
});
