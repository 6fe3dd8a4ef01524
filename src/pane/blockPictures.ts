/** Pictures of blocks and quilts from the cells that draw them, in the colors of those cells. */
import { cellTexts } from "../../functions/blockCells";
import { readQuilt, readWantedSizes } from "../../functions/quiltCells";
import { fabricColors } from "../math/blocks/cellColors";
import { refuseFabric } from "../math/blocks/fabricNames";
import { type Block, readBlock } from "../math/blocks/grammar";
import { type Quilt, quiltFabrics } from "../math/blocks/quilt";
import { sizedLayouts } from "../math/blocks/sizes";
import { blockPicture, quiltPicture } from "../pictures/quiltTop";
import { sizesPicture } from "../pictures/sizes";
import type { GivenArguments } from "./given";

/** Arguments whose cells tell the colors of fabrics. */
export const COLORED_ARGUMENTS: readonly string[] = ["block", "blocks", "sashing", "borders"];

export function drawBlock(given: GivenArguments): string {
  const block = givenBlock(given);
  const colors = fabricColors(given.filledCells("block").flat(), block.fabrics);
  return blockPicture("The block", block, { colors });
}

export function drawQuilt(given: GivenArguments): string {
  const quilt = givenQuilt(given);
  return quiltPicture("The quilt", quilt, quiltFabrics(quilt), {
    system: given.system,
    colors: colorsOf(given, quilt),
  });
}

export function drawSizes(given: GivenArguments): string {
  const quilt = givenQuilt(given);
  const layouts = sizedLayouts(quilt, readWantedSizes(given.door, given.cell("sizes")));
  const options = { system: given.system, colors: colorsOf(given, quilt) };
  return sizesPicture("The quilt in other sizes", layouts, quiltFabrics(quilt), options);
}

export function givenBlock(given: GivenArguments): Block {
  return readBlock(cellTexts(given.cell("block")));
}

export function givenQuilt(given: GivenArguments): Quilt {
  return readQuilt(given.door, {
    layout: given.cell("layout"),
    blocks: given.cell("blocks"),
    size: given.cell("size"),
    sashing: given.cell("sashing"),
    edge: given.cell("edge"),
    borders: given.cell("borders"),
  });
}

/** Names of blocks stand before their cells, and widths before the fabrics of sashing and borders. */
function colorsOf(given: GivenArguments, quilt: Quilt): Map<string, string> {
  const blocks = given.filledCells("blocks").flatMap(([, ...cells]) => cells);
  const others = [
    ...given.filledCells("sashing").flatMap((cells) => cells.slice(1, 3)),
    ...given.filledCells("borders").flatMap((cells) => cells.slice(1, 2)),
  ].filter(({ text }) => refuseFabric(text) === undefined);
  return fabricColors([...blocks, ...others], quiltFabrics(quilt));
}
