/** What is told of keeping the open sheet, with a store that takes its time or refuses. */
import { Keeper } from "../../src/practice/keeper";
import { type KeptSheet, type Store, StoreProblem } from "../../src/practice/store";
import { emptyWorkbook } from "../../src/practice/workbook";

/** A sheet that is kept in a store with `put`; what changes of it is its name. */
function kept(put: (sheet: KeptSheet) => Promise<void>) {
  const sheet = { name: "Plan", workbook: { ...emptyWorkbook(), id: "book" } as KeptSheet["workbook"] };
  const told: unknown[] = [];
  const read = () => ({ ...sheet }) as ReturnType<ConstructorParameters<typeof Keeper>[2]>;
  const store = { keep: put } as Partial<Store> as Store;
  const keeper = new Keeper(store, "a", read, false, (refusal) => told.push(refusal));
  return { keeper, sheet, told };
}

test("a sheet that changes while it is kept was taken, and is behind again", async () => {
  const names: string[] = [];
  const { keeper, sheet, told } = kept(({ name }) => {
    names.push(name);
    sheet.name = "Plan, worked out";
    return Promise.resolve();
  });
  expect(await keeper.keepNow()).toBe(true);
  expect(keeper.behind).toBe(true);
  expect(await keeper.keepNow()).toBe(true);
  expect(keeper.behind).toBe(false);
  expect(names).toEqual(["Plan", "Plan, worked out"]);
  expect(told).toEqual([undefined, undefined]);
});

test("a sheet that is refused is tried again, and told each time", async () => {
  let full = true;
  const { keeper, told } = kept(() => (full ? Promise.reject(new StoreProblem("full")) : Promise.resolve()));
  expect(await keeper.keepNow()).toBe(false);
  expect(keeper.behind).toBe(true);
  expect(await keeper.keepNow()).toBe(false);
  full = false;
  expect(await keeper.keepNow()).toBe(true);
  expect(told).toEqual(["full", "full", undefined]);
});

test("a sheet that has not changed is not kept again, nor one that has been left", async () => {
  let puts = 0;
  const { keeper, sheet } = kept(() => {
    puts++;
    return Promise.resolve();
  });
  await keeper.keepNow();
  expect(await keeper.keepNow()).toBe(true);
  expect(puts).toBe(1);
  sheet.name = "Another";
  await keeper.stop();
  expect(puts).toBe(2);
  sheet.name = "A third";
  expect(await keeper.keepNow()).toBe(true);
  expect(puts).toBe(2);
});
