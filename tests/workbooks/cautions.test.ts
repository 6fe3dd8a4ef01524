/** What every planning workbook warns of, and that its class copy warns of the same. */
import { strFromU8, unzipSync } from "fflate";
import { AT_THE_IRON, BLADES, INFANTS, NEEDLES } from "../../src/workbooks/shared";
import { copyOf } from "../classCopy/workbooks";
import { names, written } from "./books";

const SELLERS = "Who sells follows the tax, labeling and product-safety rules of the place.";
const CRIB =
  "A quilt of crib size is for the wall, the floor or an older child: none belongs in an infant's sleep space.";

const CAUTIONS: Record<string, readonly string[]> = {
  "quilt-planner": [BLADES, AT_THE_IRON, NEEDLES, INFANTS],
  "kit-costing": [BLADES, NEEDLES, INFANTS, SELLERS],
  "class-planner": [BLADES, AT_THE_IRON, NEEDLES, INFANTS],
  "pattern-checker": [BLADES, AT_THE_IRON, NEEDLES],
  "block-designer": [BLADES, AT_THE_IRON, NEEDLES, CRIB],
};

test.each(names)("%s and its class copy show the cautions", async (name) => {
  const { bytes } = await written(name);
  const copy = await copyOf(bytes);
  for (const file of [bytes, copy.bytes]) {
    const text = textIn(file);
    expect(CAUTIONS[name].filter((caution) => !text.includes(caution))).toEqual([]);
  }
});

/** The texts of all cells. */
function textIn(bytes: Uint8Array): string {
  const parts = Object.entries(unzipSync(bytes)).filter(([path]) => /sharedStrings|worksheets\/sheet/.test(path));
  return parts.map(([, xml]) => strFromU8(xml).replaceAll("&apos;", "'")).join("\n");
}
