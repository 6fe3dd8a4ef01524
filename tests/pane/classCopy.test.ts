/** Class copies of an open workbook, as the pane makes them from its file and its cells. */
import { Workbook } from "@cj-tech-master/excelts";
import { copyForClass } from "../../src/pane/classCopy";
import { inFile } from "../../src/workbooks/formats";
import { MemorySheet } from "./memorySheet";

/** The same cells as an open workbook and as its file. */
class FiledSheet extends MemorySheet {
  override async file(): Promise<Uint8Array<ArrayBuffer>> {
    const file = new Workbook();
    const page = file.addWorksheet("Plan");
    for (const [cell, content] of Object.entries(this.cells)) {
      const [[value]] = await this.values(cell, "Plan");
      const result = value ?? "";
      page.getCell(cell).value =
        typeof content === "string" && content.startsWith("=")
          ? { formula: inFile(content), result, shareType: "array", ref: cell, isDynamicArray: true }
          : content;
    }
    return new Uint8Array(await file.xlsx.writeBuffer());
  }
}

test("calls become plain formulas, or their values where there is no plain one", async () => {
  const sheet = new FiledSheet({
    A1: 3,
    A2: "=QUILT.CUTHALFSQUARE(A1)",
    B1: "star",
    C1: 2.5,
    D1: 2.5,
    E1: 40,
    A3: "=QUILT.PLANLENGTH(B1:E1)",
    A4: '=QUILT.CUTSQUARE("three")',
  });
  const { bytes, report } = await copyForClass(sheet);
  expect(report).toContain("turned into plain formulas");
  const copy = new Workbook();
  await copy.xlsx.load(bytes);
  const page = copy.getWorksheet("Plan")!;
  expect(page.getCell("A2").formula).not.toContain("QUILT");
  expect(page.getCell("A2").result).toBe(3.875);
  // 40 of 2 1/2 in, 16 a strip: three strips.
  expect(page.getCell("A3").value).toBe(7.5);
  expect(JSON.stringify(page.getCell("A4").value)).toContain("#VALUE!");
});
