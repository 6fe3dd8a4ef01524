/** What a page loads to make class copies. */
import { classCopyKilobytes } from "../../scripts/bench/classCopy";

test("the code of the class copy is under 40 KB, compressed", async () => {
  expect(await classCopyKilobytes()).toBeLessThan(40);
}, 120_000);
