/** The guide to blocks drawn in cells: each unit with its cells and its picture, both from the same text. */
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

/** The page and its pictures, by file name. */
export function blockGuide(): Map<string, string> {
  const files = new Map<string, string>();
  const sections = EXAMPLES.map(({ name, title, words, cells }) => {
    const picture = `figures/drawn-${name}.svg`;
    files.set(picture, blockPicture(title, readBlock(cells)));
    return `## ${title}\n\n${words.replace(/\\/g, "\\\\")}\n\n${grid(cells)}\n\n![${title}](${picture})`;
  });
  const page = ["# Drawing blocks in cells", GENERATED, INTRODUCTION, ...sections, QUILTS].join("\n\n") + "\n";
  return files.set("drawing-blocks.md", page);
}

function grid(cells: readonly string[][]): string {
  const line = (row: readonly string[]) => `| ${row.map((text) => `\`${text}\``).join(" | ")} |`;
  return [`|${" |".repeat(cells[0].length)}`, `|${" --- |".repeat(cells[0].length)}`, ...cells.map(line)].join("\n");
}
