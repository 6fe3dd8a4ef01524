/** Comparisons in the practice sheet's engine, which must not depend on whether they have been made before. */
import { recalculate } from "../../src/practice/recalculate";
import { workbookOf } from "../../src/practice/workbook";

test("a 0 is no empty text and an error no answer, however often a cell is compared", async () => {
  const formulas = ['=A1=""', '=A1=""', '=IF(A1="",1,2)', '=A3=""', "=IF(A3=0,1,2)", "=A2=0", "=A2=0"];
  const cells = Object.fromEntries(formulas.map((f, index) => [index + 1, { f }]));
  const cellData = { 0: { 0: { v: 0 }, ...cells }, 2: { 0: { f: "=NA()" } } };
  const { Sheet1 } = await recalculate(workbookOf("Compared", [{ name: "Sheet1", cellData }]));
  expect("BCDEFGH".split("").map((column) => Sheet1.values[`${column}1`])).toEqual([
    false,
    false,
    2,
    "#N/A",
    "#N/A",
    true,
    true,
  ]);
});
