import { worksheetFunctions } from "../../functions";
import { figures } from "../../src/pictures/figures";
import { overlappingTexts, readPicture } from "./reading";

describe("figures", () => {
  test.each([...figures.keys()])("%s belongs to a worksheet function", (id) => {
    expect(worksheetFunctions.has(id)).toBe(true);
  });

  test.each([...figures])("%s is a whole picture", (_id, draw) => {
    const svg = draw();
    const { title, words } = readPicture(svg);
    expect(words).toContain(title);
    expect(overlappingTexts(svg)).toEqual([]);
  });

  test("no two figures are the same", () => {
    const drawn = [...figures.values()].map((draw) => draw());
    expect(new Set(drawn).size).toBe(drawn.length);
  });
});
