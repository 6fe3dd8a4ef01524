/** Which kept sheets can be shown; one that cannot is left as it is. */
import { FORMAT, isReadable, type KeptSheet } from "../../src/practice/store";
import { emptyWorkbook } from "../../src/practice/workbook";
import old from "../data/kept-0.1.0.json";

const sheet = { id: "a", name: "Plan", changed: 0, format: FORMAT, workbook: emptyWorkbook() } satisfies KeptSheet;
const withCells = (cellData: unknown) => ({ workbook: { sheetOrder: ["x"], sheets: { x: { cellData } } } });

test.each([
  ["an empty one", sheet],
  ["one of version 0.1.0", old],
  ["one with an empty cell", { ...sheet, ...withCells({ 0: { 0: null, 1: { v: 3 } } }) }],
])("%s can be shown", (_, kept) => {
  expect(isReadable(kept as KeptSheet)).toBe(true);
});

test.each([
  { format: FORMAT + 1 },
  { format: undefined },
  { workbook: undefined },
  { workbook: null },
  { workbook: "text" },
  { workbook: {} },
  { workbook: { sheetOrder: [], sheets: {} } },
  { workbook: { sheetOrder: "x", sheets: { x: {} } } },
  { workbook: { sheetOrder: ["x"], sheets: null } },
  { workbook: { sheetOrder: ["x"], sheets: { x: null } } },
  { workbook: { sheetOrder: ["x", "y"], sheets: { x: {} } } },
  withCells("text"),
  withCells({ 0: "text" }),
  withCells({ 0: { 0: "text" } }),
])("one with %j cannot", (change) => {
  expect(isReadable({ ...sheet, ...change } as KeptSheet)).toBe(false);
});
