/** What reads a table follows it when it shrinks, as when it grows. */
import { emptyWorkbook } from "../../src/practice/workbook";
import { Recalculated } from "./recalculate";

let sheet: Recalculated;

beforeEach(async () => {
  sheet = await Recalculated.open(emptyWorkbook());
  await sheet.type("Sheet1", "A1", 2);
  await sheet.type("Sheet1", "C1", "=QUILT.TOPPIECES(5,6,12,A1)");
  await sheet.type("Sheet1", "K1", "=SUM(F2:F8)");
  await sheet.type("Sheet1", "K2", '=IF(F4="",0,F4*2)');
  await sheet.type("Sheet1", "K3", "=K2+1");
  expect(read()).toEqual([99, 50, 51]);
});

afterEach(() => {
  sheet.close();
});

function read(): unknown[] {
  return ["K1", "K2", "K3"].map((cell) => sheet.value("Sheet1", cell));
}

test("when a number makes it shorter, and longer again", async () => {
  await sheet.type("Sheet1", "A1", 0);
  await sheet.settle();
  expect(read()).toEqual([30, 0, 1]);
  await sheet.type("Sheet1", "A1", 2);
  await sheet.settle();
  expect(read()).toEqual([99, 50, 51]);
});

test("when its formula becomes another one, an error, or nothing", async () => {
  await sheet.type("Sheet1", "C1", "=QUILT.CUTSQUARE(3)");
  await sheet.settle();
  expect(read()).toEqual([0, 0, 1]);
  await sheet.type("Sheet1", "C1", "=QUILT.TOPPIECES(5,6,12,A1)");
  await sheet.settle();
  await sheet.type("Sheet1", "A1", "wide");
  await sheet.settle();
  expect(read()).toEqual([0, 0, 1]);
  await sheet.type("Sheet1", "A1", 2);
  await sheet.settle();
  await sheet.type("Sheet1", "C1", "");
  await sheet.settle();
  expect(read()).toEqual([0, 0, 1]);
});
