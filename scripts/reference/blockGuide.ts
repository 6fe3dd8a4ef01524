/** The guide to blocks drawn in cells: each unit with its cells and its picture, both from the same text. */
import { fabricColors } from "../../src/math/blocks/cellColors";
import { readBlock } from "../../src/math/blocks/grammar";
import { blockPicture } from "../../src/pictures/quiltTop";
import { GENERATED } from "./page";

interface Example {
  name: string;
  title: string;
  words: string;
  cells: string[][];
}

const EXAMPLES: Example[] = [
  {
    name: "square",
    title: "A square",
    words:
      "A fabric's name alone is a square of it. Any name will do, such as sand, or slate 2; capitals and spaces make no difference.",
    cells: [["sand", "slate"]],
  },
  {
    name: "half-square",
    title: "A half-square unit",
    words:
      "Two names with the seam between them as it runs: / rises to the right, \\ falls to the right. The fabric above the seam comes first.",
    cells: [["sand / slate", "sand \\ slate"]],
  },
  {
    name: "four-triangles",
    title: "A unit of four triangles",
    words: "`four:` and the fabrics at the top, right, bottom and left. Two names take turns.",
    cells: [["four: sand, slate", "four: sand, slate, rust, moss"]],
  },
  {
    name: "spanning",
    title: "A patch over several cells",
    words: "`<` belongs to the patch on its left, `^` to the patch above. Together they make a rectangle.",
    cells: [
      ["rust", "<", "sand"],
      ["^", "<", "^"],
    ],
  },
  {
    name: "geese",
    title: "Geese",
    words:
      "`goose`, where it flies, the fabric of the goose, then of its sky. A goose takes two cells: side by side where it flies up or down, one above the other where it flies left or right.",
    cells: [
      ["goose up: slate, sand", "<", "goose right: slate, sand"],
      ["goose down: slate, sand", "<", "^"],
    ],
  },
  {
    name: "corners",
    title: "Corners, stitched and flipped",
    words:
      "The patch, a plus, the fabric of the corners and where they are: nw, ne, se, sw or all. A corner is one cell wide, or half a cell on a patch that is one cell wide.",
    cells: [
      ["sand + rust nw se", "<", "slate + sand all"],
      ["^", "<", "slate"],
    ],
  },
  {
    name: "star",
    title: "A whole block: a saw-tooth star",
    words: "A traditional block, from geese and squares.",
    cells: [
      ["sand", "goose down: sand, slate", "<", "sand"],
      ["goose right: sand, slate", "rust", "<", "goose left: sand, slate"],
      ["^", "^", "<", "^"],
      ["sand", "goose up: sand, slate", "<", "sand"],
    ],
  },
];

const INTRODUCTION = `Draw a block in cells, one cell for each square of the paper, and let the functions read it:
[BLOCKPIECES](blocks.md#blockpieces) lists what to cut, [BLOCKFABRIC](blocks.md#blockfabric) what to buy,
[BLOCKCHECK](blocks.md#blockcheck) what to know before. All cells are square; the size that you give is the finished width of
the whole block. An empty cell is a place where nothing is sewn.`;

const QUILTS = `## From blocks to a quilt

Give each block a name in the column to its left, blocks under each other in one range. A second range is the layout: each cell
holds a block's name, and behind it 90, 180 or 270 where the block lies turned clockwise by so many degrees.

| | | | |
| --- | --- | --- | --- |
| **nine** | sand | slate | sand |
| | slate | sand | slate |
| | sand | slate | sand |
| **plain** | sand | | |

| | | |
| --- | --- | --- |
| nine | plain | nine |
| plain | nine 90 | plain |

[QUILTPIECES](quilts.md#quiltpieces) and [QUILTFABRICS](quilts.md#quiltfabrics) then list everything to cut and to buy, with
sashing and borders; [SIZETABLE](quilts.md#sizetable) counts the same design again for other sizes.`;

/** Cells with the words and the values of their fills. */
const COLORED: { text: string; fill?: readonly [word: string, color: string] }[][] = [
  [{ text: "rust", fill: ["red", "#a63d2f"] }, { text: "sand / rust" }, { text: "sand", fill: ["yellow", "#f2d16b"] }],
  [{ text: "night / sand", fill: ["blue", "#1d3557"] }, { text: "rust" }, { text: "night \\ sand" }],
];

const COLORS = `## Colors

Fill cells with the colors of your fabrics, and the pictures in the pane take them over. A filled cell that names one fabric
gives that fabric its color; where several do, the first one counts, line by line from the upper left. A cell that names several
fabrics tells a color only where nothing else does: a fabric that stands alone in no filled cell takes the color of the first
filled cell that names it before the others. In a quilt, the cells of the blocks, the sashing and the borders tell colors; those
of the layout do not. A fabric without a color of its own is drawn in a pale one.

Every fabric keeps its hatch, so that the picture can be read in black and white.

${table(COLORED.map((row) => row.map(({ text, fill }) => `\`${text}\`${fill ? ` on ${fill[0]}` : ""}`)))}

![A block in the colors of its cells](figures/drawn-colors.svg)`;

const TURNING = `## Turning on the picture

In the pane, every block of a quilt's picture can be pressed, or reached with Tab and the arrow keys and turned with Enter: it
turns by a quarter, and its cell of the layout is written anew, such as \`star 90\` for \`star\`. In the picture of a block, a patch
of several fabrics turns in the same way, a patch that is no square half round. What is cut and bought follows as after any
change; the sheet's own Undo takes it back. A cell that holds a formula is not written over, and blocks whose layout is typed
into the formula itself cannot be turned.`;

/** The page and its pictures, by file name. */
export function blockGuide(): Map<string, string> {
  const files = new Map<string, string>();
  const sections = EXAMPLES.map(({ name, title, words, cells }) => {
    const picture = `figures/drawn-${name}.svg`;
    files.set(picture, blockPicture(title, readBlock(cells)));
    return `## ${title}\n\n${words.replace(/\\/g, "\\\\")}\n\n${grid(cells)}\n\n![${title}](${picture})`;
  });
  const colored = readBlock(COLORED.map((row) => row.map(({ text }) => text)));
  const cells = COLORED.flat().map(({ text, fill }) => ({ text, fill: fill?.[1] ?? null }));
  const colors = fabricColors(cells, colored.fabrics);
  files.set("figures/drawn-colors.svg", blockPicture("A block in the colors of its cells", colored, { colors }));
  const parts = ["# Drawing blocks in cells", GENERATED, INTRODUCTION, ...sections, COLORS, QUILTS, TURNING];
  const page = parts.join("\n\n") + "\n";
  return files.set("drawing-blocks.md", page);
}

function grid(cells: readonly string[][]): string {
  return table(cells.map((row) => row.map((text) => `\`${text}\``)));
}

function table(cells: readonly string[][]): string {
  const line = (row: readonly string[]) => `| ${row.join(" | ")} |`;
  return [`|${" |".repeat(cells[0].length)}`, `|${" --- |".repeat(cells[0].length)}`, ...cells.map(line)].join("\n");
}
