/** What the practice sheet changes in the engine it works out formulas with. */
import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";
import "../../src/practice/engine";

test("no index of a column is kept: with every answer it would look through all answers before", () => {
  CELL_INVERTED_INDEX_CACHE.set("book", "sheet", 1, 3.5, 7, true);
  expect(CELL_INVERTED_INDEX_CACHE.getCellValuePositions("book", "sheet", 1)).toBeUndefined();
});
